import { indexDecisions } from '../plan/decided.ts';
import { planAct } from '../plan/plan-act.ts';
import type { ActSheet } from '../show/act-sheet.ts';
import { indexSheet } from '../show/sheet-index.ts';
import { copiesOfSources } from './copies-of-source.ts';
import { deriveCues } from './cue.ts';
import type { Derived, Feed, Finding } from './derived.ts';
import { type ActFacts, mixesWithPlans } from './facts.ts';
import { indexCellDecisions } from './feed-decisions.ts';
import { deriveSecondFeeds, feedsOf } from './feeds.ts';
import { findFaults } from './findings/table.ts';
import { findingOf } from './findings/tell.ts';
import { deriveGains } from './gain.ts';
import { deriveInputs } from './inputs.ts';
import { deriveOwnLatencies } from './latency.ts';
import { deriveLevels } from './levels.ts';
import { deriveSends } from './sends.ts';
import { deriveSplits } from './splits.ts';
import { deriveTalk } from './talkback.ts';
import { resolveWishes } from './wishes.ts';

/**
 * Everything that follows from one act's decisions: its plan, which copy feeds which mix at what start level and
 * why, the expected levels, the engineer's cue, and what is wrong or doubtful. Rows that name something that is
 * not in the sheet are passed over and reported; no sheet makes it fail.
 */
export function deriveAct(sheet: ActSheet): Derived {
  const facts = factsOfAct(sheet);
  const { plan, secondFeeds, levels, cues, inputs, gains, talk, splits, ownLatencies } = facts;
  const faults = findFaults(facts);
  let feeds: Feed[][] | null = null;
  let findings: Finding[] | null = null;
  return {
    plan,
    // What flows is settled; the rows that tell it are many, and made when somebody first looks at them.
    get feeds() {
      feeds ??= feedsOf(facts);
      return feeds;
    },
    secondFeeds,
    levels,
    cues,
    inputs,
    gains,
    talk,
    splits,
    ownLatencies,
    // What is wrong is found; its sentences are told with the first look.
    get findings() {
      findings ??= faults.map(findingOf);
      return findings;
    },
  };
}

/** All that is derived short of the findings, with the indexes that findings and paths are read with. */
export function factsOfAct(sheet: ActSheet): ActFacts {
  const index = indexSheet(sheet);
  const decided = indexDecisions(sheet);
  const plan = planAct(sheet);
  const wishes = resolveWishes(sheet, index);
  const copies = copiesOfSources(sheet, index, plan);
  const cells = indexCellDecisions(sheet, index);
  const sends = deriveSends(sheet, copies, cells, wishes);
  const secondFeeds = deriveSecondFeeds({ sheet, sends, wishes, copies, cells });
  const facts = {
    sheet,
    index,
    decided,
    plan,
    mixes: mixesWithPlans(sheet, index, plan),
    wishes,
    cells,
    copies,
    sends,
    secondFeeds,
    levels: deriveLevels(sheet, sends, secondFeeds),
    cues: deriveCues(sheet, plan, decided.cueOfMix),
    inputs: deriveInputs(sheet, plan),
    gains: deriveGains(sheet, copies),
    talk: deriveTalk(sheet, sends),
    splits: deriveSplits(sheet, wishes),
    deviceById: index.deviceById,
    outputById: index.outputById,
    socketById: index.socketById,
  };
  return { ...facts, ownLatencies: deriveOwnLatencies(facts) };
}
