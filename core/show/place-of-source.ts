import type { Source } from './act.ts';
import type { ActSheet } from './act-sheet.ts';
import { placeOf, type StagePlace } from './stage-place.ts';

/** Where a source stands: where the plot says, else where its performer does; null: nobody has said. */
export function placeOfSource(sheet: ActSheet, source: Source): StagePlace | null {
  const performer = sheet.performers.find((it) => it.id === source.performerId);
  return placeOf(source) ?? (performer ? placeOf(performer) : null);
}
