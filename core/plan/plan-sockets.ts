import type { Source } from '../show/act.ts';
import type { ActSheet } from '../show/act-sheet.ts';
import { phantomBankOf } from '../show/phantom-bank.ts';
import type { Box, Id, Socket } from '../show/rig.ts';
import { indexSheet } from '../show/sheet-index.ts';
import { distanceM, placeOf } from '../show/stage-place.ts';
import type { Decided } from './decided.ts';
import type { DecidedBy } from './plan.ts';

export type SocketOfSource = { socketId: Id | null; by: DecidedBy; why: string };

/** One box with what is still free in it. */
type OpenBox = {
  box: Box;
  /** In order of their numbers. */
  sockets: Socket[];
  /** Per phantom bank: whether a source there needs 48 V, or must not have it. */
  banks: Map<number, 'needed' | 'harmful'>;
};

/**
 * A socket for every source that comes from the stage, one row for each source in sheet order: the decided ones
 * first, then source by source the lowest free socket of the nearest box whose cables reach it. Where a place is not
 * known, boxes go in their order. No socket is used that is reserved, or whose phantom bank serves a source that must
 * not have what this one needs.
 */
export function planSockets(sheet: ActSheet, decided: ReadonlyMap<Id, Decided<Id>>): SocketOfSource[] {
  const stage = new OpenStage(sheet);
  const result = sheet.sources.map((source): SocketOfSource | null => {
    const decision = decided.get(source.id);
    if (!decision) return null;
    stage.takeDecided(source, decision.value);
    const why =
      decision.by === 'engineer' ? 'The engineer decided this socket.' : 'A proposed socket that was taken.';
    return { socketId: decision.value, by: decision.by, why };
  });
  const { sourceAt } = indexSheet(sheet);
  return sheet.sources.map((source, at) => {
    const settled = result[at];
    if (settled) return settled;
    if (!needsSocket(source)) return noSocketNeeded(source);
    const pairAt = source.pairSourceId === null ? undefined : sourceAt.get(source.pairSourceId);
    const pair = sheet.sources[pairAt ?? -1];
    const pairWaits = pairAt !== undefined && pair && pair !== source && pairAt > at && !result[pairAt];
    if (!pairWaits || !needsSocket(pair)) return stage.takeFor(source);
    const { first, second } = stage.takeForPair(source, pair);
    result[pairAt] = second;
    return first;
  });
}

/** Whether a source comes from the stage through a socket; an effect or a mix that comes back does not. */
export function needsSocket(source: Source): boolean {
  if (source.audience === 'not here') return false;
  if (source.returnsMixId !== null || source.returnsCueOutputId !== null) return false;
  return source.kind !== 'effect return' || source.pickUp !== null;
}

const notHeardHere: SocketOfSource = {
  socketId: null,
  by: 'proposal',
  why: 'Not to be heard through this desk, so it needs no socket.',
};
const comesBackInside: SocketOfSource = {
  socketId: null,
  by: 'proposal',
  why: 'It comes back inside the desk, so it needs no socket.',
};

function noSocketNeeded(source: Source): SocketOfSource {
  return source.audience === 'not here' ? notHeardHere : comesBackInside;
}

const noSocketLeft: SocketOfSource = {
  socketId: null,
  by: 'proposal',
  why: 'No socket is left for it.',
};

const inOrderWhy = 'The lowest free socket in order.';

class OpenStage {
  readonly #boxes: OpenBox[];
  readonly #inOrder: readonly { open: OpenBox; why: string }[];
  readonly #openById: ReadonlyMap<Id, OpenBox>;
  readonly #socketById: ReadonlyMap<Id, Socket>;

