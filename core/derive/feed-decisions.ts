import type { Decision } from '../show/act.ts';
import type { ActSheet } from '../show/act-sheet.ts';
import type { SheetIndex } from '../show/sheet-index.ts';
import type { Purpose, Tap } from '../show/words.ts';

type SecondFeed = Extract<Decision, { about: 'second feed' }>;

/** What was decided for one feed. */
export type CellDecision = { purpose?: Purpose; levelDb?: number; tap?: Tap };

/** What was decided for single feeds, by cell: `mix * sourceCount + source`. */
export type CellDecisions = {
  byCell: ReadonlyMap<number, CellDecision>;
  second: readonly { decision: SecondFeed; mixAt: number; sourceAt: number }[];
};

/** Of two decisions about the same feed and matter the later row holds. */
export function indexCellDecisions(sheet: ActSheet, index: SheetIndex): CellDecisions {
  const byCell = new Map<number, CellDecision>();
  const second: { decision: SecondFeed; mixAt: number; sourceAt: number }[] = [];
  for (const decision of sheet.decisions) {
    if (!('mixId' in decision) || !('sourceId' in decision)) continue;
    const mixAt = index.mixAt.get(decision.mixId);
    const sourceAt = index.sourceAt.get(decision.sourceId);
    if (mixAt === undefined || sourceAt === undefined) continue;
    if (decision.about === 'second feed') {
      second.push({ decision, mixAt, sourceAt });
      continue;
    }
    const cell = mixAt * sheet.sources.length + sourceAt;
    const before = byCell.get(cell);
    if (decision.about === 'feed') byCell.set(cell, { ...before, purpose: decision.purpose });
    else if (decision.about === 'level') byCell.set(cell, { ...before, levelDb: decision.levelDb });
    else byCell.set(cell, { ...before, tap: decision.tap });
  }
  return { byCell, second };
}
