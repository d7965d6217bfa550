import { describe, expect, test } from 'vitest';
import { changeFromDayPlan } from '../../../core/plan/day/change-from-day-plan.ts';
import {
  assignmentOfPatch,
  patchAsItStands,
  patchOfAssignment,
  replugs,
} from '../../../core/plan/day/day-patch.ts';
import { buildDay, type DayPlan, layerNames } from '../../../core/plan/day/day-plan.ts';
import { differenceOfDay } from '../../../core/plan/day/difference.ts';
import { evaluate } from '../../../core/plan/day/evaluate.ts';
import { dayPlanOf, FoundDay, foundDay } from '../../../core/plan/day/found-day.ts';
import { type Habit, patchByHabit } from '../../../core/plan/day/habits.ts';
import type { Layer } from '../../../core/plan/day/problem.ts';
import { actsWithPlans, planAct } from '../../../core/plan/plan-act.ts';
import { actSheet, actsOfDay } from '../../../core/show/act-sheet.ts';
import { applyChange } from '../../../core/show/apply-change.ts';
import { put } from '../../../core/show/change.ts';
import { moveAct } from '../../../core/show/running-order.ts';
import type { Show } from '../../../core/show/show.ts';
import { familyDay, twelveActs } from '../../bench/day-family.ts';

/** Days on which the habit keeps every rule: of a broken rule the rows and the planner make different things. */
const seeds = [2, 3, 5, 6];
const smallDay = (seed: number) =>
  familyDay({ ...twelveActs, acts: 4, fewestLines: 12, mostLines: 24 }, seed);

/** A plan without a solver: what a crew does by habit. Only its arithmetic matters here. */
function planByHabit(show: Show, habit: Habit = 'keep and fill'): DayPlan {
  const { layers, notes } = buildDay(show, 'day');
  const planned = (layer: Layer) => {
    const assignment = patchByHabit(layer, habit);
    const evaluation = evaluate(layer, assignment);
    const plan = { assignment, cost: evaluation.cost, bound: 0, isProven: false, isClean: true };
    return {
      layer,
      plan,
      evaluation,
      proof: 'within the gap' as const,
      gapPercent: 1,
      conflict: null,
      nearest: null,
      stability: null,
    };
  };
  const [sockets, channels, buses, outputs] = [
    planned(layers.sockets),
    planned(layers.channels),
    planned(layers.buses),
    planned(layers.outputs),
  ];
  return { dayId: 'day', layers: { sockets, channels, buses, outputs }, notes };
}

let nextId = 0;
const taken = (show: Show, plan: DayPlan) =>
  applyChange(
    show,
    changeFromDayPlan(show, plan, () => `new ${nextId++}`),
  );

