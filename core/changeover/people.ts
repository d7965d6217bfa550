import type { Task } from './task.ts';

/**
 * One of the crew: the tasks in the order they are walked, how far that is where the places are known, and the
 * seconds of ways that come on top of the tasks' own.
 */
export type Person = { name: string; tasks: number[]; walkM: number; walkSeconds: number };

/**
 * From the last task back to the first, each time to what held this one up: what it waits for, what the desk did
 * just before, or what the same person did before the way here. Starts in seconds; first to last.
 */
export function criticalPath(
  tasks: readonly Task[],
  start: readonly number[],
  ofTask: readonly number[][],
  wayOf: (from: Task, to: Task) => number,
): number[] {
  const endOf = (index: number) => (start[index] ?? 0) + (tasks[index]?.seconds ?? 0);
  const indexes = [...tasks.keys()];
  let at = indexes.reduce((last, index) => (endOf(index) > endOf(last) ? index : last), 0);
  const path: number[] = [];
  for (let task = tasks[at]; task; task = tasks[at]) {
    path.push(at);
    const begins = start[at] ?? 0;
    const here = task;
    if (begins === 0) break;
    const people = ofTask[at] ?? [];
    const waitedFor = here.after.find((index) => endOf(index) === begins);
    const sameHands = indexes.find((index) => {
      const other = tasks[index];
      if (!other || index === at || endOf(index) > begins) return false;
      if (here.desk > 0 && other.desk > 0) return endOf(index) === begins;
      const isSame = (ofTask[index] ?? []).some((person) => people.includes(person));
      return isSame && endOf(index) + wayOf(other, here) === begins;
    });
    const next = waitedFor ?? sameHands;
    if (next === undefined || path.includes(next)) break;
    at = next;
  }
  return path.reverse();
}
