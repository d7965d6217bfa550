import { delayMs } from '../acoustics/delay.ts';
import { incoherentSumDb } from '../acoustics/level-sums.ts';
import { loudspeakerLevelDbSpl } from '../acoustics/loudspeaker.ts';
import type { Decided } from '../plan/decided.ts';
import type { Plan } from '../plan/plan.ts';
import type { Mix } from '../show/act.ts';
import type { ActSheet } from '../show/act-sheet.ts';
import { cueFromMiddleM } from '../show/cue-place.ts';
import type { CueOutput, Device, Id, Rig } from '../show/rig.ts';
import { byId, indexSheet } from '../show/sheet-index.ts';
import type { DeviceKind } from '../show/words.ts';
import type { Cue } from './derived.ts';

/**
 * Where the engineer hears each mix: ear mixes on the cue pack, wedges and fills on the cue wedge, and on the
 * other where the rig lacks one. The offset makes the cue as loud at the engineer as the devices are at the
 * performer.
 */
export function deriveCues(sheet: ActSheet, plan: Plan, decided: ReadonlyMap<Id, Decided<Id>>): Cue[] {
  const { deviceById } = indexSheet(sheet);
  const cueById = byId(sheet.cueOutputs);
  const levelOfCueDb = new Map(sheet.cueOutputs.map((cue) => [cue, cueLevelDb(cue, deviceById)]));
  return sheet.mixes.map((mix, mixAt) => {
    const decision = decided.get(mix.id);
    const decidedCue = decision && cueById.get(decision.value);
    const wanted = cueKindOf(mix.deviceKind);
    const right = sheet.cueOutputs.find((cue) => cue.kind === wanted);
    const cue = decidedCue ?? right ?? sheet.cueOutputs[0] ?? null;
    const planned = plan.mixes[mixAt];
    const devices = (planned?.deviceIds ?? []).flatMap((id) => deviceById.get(id) ?? []);
    return {
      mixId: mix.id,
      cueOutputId: cue?.id ?? null,
      format: planned?.format === 'stereo' && cue?.format === 'stereo' ? 'stereo' : 'mono',
      offsetDb: cue && offsetDb(devices, levelOfCueDb.get(cue) ?? null),
      delayMs: cue && cueDelayMs(cue, sheet.rig),
      decided: decidedCue !== undefined && decision?.by === 'engineer',
      why: whyCue(mix, cue, decidedCue !== undefined),
    };
  });
}

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

/** Level of the engineer's own device on a cue output; null where it is not known. */
function cueLevelDb(cue: CueOutput, deviceById: ReadonlyMap<Id, Device>): number | null {
  const device = cue.deviceId === null ? undefined : deviceById.get(cue.deviceId);
  return device ? deviceLevelDbSpl(device) : null;
}

/** Several loudspeakers of one mix stand apart, so their powers add; several packs have one listener each. */
function offsetDb(devices: readonly Device[], cueDb: number | null): number | null {
  if (cueDb === null) return null;
  const levelsDb = devices.map(deviceLevelDbSpl).filter((levelDb) => levelDb !== null);
  if (levelsDb.length === 0 || levelsDb.length < devices.length) return null;
  const inEars = devices.every((device) => device.kind === 'in-ear');
  return (inEars ? Math.max(...levelsDb) : incoherentSumDb(levelsDb)) - cueDb;
}

/** Sound from the stage arrives late at the engineer; a cue wedge waits for it. In-ears are heard as they are. */
function cueDelayMs(cue: CueOutput, rig: Rig): number | null {
  const farM = cue.distanceFromStageM ?? cueFromMiddleM(rig);
  return cue.kind === 'in-ear' || farM === null ? null : delayMs(farM, rig.airTemperatureC);
}
