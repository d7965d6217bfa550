import type { ActSheet } from '../show/act-sheet.ts';
import type { SheetIndex } from '../show/sheet-index.ts';

/** Who listens to what, and whose source is whose, by places in the sheet. */
export type People = {
  /** For each performer the mixes they listen to, each once. */
  mixesOf: readonly (readonly number[])[];
  /** For each performer their own sources that are to be heard here. */
  sourcesOf: readonly (readonly number[])[];
  /** For each mix how many rows name it as listened to. */
  listenersOf: Uint32Array;
  /** A source or a listener names a performer or a mix that is not there. */
  someAreLost: boolean;
};

export function peopleOf({ performers, sources, listeners, mixes }: ActSheet, index: SheetIndex): People {
  const mixesOf: number[][] = performers.map(() => []);
  const sourcesOf: number[][] = performers.map(() => []);
  const listenersOf = new Uint32Array(mixes.length);
  let someAreLost = false;
  for (const { mixId, performerId } of listeners) {
    const mixAt = index.mixAt.get(mixId);
    const ofPerformer = mixesOf[index.performerAt.get(performerId) ?? -1];
    if (mixAt === undefined || !ofPerformer) someAreLost = true;
    if (mixAt === undefined) continue;
    listenersOf[mixAt] = (listenersOf[mixAt] ?? 0) + 1;
    if (ofPerformer && !ofPerformer.includes(mixAt)) ofPerformer.push(mixAt);
  }
  for (let at = 0; at < sources.length; at++) {
    const source = sources[at];
    if (!source || source.performerId === null) continue;
    const ofPerformer = sourcesOf[index.performerAt.get(source.performerId) ?? -1];
    if (!ofPerformer) someAreLost = true;
    else if (source.audience !== 'not here') ofPerformer.push(at);
  }
  return { mixesOf, sourcesOf, listenersOf, someAreLost };
}
