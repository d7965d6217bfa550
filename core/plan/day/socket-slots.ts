import type { ActSheet } from '../../show/act-sheet.ts';
import type { Box, Id, Socket } from '../../show/rig.ts';
import type { Slot, SlotGroup } from './problem.ts';

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
  const addGroup = (box: Box, place: number, name: string, members: Socket[]) => {
    groups.push({ name, slots: members.map((_, place) => slots.length + place) });
    boxOfGroup.push(box);
    for (const socket of members) {
      const next = members.find((other) => other.number === socket.number + 1);
      slots.push({
        group: groups.length - 1,
        id: socket.id,
        number: socket.number,
        name: `${box.name}${socket.number}`,
        bank: place * banksInABox + Math.floor((socket.number - 1) / box.phantomBankSize),
        pairedWith: socket.number % 2 === 1 && next ? slots.length + 1 : -1,
      });
    }
  };
  boxes.forEach((box, place) => {
    const open = sockets.filter((socket) => socket.boxId === box.id && socket.reservedFor === null);
    addGroup(box, place, box.name, open);
  });
  boxes.forEach((box, place) => {
    const reserved = sockets.filter(
      (socket) => socket.boxId === box.id && socket.reservedFor !== null && locked.has(socket.id),
    );
    if (reserved.length > 0) addGroup(box, place, `${box.name}, reserved`, reserved);
  });
  return { groups, slots, boxOfGroup };
}

/** More banks than a box can have, so that no two boxes share a switch. */
const banksInABox = 2000;
