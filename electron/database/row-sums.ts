import { crc32 } from 'node:zlib';
import type { Database, Statement } from 'better-sqlite3';
import { type TableName, tableNames } from '../../core/show/show.ts';
import { quoteName } from './rows.ts';

type Row = { id: string; name?: unknown };

/**
 * A sum over each row, written in the transaction that writes the row. SQLite keeps none of its pages: a changed
 * letter in a text is valid there, and only this says that it is not what was written. All methods run inside the
 * caller's transaction; they speak of the columns that the file has, so that an older one can be looked at too.
 */
export class RowSums {
  readonly #one: ReadonlyMap<TableName, Statement>;
  readonly #all: ReadonlyMap<TableName, Statement>;
  readonly #put: Statement;
  readonly #remove: Statement;
  readonly #sums: Statement;

  constructor(database: Database) {
    const has = database.prepare(`SELECT 1 FROM sqlite_schema WHERE "type" = 'table' AND "name" = ?`);
    const tables = tableNames.filter((table) => has.get(table) !== undefined);
    const prepared = (end: string) =>
      new Map(
        tables.map((table) => [table, database.prepare(`SELECT * FROM ${quoteName(table)} ${end}`)] as const),
      );
    this.#one = prepared('WHERE "id" = ?');
    this.#all = prepared('');
    this.#put = database.prepare(
      `INSERT INTO "rowSums" ("table", "rowId", "sum") VALUES (?, ?, ?)
       ON CONFLICT DO UPDATE SET "sum" = excluded."sum"`,
    );
    this.#remove = database.prepare('DELETE FROM "rowSums" WHERE "table" = ? AND "rowId" = ?');
    this.#sums = database.prepare('SELECT "rowId", "sum" FROM "rowSums" WHERE "table" = ?');
  }

  /** Writes the sums of these rows as they are now; of one that is gone there is none. */
  keep(rows: readonly { table: TableName; id: string }[]): void {
    for (const { table, id } of rows) {
      const row = this.#one.get(table)?.get(id) as Row | undefined;
      if (row) this.#put.run(table, id, sumOf(row));
      else this.#remove.run(table, id);
    }
  }

  /** Writes the sums of all rows, after something that changed their columns. */
  keepAll(): void {
    for (const [table, all] of this.#all)
      for (const row of all.all() as Row[]) this.#put.run(table, row.id, sumOf(row));
  }

  /** The first row that is not as it was written, in words; null where all are. */
  wrong(): string | null {
    for (const [table, all] of this.#all) {
      const sums = new Map(
        (this.#sums.all(table) as { rowId: string; sum: number }[]).map((it) => [it.rowId, it.sum]),
      );
      const rows = all.all() as Row[];
      const row = rows.find((it) => sums.get(it.id) !== sumOf(it));
      if (row)
        return `a row of its ${table} is not as it was written (“${String(row.name ?? row.id).slice(0, 60)}”)`;
      const there = new Set(rows.map(({ id }) => id));
      if ([...sums.keys()].some((id) => !there.has(id))) return `a row of its ${table} is missing`;
    }
    return null;
  }
}

function sumOf(row: Row): number {
  return crc32(JSON.stringify(row));
}
