import type { Chain } from './chains.ts';
import { type Item, type Layer, linkKeys, type SlotGroup, slotsTaken } from './problem.ts';

/** A part of a layer as a layer of its own, and which items and slots of the whole its own are. */
export type Narrowed = { layer: Layer; itemIndexes: number[]; slotIndexes: number[] };

/**
 * The same layer with its groups cut into parts; slots with one `partOf` within a group stay together, and where
 * that parts the two slots of a pair, the pair gets a group of its own over them. The narrower the groups, the
 * less a group model leaves out, and the longer it takes.
 */
function regroup(layer: Layer, partOf: (slot: number) => string | number): Layer {
  const { groups, oldGroup, newGroup } = cutGroups(layer, partOf);
  const isPair = (slot: number) => (layer.slots[slot]?.pairedWith ?? -1) >= 0;
  const pairGroups = layer.slots.flatMap((slot, index) =>
    isPair(index) && newGroup[index] !== newGroup[slot.pairedWith] ? [index] : [],
  );
  for (const left of pairGroups) {
    const right = layer.slots[left]?.pairedWith ?? -1;
    groups.push({ name: layer.slots[left]?.name ?? '', slots: [left, right], forPairs: true });
    oldGroup.push(layer.slots[left]?.group ?? -1);
  }
  const partsOf = layer.groups.map((_, old) => oldGroup.flatMap((it, index) => (it === old ? [index] : [])));
  const spreadOut = (costs: number[]) => oldGroup.map((group) => costs[group] ?? 0);
  const takes = (group: SlotGroup | undefined, width: number) =>
    width === 1
      ? !group?.forPairs
      : group?.slots.some((it) => group.slots.includes(layer.slots[it]?.pairedWith ?? -1));
  const reachOf = (item: Item) => {
    const parts = item.reach
      .flatMap((group) => partsOf[group] ?? [])
      .filter((it) => takes(groups[it], item.width));
    const { locked } = item;
    return locked === null ? parts : parts.filter((it) => groups[it]?.slots.includes(locked));
  };
  return {
    ...layer,
    groups,
    slots: layer.slots.map((slot, index) => ({ ...slot, group: newGroup[index] ?? -1 })),
    acts: layer.acts.map((act) => ({
      ...act,
      spareGroups: act.spareGroups.flatMap((it) => partsOf[it] ?? []),
    })),
    items: layer.items.map((item) => ({
      ...item,
      reach: reachOf(item),
      hotCost: spreadOut(item.hotCost),
      coldCost: spreadOut(item.coldCost),
    })),
  };
}

function cutGroups(layer: Layer, partOf: (slot: number) => string | number) {
  const groups: SlotGroup[] = [];
  const oldGroup: number[] = [];
  const newGroup = new Int32Array(layer.slots.length);
  layer.groups.forEach((group, old) => {
    const parts = new Map<string | number, number>();
    for (const slot of group.slots) {
      const part = partOf(slot);
      const index = parts.get(part) ?? groups.length;
      if (!parts.has(part)) {
        parts.set(part, index);
        groups.push({ name: group.name, slots: [] });
        oldGroup.push(old);
      }
      groups[index]?.slots.push(slot);
      newGroup[slot] = index;
    }
  });
  return { groups, oldGroup, newGroup };
}

/** How many acts from the start of the day are settled line by line, as they are once they have been played. */
function actsPlayed(layer: Layer): number {
  const open = layer.items.filter((item) => item.locked === null).map((item) => item.act);
  return Math.min(layer.acts.length, ...open);
}

/**
 * A slot to which a single is locked is unlike the rest of its group, and so is its neighbour in the pair: both
 * become groups of their own. A pair of slots with a locked pair becomes one.
 */
function partByLock(layer: Layer, fromAct: number): (slot: number) => string {
  const single = new Set<number>();
  const pair = new Set<number>();
  for (const item of layer.items)
    if (item.locked !== null && item.act >= fromAct)
      (item.width === 1 ? single : pair).add(leftOfPair(layer, item.locked));
  return (slot) => {
    const left = leftOfPair(layer, slot);
    if (single.has(left)) return `slot ${slot}`;
    return pair.has(left) ? `pair ${left}` : 'open';
  };
}

/** Groups of slots that are alike but for locks. */
export function groupByEveryLock(layer: Layer): Layer {
  return regroup(layer, partByLock(layer, 0));
}

/** Groups of a pair of slots (or a single one): inside, nothing is left to choose that costs anything. */
export function groupByPairs(layer: Layer): Layer {
  return regroup(layer, partByPair(layer));
}

function partByPair(layer: Layer): (slot: number) => string {
  const part = partByLock(layer, 0);
  return (slot) => (part(slot) === 'open' ? `pair ${leftOfPair(layer, slot)}` : part(slot));
}

/** How far the slots of a box are told apart: the further, the less is only counted, and the longer it takes. */
export type Apart = 'locks' | 'use' | 'pairs';

/**
 * The layer with the slots of each group told apart: by their locks; by phantom switch and by what the acts that were
 * played leave in them as well; or pair by pair, as in `groupByPairs`. By locks, what has been played is counted in
 * its box: told apart slot by slot, it would make the model of a day that is half over larger than that of a whole one.
 */
export function groupApart(layer: Layer, apartOf: (group: number) => Apart): Layer {
  const locks = partByLock(layer, actsPlayed(layer));
  const use = partByUse(layer);
  const pairs = partByPair(layer);
  return regroup(layer, (slot) => {
    const apart = apartOf(layer.slots[slot]?.group ?? -1);
    if (apart === 'pairs') return pairs(slot);
    return apart === 'use' ? `${locks(slot)} ${use(slot)}` : locks(slot);
  });
}

