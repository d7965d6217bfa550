import { assignmentToTake } from '../../core/plan/day/change-from-day-plan.ts';
import { type DayPatch, patchOfAssignment } from '../../core/plan/day/day-patch.ts';
import type { DayPlan, LayerName } from '../../core/plan/day/day-plan.ts';
import { differenceOfDay, type Move } from '../../core/plan/day/difference.ts';
import { dayPlanOf } from '../../core/plan/day/found-day.ts';
import type { Show } from '../../core/show/show.ts';
import type { ActOnScreen } from '../state/derive-cache.ts';
import type { Planning } from './day-planning.ts';
import type { DayWork } from './use-day-work.ts';

/** A plan that was found, beside the day as it stands. */
export type FoundPlan = {
  plan: DayPlan;
  /** Whether every line has its place. */
  hasPatch: boolean;
  /** Whether there is anything to take: a patch, or at least the nearest one. */
  canTake: boolean;
  patch: DayPatch;
  now: DayPatch;
  moves: Record<LayerName, Move[]>;
  /** Why a layer has no plan; empty where it has one. */
  conflicts: Record<LayerName, string>;
};

/** The plan that was found as it is for the show of now; `stale` where the day has changed since. */
export function foundPlan(
  planning: Planning & { is: 'found' },
  show: Show,
  acts: readonly ActOnScreen[],
  work: DayWork,
): FoundPlan | 'stale' {
  const plan = dayPlanOf(planning.planned, show, planning.found);
  if (!plan) return 'stale';
  const plans = new Map(acts.map(({ sheet, derived }) => [sheet.act.id, derived.plan]));
  const { layers } = planning.found;
  const { sockets } = plan.layers;
  const toTake = assignmentToTake(sockets);
  const why = (name: LayerName) => {
    const conflict = layers[name].conflict;
    return conflict ? [conflict.what, conflict.todo, conflict.nearest ?? ''].join(' ').trim() : '';
  };
  return {
    plan,
    hasPatch: sockets.proof !== 'no plan',
    canTake: toTake !== null,
    patch: patchOfAssignment(sockets.layer, toTake ?? sockets.plan.assignment),
    now: work.now,
    moves: differenceOfDay(plan, (actId) => plans.get(actId) ?? null),
    conflicts: {
      sockets: why('sockets'),
      channels: why('channels'),
      buses: why('buses'),
      outputs: why('outputs'),
    },
  };
}
