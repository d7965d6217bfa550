import type { Plan } from '../plan/plan.ts';
import type { ActSheet } from '../show/act-sheet.ts';
import { placeOfSource } from '../show/place-of-source.ts';
import type { Id } from '../show/rig.ts';
import { distanceM, placeOf } from '../show/stage-place.ts';

/** How far a line is from the box it is plugged into. Nulls: one of them has no place; nobody said a reach. */
export type LineReach = { sourceId: Id; boxId: Id; apartM: number | null; reaches: boolean | null };

/** The way of every plugged line to its box, straight over the floor; places of sources as in `placeOfSource`. */
export function lineReaches(sheet: ActSheet, plan: Plan): LineReach[] {
  const socketBox = new Map(sheet.sockets.map((it) => [it.id, it.boxId]));
  const boxes = new Map(sheet.boxes.map((it) => [it.id, it]));
  const sources = new Map(sheet.sources.map((it) => [it.id, it]));
  return plan.patches.flatMap(({ sourceId, socketId }): LineReach[] => {
    const box = boxes.get(socketBox.get(socketId ?? '') ?? '');
    const source = sources.get(sourceId);
    if (!box || !source) return [];
    const [from, to] = [placeOfSource(sheet, source), placeOf(box)];
    const apartM = from && to && distanceM(from, to);
    const reaches = apartM === null || box.reachM === null ? null : apartM <= box.reachM;
    return [{ sourceId, boxId: box.id, apartM, reaches }];
  });
}
