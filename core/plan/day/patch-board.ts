import type { Assignment, Item, Layer } from './problem.ts';

/** Cost of a broken rule in a search: more than any day's work, so that a search mends rules first. */
export const brokenRuleCost = 1_000_000;

/**
 * A patch under change, in flat arrays: who plays in each slot and act, and what that costs. Items that have no
 * place wait in slots that do not exist ("limbo"), where they cost as much as a broken rule; so a search that
 * lowers the cost also finds places. The one step is to exchange what two slots hold over a run of acts.
 */
export class PatchBoard {
  readonly layer: Layer;
  readonly acts: number;
  /** Left slot of each item, limbo included. */
  readonly slotOf: Int32Array;
  /** The second slot of a pair that starts at a slot, or -1; limbo included. */
  readonly pairOf: Int32Array;
  /** Slots an item may go to (left ones of a pair). */
  readonly choices: Int32Array[];

  readonly #player: Int32Array;
  readonly #groupOf: Int32Array;
  readonly #bankOf: Int32Array;
  readonly #mayEnter: Uint8Array;
  readonly #switchesOn: Int32Array;
  readonly #nearUsed: Int32Array;
  readonly #nearRoom: Int32Array;
  readonly #isNear: Uint8Array;
  readonly #harmed: number[];
  readonly #groups: number;
  readonly #stamp: Int32Array;
  #stampNow = 0;
  /** What the last exchange touched, with what it cost before. */
  readonly #affected: number[] = [];
  readonly #costBefore: number[] = [];
  /** Cost of each item as the patch stands. */
  readonly #itemCost: Float64Array;

