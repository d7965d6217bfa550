import { isAllIn } from '../inputs/details.ts';
import { cellAmount } from '../language/amounts.ts';
import { channelNumbers } from '../language/numbers.ts';
import { readSourceName } from '../language/source-name.ts';
import { positionWords } from '../language/vocabulary.ts';
import { headCells } from '../page/headers.ts';
import type { Cell, Line } from '../page/lines.ts';
import type { Walk } from '../page/walk-state.ts';
import { isDevice } from './mix-pieces.ts';

/**
 * A table that is nothing but amounts: sources down the side and listeners along the top, or the other way round.
 * Its head has no words for headings ("", "Ada", "Bo"), so it is told by what its cells hold.
 */
export type SendsTable = {
  heads: SendsHead[];
  rows: SendsRow[];
  /** Lines that belong to the table, its heads among them. */
  taken: number;
  headLines: Line['at'][];
};

type Holds = 'amounts' | 'device' | 'place';

/** A column right of the labels, with the words over it, those of several lines joined. */
export type SendsHead = { column: number; text: string; holds: Holds };

export type SendsRow = { line: Line; label: string; numbers: number[]; cells: Cell[]; holds: Holds };

const longestLabel = 48;
const fewestRows = 2;
const mostRows = 120;
/** "Mix 1", the names, the devices, the places: head rows above the amounts. */
const mostHeadLines = 4;

export function sendsTableAt(walk: Walk, line: Line): SendsTable | null {
  if (line.cells.length < 2 || line.loose || line.cells.some(({ text }) => text.length > longestLabel))
    return null;
  if (!isCounting(line) && line.cells.filter((cell) => isOnlyAmount(cell.text, walk)).length > 1) return null;
  const below = walk.lines.slice(walk.at + 1, walk.at + 1 + mostRows);
  const opening = below.slice(0, mostHeadLines).findIndex((it) => holdsAmounts(it, walk));
  const first = below[opening];
  const place = first ? labelPlace(first, line, walk) : null;
  if (!first || place === null) return null;
  const heads = headsOf([line, ...below.slice(0, opening)], place, walk);
  if (!heads) return null;
  const rows: SendsRow[] = heads.details;
  const columns = new Set(heads.columns.map((head) => head.column));
  let taken = 1 + opening;
  for (const [at, it] of below.slice(opening).entries()) {
    const row = rowOf(it, place, columns, walk);
    // A source that nobody asks for has a label and no more.
    const isEmpty = !row && isLabelAlone(it, place) && fits(below[opening + at + 1], place, columns, walk);
    if (!row && !isEmpty) break;
    if (row) rows.push(row);
    taken += 1;
  }
  const amounts = rows.filter((row) => row.holds === 'amounts');
  if (amounts.length < fewestRows) return null;
  const settled = heads.columns.map((head) => ({ ...head, holds: whatColumnHolds(head, amounts, walk) }));
  if (settled.some((head) => head.holds === null)) return null;
  const told = settled.filter((head): head is SendsHead => head.holds !== null);
  // A table whose columns are named, that of the labels too, is read by their names.
  const isNamed =
    labelOf(line, place) !== '' &&
    told.some((head) => head.holds !== 'amounts') &&
    headCells(line, walk.tongue) !== null;
  if (isNamed || !told.some((head) => head.holds === 'amounts')) return null;
  return { heads: told, rows, taken, headLines: heads.lines };
}

const isAmount = (cell: Cell, walk: Walk) => cellAmount(cell.text, walk.tongue) !== null;

/** "Basso" is low, and over a column it is the bass. */
const isOnlyAmount = (text: string, walk: Walk) =>
  cellAmount(text, walk.tongue) !== null && readSourceName(text, walk.tongue).stem === null;

/** "1 | 2 | 3" over names counts the mixes. */
const isCounting = ({ cells }: Line) =>
  cells.filter(({ text }) => /\d/.test(text)).length > 1 &&
  cells.every(({ text }, at) => {
    const before = cells[at - 1]?.text;
    return at === 0 || !/^\d+$/.test(text) || before === undefined || !/^\d+$/.test(before)
      ? at === 0 || text === '1'
      : Number(text) === Number(before) + 1;
  });

const holdsAmounts = (line: Line, walk: Walk) =>
  line.cells.length >= 2 && !isCounting(line) && line.cells.slice(1).some((cell) => isAmount(cell, walk));

