/** A point on the stage plot in metres: x grows to stage left, y grows upstage. */
export type StagePlace = { xM: number; yM: number };

/** Where a row stands, or null where the plot does not say. */
export function placeOf(row: { xM: number | null; yM: number | null }): StagePlace | null {
  return row.xM === null || row.yM === null ? null : { xM: row.xM, yM: row.yM };
}

/** Straight over the floor, in metres. */
export function distanceM(a: StagePlace, b: StagePlace): number {
  return Math.hypot(a.xM - b.xM, a.yM - b.yM);
}

/** A third of the stage across and in depth, as it is called on stage: left is that of a performer facing the audience. */
export type StageThird = {
  across: 'right' | 'centre' | 'left';
  depth: 'downstage' | 'midstage' | 'upstage';
};

export function thirdOfStage(
  { xM, yM }: StagePlace,
  { stageWidthM, stageDepthM }: { stageWidthM: number; stageDepthM: number },
): StageThird {
  return {
    across: xM < -stageWidthM / 6 ? 'right' : xM > stageWidthM / 6 ? 'left' : 'centre',
    depth: yM < stageDepthM / 3 ? 'downstage' : yM > (2 * stageDepthM) / 3 ? 'upstage' : 'midstage',
  };
}
