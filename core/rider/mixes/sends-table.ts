import { cellAmount } from '../language/amounts.ts';
import { findHits } from '../language/lexicon.ts';
import { channelNumbers } from '../language/numbers.ts';
import { readSourceName } from '../language/source-name.ts';
import { tidy, tokenize } from '../language/text.ts';
import { wishWords } from '../language/vocabulary.ts';
import { type FoundMix, foundMix, isFull, type MatrixCell, mostMixes, note } from '../page/draft.ts';
import type { Cell, Line } from '../page/lines.ts';
import type { Walk } from '../page/walk-state.ts';
import { isDevice, leadingLabel, readMixPieces } from './mix-pieces.ts';

/**
 * A table that is nothing but amounts: sources down the side and listeners along the top, or the other way round.
 * Its head has no words for headings ("", "Ada", "Bo"), so it is told by what its cells hold.
 */
type SendsTable = {
  heads: Cell[];
  rows: SendsRow[];
  /** Lines that belong to the table, its head among them. */
  taken: number;
};

type SendsRow = { line: Line; label: string; numbers: number[]; cells: Cell[]; isDevice: boolean };

const longestLabel = 48;
const fewestRows = 2;
const mostRows = 120;

/** Takes a table of amounts that opens at the line of the walk; the number of lines taken, 0 where there is none. */
export function takeSendsTable(walk: Walk, line: Line): number {
  if (walk.section !== 'mixes' && walk.found.inputs.length === 0) return 0;
  const table = sendsTable(walk, line);
  if (!table) return 0;
  const { heads, rows } = table;
  const amounts = rows.filter((row) => !row.isDevice);
  const named = (texts: readonly string[]) => texts.filter((text) => namesSource(text, walk)).length;
  const down = named(amounts.map((row) => row.label)) / amounts.length;
  const along = named(heads.map((head) => head.text)) / heads.length;
  if (Math.max(down, along) < 0.5) return 0;
  note(walk.found, line.at, 'set aside', 'The headings of a table.');
  if (along > down) for (const row of amounts) pushRow(walk, heads, row);
  else for (const head of heads) pushColumn(walk, line, head, rows);
  for (const row of rows) note(walk.found, row.line.at, 'understood', 'How much each listener wants.');
  walk.section = 'mixes';
  walk.blocks = [];
  return table.taken;
}

function sendsTable(walk: Walk, line: Line): SendsTable | null {
  if (line.cells.length < 2 || line.loose) return null;
  const isAmount = (cell: Cell) => cellAmount(cell.text, walk.tongue) !== null;
  if (line.cells.some((cell) => cell.text.length > longestLabel) || line.cells.filter(isAmount).length > 1)
    return null;
  const below = walk.lines.slice(walk.at + 1, walk.at + 1 + mostRows);
  // The labels stand left of every head, in one column or, with numbers, in two.
  const first = below.find((it) => it.cells.length >= 2 && it.cells.slice(1).some(isAmount));
  const place = first ? labelPlace(first, line) : null;
  if (!first || place === null) return null;
  const heads = line.cells.filter((cell) => cell.column > place);
  if (heads.length < 1 || heads.some(isAmount)) return null;
  const columns = new Set(heads.map((head) => head.column));
  const rows: SendsRow[] = [];
  let taken = 1;
  for (const it of below) {
    const row = rowOf(it, place, columns, walk);
    if (!row) break;
    rows.push(row);
    taken += 1;
  }
  return rows.filter((row) => !row.isDevice).length >= fewestRows ? { heads, rows, taken } : null;
}

/** The column of the labels: the last one left of all amounts. */
function labelPlace(row: Line, head: Line): number | null {
  const [one, two] = row.cells;
  if (!one || !two) return null;
  const isNumbered =
    channelNumbers(one.text).length > 0 && !/^[-+x0]/i.test(two.text) && row.cells.length > 2;
  const label = isNumbered ? two : one;
  return head.cells.some((cell) => cell.column > label.column) ? label.column : null;
}

function rowOf(line: Line, place: number, columns: ReadonlySet<number>, walk: Walk): SendsRow | null {
  const label = line.cells.find((cell) => cell.column === place);
  const before = line.cells.filter((cell) => cell.column < place);
  const cells = line.cells.filter((cell) => cell.column > place);
  if (!label || label.text.length > longestLabel || cells.length === 0) return null;
  if (before.some((cell) => channelNumbers(cell.text).length === 0)) return null;
  if (cells.some((cell) => !columns.has(cell.column))) return null;
  const amounts = cells.filter((cell) => cellAmount(cell.text, walk.tongue) !== null);
  const devices = cells.filter((cell) => isDevice(cell.text, walk));
  const isDeviceRow = devices.length > 0 && devices.length >= amounts.length;
  if (!isDeviceRow && amounts.length < cells.length) return null;
  const numbers = before.flatMap((cell) => channelNumbers(cell.text));
  return { line, label: label.text, numbers, cells, isDevice: isDeviceRow };
}

/** A source, a group of them, or a player whose sources are meant. */
function namesSource(text: string, walk: Walk): boolean {
  if (readSourceName(text, walk.tongue).stem !== null) return true;
  return findHits(wishWords, tokenize(text), walk.tongue.spoken, walk.tongue.names).some((hit) =>
    hit.senses.some((sense) => sense.subject === 'group' || sense.subject === 'source'),
  );
}

function pushColumn(walk: Walk, line: Line, head: Cell, rows: readonly SendsRow[]): void {
  const cells = rows.flatMap((row) => {
    const cell = row.cells.find((it) => it.column === head.column);
    return cell ? [{ row, cell }] : [];
  });
  const devices = cells.filter(({ row }) => row.isDevice).map(({ cell }) => cell.text);
  const matrix = cells
    .filter(({ row }) => !row.isDevice)
    .map(
      ({ row, cell }): MatrixCell => ({
        column: row.line.at.row,
        heading: row.label,
        text: cell.text,
        numbers: row.numbers,
      }),
    );
  const extra = cells.map(({ row }) => row.line.at);
  push(walk, { line, part: head.column, text: head.text, devices, matrix, extra });
}

function pushRow(walk: Walk, heads: readonly Cell[], row: SendsRow): void {
  const matrix = row.cells.flatMap((cell): MatrixCell[] => {
    const head = heads.find((it) => it.column === cell.column);
    return head ? [{ column: cell.column, heading: head.text, text: cell.text, numbers: [] }] : [];
  });
  const text = row.numbers.length > 0 ? `Mix ${row.numbers[0]}: ${row.label}` : row.label;
  push(walk, { line: row.line, part: row.line.part, text, devices: [], matrix, extra: [] });
}

function push(
  walk: Walk,
  it: {
    line: Line;
    part: number;
    text: string;
    devices: readonly string[];
    matrix: MatrixCell[];
    extra: FoundMix['extra'];
  },
): void {
  if (isFull(walk.found, it.line.at, walk.found.mixes, mostMixes)) return;
  const label = leadingLabel(it.text, walk);
  const pieces = readMixPieces(label?.rest ?? it.text, walk);
  walk.found.mixes.push(
    foundMix(it.line.at, {
      part: it.part,
      number: label?.numbers[0] ?? null,
      label: label?.label ?? tidy(it.text),
      listenerText: pieces.listenerText || (label ? '' : pieces.deviceText === '' ? tidy(it.text) : ''),
      deviceText: [...it.devices, pieces.deviceText].filter((text) => text !== '').join(', '),
      place: pieces.place,
      matrix: it.matrix,
      extra: it.extra ?? [],
    }),
  );
}
