import { spawnSync } from 'node:child_process';
import { onTestFinished } from 'vitest';
import { temporaryFolder } from './temporary-folder.ts';

/** A disk of twelve megabytes in memory, or null where this machine lets nobody make one. */
export function smallDisk(): string | null {
  const folder = temporaryFolder();
  if (process.platform !== 'linux' || process.getuid?.() !== 0) return null;
  if (spawnSync('mount', ['-t', 'tmpfs', '-o', 'size=12m', 'tmpfs', folder]).status !== 0) return null;
  onTestFinished(() => {
    spawnSync('umount', ['-l', folder]);
  });
  return folder;
}
