import type { Box, Socket } from '../show/rig.ts';
import { type ActView, type LineView, socketName } from './act-view.ts';
import { cautions } from './cautions.ts';
import { sheetOfDay } from './day-heading.ts';
import type { DayView } from './day-view.ts';
import type { Sheet, TablePart } from './sheet.ts';
import { type Field, tableOf } from './table.ts';

/** Stands before what was not there in the act before: the mark survives a black-and-white print. */
const changeMark = '» ';

/** Sockets down, acts across: the whole day's patch at once, with a mark where there is work. */
export function dayPatch(day: DayView): Sheet {
  const first = day.acts[0]?.sheet;
  const tables = (first?.boxes ?? []).map((box) =>
    patchOfBox(
      box,
      (first?.sockets ?? []).filter((it) => it.boxId === box.id),
      day.acts,
    ),
  );
  return sheetOfDay('day patch', 'Patch of the whole day', day, {
    cautions: [cautions.patching],
    page: { orientation: 'landscape', paper: 'A3' },
    parts: [
      ...tables,
      {
        is: 'text',
        heading: null,
        paragraphs: [
          `${changeMark.trim()} is plugged anew for this act. Without it the same line stays from the act before.`,
        ],
      },
    ],
  });
}

function patchOfBox(box: Box, sockets: readonly Socket[], acts: readonly ActView[]): TablePart {
  const plugged = acts.map((act) => Map.groupBy(act.lines, ({ socket }) => socket?.id ?? ''));
  const columns = acts.map(
    (act, at): Field<Socket> => ({
      title: act.sheet.act.name,
      grow: 1,
      of: (socket) =>
        cellOf(plugged[at]?.get(socket.id) ?? [], plugged[at - 1]?.get(socket.id) ?? [], at === 0),
    }),
  );
  return tableOf<Socket>(
    [{ title: 'Socket', of: (socket) => socketName(box, socket) + reserved(socket) }, ...columns],
    sockets,
    { heading: `Box ${box.name}`, key: ({ id }) => id, empty: 'This box has no sockets.' },
  );
}

function reserved({ reservedFor }: Socket): string {
  return reservedFor === null ? '' : ` (${reservedFor})`;
}

function cellOf(now: readonly LineView[], before: readonly LineView[], isFirst: boolean): string {
  return now
    .map(
      (line) => (isFirst || before.some((it) => isSameLine(it, line)) ? '' : changeMark) + line.source.name,
    )
    .join(' / ');
}

/** Whether a plug may stay: only a line that both acts say they share is the same physical line. */
function isSameLine(before: LineView, now: LineView): boolean {
  return now.source.sharedLine !== '' && now.source.sharedLine === before.source.sharedLine;
}
