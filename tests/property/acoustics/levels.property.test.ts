import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { combLevelDb, combRipple, notchesHz, type Polarity } from '../../../core/acoustics/comb-filter.ts';
import { levelAtDistanceDb, levelOfLineAtDistanceDb } from '../../../core/acoustics/distance-law.ts';
import {
  coherentSumDb,
  coherentSumOfTwoDb,
  incoherentRestDb,
  incoherentSumDb,
} from '../../../core/acoustics/level-sums.ts';
import { powerAndDistanceDb } from '../../../core/acoustics/loudspeaker.ts';
import { twoCopiesEffect } from '../../../core/acoustics/two-copies.ts';

const levelDb = fc.double({ min: -120, max: 140, noNaN: true });
const silenceOrLevelDb = fc.oneof(
  { weight: 1, arbitrary: fc.constant(-Infinity) },
  { weight: 9, arbitrary: levelDb },
);
const levelsDb = fc.array(silenceOrLevelDb, { maxLength: 40 });
const metres = fc.double({ min: 0.01, max: 500, noNaN: true });
const polarity = fc.constantFrom<Polarity>('same', 'opposite');

describe('a sum of levels', () => {
  test('is the same in any order', () => {
    fc.assert(
      fc.property(levelsDb, (levels) => {
        const turned = [...levels].reverse();
        for (const sum of [incoherentSumDb, coherentSumDb])
          if (sum(levels) !== -Infinity) expect(sum(turned)).toBeCloseTo(sum(levels), 9);
          else expect(sum(turned)).toBe(-Infinity);
      }),
    );
  });

  test('is never below the loudest, and in phase never below the incoherent sum', () => {
    fc.assert(
      fc.property(levelsDb, (levels) => {
        expect(incoherentSumDb(levels)).toBeGreaterThanOrEqual(Math.max(...levels));
        expect(coherentSumDb(levels)).toBeGreaterThanOrEqual(incoherentSumDb(levels) - 1e-9);
      }),
    );
  });

  test('of sums is the sum of all', () => {
    fc.assert(
      fc.property(levelsDb, levelsDb, levelDb, (some, others, one) => {
        const ofSums = incoherentSumDb([incoherentSumDb(some), incoherentSumDb(others), one]);
        expect(ofSums).toBeCloseTo(incoherentSumDb([...some, ...others, one]), 9);
      }),
    );
  });

  test('moves with its levels', () => {
    fc.assert(
      fc.property(
        fc.array(levelDb, { minLength: 1 }),
        fc.double({ min: -60, max: 60, noNaN: true }),
        (levels, byDb) => {
          const moved = levels.map((level) => level + byDb);
          expect(incoherentSumDb(moved)).toBeCloseTo(incoherentSumDb(levels) + byDb, 9);
        },
      ),
    );
  });

  test('less one of two is the other', () => {
    fc.assert(
      fc.property(levelDb, fc.double({ min: -30, max: 30, noNaN: true }), (one, apart) => {
        expect(incoherentRestDb(incoherentSumDb([one, one + apart]), one)).toBeCloseTo(one + apart, 6);
      }),
    );
  });

  test('of two tones with any phase lies between cancelled and in phase', () => {
    fc.assert(
      fc.property(
        levelDb,
        levelDb,
        fc.double({ min: -720, max: 720, noNaN: true }),
        (first, second, phase) => {
          const sum = coherentSumOfTwoDb(first, second, phase);
          expect(sum).toBeLessThanOrEqual(coherentSumDb([first, second]) + 1e-9);
          expect(sum).toBeGreaterThanOrEqual(coherentSumOfTwoDb(first, second, 180) - 1e-6);
          expect(coherentSumOfTwoDb(second, first, -phase)).toBe(sum);
        },
      ),
    );
  });
});

