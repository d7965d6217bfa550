import { needsSocket } from '../plan/plan-sockets.ts';
import type { ActSheet } from '../show/act-sheet.ts';
import type { Id } from '../show/rig.ts';
import type { OwedSplit } from './derived.ts';
import { cellState, type ResolvedWishes } from './wishes.ts';

/**
 * The lines that a band's own desk needs a split of: what its mixes ask for. A mix made elsewhere without a
 * single wish may hold anything, so then every line of the act is owed.
 */
export function deriveSplits(sheet: ActSheet, wishes: ResolvedWishes): OwedSplit[] {
  const elsewhere = sheet.mixes
    .map((mix, mixAt) => ({ mix, mixAt }))
    .filter(({ mix }) => mix.mixedAt === 'elsewhere');
  if (elsewhere.length === 0) return [];
  const { state, sourceCount } = wishes;
  const asks = (mixAt: number, sourceAt: number) =>
    state[mixAt * sourceCount + sourceAt] === cellState.wanted;
  const asksForAnything = elsewhere.map(({ mixAt }) =>
    sheet.sources.some((_, sourceAt) => asks(mixAt, sourceAt)),
  );
  return sheet.sources.flatMap((source, sourceAt) => {
    const mixIds: Id[] = elsewhere
      .filter(({ mixAt }, at) => !asksForAnything[at] || asks(mixAt, sourceAt))
      .map(({ mix }) => mix.id);
    return mixIds.length > 0 && (needsSocket(source) || source.audience === 'not here')
      ? [{ sourceId: source.id, mixIds }]
      : [];
  });
}
