import type { Change, Put } from '../../core/show/change.ts';
import { references } from '../../core/show/references.ts';
import type { Id } from '../../core/show/rig.ts';
import type { TableName } from '../../core/show/show.ts';
import type { Touched } from './history.ts';
import type { AnyRow, ShowRows } from './rows.ts';

/** A row that was written or removed, with what it was before, or null where it was not there. */
export type TouchedFrom = Touched & { before: AnyRow | null };

/**
 * The change that brings a window from before the touched rows were written to how they are now. A window removes
 * first, and with a row all that belongs to it: a row that has moved from an owner that goes would be lost with
 * everything below it, so all of that is put again.
 */
export function changeToNow(rows: ShowRows, label: string, touched: readonly TouchedFrom[]): Change {
  const puts = new Map<string, Put>();
  const remove: Change['remove'] = [];
  const followed = new Set<string>();
  for (const { table, id, before } of touched) {
    const now = rows.read(table, id);
    if (now) puts.set(keyOf(table, id), { table, row: now } as Put);
    else if (before) remove.push({ table, id });
    if (now && before && hasMoved(table, before, now)) addAllBelow(puts, rows, table, id, followed);
  }
  return { label, put: [...puts.values()], remove };
}

function hasMoved(table: TableName, before: AnyRow, now: AnyRow): boolean {
  return references.some(
    ({ table: from, field, holds }) =>
      from === table && holds === 'owner' && fieldOf(before, field) !== fieldOf(now, field),
  );
}

/** Everything that belongs to a row, and what has a link to any of it. */
function addAllBelow(
  puts: Map<string, Put>,
  rows: ShowRows,
  table: TableName,
  id: Id,
  followed: Set<string>,
): void {
  if (followed.has(keyOf(table, id))) return;
  followed.add(keyOf(table, id));
  for (const { table: from, row, holds } of rows.referringTo(table, id)) {
    puts.set(keyOf(from, row.id), { table: from, row } as Put);
    if (holds === 'owner') addAllBelow(puts, rows, from, row.id, followed);
  }
}

const keyOf = (table: TableName, id: Id) => `${table} ${id}`;

function fieldOf(row: AnyRow, field: string): unknown {
  return (row as Readonly<Record<string, unknown>>)[field];
}
