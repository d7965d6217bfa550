import type { Source } from '../show/act.ts';
import type { ActSheet } from '../show/act-sheet.ts';
import { phantomBankOf } from '../show/phantom-bank.ts';
import { placeOfSource } from '../show/place-of-source.ts';
import type { Box, Id, Socket } from '../show/rig.ts';
import { indexSheet } from '../show/sheet-index.ts';
import { distanceM, placeOf } from '../show/stage-place.ts';
import type { DecidedOf } from './decided.ts';
import type { DecidedBy } from './plan.ts';

export type SocketOfSource = {
  socketId: Id | null;
  /** Its place in the sheet, or -1 where there is none. */
  socketAt: number;
  by: DecidedBy;
  why: string;
};

/**
 * A socket for every source that comes from the stage, one row for each source in sheet order: the decided ones
 * first, then source by source the lowest free socket of the nearest box whose cables reach it; places as in
 * `placeOfSource`. Where none is known, boxes go in their order. No socket is used that is reserved, or whose phantom
 * bank serves a source that must not have what this one needs.
 */
export function planSockets(sheet: ActSheet, decided: DecidedOf<Id>): SocketOfSource[] {
  const index = indexSheet(sheet);
  const stage = new OpenStage(sheet);
  const result: (SocketOfSource | null)[] = sheet.sources.map((source, at) => {
    const decision = decided[at];
    if (!decision) return null;
    const place = index.socketAt.get(decision.value) ?? -1;
    stage.takeDecided(source, place);
    const why =
      decision.by === 'engineer' ? 'The engineer decided this socket.' : 'A proposed socket that was taken.';
    return { socketId: decision.value, socketAt: place, by: decision.by, why };
  });
  return sheet.sources.map((source, at) => {
    const settled = result[at];
    if (settled) return settled;
    if (!needsSocket(source)) return noSocketNeeded(source);
    const pairAt = source.pairSourceId === null ? undefined : index.sourceAt.get(source.pairSourceId);
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

const noSocket = (why: string): SocketOfSource => ({ socketId: null, socketAt: -1, by: 'proposal', why });
const notHeardHere = noSocket('Not to be heard through this desk, so it needs no socket.');
const comesBackInside = noSocket('It comes back inside the desk, so it needs no socket.');
const noSocketLeft = noSocket('No socket is left for it.');
const noSocketWithPhantom = noSocket('No free socket has 48 V as it needs it.');

function noSocketNeeded(source: Source): SocketOfSource {
  return source.audience === 'not here' ? notHeardHere : comesBackInside;
}

const inOrderWhy = 'The lowest free socket in order.';

/** One box with what is still free in it. */
type OpenBox = {
  box: Box;
  /** Places of its sockets that a proposal may use, in order of their numbers. */
  sockets: number[];
  /** Those before this one are taken. */
  firstFree: number;
  /** Per phantom bank: whether a source there needs 48 V, or must not have it. */
  banks: Map<number, 'needed' | 'harmful'>;
};

type BoxInOrder = { open: OpenBox; why: string };

class OpenStage {
  readonly #sheet: ActSheet;
  readonly #sockets: readonly Socket[];
  readonly #boxAtOfSocket: Int32Array;
  readonly #boxes: OpenBox[];
  readonly #inOrder: readonly BoxInOrder[];
  /** 1 for each socket that is taken, by place. */
  readonly #taken: Uint8Array;

  constructor(sheet: ActSheet) {
    this.#sheet = sheet;
    this.#sockets = sheet.sockets;
    this.#boxAtOfSocket = indexSheet(sheet).boxAtOfSocket;
    this.#taken = new Uint8Array(sheet.sockets.length);
    this.#boxes = sheet.boxes.map((box) => ({ box, sockets: [], firstFree: 0, banks: new Map() }));
    this.#inOrder = this.#boxes.map((open) => ({ open, why: inOrderWhy }));
    // The socket of a spare line waits for its source, so nothing else may be plugged there.
    const kept = new Set(sheet.alternates.map((alternate) => alternate.socketId));
    for (let at = 0; at < sheet.sockets.length; at++) {
      const socket = sheet.sockets[at];
      if (socket && socket.reservedFor === null && !(kept.size > 0 && kept.has(socket.id)))
        this.#boxes[this.#boxAtOfSocket[at] ?? -1]?.sockets.push(at);
    }
  }

  /** Nothing happens where there is no socket at this place. */
  takeDecided(source: Source, socketAt: number): void {
    const open = this.#boxes[this.#boxAtOfSocket[socketAt] ?? -1];
    if (open) this.#take(open, socketAt, source);
  }

  /** The lowest socket for a source, and the one beside it for the other side of its pair where there is one. */
  takeForPair(source: Source, pair: Source): { first: SocketOfSource; second: SocketOfSource } {
    for (const { open, why } of this.#inOrderOfNearness(source)) {
      const free = open.sockets.filter((at) => !this.#taken[at]);
      const it = free.findIndex(
        (at, place) => this.#suits(open, at, source) && this.#suitsNext(open, at, free[place + 1], pair),
      );
      const [first, second] = it < 0 ? [] : [free[it], free[it + 1]];
      if (first === undefined || second === undefined) continue;
      this.#take(open, first, source);
      this.#take(open, second, pair);
      return {
        first: this.#proposed(first, why),
        second: this.#proposed(second, 'Beside the other side of its pair.'),
      };
    }
    return { first: this.takeFor(source), second: this.takeFor(pair) };
  }

  /** The lowest free socket of the nearest box that has one with 48 V as the source needs it. */
  takeFor(source: Source): SocketOfSource {
    let someAreFree = false;
    for (const { open, why } of this.#inOrderOfNearness(source)) {
      const { sockets } = open;
      while (open.firstFree < sockets.length && this.#taken[sockets[open.firstFree] ?? 0]) open.firstFree++;
      for (let it = open.firstFree; it < sockets.length; it++) {
        const at = sockets[it] ?? 0;
        if (this.#taken[at]) continue;
        someAreFree = true;
        if (!this.#suits(open, at, source)) continue;
        this.#take(open, at, source);
        return this.#proposed(at, why);
      }
    }
    return someAreFree ? noSocketWithPhantom : noSocketLeft;
  }

  /** Boxes in reach, the nearest first; then those without a place; last those whose cables do not reach. */
  #inOrderOfNearness(source: Source): readonly BoxInOrder[] {
    const place = placeOfSource(this.#sheet, source);
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

  #proposed(at: number, why: string): SocketOfSource {
    return { socketId: this.#sockets[at]?.id ?? null, socketAt: at, by: 'proposal', why };
  }

  #suits({ box, banks }: OpenBox, at: number, source: Source): boolean {
    const socket = this.#sockets[at];
    if (!socket || banks.size === 0) return true;
    const state = banks.get(phantomBankOf(box, socket));
    if (source.phantom === 'needed') return state !== 'harmful';
    return source.phantom !== 'harmful' || state !== 'needed';
  }

  #suitsNext(open: OpenBox, at: number, nextAt: number | undefined, source: Source): boolean {
    if (nextAt === undefined || this.#sockets[nextAt]?.number !== (this.#sockets[at]?.number ?? 0) + 1)
      return false;
    return this.#suits(open, nextAt, source);
  }

  #take({ box, banks }: OpenBox, at: number, source: Source): void {
    this.#taken[at] = 1;
    const socket = this.#sockets[at];
    if (!socket || (source.phantom !== 'needed' && source.phantom !== 'harmful')) return;
    const bank = phantomBankOf(box, socket);
    // Once harmful, a bank stays harmful: nothing that needs 48 V is added to it.
    if (banks.get(bank) !== 'harmful') banks.set(bank, source.phantom);
  }
}
