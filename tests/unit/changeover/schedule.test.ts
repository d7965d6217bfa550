import { expect, test } from 'vitest';
import { lowerBound } from '../../../core/changeover/lower-bound.ts';
import { schedule } from '../../../core/changeover/schedule.ts';
import { breaks, heads, precedenceOrder, tails, type Work } from '../../../core/changeover/timetable.ts';
import { loadLinearSolver } from '../../../electron/solver/highs-solver.ts';
import { timeSlotsModel } from '../../helpers/time-slots-model.ts';
import reference from '../../reference/project-schedule.json';

/** Work from a published instance: its lists of successors turned into what each job waits for. */
function publishedWork(given: (typeof reference.cases)[number]['in']): Work {
  return {
    capacities: given.capacities,
    activities: given.jobs.map(({ duration, needs }, job) => ({
      duration,
      needs,
      after: given.jobs.flatMap(({ successors }, before) => (successors.includes(job + 1) ? [before] : [])),
    })),
  };
}

test.each(reference.cases)(
  'published instance $in.name: the optimum is found and no bound is above it',
  ({ in: given, out }) => {
    const work = publishedWork(given);
    const order = precedenceOrder(work) ?? [];
    const longest = Math.max(
      ...heads(work, order).map((head, job) => head + (work.activities[job]?.duration ?? 0)),
    );
    expect(longest).toBe(out.longestPath);
    const longestChainFirst = tails(work, order).map((tail) => -tail);
    const found = schedule(work, longestChainFirst, 400);
    expect(found?.timetable.end).toBe(out.optimum);
    expect(breaks(work, found?.timetable ?? { start: [], end: 0 })).toEqual([]);
    expect(lowerBound(work, order)).toBeLessThanOrEqual(out.optimum);
  },
);

test.each(reference.cases)(
  'published instance $in.name: an exact model finds the optimum, and nothing shorter',
  async ({ in: given, out }) => {
    const solve = await loadLinearSolver();
    const statusAt = (end: number) =>
      solve(timeSlotsModel(publishedWork(given), end), { whole: true }).status;
    expect(statusAt(out.optimum)).toBe('optimal');
    expect(statusAt(out.optimum - 1)).toBe('infeasible');
  },
  60_000,
);

const hand = (duration: number, after: number[] = []) => ({ duration, needs: [1], after });

const cases: { name: string; work: Work; end: number | null; bound?: number }[] = [
  {
    name: 'two hands share four equal tasks',
    work: { activities: [hand(2), hand(2), hand(2), hand(2)], capacities: [2] },
    end: 4,
    bound: 4,
  },
  {
    name: 'a chain takes as long as it is, whoever helps',
    work: { activities: [hand(2), hand(3, [0]), hand(1, [1])], capacities: [9] },
    end: 6,
    bound: 6,
  },
  {
    name: 'work that can only start late counts after its wait',
    work: { activities: [hand(5), hand(2, [0]), hand(2, [0]), hand(2, [0])], capacities: [1] },
    end: 11,
    bound: 11,
  },
  { name: 'nothing to do takes no time', work: { activities: [], capacities: [2] }, end: 0, bound: 0 },
  { name: 'nobody there: no schedule', work: { activities: [hand(2)], capacities: [0] }, end: null },
  {
    name: 'tasks that wait for each other: no schedule',
    work: { activities: [hand(1, [1]), hand(1, [0])], capacities: [1] },
    end: null,
  },
];

test.each(cases)('schedule: $name', ({ work, end, bound }) => {
  const found = schedule(
    work,
    work.activities.map(() => 0),
    50,
  );
  expect(found?.timetable.end ?? null).toBe(end);
  if (bound !== undefined) expect(found?.bound).toBe(bound);
});
