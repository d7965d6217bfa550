import { join } from 'node:path';
import { onTestFinished } from 'vitest';
import type { Rows } from '../../core/show/show.ts';
import { openShow } from '../../electron/database/open-show.ts';
import type { ShowDatabase } from '../../electron/database/show-database.ts';
import { temporaryFolder } from './temporary-folder.ts';

/** The path of a show file in a folder of the test's own; there is no file yet. */
export function showPath(): string {
  return join(temporaryFolder(), 'festival.foldbook');
}

/** The show at a path, opened and closed again with the test. Fails the test where it cannot be opened. */
export function opened(path: string, firstRows?: Partial<Rows>): ShowDatabase {
  const show = openShow(path, firstRows ? { firstRows: () => firstRows } : {});
  if (!show.ok) throw new Error(show.problem.what);
  onTestFinished(() => show.value.close());
  return show.value;
}
