import { readFile, stat } from 'node:fs/promises';
import { basename } from 'node:path';
import { buffer } from 'node:stream/consumers';
import { type Outcome, refuse } from '../../core/contract/problem.ts';
import type { Grid } from '../../core/rider/grid.ts';
import { gridFromFile } from '../documents/grid-from-file.ts';
import { limits } from '../documents/limits.ts';

/** The grid of a rider by its path on the command line; `-` reads standard input. Never throws for a bad path. */
export async function gridOfPath(path: string): Promise<Outcome<Grid>> {
  if (path === '-') return gridFromFile('standard input', await buffer(process.stdin));
  const trouble = await troubleWith(path);
  if (trouble)
    return refuse('unreadable file', `“${path}” ${trouble}`, 'Check the name of the file and try again.');
  return gridFromFile(basename(path), await readFile(path));
}

async function troubleWith(path: string): Promise<string | null> {
  try {
    const found = await stat(path);
    if (found.isDirectory()) return 'is a folder, not a file.';
    // A file that is far too large is not even read: the size alone refuses it.
    if (found.size > limits.fileBytes)
      return `has ${Math.round(found.size / 1024 / 1024)} MB, far more than a rider.`;
    return null;
  } catch (error) {
    const code = error instanceof Error && 'code' in error ? error.code : '';
    return code === 'ENOENT' ? 'is not there.' : `cannot be opened (${code}).`;
  }
}
