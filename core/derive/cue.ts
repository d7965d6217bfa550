import { delayMs } from '../acoustics/delay.ts';
import { incoherentSumDb } from '../acoustics/level-sums.ts';
import { loudspeakerLevelDbSpl } from '../acoustics/loudspeaker.ts';
import type { DecidedOf } from '../plan/decided.ts';
import type { Plan } from '../plan/plan.ts';
import type { Mix } from '../show/act.ts';
import type { ActSheet } from '../show/act-sheet.ts';
import { cueFromMiddleM } from '../show/cue-place.ts';
import type { CueOutput, Device, Id, Rig } from '../show/rig.ts';
import { indexSheet } from '../show/sheet-index.ts';
import type { DeviceKind } from '../show/words.ts';
import type { Cue } from './derived.ts';

/**
 * Where the engineer hears each mix: ear mixes on the cue pack, wedges and fills on the cue wedge, and on the
 * other where the rig lacks one. The offset makes the cue as loud at the engineer as the devices are at the
 * performer.
 */
export function deriveCues(
  sheet: ActSheet,
  plan: Plan,
  devicesOfMixes: readonly (readonly Device[])[],
  decided: DecidedOf<Id>,
): Cue[] {
  const cues = sheet.cueOutputs.map((row) => knownCue(row, sheet));
  const usual = { wedge: cues.find(isOfKind('wedge')), 'in-ear': cues.find(isOfKind('in-ear')) };
  return sheet.mixes.map((mix, mixAt): Cue => {
    const decision = decided[mixAt];
    const decidedCue = decision && cues.findLast(({ row }) => row.id === decision.value);
    const cue = decidedCue ?? usual[cueKindOf(mix.deviceKind)] ?? cues[0] ?? null;
    return {
      mixId: mix.id,
      cueOutputId: cue?.row.id ?? null,
      format: plan.mixes[mixAt]?.format === 'stereo' && cue?.row.format === 'stereo' ? 'stereo' : 'mono',
      offsetDb: cue && offsetDb(devicesOfMixes[mixAt] ?? [], cue.levelDb),
      delayMs: cue?.delayMs ?? null,
      decided: decidedCue !== undefined && decision?.by === 'engineer',
      why: whyCue(mix, cue?.row ?? null, decidedCue !== undefined),
    };
  });
}

/** A cue output with what follows from it alone. */
type KnownCue = { row: CueOutput; levelDb: number | null; delayMs: number | null };

function knownCue(row: CueOutput, sheet: ActSheet): KnownCue {
  const device = row.deviceId === null ? undefined : indexSheet(sheet).device(row.deviceId);
  return {
    row,
    levelDb: device ? deviceLevelDbSpl(device) : null,
    delayMs: cueDelayMs(row, sheet.rig),
  };
}

const isOfKind = (kind: CueOutput['kind']) => (cue: KnownCue) => cue.row.kind === kind;

/** The kind of cue output that a device is judged on. A device that nobody has named yet counts as a wedge. */
export function cueKindOf(kind: DeviceKind | null): CueOutput['kind'] {
  return kind === 'in-ear' ? 'in-ear' : 'wedge';
}

function whyCue(mix: Mix, cue: CueOutput | null, isDecided: boolean): string {
  if (cue === null) return 'The rig has no cue output.';
  if (isDecided) return 'It was decided to hear this mix here.';
  if (mix.deviceKind === null)
    return 'Nobody has said what this mix is heard through, so it is taken for a wedge.';
  if (cue.kind !== cueKindOf(mix.deviceKind))
    return cue.kind === 'wedge'
      ? 'The rig has no cue pack, so the cue wedge stands in.'
      : 'The rig has no cue wedge, so the cue pack stands in.';
  return cue.kind === 'wedge'
    ? 'Wedges and fills are heard on the cue wedge.'
    : 'In-ears are heard on the cue pack.';
}

/**
 * Level of a device at its listener in dB SPL, driven at its reference setting; null where the rig does not give
 * the figures. An estimate from the data sheet, good for comparing two devices, not for what an ear may stand.
 */
function deviceLevelDbSpl(device: Device): number | null {
  const { sensitivityDbSpl, powerW, listeningDistanceM } = device;
  if (sensitivityDbSpl === null) return null;
  if (device.kind === 'in-ear') return sensitivityDbSpl;
  if (powerW === null || listeningDistanceM === null) return null;
  return loudspeakerLevelDbSpl({ sensitivityDbSpl, powerW, distanceM: listeningDistanceM });
}

/** Several loudspeakers of one mix stand apart, so their powers add; several packs have one listener each. */
function offsetDb(devices: readonly Device[], cueDb: number | null): number | null {
  if (cueDb === null || devices.length === 0) return null;
  const levelsDb: number[] = [];
  let inEars = true;
  for (const device of devices) {
    const levelDb = deviceLevelDbSpl(device);
    if (levelDb === null) return null;
    levelsDb.push(levelDb);
    inEars &&= device.kind === 'in-ear';
  }
  return (inEars ? Math.max(...levelsDb) : incoherentSumDb(levelsDb)) - cueDb;
}

/** Sound from the stage arrives late at the engineer; a cue wedge waits for it. In-ears are heard as they are. */
function cueDelayMs(cue: CueOutput, rig: Rig): number | null {
  const farM = cue.distanceFromStageM ?? cueFromMiddleM(rig);
  return cue.kind === 'in-ear' || farM === null ? null : delayMs(farM, rig.airTemperatureC);
}
