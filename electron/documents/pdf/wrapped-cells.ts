import { type Columns, cellsOfLine, joined, piecesByColumn } from './columns.ts';
import type { TextLine } from './text-lines.ts';

/** How the rows of a table without drawn lines are told. */
export type Shape = {
  columns: Columns;
  /** Lines without a number that are nearer than this to a numbered one are parts of it, in points. */
  reach: number;
};

/** The rows that lines of a table make: the lines of one cell that wraps become one text. */
export function rowsOfLines(shape: Shape, lines: readonly TextLine[]): string[][] {
  return joinWrapped(cellsOfLines(shape.columns, lines), shape).map((row) => row.cells);
}

type Row = { y: number; cells: string[]; line: TextLine };

function cellsOfLines(columns: Columns, lines: readonly TextLine[]): Row[] {
  return lines.map((line) => ({ y: line.y, cells: cellsOfLine(line, columns), line }));
}

/** What a row of a list begins with: a number, a letter, or the name of a mix or channel with its number. */
const marked = /^(?:\d{1,3}\b|[A-Z]\d{0,2}$|(?:mix|mon|monitor|aux|bus|ch)\.? ?\d+)/i;
const isNumbered = (row: Row): boolean => marked.test(row.cells[0] ?? '');

/** Four fifths of the smallest usual distance between numbered rows of a table; 0 where there are not two. */
export function reachOf(columns: Columns, parts: readonly (readonly TextLine[])[]): number {
  const distances = parts.flatMap((lines) => {
    const numbered = cellsOfLines(columns, lines).filter(isNumbered);
    return numbered.slice(1).map((row, place) => row.y - (numbered[place]?.y ?? 0));
  });
  if (distances.length === 0) return 0;
  return 0.8 * (distances.sort((a, b) => a - b)[Math.floor(distances.length / 10)] ?? 0);
}

/**
 * A cell that wraps makes lines without a number of their own. Where they do not simply go on below their row, they are
 * closer to each other than rows are; lines as far apart as rows stay rows: the band may have forgotten their number.
 */
function joinWrapped(rows: Row[], { reach, columns }: Shape): Row[] {
  const clusters = goOnBelow(rows, columns) ? clustersBelow(rows) : clustersOf(rows, reach);
  return clusters.flatMap((cluster) => {
    const numbered = cluster.filter(isNumbered);
    if (numbered.length === 0) return cluster;
    const parts = new Map(numbered.map((row): [Row, Row[]] => [row, []]));
    for (const row of cluster) parts.get(row.cells[0] === '' ? nearest(numbered, row) : row)?.push(row);
    return cluster.flatMap((row) => {
      const own = parts.get(row);
      if (own) return [joinedRow(row, own)];
      return row.cells[0] === '' ? [] : [row];
    });
  });
}

function clustersOf(rows: readonly Row[], reach: number): Row[][] {
  const clusters: Row[][] = [];
  for (const row of rows) {
    const last = clusters.at(-1);
    if (last && row.y - (last.at(-1)?.y ?? 0) < reach) last.push(row);
    else clusters.push([row]);
  }
  return clusters;
}

/** Lines of one cell are no further apart than this, in heights of the type; lines of two cells may be nearer. */
const [leastPitch, mostPitch] = [0.8, 1.6];
/** What a table leaves free between two columns, at the least, in points. */
const leastPadding = 6;
/** More lines than these do not stand so close. */
const linesLookedAt = 4;

/**
 * True where cells begin at the height of their number and go on below it: in each column of a line without a number,
 * the text close above it had no room for one more word. Cells that are centred on their number have lines between.
 */
function goOnBelow(rows: readonly Row[], columns: Columns): boolean {
  const pieces = rows.map(({ line }) => piecesByColumn(line, columns));
  const ends = columns.map((_, column) => endOfColumn(pieces, column));
  const isFull = (above: number, place: number, column: number) => {
    const [last, first] = [pieces[above]?.[column]?.at(-1), pieces[place]?.[column]?.[0]];
    return last && first && last.right + widthOfFirstWord(first) > (ends[column] ?? 0);
  };
  return rows.every(({ cells, line }, place) => {
    const before = rows[place - 1];
    if (before && line.y - before.y < leastPitch * line.size) return false;
    if (cells[0] !== '') return true;
    const first = Math.max(0, place - linesLookedAt);
    const isAbove = (it: Row, offset: number, column: number) =>
      line.y - it.y <= mostPitch * line.size && isFull(first + offset, place, column);
    const near = rows.slice(first, place);
    return cells.every(
      (cell, column) => cell === '' || near.some((it, offset) => isAbove(it, offset, column)),
    );
  });
}

/** Where the room of a column ends: at its longest text, or short of the next column. */
function endOfColumn(pieces: readonly TextLine['pieces'][][], column: number): number {
  const right = Math.max(...pieces.flatMap((line) => line[column] ?? []).map((it) => it.right));
  const next = Math.min(...pieces.flatMap((line) => line[column + 1] ?? []).map((it) => it.left));
  return Number.isFinite(next) ? Math.max(right, next - leastPadding) : right;
}

/** With the space before it. */
function widthOfFirstWord({ text, left, right }: TextLine['pieces'][number]): number {
  const [word = ''] = text.split(' ');
  return ((word.length + 1) / Math.max(text.length, 1)) * (right - left);
}

function clustersBelow(rows: readonly Row[]): Row[][] {
  const clusters: Row[][] = [];
  for (const row of rows) {
    const last = clusters.at(-1);
    if (last && row.cells[0] === '') last.push(row);
    else clusters.push([row]);
  }
  return clusters;
}

function nearest(numbered: readonly Row[], row: Row): Row {
  return numbered.reduce((best, it) => (Math.abs(it.y - row.y) < Math.abs(best.y - row.y) ? it : best));
}

function joinedRow(row: Row, parts: readonly Row[]): Row {
  const textOf = (column: number) => parts.reduce((text, part) => joined(text, part.cells[column] ?? ''), '');
  return { ...row, cells: row.cells.map((_, column) => textOf(column)) };
}
