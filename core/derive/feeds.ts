import type { Plan } from '../plan/plan.ts';
import type { Mix } from '../show/act.ts';
import type { ActSheet } from '../show/act-sheet.ts';
import type { Id } from '../show/rig.ts';
import type { Purpose } from '../show/words.ts';
import { type CopiesOfSource, copiesOfSources, noCopies, purposeOfDevice } from './copies-of-source.ts';
import type { Feed, FeedStep } from './derived.ts';
import { type CellDecision, type CellDecisions, indexCellDecisions } from './feed-decisions.ts';
import type { SheetIndex } from './sheet-index.ts';
import { cellState, type ResolvedWishes } from './wishes.ts';

/** Nothing starts above unity, whoever asks for it. */
const unityDb = 0;

/**
 * Which copy of every source feeds every mix, at what start level and by which step of the rule: one row for each
 * source, one feed for each mix, both in sheet order.
 */
export function deriveFeeds(
  sheet: ActSheet,
  index: SheetIndex,
  plan: Plan,
  wishes: ResolvedWishes,
): { feeds: Feed[][]; secondFeeds: Feed[]; copies: CopiesOfSource[]; cells: CellDecisions } {
  const copies = copiesOfSources(sheet, index, plan);
  const cells = indexCellDecisions(sheet, index);
  const feeds = sheet.sources.map((source, sourceAt) => {
    const ofSource = copies[sourceAt] ?? noCopies;
    return sheet.mixes.map((mix, mixAt) => {
      const cell = mixAt * wishes.sourceCount + sourceAt;
      const decision = cells.byCell.get(cell);
      const settled = settle(mix, ofSource, wishes.state[cell] ?? 0, decision?.purpose ?? null);
      const channel = settled.purpose === null ? null : ofSource[settled.purpose];
      return feedOf(sheet, wishes, cell, mix.id, source.id, settled, channel, decision);
    });
  });
  return { feeds, secondFeeds: secondFeeds(feeds, copies, cells), copies, cells };
}

/** One feed as settled, with its level, its tap and the wish that led to it. */
function feedOf(
  sheet: ActSheet,
  wishes: ResolvedWishes,
  cell: number,
  mixId: Id,
  sourceId: Id,
  { step, purpose, why }: Settled,
  channel: number | null,
  decision: CellDecision | undefined,
): Feed {
  const wishAt = wishes.wishAt[cell] ?? -1;
  const levelDecidedDb = decision?.levelDb;
  const tapDecided = decision?.tap;
  const isDecided =
    step === 'chosen by the engineer' || levelDecidedDb !== undefined || tapDecided !== undefined;
  return {
    mixId,
    sourceId,
    purpose,
    channel,
    levelDb: purpose === null ? null : Math.min(levelDecidedDb ?? wishes.levelDb[cell] ?? 0, unityDb),
    tap: tapDecided ?? 'pre-fader',
    step,
    why,
    amount: wishes.amount[cell] ?? null,
    wishId: wishAt < 0 ? null : (sheet.wishes[wishAt]?.id ?? null),
    decided: purpose !== null && isDecided,
  };
}

type Settled = { step: FeedStep; purpose: Purpose | null; why: string };

const settled = (step: FeedStep, purpose: Purpose | null, why: string): Settled => ({ step, purpose, why });

/** Every outcome of the rule, made once: a matrix of thousands of cells says one of these. */
const outcome = {
  noWish: settled('no wish', null, 'This mix has no wish for the source.'),
  none: settled('no wish', null, 'The wish says none of it.'),
  switchedOff: settled('no wish', null, 'This mix asks for something else only.'),
  fohOnly: settled(
    'no wish',
    null,
    'The source is for front of house only, and this mix does not ask for it by name.',
  ),
  elsewhere: settled(
    'mixed elsewhere',
    null,
    'This mix is made on another desk; this desk sends it nothing.',
  ),
  inEars: settled(
    'copy for this kind of device',
    'in-ears',
    'This mix is heard in-ear, and there is a copy for in-ears.',
  ),
  wedges: settled(
    'copy for this kind of device',
    'wedges',
    'This mix is heard from a wedge or fill, and there is a copy for wedges.',
  ),
  monitors: settled('monitor copy', 'monitors', 'There is a copy for monitors.'),
  foh: settled('foh channel', 'foh', 'There is no copy for monitors, so the FOH channel feeds it.'),
  noChannel: settled(
    'not through this desk',
    null,
    'The source has no channel on this desk that could feed this mix.',
  ),
};

const chosenOutcome: Record<Purpose, Settled> = {
  foh: settled('chosen by the engineer', 'foh', 'The engineer chose the FOH channel for this mix.'),
  monitors: settled(
    'chosen by the engineer',
    'monitors',
    'The engineer chose the copy for monitors for this mix.',
  ),
  wedges: settled('chosen by the engineer', 'wedges', 'The engineer chose the copy for wedges for this mix.'),
  'in-ears': settled(
    'chosen by the engineer',
    'in-ears',
    'The engineer chose the copy for in-ears for this mix.',
  ),
  parallel: settled(
    'chosen by the engineer',
    'parallel',
    'The engineer chose the parallel channel for this mix.',
  ),
};

const offOutcome: readonly (Settled | null)[] = [
  outcome.noWish,
  null,
  outcome.none,
  outcome.switchedOff,
  outcome.fohOnly,
];

/** The rule, in its order: the first that applies. */
function settle(mix: Mix, copies: CopiesOfSource, state: number, chosen: Purpose | null): Settled {
  if (state !== cellState.wanted) return offOutcome[state] ?? outcome.noWish;
  if (mix.mixedAt === 'elsewhere') return outcome.elsewhere;
  if (chosen !== null && copies[chosen] !== null) return chosenOutcome[chosen];
  const made = purposeOfDevice(mix.deviceKind);
  if (made === 'in-ears' && copies['in-ears'] !== null) return outcome.inEars;
  if (made === 'wedges' && copies.wedges !== null) return outcome.wedges;
  if (copies.monitors !== null) return outcome.monitors;
  return copies.foh === null ? outcome.noChannel : outcome.foh;
}

/** Copies that the engineer put into a mix beside the one that feeds it already, at the same start level. */
function secondFeeds(
  feeds: readonly Feed[][],
  copies: readonly CopiesOfSource[],
  cells: CellDecisions,
): Feed[] {
  const seen = new Set<string>();
  return cells.second.flatMap(({ decision, mixAt, sourceAt }) => {
    const second = JSON.stringify([mixAt, sourceAt, decision.purpose]);
    if (seen.has(second)) return [];
    seen.add(second);
    const feed = feeds[sourceAt]?.[mixAt];
    const channel = copies[sourceAt]?.[decision.purpose] ?? null;
    if (!feed || feed.purpose === null || feed.purpose === decision.purpose || channel === null) return [];
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
