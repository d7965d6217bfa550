import { socketOnBox } from '../../core/show/socket-name.ts';
import { columnMaker } from '../parts/row-fields.ts';
import { SheetTable } from '../parts/sheet-table.tsx';
import { useHere } from '../state/here.tsx';
import { words } from '../wording/words.ts';
import type { RigTableProps } from './rig-screen.tsx';

export function SocketsTable({ rig }: RigTableProps) {
  const { show, change } = useHere();
  const text = words.rig;
  const boxes = new Map(
    [...show.boxes.values()].filter((it) => it.rigId === rig.id).map((it) => [it.id, it]),
  );
  const rows = [...show.sockets.values()]
    .filter((socket) => boxes.has(socket.boxId))
    .sort(
      (a, b) => (boxes.get(a.boxId)?.order ?? 0) - (boxes.get(b.boxId)?.order ?? 0) || a.number - b.number,
    );
  const nameOf = (socket: (typeof rows)[number]) => socketOnBox(boxes.get(socket.boxId), socket);
  const { field } = columnMaker({ table: 'sockets', change, nameOf });
  return (
    <div className="rig-long">
      <SheetTable
        label={text.sockets}
        rows={rows}
        columns={[
          { key: 'socket', head: text.name, width: 5, text: nameOf },
          field('reservedFor', text.reserved, 18, 'optional text'),
        ]}
        empty={text.noRows}
      />
    </div>
  );
}
