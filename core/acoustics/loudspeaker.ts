import { dbOfPower } from './decibel.ts';
import { levelAtDistanceDb } from './distance-law.ts';
import { requireLevel, requireNotNegative, requirePositive } from './range.ts';

/**
 * What power and distance add to a loudspeaker's sensitivity, in dB: 0 at 1 W and 1 m, -Infinity at 0 W.
 * Source: Sound System Design Reference Manual, chapter 4; sensitivity at 1 W and 1 m as in IEC 60268-5.
 */
export function powerAndDistanceDb(powerW: number, distanceM: number): number {
  requireNotNegative({ powerW });
  requirePositive({ distanceM });
  return levelAtDistanceDb({ levelDb: dbOfPower(powerW), atM: 1, thenAtM: distanceM });
}

export type DrivenLoudspeaker = {
  /** dB SPL at 1 W and 1 m. */
  sensitivityDbSpl: number;
  powerW: number;
  distanceM: number;
};

/**
 * Direct sound of a loudspeaker on its axis in the open, in dB SPL; -Infinity at 0 W. An estimate: power
 * compression, floor and room are left out, so it is no measurement of what an ear gets.
 */
export function loudspeakerLevelDbSpl({ sensitivityDbSpl, powerW, distanceM }: DrivenLoudspeaker): number {
  requireLevel({ sensitivityDbSpl });
  return sensitivityDbSpl + powerAndDistanceDb(powerW, distanceM);
}
