import { describe, expect, test } from 'vitest';
import { sumOfTwoCopiesDb, twoCopiesEffect } from '../../../core/acoustics/two-copies.ts';

const copy = (levelDb: number, latencyMs = 0, polarityInverted = false) => ({
  levelDb,
  latencyMs,
  polarityInverted,
});

describe('two copies of one source in one mix', () => {
  // Source: 20 log(1 + 10^(-d/20)), Master Handbook of Acoustics, chapter 10; figures to one decimal.
  test.each([
    { apartDb: 0, sumDb: 6.0 },
    { apartDb: 6, sumDb: 3.5 },
    { apartDb: -6, sumDb: 3.5 },
    { apartDb: 12, sumDb: 1.9 },
    { apartDb: 20, sumDb: 0.8 },
    { apartDb: Infinity, sumDb: 0 },
  ])('$apartDb dB apart and together in time add $sumDb dB', ({ apartDb, sumDb }) => {
    expect(sumOfTwoCopiesDb(apartDb)).toBeCloseTo(sumDb, 1);
  });

  test('at equal level and opposite polarity the source is gone', () => {
    expect(sumOfTwoCopiesDb(0, 'opposite')).toBe(-Infinity);
    expect(twoCopiesEffect(copy(0), copy(0, 0, true)).sumDb).toBe(-Infinity);
  });

  test('both inverted are of the same polarity', () => {
    expect(twoCopiesEffect(copy(0, 0, true), copy(0, 0, true)).sumDb).toBeCloseTo(6.02, 2);
  });

  // Source: 1/(2t), same chapter.
  test.each([
    { apartMs: 0.25, notchHz: 2000 },
    { apartMs: 0.5, notchHz: 1000 },
    { apartMs: 1, notchHz: 500 },
    { apartMs: 2, notchHz: 250 },
  ])('$apartMs ms apart cut their first notch at $notchHz Hz', ({ apartMs, notchHz }) => {
    const effect = twoCopiesEffect(copy(0, 3), copy(0, 3 + apartMs));
    expect(effect.firstNotchHz).toBeCloseTo(notchHz, 6);
    expect(effect.notchesHz).toHaveLength(3);
    expect(effect.dipDb).toBe(-Infinity);
    expect(effect.peakDb).toBeCloseTo(6.02, 2);
  });

  test('with opposite polarity and a delay the low end goes, and the first notch is twice as high', () => {
    const effect = twoCopiesEffect(copy(0), copy(-6, 1, true));
    expect(effect.sumDb).toBeCloseTo(-6.04, 2);
    expect(effect.firstNotchHz).toBeCloseTo(1000, 6);
  });

  test('together in time there is no notch, and the sum is the same at every frequency', () => {
    const effect = twoCopiesEffect(copy(0, 2), copy(-6, 2));
    expect(effect).toMatchObject({ firstNotchHz: null, notchesHz: [], latencyDifferenceMs: 0 });
    expect([effect.peakDb, effect.dipDb]).toEqual([effect.sumDb, effect.sumDb]);
  });

  test('a notch above hearing is not reported', () => {
    expect(twoCopiesEffect(copy(0), copy(0, 0.02)).firstNotchHz).toBeNull();
  });

  test('a copy that is off does nothing', () => {
    const effect = twoCopiesEffect(copy(-3), copy(-Infinity, 5));
    expect(effect).toMatchObject({ sumDb: 0, peakDb: 0, dipDb: 0, firstNotchHz: null });
  });

  test('a copy at no level at all is a bug of the caller, and is named', () => {
    expect(() => twoCopiesEffect(copy(Number.NaN), copy(0))).toThrow(/firstLevelDb must be a level from/);
  });
});
