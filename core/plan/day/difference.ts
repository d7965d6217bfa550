import type { Id } from '../../show/rig.ts';
import type { Plan } from '../plan.ts';
import { type DayPlan, type LayerName, layerNames } from './day-plan.ts';
import { type Item, type Layer, slotsTaken } from './problem.ts';

/** Something that a day plan puts elsewhere than it is now. */
export type Move = {
  actId: Id;
  /** The line, copy or mix, as the planner calls it. */
  name: string;
  /** Where it is now: "A5", "A5 + A6"; empty where it has no place yet. */
  from: string;
  to: string;
};

/** What would move if a day plan were taken, by layer. A layer without a plan moves nothing. */
export function differenceOfDay(
  plan: DayPlan,
  planOf: (actId: Id) => Plan | null,
): Record<LayerName, Move[]> {
  const found: Record<LayerName, Move[]> = { sockets: [], channels: [], buses: [], outputs: [] };
  for (const name of layerNames) {
    const { layer, plan: planned, proof } = plan.layers[name];
    if (proof === 'no plan') continue;
    const slotOf = slotIndex(layer);
    found[name] = layer.items.flatMap((item, index): Move[] => {
      const actId = layer.acts[item.act]?.actId ?? '';
      const now = planOf(actId);
      const from = now ? namesOf(layer, slotsNow(name, now, item, slotOf)) : '';
      const to = namesOf(layer, slotsTaken(layer, item, planned.assignment[index] ?? -1));
      return from === to ? [] : [{ actId, name: item.name, from, to }];
    });
  }
  return found;
}

type SlotIndex = (key: Id | number) => number;

/** Slots by the row they stand for; a channel has no row and goes by its number. */
function slotIndex(layer: Layer): SlotIndex {
  const index = new Map(layer.slots.map((slot, at) => [slot.id ?? slot.number, at]));
  return (key) => index.get(key) ?? -1;
}

function slotsNow(name: LayerName, plan: Plan, item: Item, slotOf: SlotIndex): number[] {
  const [first] = item.ids;
  const mix = plan.mixes.find((it) => it.mixId === first);
  switch (name) {
    case 'sockets':
      return item.ids.map((id) => slotOf(plan.patches.find((it) => it.sourceId === id)?.socketId ?? ''));
    case 'channels':
      return item.ids.map((id) =>
        slotOf(plan.copies.find((it) => it.sourceId === id && it.purpose === item.detail)?.channel ?? ''),
      );
    case 'buses':
      return (mix?.busIds ?? []).map(slotOf);
    case 'outputs':
      return (mix?.outputIds ?? []).map(slotOf);
  }
}

const namesOf = (layer: Layer, slots: readonly number[]) =>
  slots.flatMap((slot) => layer.slots[slot]?.name ?? []).join(' + ');