describe('the distance law', () => {
  test('takes 6.02 dB for each doubling, and 3.01 dB from a line', () => {
    fc.assert(
      fc.property(levelDb, metres, (level, atM) => {
        const known = { levelDb: level, atM, thenAtM: 2 * atM };
        expect(level - levelAtDistanceDb(known)).toBeCloseTo(6.0206, 4);
        expect(level - levelOfLineAtDistanceDb(known)).toBeCloseTo(3.0103, 4);
        expect(powerAndDistanceDb(10, atM) - powerAndDistanceDb(10, 2 * atM)).toBeCloseTo(6.0206, 4);
      }),
    );
  });

  test('takes the same by one step or by two', () => {
    fc.assert(
      fc.property(levelDb, metres, metres, metres, (level, near, between, far) => {
        const first = levelAtDistanceDb({ levelDb: level, atM: near, thenAtM: between });
        const second = levelAtDistanceDb({ levelDb: first, atM: between, thenAtM: far });
        expect(second).toBeCloseTo(levelAtDistanceDb({ levelDb: level, atM: near, thenAtM: far }), 9);
      }),
    );
  });

  test('ten times the power is 10 dB', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.001, max: 1e4, noNaN: true }), metres, (powerW, distanceM) => {
        const more = powerAndDistanceDb(10 * powerW, distanceM) - powerAndDistanceDb(powerW, distanceM);
        expect(more).toBeCloseTo(10, 9);
      }),
    );
  });
});

describe('two copies of one signal', () => {
  const delayMs = fc.double({ min: 0.05, max: 30, noNaN: true });
  const differenceDb = fc.double({ min: -40, max: 40, noNaN: true });
  const frequencyHz = fc.double({ min: 20, max: 20_000, noNaN: true });

  test('are nowhere louder than the peak or quieter than the dip, and are at the dip in each notch', () => {
    fc.assert(
      fc.property(delayMs, differenceDb, frequencyHz, polarity, (late, apart, frequency, copies) => {
        const comb = { delayMs: late, levelDifferenceDb: apart, polarity: copies };
        const { peakDb, dipDb } = combRipple(apart);
        const level = combLevelDb(comb, frequency);
        expect(level).toBeLessThanOrEqual(peakDb + 1e-9);
        expect(level).toBeGreaterThanOrEqual(dipDb - 1e-6);
        for (const notchHz of notchesHz(late, 3, copies))
          expect(10 ** (combLevelDb(comb, notchHz) / 20)).toBeCloseTo(10 ** (dipDb / 20), 6);
      }),
    );
  });

  /** The long way round: two sampled sines added, the root of the mean square over whole periods. */
  function levelOfAddedSinesDb(late: number, apart: number, frequency: number, copies: Polarity): number {
    const copy = (copies === 'same' ? 1 : -1) * 10 ** (-Math.abs(apart) / 20);
    const steps = 720;
    let sum = 0;
    for (let step = 0; step < steps; step++) {
      const turn = (2 * Math.PI * step) / steps;
      sum += (Math.sin(turn) + copy * Math.sin(turn - (2 * Math.PI * frequency * late) / 1000)) ** 2;
    }
    return 10 * Math.log10((2 * sum) / steps);
  }

  test('sound as two sines do when they are added sample by sample', () => {
    fc.assert(
      fc.property(delayMs, differenceDb, frequencyHz, polarity, (late, apart, frequency, copies) => {
        const level = combLevelDb({ delayMs: late, levelDifferenceDb: apart, polarity: copies }, frequency);
        const added = levelOfAddedSinesDb(late, apart, frequency, copies);
        expect(10 ** (level / 10)).toBeCloseTo(10 ** (added / 10), 6);
      }),
    );
  });

  const copy = fc.record({
    levelDb: silenceOrLevelDb,
    latencyMs: fc.oneof(fc.constant(2), delayMs),
    polarityInverted: fc.boolean(),
  });

  test('have the same effect whichever is named first, and never more than 6.02 dB', () => {
    fc.assert(
      fc.property(copy, copy, (first, second) => {
        const effect = twoCopiesEffect(first, second);
        expect(twoCopiesEffect(second, first)).toEqual(effect);
        expect(effect.peakDb).toBeLessThanOrEqual(6.0206);
        expect(effect.dipDb).toBeLessThanOrEqual(effect.sumDb);
        expect(effect.sumDb).toBeLessThanOrEqual(effect.peakDb);
      }),
    );
  });

  test('add in phase as levels do', () => {
    fc.assert(
      fc.property(levelDb, levelDb, (first, second) => {
        const together = (level: number) => ({ levelDb: level, latencyMs: 0, polarityInverted: false });
        const { sumDb } = twoCopiesEffect(together(first), together(second));
        expect(Math.max(first, second) + sumDb).toBeCloseTo(coherentSumDb([first, second]), 9);
      }),
    );
  });
});
