import { spawnSync } from 'node:child_process';
import { readFileSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { FuseV1Options } from '@electron/fuses';
import { expect, test } from 'vitest';
import { fuses } from '../../../electron/fuses.ts';
import { temporaryFolder } from '../../helpers/temporary-folder.ts';

const script = resolve(import.meta.dirname, '..', '..', '..', 'electron', 'command-line', 'flip-fuses.ts');

/** Where the fuses lie in Electron's binary: this mark, version 1, how many, then a sign each (electron/build/fuses). */
const mark = 'dL7pKGdnNz796PbbjQWNKmHXBZaB9tsX';

/** A file that holds fuses as Electron's binary does, as they are delivered: run-as-node on, cookies open and so on. */
function program(signs: string): string {
  const path = join(temporaryFolder(), 'foldbook');
  writeFileSync(path, `before ${mark}\u0001${String.fromCharCode(signs.length)}${signs} after`);
  return path;
}

function noProgram(): string {
  const path = join(temporaryFolder(), 'notes');
  writeFileSync(path, 'Channel;Source');
  return path;
}

const flip = (...words: string[]) => spawnSync(process.execPath, [script, ...words], { encoding: 'utf8' });

test('every fuse that Electron has is decided on', () => {
  const names = Object.keys(FuseV1Options).filter((name) => Number.isNaN(Number(name)));
  expect(Object.keys(fuses)).toEqual(names);
});

// electronjs.org/docs/latest/tutorial/fuses: what each lets in; from memory which are to be closed.
test.each([
  'RunAsNode',
  'EnableNodeOptionsEnvironmentVariable',
  'EnableNodeCliInspectArguments',
  'GrantFileProtocolExtraPrivileges',
] as const)('%s lets foreign code or rights in, and is off', (name) => expect(fuses[name].on).toBe(false));

test.each([
  'EnableEmbeddedAsarIntegrityValidation',
  'OnlyLoadAppFromAsar',
  'EnableCookieEncryption',
] as const)('%s keeps something out, and is on', (name) => expect(fuses[name].on).toBe(true));

test('they are turned in the file of the program, read back, and nothing else in it is changed', () => {
  const path = program('101100011');
  const { status, stdout } = flip(path);
  expect({ status, lines: stdout.trim().split('\n').length }).toEqual({ status: 0, lines: 9 });
  expect(readFileSync(path, 'latin1')).toBe(`before ${mark}\u0001\u0009010011001 after`);
});

test.each<[what: string, path: () => string, says: RegExp]>([
  ['a fuse more than is decided on', () => program('1011000111'), /could not be turned/],
  ['no fuses', () => noProgram(), /Could not find sentinel/],
])('a file with %s is left as it was, with a sentence', (_what, path, says) => {
  const file = path();
  const before = readFileSync(file);
  const { status, stderr } = flip(file);
  expect({ status, stderr }).toEqual({ status: 1, stderr: expect.stringMatching(says) });
  expect(readFileSync(file)).toEqual(before);
});

test('a program that is not there, and no program at all, are said', () => {
  expect(flip('/nowhere/foldbook')).toMatchObject({ status: 1, stderr: /There is no/ as never });
  expect(flip().status).toBe(2);
});
