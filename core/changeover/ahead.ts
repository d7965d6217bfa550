import { socketName } from '../show/socket-name.ts';
import { placeOf } from '../show/stage-place.ts';
import type { ActPatch } from './act-patch.ts';
import type { Task } from './task.ts';
import { taskKinds } from './task-kinds.ts';

/**
 * What is plugged while the act before still plays, into sockets that it does not use: box by box, in the order of
 * the sockets. None of it is part of the changeover, and the changeover counts on it.
 */
export function plugsAhead(to: ActPatch): Task[] {
  const { sheet, plan } = to;
  const rows = plan.patches.flatMap(({ sourceId, socketId }) => {
    const source = sheet.sources.find((it) => it.id === sourceId);
    const socket = sheet.sockets.find((it) => it.id === socketId);
    const box = sheet.boxes.find((it) => it.id === socket?.boxId);
    return source && socket && box && to.entryOf(sourceId) === 'cold' ? [{ source, socket, box }] : [];
  });
  rows.sort((a, b) => a.box.order - b.box.order || a.socket.number - b.socket.number);
  return rows.map(({ source, socket, box }): Task => {
    const name = socketName(sheet, socket.id) ?? '';
    return {
      kind: 'plug',
      what: `Plug ${source.name} into ${name}.`,
      placeName: name,
      place: placeOf(box),
      sourceId: source.id,
      mixId: null,
      deviceId: null,
      socketId: socket.id,
      ...taskKinds.plug,
      after: [],
    };
  });
}
