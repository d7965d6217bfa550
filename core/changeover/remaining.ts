import type { Task } from './task.ts';

/** The tasks that are left once some are ticked off; what is done is no longer waited for. */
export function remainingTasks(tasks: readonly Task[], done: ReadonlySet<number>): Task[] {
  const newPlace = new Map(
    [...tasks.keys()].filter((index) => !done.has(index)).map((index, place) => [index, place]),
  );
  return tasks
    .filter((_, index) => !done.has(index))
    .map((task) => ({ ...task, after: task.after.flatMap((before) => newPlace.get(before) ?? []) }));
}
