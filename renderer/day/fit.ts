import type { Changeover } from '../../core/changeover/changeover.ts';

/** Seconds as minutes and seconds: "9:05". */
export function lengthText(seconds: number): string {
  const whole = Math.abs(Math.round(seconds));
  return `${seconds < 0 ? '−' : ''}${Math.floor(whole / 60)}:${`${whole % 60}`.padStart(2, '0')}`;
}

/** Minutes needed against minutes there are, as they are read; `over` where they do not fit. */
export function fitOf({ secondsNeeded, secondsThere }: Changeover): {
  needed: string | null;
  there: string;
  over: string | null;
} {
  const there = `${Math.round(secondsThere / 60)}`;
  if (secondsNeeded === null) return { needed: null, there, over: null };
  const over = secondsNeeded - secondsThere;
  return { needed: lengthText(secondsNeeded), there, over: over > 0 ? lengthText(over) : null };
}
