import type { DayPatch } from '../plan/day/day-patch.ts';
import type { ActWithPlan } from '../plan/plan-act.ts';
import type { Day } from '../show/act.ts';
import type { ActPatch } from './act-patch.ts';
import { changeoversBetween } from './changeover.ts';

/** What a patch makes of the changeovers of a day. */
export type ChangeoverTime = {
  /** All changeovers together; null where one of them has no schedule. */
  seconds: number | null;
  /** Work of hands in them, without ways: what two carry counts twice. */
  handSeconds: number;
  /** Changeovers that need more than there is. */
  tooLong: number;
};

/**
 * The time that the changeovers of a day take with its lines where a patch puts them. Without `tries` by the
 * desk-first rule alone: a few percent longer than the schedule that is searched for, for every patch alike.
 */
export function changeoverTime(
  day: Day,
  acts: readonly ActWithPlan[],
  { socketOf, entryOf }: Pick<DayPatch, 'socketOf' | 'entryOf'>,
  tries = 0,
): ChangeoverTime {
  const patches = acts.map(
    ({ sheet, plan }): ActPatch => ({
      sheet,
      plan: {
        ...plan,
        patches: plan.patches.map((it) => ({ ...it, socketId: socketOf.get(it.sourceId) ?? null })),
      },
      entryOf: (sourceId) => entryOf.get(sourceId) ?? 'hot',
    }),
  );
  const changeovers = changeoversBetween(day, patches, tries);
  return {
    seconds: changeovers.reduce<number | null>(
      (sum, { secondsNeeded }) => (sum === null || secondsNeeded === null ? null : sum + secondsNeeded),
      0,
    ),
    handSeconds: changeovers
      .flatMap(({ tasks }) => tasks)
      .reduce((sum, task) => sum + task.hands * task.seconds, 0),
    tooLong: changeovers.filter(({ secondsNeeded, secondsThere }) => (secondsNeeded ?? 0) > secondsThere)
      .length,
  };
}
