import type { Drawing, Fill, LineLook, Point, Shape } from '../../../core/sheets/drawing.ts';
import { shortName } from '../../../core/sheets/short-name.ts';
import type { SetLine } from '../fonts/type-case.ts';
import { greys, type Mark } from './display-list.ts';
import { lineFactor, mm, sizes } from './measures.ts';
import { setLine } from './set-line.ts';
import type { SheetFlow } from './sheet-flow.ts';

/** Scales that a ruler or a head can read; the largest that fits is taken. */
const scales = [10, 20, 25, 40, 50, 75, 100, 125, 150, 200, 250, 400, 500, 750, 1000, 2000, 5000] as const;

const fills: Record<Fill, string | null> = { none: null, light: '#ffffff', dark: greys.dark };
const linePts: Record<LineLook, number> = { none: 0, thin: 0.5, thick: 1.2, dashed: 0.4 };

/** A drawing at the largest round scale that the rest of the page has room for, with a bar to check it by. */
export function setDrawing(flow: SheetFlow, drawing: Drawing): void {
  const barHeight = 24;
  if (!flow.hasRoom(flow.fullHeight / 2)) flow.newPage();
  const room = { width: flow.right - flow.left, height: flow.bottom - flow.y - barHeight };
  const widthM = drawing.rightM - drawing.leftM;
  const heightM = drawing.backM - drawing.frontM;
  const fits = (scale: number) =>
    (mm(1000) * widthM) / scale <= room.width && (mm(1000) * heightM) / scale <= room.height;
  const scale = scales.find(fits) ?? 10_000;
  const perMetre = mm(1000) / scale;
  const left = flow.left + (room.width - widthM * perMetre) / 2;
  const top = flow.y;
  const place = ({ xM, yM }: Point): [number, number] => [
    left + (xM - drawing.leftM) * perMetre,
    top + (drawing.backM - yM) * perMetre,
  ];
  const { lines, grounds, shapes, words } = sortedShapes(flow, drawing, place, perMetre);
  flow.page.marks.push(...lines, ...grounds, ...shapes, ...words);
  flow.advance(heightM * perMetre + 4);
  setScaleBar(flow, scale, perMetre);
  flow.advance(barHeight - 4);
}

function markOf(
  shape: Exclude<Shape, { is: 'text' }>,
  place: (at: Point) => [number, number],
  perMetre: number,
): Mark {
  const look = { fill: fills[shape.fill], linePt: linePts[shape.line] };
  if (shape.is === 'circle') {
    const [x, y] = place(shape.at);
    return { is: 'circle', x, y, radius: shape.radiusM * perMetre, ...look };
  }
  return {
    is: 'path',
    points: shape.points.map(place),
    closed: shape.closed,
    dashed: shape.line === 'dashed',
    ...look,
  };
}

type Sorted = { lines: Mark[]; grounds: Mark[]; shapes: Mark[]; words: Mark[] };

/** Words stand on white ground above the grid, and the dots above that, so that neither hides the other. */
function sortedShapes(
  flow: SheetFlow,
  { shapes }: Drawing,
  place: (at: Point) => [number, number],
  perMetre: number,
): Sorted {
  const sorted: Sorted = { lines: [], grounds: [], shapes: [], words: [] };
  const taken: Box[] = [];
  for (const shape of shapes) {
    if (shape.is === 'text') continue;
    const mark = markOf(shape, place, perMetre);
    if (mark.is === 'path' && mark.fill === null) sorted.lines.push(mark);
    else sorted.shapes.push(mark);
    if (mark.is === 'circle' && mark.fill !== null) taken.push(aroundCircle(mark));
  }
  for (const shape of shapes) {
    if (shape.is !== 'text') continue;
    const { box, line } = setWords(flow, shape, place(shape.at), taken);
    taken.push(box);
    sorted.grounds.push({ is: 'rect', ...box, fill: '#ffffff', linePt: 0 });
    const y = box.y + shape.sizePt * 0.9;
    if (line.runs.length > 0) sorted.words.push({ is: 'text', x: box.x, y, sizePt: shape.sizePt, line });
  }
  return sorted;
}

function aroundCircle({ x, y, radius }: Extract<Mark, { is: 'circle' }>): Box {
  return { x: x - radius, y: y - radius, width: 2 * radius, height: 2 * radius };
}

/** Words keep within the margins: at the edge they are moved in, and made shorter only where they are wider than all. */
function setWords(
  flow: SheetFlow,
  shape: Extract<Shape, { is: 'text' }>,
  [x, y]: [number, number],
  taken: readonly Box[],
): { box: Box; line: SetLine } {
  const set = (text: string) => setLine(text, shape.bold ? 'bold' : 'regular', flow.typeCase);
  const widest = (flow.right - flow.left) / 3;
  const line = set(shortName(shape.text, (it) => set(it).unitWidth * shape.sizePt <= widest));
  const width = line.unitWidth * shape.sizePt;
  const shift = shape.align === 'left' ? 0 : shape.align === 'centre' ? width / 2 : width;
  const inside = Math.min(Math.max(x - shift, flow.left), flow.right - width);
  return {
    box: freePlace({ x: inside, y: y - shape.sizePt * 0.64, width, height: shape.sizePt }, taken),
    line,
  };
}

type Box = { x: number; y: number; width: number; height: number };

/** Where words stand on no others: at their place, or a little above or below it. */
function freePlace(box: Box, taken: readonly Box[]): Box {
  for (const step of [0, -1, 1, -2, 2, -3, 3]) {
    const moved = { ...box, y: box.y + step * box.height };
    if (!taken.some((it) => overlap(it, moved))) return moved;
  }
  return box;
}

function overlap(a: Box, b: Box): boolean {
  return a.x < b.x + b.width && b.x < a.x + a.width && a.y < b.y + b.height && b.y < a.y + a.height;
}

function setScaleBar(flow: SheetFlow, scale: number, perMetre: number): void {
  const metres = [1, 2, 5, 10].find((it) => it * perMetre >= 40) ?? 20;
  const width = metres * perMetre;
  const y = flow.y + 10;
  for (const part of [0, 1])
    flow.page.marks.push({
      is: 'rect',
      x: flow.left + (part * width) / 2,
      y,
      width: width / 2,
      height: 4,
      fill: part === 0 ? '#000000' : '#ffffff',
      linePt: 0.6,
    });
  const words = `${metres} m. Scale 1:${scale} where the page is printed at 100 %. Seen from the audience.`;
  flow.words(words, flow.left + width + 6, y + 2 - (sizes.foot * lineFactor) / 2, sizes.foot);
}
