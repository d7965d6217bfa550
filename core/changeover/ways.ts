import { type Seeded, seeded } from '../plan/day/seeded-order.ts';
import { distanceM, type StagePlace } from '../show/stage-place.ts';
import { orderByKeys } from './key-order.ts';
import type { Person } from './people.ts';
import type { Task } from './task.ts';
import { stepsInTaskM, walkingMetresPerSecond } from './task-kinds.ts';
import { successors } from './timetable.ts';

/** A schedule in seconds in which everybody also walks from one task to the next. */
export type WalkedSchedule = {
  start: number[];
  end: number;
  /** People of each task, as places in the crew; empty where the desk does it. */
  ofTask: number[][];
  people: Person[];
};

type Walker = Person & { place: StagePlace | null; freeAt: number };

/**
 * Sends the crew through tasks, starting from a timetable without ways (starts in slots): the tasks in its order,
 * each to whoever can be there first. Then a counted number of tries in orders near the best one. A way only ever
 * makes a schedule longer, so a bound without ways stays a bound.
 */
export function withWays(
  tasks: readonly Task[],
  start: readonly number[],
  crewSize: number,
  tries: number,
): WalkedSchedule {
  const followers = successors(tasks);
  const walkNear = (figures: readonly number[]) =>
    walk(tasks, orderByKeys(tasks, followers, figures), crewSize);
  let best = walkNear(start);
  if (!tasks.some((task) => task.hands > 0 && task.place !== null)) return best;
  const next = seeded(tasks.length);
  for (let round = 0; round < tries; round++) {
    const found = walkNear(near(round % 2 === 0 ? best.start : start, next));
    if (found.end < best.end || (found.end === best.end && metres(found) < metres(best))) best = found;
  }
  return best;
}

const metres = ({ people }: WalkedSchedule) => people.reduce((sum, person) => sum + person.walkM, 0);

/** An order near another: some of the starts moved, mostly by little. */
function near(start: readonly number[], next: Seeded): number[] {
  const reach = next() * next() * Math.max(...start);
  return start.map((at) => (next() < 0.5 ? at : at + (next() - 0.5) * 2 * reach));
}

/** Seconds of a way: the last few steps are part of every task, and a place that nobody has told is near. */
export function waySeconds(from: StagePlace | null, to: StagePlace | null): number {
  if (!from || !to) return 0;
  return Math.ceil(Math.max(0, distanceM(from, to) - stepsInTaskM) / walkingMetresPerSecond);
}

/** The tasks in an order in which each comes after all that it waits for. */
function walk(tasks: readonly Task[], order: readonly number[], crewSize: number): WalkedSchedule {
  const crew = Array.from(
    { length: crewSize },
    (_, place): Walker => ({
      name: `Hand ${place + 1}`,
      tasks: [],
      walkM: 0,
      walkSeconds: 0,
      place: null,
      freeAt: 0,
    }),
  );
  const start = tasks.map(() => 0);
  const ofTask: number[][] = tasks.map(() => []);
  let deskFree = 0;
  let end = 0;
  for (const index of order) {
    const task = tasks[index];
    if (!task) continue;
    let at = Math.max(0, ...task.after.map((before) => (start[before] ?? 0) + (tasks[before]?.seconds ?? 0)));
    if (task.desk > 0) at = Math.max(at, deskFree);
    const sent = task.hands === 0 ? [] : firstThere(crew, task, at);
    for (const walker of sent) at = Math.max(at, walker.freeAt + waySeconds(walker.place, task.place));
    for (const walker of sent) goTo(walker, task, index, at);
    if (task.desk > 0) deskFree = at + task.seconds;
    start[index] = at;
    ofTask[index] = sent.map((walker) => crew.indexOf(walker));
    end = Math.max(end, at + task.seconds);
  }
  const people = crew.map(({ name, tasks: own, walkM, walkSeconds }) => ({
    name,
    tasks: own,
    walkM: Math.round(walkM),
    walkSeconds,
  }));
  return { start, end, ofTask, people };
}

/** Those who can be there first; of several who are in time, those with the shortest way. */
function firstThere(crew: readonly Walker[], task: Task, from: number): Walker[] {
  const way = (walker: Walker) => waySeconds(walker.place, task.place);
  const there = (walker: Walker) => Math.max(from, walker.freeAt + way(walker));
  return crew.toSorted((a, b) => there(a) - there(b) || way(a) - way(b)).slice(0, task.hands);
}

function goTo(walker: Walker, task: Task, index: number, at: number): void {
  if (walker.place && task.place) walker.walkM += distanceM(walker.place, task.place);
  walker.walkSeconds += waySeconds(walker.place, task.place);
  walker.place = task.place ?? walker.place;
  walker.freeAt = at + task.seconds;
  walker.tasks.push(index);
}
