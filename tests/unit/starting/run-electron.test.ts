import { chmodSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { expect, test } from 'vitest';
import { runElectron } from '../../../electron/starting/run-electron.ts';
import { temporaryFolder } from '../../helpers/temporary-folder.ts';

const root = resolve(import.meta.dirname, '..', '..', '..');

/** A program that stands for Electron's binary: a script of the shell. */
function fakeElectron(script: string): string {
  const path = join(temporaryFolder(), 'electron');
  writeFileSync(path, `#!/bin/sh\n${script}\n`);
  chmodSync(path, 0o755);
  return path;
}

test.each([
  { what: 'whose window was closed', script: 'exit 0', ran: true },
  { what: 'that lacks a library', script: 'exit 127', ran: false },
  {
    what: 'that was told to end as soon as it had started',
    script: 'kill -TERM $PPID; sleep 1; exit 143',
    ran: true,
  },
])('an Electron $what is taken to have run: $ran', async ({ script, ran }) => {
  expect(await runElectron(fakeElectron(script), root, temporaryFolder())).toBe(ran);
});

test('an Electron that is not there did not run', async () => {
  expect(await runElectron(join(temporaryFolder(), 'gone'), root, temporaryFolder())).toBe(false);
});
