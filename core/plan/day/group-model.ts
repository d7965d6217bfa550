import { type LinearModel, ModelBuilder } from './linear-model.ts';
import { type Entry, type Item, itemsByAct, type Layer } from './problem.ts';

/**
 * Which group each item goes to and how it enters, without saying which slot: the slots of a stage box are
 * interchangeable, and leaving them out makes the model some thirty times faster to solve. Its optimum is a lower
 * bound of every real patch, because it only counts what a group must hold in each act:
 *
 * - each item enters one group in one way (hot, cold or kept), and is kept only where it was;
 * - items that play, items prepared for the next act and items that stay in a gap fit into the group's slots;
 * - pairs alone fit into its pairs of slots;
 * - with several slots on one phantom switch, whole banks are on or off;
 * - the spare lines near the lead vocal stay free.
 */
export type GroupModel = Columns & { model: LinearModel };

type Columns = {
  /** Column of an item's entry into a group, or -1: `columnOf[entry][item * groupCount + group]`. */
  columnOf: Record<Entry, Int32Array>;
  groupCount: number;
};

/** A way for each item: its group and entry. -1 where it has none. */
export type GroupChoice = { group: Int32Array; entry: Entry[] };

const entries = ['hot', 'cold', 'kept'] as const;

export function buildGroupModel(layer: Layer): GroupModel {
  const builder = new ModelBuilder();
  const groupCount = layer.groups.length;
  const columnOf = Object.fromEntries(
    entries.map((entry) => [entry, new Int32Array(layer.items.length * groupCount).fill(-1)]),
  ) as Record<Entry, Int32Array>;
  const built = { columnOf, groupCount };
  const byAct = itemsByAct(layer);
  layer.items.forEach((item, index) => {
    addColumns(builder, built, layer, item, index);
  });
  layer.items.forEach((item, index) => {
    addItemRows(builder, built, item, index);
  });
  layer.acts.forEach((_, act) => {
    addActRows(builder, built, layer, byAct, act);
  });
  return { ...built, model: builder.build() };
}

function at(model: Columns, entry: Entry, item: number, group: number): number {
  return model.columnOf[entry][item * model.groupCount + group] ?? -1;
}

function addColumns(builder: ModelBuilder, built: Columns, layer: Layer, item: Item, index: number): void {
  const first = item.act === 0;
  for (const group of item.reach) {
    const cell = index * built.groupCount + group;
    // The first act is set up before anybody plays, so all of it is prepared in peace.
    const mayBeHot = !layer.canPrepare || (!first && !item.mustPrepare);
    if (mayBeHot) built.columnOf.hot[cell] = builder.column(item.hotCost[group] ?? 0);
    if (layer.canPrepare) built.columnOf.cold[cell] = builder.column(item.coldCost[group] ?? 0);
    if (layer.items[item.previous]?.reach.includes(group)) built.columnOf.kept[cell] = builder.column(0);
  }
}

function addItemRows(builder: ModelBuilder, built: Columns, item: Item, index: number): void {
  const all: [number, number][] = [];
  for (const group of item.reach) {
    for (const entry of entries) {
      const column = at(built, entry, index, group);
      if (column >= 0) all.push([column, 1]);
    }
    const kept = at(built, 'kept', index, group);
    if (kept >= 0) builder.row(-1, 0, [[kept, 1], ...terms(built, entries, item.previous, group, -1)]);
  }
  builder.row(1, 1, all);
}

/** The columns of one item and group with one factor. */
function terms(
  built: Columns,
  of: readonly Entry[],
  item: number,
  group: number,
  factor: number,
): [number, number][] {
  return of.flatMap((entry): [number, number][] => {
    const column = at(built, entry, item, group);
    return column < 0 ? [] : [[column, factor]];
  });
}

/** Everything that may be plugged in a group while an act plays, each with the columns that put it there. */
function plugged(built: Columns, layer: Layer, byAct: number[][], act: number, group: number): Plugged[] {
  const found: Plugged[] = [];
  const add = (index: number, of: readonly Entry[]) => {
    const columns = terms(built, of, index, group, 1);
    if (columns.length > 0) found.push({ item: layer.items[index] as Item, columns });
  };
  for (const index of byAct[act] ?? []) add(index, entries);
  for (const index of byAct[act + 1] ?? []) add(index, ['cold']);
  layer.items.forEach((item, index) => {
    const previous = layer.items[item.previous];
    if (previous && previous.act < act && act < item.act) add(index, ['kept']);
  });
  return found;
}

function addActRows(
  builder: ModelBuilder,
  built: Columns,
  layer: Layer,
  byAct: number[][],
  act: number,
): void {
  const inside = layer.groups.map((_, group) => plugged(built, layer, byAct, act, group));
  layer.groups.forEach((members, group) => {
    if (!members.forPairs) addRoomRow(builder, layer, inside, group);
    const pairs = (inside[group] ?? []).filter((it) => it.item.width === 2);
    const room = pairSlots(layer, byAct, act, group);
    if (pairs.length > room)
      builder.row(
        Number.NEGATIVE_INFINITY,
        room,
        pairs.flatMap((it) => it.columns),
      );
  });
  addPhantomRows(builder, layer, inside, act);
  addSpareRow(builder, built, layer, byAct, act);
}

type Plugged = { item: Item; columns: [number, number][] };

