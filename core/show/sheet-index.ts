import type { ActSheet } from './act-sheet.ts';
import { remembered } from './remember.ts';
import type { Box, Bus, Device, Id, Output, Socket } from './rig.ts';

/**
 * A sheet's rows by id, so that nothing searches a list twice. Ids are looked up once, at the border: what is worked
 * out of a sheet goes by places in its lists, which are small numbers and can be kept in arrays of numbers. Of two rows
 * with one id the later holds.
 */
export class SheetIndex {
  readonly #sheet: ActSheet;
  /** Places in the sheet's lists. */
  readonly sourceAt: ReadonlyMap<Id, number>;
  readonly mixAt: ReadonlyMap<Id, number>;
  readonly performerAt: ReadonlyMap<Id, number>;
  readonly boxAt: ReadonlyMap<Id, number>;
  /** For each socket the place of its box, or -1 where that is not there. */
  readonly boxAtOfSocket: Int32Array;
  #boxById: ReadonlyMap<Id, Box> | null = null;
  #socketById: ReadonlyMap<Id, Socket> | null = null;
  #busById: ReadonlyMap<Id, Bus> | null = null;
  #outputById: ReadonlyMap<Id, Output> | null = null;
  #deviceById: ReadonlyMap<Id, Device> | null = null;

  constructor(sheet: ActSheet) {
    this.#sheet = sheet;
    this.sourceAt = placesById(sheet.sources);
    this.mixAt = placesById(sheet.mixes);
    this.performerAt = placesById(sheet.performers);
    this.boxAt = placesById(sheet.boxes);
    this.boxAtOfSocket = boxesOfSockets(sheet.sockets, this.boxAt);
  }

  // The rows of a rig are many, and a plan without decisions asks for few of them by id.
  get boxById(): ReadonlyMap<Id, Box> {
    this.#boxById ??= byId(this.#sheet.boxes);
    return this.#boxById;
  }

  get socketById(): ReadonlyMap<Id, Socket> {
    this.#socketById ??= byId(this.#sheet.sockets);
    return this.#socketById;
  }

  get busById(): ReadonlyMap<Id, Bus> {
    this.#busById ??= byId(this.#sheet.buses);
    return this.#busById;
  }

  get outputById(): ReadonlyMap<Id, Output> {
    this.#outputById ??= byId(this.#sheet.outputs);
    return this.#outputById;
  }

  get deviceById(): ReadonlyMap<Id, Device> {
    this.#deviceById ??= byId(this.#sheet.devices);
    return this.#deviceById;
  }
}

/** Plan, derivation and findings of one sheet ask for it in turn and share one. */
export const indexSheet = remembered((sheet: ActSheet) => new SheetIndex(sheet));

export function byId<T extends { id: Id }>(rows: readonly T[]): Map<Id, T> {
  const found = new Map<Id, T>();
  for (const row of rows) found.set(row.id, row);
  return found;
}

function placesById(rows: readonly { id: Id }[]): Map<Id, number> {
  const places = new Map<Id, number>();
  let at = 0;
  for (const { id } of rows) places.set(id, at++);
  return places;
}

function boxesOfSockets(sockets: readonly Socket[], boxAt: ReadonlyMap<Id, number>): Int32Array {
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
