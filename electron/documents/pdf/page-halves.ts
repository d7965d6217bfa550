import { covered, groupsOf } from './columns.ts';
import type { PageMarks, Rule } from './page-marks.ts';
import { linesOfWords, type TextLine } from './text-lines.ts';

/**
 * Parts of a page that are read one after the other. A page in two columns (two lists, or prose) is read down the
 * left and then down the right; a table is not, although its columns are also parted by an empty strip.
 */
export function partsOfPage(marks: PageMarks): PageMarks[] {
  const strip = findStrip(marks);
  if (!strip) return [marks];
  const middle = (strip.from + strip.to) / 2;
  const [low, high] = [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY];
  const above = cutOut(marks, { left: low, right: high, top: low, bottom: strip.below });
  const left = cutOut(marks, { left: low, right: middle, top: strip.below, bottom: high });
  const right = cutOut(marks, { left: middle, right: high, top: strip.below, bottom: high });
  // The right column is laid on the left one, so that a list that goes on there keeps its columns.
  const shift = leftEdge(left) - leftEdge(right);
  return [above, left, moved(right, shift)].filter((part) => part.words.length > 0);
}

type Frame = { left: number; right: number; top: number; bottom: number };

function cutOut(marks: PageMarks, { left, right, top, bottom }: Frame): PageMarks {
  return {
    words: marks.words.filter((it) => it.left >= left && it.left < right && it.y >= top && it.y < bottom),
    aside: [],
    horizontal: marks.horizontal
      .filter((rule) => rule.at >= top && rule.at < bottom)
      .flatMap((rule) => clipped(rule, left, right)),
    vertical: marks.vertical
      .filter((rule) => rule.at >= left && rule.at < right)
      .flatMap((rule) => clipped(rule, top, bottom)),
  };
}

function leftEdge({ words }: PageMarks): number {
  return Math.min(...words.map((word) => word.left));
}

function moved(marks: PageMarks, shift: number): PageMarks {
  return {
    words: marks.words.map((it) => ({ ...it, left: it.left + shift, right: it.right + shift })),
    aside: [],
    horizontal: marks.horizontal.map((it) => ({ ...it, from: it.from + shift, to: it.to + shift })),
    vertical: marks.vertical.map((it) => ({ ...it, at: it.at + shift })),
  };
}

function clipped(rule: Rule, from: number, to: number): Rule[] {
  const [start, end] = [Math.max(rule.from, from), Math.min(rule.to, to)];
  return end > start ? [{ at: rule.at, from: start, to: end }] : [];
}

type Strip = { from: number; to: number; below: number };

/** The empty strip between two columns of a page, and the height below which there is no text across it. */
function findStrip(marks: PageMarks): Strip | null {
  const lines = linesOfWords(marks.words);
  const left = Math.min(...marks.words.map((word) => word.left));
  const right = Math.max(...marks.words.map((word) => word.right));
  const [low, high] = [left + 0.25 * (right - left), left + 0.75 * (right - left)];
  const strips = stripsOf(lines, low, high).filter((strip) => !isRuledAcross(marks, strip));
  return strips.find((it) => isBesideTable(marks, it) || isBetweenColumns(lines, it)) ?? null;
}

/** Drawn lines that cross the strip, whole or cell by cell, are rows of one table. */
function isRuledAcross({ horizontal }: PageMarks, { from, to, below }: Strip): boolean {
  const lines = groupsOf(horizontal.filter((rule) => rule.at > below));
  return lines.filter((line) => covered(line, from, to) > 0.8).length >= 3;
}

/** A drawn table that ends at the strip, with room before whatever is drawn beyond it. */
function isBesideTable({ horizontal }: PageMarks, { from, to, below }: Strip): boolean {
  const middle = (from + to) / 2;
  const near = horizontal.filter((rule) => rule.at > below && rule.to > from - 20 && rule.from < to + 20);
  const lefts = near.filter((rule) => rule.to < middle);
  const rights = near.filter((rule) => rule.from > middle);
  const room = Math.min(to, ...rights.map((it) => it.from)) - Math.max(from, ...lefts.map((it) => it.to));
  return room >= 8 && Math.max(groupsOf(lefts).length, groupsOf(rights).length) >= 3;
}

