import { accessSync, closeSync, constants, existsSync, openSync, readSync, statSync } from 'node:fs';
import { hostname } from 'node:os';
import { basename, dirname } from 'node:path';
import Database from 'better-sqlite3';
import { type Outcome, type Problem, refuse } from '../../core/contract/problem.ts';
import type { Rows } from '../../core/show/show.ts';
import { tableNames } from '../../core/show/show.ts';
import { copyAtOnce } from './copy-show.ts';
import { applicationId, migrate, newestVersion, versionOf } from './migrate.ts';
import { ShowRows } from './rows.ts';
import { ShowDatabase, type WriterSettings } from './show-database.ts';
import { damagedShow, notOpened, problemOf } from './trouble.ts';

type Settings = {
  /** What a file holds that was not there before; without it, nothing. Not a step that undo could take back. */
  firstRows?: () => Partial<Rows>;
  now?: () => Date;
  /** The name of this machine, under which its writes are told. */
  device?: string;
};

/**
 * Opens a show file for this process alone, makes it where there is none, and brings an older one to the newest
 * version after putting a copy beside it. Refused, and left untouched: `not a show`, `newer show`,
 * `damaged show`, `show in use`; `cannot write` where the disk does not let it.
 */
export function openShow(path: string, settings: Settings = {}): Outcome<ShowDatabase> {
  let database: Database.Database | undefined;
  try {
    if (!existsSync(dirname(path))) return { ok: false, problem: notOpened(path) };
    // SQLite would open it for reading, and then only say that a lock failed.
    accessSync(existsSync(path) ? path : dirname(path), constants.W_OK);
    if (isForeign(path)) return notAShow(path);
    database = new Database(path, { timeout: 300 });
    distrust(database);
    const refused = takeAlone(database, path);
    if (refused) {
      database.close();
      return refused;
    }
    prepare(database, path, writerOf(settings).now(), settings.firstRows);
    const show = new ShowDatabase(path, database, writerOf(settings));
    show.read();
    const wrong = show.wrongRow();
    if (wrong === null) return { ok: true, value: show };
    database.close();
    return { ok: false, problem: damagedShow(path, wrong) };
  } catch (error) {
    database?.close();
    const problem = problemOf(error, path) ?? damageOf(error, path);
    if (!problem) throw error;
    return { ok: false, problem };
  }
}

/** Damage that shows only when a file of ours is first used: changed letters in the text of a table. */
function damageOf(error: unknown, path: string): Problem | null {
  const isAboutTables = error instanceof Database.SqliteError && error.code === 'SQLITE_ERROR';
  return isAboutTables ? damagedShow(path, 'its tables are not those of its version') : null;
}

/**
 * A show in memory only, from the bytes of a show file of this or an older version. Throws what SQLite throws.
 * `path`: the file that it stands for.
 */
export function showInMemory(path: string, bytes: Uint8Array, settings: Settings = {}): ShowDatabase {
  const file = Buffer.from(bytes);
  // Bytes 18 and 19 say that there is a write-ahead log (sqlite.org/fileformat2.html); memory has none.
  file[18] = 1;
  file[19] = 1;
  const database = new Database(file);
  distrust(database);
  const planted = plantedStatement(database);
  if (planted) throw new Error(`This is no show: ${planted}.`);
  database.pragma('foreign_keys = ON');
  if (versionOf(database) < newestVersion) migrate(database, () => {});
  return new ShowDatabase(path, database, writerOf(settings));
}

/** A new show in memory only. */
export function newShowInMemory(path: string, firstRows: Partial<Rows>): ShowDatabase {
  const database = new Database(':memory:');
  migrate(database, () => putAll(database, firstRows));
  return new ShowDatabase(path, database, writerOf({}));
}

function writerOf({ now, device }: Settings): WriterSettings {
  return { now: now ?? (() => new Date()), device: device ?? hostname() };
}

