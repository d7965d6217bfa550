import { rmSync } from 'node:fs';
import { join } from 'node:path';
import type { Refuge } from '../database/sheltered-show.ts';
import { type CopyFolders, firstWritable } from './copy-folders.ts';
import { nameOfCopy } from './copy-names.ts';

/** Keeps a show that cannot be written to its file in the first other folder that takes it, the newest only. */
export function showRefuge(folders: CopyFolders, now: () => Date = () => new Date()): Refuge {
  let kept: string | null = null;
  return {
    async keep(show) {
      const { second, refuges } = folders;
      const folder = firstWritable(second ? [second, ...refuges] : refuges);
      if (folder === null) return null;
      const path = join(folder, nameOfCopy(now(), 'by itself'));
      await show.copyTo(path);
      if (kept !== null && kept !== path) forget(kept);
      kept = path;
      return folder;
    },
    leave() {
      if (kept !== null) forget(kept);
      kept = null;
    },
  };
}

function forget(path: string): void {
  try {
    rmSync(path, { force: true });
  } catch {
    // An old copy that stays does no harm.
  }
}
