import {
  type Comb,
  type CombRipple,
  combLevelDb,
  combRipple,
  combSpacingHz,
  notchesHz,
  type Polarity,
} from './comb-filter.ts';
import { requireLevel, requireNotNegative } from './range.ts';

/**
 * What two copies of one source do in one mix, against the louder one alone. This is the computed effect of the
 * gravest fault of a monitor plan. Source: Master Handbook of Acoustics, chapter 10 (comb-filter effects).
 */

/**
 * Sum of two copies that arrive together, in dB against the louder one: +6.0 for equal levels, +3.5 for 6 dB
 * apart, +1.9 for 12, +0.8 for 20; with opposite polarity -Infinity for equal levels: the source is gone.
 * The difference may have either sign; Infinity where one copy is off.
 */
export function sumOfTwoCopiesDb(levelDifferenceDb: number, polarity: Polarity = 'same'): number {
  const { peakDb, dipDb } = combRipple(levelDifferenceDb);
  return polarity === 'same' ? peakDb : dipDb;
}

export type CopyInMix = { levelDb: number; latencyMs: number; polarityInverted: boolean };

export type TwoCopiesEffect = {
  /** Level at low frequencies, and everywhere when the copies arrive together; -Infinity: the source is gone. */
  sumDb: number;
  /** Highest level within hearing: feedback margin is lost by as much. */
  peakDb: number;
  /** Lowest level within hearing. */
  dipDb: number;
  /** How much later one copy arrives than the other. */
  latencyDifferenceMs: number;
  /** The lowest notch above 0 Hz within hearing; null where there is none. */
  firstNotchHz: number | null;
  /** The lowest three notches, as far as they are within hearing. */
  notchesHz: number[];
};

/** Upper end of hearing in hertz: common practice. A notch above it is not heard. */
const highestHeardHz = 20_000;

/** The effect of both copies in one mix. A copy at -Infinity does nothing to the other. */
export function twoCopiesEffect(first: CopyInMix, second: CopyInMix): TwoCopiesEffect {
  requireLevel({ firstLevelDb: first.levelDb, secondLevelDb: second.levelDb });
  requireNotNegative({ firstLatencyMs: first.latencyMs, secondLatencyMs: second.latencyMs });
  const oneIsOff = first.levelDb === -Infinity || second.levelDb === -Infinity;
  const latencyDifferenceMs = Math.abs(first.latencyMs - second.latencyMs);
  const comb: Comb = {
    delayMs: latencyDifferenceMs,
    levelDifferenceDb: oneIsOff ? Infinity : first.levelDb - second.levelDb,
    polarity: first.polarityInverted === second.polarityInverted ? 'same' : 'opposite',
  };
  const notches = oneIsOff ? [] : notchesHz(latencyDifferenceMs, 3, comb.polarity);
  const heardNotchesHz = notches.filter((notchHz) => notchHz <= highestHeardHz);
  const sumDb = sumOfTwoCopiesDb(comb.levelDifferenceDb, comb.polarity);
  return {
    sumDb,
    ...rippleWithinHearing(comb, sumDb),
    latencyDifferenceMs,
    firstNotchHz: heardNotchesHz[0] ?? null,
    notchesHz: heardNotchesHz,
  };
}

/** Up to half the spacing the level only rises or only falls, so the ends of hearing are the extremes. */
function rippleWithinHearing(comb: Comb, sumDb: number): CombRipple {
  const spacingHz = combSpacingHz(comb.delayMs);
  if (spacingHz === null) return { peakDb: sumDb, dipDb: sumDb };
  if (spacingHz / 2 <= highestHeardHz) return combRipple(comb.levelDifferenceDb);
  const highestDb = combLevelDb(comb, highestHeardHz);
  return { peakDb: Math.max(sumDb, highestDb), dipDb: Math.min(sumDb, highestDb) };
}
