import {
  type Columns,
  cellsOfLine,
  columnsOfStrips,
  joined,
  mergedStrips,
  type Strips,
  stripsOfLines,
} from './columns.ts';
import type { TextLine } from './text-lines.ts';

/** Lines that follow each other closely: a part of a table without drawn lines, prose, or both. */
export type Run = {
  lines: TextLine[];
  strips: Strips;
  columns: Columns;
  /** Lines without a number that are nearer than this to a numbered one are parts of it, in points. */
  reach: number;
};

/** Lines further apart than this, in heights of the type, do not belong to one table. */
const widestGap = 3;

/** Cuts lines into runs: where there is a gap, and where a line does not fit the columns before it. */
export function runsOfLines(lines: readonly TextLine[]): Run[] {
  const runs: Run[] = [];
  let last: TextLine | null = null;
  for (const line of lines) {
    const run = runs.at(-1);
    const strips = stripsOfLines([line]);
    const near = last !== null && line.y - last.y <= widestGap * Math.max(line.size, last.size);
    if (run && near && belong(run.strips, strips)) {
      run.lines.push(line);
      run.strips = mergedStrips(run.strips, strips);
    } else runs.push({ lines: [line], strips, columns: [], reach: 0 });
    last = line;
  }
  return runs;
}

/** Two parts fit one table where no column of either is lost by putting them together. */
function belong(a: Strips, b: Strips): boolean {
  return mergedStrips(a, b).length >= Math.max(a.length, b.length);
}

/**
 * Gives runs that are parts of one table the same columns: parts are cut by a gap, by the end of a page or by a line
 * that runs across, and an empty cell in one part must not move the others.
 */
export function shareColumns(runs: readonly Run[]): void {
  const tables = runs.filter((run) => run.strips.length > 0);
  let group: Run[] = [];
  let strips: Strips = [];
  const close = () => {
    const columns = columnsOfStrips(withoutHalfColumns(strips, group));
    for (const run of group) run.columns = columns;
    const reach = reachOf(group);
    for (const run of group) run.reach = reach;
    group = [];
    strips = [];
  };
  tables.forEach((run, place) => {
    const next = tables[place + 1];
    const together = mergedStrips(strips, run.strips);
    const few = run.lines.length <= 2 && strips.length > 0;
    // One or two lines make no column: a page's footer, or a line that runs across and is followed by more of the table.
    if (few && together.length > strips.length) run.columns = columnsOfStrips(run.strips);
    else if (belong(strips, run.strips)) {
      strips = together;
      group.push(run);
    } else if (few && next && belong(strips, next.strips)) group.push(run);
    else {
      close();
      strips = run.strips;
      group.push(run);
    }
  });
  close();
}

/**
 * A heading that is not over its column ("#" at the left of numbers that stand to the right) makes a column of its
 * own, in which nothing else stands. Such a column and its neighbour are one where no line has text in both.
 */
function withoutHalfColumns(strips: Strips, runs: readonly Run[]): Strips {
  const lines = runs.flatMap((run) => run.lines).filter((line) => line.pieces.length > 1);
  const usersOf = ({ from, to }: Strips[number]) =>
    new Set(
      lines.filter((line) => line.pieces.some((piece) => piece.left >= from - 1 && piece.right <= to + 1)),
    );
  const merged: { from: number; to: number }[] = [];
  for (const strip of strips) {
    const last = merged.at(-1);
    const [before, here] = [last ? usersOf(last) : new Set<TextLine>(), usersOf(strip)];
    const few = Math.min(before.size, here.size) <= 1 && Math.max(before.size, here.size) >= 3;
    if (last && few && ![...here].some((line) => before.has(line))) last.to = strip.to;
    else merged.push({ ...strip });
  }
  return merged;
}

export function rowsOfRun(run: Run): string[][] {
  if (run.columns.length === 0) return run.lines.map((line) => line.pieces.map((piece) => piece.text));
  const rows = rowsOfLines(run, run.lines);
  const table = rows.findIndex((row) => row.filter((cell) => cell !== '').length > 1);
  // What stands alone above a table is a title; that it is centred says nothing of a column.
  return rows.map((row, place) => (place < table ? row.filter((cell) => cell !== '') : row));
}

/** The rows that some lines of a run make. */
export function rowsOfLines(run: Run, lines: readonly TextLine[]): string[][] {
  return joinWrapped(cellsOfLines(run, lines), run).map((row) => row.cells);
}

type Row = { y: number; cells: string[]; line: TextLine };

function cellsOfLines({ columns }: Run, lines: readonly TextLine[]): Row[] {
  return lines.map((line) => ({ y: line.y, cells: cellsOfLine(line, columns), line }));
}

/** What a row of a list begins with: a number, a letter, or the name of a mix or channel with its number. */
const marked = /^(?:\d{1,3}\b|[A-Z]\d{0,2}$|(?:mix|mon|monitor|aux|bus|ch)\.? ?\d+)/i;
const isNumbered = (row: Row): boolean => marked.test(row.cells[0] ?? '');

/** Four fifths of the smallest usual distance between numbered rows of a table; 0 where there are not two. */
function reachOf(runs: readonly Run[]): number {
  const distances = runs.flatMap((run) => {
    const numbered = cellsOfLines(run, run.lines).filter(isNumbered);
    return numbered.slice(1).map((row, place) => row.y - (numbered[place]?.y ?? 0));
  });
  if (distances.length === 0) return 0;
  return 0.8 * (distances.sort((a, b) => a - b)[Math.floor(distances.length / 10)] ?? 0);
}

/**
 * A cell that wraps makes lines without a number of their own. Where they do not simply go on below their row, they are
 * closer to each other than rows are; lines as far apart as rows stay rows: the band may have forgotten their number.
 */
function joinWrapped(rows: Row[], { reach, columns }: Run): Row[] {
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

/**
 * True where cells begin at the height of their number and go on below it: in each column of a line without a number,
 * the text close above it had no room for one more word. Cells that are centred on their number have lines between.
 */
function goOnBelow(rows: readonly Row[], columns: Columns): boolean {
  const inColumn = (line: TextLine, column: number) =>
    line.pieces.filter(({ left }) => columns.findLastIndex((edge) => left >= edge - 1) === column);
  const piecesIn = (column: number) => rows.flatMap(({ line }) => inColumn(line, column));
  const ends = columns.map((_, column) => {
    const next = Math.min(...piecesIn(column + 1).map(({ left }) => left)) - leastPadding;
    return Math.max(...piecesIn(column).map(({ right }) => right), Number.isFinite(next) ? next : 0);
  });
  const isFull = (above: TextLine, line: TextLine, column: number) => {
    const [last, first] = [inColumn(above, column).at(-1), inColumn(line, column)[0]];
    return last && first && last.right + widthOfFirstWord(first) > (ends[column] ?? 0);
  };
  return rows.every(({ cells, line }, place) => {
    const before = rows[place - 1];
    if (before && line.y - before.y < leastPitch * line.size) return false;
    if (cells[0] !== '') return true;
    const near = rows.slice(0, place).filter((it) => line.y - it.y <= mostPitch * line.size);
    return cells.every((cell, column) => cell === '' || near.some((it) => isFull(it.line, line, column)));
  });
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
