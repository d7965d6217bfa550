import type { Decision } from '../../core/show/act.ts';
import type { ActSheet } from '../../core/show/act-sheet.ts';
import { type Change, put } from '../../core/show/change.ts';
import type { Id } from '../../core/show/rig.ts';
import { socketName } from '../../core/show/socket-name.ts';
import { newId } from '../state/new-id.ts';
import { words } from '../wording/words.ts';

const decisionsOn = (sheet: ActSheet, sourceId: Id) =>
  sheet.decisions.filter((it) => it.about === 'socket' && it.sourceId === sourceId);

/** Locks a source to a socket: no planner moves it from there. */
export function lockToSocket(sheet: ActSheet, sourceId: Id, socketId: Id): Change {
  const [first, ...more] = decisionsOn(sheet, sourceId);
  const row: Decision = {
    id: first?.id ?? newId(),
    actId: sheet.act.id,
    locked: true,
    about: 'socket',
    sourceId,
    socketId,
  };
  return {
    label: words.day.lockLabel(nameOf(sheet, sourceId), socketName(sheet, socketId) ?? ''),
    put: [put('decisions', row)],
    remove: more.map(({ id }) => ({ table: 'decisions', id })),
  };
}

/** Opens the lock. The line stays where it is until somebody moves it. */
export function openLock(sheet: ActSheet, sourceId: Id): Change {
  return {
    label: words.day.openLabel(nameOf(sheet, sourceId)),
    put: decisionsOn(sheet, sourceId).map((row) => put('decisions', { ...row, locked: false })),
    remove: [],
  };
}

const nameOf = (sheet: ActSheet, sourceId: Id) => sheet.sources.find((it) => it.id === sourceId)?.name ?? '';