const sqliteMagic = 'SQLite format 3\0';

/** Whether there is a file with anything but SQLite in it. Looked at first, so that SQLite never touches it. */
function isForeign(path: string): boolean {
  if (!statSync(path, { throwIfNoEntry: false })?.isFile()) return false;
  const head = Buffer.alloc(sqliteMagic.length);
  const file = openSync(path, 'r');
  const length = readSync(file, head, 0, head.length, 0);
  closeSync(file);
  return length > 0 && head.toString('latin1') !== sqliteMagic;
}

/** Locks the file and looks at what it is before anything is written; answers why it cannot be taken, or null. */
function takeAlone(database: Database.Database, path: string): Outcome<never> | null {
  database.pragma('locking_mode = EXCLUSIVE');
  database.exec('BEGIN EXCLUSIVE; COMMIT');
  const version = versionOf(database);
  const tables = database.prepare('SELECT count(*) FROM sqlite_schema').pluck().get();
  const id = database.pragma('application_id', { simple: true });
  const isNew = version === 0 && tables === 0 && id === 0;
  if (!isNew && id !== applicationId) return notAShow(path);
  if (version > newestVersion)
    return refuse(
      'newer show',
      `The show "${basename(path)}" was written by a newer version of this program.`,
      'Start the newer version, or go on from a copy that this one wrote. This file was left as it is.',
    );
  const planted = plantedStatement(database);
  if (planted) return { ok: false, problem: damagedShow(path, planted) };
  const found = database.pragma('quick_check(1)', { simple: true });
  if (found === 'ok') return null;
  const why = String(found).replace(/^\*\*\* in database main \*\*\*\s*/, '');
  return { ok: false, problem: damagedShow(path, why) };
}

/** A file may come from a stranger's stick: what SQLite advises for such (sqlite.org/security.html). */
function distrust(database: Database.Database): void {
  database.pragma('trusted_schema = OFF');
  database.pragma('cell_size_check = ON');
}

/** Triggers of ours live as long as a connection: one that stands in the file, somebody else has put there. */
function plantedStatement(database: Database.Database): string | null {
  const name = database
    .prepare(`SELECT "name" FROM sqlite_schema WHERE "type" IN ('trigger', 'view') LIMIT 1`)
    .pluck()
    .get();
  return name === undefined
    ? null
    : `it holds statements that run by themselves (“${String(name).slice(0, 60)}”)`;
}

function prepare(
  database: Database.Database,
  path: string,
  now: Date,
  firstRows: Settings['firstRows'],
): void {
  database.pragma('journal_mode = WAL');
  // Not the default in WAL mode: without it, power loss may take back what was already said to be saved.
  database.pragma('synchronous = FULL');
  database.pragma('fullfsync = ON');
  database.pragma('foreign_keys = ON');
  const version = versionOf(database);
  if (version === newestVersion) return;
  if (version > 0) copyAtOnce(database, copyPathOf(path, version, now));
  migrate(database, () => {
    if (version === 0 && firstRows) putAll(database, firstRows());
  });
}

function putAll(database: Database.Database, rows: Partial<Rows>): void {
  const put = tableNames.flatMap((table) => (rows[table] ?? []).map((row) => ({ table, row })));
  new ShowRows(database).write({ put: put as Parameters<ShowRows['write']>[0]['put'], remove: [] });
}

/** "festival.foldbook" of version 1 keeps its copy in "festival.version-1.2026-05-01T09-30-00.foldbook". */
function copyPathOf(path: string, version: number, now: Date): string {
  const stamp = now.toISOString().slice(0, 19).replaceAll(':', '-');
  return path.replace(/(\.[^./\\]*)?$/, `.version-${version}.${stamp}$1`);
}

function notAShow(path: string): Outcome<never> {
  return refuse(
    'not a show',
    `"${basename(path)}" is not a show of this program.`,
    'Choose another file. This one was left as it is.',
  );
}
