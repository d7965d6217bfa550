import { dbuOfDbfs, dbuOfDbv, dbvPerPascal } from './level-units.ts';
import { requireDecibels, requireLevel } from './range.ts';

/** Sensitivities are stated at 94 dB SPL, which data sheets take for 1 Pa (exactly it is 93.98). */
const dbSplOfSensitivity = 94;

/**
 * What a microphone gives out at a sound level, in dBu; -Infinity in silence.
 * Source: definition of sensitivity, with the customary 94 dB SPL for 1 Pa.
 */
export function microphoneOutputDbu(sensitivityMvPerPa: number, levelDbSpl: number): number {
  requireLevel({ levelDbSpl });
  return dbuOfDbv(dbvPerPascal(sensitivityMvPerPa) + levelDbSpl - dbSplOfSensitivity);
}

export type GainTarget = {
  /** Where the level is to arrive, in dBFS. */
  targetDbfs: number;
  /** Level in dBu of the desk's digital full scale, see `dbuAtFullScale`. */
  fullScaleDbu: number;
};

/**
 * Preamp gain that brings a source to the target, in dB; negative where it must be padded.
 * null for a silent source: no gain does it.
 */
export function gainNeededDb(sourceDbu: number, { targetDbfs, fullScaleDbu }: GainTarget): number | null {
  requireLevel({ sourceDbu });
  requireDecibels({ targetDbfs });
  return sourceDbu === -Infinity ? null : dbuOfDbfs(targetDbfs, fullScaleDbu) - sourceDbu;
}

/**
 * Sound level at which a microphone with a gain reaches digital full scale, in dB SPL: the room above the level
 * the gain was set for, in the words of a microphone.
 */
export function levelAtFullScaleDbSpl(
  sensitivityMvPerPa: number,
  gainDb: number,
  fullScaleDbu: number,
): number {
  requireDecibels({ gainDb, fullScaleDbu });
  return fullScaleDbu - gainDb - microphoneOutputDbu(sensitivityMvPerPa, 0);
}
