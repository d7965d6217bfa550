import type { Source } from './act.ts';
import type { ActSheet } from './act-sheet.ts';
import { indexSheet } from './sheet-index.ts';
import { placeOf, type StagePlace } from './stage-place.ts';

/** Where a source stands: where the plot says, else where its performer does; null: nobody has said. */
export function placeOfSource(sheet: ActSheet, source: Source): StagePlace | null {
  const own = placeOf(source);
  if (own || source.performerId === null) return own;
  const performer = sheet.performers[indexSheet(sheet).performerAt.get(source.performerId) ?? -1];
  return performer ? placeOf(performer) : null;
}
