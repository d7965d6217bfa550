import type { Database, Statement } from 'better-sqlite3';
import type { Change, Put } from '../../core/show/change.ts';
import { type Reference, references } from '../../core/show/references.ts';
import type { Id } from '../../core/show/rig.ts';
import { type RowOf, type Show, showFromRows, type TableName, tableNames } from '../../core/show/show.ts';
import { columnsOf, rowFromValues, valuesFromRow } from './columns.ts';

/** Name of a table or column as SQL; ours hold no quotation mark. */
export const quoteName = (name: string) => `"${name}"`;

export type AnyRow = RowOf<TableName>;

type TableStatements = { put: Statement; remove: Statement; all: Statement; one: Statement };

/** Reads and writes the rows of the show, the same way for every table. */
export class ShowRows {
  readonly #database: Database;
  readonly #statements: ReadonlyMap<TableName, TableStatements>;

  constructor(database: Database) {
    this.#database = database;
    this.#statements = new Map(tableNames.map((table) => [table, prepareTable(database, table)]));
  }

  /** The whole show, rows in the order they were put. Throws a `ZodError` where a stored row is none. */
  readAll(): Show {
    const rows = tableNames.map((table) => [
      table,
      this.#of(table)
        .all.all()
        .map((values) => rowFromValues(table, values as Record<string, unknown>)),
    ]);
    return showFromRows(Object.fromEntries(rows));
  }

  /** One row, or null where there is none of that id. */
  read<T extends TableName>(table: T, id: Id): RowOf<T> | null {
    const values = this.#of(table).one.get(id);
    return values === undefined ? null : rowFromValues(table, values as Record<string, unknown>);
  }

  /** Every row that names a row of this table and id, with its table and whether it belongs to it. */
  referringTo(table: TableName, id: Id): { table: TableName; row: AnyRow; holds: Reference['holds'] }[] {
    return references
      .filter((reference) => reference.to === table)
      .flatMap(({ table: from, field, holds }) =>
        this.#referring(from, field)
          .all(id)
          .map((values) => ({
            table: from,
            row: rowFromValues(from, values as Record<string, unknown>),
            holds,
          })),
      );
  }

  /**
   * Writes a change inside the caller's transaction. Removals first, then rows table by table, owners before what
   * they own: so no step ever stands on a row that its own inverse would take away with the cascade.
   */
  write(change: Pick<Change, 'put' | 'remove'>): void {
    for (const { table, id } of change.remove) this.#of(table).remove.run(id);
    const puts = Map.groupBy(change.put, (put) => put.table);
    for (const table of tableNames) for (const put of puts.get(table) ?? []) this.#put(put);
  }

  #referring(table: TableName, field: string): Statement {
    const list = columnsOf[table].map(({ name }) => quoteName(name)).join(', ');
    return this.#database.prepare(
      `SELECT ${list} FROM ${quoteName(table)} WHERE ${quoteName(field)} = ? ORDER BY "putOrder"`,
    );
  }

  #put({ table, row }: Put): void {
    const written = this.#of(table).put.run(...valuesFromRow(table, row));
    if (written.changes !== 1) throw new Error(`Putting one row of ${table} wrote ${written.changes}.`);
  }

  #of(table: TableName): TableStatements {
    const statements = this.#statements.get(table);
    if (!statements) throw new Error(`No such table: ${table}`);
    return statements;
  }
}

function prepareTable(database: Database, table: TableName): TableStatements {
  const name = quoteName(table);
  const columns = columnsOf[table].map((column) => quoteName(column.name));
  const list = columns.join(', ');
  const updates = columns.map((column) => `${column} = excluded.${column}`).join(', ');
  return {
    put: database.prepare(
      `INSERT INTO ${name} (${list}) VALUES (${columns.map(() => '?').join(', ')})
       ON CONFLICT ("id") DO UPDATE SET ${updates}`,
    ),
    remove: database.prepare(`DELETE FROM ${name} WHERE "id" = ?`),
    all: database.prepare(`SELECT ${list} FROM ${name} ORDER BY "putOrder"`),
    one: database.prepare(`SELECT ${list} FROM ${name} WHERE "id" = ?`),
  };
}
