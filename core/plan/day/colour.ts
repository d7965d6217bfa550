import { type Chain, chainFrom } from './chains.ts';
import { costOfPatch } from './patch-cost.ts';
import type { Assignment, Item, Layer, Phantom } from './problem.ts';
import { type Seeded, seeded, shuffled } from './seeded-order.ts';

/**
 * From groups to slots: every chain gets a slot (a pair of slots) of its group for as long as it holds it. With
 * single lines alone that always works out; pairs can leave holes that a longer chain does not fit into, so
 * several orders are tried, and a chain that fits nowhere is cut where the second plug costs least.
 */
export function colourChains(
  layer: Layer,
  chains: readonly Chain[],
  options: { attempts: number; seed: number; goodEnough: number },
): { assignment: Assignment; cost: number } | null {
  const next = seeded(options.seed);
  let best: { assignment: Assignment; cost: number } | null = null;
  for (let attempt = 0; attempt < options.attempts; attempt++) {
    const assignment = tryOrder(layer, orderOfAttempt(layer, chains, attempt, next), next, attempt);
    if (!assignment) continue;
    const cost = costOfPatch(layer, assignment);
    if (!best || cost < best.cost) best = { assignment, cost };
    if (best.cost <= options.goodEnough) return best;
  }
  return best;
}

/** Locked chains first, for they have no choice; then by start, pairs before singles, later attempts shuffled. */
function orderOfAttempt(layer: Layer, chains: readonly Chain[], attempt: number, next: Seeded): Chain[] {
  const mixed = attempt === 0 ? [...chains] : shuffled(chains, next);
  const width = (chain: Chain) => layer.items[chain.items[0] ?? -1]?.width ?? 1;
  const length = (chain: Chain) => chain.to - chain.from;
  // Three habits of packing take turns: as they come, pairs first, long ones first.
  const habit = attempt % 3;
  return mixed.sort((a, b) => {
    const locked = Number(isLocked(layer, b)) - Number(isLocked(layer, a));
    if (locked !== 0) return locked;
    // What 48 V harms comes early, before every bank has something that needs it.
    const harmed = Number(phantomOf(layer, b) === 'off') - Number(phantomOf(layer, a) === 'off');
    if (harmed !== 0) return harmed;
    if (habit === 1 && width(a) !== width(b)) return width(b) - width(a);
    if (habit === 2 && length(a) !== length(b)) return length(b) - length(a);
    return a.from - b.from || width(b) - width(a);
  });
}

function isLocked(layer: Layer, chain: Chain): boolean {
  return chain.items.some((index) => layer.items[index]?.locked !== null);
}

function phantomOf(layer: Layer, chain: Chain): Phantom {
  return layer.items[chain.items[0] ?? -1]?.phantom ?? 'any';
}

function tryOrder(layer: Layer, order: Chain[], next: Seeded, attempt: number): Assignment | null {
  const board = new Board(layer);
  const waiting = order.reverse();
  for (let chain = waiting.pop(); chain; chain = waiting.pop()) {
    const slot = board.bestSlot(chain, next, attempt > 0);
    if (slot >= 0) {
      board.place(chain, slot);
      continue;
    }
    const parts = cut(layer, chain);
    if (!parts) return null;
    waiting.push(...parts);
  }
  return board.assignment;
}

/** Two chains from one at its cheapest link; a single item prepared early becomes a hot one; null: no way. */
function cut(layer: Layer, chain: Chain): Chain[] | null {
  if (chain.items.length === 1) {
    const item = layer.items[chain.items[0] ?? -1] as Item;
    const mayBeHot = chain.cold && item.act > 0 && !item.mustPrepare;
    return mayBeHot ? [chainFrom(layer, chain.group, chain.items, false)] : null;
  }
  const costAt = (place: number) => layer.items[chain.items[place] ?? -1]?.coldCost[chain.group] ?? 0;
  let cheapest = 1;
  for (let place = 2; place < chain.items.length; place++)
    if (costAt(place) < costAt(cheapest)) cheapest = place;
  return [
    chainFrom(layer, chain.group, chain.items.slice(cheapest), layer.canPrepare),
    chainFrom(layer, chain.group, chain.items.slice(0, cheapest), chain.cold),
  ];
}

/** Which slot is held in which act, and what each phantom switch is asked for. */
class Board {
  readonly assignment: Assignment;
  readonly #layer: Layer;
  readonly #acts: number;
  readonly #held: Uint8Array;
  readonly #needsOn = new Map<string, number>();
  readonly #needsOff = new Map<string, number>();

