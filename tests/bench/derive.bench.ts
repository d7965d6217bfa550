import { deriveAct, factsOfAct } from '../../core/derive/derive-act.ts';
import { planAct } from '../../core/plan/plan-act.ts';
import type { ActSheet } from '../../core/show/act-sheet.ts';
import { timedFeedSheet } from './feed-sheet.ts';
import { largeAct } from './large-act.ts';
import { processorMsEach } from './processor-time.ts';

/**
 * One act of 96 sources and 40 mixes: plan, feeds, levels, cue, paths' data and all findings, against the feed matrix
 * alone in a general-purpose spreadsheet engine, in one run. All figures are processor time. Compare the ratios,
 * never milliseconds across runs. Acts are taken in turn, so that nothing remembered of the last one helps.
 */
const sources = 96;
const mixes = 40;
const festivalActs = 144;
const fewActs = 16;

const line = (what: string, ms: number, more = '') =>
  console.log(`${what.padEnd(56)} ${ms.toFixed(3).padStart(10)} ms ${more}`);

const largeActs = Array.from({ length: festivalActs }, (_, at) => largeAct(sources, mixes, at + 1));
const inTurn = largeActs.slice(0, fewActs);
const sheet = largeAct(sources, mixes);
const derived = deriveAct(sheet);
console.log(
  `${sources} sources x ${mixes} mixes, ${sheet.wishes.length} wishes, ${derived.findings.length} findings`,
);

const each = (work: (act: ActSheet) => unknown) => processorMsEach(inTurn, work, 100);
const fullMs = each(deriveAct);
line('one act in full: plan, sends, levels, cue, findings', fullMs);
line(
  '  the same, and a feed told for every cell',
  each((act) => deriveAct(act).feeds.length),
);
line('  of that: the plan', each(planAct));
line('  of that: all but findings', each(factsOfAct));

const festivalMs = processorMsEach(largeActs, deriveAct, 20);
line(`${festivalActs} acts of that size`, festivalMs * festivalActs, `${festivalMs.toFixed(3)} ms an act`);
line(
  '  the same, and a feed told for every cell',
  processorMsEach(largeActs, (act) => deriveAct(act).feeds.length, 20) * festivalActs,
);

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
for (const [what, edit] of Object.entries(edits))
  line(
    `after an edit of ${what}, in full again`,
    each((act) => deriveAct(edit(act))),
  );

const crossing = JSON.stringify({
  label: 'Wish',
  put: [{ table: 'wishes', row: sheet.wishes[700] }],
  remove: [],
});
const manyTimes = Array.from({ length: 1000 }, () => crossing);
line(
  'what crosses to the page for one edit, parsed',
  processorMsEach(manyTimes, (text) => JSON.parse(text), 20),
  `${crossing.length} characters; the page derives itself`,
);

for (const form of ['direct', 'lookup'] as const) {
  const { ms, formulas, differing } = timedFeedSheet(sheet, derived, form);
  line(
    `spreadsheet engine, ${form} form, ${formulas} formulas`,
    ms,
    `${Math.round(ms / fullMs)} times as long; ${differing} cells differ`,
  );
  if (differing > 0) process.exitCode = 1;
}
