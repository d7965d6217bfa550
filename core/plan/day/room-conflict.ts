import type { Demand } from './demands.ts';
import type { Item, Layer } from './problem.ts';

/** Demands that collide because there are more of them than slots, and how many lines too many the act has there. */
export type RoomConflict = { members: Demand[]; tooMany: number };

/** Groups up to here are tried in every combination; a rig with more is left to the solver. */
const mostGroups = 10;

/**
 * The fewest demands of one act that collide by counting alone: items that reach no group but those of a set,
 * against the slots of that set (the marriage condition; P. Hall, 1935). The widest items come first, for then it
 * takes the fewest. null where no set of groups is too small.
 */
export function roomConflict(layer: Layer, demands: readonly Demand[]): RoomConflict | null {
  if (layer.groups.length > mostGroups) return null;
  let best: RoomConflict | null = null;
  for (let set = 1; set < 2 ** layer.groups.length; set++) {
    const groups = layer.groups.flatMap((_, group) => (set & (1 << group) ? [group] : []));
    for (const closing of closings(layer, demands, groups)) {
      const found = overfilled(layer, demands, groups, closing);
      if (found && (!best || found.members.length < best.members.length)) best = found;
    }
  }
  return best;
}

/** Ways to take slots of some groups away: not at all, for the spare, for what is held back, for both. */
function closings(layer: Layer, demands: readonly Demand[], groups: readonly number[]): Demand[][] {
  const spare = demands.filter(
    (it) => it.kind === 'spare' && layer.acts[it.act]?.spareGroups.every((group) => groups.includes(group)),
  );
  const held = demands.filter((it) => it.kind === 'held back' && groups.includes(it.group));
  return [[], spare, held, [...spare, ...held]].filter(
    (it, at, all) =>
      at === all.findIndex((other) => other.length === it.length && it.every((one) => other.includes(one))),
  );
}

function overfilled(
  layer: Layer,
  demands: readonly Demand[],
  groups: readonly number[],
  closing: readonly Demand[],
): RoomConflict | null {
  const open = groups.reduce((sum, group) => sum + (layer.groups[group]?.slots.length ?? 0), 0);
  const held = (layer.heldBack ?? []).filter(({ slot }) => groups.includes(slot.group));
  const isClosed = (group: number) => closing.some((it) => it.kind === 'held back' && it.group === group);
  const opened = held.filter(({ slot }) => !isClosed(slot.group)).length;
  const spares = closing
    .filter((it) => it.kind === 'spare')
    .reduce((sum, it) => sum + (layer.acts[it.act]?.spareCount ?? 0), 0);
  const room = open + opened - spares;
  const inside = demands.flatMap((place): { item: Item; asked: Demand[] }[] => {
    const item = layer.items[place.item];
    if (place.kind !== 'place' || !item?.reach.every((group) => groups.includes(group))) return [];
    const bounds = demands.filter(
      (it) => it.item === place.item && (it.kind === 'reach' || it.kind === 'lock'),
    );
    return [{ item, asked: [...bounds, place] }];
  });
  const all = inside.reduce((sum, { item }) => sum + item.width, 0);
  if (all <= room) return null;
  const members: Demand[] = [...closing];
  let taken = 0;
  for (const { item, asked } of inside.toSorted(
    (a, b) => b.item.width - a.item.width || a.asked.length - b.asked.length,
  )) {
    if (taken > room) break;
    members.push(...asked);
    taken += item.width;
  }
  return { members, tooMany: all - room };
}
