import type { ActSheet } from './act-sheet.ts';
import { remembered } from './remember.ts';
import type { Box, Bus, Device, Id, Output, Socket } from './rig.ts';

/** A sheet's rows by id, so that nothing searches a list twice. Of two rows with one id the later holds. */
export type SheetIndex = {
  /** Places in the sheet's lists. */
  sourceAt: ReadonlyMap<Id, number>;
  mixAt: ReadonlyMap<Id, number>;
  boxById: ReadonlyMap<Id, Box>;
  socketById: ReadonlyMap<Id, Socket>;
  busById: ReadonlyMap<Id, Bus>;
  outputById: ReadonlyMap<Id, Output>;
  deviceById: ReadonlyMap<Id, Device>;
};

/** Plan, derivation and findings of one sheet ask for it in turn and share one. */
export const indexSheet = remembered(
  (sheet: ActSheet): SheetIndex => ({
    sourceAt: placesById(sheet.sources),
    mixAt: placesById(sheet.mixes),
    boxById: byId(sheet.boxes),
    socketById: byId(sheet.sockets),
    busById: byId(sheet.buses),
    outputById: byId(sheet.outputs),
    deviceById: byId(sheet.devices),
  }),
);

export function byId<T extends { id: Id }>(rows: readonly T[]): Map<Id, T> {
  const found = new Map<Id, T>();
  for (const row of rows) found.set(row.id, row);
  return found;
}

function placesById(rows: readonly { id: Id }[]): Map<Id, number> {
  const places = new Map<Id, number>();
  for (const [at, row] of rows.entries()) places.set(row.id, at);
  return places;
}
