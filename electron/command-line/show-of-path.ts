import { readFile } from 'node:fs/promises';
import { type Outcome, refuse } from '../../core/contract/problem.ts';
import type { Edition } from '../../core/sheets/edition.ts';
import { type Show, showFromRows } from '../../core/show/show.ts';
import { openShow } from '../database/open-show.ts';
import { showOfFile } from './show-of-file.ts';

/** A show that a command works on, with what was printed of it before. */
export type OpenedShow = {
  show: Show;
  lastPrints(keys: readonly string[]): ReadonlyMap<string, Edition>;
  keepPrints(printed: readonly { key: string; edition: Edition }[]): Promise<Outcome<null>>;
  close(): void;
};

type PrintLedger = Pick<OpenedShow, 'lastPrints' | 'keepPrints'>;

/** Opens a show file, or an exported show (JSON), whose prints are then remembered in `ledger`. */
export async function openShowOfPath(path: string, ledger: PrintLedger): Promise<Outcome<OpenedShow>> {
  const bytes = await readFile(path).catch((error: NodeJS.ErrnoException) => error.code ?? 'unknown');
  if (typeof bytes === 'string')
    return refuse(
      'unreadable file',
      bytes === 'ENOENT' ? `“${path}” is not there.` : `“${path}” cannot be opened (${bytes}).`,
      'Check the name of the show.',
    );
  if (bytes.subarray(0, 15).toString('latin1') === 'SQLite format 3') return openShowFile(path);
  const read = await showOfFile(path);
  if (!read.ok) return read;
  return { ok: true, value: { show: showFromRows(read.value), ...ledger, close: () => {} } };
}

function openShowFile(path: string): Outcome<OpenedShow> {
  const opened = openShow(path);
  if (!opened.ok) return opened;
  const database = opened.value;
  return {
    ok: true,
    value: {
      show: database.read(),
      lastPrints: (keys) => database.lastPrints(keys),
      keepPrints: async (printed) => database.keepPrints(printed),
      close: () => database.close(),
    },
  };
}
