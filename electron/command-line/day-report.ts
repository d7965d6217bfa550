import type { Changeover } from '../../core/changeover/changeover.ts';
import type { DayDoubt } from '../../core/plan/day/check-day.ts';
import { clock } from '../../core/plan/day/check-day.ts';
import { patchCosts } from '../../core/plan/day/costs.ts';
import { type DayPlan, layerNames, type PlannedLayer } from '../../core/plan/day/day-plan.ts';
import { evaluate } from '../../core/plan/day/evaluate.ts';
import { habits, patchByHabit } from '../../core/plan/day/habits.ts';
import { slotsTaken } from '../../core/plan/day/problem.ts';
import type { StockReport } from '../../core/plan/day/stock.ts';
import type { Day } from '../../core/show/act.ts';
import type { Show } from '../../core/show/show.ts';

/** Everything that is known of a planned day, for people and programs that read JSON. Times are in seconds. */
export function dayReport(
  show: Show,
  day: Day,
  plan: DayPlan,
  changeovers: readonly Changeover[],
  more: { doubts: DayDoubt[]; stock: StockReport; milliseconds: number },
) {
  const { sockets } = plan.layers;
  return {
    day: day.name,
    milliseconds: more.milliseconds,
    ...costs(sockets),
    proof: sockets.proof,
    units: `one line costs ${patchCosts.plug} and ${patchCosts.perMetre} a metre in a changeover, ${patchCosts.preparedShare} of that while another act plays`,
    conflict: sockets.conflict && { what: sockets.conflict.what, todo: sockets.conflict.todo },
    notes: [...more.doubts.map((it) => `${it.what} ${it.todo}`), ...plan.notes],
    layers: Object.fromEntries(layerNames.map((name) => [name, layerReport(plan.layers[name])])),
    habits: sockets.proof === 'no plan' ? [] : habits.map((habit) => habitReport(sockets, habit)),
    stock: more.stock,
    changeovers: changeovers.map((changeover) => changeoverReport(show, changeover)),
  };
}

function layerReport(planned: PlannedLayer) {
  const { layer, plan, evaluation } = planned;
  const nameOf = (index: number) => layer.items[index]?.name ?? '';
  return {
    proof: planned.proof,
    ...costs(planned),
    conflict: planned.conflict && { what: planned.conflict.what, todo: planned.conflict.todo },
    // Without a plan nothing is patched at all, and the conflict says why.
    brokenRules: planned.proof === 'no plan' ? [] : evaluation.broken.map((it) => it.what),
    stability: planned.stability && {
      taken: planned.stability.taken,
      keptCost: planned.stability.keptCost,
      newCost: planned.stability.newCost,
      moved: planned.stability.moved.map((index) => ({
        item: nameOf(index),
        act: layer.acts[layer.items[index]?.act ?? -1]?.name ?? '',
      })),
      released: planned.stability.released.map(nameOf),
    },
    changes: layer.acts.map((act, index) => ({ before: act.name, ...evaluation.beforeAct[index] })),
    assignments: layer.items.map((item, index) => ({
      act: layer.acts[item.act]?.name ?? '',
      item: item.name,
      ...(item.detail === '' ? {} : { purpose: item.detail }),
      to: slotsTaken(layer, item, plan.assignment[index] ?? -1).flatMap(
        (slot) => layer.slots[slot]?.name ?? [],
      ),
      entry: evaluation.entries[index],
      locked: item.locked !== null,
    })),
  };
}

/** null where there is no plan to have a cost. */
function costs({ proof, plan, gapPercent }: PlannedLayer) {
  if (proof === 'no plan') return { objective: null, bound: null, gapPercent: null };
  return { objective: plan.cost, bound: plan.bound, gapPercent: round(gapPercent) };
}

/** What the same day costs when it is patched by a habit. */
function habitReport({ layer, plan }: PlannedLayer, habit: (typeof habits)[number]) {
  const { cost, beforeAct, broken } = evaluate(layer, patchByHabit(layer, habit));
  return {
    habit,
    objective: cost,
    overPlanPercent: round((100 * (cost - plan.cost)) / Math.max(1, plan.cost)),
    replugsInChangeovers: beforeAct.slice(1).reduce((sum, act) => sum + act.hot, 0),
    withoutPlace: broken.filter((it) => it.rule === 'no slot').length,
    brokenRules: broken.length,
  };
}

function changeoverReport(show: Show, changeover: Changeover) {
  const nameOf = (id: string) => show.acts.get(id)?.name ?? '';
  const start = show.acts.get(changeover.toActId)?.startMinute ?? null;
  const { secondsNeeded, secondsThere } = changeover;
  return {
    from: nameOf(changeover.fromActId),
    to: nameOf(changeover.toActId),
    startOfSet: start === null ? null : clock(start),
    minutesNeeded: secondsNeeded === null ? null : round(secondsNeeded / 60),
    minutesThere: round(secondsThere / 60),
    fits: secondsNeeded === null ? null : secondsNeeded <= secondsThere,
    lowerBoundSeconds: changeover.lowerBoundSeconds,
    limitedBy: changeover.limitedBy,
    problem: changeover.problem,
    criticalPath: changeover.criticalPath.map((index) => changeover.tasks[index]?.what),
    people: changeover.people.map(({ name, tasks, walkM, walkSeconds }) => ({
      name,
      walkM,
      walkSeconds,
      tasks: tasks.map((index) => changeover.tasks[index]?.what),
    })),
    tasks: changeover.tasks.map((task) => ({
      kind: task.kind,
      what: task.what,
      place: task.placeName,
      startSeconds: task.startSeconds,
      endSeconds: task.endSeconds,
      by: task.desk === 1 ? ['desk'] : task.people.map((index) => changeover.people[index]?.name ?? ''),
      after: task.after,
      critical: task.isCritical,
    })),
  };
}

function round(value: number): number {
  return Math.round(value * 100) / 100;
}
