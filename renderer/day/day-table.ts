import type { DayPatch } from '../../core/plan/day/day-patch.ts';
import type { Entry } from '../../core/plan/day/problem.ts';
import type { Box, Id, Socket } from '../../core/show/rig.ts';
import { socketName, socketOnBox } from '../../core/show/socket-name.ts';
import type { ActOnScreen } from '../state/derive-cache.ts';

/** What stands in a socket during an act, and how it comes there. */
export type DayCell = {
  sourceId: Id;
  name: string;
  entry: Entry;
  locked: boolean;
  /** Other lines of the act in the same socket, by name; empty: none. */
  clashes: string;
  /** In a plan that is looked at: where the line is now, "" for nowhere; null where it stays. */
  movesFrom: string | null;
};

export type DayRow = { socket: Socket; box: Box; name: string; cells: (DayCell | null)[] };

/**
 * The patch of a day as a table: a row for each socket of the rig, a cell for each act. `now` is where the lines
 * are, `shown` the patch that is looked at: the same, or a plan that may be taken.
 */
export function dayTable(acts: readonly ActOnScreen[], shown: DayPatch, now: DayPatch): DayRow[] {
  const rig = acts[0]?.sheet;
  if (!rig) return [];
  const bySocket = acts.map(({ sheet }) => cellsOfAct(sheet, shown, now));
  const boxes = new Map(rig.boxes.map((box) => [box.id, box]));
  return rig.sockets.flatMap((socket): DayRow[] => {
    const box = boxes.get(socket.boxId);
    if (!box) return [];
    const cells = bySocket.map((ofAct) => ofAct.get(socket.id) ?? null);
    return [{ socket, box, name: socketOnBox(box, socket), cells }];
  });
}

function cellsOfAct(sheet: ActOnScreen['sheet'], shown: DayPatch, now: DayPatch): Map<Id, DayCell> {
  const locked = new Set(
    sheet.decisions.flatMap((it) => (it.about === 'socket' && it.locked ? [it.sourceId] : [])),
  );
  const cells = new Map<Id, DayCell>();
  for (const source of sheet.sources) {
    const socketId = shown.socketOf.get(source.id);
    if (socketId === undefined) continue;
    const before = now.socketOf.get(source.id) ?? null;
    const there = cells.get(socketId);
    cells.set(socketId, {
      sourceId: source.id,
      name: source.name,
      entry: shown.entryOf.get(source.id) ?? 'hot',
      locked: locked.has(source.id),
      clashes: there ? [there.name, there.clashes].filter(Boolean).join(', ') : '',
      movesFrom: before === socketId ? null : (socketName(sheet, before) ?? ''),
    });
  }
  return cells;
}
