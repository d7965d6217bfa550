import { describe, expect, test } from 'vitest';
import {
  bearingDifferenceDegrees,
  directionTo,
  distanceBetweenM,
  offAxisDegrees,
} from '../../../core/acoustics/geometry.ts';
import { patternCoefficients } from '../../../core/acoustics/microphone-patterns.ts';
import { pickupOf, rejectionToCountOnDb } from '../../../core/acoustics/rejection.ts';
import { type Case, checkReference, decimals, fieldsOf, num, nums } from '../../helpers/reference.ts';

const point = ([xM = Number.NaN, yM = Number.NaN, zM = Number.NaN]: number[]) => ({ xM, yM, zM });

function wedgeAndEar(row: Case) {
  return {
    wedge: point([0, 0, num(row.in, 'wedge_height_m')]),
    ear: point([0, num(row.in, 'floor_distance_m'), num(row.in, 'ear_height_m')]),
  };
}

checkReference('geometry', {
  'right-triangle': (row) => {
    const foot = point([0, 0, 0]);
    const top = point([num(row.in, 'floor_distance_m'), 0, num(row.in, 'height_m')]);
    return [
      { what: 'slant', got: distanceBetweenM(foot, top), want: row.out.slant_m, within: decimals(5) },
      {
        what: 'elevation',
        got: directionTo(foot, top)?.tiltUpDegrees,
        want: row.out.elevation_degrees,
        within: decimals(4),
      },
    ];
  },
  'microphone-to-wedge': (row) => {
    const at = point(nums(row.in, 'microphone'));
    const wedge = point(nums(row.in, 'wedge'));
    const looking = { bearingDegrees: 0, tiltUpDegrees: num(row.in, 'front_axis_tilt_up_degrees') };
    const responses = fieldsOf(row, 'response_dB');
    return (['cardioid', 'supercardioid', 'hypercardioid'] as const).flatMap((pattern) => {
      const pickup = pickupOf({ at, looking, coefficient: patternCoefficients[pattern] }, wedge, 20);
      return [
        { what: 'distance', got: pickup?.distanceM, want: row.out.distance_m, within: decimals(4) },
        {
          what: 'off axis',
          got: pickup?.offAxisDegrees,
          want: row.out.off_axis_degrees,
          within: decimals(3),
        },
        { what: 'delay', got: pickup?.delayMs, want: row.out.delay_ms_20C, within: decimals(3) },
        { what: pattern, got: pickup?.responseDb, want: responses[pattern], within: decimals(2) },
      ];
    });
  },
  'wedge-tilt-to-ear': (row) => {
    const { wedge, ear } = wedgeAndEar(row);
    return [
      {
        what: 'aim',
        got: directionTo(wedge, ear)?.tiltUpDegrees,
        want: row.out.aim_above_floor_degrees,
        within: decimals(3),
      },
      { what: 'distance', got: distanceBetweenM(wedge, ear), want: row.out.distance_m, within: decimals(4) },
    ];
  },
  bearing: (row) => [
    {
      what: 'bearing',
      got: directionTo(point([0, 0, 0]), point([num(row.in, 'x'), num(row.in, 'y'), 0]))?.bearingDegrees,
      want: row.out.degrees_clockwise_from_plus_y,
      within: 1e-9,
    },
  ],
  'angle-difference': (row) => [
    {
      what: 'difference',
      got: bearingDifferenceDegrees(num(row.in, 'a'), num(row.in, 'b')),
      want: row.out.degrees,
      within: 1e-9,
    },
  ],
});

describe('a microphone on the plot', () => {
  const at = point([3, 2, 1.6]);
  const cardioid = { at, coefficient: patternCoefficients.cardioid };

  test('hears nothing from straight behind, wherever on the stage it stands and looks', () => {
    const looking = { bearingDegrees: 300, tiltUpDegrees: 0 };
    const behind = point([
      3 + 2 * Math.sin((120 * Math.PI) / 180),
      2 + 2 * Math.cos((120 * Math.PI) / 180),
      1.6,
    ]);
    const pickup = pickupOf({ ...cardioid, looking }, behind, 20);
    expect(pickup?.offAxisDegrees).toBeCloseTo(180, 5);
    expect(pickup?.responseDb).toBeLessThan(-100);
  });

  test('looks at the mouth it is aimed at', () => {
    const mouth = point([3.1, 2.2, 1.65]);
    const looking = directionTo(at, mouth);
    expect(looking && offAxisDegrees(at, looking, mouth)).toBeCloseTo(0, 6);
  });

  test('comes with the caution that the figure is a hint', () => {
    const looking = { bearingDegrees: 0, tiltUpDegrees: 0 };
    expect(pickupOf({ ...cardioid, looking }, point([0, 0, 0]), 20)?.caution).toMatch(
      /^A hint from plot positions/,
    );
  });

  test('has no angle to a loudspeaker in its own place', () => {
    expect(pickupOf({ ...cardioid, looking: { bearingDegrees: 0, tiltUpDegrees: 0 } }, at, 20)).toBeNull();
    expect(directionTo(at, at)).toBeNull();
  });

  test.each([
    { responseDb: 0, countedDb: 0 },
    { responseDb: -9.7, countedDb: 9.7 },
    { responseDb: -Infinity, countedDb: 15 },
  ])('counts on $countedDb dB of a textbook $responseDb dB', ({ responseDb, countedDb }) => {
    expect(rejectionToCountOnDb({ responseDb })).toBe(countedDb);
  });
});
