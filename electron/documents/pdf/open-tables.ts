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
    const columns = columnsOfStrips(strips);
    for (const run of group) run.columns = columns;
    const reach = reachOf(group);
    for (const run of group) run.reach = reach;
    group = [];
    strips = [];
  };
  tables.forEach((run, place) => {
    const next = tables[place + 1];
    const runsAcross =
      run.lines.length <= 2 && next !== undefined && strips.length > 0 && belong(strips, next.strips);
    if (belong(strips, run.strips)) strips = mergedStrips(strips, run.strips);
    else if (!runsAcross) {
      close();
      strips = run.strips;
    }
    group.push(run);
  });
  close();
}

export function rowsOfRun(run: Run): string[][] {
  if (run.columns.length === 0) return run.lines.map((line) => line.pieces.map((piece) => piece.text));
  return joinWrapped(cellsOfRun(run), run.reach).map((row) => row.cells);
}

type Row = { y: number; cells: string[] };

function cellsOfRun(run: Run): Row[] {
  return run.lines.map((line) => ({ y: line.y, cells: cellsOfLine(line, run.columns) }));
}

const isNumbered = (row: Row): boolean => /^\d{1,3}\b/.test(row.cells[0] ?? '');

/** Four fifths of the usual distance between numbered rows of a table; 0 where it has hardly any. */
function reachOf(runs: readonly Run[]): number {
  const distances = runs.flatMap((run) => {
    const numbered = cellsOfRun(run).filter(isNumbered);
    return numbered.slice(1).map((row, place) => row.y - (numbered[place]?.y ?? 0));
  });
  if (distances.length < 3) return 0;
  return 0.8 * (distances.sort((a, b) => a - b)[Math.floor(distances.length / 2)] ?? 0);
}

/**
 * A cell that wraps makes lines without a number of their own, closer to their numbered line than rows are to each
 * other. Lines as far apart as rows stay rows: they may be lines the band forgot to number.
 */
function joinWrapped(rows: Row[], reach: number): Row[] {
  const numbered = rows.filter(isNumbered);
  if (numbered.length === 0) return rows;
  const kept: Row[] = [];
  const wrapped = new Map<Row, Row[]>();
  for (const row of rows) {
    const nearest = numbered.reduce((best, it) =>
      Math.abs(it.y - row.y) < Math.abs(best.y - row.y) ? it : best,
    );
    const joins = row.cells[0] === '' && Math.abs(nearest.y - row.y) < reach;
    if (joins) wrapped.set(nearest, [...(wrapped.get(nearest) ?? []), row]);
    else kept.push(row);
  }
  return kept.map((row) => withWrapped(row, wrapped.get(row) ?? []));
}

function withWrapped(row: Row, wrapped: readonly Row[]): Row {
  const parts = [...wrapped, row].sort((a, b) => a.y - b.y);
  const textOf = (column: number) => parts.reduce((text, part) => joined(text, part.cells[column] ?? ''), '');
  return { y: row.y, cells: row.cells.map((_, column) => textOf(column)) };
}