/** The column of the labels: the first one, or with numbers before it the second. */
function labelPlace(row: Line, head: Line, walk: Walk): number | null {
  const [one, two] = row.cells;
  if (!one || !two) return null;
  const isNumbered =
    channelNumbers(one.text).length > 0 &&
    row.cells.length > 2 &&
    (!isAmount(two, walk) || !/^[-+x\d]/i.test(two.text));
  const label = isNumbered ? two : one;
  return head.cells.some((cell) => cell.column > label.column) ? label.column : null;
}

type Heads = { columns: { column: number; text: string }[]; details: SendsRow[]; lines: Line['at'][] };

/** The words over the columns, and rows of devices and places between them and the amounts. */
function headsOf(lines: readonly Line[], place: number, walk: Walk): Heads | null {
  const columns = new Map<number, string>();
  const heads: Heads = { columns: [], details: [], lines: [] };
  for (const [at, line] of lines.entries()) {
    const cells = line.cells.filter((cell) => cell.column > place);
    if (cells.length === 0) return null;
    const holds = at === 0 ? 'amounts' : whatRowHolds(cells, walk);
    if (holds !== 'amounts') {
      heads.details.push({ line, label: labelOf(line, place), numbers: [], cells, holds });
      continue;
    }
    // A second line of heads stands under the first.
    if (at > 0 && !cells.every((cell) => columns.has(cell.column) || cells.length >= columns.size))
      return null;
    for (const { column, text } of cells) {
      const words = /^\d{1,2}$/.test(text) ? `Mix ${text}` : text;
      columns.set(column, [columns.get(column) ?? '', words].join(' ').trim());
    }
    heads.lines.push(line.at);
  }
  const texts = [...columns].map(([column, text]) => ({ column, text }));
  heads.columns = texts.sort((a, b) => a.column - b.column);
  const isAmounts = heads.columns.some(({ text }) => isOnlyAmount(text, walk));
  return heads.columns.length === 0 || isAmounts ? null : heads;
}

const labelOf = (line: Line, place: number) => line.cells.find((cell) => cell.column === place)?.text ?? '';

function whatRowHolds(cells: readonly Cell[], walk: Walk): Holds {
  const devices = cells.filter((cell) => isDevice(cell.text, walk)).length;
  if (devices * 2 > cells.length) return 'device';
  const places = cells.filter((cell) => isPlace(cell, walk)).length;
  return places * 2 > cells.length ? 'place' : 'amounts';
}

const isPlace = (cell: Cell, walk: Walk) => isAllIn(positionWords, cell.text, walk.tongue);

function rowOf(line: Line, place: number, columns: ReadonlySet<number>, walk: Walk): SendsRow | null {
  const label = line.cells.find((cell) => cell.column === place);
  const before = line.cells.filter((cell) => cell.column < place);
  const cells = line.cells.filter((cell) => cell.column > place);
  if (!label || label.text.length > longestLabel || cells.length === 0) return null;
  if (before.some((cell) => channelNumbers(cell.text).length === 0)) return null;
  if (cells.some((cell) => !columns.has(cell.column))) return null;
  const amounts = cells.filter((cell) => isAmount(cell, walk)).length;
  const told = whatRowHolds(cells, walk);
  const holds = told !== 'amounts' && amounts * 2 <= cells.length ? told : 'amounts';
  // One word among amounts may be an amount that nobody knows, a row of them is none.
  if (holds === 'amounts' && amounts * 2 < cells.length) return null;
  const numbers = before.flatMap((cell) => channelNumbers(cell.text));
  return { line, label: label.text, numbers, cells, holds };
}

const isLabelAlone = (line: Line, place: number) =>
  line.cells.length === 1 && line.cells[0]?.column === place && line.text.length <= longestLabel;

const fits = (line: Line | undefined, place: number, columns: ReadonlySet<number>, walk: Walk) =>
  line !== undefined && rowOf(line, place, columns, walk) !== null;

/** What most cells of a column are; null where they are neither amounts nor what tells of a device or a place. */
function whatColumnHolds(
  { column }: { column: number },
  rows: readonly SendsRow[],
  walk: Walk,
): Holds | null {
  const cells = rows.flatMap((row) => row.cells.filter((cell) => cell.column === column));
  const amounts = cells.filter((cell) => isAmount(cell, walk)).length;
  if (amounts * 10 >= cells.length * 6) return 'amounts';
  const told = whatRowHolds(cells, walk);
  return told === 'amounts' ? null : told;
}
