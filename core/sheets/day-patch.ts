import { entriesOfDay } from '../changeover/entries.ts';
import type { Entry } from '../plan/day/problem.ts';
import type { Box, Id, Socket } from '../show/rig.ts';
import { socketOnBox } from '../show/socket-name.ts';
import type { LineView } from './act-view.ts';
import { cautions } from './cautions.ts';
import { sheetOfDay } from './day-heading.ts';
import type { DayView } from './day-view.ts';
import type { Sheet, TablePart } from './sheet.ts';
import { type Field, tableOf } from './table.ts';

/** Marks before a name that survive a black-and-white print. */
const markOfEntry: Record<Entry, string> = { hot: '» ', cold: '› ', kept: '' };

const markKey =
  '» is plugged in the changeover. › is plugged before it, while another act plays elsewhere. Without a mark the line stays plugged from an act before.';

/** Sockets down, acts across: the whole day's patch at once, with a mark where there is work. */
export function dayPatch(day: DayView): Sheet {
  const first = day.acts[0]?.sheet;
  const entries = entriesOfDay(day.acts.map(({ sheet, derived }) => ({ sheet, plan: derived.plan })));
  const tables = (first?.boxes ?? []).map((box) =>
    patchOfBox(
      box,
      (first?.sockets ?? []).filter((it) => it.boxId === box.id),
      day,
      entries,
    ),
  );
  return sheetOfDay('day patch', 'Patch of the whole day', day, {
    cautions: [cautions.patching],
    page: { orientation: 'landscape', paper: 'A3' },
    parts: [
      ...tables,
      { is: 'text', heading: null, paragraphs: [first ? markKey : 'This day has no act yet.'] },
    ],
  });
}

function patchOfBox(
  box: Box,
  sockets: readonly Socket[],
  { acts }: DayView,
  entries: ReadonlyMap<Id, Entry>,
): TablePart {
  const columns = acts.map((act): Field<Socket> => {
    const plugged = Map.groupBy(act.lines, ({ socket }) => socket?.id ?? '');
    return {
      title: act.sheet.act.name,
      grow: 1,
      always: true,
      of: ({ id }) => (plugged.get(id) ?? []).map((line) => cellOf(line, entries)).join(' / '),
    };
  });
  return tableOf<Socket>(
    [{ title: 'Socket', of: (socket) => socketOnBox(box, socket) + reserved(socket) }, ...columns],
    sockets,
    { heading: `Box ${box.name}`, key: ({ id }) => id, empty: 'This box has no sockets.' },
  );
}

function reserved({ reservedFor }: Socket): string {
  return reservedFor === null ? '' : ` (${reservedFor})`;
}

function cellOf({ source }: LineView, entries: ReadonlyMap<Id, Entry>): string {
  return (markOfEntry[entries.get(source.id) ?? 'hot'] ?? '') + source.name;
}
