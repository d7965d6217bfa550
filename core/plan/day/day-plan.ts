import { actSheet, actsOfDay } from '../../show/act-sheet.ts';
import type { Id } from '../../show/rig.ts';
import type { Show } from '../../show/show.ts';
import { buildChannelLayer } from './build-channel-layer.ts';
import { buildLineLayer } from './build-line-layer.ts';
import { buildBusLayer, buildOutputLayer } from './build-mix-layers.ts';
import { type Conflict, findConflict } from './conflicts.ts';
import { type Evaluation, evaluate } from './evaluate.ts';
import type { LinearSolver } from './linear-model.ts';
import { type NearestPlan, nearestPlan } from './nearest-plan.ts';
import type { LayerPlan } from './plan-layer.ts';
import type { Assignment, Layer } from './problem.ts';
import { type KeptOrNew, planWithEarlier } from './stability.ts';
import { homesInOrder, layOutInOrder } from './usual-order.ts';

export const layerNames = ['sockets', 'channels', 'buses', 'outputs'] as const;
export type LayerName = (typeof layerNames)[number];

/** The plan of one layer of a day, as the referee sees it. */
export type PlannedLayer = {
  layer: Layer;
  plan: LayerPlan;
  evaluation: Evaluation;
  proof: ProofState;
  /** How far the cost is above the proven bound, in percent of it; 0 where it is proven minimal. */
  gapPercent: number;
  /** Why there is no plan that keeps the rules; null where there is one. */
  conflict: Conflict | null;
  /** The plan that keeps most, where none keeps everything; null where there is one, or none was found. */
  nearest: NearestPlan | null;
  /** Where there was a plan before: whether it is kept, and what the other choice would cost. */
  stability: KeptOrNew | null;
};

export type ProofState = 'proven minimal' | 'within the gap' | 'no plan';

export type DayPlan = { dayId: Id; layers: Record<LayerName, PlannedLayer>; notes: string[] };

export type DayPlanOptions = {
  solve: LinearSolver;
  onProgress?: (progress: DayProgress) => void;
  isStopped?: () => boolean;
  /** A new plan is offered only where it costs this many units less than the one before; see `costs.ts`. */
  keepUnlessGain?: number;
  /** Layers to plan; all by default. */
  only?: readonly LayerName[];
};

/** What is known while the planner runs: the best plan of a layer so far and its bound. */
export type DayProgress = {
  layer: LayerName;
  cost: number;
  bound: number;
  isClean: boolean;
  assignment: Assignment;
};

/** The four layers of a day, built from the show's rows, and what had to be read in its own way. */
export function buildDay(show: Show, dayId: Id): { layers: Record<LayerName, Layer>; notes: string[] } {
  const sheets = actsOfDay(show, dayId).flatMap((act) => actSheet(show, act.id) ?? []);
  const { layer, notes } = buildLineLayer(show, dayId);
  const layers = {
    sockets: layer,
    channels: buildChannelLayer(sheets),
    buses: buildBusLayer(sheets),
    outputs: buildOutputLayer(sheets),
  };
  return { layers, notes };
}

/**
 * Plans a whole day: sockets, channels, buses and outputs, each with as few changes between the acts as can be
 * proven. Check the day with `checkDay` first. Every plan is costed by `evaluate`, not by the planner.
 */
export function planDay(show: Show, dayId: Id, options: DayPlanOptions): DayPlan {
  const { layers, notes } = buildDay(show, dayId);
  const inOrder = [...show.rigs.values()].every((rig) => rig.channelsInUsualOrder);
  const planOne = (name: LayerName): PlannedLayer => {
    const layer = layers[name];
    if (options.only && !options.only.includes(name)) return nothingPlanned(layer);
    return planOneLayer(layer, name, options, name === 'channels' ? inOrder : name !== 'sockets');
  };
  const [sockets, channels, buses, outputs] = [
    planOne('sockets'),
    planOne('channels'),
    planOne('buses'),
    planOne('outputs'),
  ];
  return { dayId, layers: { sockets, channels, buses, outputs }, notes };
}

function planOneLayer(
  layer: Layer,
  name: LayerName,
  options: DayPlanOptions,
  inOrder: boolean,
): PlannedLayer {
  const planOptions = {
    solve: options.solve,
    onProgress: (plan: LayerPlan) => {
      const { cost, bound, isClean, assignment } = plan;
      options.onProgress?.({ layer: name, cost, bound, isClean, assignment });
    },
    ...(options.isStopped ? { isStopped: options.isStopped } : {}),
    ...(inOrder ? { start: homesInOrder(layer) } : {}),
  };
  const { plan, stability } = planWithEarlier(layer, planOptions, options.keepUnlessGain ?? null);
  if (!plan?.isClean) {
    const conflict = options.isStopped?.() ? null : findConflict(layer, options.solve, options.isStopped);
    const nearest =
      conflict && !options.isStopped?.() ? nearestPlan(layer, options.solve, options.isStopped) : null;
    return { ...nothingPlanned(layer, plan), conflict, nearest };
  }
  const assignment = inOrder && !stability ? layOutInOrder(layer, plan.assignment) : plan.assignment;
  return {
    layer,
    plan: { ...plan, assignment },
    evaluation: evaluate(layer, assignment),
    proof: plan.isProven ? 'proven minimal' : 'within the gap',
    gapPercent: plan.isProven ? 0 : gapPercent(plan),
    conflict: null,
    nearest: null,
    stability,
  };
}

/** Percent of the bound; of a bound of nothing there is no percentage, and every unit counts as one. */
function gapPercent(plan: LayerPlan): number {
  return plan.bound > 0 ? (100 * (plan.cost - plan.bound)) / plan.bound : plan.cost;
}

function nothingPlanned(layer: Layer, found: LayerPlan | null = null): PlannedLayer {
  const assignment = found?.assignment ?? layer.items.map(() => -1);
  const plan = found ?? planLayerOfNothing(assignment);
  return {
    layer,
    plan,
    evaluation: evaluate(layer, assignment),
    proof: 'no plan',
    gapPercent: 0,
    conflict: null,
    nearest: null,
    stability: null,
  };
}

function planLayerOfNothing(assignment: Assignment): LayerPlan {
  return { assignment, cost: 0, bound: 0, isProven: false, isClean: false };
}
