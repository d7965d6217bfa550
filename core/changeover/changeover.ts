import type { ActWithPlan } from '../plan/plan-act.ts';
import type { Day } from '../show/act.ts';
import type { Id } from '../show/rig.ts';
import type { ActPatch } from './act-patch.ts';
import { plugsAhead } from './ahead.ts';
import { deskFirst } from './desk-first.ts';
import { entriesOfDay } from './entries.ts';
import { boundParts } from './lower-bound.ts';
import { criticalPath, type Person } from './people.ts';
import { schedule } from './schedule.ts';
import { secondsBetween } from './seconds-between.ts';
import type { Task } from './task.ts';
import { slotSeconds } from './task-kinds.ts';
import { tasksBetween } from './tasks-between.ts';
import { precedenceOrder, type Work } from './timetable.ts';
import { waySeconds, withWays } from './ways.ts';

export type ScheduledTask = Task & {
  startSeconds: number;
  endSeconds: number;
  /** Places in the list of people; empty where the desk does it. */
  people: number[];
  isCritical: boolean;
};

/** From one act to the next: what is to do, in which order, by whom, and whether it fits. */
export type Changeover = {
  fromActId: Id;
  toActId: Id;
  tasks: ScheduledTask[];
  /** The crew, each with their tasks in the order they walk. */
  people: Person[];
  /** Tasks that nobody can be late with, first to last. */
  criticalPath: number[];
  /** With the ways from task to task; null where there is no schedule; `problem` says why. */
  secondsNeeded: number | null;
  /** The same if nobody had to walk further than a few steps. */
  secondsWithoutWays: number | null;
  /** Nobody can do it faster, with any order of the same tasks. */
  lowerBoundSeconds: number;
  /** What keeps it from being shorter: more hands help only where it says so. */
  limitedBy: 'hands' | 'desk' | 'order of tasks';
  /** See `secondsBetween`. */
  secondsThere: number;
  problem: string | null;
  /** Plugged while the act before still plays; no part of the schedule. */
  ahead: Task[];
};

/** Tries of the search for a shorter schedule: about 50 ms for a changeover of 40 lines. */
export const usualTries = 120;

/** All changeovers of a day, from the plans of its acts as they stand, in running order. */
export function changeoversOfDay(acts: readonly ActWithPlan[], tries = usualTries): Changeover[] {
  const day = acts[0]?.sheet.day;
  const entries = entriesOfDay(acts);
  const patches = acts.map((act): ActPatch => ({ ...act, entryOf: (id) => entries.get(id) ?? 'hot' }));
  return day ? changeoversBetween(day, patches, tries) : [];
}

/** The changeover from each act to the next. */
export function changeoversBetween(day: Day, patches: readonly ActPatch[], tries: number): Changeover[] {
  return patches.flatMap((to, place) => {
    const from = patches[place - 1];
    return from ? [changeoverBetween(day, from, to, tries)] : [];
  });
}

/** One changeover with its schedule for the day's crew. */
export function changeoverBetween(day: Day, from: ActPatch, to: ActPatch, tries = usualTries): Changeover {
  const tasks = tasksBetween(from, to);
  return scheduleTasks(tasks, day.crewSize, tries, {
    fromActId: from.sheet.act.id,
    toActId: to.sheet.act.id,
    secondsThere: secondsBetween(day, from.sheet.act, to.sheet.act),
    ahead: plugsAhead(to),
  });
}

/** A schedule for tasks that are at hand, for example those not yet ticked off. */
export function scheduleTasks(
  tasks: Task[],
  crewSize: number,
  tries: number,
  {
    fromActId,
    toActId,
    secondsThere,
    ahead,
  }: Pick<Changeover, 'fromActId' | 'toActId' | 'secondsThere' | 'ahead'>,
): Changeover {
  const work = workOf(tasks, crewSize);
  const order = precedenceOrder(work) ?? [];
  const parts = boundParts(work, order);
  const [hands = 0, desk = 0] = parts.resources;
  const bound = Math.max(parts.order, hands, desk);
  const limitedBy = bound === parts.order ? 'order of tasks' : bound === desk ? 'desk' : 'hands';
  const base = {
    fromActId,
    toActId,
    secondsThere,
    ahead,
    lowerBoundSeconds: bound * slotSeconds,
    limitedBy,
  } as const;
  const found = schedule(work, deskFirst(tasks), tries);
  if (!found)
    return {
      ...base,
      tasks: tasks.map((task) => ({
        ...task,
        startSeconds: 0,
        endSeconds: 0,
        people: [],
        isCritical: false,
      })),
      people: [],
      criticalPath: [],
      secondsNeeded: null,
      secondsWithoutWays: null,
      problem: whyNoSchedule(tasks, crewSize),
    };
  const { start, end, ofTask, people } = withWays(tasks, found.timetable.start, crewSize, tries);
  const critical = criticalPath(tasks, start, ofTask, (before, after) =>
    waySeconds(before.place, after.place),
  );
  return {
    ...base,
    tasks: tasks.map((task, index) => ({
      ...task,
      startSeconds: start[index] ?? 0,
      endSeconds: (start[index] ?? 0) + task.seconds,
      people: ofTask[index] ?? [],
      isCritical: critical.includes(index),
    })),
    people,
    criticalPath: critical,
    secondsNeeded: end,
    secondsWithoutWays: found.timetable.end * slotSeconds,
    problem: null,
  };
}

/** Tasks as work for a crew and one desk. */
export function workOf(tasks: readonly Task[], crewSize: number): Work {
  return {
    activities: tasks.map((task) => ({
      duration: Math.round(task.seconds / slotSeconds),
      needs: [task.hands, task.desk],
      after: task.after,
    })),
    capacities: [crewSize, 1],
  };
}

function whyNoSchedule(tasks: readonly Task[], crewSize: number): string {
  const most = Math.max(0, ...tasks.map((task) => task.hands));
  if (crewSize === 0) return 'There is nobody on stage: set the size of the crew.';
  return `One task needs ${most} people and the crew has ${crewSize}: ${tasks.find((it) => it.hands === most)?.what ?? ''}`;
}
