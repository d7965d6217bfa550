import type { Act, Day } from '../show/act.ts';

/** From the end of one set to the start of the next, or the day's usual changeover; never below 0. */
export function secondsBetween(day: Day, from: Act, to: Act): number {
  if (from.endMinute === null || to.startMinute === null) return day.changeoverMinutes * 60;
  return Math.max(0, to.startMinute - from.endMinute) * 60;
}
