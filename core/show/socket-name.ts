import type { Box, Id, Socket } from './rig.ts';

/** The name of a socket as it is written on its box: "A3". */
export function socketOnBox(box: Pick<Box, 'name'> | undefined, socket: Pick<Socket, 'number'>): string {
  return `${box?.name ?? ''}${socket.number}`;
}

/** The name of a socket of a sheet as it is written on its box; null for no socket or one that is gone. */
export function socketName(
  { boxes, sockets }: { boxes: readonly Box[]; sockets: readonly Socket[] },
  socketId: Id | null,
): string | null {
  const socket = sockets.find((it) => it.id === socketId);
  const box = boxes.find((it) => it.id === socket?.boxId);
  return socket && box ? socketOnBox(box, socket) : null;
}
