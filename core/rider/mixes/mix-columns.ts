import { type Block, columnUnder } from '../page/headers.ts';
import type { Cell, Line } from '../page/lines.ts';
import type { Walk } from '../page/walk-state.ts';
import type { ColumnRole } from '../words/headers.ts';
import { isDevice, isWish, pieceFacts } from './mix-pieces.ts';

/** Rows looked at to tell what a column holds. */
const mostRows = 40;

/** Columns whose headings say for sure what they hold. */
const settled: ReadonlySet<ColumnRole | 'detail'> = new Set([
  'mix',
  'performer',
  'channel',
  'exclusions',
  'position',
]);

type Held = { column: number; filled: number; devices: number; wishes: number };

/**
 * Of a table of mixes, finds the columns that hold devices and wishes by their cells: "what" and "how" head either,
 * and many such columns have no heading at all.
 */
export function settleMixColumns(block: Block, below: readonly Line[], walk: Walk): void {
  if (block.kind !== 'mixes') return;
  const held = heldByColumns(block, below, walk);
  const share = (it: Held, what: 'devices' | 'wishes') => it[what] / it.filled;
  const roleIs = (it: Held, role: ColumnRole) => block.roles.get(it.column) === role;
  for (const [role, what, other] of [
    ['device', 'devices', 'wishes'],
    ['wishes', 'wishes', 'devices'],
  ] as const) {
    const told = held.find((it) => roleIs(it, role));
    if (told && share(told, other) <= share(told, what)) continue;
    const best = held
      .filter((it) => share(it, what) > 0.5 && share(it, what) > share(it, other))
      .sort((a, b) => share(b, what) - share(a, what))[0];
    if (!best) continue;
    if (told) block.roles.set(told.column, 'notes');
    block.roles.set(best.column, role);
  }
}

function heldByColumns(block: Block, below: readonly Line[], walk: Walk): Held[] {
  const held = new Map<number, Held>();
  for (const line of below.slice(0, mostRows)) {
    if (line.cells.length < 2) break;
    for (const cell of line.cells) {
      const at = { ...cell, column: columnUnder(block, line, cell) };
      if (isOpen(at, block)) count(held, at, walk);
    }
  }
  return [...held.values()];
}

const isOpen = ({ column }: Cell, block: Block) =>
  column >= block.from &&
  column <= block.to &&
  !settled.has(block.roles.get(column) ?? 'notes') &&
  !block.matrix.some((it) => it.column === column);

function count(held: Map<number, Held>, { column, text }: Cell, walk: Walk): void {
  const it = held.get(column) ?? { column, filled: 0, devices: 0, wishes: 0 };
  const facts = pieceFacts(text, walk);
  it.filled += 1;
  if (isWish(facts, text) || facts.targets > 1) it.wishes += 1;
  else if (isDevice(text, walk)) it.devices += 1;
  held.set(column, it);
}
