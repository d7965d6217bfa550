import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import { put } from '../../core/show/change.ts';
import { documentFromShow } from '../../core/show/show.ts';
import { openShow } from '../../electron/database/open-show.ts';
import { smallShow } from '../helpers/small-show.ts';
import { median } from './median.ts';

/**
 * One durable edit (validated, written, recorded for undo, on the disk) against one bare SQLite commit of one row
 * with the same settings, in turns, so that both meet the same disk. On a disk that is slow to sync they are equal.
 */
const rounds = 300;
const folder = mkdtempSync(join(tmpdir(), 'foldbook-bench-'));

const opened = openShow(join(folder, 'show.foldbook'), { firstRows: () => documentFromShow(smallShow()) });
if (!opened.ok) throw new Error(opened.problem.what);
const show = opened.value;
const act = [...show.read().acts.values()][0];
if (!act) throw new Error('The small show has an act.');

const bare = new Database(join(folder, 'bare.db'));
bare.pragma('locking_mode = EXCLUSIVE');
bare.pragma('journal_mode = WAL');
bare.pragma('synchronous = FULL');
bare.exec('CREATE TABLE "acts" ("id" TEXT PRIMARY KEY, "name" TEXT NOT NULL) STRICT');
bare.exec(`INSERT INTO "acts" VALUES ('act', '')`);
const update = bare.prepare('UPDATE "acts" SET "name" = ? WHERE "id" = ?');

const editMs: number[] = [];
const bareMs: number[] = [];
for (let round = 0; round < rounds; round++) {
  const name = `Act ${round}`;
  const started = performance.now();
  const saved = show.change({ label: 'Rename', put: [put('acts', { ...act, name })], remove: [] });
  const between = performance.now();
  update.run(name, 'act');
  bareMs.push(performance.now() - between);
  editMs.push(between - started);
  if (!saved.ok) throw new Error(saved.problem.what);
}
show.close();
bare.close();
rmSync(folder, { recursive: true });

const [edit, commit] = [median(editMs), median(bareMs)];
console.log(`one durable edit       ${edit.toFixed(3)} ms (median of ${rounds})`);
console.log(`one bare SQLite commit ${commit.toFixed(3)} ms`);
console.log(`ratio                  ${(edit / commit).toFixed(2)}`);
