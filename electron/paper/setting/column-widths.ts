import { cellText } from '../../../core/sheets/cell-text.ts';
import type { Column, TablePart } from '../../../core/sheets/sheet.ts';
import type { TypeCase } from '../fonts/type-case.ts';
import { unitWidth } from './set-line.ts';
import { widestWord } from './wrap-text.ts';

export const cellPad = 3;
const leastWidth = { text: 12, number: 12, tick: 24, write: 70 } as const;
/** A word longer than this is broken rather than given a column of its own width. */
const widestUnbroken = 110;

/** What a column would like: `narrow` breaks no word, `wide` breaks no line. Points, with the space around the text. */
type Wanted = { narrow: number; wide: number; grow: number; brokenRows: number };

function wantedOf(part: TablePart, at: number, column: Column, sizePt: number, typeCase: TypeCase): Wanted {
  const least = leastWidth[column.kind];
  let narrow = Math.max(least, widestWord(column.title, sizePt, 'bold', typeCase));
  const widths: number[] = [];
  for (const row of part.rows) {
    const text = row.look === 'group' ? '' : cellText(row.cells[at] ?? null, column);
    if (text === '') continue;
    const weight = row.look === 'strong' ? 'bold' : 'regular';
    narrow = Math.max(narrow, Math.min(widestUnbroken, widestWord(text, sizePt, weight, typeCase)));
    widths.push(unitWidth(text, weight, typeCase) * sizePt);
  }
  const wide = Math.max(narrow, ...widths);
  const pad = 2 * cellPad + 0.5;
  const brokenRows = widths.filter((it) => it > narrow).length;
  return { narrow: narrow + pad, wide: wide + pad, grow: column.grow, brokenRows };
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
  return splitColumns(wanted, shownColumns(part), part.repeatedColumns, widthPt).map((columns) => ({
    columns,
    widths: shared(
      columns.flatMap((at) => wanted[at] ?? []),
      widthPt,
    ),
  }));
}

/** A column in which nothing stands takes room from the others, unless it is there to be written in. */
function shownColumns({ columns, rows }: TablePart): number[] {
  const hasWords = (at: number) => rows.some(({ cells }) => cellText(cells[at] ?? null, plain) !== '');
  const isFilledInByHand = rows.some(({ look }) => look !== 'quiet');
  return columns.flatMap(({ kind, always }, at) => {
    const byHand = kind === 'tick' || kind === 'write';
    return always || (byHand ? isFilledInByHand : hasWords(at)) ? [at] : [];
  });
}

const plain = { decimals: 0, signed: false };

function splitColumns(
  wanted: readonly Wanted[],
  shown: readonly number[],
  repeated: number,
  widthPt: number,
): number[][] {
  const narrowOf = (columns: readonly number[]) =>
    columns.reduce((sum, at) => sum + (wanted[at]?.narrow ?? 0), 0);
  if (narrowOf(shown) <= widthPt) return [[...shown]];
  const heads = shown.filter((at) => at < repeated);
  const sets: number[][] = [];
  let set = [...heads];
  for (const at of shown.slice(heads.length)) {
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
  if (wide >= widthPt) return filledUp(wanted, widthPt - narrow);
  const grow = wanted.reduce((sum, it) => sum + it.grow, 0);
  if (grow === 0) return wanted.map((it) => it.wide);
  return wanted.map((it) => it.wide + ((widthPt - wide) * it.grow) / grow);
}

/** A column that lacks more holds texts that are to be broken, however many rows that is. */
const shortLack = 80;
/** What such a column gets before any other, so that its texts do not stand one word below the other. */
const firstRoom = 50;

/**
 * Room given out so that few rows break into lines: columns that many rows need, and that need little, are made wide
 * first; what is then left is shared by the ones with the long texts.
 */
function filledUp(wanted: readonly Wanted[], spare: number): number[] {
  const isLong = wanted.map((it) => lackOf(it) > shortLack);
  const first = Math.min(firstRoom, spare / Math.max(1, isLong.filter(Boolean).length));
  const widths = wanted.map((it, at) => it.narrow + (isLong[at] ? first : 0));
  let left = spare - widths.reduce((sum, width, at) => sum + width - (wanted[at]?.narrow ?? 0), 0);
  for (const at of [...wanted.keys()].sort((a, b) => priceOf(wanted[a]) - priceOf(wanted[b]))) {
    if (isLong[at]) continue;
    const given = Math.min(left, lackOf(wanted[at]));
    widths[at] = (widths[at] ?? 0) + given;
    left -= given;
  }
  const lacks = wanted.map((it, at) => it.wide - (widths[at] ?? 0));
  const lacking = lacks.reduce((sum, it) => sum + it, 0);
  return widths.map((width, at) => width + (lacking > 0 ? (left * (lacks[at] ?? 0)) / lacking : 0));
}

const lackOf = (it: Wanted | undefined) => (it ? it.wide - it.narrow : 0);
/** Points of width for each row that then needs one line only. */
const priceOf = (it: Wanted | undefined) => (it ? lackOf(it) / Math.max(1, it.brokenRows) : 0);
