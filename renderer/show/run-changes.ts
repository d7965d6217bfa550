import type { HeardNow } from '../../core/run/ran-levels.ts';
import { movedLevel, oneMoveMs, ranLevelsOf } from '../../core/run/ran-levels.ts';
import type { Mix, Source } from '../../core/show/act.ts';
import type { ActSheet } from '../../core/show/act-sheet.ts';
import type { LineFinding, RunNote } from '../../core/show/as-ran.ts';
import { type Change, put } from '../../core/show/change.ts';
import type { Id } from '../../core/show/rig.ts';
import type { Show } from '../../core/show/show.ts';
import { levelText } from '../parts/format.ts';
import { whoHears } from '../parts/names.ts';
import { newId } from '../state/new-id.ts';
import { words } from '../wording/words.ts';

/** What is kept while an act runs, as changes. None of them touches the plan. */

/** Keeps what was heard of a line. `cameSourceId`: of a swapped one, what came in its place. */
export function keepResult(
  sheet: ActSheet,
  source: Source,
  found: LineFinding,
  now: Date,
  cameSourceId: Id | null = null,
): Change {
  const row = { id: newId(), actId: sheet.act.id, sourceId: source.id, found, cameSourceId };
  return {
    label: words.show.resultLabel(source.name, words.show.found[found]),
    put: [put('lineResults', { ...row, foundAt: now.toISOString() })],
    remove: [],
  };
}

/** Keeps a level that was changed at the desk; null: off. */
export function keepLevel(
  show: Show,
  sheet: ActSheet,
  mix: Mix,
  heard: Pick<HeardNow, 'source' | 'levelDb'>,
  levelDb: number | null,
  now: Date,
): Change {
  const { source } = heard;
  const row = movedLevel(
    {
      actId: sheet.act.id,
      mixId: mix.id,
      sourceId: source.id,
      fromDb: heard.levelDb,
      levelDb,
      changedAt: now.toISOString(),
    },
    ranLevelsOf(show, sheet.act.id),
    new Date(now.getTime() - oneMoveMs).toISOString(),
    newId,
  );
  const level = words.show.db(levelText(levelDb));
  return {
    label: words.show.levelLabel(whoHears(sheet, mix), source.name, level),
    put: [put('ranLevels', row)],
    remove: [],
  };
}

/** What a note is about: the act alone, or also a mix or a source of it. */
export type NoteAbout = Pick<RunNote, 'mixId' | 'sourceId'>;

export function keepNote(sheet: ActSheet, about: NoteAbout, text: string, now: Date): Change {
  const row = { id: newId(), actId: sheet.act.id, ...about, text, notedAt: now.toISOString() };
  return { label: words.show.noteDone(text), put: [put('runNotes', row)], remove: [] };
}

export function removeNote({ id, text }: RunNote): Change {
  return {
    label: words.show.noteRemoved(text),
    put: [],
    remove: [{ table: 'runNotes', id }],
  };
}
