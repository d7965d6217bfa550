import { requireLevel, requirePositive } from './range.ts';

/** A level known at one distance and wanted at another; the two distances in one unit, metres here. */
export type KnownLevel = { levelDb: number; atM: number; thenAtM: number };

/**
 * Level of a small source in the open, in dB: 6.0 dB less for each doubling of the distance. A room adds its
 * reverberation, so inside this is the direct sound only.
 * Source: Sound System Design Reference Manual, chapter 4 (inverse square law).
 */
export function levelAtDistanceDb(known: KnownLevel): number {
  return known.levelDb - 20 * decadesFartherOff(known);
}

/**
 * Level of a long row of sources, in dB: 3.0 dB less for each doubling, as long as the row is long against the
 * distance. Source: as printed in environmental noise reports (point and line source examples).
 */
export function levelOfLineAtDistanceDb(known: KnownLevel): number {
  return known.levelDb - 10 * decadesFartherOff(known);
}

/** Two logarithms instead of a quotient: the quotient of extreme distances would overflow. */
function decadesFartherOff({ levelDb, atM, thenAtM }: KnownLevel): number {
  requireLevel({ levelDb });
  requirePositive({ atM, thenAtM });
  return Math.log10(thenAtM) - Math.log10(atM);
}