function partByUse(layer: Layer): (slot: number) => string {
  const hasSwitches = sharesSwitches(layer);
  const left = leftByPlayed(layer);
  return (slot) => {
    const start = leftOfPair(layer, slot);
    const { bank, pairedWith } = layer.slots[start] ?? { bank: -1, pairedWith: -1 };
    return `${hasSwitches ? bank : ''} ${left(start)} ${left(pairedWith)}`;
  };
}

/** Whether telling slots apart by use tells more than their locks do. */
export function canTellUse(layer: Layer): boolean {
  return sharesSwitches(layer) || actsPlayed(layer) > 0;
}

/** What is in a slot when the played acts are over: a line that comes again, one that can go, or nothing. */
function leftByPlayed(layer: Layer): (slot: number) => string {
  const played = actsPlayed(layer);
  const left = new Map<number, string>();
  layer.items.forEach((item, index) => {
    if (item.locked === null || item.act >= played) return;
    const comesAgain = (layer.items[item.next]?.act ?? -1) >= played;
    const isBusy = item.act === played - 1;
    for (const slot of slotsTaken(layer, item, item.locked))
      left.set(slot, comesAgain ? `item ${index}` : isBusy ? 'busy' : '');
  });
  return (slot) => left.get(slot) ?? '';
}

/** Whether some phantom switch serves more than a pair of slots, and is asked both for on and for off. */
function sharesSwitches(layer: Layer): boolean {
  const slotsOfBank = new Map<number, number>();
  for (const slot of layer.slots) slotsOfBank.set(slot.bank, (slotsOfBank.get(slot.bank) ?? 0) + 1);
  const asked = new Set(layer.items.map((item) => item.phantom));
  return Math.max(0, ...slotsOfBank.values()) > 1 && asked.has('on') && asked.has('off');
}

function leftOfPair(layer: Layer, slot: number): number {
  return layer.slots[slot - 1]?.pairedWith === slot ? slot - 1 : slot;
}

/** The groups of a layer, those together that share a phantom switch: what is in one may harm what is in another. */
export function groupsBySwitch(layer: Layer): number[][] {
  type Joined = { groups: number[]; banks: number[] };
  let sets: Joined[] = [];
  layer.groups.forEach((group, index) => {
    const banks = group.slots.map((slot) => layer.slots[slot]?.bank ?? -1);
    const meets = (set: Joined) => set.banks.some((bank) => banks.includes(bank));
    const met = sets.filter(meets);
    const joined = {
      groups: [...met.flatMap((set) => set.groups), index],
      banks: [...met.flatMap((set) => set.banks), ...banks],
    };
    sets = [...sets.filter((set) => !meets(set)), joined];
  });
  return sets.map((set) => set.groups);
}

/**
 * Some groups of a layer with the items that a choice put into them, which may change among these groups. Items
 * that leave and come back are strangers.
 */
export function narrowToGroups(
  layer: Layer,
  chosenGroup: ArrayLike<number>,
  groups: readonly number[],
): Narrowed {
  const isInside = (index: number) => groups.includes(chosenGroup[index] ?? -1);
  const slotIndexes = [...new Set(groups.flatMap((group) => layer.groups[group]?.slots ?? []))].sort(
    (a, b) => a - b,
  );
  const newSlot = new Map(slotIndexes.map((slot, place) => [slot, place]));
  const newGroup = (group: number) => groups.indexOf(group);
  const itemIndexes: number[] = [];
  const visits = new Map<number, number>();
  const items: Item[] = [];
  layer.items.forEach((item, index) => {
    if (!isInside(index)) return;
    const visit = visits.get(item.previous) ?? index;
    visits.set(index, visit);
    itemIndexes.push(index);
    items.push({
      ...item,
      key: `${item.key} ${visit}`,
      locked: item.locked === null ? null : (newSlot.get(item.locked) ?? null),
      reach: item.reach.map(newGroup).filter((group) => group >= 0),
      hotCost: groups.map((group) => item.hotCost[group] ?? 0),
      coldCost: groups.map((group) => item.coldCost[group] ?? 0),
    });
  });
  const slots = slotIndexes.flatMap((index) => {
    const slot = layer.slots[index];
    return slot
      ? [{ ...slot, group: newGroup(slot.group), pairedWith: newSlot.get(slot.pairedWith) ?? -1 }]
      : [];
  });
  const acts = layer.acts.map((act) => ({ ...act, spareCount: 0, spareGroups: [] }));
  const members = groups.flatMap((group) => {
    const of = layer.groups[group];
    return of ? [{ ...of, slots: of.slots.map((slot) => newSlot.get(slot) ?? -1) }] : [];
  });
  return {
    layer: { ...layer, acts, groups: members, slots, items: linkKeys(items) },
    itemIndexes,
    slotIndexes,
  };
}

/** The chains of a layer that are in some of its groups, with their indexes in the narrowed layer. */
export function narrowChains(
  chains: readonly Chain[],
  groups: readonly number[],
  itemIndexes: readonly number[],
): Chain[] {
  const place = new Map(itemIndexes.map((index, at) => [index, at]));
  return chains
    .filter((chain) => groups.includes(chain.group))
    .map((chain) => ({
      ...chain,
      group: groups.indexOf(chain.group),
      items: chain.items.map((index) => place.get(index) ?? -1),
    }));
}
