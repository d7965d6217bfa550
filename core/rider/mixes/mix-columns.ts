import { isAllIn } from '../inputs/details.ts';
import { cellAmount } from '../language/amounts.ts';
import { withDigits } from '../language/count-words.ts';
import { findHits } from '../language/lexicon.ts';
import { channelNumbers } from '../language/numbers.ts';
import { tokenize } from '../language/text.ts';
import { mixWords, positionWords } from '../language/vocabulary.ts';
import { type Block, columnUnder, type HeadCell, headingsOf } from '../page/headers.ts';
import type { Line } from '../page/lines.ts';
import type { Walk } from '../page/walk-state.ts';
import type { ColumnRole } from '../words/headers.ts';
import { readMixCell } from './mix-line.ts';
import { isDevice, isWish, leadingLabel, pieceFacts } from './mix-pieces.ts';

/** Rows looked at to tell what a column holds. */
const mostRows = 40;
/** Rows looked at to tell whether a line heads a table at all. */
const enoughRows = 10;

/** What a cell of a table of mixes may be. */
type Matter = 'mix' | 'wishes' | 'device' | 'position' | 'performer';
const matters: readonly Matter[] = ['mix', 'wishes', 'device', 'position', 'performer'];

/** How many cells of a column there are, and how many of them tell which matter. */
type Held = Record<Matter, number> & { column: number; filled: number };

/** Headings that say for sure what stands below: those may head nothing else. */
const settled: ReadonlySet<ColumnRole | 'detail'> = new Set([
  'mix',
  'performer',
  'channel',
  'exclusions',
  'position',
]);

/**
 * Of a table of mixes, finds the columns that hold devices, wishes and listeners by their cells: "what" and "how" head
 * either, and many such columns have a heading that nobody knows, or none.
 */
export function settleMixColumns(block: Block, below: readonly Line[], walk: Walk): void {
  if (block.kind !== 'mixes') return;
  dropCounting(block, below);
  const held = heldByColumns(below, walk, block).filter(
    ({ column }) =>
      column >= block.from && column <= block.to && !block.matrix.some((it) => it.column === column),
  );
  const roleIs = (it: Held, role: ColumnRole) => block.roles.get(it.column) === role;
  // "Mix" and "Mezcla" also head what is wished.
  for (const it of held)
    if (roleIs(it, 'mix') && it.mix === 0 && share(it, 'wishes') > 0.5) block.roles.set(it.column, 'notes');
  const open = held.filter((it) => !settled.has(block.roles.get(it.column) ?? 'notes'));
  for (const [role, other] of [
    ['device', 'wishes'],
    ['wishes', 'device'],
  ] as const) {
    const told = open.find((it) => roleIs(it, role));
    if (told && share(told, role) > 0 && share(told, other) <= share(told, role)) continue;
    const best = most(open, role);
    if (!best || share(best, role) <= share(best, other)) continue;
    if (told) block.roles.set(told.column, 'notes');
    block.roles.set(best.column, role);
  }
  for (const role of ['mix', 'performer', 'position'] as const) {
    if ([...block.roles.values()].includes(role === 'performer' ? 'role' : role)) continue;
    if ([...block.roles.values()].includes(role)) continue;
    const best = most(
      held.filter((it) => (block.roles.get(it.column) ?? 'notes') === 'notes'),
      role,
    );
    if (best && (role !== 'position' || share(best, role) === 1)) block.roles.set(best.column, role);
  }
}

/** A column that counts the mixes up is no column of amounts. */
function dropCounting(block: Block, below: readonly Line[]): void {
  const isCounting = (column: number) => {
    const numbers = below.flatMap((line) => line.cells.find((cell) => cell.column === column)?.text ?? []);
    return numbers.length > 1 && numbers.every((text, at) => text === String(at + 1));
  };
  block.matrix = block.matrix.filter(({ column }) => !isCounting(column));
}

const share = (it: Held, what: Matter) => it[what] / it.filled;

/** The column most of whose cells tell a matter. */
const most = (held: readonly Held[], what: Matter): Held | undefined =>
  held.filter((it) => share(it, what) > 0.5).sort((a, b) => share(b, what) - share(a, what))[0];

function heldByColumns(below: readonly Line[], walk: Walk, block: Block | null): Held[] {
  const held = new Map<number, Held>();
  for (const line of below.slice(0, mostRows)) {
    if (line.cells.length < 2) break;
    for (const cell of line.cells) {
      const column = block ? columnUnder(block, line, cell) : cell.column;
      const it =
        held.get(column) ??
        ({ column, filled: 0, mix: 0, wishes: 0, device: 0, position: 0, performer: 0 } satisfies Held);
      it.filled += 1;
      it[matterOf(cell.text, walk)] += 1;
      held.set(column, it);
    }
  }
  return [...held.values()];
}

