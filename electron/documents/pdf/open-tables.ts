import { columnsOfStrips, mergedStrips, type Strips, stripsOfLines } from './columns.ts';
import type { TextLine } from './text-lines.ts';
import { reachOf, rowsOfLines, type Shape } from './wrapped-cells.ts';

/** Lines that follow each other closely: a part of a table without drawn lines, prose, or both. */
export type Run = Shape & { lines: TextLine[]; strips: Strips };

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
    const reach = reachOf(
      columns,
      group.map((run) => run.lines),
    );
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
  const rows = withNumbersApart(rowsOfLines(run, run.lines));
  const table = rows.findIndex((row) => row.filter((cell) => cell !== '').length > 1);
  // What stands alone above a table is a title; that it is centred says nothing of a column.
  return rows.map((row, place) => (place < table ? row.filter((cell) => cell !== '') : row));
}

/** "1 Kick", "15/16 Keys": a number at the right of its column nearly touches the text of the next. */
const numberInFront = /^(\d{1,3}(?:\s?[/+&–-]\s?\d{1,3})?) (\S.*)$/;

/** Such numbers go back into the first column where it has a heading and nearly no row has anything else in it. */
function withNumbersApart(rows: string[][]): string[][] {
  const inside = rows.filter((row) => (row[1] ?? '') !== '' && row.filter((cell) => cell !== '').length > 1);
  const numbered = inside.filter((row) => row[0] === '' && numberInFront.test(row[1] ?? ''));
  const others = inside.filter((row) => row[0] === '').length - numbered.length;
  if (numbered.length < 3 || others > numbered.length / 4 || numbered.length === inside.length) return rows;
  return rows.map((row) => {
    const [, number, text] = (row[0] === '' && numberInFront.exec(row[1] ?? '')) || [];
    return number && text ? [number, text, ...row.slice(2)] : row;
  });
}
