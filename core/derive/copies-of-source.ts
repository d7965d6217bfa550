import type { Plan } from '../plan/plan.ts';
import type { ActSheet } from '../show/act-sheet.ts';
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
export function copiesOfSources(sheet: ActSheet, plan: Plan): CopiesOfSource[] {
  const copies: CopiesOfSource[] = [];
  // A plan has its copies source by source, in the order of the sheet.
  let it = 0;
  for (const { id } of sheet.sources) {
    const ofSource = { ...noCopies };
    for (let copy = plan.copies[it]; copy?.sourceId === id; copy = plan.copies[++it])
      ofSource[copy.purpose] = copy.channel;
    copies.push(ofSource);
  }
  return copies;
}

/** The purpose that is made for a kind of device, or null where the kind is not known. */
export function purposeOfDevice(kind: DeviceKind | null): 'in-ears' | 'wedges' | null {
  if (kind === null) return null;
  return kind === 'in-ear' ? 'in-ears' : 'wedges';
}
