import { costOfPatch } from './patch-cost.ts';
import { type Assignment, type Layer, slotsTaken } from './problem.ts';

/**
 * A slot for the day for every role, in the usual order, for a layer whose slots are all alike: a pair starts on
 * an odd number. What finds no slot that is free in all of its acts is left to the planner (-1).
 */
export function homesInOrder(layer: Layer): Assignment {
  const assignment: Assignment = layer.items.map((item) => item.locked ?? -1);
  const used = layer.acts.map(() => new Set<number>());
  layer.items.forEach((item) => {
    if (item.locked !== null)
      for (const slot of slotsTaken(layer, item, item.locked)) used[item.act]?.add(slot);
  });
  const roles = Map.groupBy(layer.items.keys(), (index) => layer.items[index]?.key ?? '');
  const rankOf = (indexes: number[]) => Math.min(...indexes.map((index) => layer.items[index]?.rank ?? 0));
  const inOrder = [...roles.values()].sort((a, b) => rankOf(a) - rankOf(b));
  for (const indexes of inOrder) {
    const open = indexes.filter((index) => assignment[index] === -1);
    // A role with a lock goes where it is locked in its other acts too, if it can.
    const locked = indexes.map((index) => layer.items[index]?.locked ?? null).filter((slot) => slot !== null);
    const home = [...locked, ...layer.slots.keys()].find((slot) => isFree(layer, open, used, slot));
    if (home === undefined) continue;
    for (const index of open) {
      const item = layer.items[index];
      if (!item) continue;
      assignment[index] = home;
      for (const slot of slotsTaken(layer, item, home)) used[item.act]?.add(slot);
    }
  }
  return assignment;
}

function isFree(layer: Layer, indexes: number[], used: Set<number>[], slot: number): boolean {
  return indexes.every((index) => {
    const item = layer.items[index];
    if (!item?.reach.includes(layer.slots[slot]?.group ?? -1)) return false;
    const taken = slotsTaken(layer, item, slot);
    return taken.length > 0 && taken.every((at) => !used[item.act]?.has(at));
  });
}

/**
 * The same plan with whole pairs of slots exchanged so that the roles lie in the usual order as far as they can;
 * slots with locks stay. Only for a layer with one group: there an exchange costs nothing.
 */
export function layOutInOrder(layer: Layer, assignment: Assignment): Assignment {
  if (layer.groups.length !== 1) return assignment;
  const lefts = [...layer.slots.keys()].filter((slot) => (layer.slots[slot]?.pairedWith ?? -1) >= 0);
  const pairOf = new Map<number, number>();
  for (const left of lefts) {
    pairOf.set(left, left);
    pairOf.set(layer.slots[left]?.pairedWith ?? -1, left);
  }
  const rank = new Map<number, number>();
  const fixed = new Set<number>();
  layer.items.forEach((item, index) => {
    const left = pairOf.get(assignment[index] ?? -1);
    if (left === undefined) return;
    rank.set(left, Math.min(rank.get(left) ?? Number.POSITIVE_INFINITY, item.rank));
    if (item.locked !== null) fixed.add(left);
  });
  const free = lefts.filter((left) => !fixed.has(left));
  const wanted = [...free].sort((a, b) => (rank.get(a) ?? Infinity) - (rank.get(b) ?? Infinity) || a - b);
  const newLeft = new Map(wanted.map((old, place) => [old, free[place] ?? old]));
  const moved = assignment.map((slot) => {
    const left = pairOf.get(slot);
    if (left === undefined || !newLeft.has(left)) return slot;
    const target = newLeft.get(left) ?? left;
    return slot === left ? target : (layer.slots[target]?.pairedWith ?? slot);
  });
  return costOfPatch(layer, moved) <= costOfPatch(layer, assignment) ? moved : assignment;
}
