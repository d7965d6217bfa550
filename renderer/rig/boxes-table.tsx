import type { Change } from '../../core/show/change.ts';
import { put } from '../../core/show/change.ts';
import { Box, type Id, Socket } from '../../core/show/rig.ts';
import { columnMaker } from '../parts/row-fields.ts';
import { type SheetColumn, SheetTable } from '../parts/sheet-table.tsx';
import { useHere } from '../state/here.tsx';
import { newId } from '../state/new-id.ts';
import { words } from '../wording/words.ts';
import type { RigTableProps } from './rig-screen.tsx';

const newBoxSockets = 16;
const mostSockets = 256;

export function BoxesTable({ rig }: RigTableProps) {
  const { show, change } = useHere();
  const text = words.rig;
  const boxes = [...show.boxes.values()]
    .filter((box) => box.rigId === rig.id)
    .sort((a, b) => a.order - b.order);
  const socketsOf = (boxId: Id) =>
    [...show.sockets.values()].filter((it) => it.boxId === boxId).sort((a, b) => a.number - b.number);
  const { field } = columnMaker({ table: 'boxes', change, nameOf: (box) => `${text.oneBox} ${box.name}` });
  const freeName = (next: Box) =>
    boxes.some((box) => box.id !== next.id && box.name === next.name)
      ? words.field.taken(next.name, text.oneBox)
      : null;

  const socketCount: SheetColumn<Box> = {
    key: 'sockets',
    head: text.socketCount,
    width: 5,
    numeric: true,
    text: (box) => `${socketsOf(box.id).length}`,
    set: (box, typed) => {
      const count = Number(typed);
      if (typed.trim() === '' || !Number.isInteger(count) || count < 0 || count > mostSockets)
        return text.countBad;
      change(resized(box, socketsOf(box.id), count));
      return null;
    },
  };

  return (
    <SheetTable
      label={text.boxes}
      rows={boxes}
      columns={[
        field('name', text.name, 6, 'text', freeName),
        socketCount,
        field('phantomBankSize', text.phantomBank, 6, 'number'),
        field('reachM', text.reach, 6, 'optional number'),
        field('xM', text.x, 6, 'optional number'),
        field('yM', text.y, 6, 'optional number'),
      ]}
      empty={text.noRows}
      onAdd={{
        label: text.newBox,
        run: () => {
          const name = nextLetter(boxes.map((box) => box.name));
          const box = Box.parse({ id: newId(), rigId: rig.id, order: boxes.length, name });
          const sockets = resized(box, [], newBoxSockets);
          change({
            ...sockets,
            label: words.common.addOf(text.addedBox(name)),
            put: [put('boxes', box), ...sockets.put],
          });
        },
      }}
      onRemove={(box) =>
        change({
          label: words.common.removeRow(text.addedBox(box.name)),
          put: [],
          remove: [{ table: 'boxes', id: box.id }],
        })
      }
    />
  );
}

/** A box with more or fewer sockets: new numbers at the end, or the last ones gone. */
function resized(box: Box, sockets: readonly Socket[], count: number): Change {
  const last = sockets.at(-1)?.number ?? 0;
  const added = Array.from({ length: Math.max(0, count - sockets.length) }, (_, index) =>
    Socket.parse({ id: newId(), boxId: box.id, number: last + index + 1 }),
  );
  return {
    label: words.rig.resize(box.name),
    put: added.map((socket) => put('sockets', socket)),
    remove: sockets.slice(count).map(({ id }) => ({ table: 'sockets' as const, id })),
  };
}

function nextLetter(names: readonly string[]): string {
  const letters = 'ABCDEFGHIJKLMNOPQRSTUVWXYZ';
  return [...letters].find((letter) => !names.includes(letter)) ?? `Box ${names.length + 1}`;
}
