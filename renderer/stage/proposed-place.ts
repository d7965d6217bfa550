import { directionTo } from '../../core/acoustics/geometry.ts';
import type { ActSheet } from '../../core/show/act-sheet.ts';
import { placeOf, type StagePlace } from '../../core/show/stage-place.ts';
import type { StageThing } from './stage-objects.ts';

/** How far in front of a performer a wedge usually stands, in metres. Common practice. */
const wedgeInFrontM = 1.3;
/** How far beside the stage the engineer usually sits, in metres. Common practice. */
const besideM = 1;

/** Where something without a place is put first, to be moved from there. */
export function proposedPlace(sheet: ActSheet, thing: StageThing): StagePlace {
  const { stageWidthM, stageDepthM } = sheet.rig;
  const performer = sheet.performers.find((it) => it.id === thing.performerId);
  const beside = performer && placeOf(performer);
  if (thing.kind === 'wedge' && beside)
    return { xM: beside.xM, yM: Math.max(0.3, beside.yM - wedgeInFrontM) };
  if (thing.kind === 'cue') return { xM: stageWidthM / 2 + besideM, yM: stageDepthM / 4 };
  if (thing.kind === 'box') return { xM: 0, yM: stageDepthM - 0.5 };
  return { xM: 0, yM: stageDepthM / 2 };
}

/** The bearing from a wedge to whoever alone hears it; null: nobody, several, without a place, or at the same one. */
export function bearingToListener(sheet: ActSheet, { at, performerId }: StageThing): number | null {
  const performer = sheet.performers.find((it) => it.id === performerId);
  const to = performer && placeOf(performer);
  return at && to ? (directionTo({ ...at, zM: 0 }, { ...to, zM: 0 })?.bearingDegrees ?? null) : null;
}
