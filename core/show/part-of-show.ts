import { references } from './references.ts';
import type { Id } from './rig.ts';
import { type RowOf, type Show, showFromRows, type TableName, tableNames } from './show.ts';

export type AnyRow = RowOf<TableName>;

/** What a named state or an act file is of. */
export type PartRoot = { table: 'acts' | 'days'; id: Id };

/** Tables of what happened to an act on its day. They are no part of its plan. */
export const runTables = [
  'ticks',
  'actRuns',
  'lineResults',
  'ranLevels',
  'runNotes',
] as const satisfies TableName[];

export function isOfRun(table: TableName): boolean {
  return runTables.some((it) => it === table);
}

const owners = references.filter((it) => it.holds === 'owner');

/** A field of any row by its name; undefined where the row has none of it. */
export function fieldOf(row: Partial<AnyRow>, field: string): unknown {
  return (row as Readonly<Record<string, unknown>>)[field];
}

/** A row with everything that belongs to it, rows in the order of the show. Empty where there is no such row. */
export function partOfShow(show: Show, { table: rootTable, id }: PartRoot): Show {
  const kept = new Set(show[rootTable].has(id) ? [keyOf(rootTable, id)] : []);
  // A reference of an owner leads from a part to its whole, so a few rounds find everything at any depth.
  for (let before = -1; before !== kept.size; ) {
    before = kept.size;
    for (const table of tableNames)
      for (const row of show[table].values()) if (belongs(table, row, kept)) kept.add(keyOf(table, row.id));
  }
  const rows = tableNames.map((table) => [
    table,
    [...show[table].values()].filter((row) => kept.has(keyOf(table, row.id))),
  ]);
  return showFromRows(Object.fromEntries(rows));
}

/** A part of a show without what happened on the day: what was planned of it. */
export function planOfPart(part: Show): Show {
  return { ...part, ...Object.fromEntries(runTables.map((table) => [table, new Map()])) };
}

function belongs(table: TableName, row: AnyRow, kept: ReadonlySet<string>): boolean {
  return owners.some((it) => {
    const owner = it.table === table && fieldOf(row, it.field);
    return typeof owner === 'string' && kept.has(keyOf(it.to, owner));
  });
}

const keyOf = (table: TableName, id: Id) => `${table} ${id}`;
