import { randomBytes } from 'node:crypto';
import { appendFileSync, mkdirSync, renameSync, rmSync, statSync } from 'node:fs';
import { join } from 'node:path';

/** Where bugs are written down, so that an id in the window finds its line. */
export type Log = {
  /** Writes down that `where` broke, and answers the id that the user is shown. Never throws. */
  trouble(where: string, error: unknown): string;
};

export const largestLogBytes = 512 * 1024;
const keptLogs = 4;

/** A log in a folder: one file that is written, and older ones with a number, the oldest of which goes. */
export function openLog(folder: string, now: () => Date = () => new Date()): Log {
  const file = join(folder, 'foldbook.log');
  return {
    trouble(where, error) {
      const id = randomBytes(4).toString('hex');
      try {
        mkdirSync(folder, { recursive: true });
        rotate(file);
        appendFileSync(file, `${now().toISOString()} ${id} ${where}: ${describe(error)}\n`);
      } catch {
        // A log that cannot be written (the disk is full) must not break the work that it would tell of.
      }
      return id;
    },
  };
}

function rotate(file: string): void {
  const size = statSync(file, { throwIfNoEntry: false })?.size ?? 0;
  if (size < largestLogBytes) return;
  rmSync(`${file}.${keptLogs}`, { force: true });
  for (let number = keptLogs - 1; number >= 1; number--) renameIfThere(`${file}.${number}`, number + 1, file);
  renameSync(file, `${file}.1`);
}

function renameIfThere(from: string, number: number, file: string): void {
  if (statSync(from, { throwIfNoEntry: false })) renameSync(from, `${file}.${number}`);
}

/**
 * Name, code and place of an error on one line. Not its message: that may quote what a rider or the engineer
 * wrote. Not the folders above the program: they name the user.
 */
function describe(error: unknown): string {
  if (!(error instanceof Error)) return `a thrown ${typeof error}`;
  const code = 'code' in error ? ` ${String(error.code)}` : '';
  const places = (error.stack ?? '')
    .split('\n')
    .map((line) =>
      /^\s+at (?:(\S+) \()?.*?((?:core|electron|renderer|node_modules)\/[^)]*|node:[^)]*)\)?$/.exec(line),
    )
    .filter((found) => found !== null)
    .map((found) => `${found[1] ?? ''} ${found[2]}`.trim());
  return `${error.name}${code} at ${places.slice(0, 8).join(' < ') || 'a place unknown'}`;
}
