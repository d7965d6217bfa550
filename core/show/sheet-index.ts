import type { Source } from './act.ts';
import type { ActSheet } from './act-sheet.ts';
import { phantomBankOf } from './phantom-bank.ts';
import { remembered } from './remember.ts';
import type { Box, Bus, Device, Id, Output, Socket } from './rig.ts';
import { factsOfKind } from './source-kinds.ts';

type Places = ReadonlyMap<Id, number>;

/**
 * Where a sheet's rows stand in its lists, so that nothing searches a list twice. Ids are looked up once, where rows
 * come in: what is worked out of a sheet goes by these places, small numbers, and keeps them in arrays of numbers. That
 * is what makes deriving fast: looking up the text of an id takes twenty times as long as reading an array. Of two rows
 * with one id the later holds.
 */
export class SheetIndex {
  readonly #sheet: ActSheet;
  readonly sourceAt: Places;
  readonly mixAt: Places;
  readonly performerAt: Places;
  readonly boxAt: Places;
  /** For each source the order of its kind, see `factsOfKind`. */
  readonly kindAt: Uint8Array;
  /** For each socket the place of its box, or -1 where that is not there. */
  readonly boxAtOfSocket: Int32Array;
  /** For each socket the number of its 48 V switch, counted from 0 through all boxes, or -1 where its box is not there. */
  readonly switchOfSocket: Int32Array;
  #socketAt: Places | null = null;
  #busAt: Places | null = null;
  #outputAt: Places | null = null;
  #deviceAt: Places | null = null;

  constructor(sheet: ActSheet) {
    this.#sheet = sheet;
    this.sourceAt = placesById(sheet.sources);
    this.mixAt = placesById(sheet.mixes);
    this.performerAt = placesById(sheet.performers);
    this.boxAt = placesById(sheet.boxes);
    this.kindAt = kindsOfSources(sheet.sources);
    this.boxAtOfSocket = boxesOfSockets(sheet.sockets, this.boxAt);
    this.switchOfSocket = switchesOfSockets(sheet, this.boxAtOfSocket);
  }

  // A rig has many rows, and a plan without decisions asks for few of them by id: these are made when they are needed.
  get socketAt(): Places {
    this.#socketAt ??= placesById(this.#sheet.sockets);
    return this.#socketAt;
  }

  get busAt(): Places {
    this.#busAt ??= placesById(this.#sheet.buses);
    return this.#busAt;
  }

  get outputAt(): Places {
    this.#outputAt ??= placesById(this.#sheet.outputs);
    return this.#outputAt;
  }

  get deviceAt(): Places {
    this.#deviceAt ??= placesById(this.#sheet.devices);
    return this.#deviceAt;
  }

  // The row of an id; undefined: there is none.
  box(id: Id): Box | undefined {
    return this.#sheet.boxes[this.boxAt.get(id) ?? -1];
  }

  socket(id: Id): Socket | undefined {
    return this.#sheet.sockets[this.socketAt.get(id) ?? -1];
  }

  bus(id: Id): Bus | undefined {
    return this.#sheet.buses[this.busAt.get(id) ?? -1];
  }

  output(id: Id): Output | undefined {
    return this.#sheet.outputs[this.outputAt.get(id) ?? -1];
  }

  device(id: Id): Device | undefined {
    return this.#sheet.devices[this.deviceAt.get(id) ?? -1];
  }
}

/** Plan, derivation and findings of one sheet ask for it in turn and share one. */
export const indexSheet = remembered((sheet: ActSheet) => new SheetIndex(sheet));

export function byId<T extends { id: Id }>(rows: readonly T[]): Map<Id, T> {
  const found = new Map<Id, T>();
  for (const row of rows) found.set(row.id, row);
  return found;
}

function placesById(rows: readonly { id: Id }[]): Places {
  const places = new Map<Id, number>();
  let at = 0;
  for (const { id } of rows) places.set(id, at++);
  return places;
}

function kindsOfSources(sources: readonly Source[]): Uint8Array {
  const kinds = new Uint8Array(sources.length);
  let at = 0;
  for (const { kind } of sources) kinds[at++] = factsOfKind(kind).order;
  return kinds;
}

function boxesOfSockets(sockets: readonly Socket[], boxAt: Places): Int32Array {
  const boxes = new Int32Array(sockets.length);
  // Sockets of one box follow each other.
  let boxId: Id | null = null;
  let here = -1;
  for (let at = 0; at < sockets.length; at++) {
    const socket = sockets[at];
    if (socket && socket.boxId !== boxId) {
      boxId = socket.boxId;
      here = boxAt.get(boxId) ?? -1;
    }
    boxes[at] = here;
  }
  return boxes;
}

/** A box has fewer sockets, and so fewer switches, than this. */
const mostSwitches = 2048;

function switchesOfSockets({ sockets, boxes }: ActSheet, boxAtOfSocket: Int32Array): Int32Array {
  const switches = new Int32Array(sockets.length).fill(-1);
  // A sheet has its sockets by box and number, so those of one switch follow each other.
  let before = -1;
  let number = -1;
  for (let at = 0; at < sockets.length; at++) {
    const socket = sockets[at];
    const boxAt = boxAtOfSocket[at] ?? -1;
    const box = boxes[boxAt];
    if (!socket || !box) continue;
    const here = boxAt * mostSwitches + phantomBankOf(box, socket);
    if (here !== before) number++;
    before = here;
    switches[at] = number;
  }
  return switches;
}
