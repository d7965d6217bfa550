import { amplitudeOfDb, dbOfAmplitude, dbOfRemainder } from './decibel.ts';
import { amplitudeOfTwo } from './level-sums.ts';
import { requireBetween, requireNotNegative } from './range.ts';

/**
 * Comb filter: two copies of one signal, one of them late. Levels are relative to the louder copy alone.
 * Source: Master Handbook of Acoustics, chapter 10 (comb-filter effects).
 */

/** Whether the two copies have the same polarity; with `opposite`, notches and peaks change places. */
export type Polarity = 'same' | 'opposite';

/**
 * Frequency of the lowest notch above 0 Hz, in hertz: 1/(2t), or 1/t with opposite polarity.
 * null without a delay: then the copies add or cancel alike at every frequency.
 */
export function firstNotchHz(delayMs: number, polarity: Polarity = 'same'): number | null {
  return notchesHz(delayMs, 1, polarity)[0] ?? null;
}

/** The lowest `count` notches above 0 Hz, in hertz, evenly 1/t apart; empty without a delay. */
export function notchesHz(delayMs: number, count: number, polarity: Polarity = 'same'): number[] {
  return multiplesOfSpacing(delayMs, count, polarity === 'same' ? 0.5 : 1);
}

/** The lowest `count` peaks above 0 Hz, in hertz; empty without a delay. */
export function peaksHz(delayMs: number, count: number, polarity: Polarity = 'same'): number[] {
  return multiplesOfSpacing(delayMs, count, polarity === 'same' ? 1 : 0.5);
}

/** A picosecond: less is the rounding of a subtraction, not a delay. */
const shortestDelayMs = 1e-9;
/** Notches that anybody would list: hearing ends long before. */
const mostAsked = 10_000;

/** Distance between notches, in hertz: 1/t. null without a delay. */
export function combSpacingHz(delayMs: number): number | null {
  requireNotNegative({ delayMs });
  return delayMs < shortestDelayMs ? null : 1000 / delayMs;
}

function multiplesOfSpacing(delayMs: number, count: number, first: number): number[] {
  requireBetween(1, mostAsked, { count });
  const spacingHz = combSpacingHz(delayMs);
  return spacingHz === null ? [] : Array.from({ length: count }, (_, step) => (first + step) * spacingHz);
}

/** How far the sum of two copies swings with frequency, in dB. */
export type CombRipple = {
  /** Highest level: 0 (the copy is inaudible) to +6.0. */
  peakDb: number;
  /** Deepest notch: -Infinity for equal copies. */
  dipDb: number;
};

/**
 * The ripple for a level difference between the copies, in dB of either sign; Infinity where one is off.
 * A dip under 1 dB takes a difference of 19.3 dB; a printed tip that 9 dB does it is wrong (the dip is 3.8 dB).
 */
export function combRipple(levelDifferenceDb: number): CombRipple {
  const copy = amplitudeOfCopy(levelDifferenceDb);
  return { peakDb: dbOfAmplitude(1 + copy), dipDb: dbOfRemainder(1 - copy) };
}

export type Comb = {
  delayMs: number;
  /** Of either sign; Infinity where one copy is off. */
  levelDifferenceDb: number;
  polarity: Polarity;
};

/** Level of the sum at one frequency against the louder copy alone, in dB; -Infinity in a complete notch. */
export function combLevelDb({ delayMs, levelDifferenceDb, polarity }: Comb, frequencyHz: number): number {
  requireNotNegative({ delayMs, frequencyHz });
  const copy = amplitudeOfCopy(levelDifferenceDb);
  // Only the part of a turn counts: the cosine of a huge angle has lost its digits.
  const turns = ((delayMs / 1000) * frequencyHz) % 1;
  const halfPhase = Math.PI * turns;
  return dbOfRemainder(amplitudeOfTwo(copy, polarity === 'same' ? Math.cos(halfPhase) : Math.sin(halfPhase)));
}

function amplitudeOfCopy(levelDifferenceDb: number): number {
  if (Number.isNaN(levelDifferenceDb))
    throw new RangeError('levelDifferenceDb must be a number, but is NaN.');
  return amplitudeOfDb(-Math.abs(levelDifferenceDb));
}
