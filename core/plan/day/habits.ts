import { type Assignment, type Item, itemsByAct, type Layer, slotsTaken } from './problem.ts';

/**
 * How a day is patched by habit, to compare a plan with. `list order`: every act starts from the first socket with
 * its own list. `one festival patch`: every line that comes more than once has a home for the day, the rest takes
 * what is free. `keep and fill`: what is plugged stays, the rest goes to idle sockets first, as a skilled crew does.
 */
export const habits = ['list order', 'one festival patch', 'keep and fill'] as const;
export type Habit = (typeof habits)[number];

/** The patch of a habit. Items for which the habit finds no slot stay without one (-1). */
export function patchByHabit(layer: Layer, habit: Habit): Assignment {
  if (habit === 'list order') return fillActs(layer, emptyPatch(layer), firstFree);
  if (habit === 'keep and fill') return fillActs(layer, emptyPatch(layer), cheapest);
  const homes = homesForRepeated(layer);
  return fillActs(layer, homes, firstFree);
}

/** Chooses a slot out of the free ones that an item may take; there is at least one. */
type Choice = (at: { layer: Layer; index: number; item: Item; free: number[]; before: Held }) => number;

/** What each slot last held: the act and the item, or -1. */
type Held = { act: Int32Array; item: Int32Array };

function emptyPatch(layer: Layer): Assignment {
  return layer.items.map((item) => item.locked ?? -1);
}

const firstFree: Choice = ({ free }) => Math.min(...free);

const cheapest: Choice = ({ layer, item, free, before }) => {
  let best = free[0] ?? -1;
  let bestCost = Number.POSITIVE_INFINITY;
  for (const slot of free) {
    const cost = greedyCost(layer, item, slot, before);
    if (cost >= bestCost) continue;
    best = slot;
    bestCost = cost;
  }
  return best;
};

/** Cost of entering a slot now, and of what is torn out there that a later act would have found plugged. */
function greedyCost(layer: Layer, item: Item, slot: number, before: Held): number {
  const taken = slotsTaken(layer, item, slot);
  const group = layer.slots[slot]?.group ?? 0;
  if (item.previous >= 0 && taken.every((at) => before.item[at] === item.previous)) return -1;
  const isIdle = item.act === 0 || taken.every((at) => (before.act[at] ?? -1) < item.act - 1);
  const torn = taken.reduce((sum, at) => {
    const held = layer.items[before.item[at] ?? -1];
    return held && held.next >= 0 ? sum + (held.coldCost[group] ?? 0) : sum;
  }, 0);
  const late = item.mustPrepare && !isIdle ? 1_000_000 : 0;
  // A single beside a free socket of a pair spoils the pair for later.
  const right = layer.slots[slot]?.pairedWith ?? -1;
  const spoils = item.width === 1 && (right >= 0 ? (before.act[right] ?? -1) < item.act - 1 : false) ? 1 : 0;
  return (
    (isIdle && layer.canPrepare ? (item.coldCost[group] ?? 0) : (item.hotCost[group] ?? 0)) +
    torn +
    late +
    spoils
  );
}

function fillActs(layer: Layer, given: Assignment, choose: Choice): Assignment {
  const assignment = [...given];
  const before: Held = {
    act: new Int32Array(layer.slots.length).fill(-9),
    item: new Int32Array(layer.slots.length).fill(-1),
  };
  for (const inAct of itemsByAct(layer)) {
    fillAct(layer, assignment, inAct, choose, before);
    holdAct(layer, assignment, inAct, before);
  }
  return assignment;
}

function fillAct(layer: Layer, assignment: Assignment, inAct: number[], choose: Choice, before: Held): void {
  const used = new Set<number>();
  const take = (index: number) => {
    const item = layer.items[index];
    const slot = assignment[index] ?? -1;
    if (item && slot >= 0) for (const taken of slotsTaken(layer, item, slot)) used.add(taken);
  };
  inAct.forEach(take);
  for (const index of choose === cheapest ? byNeed(layer, inAct, before) : inAct) {
    const item = layer.items[index];
    if (!item || (assignment[index] ?? -1) >= 0) continue;
    const free = freeSlots(layer, item, used);
    if (free.length === 0) continue;
    assignment[index] = choose({ layer, index, item, free, before });
    take(index);
  }
}

/** Notes what the slots hold after an act. */
function holdAct(layer: Layer, assignment: Assignment, inAct: number[], before: Held): void {
  for (const index of inAct) {
    const item = layer.items[index];
    const slot = assignment[index] ?? -1;
    if (!item || slot < 0) continue;
    for (const taken of slotsTaken(layer, item, slot)) {
      before.act[taken] = item.act;
      before.item[taken] = index;
    }
  }
}

function freeSlots(layer: Layer, item: Item, used: ReadonlySet<number>): number[] {
  return item.reach.flatMap((group) =>
    (layer.groups[group]?.slots ?? []).filter((slot) => {
      const taken = slotsTaken(layer, item, slot);
      return taken.length > 0 && taken.every((at) => !used.has(at));
    }),
  );
}

/** What can stay comes first, then what must be ready early, then pairs, then what has the fewest boxes in reach. */
function byNeed(layer: Layer, inAct: number[], before: Held): number[] {
  const need = (index: number) => {
    const item = layer.items[index] as Item;
    const stays = item.previous >= 0 && before.item.includes(item.previous);
    return (
      (stays ? 0 : 1000) + (item.mustPrepare ? 0 : 500) + (item.width === 2 ? 0 : 100) + item.reach.length
    );
  };
  return [...inAct].sort((a, b) => need(a) - need(b));
}

/** A slot for the day for every key that comes more than once, in the order of their first act. */
function homesForRepeated(layer: Layer): Assignment {
  const assignment = emptyPatch(layer);
  const used = new Set(
    layer.items.flatMap((item) => (item.locked === null ? [] : slotsTaken(layer, item, item.locked))),
  );
  const homes = new Map<string, number>();
  layer.items.forEach((item, index) => {
    if (item.locked !== null || (item.previous < 0 && item.next < 0)) return;
    let home = homes.get(item.key);
    if (home === undefined) {
      const free = freeSlots(layer, item, used);
      home = free.length > 0 ? Math.min(...free) : -1;
      homes.set(item.key, home);
      for (const slot of home < 0 ? [] : slotsTaken(layer, item, home)) used.add(slot);
    }
    if (home >= 0 && item.reach.includes(layer.slots[home]?.group ?? -1)) assignment[index] = home;
  });
  return assignment;
}
