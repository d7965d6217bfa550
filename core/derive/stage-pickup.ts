import { type MicrophonePattern, patternCoefficients } from '../acoustics/microphone-patterns.ts';
import { type Pickup, pickupOf } from '../acoustics/rejection.ts';
import type { Mix, Source } from '../show/act.ts';
import type { ActSheet } from '../show/act-sheet.ts';
import { placeOfSource } from '../show/place-of-source.ts';
import type { Id } from '../show/rig.ts';
import { factsOfKind } from '../show/source-kinds.ts';
import { distanceM, placeOf, type StagePlace } from '../show/stage-place.ts';
import { isLoudspeakerMix } from './facts.ts';

/** A wedge is heard by microphones about this near; further off its level is low. Common practice. */
export const nearWedgeM = 3;

export function isOpenMicrophone(source: Source): boolean {
  return source.pickUp === 'mic' || factsOfKind(source.kind).group === 'vocals';
}

/**
 * How a source's microphone hears a loudspeaker on the stage floor; null where nobody has said its pattern or its
 * aim, or where both stand in one place. A microphone whose height nobody has said counts as level with the wedge,
 * one whose tilt nobody has said as level.
 */
export function pickupOnStage(
  source: Pick<Source, 'pattern' | 'aimDeg' | 'tiltDeg' | 'heightM'>,
  from: StagePlace,
  to: StagePlace,
  airTemperatureC: number,
): (Pickup & { pattern: MicrophonePattern }) | null {
  if (source.pattern === null || source.aimDeg === null) return null;
  const pickup = pickupOf(
    {
      at: { ...from, zM: source.heightM ?? 0 },
      looking: { bearingDegrees: source.aimDeg, tiltUpDegrees: source.tiltDeg ?? 0 },
      coefficient: patternCoefficients[source.pattern],
    },
    { ...to, zM: 0 },
    airTemperatureC,
  );
  return pickup && { ...pickup, pattern: source.pattern };
}

/** A microphone and a loudspeaker that are near each other. `pickup` is null as in `pickupOnStage`. */
export type NearPair = { sourceId: Id; mixId: Id; apartM: number; pickup: Pickup | null };

/** Every open microphone near a loudspeaker on stage, the nearest first; places of sources as in `placeOfSource`. */
export function nearPairs(sheet: ActSheet): NearPair[] {
  const wedges = sheet.mixes.flatMap((mix) => placedWedge(mix) ?? []);
  if (wedges.length === 0) return [];
  const pairs = sheet.sources.flatMap((source) => {
    if (!isOpenMicrophone(source) || source.audience === 'not here') return [];
    const from = placeOfSource(sheet, source);
    if (!from) return [];
    return wedges.flatMap(({ id, at }): NearPair[] => {
      const apartM = distanceM(from, at);
      if (apartM > nearWedgeM) return [];
      const pickup = pickupOnStage(source, from, at, sheet.rig.airTemperatureC);
      return [{ sourceId: source.id, mixId: id, apartM, pickup }];
    });
  });
  return pairs.sort((a, b) => a.apartM - b.apartM);
}

function placedWedge(mix: Mix): { id: Id; at: StagePlace } | null {
  const at = placeOf(mix);
  return at && mix.deviceKind !== null && isLoudspeakerMix(mix) ? { id: mix.id, at } : null;
}
