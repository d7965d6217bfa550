import type { Database } from 'better-sqlite3';
import { migrations } from './migrations/migrations.ts';
import { RowSums } from './row-sums.ts';

/** "Fold" in ASCII, at byte 68 of every show file: how the file says what it is. */
export const applicationId = 0x466f6c64;
export const newestVersion = migrations.length;

/** How many migrations the file has had. */
export function versionOf(database: Database): number {
  return Number(database.pragma('user_version', { simple: true }));
}

/**
 * Brings a file to the newest version, or leaves it wholly as it was: every step and every version mark are in one
 * transaction. What can be undone stays: its statements name tables and columns, and steps only ever add some (a test
 * undoes across each of them). `finish` runs in it, after the last step. Throws what SQLite throws.
 */
export function migrate(database: Database, finish: () => void): void {
  // A step that builds a table anew would, with foreign keys on, take everything that hangs on it along.
  database.pragma('foreign_keys = OFF');
  database
    .transaction(() => {
      const from = versionOf(database);
      for (const [index, { statements }] of migrations.entries()) {
        if (index < from) continue;
        database.exec(statements);
        database.pragma(`user_version = ${index + 1}`);
      }
      database.pragma(`application_id = ${applicationId}`);
      finish();
      new RowSums(database).keepAll();
      const broken = database.pragma('foreign_key_check') as unknown[];
      if (broken.length > 0) throw new Error(`After the migration ${broken.length} references name nothing.`);
    })
    .immediate();
  database.pragma('foreign_keys = ON');
}
