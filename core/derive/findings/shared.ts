import type { Mix } from '../../show/act.ts';
import { addToList } from '../../show/add-to-list.ts';
import type { Id } from '../../show/rig.ts';
import type { MixWithPlan } from '../facts.ts';

/** The mixes behind every bus, output or device of which several mixes name the same. */
export function mixesSharing(
  rows: readonly MixWithPlan[],
  idsOf: (row: MixWithPlan) => readonly Id[],
): [Id, Mix[]][] {
  const using = new Map<Id, Mix[]>();
  for (const row of rows) for (const id of new Set(idsOf(row))) addToList(using, id, row.mix);
  return [...using].filter(([, mixes]) => mixes.length > 1);
}
