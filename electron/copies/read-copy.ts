import { chmodSync, copyFileSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Outcome } from '../../core/contract/problem.ts';
import { openShow } from '../database/open-show.ts';
import type { ShowDatabase } from '../database/show-database.ts';

/**
 * Looks into a copy by `look`, in a copy of its own: so an older one is brought to the newest version without being
 * touched. Answers the problem of `openShow` where it is no good show.
 */
export function readCopy<T>(path: string, look: (show: ShowDatabase) => T): Outcome<T> {
  const folder = mkdtempSync(join(tmpdir(), 'foldbook-look-'));
  try {
    const looked = join(folder, 'show.foldbook');
    copyFileSync(path, looked);
    // A copy from a write-protected stick comes with its protection.
    chmodSync(looked, 0o600);
    const opened = openShow(looked);
    if (!opened.ok) return opened;
    try {
      return { ok: true, value: look(opened.value) };
    } finally {
      opened.value.close();
    }
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
