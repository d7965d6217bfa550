import { indexDecisions } from '../plan/decided.ts';
import { planAct } from '../plan/plan-act.ts';
import type { ActSheet } from '../show/act-sheet.ts';
import { deriveCues } from './cue.ts';
import type { Derived } from './derived.ts';
import { type ActFacts, byId, mixesWithPlans } from './facts.ts';
import { deriveFeeds } from './feeds.ts';
import { findFaults } from './findings/table.ts';
import { deriveGains } from './gain.ts';
import { deriveInputs } from './inputs.ts';
import { deriveOwnLatencies } from './latency.ts';
import { deriveLevels } from './levels.ts';
import { indexSheet } from './sheet-index.ts';
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
  const { plan, feeds, secondFeeds, levels, cues, inputs, gains, talk, splits, ownLatencies } = facts;
  const findings = findFaults(facts);
  return { plan, feeds, secondFeeds, levels, cues, inputs, gains, talk, splits, ownLatencies, findings };
}

/** All that is derived short of the findings, with the indexes that findings and paths are read with. */
export function factsOfAct(sheet: ActSheet): ActFacts {
  const index = indexSheet(sheet);
  const decided = indexDecisions(sheet);
  const plan = planAct(sheet);
  const wishes = resolveWishes(sheet, index);
  const { feeds, secondFeeds, copies, cells } = deriveFeeds(sheet, index, plan, wishes);
  const facts = {
    sheet,
    index,
    decided,
    plan,
    mixes: mixesWithPlans(sheet, plan),
    wishes,
    cells,
    copies,
    feeds,
    secondFeeds,
    levels: deriveLevels(sheet, feeds, secondFeeds),
    cues: deriveCues(sheet, plan, decided.cueOfMix),
    inputs: deriveInputs(sheet, plan),
    gains: deriveGains(sheet, plan),
    talk: deriveTalk(sheet, feeds),
    splits: deriveSplits(sheet, wishes),
    deviceById: byId(sheet.devices),
    outputById: byId(sheet.outputs),
    socketById: byId(sheet.sockets),
  };
  return { ...facts, ownLatencies: deriveOwnLatencies(facts) };
}
