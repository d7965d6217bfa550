import { type Columns, cellsOfLine, columnsOfRules, covered, groupsOf, joined } from './columns.ts';
import { type Run, runsOfLines, shareColumns } from './open-tables.ts';
import type { PageMarks, Rule } from './page-marks.ts';
import type { TextLine } from './text-lines.ts';
import { rowsOfLines } from './wrapped-cells.ts';

/** A table whose rows are parted by drawn lines or coloured stripes. `bands` are the heights between them. */
export type RuledTable = { top: number; bottom: number; separators: Rule[][]; vertical: Rule[] };

/** The tables that are drawn on a page: at least three lines one below the other that run along the same width. */
export function findRuledTables({ horizontal, vertical }: PageMarks): RuledTable[] {
  const tables: RuledTable[] = [];
  let run: Rule[][] = [];
  const close = () => {
    const [top, bottom] = [run[0]?.[0]?.at, run.at(-1)?.[0]?.at];
    if (top !== undefined && bottom !== undefined)
      tables.push(...partedByColumns({ top, bottom, separators: run, vertical }));
    run = [];
  };
  for (const group of groupsOf(horizontal)) {
    const last = run.at(-1);
    if (last && !belongTogether(last, group)) close();
    run.push(group);
  }
  close();
  return tables.filter((table) => table.separators.length >= 3);
}

/** Two tables of one width, one below the other: nothing is drawn between them, and below it the columns are others. */
function partedByColumns(table: RuledTable): RuledTable[] {
  const { separators, vertical } = table;
  const heights = separators.map((group) => group[0]?.at ?? 0);
  const bands = heights.slice(1).map((bottom, place) => {
    const y = ((heights[place] ?? 0) + bottom) / 2;
    return groupsOf(vertical.filter((rule) => rule.from < y && rule.to > y)).map(
      (group) => group[0]?.at ?? 0,
    );
  });
  const gap = bands.findIndex((places, at) => {
    const [above, below] = [bands[at - 1], bands[at + 1]];
    return places.length === 0 && above?.length && below?.length && !isSameColumns(above, below);
  });
  if (gap < 0) return [table];
  const [upper, lower] = [separators.slice(0, gap + 1), separators.slice(gap + 1)];
  const [end, start] = [heights[gap] ?? 0, heights[gap + 1] ?? 0];
  return [
    { ...table, bottom: end, separators: upper },
    ...partedByColumns({ ...table, top: start, separators: lower }),
  ];
}

const isSameColumns = (a: readonly number[], b: readonly number[]) =>
  a.length === b.length && a.every((at, place) => Math.abs(at - (b[place] ?? 0)) <= 2);

/** No row of a rider is higher than this, in points: lines further apart belong to different tables. */
const highestRow = 220;

function belongTogether(upper: Rule[], lower: Rule[]): boolean {
  const [a, b] = [extentOf(upper), extentOf(lower)];
  const shared = Math.min(a.to, b.to) - Math.max(a.from, b.from);
  const near = (lower[0]?.at ?? 0) - (upper[0]?.at ?? 0) <= highestRow;
  return near && shared >= 0.6 * Math.max(a.to - a.from, b.to - b.from);
}

function extentOf(rules: Rule[]): Extent {
  return { from: Math.min(...rules.map((it) => it.from)), to: Math.max(...rules.map((it) => it.to)) };
}

/**
 * The table with the row above and the row below it that its lines do not enclose: where every second row is a
 * coloured stripe, the first or the last row may stand outside of all stripes. Below `limit` another table begins.
 */
export function withOuterRows(table: RuledTable, lines: readonly TextLine[], limit: number): RuledTable {
  const many = lines.filter((line) => line.pieces.length > 1);
  const above = many.findLast((line) => line.y <= table.top && table.top - line.y <= line.size);
  const below = many.find(({ y, size }) => y > table.bottom && y - table.bottom <= 2 * size && y < limit);
  const { from, to } = extentOf(table.separators.flat());
  const top = above ? above.y - 1.5 * above.size : table.top;
  const bottom = below ? below.y + 0.5 * below.size : table.bottom;
  const separators = [
    ...(above ? [[{ at: top, from, to }]] : []),
    ...table.separators,
    ...(below ? [[{ at: bottom, from, to }]] : []),
  ];
  return { ...table, top, bottom, separators };
}

