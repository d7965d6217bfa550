import type { Source } from '../show/act.ts';
import type { ActSheet } from '../show/act-sheet.ts';
import { addToList } from '../show/add-to-list.ts';
import type { Id } from '../show/rig.ts';
import { indexSheet } from '../show/sheet-index.ts';
import type { Decided } from './decided.ts';
import type { DecidedBy } from './plan.ts';
import type { SocketOfSource } from './plan-sockets.ts';

export type PhantomOfSource = { on: boolean; by: DecidedBy };

/**
 * The state of the 48 V switch behind every source's socket. Sources on one switch get one state: a decision
 * goes before a source that would be harmed, harm before need, and nothing said leaves it off.
 */
export function planPhantom(
  sheet: ActSheet,
  sockets: ReadonlyMap<Id, SocketOfSource>,
  decided: ReadonlyMap<Id, Decided<boolean>>,
): Map<Id, PhantomOfSource> {
  const switches = new Map<number, Source[]>();
  const result = new Map<Id, PhantomOfSource>();
  const switchOf = switchesOf(sheet);
  for (const source of sheet.sources) {
    const socketId = sockets.get(source.id)?.socketId ?? null;
    const number = socketId === null ? undefined : switchOf(socketId);
    if (number === undefined) result.set(source.id, stateOf([source], decided));
    else addToList(switches, number, source);
  }
  for (const sharing of switches.values()) {
    const state = stateOf(sharing, decided);
    for (const source of sharing) result.set(source.id, state);
  }
  return result;
}

/** A box has fewer sockets, and so fewer switches, than this. */
const mostSwitches = 2048;

/** Number of the switch of a socket, one for each bank of a box; undefined where there is no such socket or box. */
export function switchesOf(sheet: ActSheet): (socketId: Id) => number | undefined {
  const { socketById } = indexSheet(sheet);
  const boxes = new Map(sheet.boxes.map((box, at) => [box.id, { at, bankSize: box.phantomBankSize }]));
  return (socketId) => {
    const socket = socketById.get(socketId);
    const box = socket && boxes.get(socket.boxId);
    return socket && box && box.at * mostSwitches + Math.floor((socket.number - 1) / box.bankSize);
  };
}

function stateOf(sharing: readonly Source[], decided: ReadonlyMap<Id, Decided<boolean>>): PhantomOfSource {
  const decisions = decided.size === 0 ? [] : sharing.flatMap((source) => decided.get(source.id) ?? []);
  // Of contradicting decisions on one switch the careful one holds; the plan reports it.
  const decision = decisions.find((it) => !it.value) ?? decisions[0];
  if (decision) return { on: decision.value, by: decision.by };
  let needed = false;
  for (const { phantom } of sharing) {
    if (phantom === 'harmful') return { on: false, by: 'proposal' };
    if (phantom === 'needed') needed = true;
  }
  return { on: needed, by: 'proposal' };
}
