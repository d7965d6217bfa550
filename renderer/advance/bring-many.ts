import type { Problem } from '../../core/contract/problem.ts';
import { actSheet } from '../../core/show/act-sheet.ts';
import { applyChange } from '../../core/show/apply-change.ts';
import type { Change } from '../../core/show/change.ts';
import type { Show } from '../../core/show/show.ts';
import type { Connection } from '../connection.ts';
import { openQuestionCount } from '../state/reading-cache.ts';
import { words } from '../wording/words.ts';
import { type Brought, gridOfFile } from './bring-rider.ts';
import { riderChange } from './rider-changes.ts';

/** What came of one of several files: an act of its own, or why not. */
export type Came = { fileName: string } & (
  | { actId: string; actName: string; sources: number; mixes: number; questions: number }
  | { problem: Problem }
);

/** Reads files one after the other. `isWanted` is asked before each: what it refuses is not begun. */
export async function gridsOfFiles(
  connection: Connection,
  files: readonly File[],
  isWanted: (at: number) => boolean,
): Promise<{ fileName: string; brought: Brought }[] | null> {
  const all: { fileName: string; brought: Brought }[] = [];
  for (const [at, file] of files.entries()) {
    if (!isWanted(at)) return null;
    all.push({ fileName: file.name, brought: await gridOfFile(connection, file) });
  }
  return isWanted(files.length) ? all : null;
}

/** Every rider that could be read as an act of its own at the end of a day, all as one change; null where none could. */
export function ridersChange(
  show: Show,
  dayId: string,
  riders: readonly { fileName: string; brought: Brought }[],
  receivedAt: string,
): { change: Change | null; came: Came[] } {
  const whole: Change = { label: '', put: [], remove: [] };
  let now = show;
  const came = riders.map(({ fileName, brought }): Came => {
    if (!brought.ok) return { fileName, problem: brought.problem };
    const { change, actId } = riderChange(now, { dayId }, brought.grid, receivedAt);
    now = applyChange(now, change);
    whole.put.push(...change.put);
    whole.remove.push(...change.remove);
    const sheet = actSheet(now, actId);
    return {
      fileName,
      actId,
      actName: sheet?.act.name ?? '',
      sources: sheet?.sources.length ?? 0,
      mixes: sheet?.mixes.length ?? 0,
      questions: openQuestionCount(now, actId),
    };
  });
  const count = came.filter((it) => 'actId' in it).length;
  return { change: count === 0 ? null : { ...whole, label: words.advance.many.label(count) }, came };
}
