import { closeSync, fsyncSync, openSync, renameSync, rmSync } from 'node:fs';
import Database from 'better-sqlite3';

/** About a millisecond of work; between two such steps windows are answered. */
const pagesAtATime = 100;

/** Writes a whole copy of an open file, durably and under its name only once it is complete. */
export function copyAtOnce(database: Database.Database, copyPath: string): void {
  const unfinished = startAnew(copyPath);
  database.prepare('VACUUM INTO ?').run(unfinished);
  finish(unfinished, copyPath);
}

/** The same while the work on the file goes on: what is written meanwhile is in the copy too. */
export async function copyOpenShow(database: Database.Database, copyPath: string): Promise<void> {
  const unfinished = startAnew(copyPath);
  await database.backup(unfinished, { progress: () => pagesAtATime });
  const copy = new Database(unfinished);
  try {
    // A copy is one file that can be read where nothing may be written, as on a stick that is write-protected.
    copy.pragma('journal_mode = DELETE');
    const found = copy.pragma('quick_check(1)', { simple: true });
    if (found !== 'ok') throw new Error(`A copy is not whole: ${String(found)}`);
  } finally {
    copy.close();
  }
  finish(unfinished, copyPath);
}

function startAnew(copyPath: string): string {
  const unfinished = `${copyPath}.unfinished`;
  rmSync(unfinished, { force: true });
  return unfinished;
}

function finish(unfinished: string, copyPath: string): void {
  const file = openSync(unfinished, 'r+');
  fsyncSync(file);
  closeSync(file);
  renameSync(unfinished, copyPath);
}
