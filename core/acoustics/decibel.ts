/**
 * Ratios and decibels. Power (energy, watts) goes with 10 log, amplitude (volts, pascals, gain of a signal)
 * with 20 log. Source: ISO 80000-8 / IEC 60027-3, definition of the level of a power and of a field quantity.
 */

/** A ratio of 0 is -Infinity. */
export function dbOfPower(ratio: number): number {
  return 10 * Math.log10(ratio);
}

/** A ratio of 0 is -Infinity. */
export function dbOfAmplitude(ratio: number): number {
  return 20 * Math.log10(ratio);
}

/** -Infinity is a ratio of 0. */
export function powerOfDb(levelDb: number): number {
  return 10 ** (levelDb / 10);
}

/** -Infinity is a ratio of 0. */
export function amplitudeOfDb(levelDb: number): number {
  return 10 ** (levelDb / 20);
}

/**
 * What is left where waves cancel is either something or nothing: arithmetic on doubles leaves a crumb of about
 * 1e-16 where the exact answer is 0, and a level of -320 dB would be read as a result. No stage cancels by 200 dB.
 */
const nothingLeft = 1e-10;

/** Level of what is left of an amplitude of about 1 after a cancellation; -Infinity where it is complete. */
export function dbOfRemainder(amplitude: number): number {
  return Math.abs(amplitude) < nothingLeft ? -Infinity : dbOfAmplitude(Math.abs(amplitude));
}
