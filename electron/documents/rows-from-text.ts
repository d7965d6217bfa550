import { limits } from './limits.ts';

/**
 * Rows of a plain text: each line is a row. A line of prose is one cell; lines with tabs, and lines of a block
 * that stand in columns by runs of spaces, are split, for that is how a table looks in a mail.
 */
export function rowsFromText(text: string): string[][] {
  const lines = text.split(/\r\n|[\n\r\u0085\u2028\u2029\f\v]/);
  if (lines.at(-1) === '') lines.pop();
  // Far too many lines are not looked at: one more than is read is enough to refuse them.
  if (lines.length > limits.rows) return lines.slice(0, limits.rows + 1).map((line) => [line]);
  return blocksOf(lines).flatMap(rowsOfBlock);
}

/** Runs of lines without a blank one among them; a blank line is a block of its own. */
function blocksOf(lines: string[]): string[][] {
  const blocks: string[][] = [];
  for (const line of lines) {
    const last = blocks.at(-1);
    const joins = last && isBlank(line) === isBlank(last[0] ?? '');
    if (joins) last.push(line);
    else blocks.push([line]);
  }
  return blocks;
}

const isBlank = (line: string): boolean => line.trim() === '';
const gap = /[ \u00a0]{2,}/;
/** No table in a mail is wider; the search for columns costs lines times width. */
const widestTable = 1_000;

function rowsOfBlock(lines: string[]): string[][] {
  if (isBlank(lines[0] ?? '')) return lines.map(() => ['']);
  const spaced = lines.filter((line) => !line.includes('\t') && gap.test(line.trim()));
  const isTable =
    spaced.length >= 2 &&
    spaced.length >= lines.length * 0.6 &&
    spaced.every((line) => line.length <= widestTable);
  const cut = isTable ? cutterOf(spaced) : (line: string) => [line.trim()];
  return withRangesApart(
    lines.map((line) => (line.includes('\t') ? line.split('\t').map((cell) => cell.trim()) : cut(line))),
  );
}

/** "16-17 Keys": two numbers that filled their column and ran into the next. */
const rangeInFront = /^(\d{1,3}\s?[-–/+&]\s?\d{1,3}) (\p{L}.*)$/u;
/** Fewer rows that begin with a number make no column of numbers. */
const fewestNumbers = 3;

function withRangesApart(rows: string[][]): string[][] {
  const numbered = rows.filter((row) => row.length > 1 && /^\d{1,3}$/.test(row[0] ?? ''));
  if (numbered.length < fewestNumbers) return rows;
  return rows.map((row) => {
    const [, numbers, text] = rangeInFront.exec(row[0] ?? '') ?? [];
    return row.length > 1 && numbers && text ? [numbers, text, ...row.slice(1)] : row;
  });
}

/** How the lines of a table are cut: at the blank columns they all share, else at each run of spaces. */
function cutterOf(lines: string[]): (line: string) => string[] {
  const bySpaces = (line: string) => line.trim().split(gap);
  const starts = columnStarts(lines);
  const byColumns = (line: string) =>
    trimEnd(starts.map((start, place) => line.slice(start, starts[place + 1]).trim()));
  // A gap left inside a cell shows that the lines do not stand in common columns.
  const aligned = starts.length > 1 && !lines.some((line) => byColumns(line).some((cell) => gap.test(cell)));
  if (!aligned) return bySpaces;
  return (line) => {
    // A line that runs across the columns, such as a heading inside the block, is not cut through its words.
    const crosses = starts.some((start) => start > 0 && /\S/.test(line[start - 1] ?? ' '));
    return crosses ? bySpaces(line) : byColumns(line);
  };
}

/**
 * Where columns begin: after a character column that is blank in every line, and that at least half of the lines
 * set off with a second blank or that ends a column of numbers ("14 Lead vocal" is two columns all the same).
 */
function columnStarts(lines: string[]): number[] {
  const width = Math.max(...lines.map((line) => line.length));
  const isBlankAt = (line: string, at: number) => (line[at] ?? ' ').trim() === '';
  const starts: number[] = [];
  let gutter = true;
  for (let at = 0; at < width; at += 1) {
    const blank = lines.every((line) => isBlankAt(line, at));
    if (!blank && gutter) {
      const setOff = lines.filter((line) => isBlankAt(line, at - 1) && isBlankAt(line, at - 2)).length;
      const numbers = lines.every((line) => /^[\d.:)#]*$/.test(line.slice(starts.at(-1) ?? 0, at).trim()));
      if (starts.length === 0 || setOff * 2 >= lines.length || numbers) starts.push(at);
    }
    gutter = blank;
  }
  return starts;
}

function trimEnd(cells: string[]): string[] {
  const last = cells.findLastIndex((cell) => cell !== '');
  return cells.slice(0, Math.max(last + 1, 1));
}
