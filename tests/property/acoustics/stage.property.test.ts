import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { delayMs, samplesOfDelay } from '../../../core/acoustics/delay.ts';
import { openMicrophonesDb, potentialAcousticGainDb } from '../../../core/acoustics/feedback.ts';
import {
  bearingDifferenceDegrees,
  directionTo,
  distanceBetweenM,
  offAxisDegrees,
} from '../../../core/acoustics/geometry.ts';
import {
  acceptanceAngleDegrees,
  directivityIndexDb,
  distanceFactor,
  nullAngleDegrees,
  patternCoefficients,
  randomEnergyEfficiency,
  responseDb,
} from '../../../core/acoustics/microphone-patterns.ts';
import { fallInRoomDb, fallInTheOpenDb } from '../../../core/acoustics/sound-field.ts';
import { soundSpeedMPerS } from '../../../core/acoustics/sound-speed.ts';

const coefficient = fc.double({ min: 0, max: 1, noNaN: true });
const angle = fc.double({ min: -360, max: 360, noNaN: true });
const metre = fc.double({ min: -20, max: 20, noNaN: true });
const point = fc.record({ xM: metre, yM: metre, zM: metre });
const metres = fc.double({ min: 0.02, max: 60, noNaN: true });

describe('a microphone pattern', () => {
  test('is nowhere louder than in front, and alike on both sides', () => {
    fc.assert(
      fc.property(coefficient, angle, (a, degrees) => {
        expect(responseDb(a, degrees)).toBeLessThanOrEqual(1e-9);
        expect(responseDb(a, -degrees)).toBe(responseDb(a, degrees));
        expect(responseDb(a, 0)).toBeCloseTo(0, 9);
      }),
    );
  });

  test('has its minimum at its null, where it has one', () => {
    fc.assert(
      fc.property(coefficient, angle, (a, degrees) => {
        const nullAt = nullAngleDegrees(a);
        expect(nullAt === null).toBe(a > 0.5);
        if (nullAt !== null) expect(responseDb(a, nullAt)).toBeLessThanOrEqual(responseDb(a, degrees));
      }),
    );
  });

  test('is half the power at the edge of its acceptance angle, and half the amplitude at the wider one', () => {
    fc.assert(
      fc.property(coefficient, (a) => {
        const narrow = acceptanceAngleDegrees(a, 3);
        const wide = acceptanceAngleDegrees(a, 6);
        if (narrow !== null) expect(responseDb(a, narrow / 2)).toBeCloseTo(-3.0103, 4);
        if (wide !== null) expect(responseDb(a, wide / 2)).toBeCloseTo(-6.0206, 4);
        if (narrow !== null && wide !== null) expect(wide).toBeGreaterThan(narrow);
      }),
    );
  });

  test('takes as much of diffuse sound as its response summed over the sphere', () => {
    fc.assert(
      fc.property(coefficient, (a) => {
        const steps = 600;
        let sum = 0;
        for (let step = 0; step < steps; step++) {
          const degrees = ((step + 0.5) * 180) / steps;
          sum += 10 ** (responseDb(a, degrees) / 10) * Math.sin((degrees * Math.PI) / 180);
        }
        expect((sum * Math.PI) / steps / 2).toBeCloseTo(randomEnergyEfficiency(a), 4);
        expect(20 * Math.log10(distanceFactor(a))).toBeCloseTo(directivityIndexDb(a), 9);
      }),
    );
  });

  test('takes the least diffuse sound as a hypercardioid', () => {
    fc.assert(
      fc.property(coefficient, (a) => {
        expect(randomEnergyEfficiency(a)).toBeGreaterThanOrEqual(
          randomEnergyEfficiency(patternCoefficients.hypercardioid),
        );
      }),
    );
  });
});

