import { type Purpose, purposes } from '../../core/show/words.ts';
import type { ActOnScreen } from '../state/derive-cache.ts';
import type { CellPlace } from './mix-changes.ts';

/** The purposes a source has copies for, in their fixed order. */
export function copiesOf({ derived }: ActOnScreen, sourceId: string): Purpose[] {
  const own = derived.plan.copies.filter((copy) => copy.sourceId === sourceId);
  return purposes.filter((purpose) => own.some((copy) => copy.purpose === purpose));
}

/** The copy after the one that feeds now; null, which is the proposal, after the last. */
export function nextCopy(open: ActOnScreen, { mixId, sourceId }: CellPlace): Purpose | null {
  const own = copiesOf(open, sourceId);
  const decided = open.sheet.decisions.find(
    (it) => it.about === 'feed' && it.mixId === mixId && it.sourceId === sourceId,
  );
  if (decided?.about === 'feed') return own[own.indexOf(decided.purpose) + 1] ?? null;
  const now = open.derived.feeds.flat().find((it) => it.mixId === mixId && it.sourceId === sourceId)?.purpose;
  return own.find((purpose) => purpose !== now) ?? null;
}
