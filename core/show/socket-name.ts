import type { Box, Id, Socket } from './rig.ts';

/** The name of a socket as it is written on its box: "A3". */
export function socketOnBox(box: Pick<Box, 'name'> | undefined, socket: Pick<Socket, 'number'>): string {
  return `${box?.name ?? ''}${socket.number}`;
}

type Sockets = { boxes: readonly Box[]; sockets: readonly Socket[] };

/** The names of all sockets of a sheet as they are written on their boxes, by id; none for one whose box is gone. */
export function socketNames({ boxes, sockets }: Sockets): Map<Id, string> {
  const boxById = new Map(boxes.map((box) => [box.id, box]));
  const names = new Map<Id, string>();
  for (const socket of sockets) {
    const box = boxById.get(socket.boxId);
    if (box) names.set(socket.id, socketOnBox(box, socket));
  }
  return names;
}

/** The name of a socket of a sheet as it is written on its box; null for no socket or one that is gone. */
export function socketName({ boxes, sockets }: Sockets, socketId: Id | null): string | null {
  const socket = sockets.find((it) => it.id === socketId);
  const box = boxes.find((it) => it.id === socket?.boxId);
  return socket && box ? socketOnBox(box, socket) : null;
}
