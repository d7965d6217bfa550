import type { Decision } from '../show/act.ts';
import type { ActSheet } from '../show/act-sheet.ts';
import { type Change, changeLabel, put } from '../show/change.ts';
import type { Id } from '../show/rig.ts';
import type { CheckLine } from './lines-to-check.ts';

/**
 * Gives two lines each other's sockets in the plan, for where they stay plugged as they are; both are put off, so
 * that the line check comes back to them. The sockets become decisions of the engineer's. Null where one of the two
 * has no socket.
 */
export function swapSockets(
  sheet: ActSheet,
  one: CheckLine,
  other: CheckLine,
  at: string,
  newId: () => Id,
): Change | null {
  if (!one.socket || !other.socket) return null;
  const decide = ({ source }: CheckLine, socketId: Id): Decision => {
    const before = sheet.decisions.findLast((it) => it.about === 'socket' && it.sourceId === source.id);
    return {
      id: before?.id ?? newId(),
      actId: sheet.act.id,
      locked: true,
      about: 'socket',
      sourceId: source.id,
      socketId,
    };
  };
  return {
    label: changeLabel(`Swap the sockets of ${one.source.name} and ${other.source.name}`),
    put: [
      put('decisions', decide(one, other.socket.id)),
      put('decisions', decide(other, one.socket.id)),
      ...[one, other].map(({ source }) =>
        put('lineResults', {
          id: newId(),
          actId: sheet.act.id,
          sourceId: source.id,
          found: 'later',
          cameSourceId: null,
          foundAt: at,
        }),
      ),
    ],
    remove: [],
  };
}
