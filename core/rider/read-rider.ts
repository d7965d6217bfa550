import { actNameInOpening } from './act-name.ts';
import { buildInputs } from './build-inputs.ts';
import { buildMixes } from './build-mixes.ts';
import { checkNumbers } from './check-numbers.ts';
import type { Found } from './draft.ts';
import type { Grid } from './grid.ts';
import { settleKindsInContext } from './kinds-in-context.ts';
import { legendOf } from './legend.ts';
import { accountForLines } from './line-accounts.ts';
import { askMixesForAll } from './mixes-for-all.ts';
import { findPairs } from './pairs.ts';
import { namesIn, settlePerformers } from './performers.ts';
import { askPuzzles } from './puzzles.ts';
import { Asker } from './questions.ts';
import type { Answers, Reading } from './reading.ts';
import { notesOf } from './side-matters.ts';
import type { Tongue } from './source-name.ts';
import { spokenWith, type TaughtWord } from './taught-words.ts';
import { spokenLanguages } from './vocabulary.ts';
import { walkRider } from './walk.ts';
import { readWishes } from './wishes.ts';
import type { Work } from './work.ts';

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
  const work: Work = { tongue, found, asker: new Asker(answers), inputs: [], performers: [], mixes: [] };
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
