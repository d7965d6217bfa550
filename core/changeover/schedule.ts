import { type Seeded, seeded } from '../plan/day/seeded-order.ts';
import { orderByKeys } from './key-order.ts';
import { lowerBound } from './lower-bound.ts';
import { precedenceOrder, reversed, successors, type Timetable, type Work } from './timetable.ts';

/**
 * A short timetable for work: the first by the given order of importance, then a counted number of tries with
 * other orders, each pushed to the end and back to the start, until the bound is met. Counted and not timed, so
 * that the same work gives the same timetable. null where activities wait for each other in a circle, or where
 * one needs more than there is.
 */
export function schedule(
  work: Work,
  importance: readonly number[],
  tries: number,
): { timetable: Timetable; bound: number } | null {
  const order = precedenceOrder(work);
  const isPossible = work.activities.every((activity) =>
    activity.needs.every((need, resource) => need <= (work.capacities[resource] ?? 0)),
  );
  if (!order || !isPossible) return null;
  const bound = lowerBound(work, order);
  const packer = new Packer(work);
  let best = packer.asTheyComeFree(importance);
  const next = seeded(work.activities.length);
  let around = best;
  for (let round = 0; round < tries && best.end > bound; round++) {
    const found = packer.pushToAndFro(
      round === 0 ? best : packer.inOrder(mixed(around, best.end, round, next)),
    );
    if (found.end <= around.end || next() < 0.02) around = found;
    if (found.end < best.end) best = found;
  }
  return { timetable: best, bound };
}

/** An order near a timetable: starts, moved by up to a share of the whole. Now and then wholly new. */
function mixed(around: Timetable, end: number, round: number, next: Seeded): number[] {
  const reach = (round % 10 === 9 ? 1 : 0.02 + 0.2 * next() * next()) * end;
  return around.start.map((start) => start + (next() - 0.5) * 2 * reach);
}

/** Puts activities into time, one after the other, with what is held of each resource in each slot. */
class Packer {
  readonly #work: Work;
  readonly #backwards: Work;
  readonly #next: number[][];
  readonly #horizon: number;
  readonly #used: Int32Array[];

  constructor(work: Work) {
    this.#work = work;
    this.#backwards = reversed(work);
    this.#next = successors(work.activities);
    this.#horizon = work.activities.reduce((sum, activity) => sum + activity.duration, 1);
    this.#used = work.capacities.map(() => new Int32Array(this.#horizon));
  }

  /** At each moment the most important (smallest figure) of what may start is started. Never leaves hands idle. */
  asTheyComeFree(importance: readonly number[]): Timetable {
    const { activities, capacities } = this.#work;
    const waiting = activities.map((activity) => activity.after.length);
    const start: number[] = activities.map(() => -1);
    const free = [...capacities];
    const hold = (index: number, sign: 1 | -1) => {
      for (const [resource, need] of (activities[index]?.needs ?? []).entries())
        free[resource] = (free[resource] ?? 0) - sign * need;
    };
    const fits = (index: number) =>
      (activities[index]?.needs ?? []).every((need, resource) => need <= (free[resource] ?? 0));
    const byImportance = (a: number, b: number) => (importance[a] ?? 0) - (importance[b] ?? 0) || a - b;
    let running: { index: number; end: number }[] = [];
    let ready = waiting.flatMap((count, index) => (count === 0 ? [index] : []));
    let time = 0;
    while (ready.length > 0 || running.length > 0) {
      const left: number[] = [];
      for (const index of ready.sort(byImportance)) {
        if (!fits(index)) {
          left.push(index);
          continue;
        }
        hold(index, 1);
        start[index] = time;
        running.push({ index, end: time + (activities[index]?.duration ?? 0) });
      }
      time = Math.min(...running.map((it) => it.end));
      const over = running.filter((it) => it.end <= time);
      running = running.filter((it) => it.end > time);
      for (const { index } of over) hold(index, -1);
      ready = [...left, ...over.flatMap(({ index }) => this.#released(index, waiting))];
    }
    return { start, end: time };
  }

  /** What may start now that an activity is over; counts it out of what its followers wait for. */
  #released(index: number, waiting: number[]): number[] {
    return (this.#next[index] ?? []).filter((follower) => {
      waiting[follower] = (waiting[follower] ?? 0) - 1;
      return waiting[follower] === 0;
    });
  }

  /** Each activity as early as it fits, the smallest figure first, none before what it waits for. */
  inOrder(keys: readonly number[]): Timetable {
    return this.#place(this.#work, keys);
  }

  /** Everything as late as it fits, then as early as it fits: often shorter, never longer. */
  pushToAndFro(timetable: Timetable): Timetable {
    const durations = this.#work.activities.map((activity) => activity.duration);
    const late = this.#place(
      this.#backwards,
      timetable.start.map((start, index) => -(start + (durations[index] ?? 0))),
    );
    const pushed = late.start.map((start, index) => late.end - start - (durations[index] ?? 0));
    const early = this.#place(this.#work, pushed);
    return early.end < timetable.end ? early : timetable;
  }

  #place(work: Work, keys: readonly number[]): Timetable {
    for (const used of this.#used) used.fill(0);
    const next = work === this.#work ? this.#next : this.#work.activities.map((activity) => activity.after);
    const start: number[] = work.activities.map(() => 0);
    let end = 0;
    for (const index of orderByKeys(work.activities, next, keys)) {
      const activity = work.activities[index];
      if (!activity) break;
      let earliest = 0;
      for (const before of activity.after)
        earliest = Math.max(earliest, (start[before] ?? 0) + (work.activities[before]?.duration ?? 0));
      const at = this.#firstFit(activity.needs, activity.duration, earliest);
      start[index] = at;
      end = Math.max(end, at + activity.duration);
    }
    return { start, end };
  }

  #firstFit(needs: readonly number[], duration: number, earliest: number): number {
    let from = earliest;
    for (let time = from; time < from + duration; time++) if (!this.#hasRoom(needs, time)) from = time + 1;
    for (const [resource, need] of needs.entries()) {
      const used = this.#used[resource];
      if (used && need > 0)
        for (let time = from; time < from + duration; time++) used[time] = (used[time] ?? 0) + need;
    }
    return from;
  }

  #hasRoom(needs: readonly number[], time: number): boolean {
    for (let resource = 0; resource < needs.length; resource++) {
      const need = needs[resource] ?? 0;
      const capacity = this.#work.capacities[resource] ?? 0;
      if (need > 0 && (this.#used[resource]?.[time] ?? 0) + need > capacity) return false;
    }
    return true;
  }
}
