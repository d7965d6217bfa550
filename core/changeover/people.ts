import { distanceM, type StagePlace } from '../show/stage-place.ts';
import type { Task } from './task.ts';
import { slotSeconds, walkingMetresPerSecond } from './task-kinds.ts';

/**
 * One of the crew: the tasks in the order they are walked, and how far and how long that is where the places are
 * known. The usual few steps are part of each task's seconds; a long way is not.
 */
export type Person = { name: string; tasks: number[]; walkM: number; walkSeconds: number };

type Walker = Person & { place: StagePlace | null; freeAt: number };

/**
 * Who does what, for starts (in slots) that are settled: whoever is free and nearest goes. A timetable that keeps
 * within the crew always finds enough people.
 */
export function sendPeople(
  tasks: readonly Task[],
  start: readonly number[],
  crewSize: number,
): { people: Person[]; ofTask: number[][] } {
  const crew = Array.from(
    { length: crewSize },
    (_, index): Walker => ({
      name: `Hand ${index + 1}`,
      tasks: [],
      walkM: 0,
      walkSeconds: 0,
      place: null,
      freeAt: 0,
    }),
  );
  const ofTask: number[][] = tasks.map(() => []);
  const inTime = [...tasks.keys()].sort((a, b) => (start[a] ?? 0) - (start[b] ?? 0) || a - b);
  for (const index of inTime) {
    const task = tasks[index];
    if (!task || task.hands === 0) continue;
    const time = start[index] ?? 0;
    const way = (walker: Walker) => (walker.place && task.place ? distanceM(walker.place, task.place) : 0);
    const nearest = [...crew.keys()]
      .filter((place) => (crew[place]?.freeAt ?? 0) <= time)
      .sort((a, b) => way(crew[a] as Walker) - way(crew[b] as Walker) || a - b)
      .slice(0, task.hands);
    for (const place of nearest) {
      const walker = crew[place] as Walker;
      walker.walkM += way(walker);
      walker.place = task.place ?? walker.place;
      walker.freeAt = time + Math.round(task.seconds / slotSeconds);
      walker.tasks.push(index);
    }
    ofTask[index] = nearest;
  }
  const people = crew.map(({ name, tasks: own, walkM }) => ({
    name,
    tasks: own,
    walkM: Math.round(walkM),
    walkSeconds: Math.round(walkM / walkingMetresPerSecond),
  }));
  return { people, ofTask };
}

/**
 * From the last task back to the first, each time to one that ends the moment this one starts: what it waits for,
 * or what the same person (or the desk) did just before. First to last.
 */
export function criticalPath(
  tasks: readonly Task[],
  start: readonly number[],
  ofTask: readonly number[][],
): number[] {
  const endOf = (index: number) =>
    (start[index] ?? 0) + Math.round((tasks[index]?.seconds ?? 0) / slotSeconds);
  let at = [...tasks.keys()].reduce((last, index) => (endOf(index) > endOf(last) ? index : last), 0);
  const path: number[] = [];
  while (tasks[at]) {
    path.push(at);
    const begins = start[at] ?? 0;
    if (begins === 0) break;
    const before = [...tasks.keys()].filter((index) => endOf(index) === begins && index !== at);
    const waitedFor = before.find((index) => tasks[at]?.after.includes(index));
    const sameHands = before.find(
      (index) =>
        (tasks[at]?.desk === 1 && tasks[index]?.desk === 1) ||
        (ofTask[index] ?? []).some((person) => ofTask[at]?.includes(person)),
    );
    const next = waitedFor ?? sameHands ?? before[0];
    if (next === undefined || path.includes(next)) break;
    at = next;
  }
  return path.reverse();
}
