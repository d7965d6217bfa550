import { ageInWords } from '../../core/show/age-in-words.ts';
import { words } from '../wording/words.ts';

/** Clocks of two machines differ by less than this where both are set. */
const clockSlackMs = 2 * 60_000;

/** Day and time of this machine: "Sat 4 Jul, 14:05". */
export function whenText(iso: string): string {
  const at = new Date(iso);
  const day = at.toLocaleDateString('en-GB', { weekday: 'short', day: 'numeric', month: 'short' });
  const time = at.toLocaleTimeString('en-GB', { hour: '2-digit', minute: '2-digit' });
  return words.keep.when(day, time);
}

/** "4 minutes old", "just made"; a time to come is said as what it is, a clock that is wrong. */
export function ageText(iso: string, nowMs = Date.now()): string {
  const ageMs = nowMs - Date.parse(iso);
  if (ageMs < -clockSlackMs) return words.keep.clockAhead;
  return ageMs < 60_000 ? words.keep.justNow : words.keep.age(ageInWords(ageMs));
}
