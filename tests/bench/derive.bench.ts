import { deriveAct, factsOfAct } from '../../core/derive/derive-act.ts';
import { planAct } from '../../core/plan/plan-act.ts';
import type { ActSheet } from '../../core/show/act-sheet.ts';
import { type Computed, differences, feedWorkbook, formulasIn, sheetForms } from './feed-sheet.ts';
import { computedInCalc } from './feeds-in-calc.ts';
import { computedInEngine } from './feeds-in-engine.ts';
import { largeAct } from './large-act.ts';
import { processorMsOfRounds } from './processor-time.ts';

/**
 * One act of 96 sources and 40 mixes: plan, feeds, levels, cue and all findings, against the feed matrix alone in two
 * spreadsheet programs, in one run. Ours is processor time: the fastest round counts for the ratios, as it does for the
 * spreadsheets, and the median stands beside it. Compare the ratios, never milliseconds across runs. Acts are taken
 * in turn, so that nothing remembered of the last one helps.
 */
const sources = 96;
const mixes = 40;
const festivalActs = 144;
const fewActs = 16;

const line = (what: string, ms: number, more = '') =>
  console.log(`${what.padEnd(60)} ${ms.toFixed(3).padStart(9)} ms ${more}`);

const largeActs = Array.from({ length: festivalActs }, (_, at) => largeAct(sources, mixes, at + 1));
const inTurn = largeActs.slice(0, fewActs);
const sheet = largeAct(sources, mixes);
const derived = deriveAct(sheet);
console.log(
  `${sources} sources x ${mixes} mixes, ${sheet.wishes.length} wishes, ${derived.findings.length} findings`,
);

/** Prints and returns the fastest time of an act. */
const timed = (what: string, work: (act: ActSheet) => unknown, acts = inTurn, rounds = 200) => {
  const { fastest, median } = processorMsOfRounds(acts, work, rounds);
  line(what, fastest, `median ${median.toFixed(3)}`);
  return fastest;
};
const toldInFull = (act: ActSheet) => {
  const { findings, feeds } = deriveAct(act);
  return findings.length + feeds.length;
};

const fullMs = timed('one act in full: plan, sends, levels, cue, findings', deriveAct);
timed('  the same, and the sentences of all findings told', (act) => deriveAct(act).findings.length);
timed('  the same, and a feed told for every cell', toldInFull);
const planMs = timed('  of that: the plan', planAct);
timed('  of that: all but findings', factsOfAct);

const ofFestivalMs = timed(
  `an act of ${festivalActs} of that size, one after the other`,
  deriveAct,
  largeActs,
  20,
);
line(`  all ${festivalActs}`, ofFestivalMs * festivalActs);

// An edit is one row put into the sheet, and everything derived again: there is nothing to keep in step.
const edits: Record<string, (act: ActSheet) => ActSheet> = {
  'one wish': (act) => ({
    ...act,
    wishes: act.wishes.map((wish, at) => (at === 700 ? { ...wish, amount: 'little' } : wish)),
  }),
  'one copy': (act) => ({
    ...act,
    sources: act.sources.map((source, at) => (at === 7 ? { ...source, audience: 'monitors only' } : source)),
  }),
  'one mix': (act) => ({
    ...act,
    mixes: act.mixes.map((mix, at) => (at === 7 ? { ...mix, deviceKind: 'in-ear' } : mix)),
  }),
};
/** One picture of a screen that shows 60 in a second. */
const pictureMs = 1000 / 60;
for (const [what, edit] of Object.entries(edits)) {
  const { fastest } = processorMsOfRounds(inTurn, (act) => deriveAct(edit(act)), 100);
  line(
    `after an edit of ${what}, all derived again`,
    fastest,
    `one picture of the screen takes ${Math.round(pictureMs / fastest)} times as long`,
  );
}

const crossing = JSON.stringify({
  label: 'Wish',
  put: [{ table: 'wishes', row: sheet.wishes[700] }],
  remove: [],
});
const manyTimes = Array.from({ length: 1000 }, () => crossing);
line(
  'what crosses to the page for one edit, parsed',
  processorMsOfRounds(manyTimes, (text) => JSON.parse(text), 20).fastest,
  `${crossing.length} characters; the page derives itself`,
);

for (const form of sheetForms) {
  const workbook = feedWorkbook(sheet, derived, form);
  const formulas = `${form} form, ${formulasIn(workbook)} formulas`;
  const compare = (program: string, computed: (Computed & { ms: number }) | null) => {
    if (!computed) return console.log(`${program} is not installed here, so nothing was compared with it`);
    const differing = differences(computed, derived);
    line(
      `${program}, ${formulas}`,
      computed.ms,
      `${Math.round(computed.ms / fullMs)} times as long, ${Math.round(computed.ms / (fullMs - planMs))} times without the plan, which the sheet is given; ${differing} cells differ`,
    );
    if (differing > 0) process.exitCode = 1;
  };
  compare('LibreOffice Calc, recalculated', await computedInCalc(workbook));
  compare('JavaScript spreadsheet engine', computedInEngine(workbook));
}
