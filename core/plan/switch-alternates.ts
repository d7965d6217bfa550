import type { ActSheet } from '../show/act-sheet.ts';
import { type Change, put } from '../show/change.ts';
import type { Id } from '../show/rig.ts';
import type { AlternateKind } from '../show/words.ts';

/** Which sources a switch moves. */
export type WhichSources = 'all' | readonly Id[];

/**
 * The change that puts all sources, some or one on their alternates of a kind, or back on their own lines with
 * `to: 'own line'`. A source without such an alternate stays as it is, so that nothing falls silent. A change
 * without rows: nothing had to move.
 */
export function switchAlternates(
  sheet: ActSheet,
  which: WhichSources,
  to: AlternateKind | 'own line',
): Change {
  const moved = which === 'all' ? null : new Set(which);
  const hasKind = new Set(sheet.alternates.filter((it) => it.kind === to).map((it) => it.sourceId));
  const rows = sheet.alternates.filter(
    ({ sourceId }) => (moved === null || moved.has(sourceId)) && (to === 'own line' || hasKind.has(sourceId)),
  );
  const first = new Map<Id, Id>();
  for (const { id, sourceId, kind } of rows) if (kind === to && !first.has(sourceId)) first.set(sourceId, id);
  return {
    label: to === 'own line' ? 'Put sources back on their own lines' : `Put sources on their ${to}`,
    put: rows
      .map((row) => ({ row, inUse: first.get(row.sourceId) === row.id }))
      .filter(({ row, inUse }) => row.inUse !== inUse)
      .map(({ row, inUse }) => put('alternates', { ...row, inUse })),
    remove: [],
  };
}