function matterOf(text: string, walk: Walk): Matter {
  if (/^[A-H]$/.test(text) || channelNumbers(text).length > 0 || leadingLabel(text, walk)?.rest === '')
    return 'mix';
  const facts = pieceFacts(text, walk);
  if (isWish(facts, text) || facts.targets > 1) return 'wishes';
  if (isAllIn(positionWords, text, walk.tongue) && facts.targets === 0) return 'position';
  if (opensWithDevice(text, walk)) return 'device';
  if (!isDevice(text, walk)) return 'performer';
  // "Anna, 2 wedges" tells who listens.
  const { listener } = readMixCell(text, walk);
  return listener === '' || listener === text ? 'device' : 'performer';
}

/** "2 wedges on the sides", "a small wedge": the device comes first, behind a count. */
function opensWithDevice(text: string, walk: Walk): boolean {
  const tokens = tokenize(withDigits(text, walk.tongue));
  const first = tokens.findIndex((token) => token.kind === 'word' && token.text !== 'x');
  return findHits(mixWords, tokens, walk.tongue.spoken, walk.tongue.names).some(
    (hit) => hit.from === first && hit.certainty === 1 && hit.senses[0]?.subject === 'device',
  );
}

/** A table of mixes has few columns, and its headings are short. */
const mostColumns = 9;
const longestHeading = 32;
const fewestRows = 2;

/**
 * A line as the head of a table of mixes though its words are not known: by what stands below it. Null where the
 * cells below are none of mixes, or where the line is one of them.
 */
export function headByCells(walk: Walk, line: Line): HeadCell[] | null {
  const { cells } = line;
  if (walk.section !== 'mixes' && walk.found.inputs.length === 0) return null;
  const isShort = cells.every(({ text }) => text.length <= longestHeading && !/\d/.test(text));
  if (line.loose || cells.length < 2 || cells.length > mostColumns || !isShort) return null;
  if (cells.some(({ text }) => isTold(text, walk))) return null;
  const columns = new Set(cells.map(({ column }) => column));
  const rows = rowsBelow(walk, line, columns);
  if (rows.length < fewestRows) return null;
  const held = heldByColumns(rows, walk, null);
  return areMixes(held, walk) ? headingsOf(line, walk.tongue) : null;
}

/** The table that opens with the row of a mix and no head, by what its columns hold; empty where there is none. */
export function blockByCells(walk: Walk, line: Line): Block[] {
  const [first, ...others] = line.cells;
  if (!first || others.length < 2 || line.loose || matterOf(first.text, walk) !== 'mix') return [];
  const rows = [line, ...rowsBelow(walk, line, new Set(line.cells.map(({ column }) => column)))];
  const block: Block = { kind: 'mixes', from: 0, to: Number.MAX_SAFE_INTEGER, roles: new Map(), matrix: [] };
  if (rows.length <= fewestRows || !areMixes(heldByColumns(rows, walk, null), walk)) return [];
  for (const { column } of line.cells) block.roles.set(column, 'notes');
  settleMixColumns(block, rows, walk);

  return [block];
}

/** What a cell of a row tells and no heading does. */
function isTold(text: string, walk: Walk): boolean {
  const matter = matterOf(text, walk);
  return matter === 'mix' || (matter === 'wishes' && /[,\d+]/.test(text));
}

/** Lines that stand under a head, in its columns. */
function rowsBelow(walk: Walk, line: Line, columns: ReadonlySet<number>): Line[] {
  const below = walk.lines.slice(walk.at + 1, walk.at + 1 + enoughRows);
  const end = below.findIndex(
    (it) =>
      it.cells.length < 2 ||
      it.at.sheet !== line.at.sheet ||
      it.cells.some(
        ({ column, text }) => !columns.has(column) || (cellAmount(text, walk.tongue) && /\+|-/.test(text)),
      ),
  );
  return end === -1 ? below : below.slice(0, end);
}

/** Wishes with who hears them or through what; outside the mixes, with both or with numbers too. */
function areMixes(held: readonly Held[], walk: Walk): boolean {
  const has = (what: Matter) => most(held, what) !== undefined;
  const told = matters.filter(has);
  if (walk.section === 'mixes') return has('wishes') ? told.length > 1 : has('device') && has('performer');
  return has('wishes') && has('device') && (has('performer') || has('mix'));
}
