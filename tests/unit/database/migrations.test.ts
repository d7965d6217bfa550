import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import Sqlite from 'better-sqlite3';
import { expect, test } from 'vitest';
import { put } from '../../../core/show/change.ts';
import { documentFromShow, tableNames } from '../../../core/show/show.ts';
import { newestVersion } from '../../../electron/database/migrate.ts';
import { opened, showPath } from '../../helpers/open-shows.ts';
import { smallShow } from '../../helpers/small-show.ts';

const fixtures = join(import.meta.dirname, '..', '..', 'fixtures', 'shows');

/** The older versions of which a file is kept, each as its program left it. */
const olderVersions = readdirSync(fixtures)
  .map((name) => Number(/^version-(\d+)\.sql$/.exec(name)?.[1]))
  .filter((version) => Number.isInteger(version));

/** A file of an older version on the disk. */
function olderFile(version: number): string {
  const path = showPath();
  const database = new Sqlite(path);
  database.exec(readFileSync(join(fixtures, `version-${version}.sql`), 'utf8'));
  database.close();
  return path;
}

const readVersion = (path: string) => {
  const database = new Sqlite(path);
  const version = database.pragma('user_version', { simple: true });
  database.close();
  return version;
};

test('a file of every older version is kept, so that each migration has run on rows of its time', () => {
  const all = Array.from({ length: newestVersion - 1 }, (_, index) => index + 1);
  expect(olderVersions.sort((a, b) => a - b)).toEqual(all);
});

test.each(olderVersions)(
  'a show of version %i opens with all its rows, and can be worked on and undone',
  (version) => {
    const path = olderFile(version);
    const show = opened(path);
    const before = documentFromShow(smallShow());
    expect(documentFromShow(show.read())).toEqual(before);
    const act = before.acts[0];
    if (!act) throw new Error('the small show has an act');
    const change = { label: 'Rename', put: [put('acts', { ...act, name: 'Tin Lanterns' })], remove: [] };
    expect(show.change(change)).toEqual({ ok: true, value: { revision: 1, undo: 'Rename', redo: null } });
    expect(show.undo().ok).toBe(true);
    expect(documentFromShow(show.read())).toEqual(before);
    show.close();
    expect(readVersion(path)).toBe(newestVersion);
  },
);

test.each(olderVersions)(
  'before a show of version %i is brought up, a whole copy of it is put beside it',
  (version) => {
    const path = olderFile(version);
    opened(path).close();
    const copies = readdirSync(dirname(path)).filter((name) =>
      name.startsWith(`festival.version-${version}.`),
    );
    expect(copies).toHaveLength(1);
    const copy = join(dirname(path), copies[0] ?? '');
    expect(readVersion(copy)).toBe(version);
    expect(documentFromShow(opened(copy).read())).toEqual(documentFromShow(smallShow()));
  },
);

const firstWithSums = 9;

/** Removes every row of an older file, as one step whose inverses are written as the triggers of its time did. */
function emptiedBefore(version: number): string {
  const path = olderFile(version);
  const database = new Sqlite(path);
  database.pragma('foreign_keys = OFF');
  database.exec(
    `INSERT INTO "steps" ("number", "label", "madeAt") VALUES (1000, 'Remove all', '2026-05-01')`,
  );
  const keep = database.prepare(
    'INSERT INTO "inverses" ("step", "table", "rowId", "statement") VALUES (1000, ?, ?, ?)',
  );
  for (const table of [...tableNames].reverse()) {
    const columns = database
      .prepare('SELECT "name" FROM pragma_table_info(?)')
      .pluck()
      .all(table) as string[];
    if (columns.length === 0) continue;
    const names = columns.map((name) => `"${name}"`).join(', ');
    const values = columns.map((name) => `quote("${name}")`).join(` || ', ' || `);
    const rows = database.prepare(`SELECT "id", ${values} AS "literals" FROM "${table}"`).all() as {
      id: string;
      literals: string;
    }[];
    for (const { id, literals } of rows.reverse())
      keep.run(table, id, `INSERT INTO "${table}" (${names}) VALUES (${literals})`);
    database.exec(`DELETE FROM "${table}"`);
  }
  // A program that keeps sums of rows keeps none of a row that is gone.
  if (version >= firstWithSums) database.exec('DELETE FROM "rowSums"');
  database.close();
  return path;
}

test.each(olderVersions.filter((version) => version > 1))(
  'what was done in a show of version %i can be undone and done again after it was brought up',
  (version) => {
    const show = opened(emptiedBefore(version));
    expect(show.read().sources.size).toBe(0);
    expect(show.standing().undo).toBe('Remove all');
    expect(show.undo().ok).toBe(true);
    expect(documentFromShow(show.read())).toEqual(documentFromShow(smallShow()));
    expect(show.redo().ok).toBe(true);
    expect(show.read().sources.size).toBe(0);
  },
);

test('a new show starts at the newest version, with the first rows, which undo does not take away', () => {
  const path = showPath();
  const show = opened(path, documentFromShow(smallShow()));
  expect(show.standing()).toEqual({ revision: 0, undo: null, redo: null });
  show.close();
  expect(readVersion(path)).toBe(newestVersion);
  expect(documentFromShow(opened(path).read())).toEqual(documentFromShow(smallShow()));
  expect(readdirSync(dirname(path)).filter((name) => name.includes('version'))).toEqual([]);
});

test('first rows that do not fit leave no half-made show: the next start begins anew', () => {
  const path = showPath();
  const broken = { ...documentFromShow(smallShow()), rigs: [] };
  expect(() => opened(path, broken)).toThrow();
  expect(documentFromShow(opened(path, documentFromShow(smallShow())).read())).toEqual(
    documentFromShow(smallShow()),
  );
});