  constructor(layer: Layer, assignment: Assignment) {
    this.layer = layer;
    this.acts = layer.acts.length;
    this.#groups = layer.groups.length + 1;
    const waiting = mostItems(layer);
    const real = layer.slots.length;
    const total = real + 2 * waiting;
    this.pairOf = new Int32Array(total).fill(-1);
    this.#groupOf = new Int32Array(total).fill(layer.groups.length);
    this.#bankOf = new Int32Array(total).fill(-1);
    const bankIndex = new Map<number, number>();
    layer.slots.forEach((slot, index) => {
      this.pairOf[index] = slot.pairedWith;
      this.#groupOf[index] = slot.group;
      const bank = bankIndex.get(slot.bank) ?? bankIndex.size;
      bankIndex.set(slot.bank, bank);
      this.#bankOf[index] = bank;
    });
    for (let limbo = real; limbo < total; limbo += 2) this.pairOf[limbo] = limbo + 1;
    this.#switchesOn = new Int32Array((bankIndex.size + 1) * this.acts);
    this.#player = new Int32Array(total * this.acts).fill(-1);
    this.#stamp = new Int32Array(layer.items.length);
    this.#harmed = layer.items.flatMap((item, index) => (item.phantom === 'off' ? [index] : []));
    this.#mayEnter = new Uint8Array(layer.items.length * this.#groups);
    this.choices = layer.items.map((item, index) => this.#choicesOf(item, index));
    this.#isNear = new Uint8Array(this.#groups * this.acts);
    this.#nearUsed = new Int32Array(this.acts);
    this.#nearRoom = new Int32Array(this.acts).fill(1_000_000);
    layer.acts.forEach((act, place) => {
      if (act.spareCount === 0) return;
      for (const group of act.spareGroups) this.#isNear[group * this.acts + place] = 1;
      const slots = act.spareGroups.reduce((sum, group) => sum + (layer.groups[group]?.slots.length ?? 0), 0);
      this.#nearRoom[place] = slots - act.spareCount;
    });
    this.slotOf = new Int32Array(layer.items.length).fill(-1);
    this.#setUp(assignment, real);
    this.#itemCost = Float64Array.from(layer.items, (_, index) => this.#costOf(index));
  }

  /** The patch as it stands; items in limbo have no slot. */
  assignment(): Assignment {
    return Array.from(this.slotOf, (slot) => (slot < this.layer.slots.length ? slot : -1));
  }

  /** Cost of everything, with broken rules. */
  cost(): number {
    return this.#itemCost.reduce((sum, cost) => sum + cost, this.#spareCosts(0, this.acts - 1));
  }

  /** The first act of the run of kept items that an item ends or is inside of. */
  chainStart(index: number): number {
    let first = index;
    for (let item = this.layer.items[first]; item && this.#isKept(first); item = this.layer.items[first])
      first = item.previous;
    return this.layer.items[first]?.act ?? 0;
  }

  /** The last act of the run of kept items that an item begins or is inside of. */
  chainEnd(index: number): number {
    let last = index;
    for (let next = this.layer.items[last]?.next ?? -1; next >= 0 && this.#isKept(next); ) {
      last = next;
      next = this.layer.items[last]?.next ?? -1;
    }
    return this.layer.items[last]?.act ?? 0;
  }

  /**
   * Exchanges what two slots (`width` 1) or two pairs of slots (2) hold from act `from` to act `to`, if all of it
   * may go to the other side. Returns the change of cost, or null where it may not; `takeBack` undoes it.
   */
  exchange(a: number, b: number, width: number, from: number, to: number): number | null {
    const a2 = width === 2 ? (this.pairOf[a] ?? -1) : -1;
    const b2 = width === 2 ? (this.pairOf[b] ?? -1) : -1;
    if (width === 2 && (a2 < 0 || b2 < 0)) return null;
    if (!this.#mayCross(a, b, width, from, to) || !this.#mayCross(b, a, width, from, to)) return null;
    if (width === 2 && (!this.#mayCross(a2, b2, width, from, to) || !this.#mayCross(b2, a2, width, from, to)))
      return null;
    this.#gatherAffected(a, b, from, to);
    if (width === 2) this.#gatherMore(a2, b2, from, to);
    const spareBefore = this.#spareCosts(from, to);
    this.#swap(a, b, a2, b2, from, to);
    let change = this.#spareCosts(from, to) - spareBefore;
    for (const [place, index] of this.#affected.entries()) {
      const before = this.#itemCost[index] ?? 0;
      const now = this.#costOf(index);
      this.#costBefore[place] = before;
      this.#itemCost[index] = now;
      change += now - before;
    }
    return change;
  }

  /** Undoes the last exchange, which was called with these slots and acts. */
  takeBack(a: number, b: number, width: number, from: number, to: number): void {
    const a2 = width === 2 ? (this.pairOf[a] ?? -1) : -1;
    const b2 = width === 2 ? (this.pairOf[b] ?? -1) : -1;
    this.#swap(a, b, a2, b2, from, to);
    for (const [place, index] of this.#affected.entries())
      this.#itemCost[index] = this.#costBefore[place] ?? 0;
  }

  #costOf(index: number): number {
    const item = this.layer.items[index];
    const slot = this.slotOf[index] ?? -1;
    if (!item) return 0;
    const group = this.#groupOf[slot] ?? -1;
    if (group === this.#groups - 1) return brokenRuleCost * item.width;
    const second = item.width === 2 ? (this.pairOf[slot] ?? -1) : slot;
    if (this.#isKept(index))
      return this.#harmCost(item, slot, second, (this.layer.items[item.previous]?.act ?? 0) + 1);
    const isIdle = this.#idleBefore(slot, item.act) && this.#idleBefore(second, item.act);
    const cold = this.layer.canPrepare && isIdle && !this.#harmedAt(item, slot, second, item.act - 1);
    const entering = (cold ? item.coldCost[group] : item.hotCost[group]) ?? 0;
    const late = item.mustPrepare && !cold ? brokenRuleCost : 0;
    return entering + late + this.#harmCost(item, slot, second, item.act);
  }

  #choicesOf(item: Item, index: number): Int32Array {
    const mayEnter = new Set(item.reach);
    for (const group of mayEnter) this.#mayEnter[index * this.#groups + group] = 1;
    this.#mayEnter[index * this.#groups + this.#groups - 1] = item.locked === null ? 1 : 0;
    if (item.locked !== null) return Int32Array.of();
    return Int32Array.from(
      this.layer.slots.flatMap((slot, place) =>
        mayEnter.has(slot.group) && (item.width === 1 || slot.pairedWith >= 0) ? [place] : [],
      ),
    );
  }

  #setUp(assignment: Assignment, firstLimbo: number): void {
    const nextLimbo = new Int32Array(this.acts).fill(firstLimbo);
    const place = (item: Item, index: number, wanted: number) => {
      let slot = wanted;
      const second = item.width === 2 ? (this.pairOf[slot] ?? -1) : slot;
      const isTaken = (at: number) => at < 0 || (this.#player[at * this.acts + item.act] ?? -1) >= 0;
      if (isTaken(slot) || isTaken(second)) {
        slot = nextLimbo[item.act] ?? firstLimbo;
        nextLimbo[item.act] = slot + 2;
      }
      this.slotOf[index] = slot;
      const slots = item.width === 2 ? [slot, this.pairOf[slot] ?? slot] : [slot];
      for (const at of slots) {
        this.#player[at * this.acts + item.act] = index;
        this.#count(at, item.act, 1, item);
      }
    };
    // Locked items never move, so they are put down first and whatever is in their way waits.
    this.layer.items.forEach((item, index) => {
      if (item.locked !== null) place(item, index, item.locked);
    });
    this.layer.items.forEach((item, index) => {
      if (item.locked === null) place(item, index, assignment[index] ?? -1);
    });
  }

  /** Counts an item in or out of a slot: its bank's switch, and the slots near the lead vocal. */
  #count(slot: number, act: number, by: number, item: Item): void {
    const bank = this.#bankOf[slot] ?? -1;
    if (bank < 0) return;
    const cell = bank * this.acts + act;
    if (item.phantom === 'on') this.#switchesOn[cell] = (this.#switchesOn[cell] ?? 0) + by;
    if (this.#isNear[(this.#groupOf[slot] ?? 0) * this.acts + act])
      this.#nearUsed[act] = (this.#nearUsed[act] ?? 0) + by;
  }

  #lastBefore(slot: number, act: number): number {
    for (let cell = slot * this.acts + act - 1; cell >= slot * this.acts; cell--) {
      const index = this.#player[cell] ?? -1;
      if (index >= 0) return index;
    }
    return -1;
  }

  #idleBefore(slot: number, act: number): boolean {
    return act === 0 || (this.#player[slot * this.acts + act - 1] ?? -1) < 0;
  }

  #isKept(index: number): boolean {
    const item = this.layer.items[index];
    if (!item || item.previous < 0) return false;
    const slot = this.slotOf[index] ?? -1;
    if (this.slotOf[item.previous] !== slot) return false;
    if (this.#lastBefore(slot, item.act) !== item.previous) return false;
    return item.width === 1 || this.#lastBefore(this.pairOf[slot] ?? slot, item.act) === item.previous;
  }

  #harmedAt(item: Item, slot: number, second: number, act: number): boolean {
    if (item.phantom !== 'off' || act < 0) return false;
    const on = (place: number) => (this.#switchesOn[(this.#bankOf[place] ?? -1) * this.acts + act] ?? 0) > 0;
    return on(slot) || on(second);
  }

  /** A broken rule for each act since `from` in which 48 V harms what is plugged. */
  #harmCost(item: Item, slot: number, second: number, from: number): number {
    if (item.phantom !== 'off') return 0;
    let cost = 0;
    for (let act = from; act <= item.act; act++)
      if (this.#harmedAt(item, slot, second, act)) cost += brokenRuleCost;
    return cost;
  }

  /** A broken rule for each line that takes a spare in these acts. */
  #spareCosts(from: number, to: number): number {
    let taken = 0;
    for (let act = from; act <= to; act++)
      taken += Math.max(0, (this.#nearUsed[act] ?? 0) - (this.#nearRoom[act] ?? 0));
    return taken * brokenRuleCost;
  }

  #mayCross(from: number, to: number, width: number, first: number, last: number): boolean {
    const group = this.#groupOf[to] ?? 0;
    for (let act = first; act <= last; act++) {
      const index = this.#player[from * this.acts + act] ?? -1;
      if (index < 0) continue;
      const item = this.layer.items[index];
      if (!item || item.locked !== null || item.width > width) return false;
      if (!this.#mayEnter[index * this.#groups + group]) return false;
    }
    return true;
  }

  #gatherAffected(a: number, b: number, from: number, to: number): void {
    this.#stampNow++;
    this.#affected.length = 0;
    this.#gatherMore(a, b, from, to);
    if (this.#harmed.length === 0) return;
    const bankA = this.#bankOf[a];
    const bankB = this.#bankOf[b];
    if (bankA === bankB) return;
    for (const index of this.#harmed) {
      const bank = this.#bankOf[this.slotOf[index] ?? 0];
      if (bank === bankA || bank === bankB) this.#gather(index);
    }
  }

  #gatherMore(a: number, b: number, from: number, to: number): void {
    for (let act = from; act <= to; act++) {
      this.#gather(this.#player[a * this.acts + act] ?? -1);
      this.#gather(this.#player[b * this.acts + act] ?? -1);
    }
    this.#gather(this.#firstAfter(a, to));
    this.#gather(this.#firstAfter(b, to));
  }

  #firstAfter(slot: number, act: number): number {
    for (let cell = slot * this.acts + act + 1; cell < (slot + 1) * this.acts; cell++) {
      const index = this.#player[cell] ?? -1;
      if (index >= 0) return index;
    }
    return -1;
  }

  #gather(index: number): void {
    if (index < 0 || this.#stamp[index] === this.#stampNow) return;
    this.#stamp[index] = this.#stampNow;
    this.#affected.push(index);
  }

  #swap(a: number, b: number, a2: number, b2: number, from: number, to: number): void {
    this.#swapCells(a, b, from, to);
    if (a2 >= 0) this.#swapCells(a2, b2, from, to);
    this.#settle(a, b, a2, b2, from, to);
  }

  #swapCells(a: number, b: number, from: number, to: number): void {
    for (let act = from; act <= to; act++) {
      const cellA = a * this.acts + act;
      const cellB = b * this.acts + act;
      const inA = this.#player[cellA] ?? -1;
      const inB = this.#player[cellB] ?? -1;
      this.#player[cellA] = inB;
      this.#player[cellB] = inA;
      const itemA = this.layer.items[inA];
      const itemB = this.layer.items[inB];
      if (itemA) {
        this.#count(a, act, -1, itemA);
        this.#count(b, act, 1, itemA);
      }
      if (itemB) {
        this.#count(b, act, -1, itemB);
        this.#count(a, act, 1, itemB);
      }
    }
  }

  /** Notes the new left slot of everything that crossed. */
  #settle(a: number, b: number, a2: number, b2: number, from: number, to: number): void {
    for (let act = from; act <= to; act++) {
      // The right slots first, so that a pair ends up with its left one.
      for (const slot of [a2, b2, a, b]) {
        if (slot < 0) continue;
        const index = this.#player[slot * this.acts + act] ?? -1;
        if (index >= 0) this.slotOf[index] = slot;
      }
    }
  }
}

/** The most items that one act could ever have without a place. */
function mostItems(layer: Layer): number {
  const count = layer.acts.map(() => 0);
  for (const item of layer.items) count[item.act] = (count[item.act] ?? 0) + 1;
  return Math.max(0, ...count);
}
