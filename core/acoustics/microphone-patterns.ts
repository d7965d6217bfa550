import { degrees, radians } from './angle.ts';
import { dbOfPower, dbOfRemainder } from './decibel.ts';
import { requireBetween, requireFinite } from './range.ts';

/**
 * First-order microphone patterns: response a + (1 - a) cos(angle), with one coefficient a from 1 (omni) to 0
 * (figure of eight). Real microphones follow it at middle frequencies only; a hand round the grille makes any of
 * them nearly omni. So angles from here are hints for a plot, not a setting.
 * Sources: HyperPhysics, Directional Patterns of Microphones; the formula is common to the handbooks.
 */

/**
 * Sources disagree about two of the names. Supercardioid: 0.366 has the most front energy; 0.37 and 0.375 are
 * printed too, one table mixes two of them. Subcardioid: 0.7 here; 0.707 (side -3 dB) and 0.658 (rear -10 dB)
 * are printed too.
 */
export const patternCoefficients = {
  omnidirectional: 1,
  subcardioid: 0.7,
  cardioid: 0.5,
  supercardioid: (Math.sqrt(3) - 1) / 2,
  hypercardioid: 0.25,
  'figure-8': 0,
} as const;
export type MicrophonePattern = keyof typeof patternCoefficients;

/** Level at an angle off the front axis against on axis, in dB; -Infinity in a null. */
export function responseDb(coefficient: number, offAxisDegrees: number): number {
  requireCoefficient(coefficient);
  requireFinite({ offAxisDegrees });
  return dbOfRemainder(coefficient + (1 - coefficient) * Math.cos(radians(offAxisDegrees)));
}

/** Angle at which nothing is picked up, in degrees off axis; null for patterns wider than a cardioid. */
export function nullAngleDegrees(coefficient: number): number | null {
  return angleOfAmplitude(coefficient, 0);
}

/** Amplitudes that the trade calls 3 and 6 dB down: half power and half amplitude. */
const amplitudeDown = { 3: Math.SQRT1_2, 6: 0.5 } as const;

/** Full angle in front, both sides together, within 3 or 6 dB, in degrees; null where it never falls so far. */
export function acceptanceAngleDegrees(coefficient: number, downDb: 3 | 6): number | null {
  const half = angleOfAmplitude(coefficient, amplitudeDown[downDb]);
  return half === null ? null : 2 * half;
}

function angleOfAmplitude(coefficient: number, amplitude: number): number | null {
  requireCoefficient(coefficient);
  const cosine = (amplitude - coefficient) / (1 - coefficient);
  return cosine >= -1 && cosine <= 1 ? degrees(Math.acos(cosine)) : null;
}

/** Share of diffuse sound picked up against an omni of equal sensitivity: 1 to 0.25. Source: as above. */
export function randomEnergyEfficiency(coefficient: number): number {
  requireCoefficient(coefficient);
  return (1 - 2 * coefficient + 4 * coefficient ** 2) / 3;
}

/** How many times farther away than an omni it may stand for the same ratio of direct to diffuse sound. */
export function distanceFactor(coefficient: number): number {
  return 1 / Math.sqrt(randomEnergyEfficiency(coefficient));
}

/** The same as the distance factor, in dB. */
export function directivityIndexDb(coefficient: number): number {
  return -dbOfPower(randomEnergyEfficiency(coefficient));
}

function requireCoefficient(coefficient: number): void {
  requireBetween(0, 1, { coefficient });
}
