import type { DeviceKind } from '../show/words.ts';
import { type EuExposureValue, euValuesReached, lex8hDba, soundExposurePa2h } from './daily-exposure.ts';
import {
  dosePercent,
  type ExposureCriterion,
  type ExposureSegment,
  exposureCriteria,
  timeWeightedAverageDba,
} from './exposure-dose.ts';

/** One part of somebody's day: a sound check, a set, the time beside the stage. */
export type DaySegment = ExposureSegment & {
  what: string;
  /** What they listen through meanwhile; null for the sound of the stage alone. */
  through: DeviceKind | 'cue' | null;
};

export type Dose = { dosePercent: number; twaDba: number | null; source: string };

/** What a planned day adds up to for one person. Figures of a plan, with what they leave out said beside them. */
export type ExposureEstimate = {
  hours: number;
  /** -Infinity for a day without sound. */
  lex8hDba: number;
  exposurePa2h: number;
  euValuesReached: EuExposureValue[];
  doses: Record<keyof typeof exposureCriteria, Dose>;
  /** In the order given: what each part adds to the day's energy, in percent. */
  parts: { what: string; sharePercent: number }[];
  assumptions: string[];
  cautions: string[];
};

const assumptions = {
  levels:
    'The levels are what somebody entered, taken as A-weighted averages at the ear; nothing was measured.',
  time: 'Time that is not in the plan, on the way, at home or at the next stage, is not counted.',
  peaks: 'Peaks are not in it: feedback or a dropped microphone can hurt within a moment at any average.',
} as const;

const cautions = {
  first: 'An estimate, not a clearance: it does not show that a day does no harm.',
  measure: 'Have the level at the ear measured; local regulations and the competent person on site decide.',
  rest: 'Ringing or dull hearing afterwards is a sign of too much, whatever the figures say: see a doctor.',
  inEars:
    'In-ears are not by themselves hearing protection, and their level at the ear is known only by measurement: keep the limiter in the receiver on.',
} as const;

/** Adds up a day for the engineer or a performer, with the sentences that must stand beside the figures. */
export function exposureOfDay(segments: readonly DaySegment[]): ExposureEstimate {
  const exposurePa2h = soundExposurePa2h(segments);
  const lex = lex8hDba(segments);
  const inEars = segments.some(({ through }) => through === 'in-ear' || through === 'cue');
  return {
    hours: segments.reduce((sum, { hours }) => sum + hours, 0),
    lex8hDba: lex,
    exposurePa2h,
    euValuesReached: euValuesReached(lex),
    doses: {
      niosh: doseBy(exposureCriteria.niosh, segments),
      'osha action': doseBy(exposureCriteria['osha action'], segments),
      'osha permissible': doseBy(exposureCriteria['osha permissible'], segments),
    },
    parts: segments.map((segment) => ({
      what: segment.what,
      sharePercent: exposurePa2h === 0 ? 0 : (100 * soundExposurePa2h([segment])) / exposurePa2h,
    })),
    assumptions: Object.values(assumptions),
    cautions: [cautions.first, cautions.measure, ...(inEars ? [cautions.inEars] : []), cautions.rest],
  };
}

function doseBy(criterion: ExposureCriterion, segments: readonly ExposureSegment[]): Dose {
  const percent = dosePercent(segments, criterion);
  return {
    dosePercent: percent,
    twaDba: timeWeightedAverageDba(percent, criterion),
    source: criterion.source,
  };
}
