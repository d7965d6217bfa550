import { lex8hDba, soundExposurePa2h } from './daily-exposure.ts';
import { exposureAssumptions, exposureCautions } from './exposure-caution.ts';
import type { DaySegment } from './exposure-day.ts';
import { lexWeeklyDba, weeklyAllowancePercent } from './weekly-exposure.ts';

/** What the planned days of one week add up to for one person. */
export type WeekEstimate = {
  /** L_EX,w over five working days, in dBA; -Infinity for a week without sound. */
  lexWeeklyDba: number;
  /** Share of the weekly allowance of Recommendation ITU-T H.870 for an adult, in percent. */
  allowancePercent: number;
  assumptions: string[];
  cautions: string[];
};

/** Article 3 (3) of the directive: from memory. */
const weeklyAssumption =
  'A week is a mean over five days, and a quiet day hides a loud one: look at each day too. Directive 2003/10/EC allows the week only where days differ markedly and levels are monitored; ITU-T H.870 is made for personal listening, not for work.';

/** Adds up the days of a week, with the sentences that must stand beside the figures. */
export function exposureOfWeek(days: readonly (readonly DaySegment[])[]): WeekEstimate {
  const segments = days.flat();
  return {
    lexWeeklyDba: lexWeeklyDba(days.map((day) => lex8hDba(day))),
    allowancePercent: weeklyAllowancePercent(soundExposurePa2h(segments), 'adult'),
    assumptions: [...exposureAssumptions, weeklyAssumption],
    cautions: exposureCautions(segments.map(({ through }) => through)),
  };
}
