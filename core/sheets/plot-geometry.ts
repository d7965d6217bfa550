import type { StagePlace } from '../show/stage-place.ts';

/**
 * What the stage plot on paper and the stage on screen share: sizes and corners of what is drawn, in metres. Sizes
 * are those of usual things (common practice); no wedge is measured.
 */

export const performerRadiusM = 0.3;
export const boxSideM = 0.5;
export const cueWidthM = 0.9;
export const cueDepthM = 0.6;
const wedgeWidthM = 0.6;
const wedgeDepthM = 0.44;

/** A wedge with its narrow back behind; where nobody says its aim it points upstage, at whoever stands there. */
export function wedgeCorners(at: StagePlace, aimDeg: number | null): StagePlace[] {
  const turn = ((aimDeg ?? 0) * Math.PI) / 180;
  const along = { xM: Math.sin(turn), yM: Math.cos(turn) };
  const across = { xM: Math.cos(turn), yM: -Math.sin(turn) };
  const corner = (side: number, ahead: number) => ({
    xM: at.xM + across.xM * side + along.xM * ahead,
    yM: at.yM + across.yM * side + along.yM * ahead,
  });
  const [half, front] = [wedgeWidthM / 2, wedgeDepthM / 2];
  return [corner(-half, front), corner(half, front), corner(half * 0.6, -front), corner(-half * 0.6, -front)];
}

/** A rectangle around a place, its sides along the stage's edges. */
export function rectangleCorners({ xM, yM }: StagePlace, widthM: number, depthM: number): StagePlace[] {
  const [w, d] = [widthM / 2, depthM / 2];
  return [
    { xM: xM - w, yM: yM - d },
    { xM: xM + w, yM: yM - d },
    { xM: xM + w, yM: yM + d },
    { xM: xM - w, yM: yM + d },
  ];
}

export type PlotExtent = { leftM: number; rightM: number; frontM: number; backM: number };

/** The stage with everything that stands on or beside it. */
export function extentOfPlot(
  rig: { stageWidthM: number; stageDepthM: number },
  places: readonly StagePlace[],
): PlotExtent {
  const half = rig.stageWidthM / 2;
  const xs = places.map(({ xM }) => xM);
  const ys = places.map(({ yM }) => yM);
  return {
    leftM: Math.min(-half, ...xs),
    rightM: Math.max(half, ...xs),
    frontM: Math.min(0, ...ys),
    backM: Math.max(rig.stageDepthM, ...ys),
  };
}