/** What a group holds, and what lies over it in a group for pairs, fits into its slots. */
function addRoomRow(builder: ModelBuilder, layer: Layer, inside: Plugged[][], group: number): void {
  const slots = layer.groups[group]?.slots ?? [];
  let weight = 0;
  const columns: [number, number][] = [];
  layer.groups.forEach((other, place) => {
    const shared =
      place === group ? null : other.forPairs ? other.slots.filter((it) => slots.includes(it)).length : 0;
    if (shared === 0) return;
    for (const it of inside[place] ?? []) {
      const factor = shared ?? it.item.width;
      weight += factor;
      for (const [column] of it.columns) columns.push([column, factor]);
    }
  });
  if (weight > slots.length) builder.row(Number.NEGATIVE_INFINITY, slots.length, columns);
}

/** Pairs of slots of a group, without those that singles locked into them take away in an act. */
function pairSlots(layer: Layer, byAct: number[][], act: number, group: number): number {
  const lockedSingles = new Set(
    (byAct[act] ?? []).flatMap((index) => {
      const item = layer.items[index];
      return item?.width === 1 && item.locked !== null ? [item.locked] : [];
    }),
  );
  const slots = layer.groups[group]?.slots ?? [];
  return slots.filter((slot) => {
    const right = layer.slots[slot]?.pairedWith ?? -1;
    return slots.includes(right) && !lockedSingles.has(slot) && !lockedSingles.has(right);
  }).length;
}

type PhantomUse = { banks: Map<number, number>; off: [number, number][]; on: [number, number][] };

/** What 48 V would harm as long as it is plugged, and what needs it while it plays, by group. */
function phantomUse(layer: Layer, insideOf: Plugged[][], act: number): PhantomUse[] {
  const weighted = (list: Plugged[]) =>
    list.flatMap((it) => it.columns.map(([column]): [number, number] => [column, it.item.width]));
  return layer.groups.map((group, index) => {
    const inside = insideOf[index] ?? [];
    return {
      banks: bankSizes(layer, group.slots),
      off: weighted(inside.filter((it) => it.item.phantom === 'off')),
      on: weighted(inside.filter((it) => it.item.phantom === 'on' && it.item.act === act)),
    };
  });
}

function addPhantomRows(builder: ModelBuilder, layer: Layer, insideOf: Plugged[][], act: number): void {
  const wholeBanks = bankSizes(layer, [...layer.slots.keys()]);
  const uses = phantomUse(layer, insideOf, act);
  const ofOneBank = uses.filter((use) => use.banks.size === 1);
  for (const bank of wholeBanks.keys())
    addSwitchRows(
      builder,
      ofOneBank.filter((use) => use.banks.has(bank)),
    );
  for (const use of uses) {
    const isShared = [...use.banks.keys()].some((bank) => (wholeBanks.get(bank) ?? 0) > 1);
    if (use.banks.size > 1 && isShared) addBankCountRows(builder, use);
  }
}

/** Groups within one bank follow its one switch, which is on or off. */
function addSwitchRows(builder: ModelBuilder, uses: PhantomUse[]): void {
  const isAsked = uses.some((use) => use.off.length > 0) && uses.some((use) => use.on.length > 0);
  if (!isAsked) return;
  const isOn = builder.column(0);
  for (const { banks, off, on } of uses) {
    const size = Math.max(...banks.values());
    if (off.length > 0) builder.row(Number.NEGATIVE_INFINITY, size, [...off, [isOn, size]]);
    if (on.length > 0) builder.row(Number.NEGATIVE_INFINITY, 0, [...on, [isOn, -size]]);
  }
}

/** In a group of several banks, whole banks are off, as many as it takes for what would be harmed. */
function addBankCountRows(builder: ModelBuilder, { banks, off, on }: PhantomUse): void {
  if (off.length === 0 || on.length === 0) return;
  const largest = Math.max(...banks.values());
  const banksOff = builder.column(0, 0, banks.size);
  builder.row(Number.NEGATIVE_INFINITY, 0, [...off, [banksOff, -largest]]);
  builder.row(Number.NEGATIVE_INFINITY, largest * banks.size, [...on, [banksOff, largest]]);
}

function bankSizes(layer: Layer, slots: number[]): Map<number, number> {
  const sizes = new Map<number, number>();
  for (const index of slots) {
    const bank = layer.slots[index]?.bank ?? -1;
    sizes.set(bank, (sizes.get(bank) ?? 0) + 1);
  }
  return sizes;
}

function addSpareRow(
  builder: ModelBuilder,
  built: Columns,
  layer: Layer,
  byAct: number[][],
  act: number,
): void {
  const wanted = layer.acts[act];
  if (!wanted || wanted.spareCount === 0) return;
  const slots = wanted.spareGroups.reduce((sum, group) => {
    const members = layer.groups[group];
    return members && !members.forPairs ? sum + members.slots.length : sum;
  }, 0);
  const playing = (byAct[act] ?? []).flatMap((index) =>
    wanted.spareGroups.flatMap((group) =>
      terms(built, entries, index, group, layer.items[index]?.width ?? 1),
    ),
  );
  if (playing.length > 0) builder.row(Number.NEGATIVE_INFINITY, slots - wanted.spareCount, playing);
}

/** Column values to the group and entry of each item: the largest of its columns. */
export function readGroupChoice(layer: Layer, built: Columns, values: Float64Array): GroupChoice {
  const group = new Int32Array(layer.items.length).fill(-1);
  const entry: Entry[] = layer.items.map(() => 'hot');
  layer.items.forEach((_, index) => {
    let largest = 0;
    for (let candidate = 0; candidate < built.groupCount; candidate++)
      for (const way of entries) {
        const column = at(built, way, index, candidate);
        const value = column < 0 ? 0 : (values[column] ?? 0);
        if (value <= largest) continue;
        largest = value;
        group[index] = candidate;
        entry[index] = way;
      }
  });
  return { group, entry };
}
