import { references } from './references.ts';
import type { Id } from './rig.ts';
import { emptyShow, type RowOf, type Show, type TableName } from './show.ts';

export type AnyRow = RowOf<TableName>;

/** What a named state or an act file is of. */
export type PartRoot = { table: 'acts' | 'days'; id: Id };

/** A field of any row by its name; undefined where the row has none of it. */
export function fieldOf(row: AnyRow, field: string): unknown {
  return (row as Readonly<Record<string, unknown>>)[field];
}

/** A row with everything that belongs to it, rows in the order of the show. Empty where there is no such row. */
export function partOfShow(show: Show, root: PartRoot): Show {
  const part = emptyShow() as unknown as Record<TableName, Map<Id, AnyRow>>;
  const first = show[root.table].get(root.id);
  if (!first) return part as unknown as Show;
  const kept = new Set([keyOf(root.table, root.id)]);
  // References of owners lead from the parts to the whole, so a few rounds find everything at any depth.
  for (let before = 0; before !== kept.size; ) {
    before = kept.size;
    for (const { table, field, to, holds } of references) {
      if (holds !== 'owner') continue;
      for (const row of show[table].values()) {
        const owner = fieldOf(row, field);
        if (typeof owner === 'string' && kept.has(keyOf(to, owner))) kept.add(keyOf(table, row.id));
      }
    }
  }
  for (const table of Object.keys(part) as TableName[])
    for (const row of show[table].values()) if (kept.has(keyOf(table, row.id))) part[table].set(row.id, row);
  return part as unknown as Show;
}

const keyOf = (table: TableName, id: Id) => `${table} ${id}`;
