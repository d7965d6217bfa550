import { amplitudeOfDb, dbOfAmplitude } from './decibel.ts';
import { requireDecibels, requireLevel, requireNotNegative, requirePositive } from './range.ts';

/**
 * Levels in the units of data sheets. Volts are r.m.s.; 0 volts, pascals or millivolts are -Infinity in dB.
 * Sources: IEC 60027-3 (dBu, dBV), ISO 1683 (20 micropascal).
 */

/** 0 dBu is 1 mW in 600 ohms: the square root of 0.6, 0.775 V. */
const voltsAtZeroDbu = Math.sqrt(0.6);
const pascalsAtZeroDbSpl = 20e-6;

export function dbuOfVolts(volts: number): number {
  requireNotNegative({ volts });
  return dbOfAmplitude(volts / voltsAtZeroDbu);
}

export function voltsOfDbu(levelDbu: number): number {
  requireLevel({ levelDbu });
  return voltsAtZeroDbu * amplitudeOfDb(levelDbu);
}

export function dbvOfVolts(volts: number): number {
  requireNotNegative({ volts });
  return dbOfAmplitude(volts);
}

export function voltsOfDbv(levelDbv: number): number {
  requireLevel({ levelDbv });
  return amplitudeOfDb(levelDbv);
}

/** 2.218 dB more: the same voltage against a smaller reference. */
export function dbuOfDbv(levelDbv: number): number {
  requireLevel({ levelDbv });
  return levelDbv - dbOfAmplitude(voltsAtZeroDbu);
}

export function dbvOfDbu(levelDbu: number): number {
  requireLevel({ levelDbu });
  return levelDbu + dbOfAmplitude(voltsAtZeroDbu);
}

export function pascalsOfDbSpl(levelDbSpl: number): number {
  requireLevel({ levelDbSpl });
  return pascalsAtZeroDbSpl * amplitudeOfDb(levelDbSpl);
}

/** 1 Pa is 93.98 dB SPL, which data sheets round to 94. */
export function dbSplOfPascals(pascals: number): number {
  requireNotNegative({ pascals });
  return dbOfAmplitude(pascals / pascalsAtZeroDbSpl);
}

/** Sensitivity of a microphone: from mV/Pa to dB re 1 V/Pa. An older unit, dB re 1 V/microbar, is 20 dB lower. */
export function dbvPerPascal(sensitivityMvPerPa: number): number {
  requirePositive({ sensitivityMvPerPa });
  return dbvOfVolts(sensitivityMvPerPa / 1000);
}

/** Sensitivity of a microphone: from dB re 1 V/Pa to mV/Pa. */
export function mvPerPascal(sensitivityDbvPerPa: number): number {
  return voltsOfDbv(sensitivityDbvPerPa) * 1000;
}

/**
 * Level in dBu of a sine at digital full scale, by calibration of the converter. Sources: EBU R 68-2000
 * (alignment -18 dBFS at 0 dBu), SMPTE RP 155 (-20 dBFS at +4 dBu); the others as printed in lists of calibrations.
 */
export const dbuAtFullScale = {
  'EBU R 68': 18,
  'SMPTE RP 155': 24,
  '+22 dBu': 22,
  '+15 dBu': 15,
} as const;

export function dbuOfDbfs(levelDbfs: number, fullScaleDbu: number): number {
  requireLevel({ levelDbfs });
  requireDecibels({ fullScaleDbu });
  return levelDbfs + fullScaleDbu;
}

export function dbfsOfDbu(levelDbu: number, fullScaleDbu: number): number {
  requireLevel({ levelDbu });
  requireDecibels({ fullScaleDbu });
  return levelDbu - fullScaleDbu;
}
