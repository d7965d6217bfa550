import type { Grid, LineRef } from '../grid.ts';
import { fold, tidy } from '../language/text.ts';

/** A cell with text. `column` is its place in the grid, or in a line of plain text the place of its first letter. */
export type Cell = {
  column: number;
  text: string;
  /** Where the cell holds several lines: the lines with semicolons between, for what is told item by item. */
  stacked?: string;
};

/** One line of a rider as the reader walks over it. A cell that holds several lines of text is several of these
 * with the same place. */
export type Line = {
  at: LineRef;
  /** Counts up over one grid row: 0 but for rows that hold several lines. */
  part: number;
  cells: Cell[];
  /** All cells as a person would read them. */
  text: string;
  /** Places of the lines below that were one with it before the text was broken. */
  more?: LineRef[];
  /** Cells came from gaps in one line of text: columns are only roughly aligned. */
  loose: boolean;
};

/** Letters looked at in one cell; the line's text keeps them all. */
const longestCell = 12_000;
/** Cells looked at in one row; what stands beyond is kept in the line's text but not understood. */
const widestRow = 400;

/** The lines of a sheet that are not blank, in order, up to a number of them; and the row that was not reached. */
export function linesOfSheet(grid: Grid, sheet: number, most: number): { lines: Line[]; nextRow: number } {
  const rows = grid.sheets[sheet]?.rows ?? [];
  const lines: Line[] = [];
  let nextRow = 0;
  for (; nextRow < rows.length && lines.length < most; nextRow++)
    lines.push(...linesOfRow(rows[nextRow] ?? [], { sheet, row: nextRow }));
  return { lines, nextRow };
}

/** True where a person would see nothing in the row. */
export function isBlankRow(row: readonly string[]): boolean {
  return row.every((cell) => tidy(cell) === '');
}

/** The cells of a row joined as a person would read them. */
export function textOfRow(row: readonly string[]): string {
  return row
    .map(tidy)
    .filter((cell) => cell !== '')
    .join(' | ');
}

function linesOfRow(row: readonly string[], at: LineRef): Line[] {
  const filled: Cell[] = [];
  for (let column = 0; column < row.length && filled.length < widestRow; column++) {
    const text = row[column];
    if (text !== undefined && text !== '' && tidy(text.slice(0, longestCell)) !== '')
      filled.push({ column, text: text.slice(0, longestCell) });
  }
  if (filled.length === 0) return [];
  const pieces = splitStackedRow(filled);
  return pieces.map((cells, part) => {
    const only = cells.length === 1 ? cells[0] : undefined;
    const split = only ? splitLooseText(only.text) : null;
    const tidied = (split ?? cells)
      .map((cell): Cell => {
        const tidied = { column: cell.column, text: tidy(cell.text) };
        const stacked = cell.text
          .split(/[\r\n]+/)
          .map(tidy)
          .filter(Boolean);
        return stacked.length > 1 ? { ...tidied, stacked: stacked.join('; ') } : tidied;
      })
      .filter((cell) => cell.text !== '');
    return {
      at,
      part,
      cells: tidied,
      text: tidied.map((cell) => cell.text).join(split ? '  ' : ' | '),
      loose: split !== null,
    };
  });
}

/** A row whose number cell or only cell holds several lines of text is taken apart line by line. */
function splitStackedRow(cells: Cell[]): Cell[][] {
  const stacked = cells.map((cell) => cell.text.split(/\r\n|\r|\n/).map((text) => text.trimEnd()));
  const first = stacked[0];
  const height = first?.length ?? 1;
  if (!first || height < 2) return [cells];
  const numbers = first.every((text) => /^\s*\d{1,3}\s*$/.test(text));
  const alone = cells.length === 1;
  if (!numbers && !alone) return [cells];
  return first
    .map((_, index) =>
      cells.flatMap((cell, at): Cell[] => {
        const parts = stacked[at] ?? [];
        const text =
          parts.length === height ? parts[index] : index === 0 || parts.length === 1 ? cell.text : '';
        return text && tidy(text) !== '' ? [{ column: cell.column, text }] : [];
      }),
    )
    .filter((line) => line.length > 0);
}

/** Plain text whose columns are told by tabs, bars or wide gaps, or null where it is one run of words. */
function splitLooseText(text: string): Cell[] | null {
  if (text.includes('\t')) return splitBy(text, /\t+/g);
  if ((text.match(/\|/g)?.length ?? 0) >= 1) return splitBy(text, /\|/g);
  if ((text.match(/;/g)?.length ?? 0) >= 3 && !/;\s*\p{Ll}{3,}\s+\p{Ll}/u.test(text))
    return splitBy(text, /;/g);
  const wide = text.trimEnd().replace(/^\s+/, (spaces) => '\u00a0'.repeat(spaces.length));
  if (/[^\s.!?:,] {2,}\S/.test(wide)) return splitBy(wide, /(?<=\S) {2,}(?=\S)/g);
  return null;
}

function splitBy(text: string, gap: RegExp): Cell[] | null {
  const cells: Cell[] = [];
  let start = 0;
  for (const found of text.matchAll(gap)) {
    pushPiece(cells, text.slice(start, found.index), start);
    start = found.index + found[0].length;
  }
  pushPiece(cells, text.slice(start), start);
  return cells.length > 0 ? cells : null;
}

function pushPiece(cells: Cell[], piece: string, start: number): void {
  const lead = piece.length - piece.trimStart().length;
  if (piece.trim() !== '') cells.push({ column: start + lead, text: piece.trim() });
}

/** Rulers and frames: a line without a letter or digit says nothing. */
export function saysNothing(text: string): boolean {
  return !/[\p{L}\p{N}]/u.test(fold(text));
}

/** Words by which a rider leaves a channel empty. A reserve is a line: somebody may need it. */
const empty =
  /^[-–—(\s]*(?:frei(?:er kanal)?|leer|unbelegt|nicht (?:belegt|benutzt)|libre|vide|non utilise|inutilise|libero|vuoto|non (?:usato|utilizzato)|vrij|leeg|niet (?:gebruikt|in gebruik)|ongebruikt|livre|vago|vazio|nao (?:usado|utilizado)|vacio|sin uso|sin usar|no (?:usado|se usa)|free|empty|unused|not (?:used|in use)|blank|n[/']?a|nvt)[-–—)\s.]*$/;

/** "frei", "libero": the channel is there and nothing is plugged into it. */
export const saysEmpty = (text: string): boolean => saysNothing(text) || empty.test(fold(text));
