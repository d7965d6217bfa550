/**
 * Whole days from one calendar day to another, both YYYY-MM-DD; negative where the second is earlier, null where
 * one of them is no day. Counts days of the Gregorian calendar from March, so that the leap day ends the year.
 */
export function daysBetween(from: string, to: string): number | null {
  const first = dayNumber(from);
  const last = dayNumber(to);
  return first === null || last === null ? null : last - first;
}

function dayNumber(day: string): number | null {
  const parts = /^(\d{4})-(\d{2})-(\d{2})$/.exec(day);
  if (!parts) return null;
  const [year = 0, month = 0, date = 0] = parts.slice(1).map(Number);
  if (month < 1 || month > 12 || date < 1 || date > 31) return null;
  const yearFromMarch = month > 2 ? year : year - 1;
  const monthFromMarch = (month + 9) % 12;
  const leapDays =
    Math.floor(yearFromMarch / 4) - Math.floor(yearFromMarch / 100) + Math.floor(yearFromMarch / 400);
  return yearFromMarch * 365 + leapDays + Math.floor((153 * monthFromMarch + 2) / 5) + date;
}
