import type { Activity } from './timetable.ts';

/**
 * Of the activities whose forerunners are all over, always the one with the smallest key, of equals the first: all of
 * them in that order. `next` are the followers of each; see `successors`. What waits in a circle is left out.
 */
export function orderByKeys(
  activities: readonly Pick<Activity, 'after'>[],
  next: readonly (readonly number[])[],
  keys: readonly number[],
): number[] {
  const waiting = activities.map((activity) => activity.after.length);
  const ready = new KeyHeap(keys);
  waiting.forEach((count, index) => {
    if (count === 0) ready.push(index);
  });
  const order: number[] = [];
  for (let index = ready.pop(); index >= 0; index = ready.pop()) {
    order.push(index);
    for (const follower of next[index] ?? []) {
      waiting[follower] = (waiting[follower] ?? 0) - 1;
      if (waiting[follower] === 0) ready.push(follower);
    }
  }
  return order;
}

/** Takes out indexes by their figure, the smallest first; of equals the smaller index. */
class KeyHeap {
  readonly #keys: readonly number[];
  readonly #heap: number[] = [];

  constructor(keys: readonly number[]) {
    this.#keys = keys;
  }

  push(index: number): void {
    const heap = this.#heap;
    heap.push(index);
    for (let place = heap.length - 1; place > 0; ) {
      const parent = (place - 1) >> 1;
      if (!this.#swapIfBefore(place, parent)) return;
      place = parent;
    }
  }

  /** -1 where none is left. */
  pop(): number {
    const heap = this.#heap;
    const top = heap[0] ?? -1;
    const last = heap.pop();
    if (heap.length === 0 || last === undefined) return top;
    heap[0] = last;
    for (let place = 0; ; ) {
      const left = 2 * place + 1;
      if (left >= heap.length) return top;
      const child =
        left + 1 < heap.length && this.#isBefore(heap[left + 1] ?? 0, heap[left] ?? 0) ? left + 1 : left;
      if (!this.#swapIfBefore(child, place)) return top;
      place = child;
    }
  }

  #isBefore(a: number, b: number): boolean {
    const difference = (this.#keys[a] ?? 0) - (this.#keys[b] ?? 0);
    return difference < 0 || (difference === 0 && a < b);
  }

  #swapIfBefore(child: number, parent: number): boolean {
    const a = this.#heap[child] ?? 0;
    const b = this.#heap[parent] ?? 0;
    if (!this.#isBefore(a, b)) return false;
    this.#heap[child] = b;
    this.#heap[parent] = a;
    return true;
  }
}