describe('the work of a day', () => {
  test.each(seeds)('of a plan is what the referee counts, and the same once it is taken (day %i)', (seed) => {
    const show = smallDay(seed);
    const plan = planByHabit(show);
    const { layer, evaluation } = plan.layers.sockets;
    expect(evaluation.broken).toEqual([]);
    const planned = patchOfAssignment(layer, plan.layers.sockets.plan.assignment);
    expect(planned.work).toBe(evaluation.cost);
    expect(planned.beforeAct).toEqual(
      evaluation.beforeAct.map(({ kept, cold, hot }) => ({ kept, cold, hot })),
    );
    expect(planned.withoutSocket).toBe(0);
    expect(replugs(planned)).toBe(evaluation.beforeAct.reduce((sum, { hot }) => sum + hot, 0));
    const after = taken(show, plan);
    const stands = patchAsItStands(buildDay(after, 'day').layers.sockets, actsWithPlans(after, 'day'));
    expect(stands).toEqual(planned);
    expect(assignmentOfPatch(layer, stands)).toEqual(plan.layers.sockets.plan.assignment);
  });

  test.each([2, 3, 5, 6, 7, 8, 9, 10])(
    'is what the referee counts after the acts were put in another order (day %i)',
    (seed) => {
      const show = familyDay({ ...twelveActs, acts: 4, fewestLines: 12, mostLines: 24, bankSize: 1 }, seed);
      const after = taken(show, planByHabit(show));
      const reordered = applyChange(after, moveAct(actsOfDay(after, 'day'), 3, 1));
      const { sockets } = buildDay(reordered, 'day').layers;
      const stands = patchAsItStands(sockets, actsWithPlans(reordered, 'day'));
      expect(stands.work).toBe(evaluate(sockets, assignmentOfPatch(sockets, stands)).cost);
    },
  );

  test('of a shared line that went elsewhere in between is that of plugging it again', () => {
    const show = familyDay({ ...twelveActs, acts: 3, fewestLines: 12, mostLines: 24, bankSize: 1 }, 2);
    const plan = planByHabit(show);
    const { layer } = plan.layers.sockets;
    const last = layer.items.findIndex((item) => item.act === 2 && item.previous >= 0 && item.width === 1);
    const before = layer.items[last]?.previous ?? -1;
    const first = layer.items[before]?.previous ?? -1;
    const assignment = [...plan.layers.sockets.plan.assignment];
    const free = layer.slots.findIndex((_, slot) =>
      layer.items.every((__, index) => ![slot, slot - 1].includes(assignment[index] ?? -1)),
    );
    assignment[before] = free;
    assignment[last] = assignment[first] ?? -1;
    expect(first).toBeGreaterThanOrEqual(0);
    const { cost, entries } = evaluate(layer, assignment);
    expect(entries[last]).not.toBe('kept');
    plan.layers.sockets.plan.assignment = assignment;
    const after = taken(show, plan);
    expect(patchAsItStands(buildDay(after, 'day').layers.sockets, actsWithPlans(after, 'day')).work).toBe(
      cost,
    );
  });

  test('counts a line that has no socket, and no work for it', () => {
    const show = smallDay(1);
    const { sockets } = buildDay(show, 'day').layers;
    const none = patchOfAssignment(
      sockets,
      sockets.items.map(() => -1),
    );
    expect(none.work).toBe(0);
    expect(none.withoutSocket).toBe(sockets.items.reduce((sum, item) => sum + item.width, 0));
  });
});

describe('what a plan changes', () => {
  const planOf = (show: Show) => (actId: string) => {
    const sheet = actSheet(show, actId);
    return sheet && planAct(sheet);
  };

  test.each(seeds)('is nothing once it is taken (day %i)', (seed) => {
    const show = smallDay(seed);
    const plan = planByHabit(show);
    const before = differenceOfDay(plan, planOf(show));
    expect(before.sockets.length).toBeGreaterThan(0);
    expect(before.sockets.every((move) => move.from !== move.to && move.to !== '')).toBe(true);
    const after = differenceOfDay(plan, planOf(taken(show, plan)));
    expect(layerNames.map((name) => after[name])).toEqual([[], [], [], []]);
  });
});

describe('a plan that crossed from the shell to the page', () => {
  const show = smallDay(2);
  const plan = planByHabit(show);
  const found = FoundDay.parse(JSON.parse(JSON.stringify(foundDay(plan))));
  const [act] = actsOfDay(show, 'day');
  const [source] = show.sources.values();
  if (!act || !source) throw new Error('the day has acts with sources');

  test('is the same plan', () => {
    expect(dayPlanOf(show, show, found)?.layers.sockets).toEqual(plan.layers.sockets);
  });

  test('stays one when it is taken, and when a time or a tick changes', () => {
    expect(dayPlanOf(show, taken(show, plan), found)).not.toBeNull();
    const moved = applyChange(show, {
      label: 'Later',
      put: [
        put('acts', { ...act, startMinute: 900 }),
        put('ticks', { id: 'tick', actId: act.id, taskKey: 'mute', doneAt: '' }),
      ],
      remove: [],
    });
    expect(dayPlanOf(show, moved, found)).not.toBeNull();
  });

  test.each([
    ['a line goes', { put: [], remove: [{ table: 'sources' as const, id: source.id }] }],
    ['an act goes', { put: [], remove: [{ table: 'acts' as const, id: act.id }] }],
    ['a line must not have 48 V', { put: [put('sources', { ...source, phantom: 'harmful' })], remove: [] }],
  ])('is none any more when %s', (_, parts) => {
    expect(dayPlanOf(show, applyChange(show, { label: 'Change', ...parts }), found)).toBeNull();
  });
});
