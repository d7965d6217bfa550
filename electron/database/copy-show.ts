import { closeSync, fsyncSync, openSync, renameSync, rmSync } from 'node:fs';
import type { Database } from 'better-sqlite3';
import { damageOfCopy } from '../copies/check-copy.ts';

/** About a millisecond of work; between two such steps windows are answered. */
const pagesAtATime = 100;

/** A copy in which a thorough check found damage: then the show that was copied is most likely damaged too. */
class DamagedCopy extends Error {
  readonly code = 'DAMAGED';
}

/** Writes a whole copy of an open file, durably and under its name only once it is complete. */
export function copyAtOnce(database: Database, copyPath: string): void {
  const unfinished = startAnew(copyPath);
  database.prepare('VACUUM INTO ?').run(unfinished);
  finish(unfinished, copyPath);
}

/** The same while the work on the file goes on: what is written meanwhile is in the copy too. */
export async function copyOpenShow(database: Database, copyPath: string): Promise<void> {
  const unfinished = startAnew(copyPath);
  await database.backup(unfinished, { progress: () => pagesAtATime });
  const found = await damageOfCopy(unfinished);
  if (found !== null) throw new DamagedCopy(found);
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
