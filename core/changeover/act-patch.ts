import type { Entry } from '../plan/day/problem.ts';
import type { ActWithPlan } from '../plan/plan-act.ts';
import type { ActSheet } from '../show/act-sheet.ts';
import type { Id } from '../show/rig.ts';

/** One side of a changeover: an act with its plan, and how each of its lines enters its socket. */
export type ActPatch = ActWithPlan & { entryOf: (sourceId: Id) => Entry };

/** "A5", or null where a socket is not in the rig. */
export function nameOfSocket(sheet: ActSheet, socketId: Id | null): string | null {
  const socket = sheet.sockets.find((it) => it.id === socketId);
  const box = sheet.boxes.find((it) => it.id === socket?.boxId);
  return socket && box ? `${box.name}${socket.number}` : null;
}
