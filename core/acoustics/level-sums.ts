import { radians } from './angle.ts';
import { amplitudeOfDb, dbOfAmplitude, dbOfPower, dbOfRemainder, powerOfDb } from './decibel.ts';
import { isLevel, requireCount, requireFinite, requireLevel } from './range.ts';

/**
 * Level of sources that have nothing to do with each other (voices, instruments), in dB: powers add.
 * Two equal ones give +3.0 dB. An empty list is silence, -Infinity.
 * Source: Sound System Engineering, section on combining decibels.
 */
export function incoherentSumDb(levelsDb: readonly number[]): number {
  return sumDb(levelsDb, powerOfDb, dbOfPower);
}

/**
 * Level of copies of one signal that arrive in phase, in dB: amplitudes add. Two equal ones give +6.0 dB.
 * An empty list is silence, -Infinity. Source: as for the incoherent sum.
 */
export function coherentSumDb(levelsDb: readonly number[]): number {
  return sumDb(levelsDb, amplitudeOfDb, dbOfAmplitude);
}

/** Everything is taken relative to the loudest, so that no level, however high, overflows. */
function sumDb(
  levelsDb: readonly number[],
  ratioOfDb: (db: number) => number,
  dbOfRatio: (ratio: number) => number,
): number {
  let loudestDb = -Infinity;
  for (const levelDb of levelsDb) {
    // This runs for every feed of every mix: the named check only where it will throw.
    if (!isLevel(levelDb)) requireLevel({ levelDb });
    loudestDb = Math.max(loudestDb, levelDb);
  }
  if (loudestDb === -Infinity) return -Infinity;
  let sum = 0;
  for (const levelDb of levelsDb) sum += ratioOfDb(levelDb - loudestDb);
  return loudestDb + dbOfRatio(sum);
}

/**
 * Level of two copies of one tone with a phase between them, in dB; -Infinity where they cancel completely.
 * Source: Sound System Engineering, table 2.9.
 */
export function coherentSumOfTwoDb(firstDb: number, secondDb: number, phaseDegrees: number): number {
  requireLevel({ firstDb, secondDb });
  requireFinite({ phaseDegrees });
  const loudestDb = Math.max(firstDb, secondDb);
  if (loudestDb === -Infinity) return -Infinity;
  const quieter = amplitudeOfDb(Math.min(firstDb, secondDb) - loudestDb);
  return loudestDb + dbOfRemainder(amplitudeOfTwo(quieter, Math.cos(radians(phaseDegrees) / 2)));
}

/**
 * Amplitude of a tone of 1 with a copy of it, from the copy's amplitude and the cosine of half the phase between:
 * the law of cosines, in the form that keeps its digits where the two nearly cancel.
 */
export function amplitudeOfTwo(copy: number, cosineOfHalfPhase: number): number {
  return Math.hypot(1 - copy, 2 * Math.sqrt(copy) * cosineOfHalfPhase);
}

/**
 * Level of the rest when one source of an incoherent total is taken away, in dB: what a stage would be without
 * that wedge. -Infinity where nothing is left; null where the one is louder than the total, which no sum can be.
 */
export function incoherentRestDb(totalDb: number, oneDb: number): number | null {
  requireLevel({ totalDb, oneDb });
  if (oneDb > totalDb) return null;
  return totalDb === -Infinity ? -Infinity : totalDb + dbOfPower(1 - powerOfDb(oneDb - totalDb));
}

/** What `count` equal sources are louder than one of them, in dB. Source: as for the sums. */
export function equalSourcesDb(count: number): { incoherentDb: number; coherentDb: number } {
  requireCount({ count });
  return { incoherentDb: dbOfPower(count), coherentDb: dbOfAmplitude(count) };
}
