import type { ActSheet } from '../show/act-sheet.ts';
import { phantomBankOf } from '../show/phantom-bank.ts';
import type { Id } from '../show/rig.ts';
import { indexSheet } from '../show/sheet-index.ts';
import type { Decided } from './decided.ts';
import type { DecidedBy } from './plan.ts';
import type { SocketOfSource } from './plan-sockets.ts';

export type PhantomOfSource = { on: boolean; by: DecidedBy };

const proposedOn: PhantomOfSource = { on: true, by: 'proposal' };
const proposedOff: PhantomOfSource = { on: false, by: 'proposal' };

/** What the sources on one switch ask of it, added up. */
const asks = { nothing: 0, needed: 1, harmful: 2 } as const;

/**
 * The state of the 48 V switch behind every source's socket, in sheet order. Sources on one switch get one state:
 * a decision goes before a source that would be harmed, harm before need, and nothing said leaves it off.
 */
export function planPhantom(
  sheet: ActSheet,
  sockets: readonly SocketOfSource[],
  decided: ReadonlyMap<Id, Decided<boolean>>,
): PhantomOfSource[] {
  const switchOf = switchesOf(sheet);
  const asked = new Map<number, number>();
  const decidedOf = new Map<number, Decided<boolean>>();
  const switches = sheet.sources.map((source, at) => {
    const socketId = sockets[at]?.socketId ?? null;
    // What is plugged nowhere has a switch of its own, told by a number that no socket has.
    const number = (socketId === null ? undefined : switchOf(socketId)) ?? -1 - at;
    const asksHere = source.phantom === 'needed' || source.phantom === 'harmful' ? asks[source.phantom] : 0;
    asked.set(number, (asked.get(number) ?? asks.nothing) | asksHere);
    const decision = decided.size === 0 ? undefined : decided.get(source.id);
    // Of contradicting decisions on one switch the careful one holds; the plan reports it.
    if (decision && (!decidedOf.has(number) || (decidedOf.get(number)?.value && !decision.value)))
      decidedOf.set(number, decision);
    return number;
  });
  return switches.map((number) => {
    const decision = decidedOf.get(number);
    if (decision) return { on: decision.value, by: decision.by };
    return asked.get(number) === asks.needed ? proposedOn : proposedOff;
  });
}

/** A box has fewer sockets, and so fewer switches, than this. */
const mostSwitches = 2048;

/** Number of the switch of a socket, one for each bank of a box; undefined where there is no such socket or box. */
export function switchesOf(sheet: ActSheet): (socketId: Id) => number | undefined {
  const { socketById } = indexSheet(sheet);
  const boxes = new Map(sheet.boxes.map((box, at) => [box.id, { box, at }]));
  return (socketId) => {
    const socket = socketById.get(socketId);
    const home = socket && boxes.get(socket.boxId);
    return socket && home && home.at * mostSwitches + phantomBankOf(home.box, socket);
  };
}
