import type { ActSheet } from '../../show/act-sheet.ts';
import { phantomBankOf } from '../../show/phantom-bank.ts';
import type { Box, Id, Socket } from '../../show/rig.ts';
import { socketOnBox } from '../../show/socket-name.ts';
import type { Layer, Slot, SlotGroup } from './problem.ts';

/** Sockets to which the engineer locked a line in any of the acts. */
export function lockedSockets(sheets: ActSheet[]): ReadonlySet<Id> {
  return new Set(
    sheets.flatMap((sheet) =>
      sheet.decisions.flatMap((it) => (it.about === 'socket' && it.locked ? [it.socketId] : [])),
    ),
  );
}

/**
 * The sockets that may be used, by box. A pair starts on an odd socket whose neighbour may be used as well.
 * A reserved socket is open to nobody but a line that the engineer locked to it, so it is a group of its own.
 */
export function socketSlots(boxes: Box[], sockets: Socket[], locked: ReadonlySet<Id>) {
  const groups: SlotGroup[] = [];
  const slots: Slot[] = [];
  const boxOfGroup: Box[] = [];
  const slotOf = (box: Box, place: number, socket: Socket, group: number): Slot => ({
    group,
    id: socket.id,
    number: socket.number,
    name: socketOnBox(box, socket),
    bank: place * banksInABox + phantomBankOf(box, socket),
    pairedWith: -1,
  });
  const addGroup = (box: Box, place: number, group: Omit<SlotGroup, 'slots'>, members: Socket[]) => {
    groups.push({ ...group, slots: members.map((_, at) => slots.length + at) });
    boxOfGroup.push(box);
    for (const socket of members) {
      const next = members.find((other) => other.number === socket.number + 1);
      const pairedWith = socket.number % 2 === 1 && next ? slots.length + 1 : -1;
      slots.push({ ...slotOf(box, place, socket, groups.length - 1), pairedWith });
    }
  };
  boxes.forEach((box, place) => {
    const open = sockets.filter((socket) => socket.boxId === box.id && socket.reservedFor === null);
    addGroup(box, place, { name: box.name }, open);
  });
  boxes.forEach((box, place) => {
    const reserved = sockets.filter(
      (socket) => socket.boxId === box.id && socket.reservedFor !== null && locked.has(socket.id),
    );
    if (reserved.length > 0)
      addGroup(box, place, { name: `${box.name}, reserved`, forLocks: true }, reserved);
  });
  const heldBack = boxes.flatMap((box, place) =>
    sockets.flatMap(
      (socket): NonNullable<Layer['heldBack']> =>
        socket.boxId === box.id && socket.reservedFor !== null && !locked.has(socket.id)
          ? [{ slot: slotOf(box, place, socket, place), reservedFor: socket.reservedFor }]
          : [],
    ),
  );
  return { groups, slots, boxOfGroup, heldBack };
}

/** More banks than a box can have, so that no two boxes share a switch. */
const banksInABox = 2000;
