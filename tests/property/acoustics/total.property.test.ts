import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { combLevelDb, combRipple, combSpacingHz, notchesHz } from '../../../core/acoustics/comb-filter.ts';
import {
  euValuesReached,
  exposureOfLex8hPa2h,
  lex8hOfExposureDba,
} from '../../../core/acoustics/daily-exposure.ts';
import { delayMs, delayMsOfSamples, distanceM, samplesOfDelay } from '../../../core/acoustics/delay.ts';
import { levelAtDistanceDb, levelOfLineAtDistanceDb } from '../../../core/acoustics/distance-law.ts';
import { exposureOfDay } from '../../../core/acoustics/exposure-day.ts';
import { exposureCriteria, timeWeightedAverageDba } from '../../../core/acoustics/exposure-dose.ts';
import { feedbackEstimate, openMicrophonesDb } from '../../../core/acoustics/feedback.ts';
import { bearingDifferenceDegrees } from '../../../core/acoustics/geometry.ts';
import { pathLatencyMs } from '../../../core/acoustics/latency.ts';
import { latencyGuidance } from '../../../core/acoustics/latency-tolerance.ts';
import {
  coherentSumDb,
  coherentSumOfTwoDb,
  equalSourcesDb,
  incoherentRestDb,
  incoherentSumDb,
} from '../../../core/acoustics/level-sums.ts';
import {
  dbfsOfDbu,
  dbSplOfPascals,
  dbuOfDbfs,
  dbuOfDbv,
  dbuOfVolts,
  dbvOfDbu,
  dbvOfVolts,
  dbvPerPascal,
  mvPerPascal,
  pascalsOfDbSpl,
  voltsOfDbu,
  voltsOfDbv,
} from '../../../core/acoustics/level-units.ts';
import { loudspeakerLevelDbSpl, powerAndDistanceDb } from '../../../core/acoustics/loudspeaker.ts';
import {
  gainNeededDb,
  levelAtFullScaleDbSpl,
  microphoneOutputDbu,
} from '../../../core/acoustics/microphone-level.ts';
import {
  acceptanceAngleDegrees,
  directivityIndexDb,
  distanceFactor,
  nullAngleDegrees,
  randomEnergyEfficiency,
  responseDb,
} from '../../../core/acoustics/microphone-patterns.ts';
import { pickupOf } from '../../../core/acoustics/rejection.ts';
import { judgeSoundAfterPicture } from '../../../core/acoustics/sound-and-picture.ts';
import { fallInRoomDb, fallInRoomOfAbsorptionDb } from '../../../core/acoustics/sound-field.ts';
import { soundSpeedInHumidAirMPerS, soundSpeedMPerS } from '../../../core/acoustics/sound-speed.ts';
import { twoCopiesEffect } from '../../../core/acoustics/two-copies.ts';
import { loudestWedgeBeforeFeedback } from '../../../core/acoustics/wedge-before-feedback.ts';
import {
  exposurePoints,
  lexWeeklyDba,
  lexWeeklyOfPointsDba,
  weeklyAllowancePercent,
  weeklyHoursAtLevel,
} from '../../../core/acoustics/weekly-exposure.ts';

/**
 * Every function of the folder with numbers that nobody meant: the answer is free of NaN and +Infinity, or it is
 * a RangeError that names an argument. `n` are the numbers a function takes, in order.
 */
