import { entriesOfDay } from '../../changeover/entries.ts';
import type { Id } from '../../show/rig.ts';
import type { ActWithPlan } from '../plan-act.ts';
import { evaluate } from './evaluate.ts';
import { type Assignment, type Entry, type Item, type Layer, slotsTaken } from './problem.ts';

/** The patch of a whole day with what it costs, whoever made it. */
export type DayPatch = {
  socketOf: ReadonlyMap<Id, Id>;
  /** How each line with a socket comes into it. */
  entryOf: ReadonlyMap<Id, Entry>;
  /** Units of `costs.ts`. */
  work: number;
  /** For each act, lines that stay, that are plugged ahead, and that are plugged in the changeover before it. */
  beforeAct: { kept: number; cold: number; hot: number }[];
  /** Lines of the day that have no socket. */
  withoutSocket: number;
};

/** The patch as the plans of the acts stand, decided or proposed. `layer` is the day's lines. */
export function patchAsItStands(layer: Layer, acts: readonly ActWithPlan[]): DayPatch {
  const socketOf = new Map(
    acts.flatMap(({ plan }) =>
      plan.patches.flatMap(({ sourceId, socketId }) =>
        socketId === null ? [] : [[sourceId, socketId] as const],
      ),
    ),
  );
  return patchOf(layer, socketOf, entriesOfDay(acts));
}

/** The patch that an assignment of the day's lines makes. */
export function patchOfAssignment(layer: Layer, assignment: Assignment): DayPatch {
  const { entries } = evaluate(layer, assignment);
  const socketOf = new Map<Id, Id>();
  const entryOf = new Map<Id, Entry>();
  layer.items.forEach((item, index) => {
    const taken = slotsTaken(layer, item, assignment[index] ?? -1);
    item.ids.forEach((sourceId, side) => {
      const socketId = layer.slots[taken[side] ?? -1]?.id;
      if (!socketId) return;
      socketOf.set(sourceId, socketId);
      entryOf.set(sourceId, entries[index] ?? 'hot');
    });
  });
  return patchOf(layer, socketOf, entryOf);
}

/** A patch as the planner would write it; -1 for what has no socket, or for a pair that stands apart. */
export function assignmentOfPatch(layer: Layer, { socketOf }: DayPatch): Assignment {
  const slotOf = new Map(layer.slots.map((slot, index) => [slot.id, index]));
  return layer.items.map((item) => {
    const [first = -1, second = -1] = item.ids.map((id) => slotOf.get(socketOf.get(id) ?? null) ?? -1);
    return item.ids.length === 1 || layer.slots[first]?.pairedWith === second ? first : -1;
  });
}

function patchOf(layer: Layer, socketOf: Map<Id, Id>, entryOf: Map<Id, Entry>): DayPatch {
  const groupOf = new Map(layer.slots.map((slot) => [slot.id, slot.group]));
  const beforeAct = layer.acts.map(() => ({ kept: 0, cold: 0, hot: 0 }));
  let work = 0;
  let withoutSocket = 0;
  for (const item of layer.items) {
    joinPair(item, entryOf);
    for (const sourceId of item.ids) {
      const entry = entryOf.get(sourceId);
      const count = beforeAct[item.act];
      if (!entry || !count) {
        withoutSocket += 1;
        continue;
      }
      count[entry] += 1;
      work += workOfLine(item, groupOf.get(socketOf.get(sourceId) ?? null) ?? 0, entry);
    }
  }
  return { socketOf, entryOf, work: Math.round(work), beforeAct, withoutSocket };
}

/** A pair is one job, as the planner sees it: where one side waits for the changeover, both do. */
function joinPair(item: Item, entryOf: Map<Id, Entry>): void {
  const sides = item.ids.flatMap((id) => entryOf.get(id) ?? []);
  const slowest = (['hot', 'cold'] as const).find((entry) => sides.includes(entry));
  if (sides.length === 2 && slowest) for (const id of item.ids) entryOf.set(id, slowest);
}

/** One side of a pair is half of its work. */
function workOfLine(item: Item, group: number, entry: Entry): number {
  if (entry === 'kept') return 0;
  return ((entry === 'cold' ? item.coldCost[group] : item.hotCost[group]) ?? 0) / item.width;
}

/** Lines that are plugged in the changeovers of a patch; what is done before the first act is none. */
export function replugs({ beforeAct }: DayPatch): number {
  return beforeAct.reduce((sum, { hot }) => sum + hot, 0);
}
