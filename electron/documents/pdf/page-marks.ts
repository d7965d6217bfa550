import { OPS, type PDFPageProxy, Util } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { limits } from '../limits.ts';
import { tooMuch } from '../unreadable.ts';

/** A piece of text on a page, upright: x to the right, y downwards, in points (1/72 inch). */
export type Word = { text: string; left: number; right: number; y: number; size: number };

/** A straight line on a page, or an edge of a filled box: both part the cells of a table. */
export type Rule = { at: number; from: number; to: number };

export type PageMarks = {
  words: Word[];
  /** Text that runs in another direction than the most of the page, as labels along an edge do. */
  aside: string[];
  /** `at` is y, the ends are x. */
  horizontal: Rule[];
  /** `at` is x, the ends are y. */
  vertical: Rule[];
};

type Matrix = number[];
type Point = [number, number];
type Segment = [Point, Point];

/** Shorter lines are underlines, check boxes and parts of letters. */
const shortestRule = 12;

/** What is on a page, turned so that most of its text is upright: a table may be printed sideways. */
export async function readPageMarks(page: PDFPageProxy, fileName: string): Promise<PageMarks> {
  const view = page.getViewport({ scale: 1 }).transform;
  const content = await page.getTextContent();
  if (content.items.length > limits.pageWords)
    throw tooMuch(`Page ${page.pageNumber} of “${fileName}” holds more than ${limits.pageWords} words.`);
  const turned = content.items.flatMap((item): Turned[] => {
    if (!('str' in item) || item.str.trim() === '') return [];
    const matrix = Util.transform(view, item.transform) as Matrix;
    return [{ text: item.str, matrix, width: item.width, quarter: quarterOf(matrix) }];
  });
  turned.push(...(await filledIn(page, view)));
  const quarter = mostCommon(turned.map((it) => it.quarter)) ?? 0;
  const upright = turned.filter((it) => it.quarter === quarter);
  const segments = ruleSegments(await page.getOperatorList(), view)
    .filter(([a, b]) => isRule(a, b))
    .map((segment): Segment => [turn(segment[0], quarter), turn(segment[1], quarter)]);
  const rules = segments.length > limits.pageRules ? [] : segments;
  return {
    words: upright.map(({ text, matrix, width }) => wordAt(text, matrix, width, quarter)),
    aside: turned.filter((it) => it.quarter !== quarter).map((it) => it.text.trim()),
    horizontal: rules.flatMap(([a, b]) => ruleOf(a[1], b[1], a[0], b[0])),
    vertical: rules.flatMap(([a, b]) => ruleOf(a[0], b[0], a[1], b[1])),
  };
}

/** Upright or level, and long enough to part cells. */
function isRule([ax, ay]: Point, [bx, by]: Point): boolean {
  return ruleOf(ay, by, ax, bx).length + ruleOf(ax, bx, ay, by).length > 0;
}

type Turned = { text: string; matrix: Matrix; width: number; quarter: number };

/** What was typed into the fields of a form, or written onto the page as a note: it is not part of the page's text. */
async function filledIn(page: PDFPageProxy, view: Matrix): Promise<Turned[]> {
  const annotations = (await page.getAnnotations()) as Record<string, unknown>[];
  return annotations.flatMap(({ rect, fieldValue, subtype, contentsObj }) => {
    const note = subtype === 'FreeText' ? (contentsObj as { str?: unknown } | undefined)?.str : fieldValue;
    const text = Array.isArray(note) ? note.join(', ') : note;
    if (!Array.isArray(rect) || typeof text !== 'string' || text.trim() === '' || text === 'Off') return [];
    const [left, bottom, right, top] = rect as [number, number, number, number];
    return text.split(/\r\n?|\n/).flatMap((line, place) => {
      const size = Math.min(0.7 * (top - bottom), 11);
      const y = top - (place + 1) * 1.1 * size;
      const matrix = Util.transform(view, [size, 0, 0, size, left + 2, y]) as Matrix;
      const width = Math.min(right - left, 0.5 * size * line.length);
      return line.trim() === '' ? [] : [{ text: line, matrix, width, quarter: quarterOf(matrix) }];
    });
  });
}

