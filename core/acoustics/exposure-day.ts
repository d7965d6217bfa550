import type { DeviceKind } from '../show/words.ts';
import { type EuExposureValue, euValuesReached, lex8hDba, soundExposurePa2h } from './daily-exposure.ts';
import { exposureAssumptions, exposureCautions } from './exposure-caution.ts';
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
  /** What they listen through meanwhile (a cue pack is an in-ear); null for the sound of the stage alone. */
  through: DeviceKind | null;
};

type Dose = {
  dosePercent: number;
  /** null for a dose of 0. */
  twaDba: number | null;
  /** Parts of the day louder than the criterion permits for any time. */
  partsAboveCeiling: string[];
  source: string;
};

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

/** Adds up a day for the engineer or a performer, with the sentences that must stand beside the figures. */
export function exposureOfDay(segments: readonly DaySegment[]): ExposureEstimate {
  const exposurePa2h = soundExposurePa2h(segments);
  const lex = lex8hDba(segments);
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
    assumptions: [...exposureAssumptions],
    cautions: exposureCautions(segments.map(({ through }) => through)),
  };
}

function doseBy(criterion: ExposureCriterion, segments: readonly DaySegment[]): Dose {
  const percent = dosePercent(segments, criterion);
  return {
    dosePercent: percent,
    twaDba: timeWeightedAverageDba(percent, criterion),
    partsAboveCeiling: segments
      .filter(({ levelDba, hours }) => hours > 0 && levelDba > criterion.ceilingDba)
      .map(({ what }) => what),
    source: criterion.source,
  };
}
