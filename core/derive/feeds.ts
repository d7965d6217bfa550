import type { ActSheet } from '../show/act-sheet.ts';
import type { CopiesOfSource } from './copies-of-source.ts';
import type { Feed } from './derived.ts';
import type { CellDecisions } from './feed-decisions.ts';
import { codeOf, outcomes } from './outcomes.ts';
import { type Sends, startLevelDb } from './sends.ts';
import { amountOfCell, type ResolvedWishes } from './wishes.ts';

/** What a feed is told from. */
export type FeedSources = {
  sheet: ActSheet;
  sends: Sends;
  wishes: ResolvedWishes;
  copies: readonly CopiesOfSource[];
  cells: CellDecisions;
};

/** What every mix takes of one source, in sheet order. */
export function feedsOfSource(facts: FeedSources, sourceAt: number): Feed[] {
  return facts.sheet.mixes.map((_, mixAt) => feedOf(facts, sourceAt, mixAt));
}

/** One feed as it was settled, with its level, its tap and the wish that led to it. Both places must be in the sheet. */
export function feedOf(facts: FeedSources, sourceAt: number, mixAt: number): Feed {
  const { sheet, sends, wishes, copies, cells } = facts;
  const cell = mixAt * sends.sourceCount + sourceAt;
  const outcome = outcomes[sends.outcome[cell] ?? codeOf.noWish] ?? outcomes[codeOf.noWish];
  const purpose = outcome?.purpose ?? null;
  const decision = cells.byCell.size === 0 ? undefined : cells.byCell.get(cell);
  const wishAt = wishes.wishAt[cell] ?? -1;
  return {
    mixId: sheet.mixes[mixAt]?.id ?? '',
    sourceId: sheet.sources[sourceAt]?.id ?? '',
    purpose,
    channel: purpose === null ? null : (copies[sourceAt]?.[purpose] ?? null),
    levelDb: startLevelDb(sends, sourceAt, mixAt),
    tap: decision?.tap ?? 'pre-fader',
    step: outcome?.step ?? 'no wish',
    why: outcome?.why ?? '',
    amount: amountOfCell(sheet, wishes, cell),
    wishId: wishAt < 0 ? null : (sheet.wishes[wishAt]?.id ?? null),
    decided:
      purpose !== null &&
      (outcome?.step === 'chosen by the engineer' ||
        decision?.levelDb !== undefined ||
        decision?.tap !== undefined),
  };
}

/** Copies that the engineer put into a mix beside the one that feeds it already, at the same start level. */
export function deriveSecondFeeds(facts: FeedSources): Feed[] {
  const seen = new Set<string>();
  return facts.cells.second.flatMap(({ decision, mixAt, sourceAt }) => {
    const second = JSON.stringify([mixAt, sourceAt, decision.purpose]);
    if (seen.has(second)) return [];
    seen.add(second);
    const feed = feedOf(facts, sourceAt, mixAt);
    const channel = facts.copies[sourceAt]?.[decision.purpose] ?? null;
    if (feed.purpose === null || feed.purpose === decision.purpose || channel === null) return [];
    const why = 'The engineer put a second copy into this mix.';
    return {
      ...feed,
      purpose: decision.purpose,
      channel,
      step: 'chosen by the engineer',
      why,
      decided: true,
    };
  });
}