function wordAt(text: string, matrix: Matrix, width: number, quarter: number): Word {
  const [a = 0, b = 0, c = 0, d = 0, e = 0, f = 0] = matrix;
  const [left, y] = turn([e, f], quarter);
  return { text, left, right: left + width, y, size: Math.max(Math.hypot(c, d), 1) || Math.hypot(a, b) };
}

/** Quarter turns clockwise of the writing direction; y runs downwards. */
function quarterOf([a = 0, b = 0]: Matrix): number {
  return (Math.round(Math.atan2(b, a) / (Math.PI / 2)) + 4) % 4;
}

/** A point turned back by so many quarters, so that the text becomes upright. */
function turn([x, y]: Point, quarter: number): Point {
  const turns: Record<number, Point> = { 0: [x, y], 1: [y, -x], 2: [-x, -y], 3: [-y, x] };
  return turns[quarter] ?? [x, y];
}

function mostCommon(values: number[]): number | null {
  const counts = new Map<number, number>();
  for (const value of values) counts.set(value, (counts.get(value) ?? 0) + 1);
  return [...counts].sort((a, b) => b[1] - a[1])[0]?.[0] ?? null;
}

function ruleOf(at: number, alsoAt: number, from: number, to: number): Rule[] {
  if (Math.abs(at - alsoAt) > 1 || Math.abs(to - from) < shortestRule) return [];
  return [{ at: (at + alsoAt) / 2, from: Math.min(from, to), to: Math.max(from, to) }];
}

type Operators = { fnArray: number[]; argsArray: unknown[] };

/** All straight segments that are painted on the page, in the page's view. */
function ruleSegments({ fnArray, argsArray }: Operators, view: Matrix): Segment[] {
  const segments: Segment[] = [];
  const saved: Matrix[] = [];
  let current = view;
  fnArray.forEach((operator, place) => {
    const args = argsArray[place] as unknown[];
    if (operator === OPS.save) saved.push(current);
    else if (operator === OPS.restore) current = saved.pop() ?? view;
    else if (operator === OPS.transform) current = Util.transform(current, args as Matrix) as Matrix;
    else if (operator === OPS.paintFormXObjectBegin) {
      saved.push(current);
      if (args[0]) current = Util.transform(current, args[0] as Matrix) as Matrix;
    } else if (operator === OPS.paintFormXObjectEnd) current = saved.pop() ?? view;
    // A path that only clips leaves no mark on the page.
    else if (operator === OPS.constructPath && args[0] !== OPS.endPath)
      segments.push(...segmentsOfPath(args[1] as (Float32Array | null)[], current));
  });
  return segments;
}

/** How many numbers follow each drawing step of a path: move, line, curve, quadratic curve, close. */
const stepSizes = [2, 2, 6, 4, 0];

function segmentsOfPath([path]: (Float32Array | null)[], matrix: Matrix): Segment[] {
  const segments: Segment[] = [];
  let start: Point = [0, 0];
  let last: Point = [0, 0];
  for (let at = 0; path && at < path.length; ) {
    const step = path[at] ?? 0;
    const count = stepSizes[step] ?? path.length;
    const end = placed(path, at + 1 + count - 2, matrix);
    if (step === 0) start = end;
    if (step === 1) segments.push([last, end]);
    if (step === 4) segments.push([last, start]);
    last = step === 4 ? start : end;
    at += 1 + count;
  }
  return segments;
}

function placed(path: Float32Array, at: number, [a = 1, b = 0, c = 0, d = 1, e = 0, f = 0]: Matrix): Point {
  const [x, y] = [path[at] ?? 0, path[at + 1] ?? 0];
  return [a * x + c * y + e, b * x + d * y + f];
}
