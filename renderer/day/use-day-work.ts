import { useDeferredValue, useMemo } from 'react';
import {
  assignmentOfPatch,
  type DayPatch,
  patchAsItStands,
  patchOfAssignment,
} from '../../core/plan/day/day-patch.ts';
import { buildDay, type LayerName } from '../../core/plan/day/day-plan.ts';
import { evaluate } from '../../core/plan/day/evaluate.ts';
import { type Habit, habits, patchByHabit } from '../../core/plan/day/habits.ts';
import type { Assignment, Layer } from '../../core/plan/day/problem.ts';
import type { Id } from '../../core/show/rig.ts';
import type { Show } from '../../core/show/show.ts';
import type { ActOnScreen } from '../state/derive-cache.ts';

/** The work of a day: as it stands, and as the habits would patch it. */
export type DayWork = {
  layers: Record<LayerName, Layer>;
  now: DayPatch;
  /** Rules that the day breaks as it stands, one sentence each. */
  brokenNow: string[];
  /** `broken`: how many rules the habit breaks on this day. */
  habits: { habit: Habit; patch: DayPatch; broken: number }[];
  /** What had to be read in its own way; one sentence each. */
  notes: string[];
};

export function dayWork(show: Show, dayId: Id, acts: readonly ActOnScreen[]): DayWork {
  const { layers, notes } = buildDay(show, dayId);
  const sides = acts.map(({ sheet, derived }) => ({ sheet, plan: derived.plan }));
  const now = patchAsItStands(layers.sockets, sides);
  return {
    layers,
    now,
    brokenNow: brokenBy(layers.sockets, assignmentOfPatch(layers.sockets, now)),
    habits: habitsOf(layers.sockets),
    notes,
  };
}

/** Rules that a patch breaks; a line without a socket is counted elsewhere. */
const brokenBy = (layer: Layer, assignment: Assignment) =>
  evaluate(layer, assignment).broken.flatMap(({ rule, what }) => (rule === 'no slot' ? [] : [what]));

let lastHabits: { lines: string; habits: DayWork['habits'] } | null = null;

/** Most edits of a day leave the lines and what they may do as they were, and the habits with them. */
function habitsOf(layer: Layer): DayWork['habits'] {
  const lines = JSON.stringify(layer, (key, value) => (key === 'earlier' ? undefined : value));
  if (lastHabits?.lines === lines) return lastHabits.habits;
  const found = habits.map((habit) => {
    const assignment = patchByHabit(layer, habit);
    const broken = brokenBy(layer, assignment).length;
    return { habit, patch: patchOfAssignment(layer, assignment), broken };
  });
  lastHabits = { lines, habits: found };
  return found;
}

/** The work of the day on screen. It may follow a frame after what is being typed. */
export function useDayWork(show: Show, dayId: Id, acts: readonly ActOnScreen[]): DayWork {
  const basis = useDeferredValue(useMemo(() => ({ show, dayId, acts }), [show, dayId, acts]));
  return useMemo(() => dayWork(basis.show, basis.dayId, basis.acts), [basis]);
}
