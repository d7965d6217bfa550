import type { Rule } from './page-marks.ts';
import type { TextLine } from './text-lines.ts';

/** Left edges of the columns of a table, from left to right; the first is minus infinity. */
export type Columns = number[];

/** Strips that text covers, from left to right and apart from each other: one for each column of a table. */
export type Strips = readonly { from: number; to: number }[];

/** The strips that lines with several pieces cover together; a line of one piece is prose or a heading. */
export function stripsOfLines(lines: readonly TextLine[]): Strips {
  return withPieces(
    [],
    lines.filter((line) => line.pieces.length > 1).flatMap((line) => line.pieces),
  );
}

export function mergedStrips(a: Strips, b: Strips): Strips {
  return withPieces(
    a,
    b.map(({ from, to }) => ({ left: from, right: to })),
  );
}

function withPieces(strips: Strips, pieces: readonly { left: number; right: number }[]): Strips {
  const all = [...strips, ...pieces.map(({ left, right }) => ({ from: left, to: right }))];
  const merged: { from: number; to: number }[] = [];
  for (const { from, to } of all.sort((x, y) => x.from - y.from)) {
    const last = merged.at(-1);
    if (last && from <= last.to + 1) last.to = Math.max(last.to, to);
    else merged.push({ from, to });
  }
  return merged;
}

/** A column begins half way between two strips. */
export function columnsOfStrips(strips: Strips): Columns {
  const edges = strips.slice(1).map((strip, place) => ((strips[place]?.to ?? strip.from) + strip.from) / 2);
  return [Number.NEGATIVE_INFINITY, ...edges];
}

/** Columns by the lines that are drawn between them: those that run along at least half of the table's height. */
export function columnsOfRules(vertical: readonly Rule[], top: number, bottom: number): Columns {
  const inside = vertical.filter((rule) => rule.from < bottom && rule.to > top);
  const drawn = groupsOf(inside)
    .filter((group) => covered(group, top, bottom) >= 0.5)
    .map((group) => group[0]?.at ?? 0);
  // The frame's own edges part nothing.
  const between = drawn.slice(1, -1);
  return [Number.NEGATIVE_INFINITY, ...between];
}

/** The pieces of a line by column: each belongs to the column in which it begins. */
export function piecesByColumn(line: TextLine, columns: Columns): TextLine['pieces'][] {
  const pieces = columns.map((): TextLine['pieces'] => []);
  for (const piece of line.pieces)
    pieces[columns.findLastIndex((left) => piece.left >= left - 1)]?.push(piece);
  return pieces;
}

/** The cells of a line. */
export function cellsOfLine(line: TextLine, columns: Columns): string[] {
  return piecesByColumn(line, columns).map((pieces) =>
    pieces.reduce((text, piece) => joined(text, piece.text), ''),
  );
}

export function joined(first: string, second: string): string {
  return first === '' || second === '' ? first + second : `${first} ${second}`;
}

/** Rules at the same place, in the order of their place. */
export function groupsOf(rules: readonly Rule[]): Rule[][] {
  const groups: Rule[][] = [];
  for (const rule of [...rules].sort((a, b) => a.at - b.at)) {
    const last = groups.at(-1);
    if (last && rule.at - (last.at(-1)?.at ?? 0) <= 2) last.push(rule);
    else groups.push([rule]);
  }
  return groups;
}

/** Which part of a stretch rules at one place cover, 0 to 1. */
export function covered(rules: readonly Rule[], from: number, to: number): number {
  let sum = 0;
  let reached = from;
  for (const rule of [...rules].sort((a, b) => a.from - b.from)) {
    const start = Math.max(rule.from, reached);
    const end = Math.min(rule.to, to);
    if (end > start) {
      sum += end - start;
      reached = end;
    }
  }
  return to > from ? sum / (to - from) : 0;
}