  constructor(sheet: ActSheet) {
    this.#boxes = sheet.boxes.map((box) => ({ box, sockets: [], banks: new Map() }));
    this.#inOrder = this.#boxes.map((open) => ({ open, why: inOrderWhy }));
    // The socket of a spare line waits for its source, so nothing else may be plugged there.
    const kept = new Set(sheet.alternates.map((alternate) => alternate.socketId));
    this.#openById = new Map(this.#boxes.map((open) => [open.box.id, open]));
    this.#socketById = indexSheet(sheet).socketById;
    for (const socket of sheet.sockets)
      if (socket.reservedFor === null && !kept.has(socket.id))
        this.#openById.get(socket.boxId)?.sockets.push(socket);
  }

  takeDecided(source: Source, socketId: Id): void {
    const socket = this.#socketById.get(socketId);
    const open = socket && this.#openById.get(socket.boxId);
    if (open) take(open, socket, source);
  }

  /** The lowest socket for a source, and the one beside it for the other side of its pair where there is one. */
  takeForPair(source: Source, pair: Source): { first: SocketOfSource; second: SocketOfSource } {
    for (const { open, why } of this.#inOrderOfNearness(source)) {
      const at = open.sockets.findIndex(
        (socket, it) =>
          suits(open, socket, source) && isNext(socket, open.sockets[it + 1]) && suitsNext(open, it, pair),
      );
      const [first, second] = at < 0 ? [] : [open.sockets[at], open.sockets[at + 1]];
      if (!first || !second) continue;
      take(open, first, source);
      take(open, second, pair);
      return {
        first: { socketId: first.id, by: 'proposal', why },
        second: { socketId: second.id, by: 'proposal', why: 'Beside the other side of its pair.' },
      };
    }
    return { first: this.takeFor(source), second: this.takeFor(pair) };
  }

  /** The lowest free socket of the nearest box that has one with 48 V as the source needs it. */
  takeFor(source: Source): SocketOfSource {
    for (const { open, why } of this.#inOrderOfNearness(source)) {
      const socket = open.sockets.find((it) => suits(open, it, source));
      if (!socket) continue;
      take(open, socket, source);
      return { socketId: socket.id, by: 'proposal', why };
    }
    const someFree = this.#boxes.some((open) => open.sockets.length > 0);
    return someFree ? { ...noSocketLeft, why: 'No free socket has 48 V as it needs it.' } : noSocketLeft;
  }

  /** Boxes in reach, the nearest first; then those without a place; last those whose cables do not reach. */
  #inOrderOfNearness(source: Source): readonly { open: OpenBox; why: string }[] {
    const place = placeOf(source);
    if (!place) return this.#inOrder;
    return this.#boxes
      .map((open, order) => {
        const there = placeOf(open.box);
        if (!there) return { open, order, rank: 1, apartM: 0, why: inOrderWhy };
        const apartM = distanceM(place, there);
        const reaches = open.box.reachM === null || apartM <= open.box.reachM;
        const why = reaches
          ? 'The nearest box with a free socket.'
          : 'The nearest box with a free socket, but its cables do not reach.';
        return { open, order, rank: reaches ? 0 : 2, apartM, why };
      })
      .sort((a, b) => a.rank - b.rank || a.apartM - b.apartM || a.order - b.order);
  }
}

function suits(open: OpenBox, socket: Socket, source: Source): boolean {
  const state = open.banks.get(phantomBankOf(open.box, socket));
  if (source.phantom === 'needed') return state !== 'harmful';
  return source.phantom !== 'harmful' || state !== 'needed';
}

function isNext(socket: Socket, next: Socket | undefined): boolean {
  return next !== undefined && next.number === socket.number + 1;
}

function suitsNext(open: OpenBox, at: number, source: Source): boolean {
  const next = open.sockets[at + 1];
  return next !== undefined && suits(open, next, source);
}

function take(open: OpenBox, socket: Socket, source: Source): void {
  const at = open.sockets.indexOf(socket);
  if (at >= 0) open.sockets.splice(at, 1);
  if (source.phantom !== 'needed' && source.phantom !== 'harmful') return;
  const bank = phantomBankOf(open.box, socket);
  // Once harmful, a bank stays harmful: nothing that needs 48 V is added to it.
  if (open.banks.get(bank) !== 'harmful') open.banks.set(bank, source.phantom);
}
