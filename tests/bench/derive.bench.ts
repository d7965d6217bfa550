import { deriveAct, factsOfAct } from '../../core/derive/derive-act.ts';
import { deriveFeeds } from '../../core/derive/feeds.ts';
import { indexSheet } from '../../core/derive/sheet-index.ts';
import { resolveWishes } from '../../core/derive/wishes.ts';
import { planAct } from '../../core/plan/plan-act.ts';
import type { ActSheet } from '../../core/show/act-sheet.ts';
import { timedFeedSheet } from './feed-sheet.ts';
import { largeAct } from './large-act.ts';
import { median } from './median.ts';

/**
 * One act of 96 sources and 40 mixes: plan, feeds, levels, cue, paths' data and all findings, against the feed matrix
 * alone in a general-purpose spreadsheet engine, in one run. Compare the ratios, never milliseconds across runs.
 */
const sources = 96;
const mixes = 40;
const festivalActs = 144;

function timed(work: () => unknown, rounds: number): number {
  for (let round = 0; round < rounds; round++) work();
  const times: number[] = [];
  for (let round = 0; round < rounds; round++) {
    const started = performance.now();
    work();
    times.push(performance.now() - started);
  }
  return median(times);
}

const line = (what: string, ms: number, more = '') =>
  console.log(`${what.padEnd(52)} ${ms.toFixed(3).padStart(10)} ms ${more}`);

const sheet = largeAct(sources, mixes);
const derived = deriveAct(sheet);
console.log(
  `${sources} sources x ${mixes} mixes, ${sheet.wishes.length} wishes, ${derived.findings.length} findings`,
);

const fullMs = timed(() => deriveAct(sheet), 200);
line('one act in full, with plan and findings', fullMs);
line(
  '  of that: the plan',
  timed(() => planAct(sheet), 200),
);
line(
  '  of that: plan, feeds, levels, cue, gains',
  timed(() => factsOfAct(sheet), 200),
);
const index = indexSheet(sheet);
line(
  '  of that: the feed matrix alone, as in the sheets below',
  timed(() => deriveFeeds(sheet, index, derived.plan, resolveWishes(sheet, index)), 200),
);

const largeActs = Array.from({ length: festivalActs }, (_, at) => largeAct(sources, mixes, at + 1));
const festivalMs = timed(() => {
  for (const act of largeActs) deriveAct(act);
}, 5);
line(`${festivalActs} acts of that size`, festivalMs, `${(festivalMs / festivalActs).toFixed(3)} ms an act`);

// An edit is one row put into the sheet, and everything derived again: there is nothing to keep in step.
const edits: Record<string, (act: ActSheet) => ActSheet> = {
  'one wish': (act) => ({
    ...act,
    wishes: act.wishes.map((wish, at) => (at === 700 ? { ...wish, amount: 'little' } : wish)),
  }),
  'one mix': (act) => ({
    ...act,
    mixes: act.mixes.map((mix, at) => (at === 7 ? { ...mix, deviceKind: 'in-ear' } : mix)),
  }),
};
for (const [what, edit] of Object.entries(edits))
  line(
    `after an edit of ${what}, in full again`,
    timed(() => deriveAct(edit(sheet)), 200),
  );

const crossing = JSON.stringify({
  label: 'Wish',
  put: [{ table: 'wishes', row: sheet.wishes[700] }],
  remove: [],
});
const crossingMs = timed(() => JSON.parse(crossing), 2000);
line(
  'what crosses to the page for one edit, parsed',
  crossingMs,
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
