import type { Chain } from './chains.ts';
import { type Item, type Layer, linkKeys, type SlotGroup } from './problem.ts';

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
function lockPart(layer: Layer, fromAct: number): (slot: number) => string {
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

/**
 * Groups of slots that are alike but for locks. What has been played is counted in its box: told apart slot by
 * slot, it would make the model of a day that is half over larger than that of a whole one.
 */
export function groupByLocks(layer: Layer): Layer {
  return regroup(layer, lockPart(layer, actsPlayed(layer)));
}

/** As `groupByLocks`, with what has been played told apart as well. */
export function groupByEveryLock(layer: Layer): Layer {
  return regroup(layer, lockPart(layer, 0));
}

/** Groups of a pair of slots (or a single one): inside, nothing is left to choose that costs anything. */
export function groupByPairs(layer: Layer): Layer {
  const part = lockPart(layer, 0);
  return regroup(layer, (slot) => (part(slot) === 'open' ? `pair ${leftOfPair(layer, slot)}` : part(slot)));
}

/** As `groupByLocks`, with a group for each phantom switch, so that none of it is only counted. */
export function groupByBanks(layer: Layer): Layer {
  const part = lockPart(layer, actsPlayed(layer));
  return regroup(layer, (slot) => `${part(slot)} ${layer.slots[leftOfPair(layer, slot)]?.bank ?? 0}`);
}

/** Whether some phantom switch serves more than a pair of slots, and is asked both for on and for off. */
export function sharesSwitches(layer: Layer): boolean {
  const slotsOfBank = new Map<number, number>();
  for (const slot of layer.slots) slotsOfBank.set(slot.bank, (slotsOfBank.get(slot.bank) ?? 0) + 1);
  const asked = new Set(layer.items.map((item) => item.phantom));
  return Math.max(0, ...slotsOfBank.values()) > 1 && asked.has('on') && asked.has('off');
}

function leftOfPair(layer: Layer, slot: number): number {
  return layer.slots[slot - 1]?.pairedWith === slot ? slot - 1 : slot;
}

/** One group of a layer with the items that a choice put into it. Items that leave and come back are strangers. */
export function narrowToGroup(layer: Layer, chosenGroup: ArrayLike<number>, group: number): Narrowed {
  const slotIndexes = layer.groups[group]?.slots ?? [];
  const newSlot = new Map(slotIndexes.map((slot, place) => [slot, place]));
  const itemIndexes: number[] = [];
  const visits = new Map<number, number>();
  const items: Item[] = [];
  layer.items.forEach((item, index) => {
    if (chosenGroup[index] !== group) return;
    const visit = visits.get(item.previous) ?? index;
    visits.set(index, visit);
    itemIndexes.push(index);
    items.push({
      ...item,
      key: `${item.key} ${visit}`,
      locked: item.locked === null ? null : (newSlot.get(item.locked) ?? null),
      reach: [0],
      hotCost: [item.hotCost[group] ?? 0],
      coldCost: [item.coldCost[group] ?? 0],
    });
  });
  const slots = slotIndexes.flatMap((index) => {
    const slot = layer.slots[index];
    return slot ? [{ ...slot, group: 0, pairedWith: newSlot.get(slot.pairedWith) ?? -1 }] : [];
  });
  const acts = layer.acts.map((act) => ({ ...act, spareCount: 0, spareGroups: [] }));
  const groups = [{ name: layer.groups[group]?.name ?? '', slots: slots.map((_, place) => place) }];
  return { layer: { ...layer, acts, groups, slots, items: linkKeys(items) }, itemIndexes, slotIndexes };
}

/** The chains of a layer that are in one of its groups, with their indexes in the narrowed layer. */
export function narrowChains(
  chains: readonly Chain[],
  group: number,
  itemIndexes: readonly number[],
): Chain[] {
  const place = new Map(itemIndexes.map((index, at) => [index, at]));
  return chains
    .filter((chain) => chain.group === group)
    .map((chain) => ({ ...chain, group: 0, items: chain.items.map((index) => place.get(index) ?? -1) }));
}
