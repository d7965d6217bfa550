import type { Decision } from '../show/act.ts';
import type { ActSheet } from '../show/act-sheet.ts';
import type { Purpose, Tap } from '../show/words.ts';
import type { SheetIndex } from './sheet-index.ts';

type SecondFeed = Extract<Decision, { about: 'second feed' }>;

/** What was decided for single feeds, by cell: `mix * sourceCount + source`. */
export type CellDecisions = {
  purpose: ReadonlyMap<number, Purpose>;
  levelDb: ReadonlyMap<number, number>;
  tap: ReadonlyMap<number, Tap>;
  second: readonly { decision: SecondFeed; mixAt: number; sourceAt: number }[];
};

/** Of two decisions about the same feed and matter the later row holds. */
export function indexCellDecisions(sheet: ActSheet, index: SheetIndex): CellDecisions {
  const purpose = new Map<number, Purpose>();
  const levelDb = new Map<number, number>();
  const tap = new Map<number, Tap>();
  const second: { decision: SecondFeed; mixAt: number; sourceAt: number }[] = [];
  for (const decision of sheet.decisions) {
    if (!('mixId' in decision) || !('sourceId' in decision)) continue;
    const mixAt = index.mixAt.get(decision.mixId);
    const sourceAt = index.sourceAt.get(decision.sourceId);
    if (mixAt === undefined || sourceAt === undefined) continue;
    const cell = mixAt * sheet.sources.length + sourceAt;
    if (decision.about === 'feed') purpose.set(cell, decision.purpose);
    else if (decision.about === 'level') levelDb.set(cell, decision.levelDb);
    else if (decision.about === 'tap') tap.set(cell, decision.tap);
    else second.push({ decision, mixAt, sourceAt });
  }
  return { purpose, levelDb, tap, second };
}
