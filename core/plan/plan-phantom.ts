import type { Source } from '../show/act.ts';
import type { ActSheet } from '../show/act-sheet.ts';
import type { Box, Id } from '../show/rig.ts';
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
  const switches = new Map<string, Source[]>();
  const result = new Map<Id, PhantomOfSource>();
  const switchOf = switchNames(sheet);
  for (const source of sheet.sources) {
    const socketId = sockets.get(source.id)?.socketId ?? null;
    const name = (socketId !== null && switchOf.get(socketId)) || `source ${source.id}`;
    const sharing = switches.get(name);
    if (sharing) sharing.push(source);
    else switches.set(name, [source]);
  }
  for (const sharing of switches.values()) {
    const state = stateOf(sharing, decided);
    for (const source of sharing) result.set(source.id, state);
  }
  return result;
}

/** Name of the switch of each socket: one for each bank of a box. */
export function switchNames(sheet: ActSheet): Map<Id, string> {
  const boxes = new Map<Id, Box>(sheet.boxes.map((box) => [box.id, box]));
  return new Map(
    sheet.sockets.map((socket) => {
      const bankSize = boxes.get(socket.boxId)?.phantomBankSize ?? 1;
      return [socket.id, `${socket.boxId} ${Math.floor((socket.number - 1) / bankSize)}`];
    }),
  );
}

function stateOf(sharing: readonly Source[], decided: ReadonlyMap<Id, Decided<boolean>>): PhantomOfSource {
  const decisions = sharing.flatMap((source) => decided.get(source.id) ?? []);
  // Of contradicting decisions on one switch the careful one holds; the plan reports it.
  const decision = decisions.find((it) => !it.value) ?? decisions[0];
  if (decision) return { on: decision.value, by: decision.by };
  if (sharing.some((source) => source.phantom === 'harmful')) return { on: false, by: 'proposal' };
  return { on: sharing.some((source) => source.phantom === 'needed'), by: 'proposal' };
}
