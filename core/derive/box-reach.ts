import type { Plan } from '../plan/plan.ts';
import type { ActSheet } from '../show/act-sheet.ts';
import { placeOfSource } from '../show/place-of-source.ts';
import type { Id } from '../show/rig.ts';
import { indexSheet } from '../show/sheet-index.ts';
import { distanceM, placeOf } from '../show/stage-place.ts';

/** How far a line is from the box it is plugged into. Nulls: one of them has no place; nobody said a reach. */
export type LineReach = { sourceId: Id; boxId: Id; apartM: number | null; reaches: boolean | null };

/** The way of every plugged line to its box, straight over the floor; places of sources as in `placeOfSource`. */
export function lineReaches(sheet: ActSheet, plan: Plan): LineReach[] {
  const index = indexSheet(sheet);
  return plan.patches.flatMap(({ sourceId, socketId }): LineReach[] => {
    const box = index.box(index.socket(socketId ?? '')?.boxId ?? '');
    const source = sheet.sources[index.sourceAt.get(sourceId) ?? -1];
    if (!box || !source) return [];
    const [from, to] = [placeOfSource(sheet, source), placeOf(box)];
    const apartM = from && to && distanceM(from, to);
    const reaches = apartM === null || box.reachM === null ? null : apartM <= box.reachM;
    return [{ sourceId, boxId: box.id, apartM, reaches }];
  });
}
