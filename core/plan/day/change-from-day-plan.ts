import type { Copy, Decision } from '../../show/act.ts';
import { type Change, changeLabel, type Put, put } from '../../show/change.ts';
import type { Id } from '../../show/rig.ts';
import type { Show } from '../../show/show.ts';
import type { Purpose } from '../../show/words.ts';
import type { DayPlan, LayerName, PlannedLayer } from './day-plan.ts';
import { type Assignment, type Item, type Layer, slotsTaken } from './problem.ts';

/**
 * A day's plan as one change of the show: unlocked decisions for sockets, buses and outputs, and channels of
 * copies. What the engineer locked is not touched; what an earlier plan left and this one does not use goes away.
 * Of a layer that has no plan the nearest one is taken: the locks that it opens are opened, and what it leaves out
 * loses the place that an earlier plan gave it. Where there is none either, the layer stays as it is. `newId` brings
 * an id for each new row.
 */
export function changeFromDayPlan(show: Show, plan: DayPlan, newId: () => Id): Change {
  const day = show.days.get(plan.dayId)?.name ?? '';
  const rows = new DayRows(show, newId);
  for (const name of ['sockets', 'buses', 'outputs', 'channels'] as const) {
    const planned = plan.layers[name];
    const assignment = assignmentToTake(planned);
    if (assignment) rows.add(name, planned, assignment);
  }
  return { label: changeLabel(`Take the day plan of ${day}`), put: rows.put, remove: rows.remove };
}

/** The slots of a plan, or of the nearest one where there is none; null where there is neither. */
export function assignmentToTake({ proof, plan, nearest }: PlannedLayer): Assignment | null {
  return proof === 'no plan' ? (nearest?.assignment ?? null) : plan.assignment;
}

type Place = { rowId: Id; slotIds: (Id | null)[]; numbers: number[] };

class DayRows {
  readonly put: Put[] = [];
  readonly remove: Change['remove'] = [];
  readonly #show: Show;
  readonly #newId: () => Id;

  constructor(show: Show, newId: () => Id) {
    this.#show = show;
    this.#newId = newId;
  }

  add(name: LayerName, { layer, nearest }: PlannedLayer, assignment: Assignment): void {
    layer.items.forEach((item, index) => {
      const actId = layer.acts[item.act]?.actId ?? '';
      const opens = nearest?.opened.includes(index) ?? false;
      for (const place of placesOf(layer, item, assignment[index] ?? -1))
        if (name === 'channels')
          this.#addChannel(place.rowId, item.detail as Purpose, place.numbers[0] ?? null, opens);
        else this.#addDecisions(decisionOf[name], actId, place, opens);
    });
  }

  #addChannel(sourceId: Id, purpose: Purpose, channel: number | null, opens: boolean): void {
    const row = [...this.#show.copies.values()].find(
      (it) => it.sourceId === sourceId && it.purpose === purpose,
    );
    if (row?.locked && row.channel !== null && !opens) return;
    if (!row && channel === null) return;
    const base: Copy = row ?? {
      id: this.#newId(),
      sourceId,
      purpose,
      wanted: true,
      locked: false,
      channel: null,
      trimDb: 0,
      polarityInverted: false,
      latencyMs: 0,
      inMainMix: null,
    };
    if (base.channel !== channel) this.put.push(put('copies', { ...base, channel, locked: false }));
  }

  /** One row for each slot; rows that say so already stay, others of an earlier plan are used again. */
  #addDecisions(
    kind: (typeof decisionOf)[keyof typeof decisionOf],
    actId: Id,
    place: Place,
    opens: boolean,
  ): void {
    const old = [...this.#show.decisions.values()].filter((it) => kind.subject(it) === place.rowId);
    if (old.some((row) => row.locked) && !opens) return;
    const wanted = place.slotIds.filter((id) => id !== null);
    const isSaid = (row: Decision, slotId: Id | null) => !row.locked && kind.slot(row) === slotId;
    const spare = old.filter((row) => !wanted.some((slotId) => isSaid(row, slotId)));
    for (const slotId of wanted) {
      if (old.some((row) => isSaid(row, slotId))) continue;
      this.put.push(put('decisions', kind.row(spare.pop()?.id ?? this.#newId(), actId, place.rowId, slotId)));
    }
    for (const row of spare) this.remove.push({ table: 'decisions', id: row.id });
  }
}

/** The rows of an item with their slots: a pair of sources takes one each, a stereo mix both. Left out: none. */
function placesOf(layer: Layer, item: Item, slot: number): Place[] {
  if (slot < 0) return item.ids.map((rowId) => ({ rowId, slotIds: [], numbers: [] }));
  const taken = slotsTaken(layer, item, slot).flatMap((index) => layer.slots[index] ?? []);
  const [only] = item.ids;
  if (item.ids.length === 1 && only !== undefined)
    return [{ rowId: only, slotIds: taken.map((it) => it.id), numbers: taken.map((it) => it.number) }];
  return item.ids.flatMap((rowId, side) => {
    const at = taken[side];
    return at ? [{ rowId, slotIds: [at.id], numbers: [at.number] }] : [];
  });
}

/** How each layer's decisions are read and written. */
const decisionOf = {
  sockets: {
    subject: (it: Decision) => (it.about === 'socket' ? it.sourceId : null),
    slot: (it: Decision) => (it.about === 'socket' ? it.socketId : null),
    row: (id: Id, actId: Id, sourceId: Id, socketId: Id): Decision => ({
      id,
      actId,
      locked: false,
      about: 'socket',
      sourceId,
      socketId,
    }),
  },
  buses: {
    subject: (it: Decision) => (it.about === 'bus' ? it.mixId : null),
    slot: (it: Decision) => (it.about === 'bus' ? it.busId : null),
    row: (id: Id, actId: Id, mixId: Id, busId: Id): Decision => ({
      id,
      actId,
      locked: false,
      about: 'bus',
      mixId,
      busId,
    }),
  },
  outputs: {
    subject: (it: Decision) => (it.about === 'output' ? it.mixId : null),
    slot: (it: Decision) => (it.about === 'output' ? it.outputId : null),
    row: (id: Id, actId: Id, mixId: Id, outputId: Id): Decision => ({
      id,
      actId,
      locked: false,
      about: 'output',
      mixId,
      outputId,
    }),
  },
};
