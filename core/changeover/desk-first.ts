import type { Task } from './task.ts';
import { successors } from './timetable.ts';

/**
 * How important each task is, the smallest figure first: riser work and what it waits for, then line by line what
 * leads to a check at the desk, the checks with the least work for hands before them first. There is one desk and
 * it checks one thing at a time, so it must not stand idle early on. Within the work for one check the longest
 * chain goes first.
 */
export function deskFirst(tasks: readonly Task[]): number[] {
  const next = successors(tasks);
  const handsBefore = handWorkBefore(tasks);
  const checksInOrder = [...tasks.keys()]
    .filter((index) => isCheck(tasks[index]))
    .sort((a, b) => (handsBefore[a] ?? 0) - (handsBefore[b] ?? 0) || a - b);
  const rankOfCheck = new Map(checksInOrder.map((index, rank) => [index, rank]));
  const rank = new Map<number, number>();
  const chain = new Map<number, number>();
  const isRiserWork = new Map<number, boolean>();
  // From the last task to the first, so that what follows a task is known before it.
  const visit = (index: number): void => {
    if (chain.has(index)) return;
    const followers = next[index] ?? [];
    followers.forEach(visit);
    const task = tasks[index];
    chain.set(index, (task?.seconds ?? 0) + Math.max(0, ...followers.map((it) => chain.get(it) ?? 0)));
    rank.set(
      index,
      rankOfCheck.get(index) ??
        Math.min(tasks.length, ...followers.map((it) => rank.get(it) ?? tasks.length)),
    );
    isRiserWork.set(index, (task?.hands ?? 0) > 1 || followers.some((it) => isRiserWork.get(it)));
  };
  [...tasks.keys()].forEach(visit);
  return tasks.map((_, index) => {
    if (isRiserWork.get(index)) return -1;
    return (rank.get(index) ?? 0) - (chain.get(index) ?? 0) / longChainSeconds;
  });
}

/** Seconds of hand work that each task waits for, work for several checks counted with each. */
function handWorkBefore(tasks: readonly Task[]): number[] {
  return tasks.map((_, index) => {
    const seen = new Set<number>();
    const gather = (at: number): void => {
      for (const before of tasks[at]?.after ?? []) {
        if (seen.has(before)) continue;
        seen.add(before);
        gather(before);
      }
    };
    gather(index);
    return [...seen].reduce((sum, at) => sum + (tasks[at]?.hands ?? 0) * (tasks[at]?.seconds ?? 0), 0);
  });
}

const checkKinds: ReadonlySet<string> = new Set(['line check', 'quick check', 'monitor check']);

function isCheck(task: Task | undefined): boolean {
  return task !== undefined && checkKinds.has(task.kind);
}

/** Longer than any chain of tasks, so that the chain only decides between tasks for one check. */
const longChainSeconds = 100_000;