/**
 * Rows of a drawn table: the lines of one cell that wraps become one text. Where only some lines are drawn, as
 * under a heading, lines of text with a first cell of their own stay rows of their own.
 */
export function rowsOfRuledTable(table: RuledTable, lines: readonly TextLine[]): string[][] {
  const drawn = columnsOfRules(table.vertical, table.top, table.bottom);
  const runs = runsWithColumns(lines, drawn.length > 1 ? drawn : null);
  const extent = extentOf(table.separators.flat());
  const bands = table.separators.slice(1).flatMap((below, place): Band[] => {
    const above = table.separators[place] ?? [];
    const [top, bottom] = [above[0]?.at ?? 0, below[0]?.at ?? 0];
    const inside = lines.filter((line) => line.y > top && line.y <= bottom + 1);
    if (inside.length === 0) return [];
    const isParted = hasLineBetween(table, (top + bottom) / 2, extent);
    if (table.vertical.length > 0 && !isParted && inside.length === 1 && inside[0]?.pieces.length === 1)
      return [{ below, rows: [[inside[0].pieces[0]?.text ?? '']], isHeading: true }];
    if (isParted && drawn.length > 1)
      return [{ below, rows: [joinedCells(inside, drawn)], isHeading: false }];
    const rows = runs.flatMap((run) => {
      const own = inside.filter((line) => run.lines.includes(line));
      return own.length === 0 ? [] : rowsOfBand(own, run);
    });
    return [{ below, rows, isHeading: false }];
  });
  if (drawn.length > 1) repeatMergedCells(bands, drawn, extent);
  return bands.flatMap((band) => band.rows);
}

/** Where no columns are drawn, lines have them by where their text stands: under one frame may be several tables. */
function runsWithColumns(lines: readonly TextLine[], drawn: Columns | null): Run[] {
  const runs = runsOfLines(lines);
  shareColumns(runs);
  return drawn ? runs.map((run) => ({ ...run, columns: drawn })) : runs;
}

type Band = { below: Rule[]; rows: string[][]; isHeading: boolean };
type Extent = { from: number; to: number };

/** True where a line parts the cells of a row. One text in a row that none parts is a heading over those that follow. */
function hasLineBetween({ vertical }: RuledTable, y: number, { from, to }: Extent): boolean {
  return vertical.some((rule) => rule.from < y && rule.to > y && rule.at > from + 2 && rule.at < to - 2);
}

/** One row, or the rows of a band in which several lines have a first cell. */
function rowsOfBand(lines: readonly TextLine[], run: Run): string[][] {
  if (run.columns.length === 0) return lines.map((line) => line.pieces.map((piece) => piece.text));
  const firsts = lines.filter((line) => cellsOfLine(line, run.columns)[0] !== '').length;
  return firsts > 1 ? rowsOfLines(run, lines) : [joinedCells(lines, run.columns)];
}

function joinedCells(lines: readonly TextLine[], columns: Columns): string[] {
  const rows = lines.map((line) => cellsOfLine(line, columns));
  return columns.map((_, column) => rows.reduce((text, row) => joined(text, row[column] ?? ''), ''));
}

/** A cell that runs over several rows has no line below it there; its text holds for each of them. */
function repeatMergedCells(bands: Band[], columns: Columns, table: Extent): void {
  columns.forEach((left, column) => {
    const [from, to] = [
      Math.max(left, table.from) + 3,
      Math.min(columns[column + 1] ?? table.to, table.to) - 3,
    ];
    let span: Band[] = [];
    for (const band of bands) {
      if (band.isHeading) {
        span = [];
        continue;
      }
      span.push(band);
      if (covered(band.below, from, to) < 0.5 && band !== bands.at(-1)) continue;
      const text = span.reduce((sum, it) => joined(sum, it.rows[0]?.[column] ?? ''), '');
      for (const { rows } of span) if (rows[0] && span.length > 1) rows[0][column] = text;
      span = [];
    }
  });
}
