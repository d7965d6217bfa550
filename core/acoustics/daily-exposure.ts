import { dbOfPower, powerOfDb } from './decibel.ts';
import { type ExposureSegment, requireHours, requireSoundLevel } from './exposure-dose.ts';
import { pascalsOfDbSpl } from './level-units.ts';
import { requireLevel, requireNotNegative } from './range.ts';

const referenceHours = 8;
const squareOfReferencePressure = pascalsOfDbSpl(0) ** 2;

/** Sound exposure of a day's segments, in pascals squared times hours; parts of a day add. Source: IEC 61252. */
export function soundExposurePa2h(segments: readonly ExposureSegment[]): number {
  return segments.reduce((sumPa2h, { levelDba, hours }) => {
    requireSoundLevel(levelDba);
    requireHours(hours);
    return sumPa2h + hours * pascalsOfDbSpl(levelDba) ** 2;
  }, 0);
}

/** Daily exposure level L_EX,8h of a sound exposure, in dBA; -Infinity for none. Source: ISO 1999. */
export function lex8hOfExposureDba(exposurePa2h: number): number {
  requireNotNegative({ exposurePa2h });
  return dbOfPower(exposurePa2h / referenceHours / squareOfReferencePressure);
}

/** The sound exposure that makes a daily exposure level, in pascals squared times hours. */
export function exposureOfLex8hPa2h(lexDba: number): number {
  requireSoundLevel(lexDba);
  return referenceHours * squareOfReferencePressure * powerOfDb(lexDba);
}

/** Daily exposure level L_EX,8h of a day's segments, in dBA; -Infinity for none. Source: ISO 1999. */
export function lex8hDba(segments: readonly ExposureSegment[]): number {
  return lex8hOfExposureDba(soundExposurePa2h(segments));
}

/**
 * Values of Directive 2003/10/EC, article 3. The limit value counts hearing protection, the action values do not.
 * Peaks are C-weighted; the directive states them in pascals, the levels are rounded.
 */
export const euExposureValues = [
  { name: 'lower action value', lexDba: 80, peakPa: 112, peakDbc: 135 },
  { name: 'upper action value', lexDba: 85, peakPa: 140, peakDbc: 137 },
  { name: 'limit value', lexDba: 87, peakPa: 200, peakDbc: 140 },
] as const;
export type EuExposureValue = (typeof euExposureValues)[number]['name'];

/** A day that is at a value to the last bit of arithmetic is at it. */
const roundingDb = 1e-9;

/** The values that a day reaches by its level, or by its highest peak where one is known; the lowest first. */
export function euValuesReached(lexDba: number, peakDbc: number | null = null): EuExposureValue[] {
  requireSoundLevel(lexDba);
  if (peakDbc !== null) requireLevel({ peakDbc });
  const peak = peakDbc ?? -Infinity;
  return euExposureValues
    .filter((value) => lexDba >= value.lexDba - roundingDb || peak >= value.peakDbc - roundingDb)
    .map((value) => value.name);
}
