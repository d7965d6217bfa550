import type { Plan } from '../plan/plan.ts';
import type { ActSheet } from '../show/act-sheet.ts';
import type { SheetIndex } from '../show/sheet-index.ts';
import type { DeviceKind, Purpose } from '../show/words.ts';

/** The channels of one source by purpose; null: no such copy, or none that got a channel. */
export type CopiesOfSource = Record<Purpose, number | null>;

export const noCopies: Readonly<CopiesOfSource> = {
  foh: null,
  monitors: null,
  wedges: null,
  'in-ears': null,
  parallel: null,
};

/** The copies of every source of a sheet, in its order. A copy without a channel can feed nothing. */
export function copiesOfSources(sheet: ActSheet, index: SheetIndex, plan: Plan): CopiesOfSource[] {
  const copies = sheet.sources.map((): CopiesOfSource => ({ ...noCopies }));
  for (const { sourceId, purpose, channel } of plan.copies) {
    const ofSource = copies[index.sourceAt.get(sourceId) ?? -1];
    if (ofSource) ofSource[purpose] = channel;
  }
  return copies;
}

/** The purpose that is made for a kind of device, or null where the kind is not known. */
export function purposeOfDevice(kind: DeviceKind | null): 'in-ears' | 'wedges' | null {
  if (kind === null) return null;
  return kind === 'in-ear' ? 'in-ears' : 'wedges';
}
