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
