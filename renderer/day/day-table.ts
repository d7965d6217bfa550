import type { Act } from '../../core/show/act.ts';
import type { Box, Id, Socket } from '../../core/show/rig.ts';
import type { Show } from '../../core/show/show.ts';
import { actOnScreen } from '../state/derive-cache.ts';

/** What stands in a socket during an act, and whether it has to be plugged anew for it. */
export type DayCell = {
  sourceId: Id;
  name: string;
  isChange: boolean;
  isDecided: boolean;
  phantomOn: boolean;
};

export type DayTable = {
  rows: { socket: Socket; box: Box; cells: (DayCell | null)[] }[];
  /** For each act: lines that are plugged anew, and lines of the act in all. */
  totals: { plugged: number; lines: number; withoutSocket: number }[];
};

/**
 * The whole patch of a day: sockets down, acts across. A line counts as plugged anew where the socket held
 * nothing or something of another name in the act before.
 */
export function dayTable(show: Show, acts: readonly Act[]): DayTable | null {
  const sheets = acts.flatMap((act) => actOnScreen(show, act.id) ?? []);
  const first = sheets[0];
  if (!first) return null;
  const bySocket = sheets.map(
    ({ sheet, derived }) =>
      new Map(
        derived.plan.patches.flatMap((patch) => {
          const source = sheet.sources.find((it) => it.id === patch.sourceId);
          return source && patch.socketId !== null ? [[patch.socketId, { source, patch }] as const] : [];
        }),
      ),
  );
  const rows = first.sheet.sockets.flatMap((socket) => {
    const box = first.sheet.boxes.find((it) => it.id === socket.boxId);
    if (!box) return [];
    const cells = bySocket.map((patched, at): DayCell | null => {
      const here = patched.get(socket.id);
      if (!here) return null;
      const before = bySocket[at - 1]?.get(socket.id);
      const stays =
        before !== undefined &&
        (here.source.sharedLine === ''
          ? before.source.name === here.source.name && before.source.kind === here.source.kind
          : before.source.sharedLine === here.source.sharedLine);
      return {
        sourceId: here.source.id,
        name: here.source.name,
        isChange: !stays,
        isDecided: here.patch.by === 'engineer',
        phantomOn: here.patch.phantomOn,
      };
    });
    return [{ socket, box, cells }];
  });
  const totals = sheets.map(({ sheet, derived }, at) => ({
    plugged: rows.filter((row) => row.cells[at]?.isChange).length,
    lines: sheet.sources.length,
    withoutSocket: derived.plan.patches.filter((patch) => patch.socketId === null).length,
  }));
  return { rows, totals };
}
