import { z } from 'zod';
import { Id } from '../../show/rig.ts';
import type { Show } from '../../show/show.ts';
import { buildDay, type DayPlan, type LayerName, layerNames, type PlannedLayer } from './day-plan.ts';
import { evaluate } from './evaluate.ts';
import { nearestInWords } from './nearest-plan.ts';

const slots = z.array(z.number().int().min(-1).max(10_000)).max(100_000);
const units = z.number().min(0).max(1e12);

const FoundLayer = z.strictObject({
  assignment: slots,
  cost: units,
  bound: units,
  proof: z.enum(['proven minimal', 'within the gap', 'no plan']),
  gapPercent: z.number().min(0),
  conflict: z
    .strictObject({
      what: z.string(),
      todo: z.string(),
      acts: z.array(z.string()),
      isSmallest: z.boolean(),
      others: z.array(z.string()),
      /** What the plan that keeps most gives up, in words; null where none was found. */
      nearest: z.string().nullable(),
    })
    .nullable(),
  /** The plan that keeps most, where none keeps everything. */
  nearest: z
    .strictObject({
      assignment: slots,
      cost: units,
      bound: units,
      leftOut: slots,
      opened: slots,
      notReady: slots,
      isFewest: z.boolean(),
    })
    .nullable(),
  stability: z
    .strictObject({
      taken: z.enum(['kept', 'new']),
      keptCost: units.nullable(),
      newCost: units,
      moved: slots,
      released: slots,
    })
    .nullable(),
});

/**
 * What a planner found for a day, small enough to cross from the shell to the page: figures and slots by item. With
 * the rows that it was planned from, `dayPlanOf` makes the whole plan of it again.
 */
export const FoundDay = z.strictObject({
  dayId: Id,
  layers: z.strictObject({
    sockets: FoundLayer,
    channels: FoundLayer,
    buses: FoundLayer,
    outputs: FoundLayer,
  } satisfies Record<LayerName, typeof FoundLayer>),
  notes: z.array(z.string()),
});
export type FoundDay = z.infer<typeof FoundDay>;

/** How far a planner is: the best plan of a layer so far, and what no plan can cost less than. */
export const DaySoFar = z.strictObject({
  layer: z.enum(layerNames),
  cost: units,
  bound: units,
  assignment: slots,
});
export type DaySoFar = z.infer<typeof DaySoFar>;

export function foundDay({ dayId, layers, notes }: DayPlan): FoundDay {
  const found = ({ layer, plan, proof, gapPercent, conflict, nearest, stability }: PlannedLayer) => ({
    assignment: plan.assignment,
    // Without a plan the planner's figures are penalties for broken rules and mean nothing to anybody else.
    cost: proof === 'no plan' ? 0 : plan.cost,
    bound: proof === 'no plan' ? 0 : plan.bound,
    proof,
    gapPercent,
    conflict: conflict && {
      what: conflict.what,
      todo: conflict.todo,
      acts: conflict.acts,
      isSmallest: conflict.isSmallest,
      others: conflict.others,
      nearest: nearest && nearestInWords(layer, nearest),
    },
    nearest,
    stability,
  });
  const { sockets, channels, buses, outputs } = layers;
  return {
    dayId,
    layers: {
      sockets: found(sockets),
      channels: found(channels),
      buses: found(buses),
      outputs: found(outputs),
    },
    notes,
  };
}

/**
 * The whole plan again, or null where the rows are no longer those it was planned from (`planned`): then it says
 * nothing, and the day is to be planned once more. A plan that was taken stays valid until something else changes.
 */
export function dayPlanOf(planned: Show, now: Show, found: FoundDay): DayPlan | null {
  const { layers, notes } = buildDay(now, found.dayId);
  if (planned !== now && !sameLayers(buildDay(planned, found.dayId).layers, layers)) return null;
  if (layerNames.some((name) => found.layers[name].assignment.length !== layers[name].items.length))
    return null;
  const planOf = (name: LayerName): PlannedLayer => {
    const { assignment, cost, bound, proof, gapPercent, nearest, stability } = found.layers[name];
    return {
      layer: layers[name],
      plan: {
        assignment,
        cost,
        bound,
        isProven: proof === 'proven minimal',
        isClean: proof !== 'no plan',
      },
      evaluation: evaluate(layers[name], assignment),
      proof,
      gapPercent,
      conflict: null,
      nearest,
      stability,
    };
  };
  const [sockets, channels, buses, outputs] = [
    planOf('sockets'),
    planOf('channels'),
    planOf('buses'),
    planOf('outputs'),
  ];
  return { dayId: found.dayId, layers: { sockets, channels, buses, outputs }, notes };
}

/** Layers are plain data, made in a fixed order. Where a line was before is no demand on where it may go. */
const sameLayers = (one: object, other: object) => withoutEarlier(one) === withoutEarlier(other);

const withoutEarlier = (layers: object) =>
  JSON.stringify(layers, (key, value) => (key === 'earlier' ? undefined : value));
