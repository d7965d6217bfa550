import { indexDecisions } from '../plan/decided.ts';
import { planWithDevices } from '../plan/plan-act.ts';
import type { ActSheet } from '../show/act-sheet.ts';
import { indexSheet } from '../show/sheet-index.ts';
import { copiesOfSources } from './copies-of-source.ts';
import { deriveCues } from './cue.ts';
import type { Derived, Feed, Finding } from './derived.ts';
import { type ActFacts, mixesWithPlans } from './facts.ts';
import { indexCellDecisions } from './feed-decisions.ts';
import { deriveSecondFeeds, feedsOfSource } from './feeds.ts';
import { findFaults } from './findings/table.ts';
import { type Found, findingOf } from './findings/tell.ts';
import { deriveGains } from './gain.ts';
import { deriveInputs } from './inputs.ts';
import { deriveOwnLatencies } from './latency.ts';
import { deriveLevels } from './levels.ts';
import { peopleOf } from './people.ts';
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
  return new DerivedAct(facts, findFaults(facts));
}

/** All that is derived short of the findings, with the indexes that findings and paths are read with. */
export function factsOfAct(sheet: ActSheet): ActFacts {
  const index = indexSheet(sheet);
  const decided = indexDecisions(sheet);
  const { plan, devices } = planWithDevices(sheet);
  const wishes = resolveWishes(sheet, index);
  const copies = copiesOfSources(sheet, plan);
  const cells = indexCellDecisions(sheet, index);
  const sends = deriveSends(sheet, copies, cells, wishes);
  const secondFeeds = deriveSecondFeeds({ sheet, sends, wishes, copies, cells });
  const facts = {
    sheet,
    index,
    decided,
    plan,
    mixes: mixesWithPlans(sheet, plan, devices),
    wishes,
    cells,
    copies,
    sends,
    secondFeeds,
    levels: deriveLevels(sheet, sends, secondFeeds),
    cues: deriveCues(sheet, plan, devices, decided.cueOfMix),
    inputs: deriveInputs(sheet, plan),
    gains: deriveGains(sheet, copies),
    talk: deriveTalk(sheet, sends),
    splits: deriveSplits(sheet, wishes),
    people: peopleOf(sheet, index),
  };
  return { ...facts, ownLatencies: deriveOwnLatencies(facts) };
}

/**
 * What was derived, as plain data, but for two lists that are told when somebody first reads them: what flows and what
 * is wrong is settled, and their rows and sentences are many. All acts share two getters. Getters of a literal would be
 * made anew for every act, and the engine then keeps a shape for each, and with it everything that was derived, until
 * it next collects all garbage: that cost as much as half the derivation.
 */
class DerivedAct implements Derived {
  readonly #facts: ActFacts;
  readonly #faults: readonly Found[];
  readonly #feedRows: Feed[][] = [];
  #feeds: Feed[][] | null = null;
  #findings: Finding[] | null = null;
  readonly plan;
  readonly secondFeeds;
  readonly levels;
  readonly cues;
  readonly inputs;
  readonly gains;
  readonly talk;
  readonly splits;
  readonly ownLatencies;
  declare readonly feeds: Feed[][];
  declare readonly findings: Finding[];

  static readonly #feedsWhenRead = {
    enumerable: true,
    get(this: DerivedAct): Feed[][] {
      this.#feeds ??= this.#facts.sheet.sources.map((_, sourceAt) => this.feedsOfSource(sourceAt));
      return this.#feeds;
    },
  };

  static readonly #findingsWhenRead = {
    enumerable: true,
    get(this: DerivedAct): Finding[] {
      this.#findings ??= this.#faults.map(findingOf);
      return this.#findings;
    },
  };

  constructor(facts: ActFacts, faults: readonly Found[]) {
    this.#facts = facts;
    this.#faults = faults;
    this.plan = facts.plan;
    this.secondFeeds = facts.secondFeeds;
    this.levels = facts.levels;
    this.cues = facts.cues;
    this.inputs = facts.inputs;
    this.gains = facts.gains;
    this.talk = facts.talk;
    this.splits = facts.splits;
    this.ownLatencies = facts.ownLatencies;
    Object.defineProperty(this, 'feeds', DerivedAct.#feedsWhenRead);
    Object.defineProperty(this, 'findings', DerivedAct.#findingsWhenRead);
  }

  feedsOfSource(sourceAt: number): Feed[] {
    if (this.#facts.sheet.sources[sourceAt] === undefined) return [];
    const row = this.#feedRows[sourceAt] ?? feedsOfSource(this.#facts, sourceAt);
    this.#feedRows[sourceAt] = row;
    return row;
  }
}
