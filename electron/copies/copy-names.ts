import { readdirSync, statSync } from 'node:fs';
import { hostname } from 'node:os';
import { join } from 'node:path';
import type { CopyReason } from '../../core/contract/copies.ts';

/** A copy of the show in a folder; its name says when and why it was made. */
export type CopyFile = {
  name: string;
  path: string;
  madeAtMs: number;
  reason: CopyReason;
  byteCount: number;
  /** The machine that made it, as in the name; null in a copy of before machines were named. */
  machine: string | null;
};

const pattern =
  /^show\.(\d{4}-\d\d-\d\dT\d\d-\d\d-\d\d-\d{3}Z)\.([a-z-]+)(?:\.([a-z0-9-]{1,40}))?\.foldbook$/;
const reasons: readonly CopyReason[] = ['by itself', 'by hand', 'before a step', 'before an upgrade'];

/** This machine as it stands in the names of its copies. */
export function thisMachine(host = hostname()): string {
  const name = host.toLowerCase().replace(/[^a-z0-9]+/g, '-');
  return name.slice(0, 40).replace(/^-|-$/g, '') || 'machine';
}

/** Whether a copy is of this machine's show; one that does not say is taken for that. */
export function isOwnCopy({ machine }: Pick<CopyFile, 'machine'>, own = thisMachine()): boolean {
  return machine === null || machine === own;
}

/**
 * "show.2026-05-01T09-30-00-000Z.by-hand.van.foldbook": no sign that a file system refuses. The machine is in it
 * because a stick may hold the copies of two, and the show of one must not take the place of the other's by itself.
 */
export function nameOfCopy(madeAt: Date, reason: CopyReason, machine = thisMachine()): string {
  const stamp = madeAt.toISOString().replace(/[:.]/g, '-');
  return `show.${stamp}.${reason.replaceAll(' ', '-')}.${machine}.foldbook`;
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
  const [, stamp, slug, machine = null] = pattern.exec(name) ?? [];
  const reason = reasons.find((it) => it.replaceAll(' ', '-') === slug);
  if (stamp === undefined || reason === undefined) return null;
  const [date, time = ''] = stamp.split('T');
  const madeAtMs = Date.parse(`${date}T${time.replace(/^(\d\d)-(\d\d)-(\d\d)-/, '$1:$2:$3.')}`);
  const path = join(folder, name);
  const byteCount = statSync(path, { throwIfNoEntry: false })?.size;
  return Number.isNaN(madeAtMs) || byteCount === undefined
    ? null
    : { name, path, madeAtMs, reason, byteCount, machine };
}
