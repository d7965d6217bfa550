import { copyFileSync, mkdirSync, readFileSync, truncateSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import Sqlite from 'better-sqlite3';
import { expect, test } from 'vitest';
import type { Problem } from '../../../core/contract/problem.ts';
import { documentFromShow } from '../../../core/show/show.ts';
import { openShow } from '../../../electron/database/open-show.ts';
import { opened, showPath } from '../../helpers/open-shows.ts';
import { smallShow } from '../../helpers/small-show.ts';

/** A closed show file with some rows. */
function goodFile(path: string): void {
  opened(path, documentFromShow(smallShow())).close();
}

function onFile(path: string, statements: string): void {
  const database = new Sqlite(path);
  database.exec(statements);
  database.close();
}

type BadFile = { what: string; make(path: string): void; code: Problem['code']; says: RegExp };
const badFiles: BadFile[] = [
  {
    what: 'a text',
    make: (path) => writeFileSync(path, 'Channel;Source\n1;Kick'),
    code: 'not a show',
    says: /not a show of this program/,
  },
  {
    what: 'the database of another program',
    make: (path) => onFile(path, 'CREATE TABLE "songs" ("name" TEXT); PRAGMA application_id = 7'),
    code: 'not a show',
    says: /not a show of this program/,
  },
  {
    what: 'a show of a newer program',
    make: (path) => {
      goodFile(path);
      onFile(path, 'PRAGMA user_version = 999');
    },
    code: 'newer show',
    says: /newer version of this program/,
  },
  {
    what: 'a show whose second half is missing',
    make: (path) => {
      goodFile(path);
      truncateSync(path, readFileSync(path).length / 2);
    },
    code: 'damaged show',
    says: /damaged/,
  },
  {
    what: 'a show with noise in its pages',
    make: (path) => {
      goodFile(path);
      const bytes = readFileSync(path);
      bytes.fill(0xa5, 8192, bytes.length - 4096);
      writeFileSync(path, bytes);
    },
    code: 'damaged show',
    says: /damaged/,
  },
  {
    what: 'a show with a row that breaks the rules',
    make: (path) => {
      goodFile(path);
      onFile(path, `UPDATE "rigs" SET "lotsDb" = 12`);
    },
    code: 'damaged show',
    says: /lotsDb/,
  },
  {
    what: 'a show with a changed letter in the text of a table',
    make: (path) => {
      goodFile(path);
      onFile(path, 'ALTER TABLE "decisions" RENAME COLUMN "busId" TO "bu3Id"');
    },
    code: 'damaged show',
    says: /its tables are not those of its version/,
  },
  {
    what: 'a show in which one letter of a name has changed',
    make: (path) => {
      goodFile(path);
      onFile(path, `UPDATE "acts" SET "name" = 'Paper Gerons' WHERE "name" = 'Paper Herons'`);
    },
    code: 'damaged show',
    says: /a row of its acts is not as it was written \(“Paper Gerons”\)/,
  },
  {
    what: 'a show in which a row is missing',
    make: (path) => {
      goodFile(path);
      onFile(path, 'DELETE FROM "wishes" WHERE "putOrder" = 1');
    },
    code: 'damaged show',
    says: /a row of its wishes is missing/,
  },
  {
    what: 'a show into which somebody put a statement that runs by itself',
    make: (path) => {
      goodFile(path);
      onFile(path, 'CREATE TRIGGER "quiet" AFTER UPDATE ON "acts" BEGIN DELETE FROM "sources"; END');
    },
    code: 'damaged show',
    says: /statements that run by themselves \(“quiet”\)/,
  },
  {
    what: 'a show with a view in the place of a table',
    make: (path) => {
      goodFile(path);
      onFile(
        path,
        `PRAGMA foreign_keys = OFF; DROP TABLE "ticks";
         CREATE VIEW "ticks" AS WITH RECURSIVE "n" ("x") AS (SELECT 1 UNION ALL SELECT "x" + 1 FROM "n")
           SELECT "x" AS "putOrder" FROM "n"`,
      );
    },
    code: 'damaged show',
    says: /statements that run by themselves/,
  },
  { what: 'a folder', make: (path) => mkdirSync(path), code: 'cannot write', says: /cannot be opened/ },
];

test.each(badFiles)('$what is refused with a sentence and left as it is', ({ make, code, says }) => {
  const path = showPath();
  make(path);
  const before = code === 'cannot write' ? null : readFileSync(path);
  const outcome = openShow(path);
  if (outcome.ok) throw new Error('it was opened');
  expect(outcome.problem.code).toBe(code);
  expect(outcome.problem.what).toMatch(says);
  expect(outcome.problem.todo).not.toBe('');
  if (before) expect(readFileSync(path).equals(before)).toBe(true);
});

test('a folder that is not there is said, not made', () => {
  const outcome = openShow(join(showPath(), 'festival.foldbook'));
  expect(outcome).toMatchObject({ ok: false, problem: { code: 'cannot write' } });
});

test('a show that is open is refused a second time, and free again when it is closed', () => {
  const path = showPath();
  const first = opened(path);
  expect(openShow(path)).toMatchObject({ ok: false, problem: { code: 'show in use' } });
  first.close();
  expect(openShow(path)).toMatchObject({ ok: true });
});

test('a file of no bytes, as a power cut may leave it, becomes a show', () => {
  const path = showPath();
  writeFileSync(path, '');
  expect(documentFromShow(opened(path, documentFromShow(smallShow())).read()).rigs).toHaveLength(1);
});

test('a file copied while it was closed is the same show', () => {
  const path = showPath();
  goodFile(path);
  copyFileSync(path, `${path}.copy`);
  expect(documentFromShow(opened(`${path}.copy`).read())).toEqual(documentFromShow(smallShow()));
});
