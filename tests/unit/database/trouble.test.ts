import Database from 'better-sqlite3';
import { expect, test } from 'vitest';
import { z } from 'zod';
import { problemOf } from '../../../electron/database/trouble.ts';

const path = '/home/noor/festival.foldbook';

// Result codes: https://www.sqlite.org/rescode.html. The longer ones are kinds of the shorter.
test.each([
  ['SQLITE_FULL', 'cannot write', /disk that holds "festival.foldbook" is full/],
  ['SQLITE_READONLY', 'cannot write', /may only be read/],
  ['SQLITE_READONLY_DIRECTORY', 'cannot write', /may only be read/],
  ['SQLITE_IOERR_WRITE', 'cannot write', /gave an error/],
  ['SQLITE_IOERR_FSYNC', 'cannot write', /gave an error/],
  ['SQLITE_CANTOPEN', 'cannot write', /cannot be opened/],
  ['SQLITE_BUSY', 'show in use', /already open/],
  ['SQLITE_NOTADB', 'not a show', /not a show/],
  ['SQLITE_CORRUPT_INDEX', 'damaged show', /damaged/],
])('%s is told as "%s", with the name of the file and without its folder', (code, problem, what) => {
  const told = problemOf(new Database.SqliteError('words of SQLite', code), path);
  expect(told?.code).toBe(problem);
  expect(told?.what).toMatch(what);
  expect(`${told?.what}${told?.todo}`).not.toMatch(/noor|words of SQLite|SQLITE/);
});

test('a stored row that breaks a rule is damage, and the rule is named', () => {
  const broken = z.strictObject({ lotsDb: z.number().max(0) }).safeParse({ lotsDb: 12 });
  expect(problemOf(broken.error, path)).toMatchObject({
    code: 'damaged show',
    what: expect.stringContaining('lotsDb'),
  });
});

test.each([new TypeError('a bug'), new Database.SqliteError('a bug', 'SQLITE_ERROR'), 'a text', undefined])(
  'a bug is no trouble of the user (%s)',
  (error) => {
    expect(problemOf(error, path)).toBeNull();
  },
);
