import Papa from 'papaparse';
import { limits } from './limits.ts';

export type Delimiter = ',' | ';' | '\t' | '|';

/** Candidates in the order in which a tie is settled: a comma is also a mark of prose, so it comes last. */
const delimiters: readonly Delimiter[] = ['\t', ';', '|', ','];

/**
 * The delimiter of a table in text, or null where the text is prose. It is told by content: most lines hold the
 * same number of cells. A first line "sep=;" says it outright (spreadsheet practice).
 */
export function findDelimiter(text: string): Delimiter | null {
  const declared = /^sep=([,;\t|])\r?\n/.exec(text)?.[1];
  if (declared) return declared as Delimiter;
  const sample = text.slice(0, 200_000);
  const scored = delimiters
    .map((delimiter) => ({ delimiter, score: tableScore(sample, delimiter) }))
    .filter(({ score }) => score > 0)
    .sort((a, b) => b.score - a.score);
  return scored[0]?.delimiter ?? null;
}

/** Rows of cells as RFC 4180 reads them, with the given delimiter. Blank lines stay as rows with an empty cell. */
export function rowsFromDelimited(text: string, delimiter: Delimiter): string[][] {
  const body = text.replace(/^sep=[,;\t|]\r?\n/, '');
  const quoted = parse(body, delimiter, '"');
  // A quote that is never closed would swallow the rest of the file into one cell: then quotes are plain text.
  const rows = quoted.errors.some((error) => error.type === 'Quotes')
    ? parse(body, delimiter, '\u0000').data
    : quoted.data;
  // The text ends with a line break, and after it is no row.
  if (rows.length > 1 && rows.at(-1)?.length === 1 && rows.at(-1)?.[0] === '') rows.pop();
  return delimiter === '|' ? rows.map(withoutFrame) : rows;
}

function parse(text: string, delimiter: Delimiter, quoteChar: string, preview: number = limits.rows + 1) {
  return Papa.parse<string[]>(text, { delimiter, quoteChar, preview });
}

/** A table drawn with bars has one at both ends: they frame it and are no cells. */
function withoutFrame(row: string[]): string[] {
  const cells = row.map((cell) => cell.trim());
  if (cells.length < 3 || cells[0] !== '' || cells.at(-1) !== '') return cells;
  return cells.slice(1, -1);
}

/** 0: no table. Else larger where more lines agree and there are more columns. */
function tableScore(text: string, delimiter: Delimiter): number {
  if (!text.includes(delimiter)) return 0;
  const rows = parse(text, delimiter, '"', 300).data.filter((row) => row.some((cell) => cell.trim() !== ''));
  const widths = new Map<number, number>();
  for (const row of rows) widths.set(row.length, (widths.get(row.length) ?? 0) + 1);
  const [width, agreeing] = [...widths].filter(([columns]) => columns > 1).sort((a, b) => b[1] - a[1])[0] ?? [
    1, 0,
  ];
  const split = rows.filter((row) => row.length > 1).length;
  if (width < 2 || split / rows.length < 0.5) return 0;
  if (delimiter === ',' && isProse(rows, width)) return 0;
  return (split + agreeing) * Math.min(width, 12) * (delimiter === ',' ? 0.9 : 1);
}

/** Commas of prose stand before a space and split lines at random; those of a table do neither. */
function isProse(rows: string[][], width: number): boolean {
  const later = rows.flatMap((row) => row.slice(1));
  const spaced = later.filter((cell) => /^\s\S/.test(cell)).length / later.length;
  const agreeing = rows.filter((row) => row.length === width).length / rows.length;
  const long = later.filter((cell) => cell.trim().split(/\s+/).length > 8).length / later.length;
  return spaced > 0.5 || (width < 3 && agreeing < 0.8) || long > 0.3;
}
