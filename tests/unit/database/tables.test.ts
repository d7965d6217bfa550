import type { Database } from 'better-sqlite3';
import Sqlite from 'better-sqlite3';
import { expect, onTestFinished, test } from 'vitest';
import { references } from '../../../core/show/references.ts';
import { rowSchemas, tableNames } from '../../../core/show/show.ts';
import { type ColumnKind, columnsOf } from '../../../electron/database/columns.ts';
import { opened, showPath } from '../../helpers/open-shows.ts';

const typeOf: Record<ColumnKind, string> = {
  text: 'TEXT',
  integer: 'INTEGER',
  real: 'REAL',
  boolean: 'INTEGER',
  json: 'TEXT',
};

/** A second look at a file that the program has made and closed. */
function newFile(): Database {
  const path = showPath();
  opened(path).close();
  const database = new Sqlite(path, { readonly: true });
  onTestFinished(() => {
    database.close();
  });
  return database;
}

type TableColumn = { name: string; type: string; notnull: number };
const tableColumns = (database: Database, table: string) =>
  database.pragma(`table_info("${table}")`) as TableColumn[];

test('every field of the vocabulary has its column: if one is missing here, add a migration', () => {
  const database = newFile();
  for (const table of tableNames) {
    const stored = tableColumns(database, table).filter(({ name }) => name !== 'putOrder');
    const wanted = columnsOf[table].map(({ name, kind }) => `${name} ${typeOf[kind]}`);
    expect(stored.map(({ name, type }) => `${name} ${type}`).sort(), table).toEqual(wanted.sort());
  }
});

test('a column is empty only where the vocabulary allows it', () => {
  const database = newFile();
  for (const table of tableNames) {
    const schema = rowSchemas[table];
    const shapes: Record<string, { safeParse(value: unknown): { success: boolean } }>[] =
      'options' in schema ? schema.options.map((it) => it.shape) : [schema.shape];
    const mayBeEmpty = (name: string) =>
      shapes.some((shape) => !(name in shape) || shape[name]?.safeParse(null).success);
    for (const { name, notnull } of tableColumns(database, table).filter((it) => it.name !== 'putOrder'))
      expect(notnull === 0, `${table}.${name}`).toBe(mayBeEmpty(name));
  }
});

test('every reference of the vocabulary is a foreign key that does the same when its row goes', () => {
  const database = newFile();
  type Key = { from: string; table: string; on_delete: string };
  const stored = tableNames.flatMap((table) =>
    (database.pragma(`foreign_key_list("${table}")`) as Key[]).map(
      (key) => `${table}.${key.from} -> ${key.table} ${key.on_delete}`,
    ),
  );
  const wanted = references.map(
    ({ table, field, to, holds }) =>
      `${table}.${field} -> ${to} ${holds === 'owner' ? 'CASCADE' : 'SET NULL'}`,
  );
  expect(stored.sort()).toEqual(wanted.sort());
});

test('all tables are strict, and every reference has an index, so that removing never searches a whole table', () => {
  const database = newFile();
  const tables = database.pragma('table_list') as { name: string; strict: number; schema: string }[];
  for (const table of tableNames) expect(tables.find((it) => it.name === table)?.strict, table).toBe(1);
  for (const { table, field } of references) {
    const plan = database
      .prepare(`EXPLAIN QUERY PLAN SELECT 1 FROM "${table}" WHERE "${field}" = ?`)
      .all('x');
    expect(JSON.stringify(plan), `${table}.${field}`).toContain('USING');
  }
});

test('a file says what it is, in the place where SQLite looks for it', () => {
  const database = newFile();
  expect(database.pragma('application_id', { simple: true })).toBe(0x466f6c64);
  expect(database.pragma('journal_mode', { simple: true })).toBe('wal');
});
