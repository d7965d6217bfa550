import { applyChange } from './apply-change.ts';
import type { Change, Put } from './change.ts';
import { sameValue } from './difference.ts';
import { type AnyRow, fieldOf } from './part-of-show.ts';
import { references } from './references.ts';
import { type Show, tableNames } from './show.ts';

/** A change, and how many rows it leaves out because what they belong to is not in the show. */
export type BringBack = { change: Change; leftOut: number };

/**
 * The change that makes `part` of a show what it was in `wanted`: rows that are too many go, the others are put.
 * A link to what is no longer in the show is cleared; a row that belongs to such is left out and counted.
 */
export function bringBack(label: string, show: Show, part: Show, wanted: Show): BringBack {
  const remove: Change['remove'] = tableNames.flatMap((table) =>
    [...part[table].keys()].filter((id) => !wanted[table].has(id)).map((id) => ({ table, id })),
  );
  const rest = applyChange(show, { label, put: [], remove });
  const { fitting, leftOut } = fitInto(rest, wanted);
  const put = fitting.filter(({ table, row }) => !sameValue(rest[table].get(row.id), row));
  // What falls with its owner although it stood in the part is no longer wanted either.
  const there = new Set(fitting.map(({ table, row }) => `${table} ${row.id}`));
  const orphans = tableNames.flatMap((table) =>
    [...part[table].keys()]
      .filter((id) => wanted[table].has(id) && !there.has(`${table} ${id}`))
      .map((id) => ({ table, id })),
  );
  return { change: { label, put, remove: [...remove, ...orphans] }, leftOut };
}

/** The rows of `wanted` as they can stand in the show, owners before what they own. */
function fitInto(show: Show, wanted: Show): { fitting: Put[]; leftOut: number } {
  const gone = new Set<string>();
  const isThere = (table: keyof Show, id: string) =>
    (wanted[table].has(id) && !gone.has(`${table} ${id}`)) || show[table].has(id);
  const all = tableNames.flatMap((table) => [...wanted[table].values()].map((row) => ({ table, row })));
  const ownersOf = (table: keyof Show) =>
    references.filter((it) => it.table === table && it.holds === 'owner');
  for (let before = -1; before !== gone.size; ) {
    before = gone.size;
    for (const { table, row } of all)
      for (const { field, to } of ownersOf(table)) {
        const owner = fieldOf(row, field);
        if (typeof owner === 'string' && !isThere(to, owner)) gone.add(`${table} ${row.id}`);
      }
  }
  const fitting = all
    .filter(({ table, row }) => !gone.has(`${table} ${row.id}`))
    .map(({ table, row }) => ({ table, row: withoutDeadLinks(table, row, isThere) }) as Put);
  return { fitting, leftOut: gone.size };
}

function withoutDeadLinks(
  table: keyof Show,
  row: AnyRow,
  isThere: (table: keyof Show, id: string) => boolean,
): AnyRow {
  const dead = references.filter(({ table: from, field, to, holds }) => {
    const named = fieldOf(row, field);
    return from === table && holds === 'link' && typeof named === 'string' && !isThere(to, named);
  });
  if (dead.length === 0) return row;
  return { ...row, ...Object.fromEntries(dead.map(({ field }) => [field, null])) } as AnyRow;
}
