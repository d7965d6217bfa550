import type { Task } from './task.ts';

/** Tasks whose words are what they are about: a 48 V task with another list of sockets is another task. */
const toldByWords: readonly Task['kind'][] = ['phantom off', 'phantom on'];

/**
 * What tells a task from every other of its changeover, and stays when names change: a tick holds for as long as
 * the same thing is to be done at the same place. A line that moves to another socket is to be plugged again.
 */
export function keyOfTask(task: Task): string {
  if (toldByWords.includes(task.kind)) return `${task.kind}: ${task.what}`;
  const riser = task.kind === 'roll off' || task.kind === 'roll on' ? task.placeName : '';
  const parts = [task.kind, riser, task.sourceId, task.mixId, task.deviceId, task.socketId];
  return parts.map((part) => part ?? '').join('|');
}

/** The tasks that are still to do, waiting only for one another. */
export function tasksLeft(tasks: readonly Task[], isDone: (task: Task) => boolean): Task[] {
  const left = tasks.flatMap((task, index) => (isDone(task) ? [] : [index]));
  const placeOf = new Map(left.map((index, place) => [index, place]));
  return left.flatMap((index): Task[] => {
    const task = tasks[index];
    return task ? [{ ...task, after: task.after.flatMap((before) => placeOf.get(before) ?? []) }] : [];
  });
}
