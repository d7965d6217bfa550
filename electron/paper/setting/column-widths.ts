import { cellText } from '../../../core/sheets/cell-text.ts';
import type { Column, TablePart } from '../../../core/sheets/sheet.ts';
import type { TypeCase } from '../fonts/type-case.ts';
import { unitWidth } from './set-line.ts';
import { widestWord } from './wrap-text.ts';

export const cellPad = 3;
const tickWidth = 26;
/** A word longer than this is broken rather than given a column of its own width. */
const widestUnbroken = 110;

/** What a column would like: `narrow` breaks no word, `wide` breaks no line. Points, with the space around the text. */
type Wanted = { narrow: number; wide: number; grow: number };

function wantedOf(part: TablePart, at: number, column: Column, sizePt: number, typeCase: TypeCase): Wanted {
  const least = column.kind === 'tick' ? tickWidth : 12;
  let narrow = Math.max(least, widestWord(column.title, sizePt, 'bold', typeCase));
  let wide = narrow;
  for (const row of part.rows) {
    const text = row.look === 'group' ? '' : cellText(row.cells[at] ?? null, column);
    if (text === '') continue;
    const weight = row.look === 'strong' ? 'bold' : 'regular';
    narrow = Math.max(narrow, Math.min(widestUnbroken, widestWord(text, sizePt, weight, typeCase)));
    wide = Math.max(wide, unitWidth(text, weight, typeCase) * sizePt);
  }
  const pad = 2 * cellPad + 0.5;
  return { narrow: narrow + pad, wide: Math.max(narrow, wide) + pad, grow: column.grow };
}

/** Columns that stand beside each other, and their widths; several where they do not all fit. */
export type ColumnSet = { columns: number[]; widths: number[] };

/**
 * How the columns of a table share a width: none narrower than its words where that can be had, the rest by what
 * stands in them. Where the narrowest do not fit, the table is told in several, each with its first columns again.
 */
export function columnSets(
  part: TablePart,
  widthPt: number,
  sizePt: number,
  typeCase: TypeCase,
): ColumnSet[] {
  const wanted = part.columns.map((column, at) => wantedOf(part, at, column, sizePt, typeCase));
  return splitColumns(wanted, part.repeatedColumns, widthPt).map((columns) => ({
    columns,
    widths: shared(
      columns.flatMap((at) => wanted[at] ?? []),
      widthPt,
    ),
  }));
}

function splitColumns(wanted: readonly Wanted[], repeated: number, widthPt: number): number[][] {
  const narrowOf = (columns: readonly number[]) =>
    columns.reduce((sum, at) => sum + (wanted[at]?.narrow ?? 0), 0);
  const all = wanted.map((_, at) => at);
  if (narrowOf(all) <= widthPt) return [all];
  const heads = all.slice(0, repeated);
  const sets: number[][] = [];
  let set = [...heads];
  for (const at of all.slice(repeated)) {
    if (set.length > heads.length && narrowOf([...set, at]) > widthPt) {
      sets.push(set);
      set = [...heads];
    }
    set.push(at);
  }
  if (set.length > heads.length || sets.length === 0) sets.push(set);
  return sets;
}

function shared(wanted: readonly Wanted[], widthPt: number): number[] {
  const narrow = wanted.reduce((sum, it) => sum + it.narrow, 0);
  const wide = wanted.reduce((sum, it) => sum + it.wide, 0);
  if (narrow >= widthPt) return wanted.map((it) => (it.narrow * widthPt) / narrow);
  if (wide >= widthPt) {
    const part = (widthPt - narrow) / (wide - narrow);
    return wanted.map((it) => it.narrow + (it.wide - it.narrow) * part);
  }
  const grow = wanted.reduce((sum, it) => sum + it.grow, 0);
  if (grow === 0) return wanted.map((it) => it.wide);
  return wanted.map((it) => it.wide + ((widthPt - wide) * it.grow) / grow);
}
