import { z } from 'zod';
import { compareWithPrint, type Differences, type PrintedRow, printedRows } from './differences.ts';
import type { Sheet } from './sheet.ts';

const rows = z.array(z.strictObject({ key: z.string(), texts: z.array(z.string()) }));

/**
 * A printed version of a sheet. `before` is what the version before it said: a reprint of this version carries the
 * same marks as its first print.
 */
export const Edition = z.strictObject({
  number: z.number().int().min(1),
  /** Local time in words, as printed. */
  madeAt: z.string(),
  rows,
  before: z.strictObject({ number: z.number().int().min(1), madeAt: z.string(), rows }).nullable(),
});
export type Edition = z.infer<typeof Edition>;

/** The version that a sheet would have on paper now, and what it changes. */
export type Version = { edition: Edition; differences: Differences; isNew: boolean };

/** The same words are the same version, however often they are printed; other words are the next one. */
export function nextVersion(sheet: Sheet, last: Edition | null, madeAt: string): Version {
  const now = printedRows(sheet);
  if (last && isSame(now, last.rows)) {
    return { edition: last, differences: compareWithPrint(now, last.before?.rows ?? null), isNew: false };
  }
  const before = last && { number: last.number, madeAt: last.madeAt, rows: last.rows };
  const edition = { number: (last?.number ?? 0) + 1, madeAt, rows: now, before };
  return { edition, differences: compareWithPrint(now, last?.rows ?? null), isNew: true };
}

function isSame(now: readonly PrintedRow[], last: readonly PrintedRow[]): boolean {
  if (now.length !== last.length) return false;
  const { marks, gone } = compareWithPrint(now, last);
  return marks.size === 0 && gone.length === 0 && now.every((row, at) => row.key === last[at]?.key);
}

/** What stands at the foot of every page, so that an old sheet is known for what it is. */
export function versionText({ number, madeAt, before }: Edition): string {
  const replaces = before ? `replaces version ${before.number} of ${before.madeAt}` : 'replaces none';
  return `Version ${number}, ${madeAt}, ${replaces}`;
}
