import type { ActSheet } from '../show/act-sheet.ts';
import type { Id } from '../show/rig.ts';
import { indexSheet } from '../show/sheet-index.ts';
import type { Decided, DecidedOf } from './decided.ts';
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
  decided: DecidedOf<boolean>,
): PhantomOfSource[] {
  const { switchOfSocket } = indexSheet(sheet);
  const { sources } = sheet;
  // What is plugged nowhere has a switch of its own, numbered after those of the sockets.
  const firstOwn = switchOfSocket.length;
  const switchOf = (at: number) => {
    const number = switchOfSocket[sockets[at]?.socketAt ?? -1] ?? -1;
    return number < 0 ? firstOwn + at : number;
  };
  const asked = new Uint8Array(firstOwn + sources.length);
  const decidedOf = new Map<number, Decided<boolean>>();
  for (let at = 0; at < sources.length; at++) {
    const number = switchOf(at);
    const phantom = sources[at]?.phantom;
    if (phantom === 'needed' || phantom === 'harmful') asked[number] = (asked[number] ?? 0) | asks[phantom];
    const decision = decided[at];
    // Of contradicting decisions on one switch the careful one holds; the plan reports it.
    if (decision && (!decidedOf.has(number) || (decidedOf.get(number)?.value && !decision.value)))
      decidedOf.set(number, decision);
  }
  return sources.map((_, at) => {
    const number = switchOf(at);
    const decision = decidedOf.size === 0 ? undefined : decidedOf.get(number);
    if (decision) return { on: decision.value, by: decision.by };
    return asked[number] === asks.needed ? proposedOn : proposedOff;
  });
}

/** Number of the switch of a socket, through all boxes of a sheet; undefined where there is no such socket or box. */
export function switchesOf(sheet: ActSheet): (socketId: Id) => number | undefined {
  const { socketAt, switchOfSocket } = indexSheet(sheet);
  return (socketId) => {
    const number = switchOfSocket[socketAt.get(socketId) ?? -1] ?? -1;
    return number < 0 ? undefined : number;
  };
}