describe('places on a stage', () => {
  test('are as far apart one way as the other, and no detour is shorter', () => {
    fc.assert(
      fc.property(point, point, point, (here, there, between) => {
        const straight = distanceBetweenM(here, there);
        expect(distanceBetweenM(there, here)).toBe(straight);
        const detour = distanceBetweenM(here, between) + distanceBetweenM(between, there);
        expect(straight).toBeLessThanOrEqual(detour + 1e-9);
      }),
    );
  });

  test('lie on the axis of what looks at them, and behind it when it looks away', () => {
    fc.assert(
      fc.property(point, point, (here, there) => {
        fc.pre(distanceBetweenM(here, there) > 1e-3);
        const looking = directionTo(here, there);
        const away = directionTo(there, here);
        if (looking === null || away === null) throw new Error('two places have a way between them');
        expect(offAxisDegrees(here, looking, there)).toBeCloseTo(0, 5);
        expect(offAxisDegrees(here, away, there)).toBeCloseTo(180, 5);
      }),
    );
  });

  test('keep their angle when the whole stage is turned and moved', () => {
    fc.assert(
      fc.property(point, point, point, angle, metre, (mic, mouth, wedge, turn, byM) => {
        fc.pre(distanceBetweenM(mic, mouth) > 0.05 && distanceBetweenM(mic, wedge) > 0.05);
        const moved = ({ xM, yM, zM }: typeof mic) => {
          const [s, c] = [Math.sin((turn * Math.PI) / 180), Math.cos((turn * Math.PI) / 180)];
          return { xM: c * xM + s * yM + byM, yM: c * yM - s * xM - byM, zM: zM + byM };
        };
        const off = (at: typeof mic, aim: typeof mic, to: typeof mic) => {
          const looking = directionTo(at, aim);
          return looking && offAxisDegrees(at, looking, to);
        };
        expect(off(moved(mic), moved(mouth), moved(wedge))).toBeCloseTo(
          off(mic, mouth, wedge) ?? Number.NaN,
          5,
        );
      }),
    );
  });

  test('have bearings that differ by 0 to 180 degrees, whatever turns are added', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 359 }),
        fc.integer({ min: 0, max: 359 }),
        fc.integer({ min: -5, max: 5 }),
        (a, b, turns) => {
          const apart = bearingDifferenceDegrees(a, b);
          expect(apart).toBeGreaterThanOrEqual(0);
          expect(apart).toBeLessThanOrEqual(180);
          expect(bearingDifferenceDegrees(b, a)).toBe(apart);
          expect(bearingDifferenceDegrees(a + 360 * turns, b)).toBe(apart);
        },
      ),
    );
  });
});

describe('sound over a stage', () => {
  const air = fc.double({ min: -20, max: 50, noNaN: true });

  test('is faster in warmer air, and takes twice as long for twice the way', () => {
    fc.assert(
      fc.property(air, metres, (celsius, distance) => {
        expect(soundSpeedMPerS(celsius + 1)).toBeGreaterThan(soundSpeedMPerS(celsius));
        expect(delayMs(2 * distance, celsius)).toBeCloseTo(2 * delayMs(distance, celsius), 9);
        expect(
          Math.abs(samplesOfDelay(delayMs(distance, celsius), 48_000) - delayMs(distance, celsius) * 48),
        ).toBeLessThanOrEqual(0.5);
      }),
    );
  });
});

describe('gain before feedback', () => {
  const path = fc.record({
    talkerToListenerM: metres,
    microphoneToLoudspeakerM: metres,
    loudspeakerToListenerM: metres,
    talkerToMicrophoneM: metres,
  });
  const count = fc.integer({ min: 1, max: 100 });

  test('falls by 3.01 dB for each doubling of the open microphones', () => {
    fc.assert(
      fc.property(path, count, (stage, openMicrophones) => {
        const once = potentialAcousticGainDb(stage, { openMicrophones });
        const twice = potentialAcousticGainDb(stage, { openMicrophones: 2 * openMicrophones });
        expect(once - twice).toBeCloseTo(3.0103, 4);
        expect(openMicrophonesDb(openMicrophones)).toBeGreaterThanOrEqual(0);
      }),
    );
  });

  test('grows with the wedge farther from the microphone and the mouth nearer to it', () => {
    fc.assert(
      fc.property(path, fc.double({ min: 1.01, max: 4, noNaN: true }), (stage, factor) => {
        const gain = potentialAcousticGainDb(stage);
        const farther = { ...stage, microphoneToLoudspeakerM: stage.microphoneToLoudspeakerM * factor };
        const nearer = { ...stage, talkerToMicrophoneM: stage.talkerToMicrophoneM / factor };
        expect(potentialAcousticGainDb(farther)).toBeGreaterThan(gain);
        expect(potentialAcousticGainDb(nearer)).toBeGreaterThan(gain);
      }),
    );
  });

  test('in a huge room is what it is in the open, and in any room falls off no more than in the open', () => {
    fc.assert(
      fc.property(path, metres, metres, (stage, critical, distance) => {
        const open = potentialAcousticGainDb(stage);
        expect(potentialAcousticGainDb(stage, { fallDb: fallInRoomDb(1e7) })).toBeCloseTo(open, 6);
        const room = fallInRoomDb(critical);
        const inRoomDb = room(2 * distance) - room(distance);
        expect(inRoomDb).toBeGreaterThan(0);
        expect(inRoomDb).toBeLessThanOrEqual(
          fallInTheOpenDb(2 * distance) - fallInTheOpenDb(distance) + 1e-9,
        );
      }),
    );
  });
});
