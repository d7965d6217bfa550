import type { Rig } from './rig.ts';
import { distanceM, placeOf, type StagePlace } from './stage-place.ts';

/** Where the engineer listens, or null where the plot does not say. */
export function placeOfCue({ cueXM, cueYM }: Rig): StagePlace | null {
  return placeOf({ xM: cueXM, yM: cueYM });
}

/** From the stage's middle to where the engineer listens, over the floor, in metres; null: no place is known. */
export function cueFromMiddleM(rig: Rig): number | null {
  const at = placeOfCue(rig);
  return at && distanceM(at, { xM: 0, yM: rig.stageDepthM / 2 });
}