  constructor(layer: Layer) {
    this.#layer = layer;
    this.#acts = layer.acts.length;
    this.#held = new Uint8Array(layer.slots.length * this.#acts);
    this.assignment = layer.items.map(() => -1);
  }

  /** The slot that leaves the smallest hole, or -1. */
  bestSlot(chain: Chain, next: Seeded, mixed: boolean): number {
    const group = this.#layer.groups[chain.group];
    if (!group) return -1;
    const locked = chain.items
      .map((index) => this.#layer.items[index]?.locked ?? null)
      .filter((slot) => slot !== null);
    const [only] = locked;
    if (only !== undefined)
      return locked.every((slot) => slot === only) && this.#fits(chain, only) ? only : -1;
    let best = -1;
    let bestScore = Number.POSITIVE_INFINITY;
    for (const slot of group.slots) {
      if (!this.#fits(chain, slot)) continue;
      const score = this.#score(chain, slot) + (mixed ? next() : 0);
      if (score < bestScore) {
        best = slot;
        bestScore = score;
      }
    }
    return best;
  }

  place(chain: Chain, slot: number): void {
    for (const index of chain.items) this.assignment[index] = slot;
    for (const taken of this.#taken(chain, slot))
      this.#held.fill(1, this.#cell(taken, chain.from), this.#cell(taken, chain.to) + 1);
    this.#askPhantom(chain, slot);
  }

  #cell(slot: number, act: number): number {
    return slot * this.#acts + act;
  }

  #taken(chain: Chain, slot: number): number[] {
    const width = this.#layer.items[chain.items[0] ?? -1]?.width ?? 1;
    return width === 1 ? [slot] : [slot, this.#layer.slots[slot]?.pairedWith ?? -1];
  }

  #isFree(slot: number, from: number, to: number): boolean {
    for (let act = from; act <= to; act++) if (this.#held[this.#cell(slot, act)]) return false;
    return true;
  }

  #fits(chain: Chain, slot: number): boolean {
    const free = this.#taken(chain, slot).every(
      (taken) => taken >= 0 && this.#isFree(taken, chain.from, chain.to),
    );
    return free && this.#phantomFits(chain, slot);
  }

  /** Acts that the slot was idle before, and for a single a step more where it would break a free pair. */
  #score(chain: Chain, slot: number): number {
    let idle = 0;
    for (let act = chain.from - 1; act >= 0 && !this.#held[this.#cell(slot, act)]; act--) idle++;
    const item = this.#layer.items[chain.items[0] ?? -1];
    const phantom = this.#phantomScore(chain, slot);
    if (item?.width !== 1) return idle + phantom;
    const partner = this.#partner(slot);
    const breaksPair = partner >= 0 && this.#isFree(partner, chain.from, chain.to);
    return idle + phantom + (breaksPair ? 3 : 0);
  }

  #partner(slot: number): number {
    const right = this.#layer.slots[slot]?.pairedWith ?? -1;
    if (right >= 0) return right;
    return this.#layer.slots[slot - 1]?.pairedWith === slot ? slot - 1 : -1;
  }

  /** Keeps what needs 48 V together: a step for each act in which the chain would switch a further bank on. */
  #phantomScore(chain: Chain, slot: number): number {
    if (phantomOf(this.#layer, chain) !== 'on') return 0;
    return this.#switchAsks(chain, slot).filter((key) => !this.#needsOn.has(key)).length;
  }

  #phantomFits(chain: Chain, slot: number): boolean {
    const phantom = phantomOf(this.#layer, chain);
    if (phantom === 'any') return true;
    const rival = phantom === 'on' ? this.#needsOff : this.#needsOn;
    return this.#switchAsks(chain, slot).every((key) => !rival.has(key));
  }

  #askPhantom(chain: Chain, slot: number): void {
    const phantom = phantomOf(this.#layer, chain);
    if (phantom === 'any') return;
    const asked = phantom === 'on' ? this.#needsOn : this.#needsOff;
    for (const key of this.#switchAsks(chain, slot)) asked.set(key, 1);
  }

  /** The switch and act pairs that a chain asks about: "on" only while it plays, "off" as long as it is plugged. */
  #switchAsks(chain: Chain, slot: number): string[] {
    const item = this.#layer.items[chain.items[0] ?? -1] as Item;
    const acts =
      item.phantom === 'on'
        ? chain.items.map((index) => this.#layer.items[index]?.act ?? 0)
        : Array.from({ length: chain.to - chain.from + 1 }, (_, step) => chain.from + step);
    return this.#taken(chain, slot).flatMap((taken) =>
      acts.map((act) => `${this.#layer.slots[taken]?.bank ?? -1} ${act}`),
    );
  }
}
