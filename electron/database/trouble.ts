import { basename } from 'node:path';
import { ZodError } from 'zod';
import type { Problem } from '../../core/contract/problem.ts';

type Words = { code: Problem['code']; what: (file: string) => string; todo: string };

const keepWorking = 'What was saved before is still there.';

const notOpenedWords: Words = {
  code: 'cannot write',
  what: (file) => `The show "${file}" cannot be opened for reading and writing.`,
  todo: 'Look whether its folder is there and whether you may write to both, then start again.',
};

const onlyReadWords: Words = {
  code: 'cannot write',
  what: (file) => `The show "${file}" may only be read, so nothing was written.`,
  todo: `Allow writing to the file and its folder, or copy it to a folder of your own. ${keepWorking}`,
};

/** What the result codes of SQLite and of the file system mean to the engineer. */
const meanings: readonly [code: string, words: Words][] = [
  [
    'SQLITE_BUSY',
    {
      code: 'show in use',
      what: (file) => `The show "${file}" is already open in another window or program.`,
      todo: 'Go on in the one that has it open, or close that one and start again.',
    },
  ],
  [
    'SQLITE_FULL',
    {
      code: 'cannot write',
      what: (file) => `The disk that holds "${file}" is full, so nothing was written.`,
      todo: `Make room on that disk, then do it again. ${keepWorking}`,
    },
  ],
  ['SQLITE_READONLY', onlyReadWords],
  ['EROFS', onlyReadWords],
  ['SQLITE_CANTOPEN', notOpenedWords],
  ['EACCES', notOpenedWords],
  ['EPERM', notOpenedWords],
  [
    'SQLITE_IOERR',
    {
      code: 'cannot write',
      what: (file) => `The disk that holds "${file}" gave an error, so nothing was written.`,
      todo: `Copy the show to another disk and go on there. ${keepWorking}`,
    },
  ],
  [
    'SQLITE_NOTADB',
    {
      code: 'not a show',
      what: (file) => `"${file}" is not a show of this program.`,
      todo: 'Choose another file. This one was left as it is.',
    },
  ],
  ['SQLITE_CORRUPT', damaged('its pages do not fit together')],
];

function damaged(why: string): Words {
  return {
    code: 'damaged show',
    what: (file) => `The show "${file}" is damaged: ${why}.`,
    todo: 'Go on from the newest copy of it. This file was left as it is.',
  };
}

const inWords = (words: Words, path: string): Problem => ({
  code: words.code,
  what: words.what(basename(path)),
  todo: words.todo,
});

/** The problem of a file that cannot even be opened. */
export function notOpened(path: string): Problem {
  return inWords(notOpenedWords, path);
}

/** The problem of a damaged file, with what was found wrong in it. */
export function damagedShow(path: string, why: string): Problem {
  return inWords(damaged(why), path);
}

/** The trouble that an error of SQLite, or a stored row that is none, stands for; null where it is a bug of ours. */
export function problemOf(error: unknown, path: string): Problem | null {
  if (error instanceof ZodError) {
    const issue = error.issues[0];
    return damagedShow(path, `a row in it is not valid (${issue?.path.join('.')}: ${issue?.message})`);
  }
  if (!(error instanceof Error) || !('code' in error)) return null;
  const code = String(error.code);
  const words = meanings.find(([start]) => code.startsWith(start))?.[1];
  return words ? inWords(words, path) : null;
}
