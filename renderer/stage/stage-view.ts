import type { PlotExtent } from '../../core/sheets/plot-geometry.ts';
import type { StagePlace } from '../../core/show/stage-place.ts';

/** Who looks: the engineer from the back of the stage at the audience, or the audience at the stage. */
export type Side = 'engineer' | 'audience';
/** Pixels from the upper left corner of the drawing. */
export type ScreenPoint = { x: number; y: number };
export type Size = { width: number; height: number };
export type StageView = { side: Side; pxPerM: number; middle: StagePlace; size: Size };

const least = { pxPerM: 8 };
const most = { pxPerM: 300 };
/** Room around the stage for measures and names, in pixels. */
const marginPx = 40;

/** The two views are the same drawing turned round by half a turn, never a mirror image: left stays left of it. */
const turnOf = (side: Side) => (side === 'audience' ? 1 : -1);

export function toScreen({ side, pxPerM, middle, size }: StageView, at: StagePlace): ScreenPoint {
  const turn = turnOf(side);
  return {
    x: size.width / 2 + turn * (at.xM - middle.xM) * pxPerM,
    y: size.height / 2 - turn * (at.yM - middle.yM) * pxPerM,
  };
}

export function toMetres(view: StageView, { x, y }: ScreenPoint): StagePlace {
  const by = wayInMetres(view, { x: x - view.size.width / 2, y: y - view.size.height / 2 });
  return { xM: view.middle.xM + by.xM, yM: view.middle.yM + by.yM };
}

/** A way over the screen as a way over the stage. */
export function wayInMetres(
  { side, pxPerM }: Pick<StageView, 'side' | 'pxPerM'>,
  way: ScreenPoint,
): StagePlace {
  const turn = turnOf(side);
  return { xM: (turn * way.x) / pxPerM, yM: (-turn * way.y) / pxPerM };
}

/** A way over the stage as a way over the screen. */
export function wayOnScreen(
  { side, pxPerM }: Pick<StageView, 'side' | 'pxPerM'>,
  way: StagePlace,
): ScreenPoint {
  const turn = turnOf(side);
  return { x: turn * way.xM * pxPerM, y: -turn * way.yM * pxPerM };
}

/** A bearing (clockwise from upstage) as degrees clockwise from straight up on the screen. */
export function angleOnScreen(side: Side, bearingDeg: number): number {
  return side === 'audience' ? bearingDeg : bearingDeg + 180;
}

/** The whole stage with everything on it, as large as the room allows. */
export function fittedView(side: Side, size: Size, extent: PlotExtent): StageView {
  const widthM = Math.max(1, extent.rightM - extent.leftM);
  const depthM = Math.max(1, extent.backM - extent.frontM);
  const pxPerM = Math.min((size.width - 2 * marginPx) / widthM, (size.height - 2 * marginPx) / depthM);
  const middle = { xM: (extent.leftM + extent.rightM) / 2, yM: (extent.frontM + extent.backM) / 2 };
  return { side, size, middle, pxPerM: kept(pxPerM) };
}

/** Nearer or farther, so that what lies under a point of the screen stays there. */
export function zoomedView(view: StageView, factor: number, around: ScreenPoint): StageView {
  const fixed = toMetres(view, around);
  const zoomed = { ...view, pxPerM: kept(view.pxPerM * factor) };
  const now = toMetres(zoomed, around);
  const { middle } = view;
  return {
    ...zoomed,
    middle: { xM: middle.xM + fixed.xM - now.xM, yM: middle.yM + fixed.yM - now.yM },
  };
}

/** The drawing pushed over the screen. */
export function pannedView(view: StageView, way: ScreenPoint): StageView {
  const by = wayInMetres(view, way);
  return { ...view, middle: { xM: view.middle.xM - by.xM, yM: view.middle.yM - by.yM } };
}

const kept = (pxPerM: number) => Math.max(least.pxPerM, Math.min(most.pxPerM, pxPerM));
