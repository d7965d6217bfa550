import { soundExposurePa2h } from './daily-exposure.ts';
import { dbOfPower, powerOfDb } from './decibel.ts';
import { requireSoundLevel } from './exposure-dose.ts';
import { requireNotNegative } from './range.ts';

const workingDays = 5;

/**
 * Weekly exposure level L_EX,w of up to seven daily levels, in dBA: the mean over five working days.
 * -Infinity for none. Source: Directive 2003/10/EC, article 2 (ISO 1999, note 2 of 3.6).
 */
export function lexWeeklyDba(dailyLexDba: readonly number[]): number {
  return dbOfPower(
    dailyLexDba.reduce((sum, lexDba) => {
      requireSoundLevel(lexDba);
      return sum + powerOfDb(lexDba);
    }, 0) / workingDays,
  );
}

/**
 * The same in points that add up without logarithms: 100 are a day at 85 dBA.
 * Source: UK HSE, weekly noise exposure ready-reckoner (2020); its table is rounded by up to 4 %.
 */
export function exposurePoints(lexDba: number): number {
  requireSoundLevel(lexDba);
  return 100 * powerOfDb(lexDba - 85);
}

/** Weekly level of the points of a week, in dBA; -Infinity for none. */
export function lexWeeklyOfPointsDba(pointsOfWeek: number): number {
  requireNotNegative({ pointsOfWeek });
  return 85 + dbOfPower(pointsOfWeek / workingDays / 100);
}

/** What a week of listening may hold: a level for forty hours. Source: Recommendation ITU-T H.870. */
const weeklyAllowances = {
  adult: { levelDba: 80, hours: 40 },
  child: { levelDba: 75, hours: 40 },
} as const;
export type Listener = keyof typeof weeklyAllowances;

/** The share of the week's allowance that a sound exposure takes, in percent. */
export function weeklyAllowancePercent(exposurePa2h: number, listener: Listener): number {
  requireNotNegative({ exposurePa2h });
  return (100 * exposurePa2h) / soundExposurePa2h([weeklyAllowances[listener]]);
}

/** Hours at a level that take the whole allowance of a week; null for silence, which takes none of it. */
export function weeklyHoursAtLevel(levelDba: number, listener: Listener): number | null {
  requireSoundLevel(levelDba);
  if (levelDba === -Infinity) return null;
  return soundExposurePa2h([weeklyAllowances[listener]]) / soundExposurePa2h([{ levelDba, hours: 1 }]);
}
