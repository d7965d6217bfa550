import { boxSideM, cueDepthM, cueWidthM, performerRadiusM } from '../../core/sheets/plot-geometry.ts';
import { leastTargetPx, pillWidthPx } from './mark-look.ts';
import type { Mark } from './marks.ts';
import { type ScreenPoint, type StageView, toScreen } from './stage-view.ts';

/** A mark with how far its sign is drawn from its place, so that signs do not cover each other. */
export type LaidOutMark = Mark & { aside: ScreenPoint };

type Box = { left: number; right: number; top: number; bottom: number };

const gapPx = 3;
const rowPx = leastTargetPx + 1;
const here: ScreenPoint = { x: 0, y: 0 };

/**
 * Everything at its place but the numbers of lines, which give way: beside the circle of whoever stands there, and to
 * the other side or a row further where something else is.
 */
export function laidOut(marks: readonly Mark[], view: StageView): LaidOutMark[] {
  const taken: Box[] = marks.filter((mark) => !isOfLines(mark)).map((mark) => boxOf(mark, view, here));
  return marks.map((mark) => {
    if (!isOfLines(mark)) return { ...mark, aside: here };
    const asides = asidesOf(mark, view);
    const isFree = (aside: ScreenPoint) => {
      const box = boxOf(mark, view, aside);
      return !taken.some((other) => overlap(box, other));
    };
    const aside = asides.find(isFree) ?? asides[0] ?? here;
    taken.push(boxOf(mark, view, aside));
    return { ...mark, aside };
  });
}

const isOfLines = (mark: Mark) => mark.things[0].kind === 'source';

/** Where the numbers of a mark may stand, the best place first. */
function asidesOf(mark: Mark, view: StageView): ScreenPoint[] {
  const besidePx = performerRadiusM * view.pxPerM + gapPx + pillWidthPx(mark) / 2;
  const rows = [0, 1, -1, 2, -2].map((row) => row * rowPx);
  const beside = rows.flatMap((y) => [
    { x: besidePx, y },
    { x: -besidePx, y },
  ]);
  // A line that stands alone is written where it stands, even on the foot of somebody else's circle.
  return mark.atPerformer ? beside : [here, ...rows.slice(1).map((y) => ({ x: 0, y })), ...beside];
}

function boxOf(mark: Mark, view: StageView, aside: ScreenPoint): Box {
  const at = toScreen(view, mark.at);
  const { width, height } = sizeOf(mark, view);
  const [x, y] = [at.x + aside.x, at.y + aside.y];
  return { left: x - width / 2, right: x + width / 2, top: y - height / 2, bottom: y + height / 2 };
}

function sizeOf(mark: Mark, { pxPerM }: StageView): { width: number; height: number } {
  const square = (m: number) => ({ width: m * pxPerM, height: m * pxPerM });
  switch (mark.things[0].kind) {
    // A microphone stands close before its singer: half of the circle may be covered.
    case 'performer':
      return square(performerRadiusM);
    case 'cue':
      return { width: cueWidthM * pxPerM, height: cueDepthM * pxPerM };
    case 'source':
      return { width: pillWidthPx(mark), height: leastTargetPx };
    default:
      return square(boxSideM);
  }
}

const overlap = (a: Box, b: Box) =>
  a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;
