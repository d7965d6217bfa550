import type { Changeover } from '../../core/changeover/changeover.ts';
import { type ChangeoverTime, changeoverTime } from '../../core/changeover/minutes-of-patch.ts';
import type { DayDoubt } from '../../core/plan/day/check-day.ts';
import { clock } from '../../core/plan/day/check-day.ts';
import { patchCosts } from '../../core/plan/day/costs.ts';
import { patchOfAssignment } from '../../core/plan/day/day-patch.ts';
import { type DayPlan, layerNames, type PlannedLayer } from '../../core/plan/day/day-plan.ts';
import { evaluate } from '../../core/plan/day/evaluate.ts';
import { habits, patchByHabit } from '../../core/plan/day/habits.ts';
import { nearestInWords } from '../../core/plan/day/nearest-plan.ts';
import { type Assignment, type Layer, slotsTaken } from '../../core/plan/day/problem.ts';
import type { StockReport } from '../../core/plan/day/stock.ts';
import type { ActWithPlan } from '../../core/plan/plan-act.ts';
import type { Day } from '../../core/show/act.ts';
import type { Show } from '../../core/show/show.ts';

/** Everything that is known of a planned day, for people and programs that read JSON. Times are in seconds. */
export function dayReport(
  show: Show,
  day: Day,
  plan: DayPlan,
  changeovers: readonly Changeover[],
  more: {
    doubts: DayDoubt[];
    stock: StockReport;
    milliseconds: number;
    acts: readonly ActWithPlan[];
  },
) {
  const { sockets } = plan.layers;
  const timeOf = (assignment: Assignment) =>
    changeoverTime(day, more.acts, patchOfAssignment(sockets.layer, assignment), triesToCompare);
  return {
    day: day.name,
    milliseconds: more.milliseconds,
    ...costs(sockets),
    proof: sockets.proof,
    units: `one line costs ${patchCosts.plug} and ${patchCosts.perMetre} a metre in a changeover, ${patchCosts.preparedShare} of that while another act plays`,
    conflict: conflictReport(sockets),
    notes: [...more.doubts.map((it) => `${it.what} ${it.todo}`), ...plan.notes],
    layers: Object.fromEntries(layerNames.map((name) => [name, layerReport(plan.layers[name])])),
    // The plan and the habits on the same day, measured alike.
    plan: sockets.proof === 'no plan' ? null : planReport(sockets, timeOf),
    habits: sockets.proof === 'no plan' ? [] : habits.map((habit) => habitReport(sockets, habit, timeOf)),
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
    conflict: conflictReport(planned),
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
    assignments: planned.proof === 'no plan' ? [] : assignmentsOf(layer, plan.assignment),
  };
}

/** Which demands collide, as few as they are, and the plan that gives up least; null where nothing collides. */
function conflictReport({ layer, conflict, nearest }: PlannedLayer) {
  if (!conflict) return null;
  const nameOf = (index: number) => ({
    item: layer.items[index]?.name ?? '',
    act: layer.acts[layer.items[index]?.act ?? -1]?.name ?? '',
  });
  return {
    what: conflict.what,
    todo: conflict.todo,
    smallestSet: conflict.demands.map((it) => it.what),
    isSmallest: conflict.isSmallest,
    others: conflict.others,
    nearestPlan: nearest && {
      what: nearestInWords(layer, nearest),
      leftOut: nearest.leftOut.map(nameOf),
      isFewest: nearest.isFewest,
      openedLocks: nearest.opened.map(nameOf),
      notReadyEarly: nearest.notReady.map(nameOf),
      objective: nearest.cost,
      bound: nearest.bound,
      assignments: assignmentsOf(layer, nearest.assignment),
    },
  };
}

function assignmentsOf(layer: Layer, assignment: Assignment) {
  const { entries } = evaluate(layer, assignment);
  return layer.items.map((item, index) => ({
    act: layer.acts[item.act]?.name ?? '',
    item: item.name,
    ...(item.detail === '' ? {} : { purpose: item.detail }),
    to: slotsTaken(layer, item, assignment[index] ?? -1).flatMap((slot) => layer.slots[slot]?.name ?? []),
    entry: entries[index],
    locked: item.locked !== null,
  }));
}

/** null where there is no plan to have a cost. */
function costs({ proof, plan, gapPercent }: PlannedLayer) {
  if (proof === 'no plan') return { objective: null, bound: null, gapPercent: null };
  return { objective: plan.cost, bound: plan.bound, gapPercent: round(gapPercent) };
}

function planReport({ plan, evaluation }: PlannedLayer, timeOf: (assignment: Assignment) => ChangeoverTime) {
  return {
    ...timeReport(timeOf(plan.assignment)),
    objective: plan.cost,
    replugsInChangeovers: evaluation.beforeAct.slice(1).reduce((sum, act) => sum + act.hot, 0),
  };
}

/** Tries for each changeover of a day that is only to be compared. */
const triesToCompare = 20;

/** What the same day costs when it is patched by a habit. */
function habitReport(
  { layer, plan }: PlannedLayer,
  habit: (typeof habits)[number],
  timeOf: (assignment: Assignment) => ChangeoverTime,
) {
  const assignment = patchByHabit(layer, habit);
  const { cost, beforeAct, broken } = evaluate(layer, assignment);
  return {
    habit,
    ...timeReport(timeOf(assignment)),
    objective: cost,
    overPlanPercent: round((100 * (cost - plan.cost)) / Math.max(1, plan.cost)),
    replugsInChangeovers: beforeAct.slice(1).reduce((sum, act) => sum + act.hot, 0),
    withoutPlace: broken.filter((it) => it.rule === 'no slot').length,
    brokenRules: broken.length,
  };
}

function timeReport({ seconds, handSeconds, tooLong }: ChangeoverTime) {
  return {
    minutesInChangeovers: seconds === null ? null : round(seconds / 60),
    handMinutesInChangeovers: round(handSeconds / 60),
    changeoversTooLong: tooLong,
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
    secondsWithoutWays: changeover.secondsWithoutWays,
    limitedBy: changeover.limitedBy,
    problem: changeover.problem,
    ahead: changeover.ahead.map(({ what, placeName }) => ({ what, place: placeName })),
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
