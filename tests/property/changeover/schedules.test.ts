import fc from 'fast-check';
import { expect, test } from 'vitest';
import { lowerBound } from '../../../core/changeover/lower-bound.ts';
import { schedule } from '../../../core/changeover/schedule.ts';
import { breaks, precedenceOrder, type Work } from '../../../core/changeover/timetable.ts';

/** Up to six activities on hands and one desk; each waits only for earlier ones. */
const smallWork: fc.Arbitrary<Work> = fc
  .record({
    crew: fc.integer({ min: 2, max: 3 }),
    tasks: fc.array(
      fc.record({
        duration: fc.integer({ min: 1, max: 5 }),
        needs: fc.constantFrom<number[][]>([1, 0], [2, 0], [0, 1], [1, 1]),
        waits: fc.array(fc.nat(4), { maxLength: 2 }),
      }),
      { minLength: 1, maxLength: 6 },
    ),
  })
  .map(({ crew, tasks }) => ({
    capacities: [crew, 1],
    activities: tasks.map(({ duration, needs, waits }, index) => ({
      duration,
      needs,
      after: [...new Set(waits.filter((before) => before < index))],
    })),
  }));

/**
 * The shortest of all orders, each packed as early as it goes. Among such timetables there is always a shortest one
 * (Kolisch 1996, on the serial scheme), so this is the optimum, found without the scheduler.
 */
function shortestOfAll(work: Work): number {
  const all = [...work.activities.keys()];
  const pack = (order: number[]): number => {
    const start = new Map<number, number>();
    let end = 0;
    for (const index of order) {
      const { duration, needs, after } = work.activities[index] ?? { duration: 0, needs: [], after: [] };
      let at = Math.max(
        0,
        ...after.map((before) => (start.get(before) ?? 0) + (work.activities[before]?.duration ?? 0)),
      );
      const isFull = (time: number) =>
        work.capacities.some((capacity, resource) => {
          const used = [...start].reduce((sum, [other, from]) => {
            const activity = work.activities[other];
            const runs = activity && from <= time && time < from + activity.duration;
            return runs ? sum + (activity.needs[resource] ?? 0) : sum;
          }, 0);
          return used + (needs[resource] ?? 0) > capacity;
        });
      while (Array.from({ length: duration }, (_, step) => at + step).some(isFull)) at++;
      start.set(index, at);
      end = Math.max(end, at + duration);
    }
    return end;
  };
  const every = (order: number[]): number => {
    if (order.length === all.length) return pack(order);
    const next = all.filter(
      (index) =>
        !order.includes(index) &&
        (work.activities[index]?.after ?? []).every((before) => order.includes(before)),
    );
    return Math.min(...next.map((index) => every([...order, index])));
  };
  return every([]);
}

test('a schedule of a few tasks is the shortest there is, breaks nothing, and the bound never lies above it', () => {
  fc.assert(
    fc.property(smallWork, (work) => {
      const shortest = shortestOfAll(work);
      const found = schedule(
        work,
        work.activities.map(() => 0),
        200,
      );
      expect(breaks(work, found?.timetable ?? { start: [], end: 0 })).toEqual([]);
      expect(lowerBound(work, precedenceOrder(work) ?? [])).toBeLessThanOrEqual(shortest);
      expect(found?.timetable.end).toBe(shortest);
    }),
    { numRuns: 150 },
  );
}, 60_000);
