import { chmodSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { temporaryFolder } from './temporary-folder.ts';

/** A program that stands for a browser: a script of the shell, given what a browser is given. */
export function fakeBrowser(script: string): string {
  const path = join(temporaryFolder(), 'chromium');
  writeFileSync(path, `#!/bin/sh\n${script}\n`);
  chmodSync(path, 0o755);
  return path;
}