const functions: Record<string, (...n: [number, number, number, number, number]) => unknown> = {
  incoherentSumDb: (...n) => incoherentSumDb(n),
  coherentSumDb: (...n) => coherentSumDb(n),
  coherentSumOfTwoDb: (a, b, c) => coherentSumOfTwoDb(a, b, c),
  incoherentRestDb: (a, b) => incoherentRestDb(a, b),
  equalSourcesDb: (a) => equalSourcesDb(a),
  levelAtDistanceDb: (levelDb, atM, thenAtM) => levelAtDistanceDb({ levelDb, atM, thenAtM }),
  levelOfLineAtDistanceDb: (levelDb, atM, thenAtM) => levelOfLineAtDistanceDb({ levelDb, atM, thenAtM }),
  powerAndDistanceDb: (a, b) => powerAndDistanceDb(a, b),
  loudspeakerLevelDbSpl: (sensitivityDbSpl, powerW, distanceM) =>
    loudspeakerLevelDbSpl({ sensitivityDbSpl, powerW, distanceM }),
  soundSpeedMPerS: (a) => soundSpeedMPerS(a),
  soundSpeedInHumidAirMPerS: (temperatureC, relativeHumidityPercent, pressureKpa) =>
    soundSpeedInHumidAirMPerS({ temperatureC, relativeHumidityPercent, pressureKpa }),
  delayMs: (a, b) => delayMs(a, b),
  distanceM: (a, b) => distanceM(a, b),
  samplesOfDelay: (a, b) => samplesOfDelay(a, b),
  delayMsOfSamples: (a, b) => delayMsOfSamples(a, b),
  combRipple: (a) => combRipple(a),
  combSpacingHz: (a) => combSpacingHz(a),
  notchesHz: (a) => notchesHz(a, 3),
  combLevelDb: (delayMs, levelDifferenceDb, frequencyHz) =>
    combLevelDb({ delayMs, levelDifferenceDb, polarity: 'opposite' }, frequencyHz),
  twoCopiesEffect: (a, b, c, d) =>
    twoCopiesEffect(
      { levelDb: a, latencyMs: b, polarityInverted: false },
      { levelDb: c, latencyMs: d, polarityInverted: true },
    ),
  dbuOfVolts,
  voltsOfDbu,
  dbvOfVolts,
  voltsOfDbv,
  dbuOfDbv,
  dbvOfDbu,
  pascalsOfDbSpl,
  dbSplOfPascals,
  dbvPerPascal,
  mvPerPascal,
  dbuOfDbfs: (a, b) => dbuOfDbfs(a, b),
  dbfsOfDbu: (a, b) => dbfsOfDbu(a, b),
  microphoneOutputDbu: (a, b) => microphoneOutputDbu(a, b),
  gainNeededDb: (a, targetDbfs, fullScaleDbu) => gainNeededDb(a, { targetDbfs, fullScaleDbu }),
  levelAtFullScaleDbSpl: (a, b, c) => levelAtFullScaleDbSpl(a, b, c),
  responseDb: (a, b) => responseDb(a, b),
  nullAngleDegrees,
  acceptanceAngleDegrees: (a) => acceptanceAngleDegrees(a, 3),
  randomEnergyEfficiency,
  distanceFactor,
  directivityIndexDb,
  pickupOf: (a, b, c, d, e) =>
    pickupOf(
      { at: { xM: a, yM: b, zM: c }, looking: { bearingDegrees: d, tiltUpDegrees: e }, coefficient: 0.5 },
      { xM: b, yM: c, zM: a },
      20,
    ),
  bearingDifferenceDegrees: (a, b) => bearingDifferenceDegrees(a, b),
  openMicrophonesDb,
  fallInRoomDb: (a, b) => fallInRoomDb(a)(b),
  fallInRoomOfAbsorptionDb: (directivity, surfaceM2, absorption, d) =>
    fallInRoomOfAbsorptionDb({ directivity, surfaceM2, absorption })(d),
  feedbackEstimate: (a, b, c, d, e) =>
    feedbackEstimate(
      {
        talkerToListenerM: a,
        microphoneToLoudspeakerM: b,
        loudspeakerToListenerM: c,
        talkerToMicrophoneM: d,
      },
      e,
    ),
  loudestWedgeBeforeFeedback: (voiceDbSplAt1M, mouthToMicrophoneM, microphoneToWedgeM, wedgeToEarM) =>
    loudestWedgeBeforeFeedback({ voiceDbSplAt1M, mouthToMicrophoneM, microphoneToWedgeM, wedgeToEarM }),
  pathLatencyMs: (...n) => pathLatencyMs(n.map((latencyMs) => ({ name: 'stage', latencyMs }))),
  latencyGuidance: (a) => latencyGuidance(a, 'vocals', 'in-ear'),
  judgeSoundAfterPicture,
  exposureOfDay: (a, b, c, d) =>
    exposureOfDay([
      { what: 'set', levelDba: a, hours: b, through: null },
      { what: 'set', levelDba: c, hours: d, through: 'in-ear' },
    ]),
  timeWeightedAverageDba: (a) => timeWeightedAverageDba(a, exposureCriteria.niosh),
  lex8hOfExposureDba,
  exposureOfLex8hPa2h,
  euValuesReached: (a, b) => euValuesReached(a, b),
  lexWeeklyDba: (...n) => lexWeeklyDba(n),
  exposurePoints,
  lexWeeklyOfPointsDba,
  weeklyAllowancePercent: (a) => weeklyAllowancePercent(a, 'child'),
  weeklyHoursAtLevel: (a) => weeklyHoursAtLevel(a, 'adult'),
};

const wild = fc.oneof(
  fc.double(),
  fc.double({ min: -200, max: 200, noNaN: true }),
  fc.double({ min: 0, max: 1, noNaN: true }),
  fc.constantFrom(
    0,
    -0,
    1,
    5e-324,
    1e-9,
    1e300,
    Number.MAX_VALUE,
    Infinity,
    -Infinity,
    Number.NaN,
    100,
    1000,
  ),
);

function badNumbersIn(answer: unknown): unknown[] {
  if (typeof answer === 'number') return Number.isNaN(answer) || answer === Infinity ? [answer] : [];
  return typeof answer === 'object' && answer !== null ? Object.values(answer).flatMap(badNumbersIn) : [];
}

describe('whatever it is given', () => {
  test.each(Object.entries(functions))(
    '%s gives an answer or a RangeError that names the argument',
    (_name, run) => {
      fc.assert(
        fc.property(wild, wild, wild, wild, wild, (...n) => {
          try {
            expect(badNumbersIn(run(...n))).toEqual([]);
          } catch (error) {
            if (!(error instanceof RangeError)) throw error;
            expect(error.message).toMatch(/^[a-zA-Z][\w ]* must be .*, but is [-\w.+]+\.$/);
          }
        }),
        { numRuns: 300 },
      );
    },
  );

  test.each(Object.entries(functions))('%s refuses NaN', (_name, run) => {
    const { NaN: nan } = Number;
    expect(() => run(nan, nan, nan, nan, nan)).toThrow(RangeError);
  });
});