/** Strips at least as wide as a line is high, empty over the lower three quarters of the page's lines or more. */
function stripsOf(lines: readonly TextLine[], low: number, high: number): Strip[] {
  const found: Strip[] = [];
  for (const start of [0, Math.floor(lines.length / 8), Math.floor(lines.length / 4)]) {
    const below = lines.slice(start);
    const size = below[0]?.size ?? 10;
    const pieces = below.flatMap((line) => line.pieces).sort((a, b) => a.left - b.left);
    let covered = Number.NEGATIVE_INFINITY;
    for (const piece of pieces) {
      const wide = piece.left - covered >= size;
      const middle = (piece.left + covered) / 2;
      if (wide && middle > low && middle < high)
        found.push({ from: covered, to: piece.left, below: firstClear(lines, covered, piece.left) });
      covered = Math.max(covered, piece.right);
    }
  }
  return found.sort((a, b) => b.to - b.from - (a.to - a.from));
}

/** The height just above the first line from which on nothing crosses the strip. */
function firstClear(lines: readonly TextLine[], from: number, to: number): number {
  const crossing = lines.findLastIndex((line) =>
    line.pieces.some((piece) => piece.left < to - 1 && piece.right > from + 1),
  );
  const line = lines[crossing + 1];
  return line ? line.y - line.size : Number.NEGATIVE_INFINITY;
}

function isBetweenColumns(lines: readonly TextLine[], { from, to, below }: Strip): boolean {
  const middle = (from + to) / 2;
  const under = lines.filter((line) => line.y >= below);
  const sides = under.map((line) => ({
    left: line.pieces.filter((piece) => piece.left < middle),
    right: line.pieces.filter((piece) => piece.left >= middle),
  }));
  const lefts = sides.filter((it) => it.left.length > 0).map((it) => it.left);
  const rights = sides.filter((it) => it.right.length > 0).map((it) => it.right);
  if (lefts.length < 4 || rights.length < 4) return false;
  const sameFirst = lefts[0]?.[0]?.text === rights[0]?.[0]?.text;
  if (sameFirst && isList(lefts)) return true;
  if ([isList, isProse].some((is) => is(lefts) && is(rights))) return true;
  // A list of lines beside what everybody hears, "Ada: lots of fiddle": each of its own length and height.
  const shorter = Math.min(lefts.length, rights.length) < 0.9 * under.length;
  return shorter && [lefts, rights].every(isOneEach) && [lefts, rights].some(isLabelled);
}

/** Each line is one run of text: no table has columns there. */
const isOneEach = (lines: Side[]): boolean =>
  lines.filter((pieces) => pieces.length === 1).length >= 0.9 * lines.length;

/** Several lines begin with a name and a colon. */
const isLabelled = (lines: Side[]): boolean =>
  lines.filter(([first]) => /^\p{Lu}[^:]{1,30}:\s+\S/u.test(first?.text ?? '')).length >= 2;

type Side = { text: string }[];

/** A list whose lines begin with rising numbers of their own. */
function isList(lines: Side[]): boolean {
  const numbers = lines.map(([first]) => Number(/^\d{1,3}\b/.exec(first?.text ?? '')?.[0] ?? Number.NaN));
  const rising = numbers.slice(1).filter((number, place) => number > (numbers[place] ?? Number.NaN)).length;
  return rising >= 0.6 * (lines.length - 1);
}

/** Prose: most lines are one long piece. */
function isProse(lines: Side[]): boolean {
  const long = lines.filter((pieces) => pieces.length === 1 && (pieces[0]?.text.length ?? 0) > 30);
  return long.length >= 0.5 * lines.length;
}
