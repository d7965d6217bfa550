import type { Purpose } from '../show/words.ts';
import type { FeedStep } from './derived.ts';

/** How the rule ends for one cell of the matrix. */
type Outcome = { step: FeedStep; purpose: Purpose | null; why: string };

const outcome = (step: FeedStep, purpose: Purpose | null, why: string): Outcome => ({ step, purpose, why });
const chosen = (purpose: Purpose, copy: string): Outcome =>
  outcome('chosen by the engineer', purpose, `The engineer chose ${copy} for this mix.`);

/** Every outcome of the rule, made once: a matrix of thousands of cells says one of these. Silent ones come first. */
const table = {
  noWish: outcome('no wish', null, 'This mix has no wish for the source.'),
  none: outcome('no wish', null, 'The wish says none of it.'),
  switchedOff: outcome('no wish', null, 'This mix asks for something else only.'),
  fohOnly: outcome(
    'no wish',
    null,
    'The source is for front of house only, and this mix does not ask for it by name.',
  ),
  elsewhere: outcome(
    'mixed elsewhere',
    null,
    'This mix is made on another desk; this desk sends it nothing.',
  ),
  noChannel: outcome(
    'not through this desk',
    null,
    'The source has no channel on this desk that could feed this mix.',
  ),
  inEars: outcome(
    'copy for this kind of device',
    'in-ears',
    'This mix is heard in-ear, and there is a copy for in-ears.',
  ),
  wedges: outcome(
    'copy for this kind of device',
    'wedges',
    'This mix is heard from a wedge or fill, and there is a copy for wedges.',
  ),
  monitors: outcome('monitor copy', 'monitors', 'There is a copy for monitors.'),
  foh: outcome('foh channel', 'foh', 'There is no copy for monitors, so the FOH channel feeds it.'),
  chosenFoh: chosen('foh', 'the FOH channel'),
  chosenMonitors: chosen('monitors', 'the copy for monitors'),
  chosenWedges: chosen('wedges', 'the copy for wedges'),
  chosenInEars: chosen('in-ears', 'the copy for in-ears'),
  chosenParallel: chosen('parallel', 'the parallel channel'),
};

type OutcomeName = keyof typeof table;
const names = Object.keys(table) as OutcomeName[];

/** The outcomes by their codes. */
export const outcomes: readonly Outcome[] = names.map((name) => table[name]);

/** The code of each outcome: its place in the table. */
export const codeOf = Object.fromEntries(names.map((name, code) => [name, code])) as Record<
  OutcomeName,
  number
>;

/** From this code on something flows. */
export const firstFlowing = outcomes.findIndex(({ purpose }) => purpose !== null);

/** By code: 1 where something flows, else 0; to be added up, since nothing can guess which cells flow. */
export const oneWhereItFlows = Uint8Array.from(outcomes, ({ purpose }) => (purpose === null ? 0 : 1));

export const chosenCode: Record<Purpose, number> = {
  foh: codeOf.chosenFoh,
  monitors: codeOf.chosenMonitors,
  wedges: codeOf.chosenWedges,
  'in-ears': codeOf.chosenInEars,
  parallel: codeOf.chosenParallel,
};

/** Sets of outcomes, one bit for each code, so that a rule can ask a whole row of the matrix one question. */
export const outcomesThat = {
  flow: bitsOf(({ purpose }) => purpose !== null),
  areElsewhere: bitsOf(({ step }) => step === 'mixed elsewhere'),
  haveNoChannel: bitsOf(({ step }) => step === 'not through this desk'),
  areSwitchedOff: 1 << codeOf.switchedOff,
};

/** Outcomes that a copy for this purpose feeds. */
export const outcomesFrom: Record<Purpose, number> = {
  foh: bitsOf((it) => it.purpose === 'foh'),
  monitors: bitsOf((it) => it.purpose === 'monitors'),
  wedges: bitsOf((it) => it.purpose === 'wedges'),
  'in-ears': bitsOf((it) => it.purpose === 'in-ears'),
  parallel: bitsOf((it) => it.purpose === 'parallel'),
};

function bitsOf(isSo: (it: Outcome) => boolean): number {
  let bits = 0;
  for (const [code, it] of outcomes.entries()) if (isSo(it)) bits |= 1 << code;
  return bits;
}
