/** Numbers from 1 to a count, some of them taken; the lowest free ones are given out. */
export class NumbersInUse {
  readonly #taken: Uint8Array;
  #lowestMaybeFree = 1;

  constructor(count: number) {
    this.#taken = new Uint8Array(count + 1);
  }

  get count(): number {
    return this.#taken.length - 1;
  }

  /** A number outside the count is nobody's. */
  isFree(number: number): boolean {
    return this.#taken[number] === 0 && number >= 1;
  }

  take(number: number): void {
    if (number >= 1 && number <= this.count) this.#taken[number] = 1;
  }

  freeCount(): number {
    let free = 0;
    for (let number = 1; number <= this.count; number++) if (this.#taken[number] === 0) free++;
    return free;
  }

  /** Takes the lowest free number; null where none is left. */
  takeLowest(): number | null {
    while (this.#lowestMaybeFree <= this.count && !this.isFree(this.#lowestMaybeFree))
      this.#lowestMaybeFree++;
    if (this.#lowestMaybeFree > this.count) return null;
    this.take(this.#lowestMaybeFree);
    return this.#lowestMaybeFree;
  }

  /** Takes the lowest two free numbers that lie side by side; null where there are none. */
  takeLowestPair(): [number, number] | null {
    for (let number = this.#lowestMaybeFree; number < this.count; number++)
      if (this.isFree(number) && this.isFree(number + 1)) {
        this.take(number);
        this.take(number + 1);
        return [number, number + 1];
      }
    return null;
  }
}
