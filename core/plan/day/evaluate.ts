import type { Assignment, Entry, Item, Layer } from './problem.ts';

/**
 * The referee of every planner: it takes an assignment and works out, from the rules alone, what it costs and
 * which rules it breaks. It shares nothing with the planners but the problem, and looks at one slot and one act
 * at a time, slowly and plainly, so that it can be read against the rules.
 */
export type Evaluation = {
  cost: number;
  /** How each item enters its slot, by item index. */
  entries: Entry[];
  /** One for each act: what is done before it starts. The first act is set up in peace. */
  beforeAct: EntryCount[];
  broken: BrokenRule[];
};

/** Lines by the way they enter (a pair counts two), and what they cost together. */
export type EntryCount = { kept: number; cold: number; hot: number; cost: number };

export type BrokenRule = {
  rule:
    | 'no slot'
    | 'out of reach'
    | 'no pair'
    | 'taken twice'
    | 'moved from its lock'
    | 'phantom'
    | 'spare'
    | 'not ready';
  act: number;
  items: number[];
  /** One sentence with the names filled in. */
  what: string;
};

export function evaluate(layer: Layer, assignment: Assignment): Evaluation {
  const slotsOf = layer.items.map((item, index) => slotsOfItem(layer, item, assignment[index] ?? -1));
  const playing = layer.acts.map((_, act) => playersBySlot(layer, slotsOf, act));
  const entries = layer.items.map((_, index) => entryOf(layer, slotsOf, playing, index));
  const costs = layer.items.map((item, index) =>
    costOf(layer, item, assignment[index] ?? -1, entries[index]),
  );
  return {
    cost: costs.reduce((sum, cost) => sum + cost, 0),
    entries,
    beforeAct: layer.acts.map((_, act) => countEntries(layer, entries, costs, act)),
    broken: [
      ...layer.items.flatMap((item, index) =>
        brokenByItem(layer, item, index, assignment[index] ?? -1, entries[index]),
      ),
      ...layer.acts.flatMap((_, act) => [
        ...takenTwice(layer, playing, act),
        ...brokenPhantom(layer, slotsOf, entries, act),
        ...missingSpare(layer, playing, act),
      ]),
    ],
  };
}

function slotsOfItem(layer: Layer, item: Item, slot: number): number[] {
  if (slot < 0) return [];
  if (item.width === 1) return [slot];
  const second = layer.slots[slot]?.pairedWith ?? -1;
  return second < 0 ? [slot] : [slot, second];
}

/** For one act: which items play in which slot. */
function playersBySlot(layer: Layer, slotsOf: number[][], act: number): Map<number, number[]> {
  const players = new Map<number, number[]>();
  layer.items.forEach((item, index) => {
    if (item.act !== act) return;
    for (const slot of slotsOf[index] ?? []) players.set(slot, [...(players.get(slot) ?? []), index]);
  });
  return players;
}

function entryOf(layer: Layer, slotsOf: number[][], playing: Map<number, number[]>[], index: number): Entry {
  const item = layer.items[index] as Item;
  const mine = slotsOf[index] ?? [];
  const before = slotsOf[item.previous] ?? [];
  const sameSlots =
    mine.length > 0 && mine.length === before.length && mine.every((slot) => before.includes(slot));
  if (sameSlots) {
    const from = (layer.items[item.previous] as Item).act + 1;
    const between = playing.slice(from, item.act);
    if (between.every((players) => mine.every((slot) => !players.has(slot)))) return 'kept';
  }
  if (!layer.canPrepare) return 'hot';
  const actBefore = playing[item.act - 1];
  if (!actBefore) return 'cold';
  const isIdle = mine.every((slot) => !actBefore.has(slot));
  return isIdle && !waitsForPhantom(layer, item, mine, actBefore) ? 'cold' : 'hot';
}

/** What 48 V harms cannot be plugged early into a bank that is on for the act that still plays. */
function waitsForPhantom(
  layer: Layer,
  item: Item,
  mine: number[],
  actBefore: Map<number, number[]>,
): boolean {
  if (item.phantom !== 'off') return false;
  const banks = mine.map((slot) => layer.slots[slot]?.bank);
  return [...actBefore].some(
    ([slot, players]) =>
      banks.includes(layer.slots[slot]?.bank) &&
      players.some((index) => layer.items[index]?.phantom === 'on'),
  );
}

function costOf(layer: Layer, item: Item, slot: number, entry: Entry | undefined): number {
  const group = layer.slots[slot]?.group;
  if (group === undefined || entry === 'kept') return 0;
  return (entry === 'cold' ? item.coldCost[group] : item.hotCost[group]) ?? 0;
}

