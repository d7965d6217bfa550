import { readdirSync, statSync } from 'node:fs';
import { join } from 'node:path';
import type { CopyReason } from '../../core/contract/copies.ts';

/** A copy of the show in a folder; its name says when and why it was made. */
export type CopyFile = {
  name: string;
  path: string;
  madeAtMs: number;
  reason: CopyReason;
  byteCount: number;
};

const pattern = /^show\.(\d{4}-\d\d-\d\dT\d\d-\d\d-\d\d-\d{3}Z)\.([a-z-]+)\.foldbook$/;
const reasons: readonly CopyReason[] = ['by itself', 'by hand', 'before a step', 'before an upgrade'];

/** "show.2026-05-01T09-30-00-000Z.by-hand.foldbook": no sign that a file system refuses. */
export function nameOfCopy(madeAt: Date, reason: CopyReason): string {
  return `show.${madeAt.toISOString().replace(/[:.]/g, '-')}.${reason.replaceAll(' ', '-')}.foldbook`;
}

/** The whole copies in a folder, the newest first. Empty where the folder is not there or cannot be read. */
export function copiesIn(folder: string): CopyFile[] {
  try {
    const found = readdirSync(folder).flatMap((name) => copyOfName(folder, name) ?? []);
    return found.sort((a, b) => b.madeAtMs - a.madeAtMs || (a.name < b.name ? 1 : -1));
  } catch {
    return [];
  }
}

function copyOfName(folder: string, name: string): CopyFile | null {
  const [, stamp, slug] = pattern.exec(name) ?? [];
  const reason = reasons.find((it) => it.replaceAll(' ', '-') === slug);
  if (stamp === undefined || reason === undefined) return null;
  const [date, time = ''] = stamp.split('T');
  const madeAtMs = Date.parse(`${date}T${time.replace(/^(\d\d)-(\d\d)-(\d\d)-/, '$1:$2:$3.')}`);
  const path = join(folder, name);
  const byteCount = statSync(path, { throwIfNoEntry: false })?.size;
  return Number.isNaN(madeAtMs) || byteCount === undefined
    ? null
    : { name, path, madeAtMs, reason, byteCount };
}
