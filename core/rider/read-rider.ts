import type { Grid } from './grid.ts';
import { buildInputs } from './inputs/build-inputs.ts';
import { checkNumbers } from './inputs/check-numbers.ts';
import { settleKindsInContext } from './inputs/kinds-in-context.ts';
import { findPairs } from './inputs/pairs.ts';
import { askPuzzles } from './inputs/puzzles.ts';
import { legendOf } from './language/legend.ts';
import { scaleOf } from './language/scale.ts';
import type { Tongue } from './language/source-name.ts';
import { spokenWith, type TaughtWord } from './language/taught-words.ts';
import { spokenLanguages } from './language/vocabulary.ts';
import { buildMixes } from './mixes/build-mixes.ts';
import { askMixesForAll } from './mixes/mixes-for-all.ts';
import { actNameInOpening } from './page/act-name.ts';
import type { Found } from './page/draft.ts';
import { accountForLines } from './page/line-accounts.ts';
import { notesOf } from './page/side-matters.ts';
import { walkRider } from './page/walk.ts';
import type { Work } from './page/work.ts';
import { namesIn, settlePerformers } from './performers/performers.ts';
import { Asker } from './questions.ts';
import type { Answers, Reading } from './reading.ts';
import { readWishes } from './wishes/wishes.ts';

/**
 * Reads a rider. Every line of the grid that is not blank is in `lines` exactly once; what is doubtful is a
 * question, and an answer (question key to option or own text) is followed and its question gone. The same grid,
 * answers and own words always give the same reading. Never throws on any grid.
 */
export function readRider(grid: Grid, answers: Answers = {}, ownWords: readonly TaughtWord[] = []): Reading {
  const spoken = spokenWith(spokenLanguages(grid), ownWords);
  const tongue: Tongue = {
    spoken,
    legend: legendOf(grid, spoken),
    names: new Set(),
    people: new Set(),
    read: new Map(),
  };
  // Names are learnt on a first walk, so that on the second none of them is read as a misspelt source.
  const first = walkRider(grid, tongue);
  tongue.names = namesIn({ found: first, tongue });
  tongue.read.clear();
  const found: Found = tongue.names.size > 0 ? walkRider(grid, tongue) : first;
  const work: Work = {
    tongue,
    found,
    asker: new Asker(answers),
    inputs: [],
    performers: [],
    mixes: [],
    scale: scaleOf(grid, spoken),
  };
  buildInputs(work);
  settlePerformers(work);
  settleKindsInContext(work);
  findPairs(work);
  checkNumbers(work);
  askMixesForAll(work);
  const mixes = buildMixes(work);
  readWishes(work, mixes);
  work.mixes = mixes.map((mix) => mix.read);
  askPuzzles(work);
  return {
    actName: found.actName ?? actNameInOpening(grid, found, tongue),
    inputs: work.inputs.map((input) => input.read),
    performers: work.performers,
    mixes: work.mixes,
    notes: notesOf(grid, found),
    lines: accountForLines(grid, work),
    questions: work.asker.ranked(),
  };
}