function countEntries(layer: Layer, entries: Entry[], costs: number[], act: number): EntryCount {
  const count: EntryCount = { kept: 0, cold: 0, hot: 0, cost: 0 };
  layer.items.forEach((item, index) => {
    if (item.act !== act) return;
    count[entries[index] as Entry] += item.width;
    count.cost += costs[index] ?? 0;
  });
  return count;
}

function brokenByItem(
  layer: Layer,
  item: Item,
  index: number,
  slot: number,
  entry: Entry | undefined,
): BrokenRule[] {
  const actName = layer.acts[item.act]?.name ?? '';
  const at = layer.slots[slot];
  const broken = (rule: BrokenRule['rule'], what: string): BrokenRule => ({
    rule,
    act: item.act,
    items: [index],
    what,
  });
  if (!at) return [broken('no slot', `${actName}: ${item.name} has no place.`)];
  const found: BrokenRule[] = [];
  if (item.locked !== null && item.locked !== slot) {
    const lock = layer.slots[item.locked]?.name ?? '';
    found.push(
      broken(
        'moved from its lock',
        `${actName}: ${item.name} is locked to ${lock} and was put on ${at.name}.`,
      ),
    );
  }
  if (!item.reach.includes(at.group))
    found.push(broken('out of reach', `${actName}: ${item.name} does not reach ${at.name}.`));
  if (item.width === 2 && at.pairedWith < 0)
    found.push(broken('no pair', `${actName}: ${item.name} is a pair and no pair starts at ${at.name}.`));
  if (item.mustPrepare && entry === 'hot')
    found.push(
      broken('not ready', `${actName}: ${item.name} is to be patched early, but ${at.name} is still in use.`),
    );
  return found;
}

function takenTwice(layer: Layer, playing: Map<number, number[]>[], act: number): BrokenRule[] {
  return [...(playing[act] ?? new Map<number, number[]>())].flatMap(([slot, players]) => {
    if (players.length < 2) return [];
    const names = players.map((index) => layer.items[index]?.name ?? '').join(' and ');
    const what = `${layer.acts[act]?.name ?? ''}: ${names} are both on ${layer.slots[slot]?.name ?? ''}.`;
    return [{ rule: 'taken twice', act, items: players, what } satisfies BrokenRule];
  });
}

/**
 * Whether an item is plugged at any time while `act` plays: it plays itself, it was prepared for the next act,
 * or it stays in its slot between two of its acts.
 */
function isPlugged(layer: Layer, entries: Entry[], index: number, act: number): boolean {
  const item = layer.items[index] as Item;
  if (item.act === act) return true;
  if (item.act === act + 1 && entries[index] === 'cold') return true;
  const previous = layer.items[item.previous];
  return entries[index] === 'kept' && previous !== undefined && previous.act < act && act < item.act;
}

/** A bank's one switch is on while an act plays that needs it; nothing that it harms may be plugged there then. */
function brokenPhantom(layer: Layer, slotsOf: number[][], entries: Entry[], act: number): BrokenRule[] {
  const banksOf = (index: number) => (slotsOf[index] ?? []).map((slot) => layer.slots[slot]?.bank);
  const needing = layer.items.flatMap((item, index) =>
    item.act === act && item.phantom === 'on' ? [index] : [],
  );
  const harmed = layer.items.flatMap((item, index) =>
    item.phantom === 'off' && isPlugged(layer, entries, index, act) ? [index] : [],
  );
  return harmed.flatMap((harmedIndex) => {
    const rival = needing.find((index) => banksOf(index).some((bank) => banksOf(harmedIndex).includes(bank)));
    if (rival === undefined) return [];
    const what =
      `${layer.acts[act]?.name ?? ''}: ${layer.items[rival]?.name ?? ''} needs 48 V on the bank of ` +
      `${layer.slots[slotsOf[rival]?.[0] ?? -1]?.name ?? ''}, and it would harm ${layer.items[harmedIndex]?.name ?? ''}.`;
    return [{ rule: 'phantom', act, items: [rival, harmedIndex], what } satisfies BrokenRule];
  });
}

/** A spare is free when the act that plays needs nothing of it; what waits there for a later act can be pulled. */
function missingSpare(layer: Layer, playing: Map<number, number[]>[], act: number): BrokenRule[] {
  const wanted = layer.acts[act];
  if (!wanted || wanted.spareCount === 0) return [];
  const free = layer.slots.filter(
    (slot, index) => wanted.spareGroups.includes(slot.group) && !playing[act]?.has(index),
  ).length;
  if (free >= wanted.spareCount) return [];
  const what = `${wanted.name}: ${free} of ${wanted.spareCount} spare lines in reach of the lead vocal are free.`;
  return [{ rule: 'spare', act, items: [], what }];
}
