import type { ActSheet } from '../show/act-sheet.ts';
import type { Id } from '../show/rig.ts';

/** Places of a sheet's rows by id, so that nothing searches a list twice. */
export type SheetIndex = {
  sourceAt: ReadonlyMap<Id, number>;
  mixAt: ReadonlyMap<Id, number>;
};

export function indexSheet(sheet: ActSheet): SheetIndex {
  return { sourceAt: placesById(sheet.sources), mixAt: placesById(sheet.mixes) };
}

function placesById(rows: readonly { id: Id }[]): Map<Id, number> {
  const places = new Map<Id, number>();
  for (let at = 0; at < rows.length; at++) {
    const row = rows[at];
    if (row) places.set(row.id, at);
  }
  return places;
}
