import { deriveBetween } from '../../core/derive/between-acts.ts';
import { deriveAct } from '../../core/derive/derive-act.ts';
import { derivePaths } from '../../core/derive/path.ts';
import type { Act } from '../../core/show/act.ts';
import { type ActSheet, actSheet, actsOfDay } from '../../core/show/act-sheet.ts';
import { findBrokenReferences } from '../../core/show/apply-change.ts';
import { type Show, type ShowDocument, showFromRows, tableNames } from '../../core/show/show.ts';
import { argumentsOf, exitCodes, fail, sayUsage } from './command.ts';
import type { FileProblem } from './mended-show.ts';
import { printJson } from './print-json.ts';
import { mendedShowOfFile } from './show-of-file.ts';

const usage = `Usage: npm run --silent derive -- SHOW.json [--act NAME]
Derives the acts of a show and prints as JSON, for each: its plan, feeds, levels, cue, gains, talkback, splits,
paths, findings, and what changes after the act before; and the problems of the file itself. What cannot be used of
a file that was edited by hand is named there and passed over; everything else is derived.
  SHOW.json   a show exported as JSON (its shape: assets/schema/show.schema.json)
  --act NAME  only the acts of this name, or with this id
Exit code: 0 done, 1 the show could not be read or has no such act, 2 wrong use.`;

process.exitCode = await derive();

async function derive(): Promise<number> {
  const given = argumentsOf({ act: { type: 'string' } });
  const [path, ...more] = given?.positionals ?? [];
  if (!given || given.values.help || path === undefined || more.length > 0)
    return sayUsage(usage, given?.values.help);
  const read = await mendedShowOfFile(path);
  if (!read.ok) return fail(read.problem);
  const { document, problems } = read.value;
  const show = showFromRows(document);
  const wanted = given.values.act;
  const acts = [...show.acts.values()].filter(
    (act) => wanted === undefined || act.name === wanted || act.id === wanted,
  );
  if (wanted !== undefined && acts.length === 0) {
    const names = [...show.acts.values()].map((act) => `“${act.name}”`).join(', ');
    // An act may be missing because its own row was left out.
    const leftOut = problems.filter(({ what }) => what.startsWith('acts')).map(({ what }) => ` ${what}`);
    return fail(`The show has no act “${wanted}”. It has: ${names || 'none'}.${leftOut.join('')}`);
  }
  await printJson({
    problems: [...problems, ...problemsOf(document, show)],
    acts: acts.map((act) => derivedAct(show, act)),
  });
  return exitCodes.done;
}

/** What was derived from one act, with names beside ids so that it can be read. null: it has no day or no rig. */
function derivedAct(show: Show, act: Act) {
  const sheet = actSheet(show, act.id);
  if (!sheet) return { actId: act.id, act: act.name, derived: null };
  const derived = deriveAct(sheet);
  const sourceName = new Map(sheet.sources.map((source) => [source.id, source.name]));
  const mixName = new Map(sheet.mixes.map((mix) => [mix.id, mix.name]));
  const named = <T extends object>(row: T) => ({
    ...('sourceId' in row ? { source: sourceName.get(String(row.sourceId)) } : {}),
    ...('mixId' in row ? { mix: mixName.get(String(row.mixId)) } : {}),
    ...row,
  });
  return {
    actId: act.id,
    act: act.name,
    derived: {
      plan: {
        copies: derived.plan.copies.map(named),
        patches: derived.plan.patches.map(named),
        mixes: derived.plan.mixes.map(named),
        passedOver: derived.plan.passedOver.map(named),
      },
      feeds: derived.feeds.flat().map(named),
      secondFeeds: derived.secondFeeds.map(named),
      levels: derived.levels.map(named),
      cues: derived.cues.map(named),
      inputs: derived.inputs.map(named),
      gains: derived.gains.map(named),
      talk: derived.talk.map(named),
      splits: derived.splits.map(named),
      ownLatencies: derived.ownLatencies.map(named),
      paths: derivePaths(sheet, derived),
      findings: derived.findings,
      afterActBefore: fromActBefore(show, act, sheet),
    },
  };
}

/** What changes on recall, and what is wrong between the two acts; null for the first act of its day. */
function fromActBefore(show: Show, act: Act, sheet: ActSheet) {
  const acts = actsOfDay(show, act.dayId);
  const before = acts[acts.indexOf(act) - 1];
  const sheetBefore = before && actSheet(show, before.id);
  return sheetBefore ? { act: before.name, ...deriveBetween(sheetBefore, sheet) } : null;
}

/** Rows that the program would not have written: ids given twice, and names of rows that are not there. */
function problemsOf(document: ShowDocument, show: Show): FileProblem[] {
  const twice = tableNames.flatMap((table) => {
    const seen = new Set<string>();
    return document[table]
      .filter(({ id }) => seen.size === seen.add(id).size)
      .map(({ id }) => ({ table, id }));
  });
  const homeless = [...show.acts.values()].filter((act) => actSheet(show, act.id) === null);
  return [
    ...twice.map(({ table, id }) => ({
      what: `${table} has two rows with the id “${id}”; the later one counts.`,
      todo: 'Give each row an id of its own.',
    })),
    ...findBrokenReferences(show).map(({ table, id, field, to, missing }) => ({
      what: `${field} of “${id}” in ${table} names “${missing}”, which is not in ${to}.`,
      todo: 'Enter what is missing, or remove what names it.',
    })),
    ...(show.acts.size === 0
      ? [{ what: 'The show has no act, so there is nothing to derive.', todo: 'Enter an act and its day.' }]
      : []),
    ...homeless.map((act) => ({
      what: `The act “${act.name}” has no day or no rig in this show, so nothing can be derived.`,
      todo: 'Enter its day and the rig it plays on.',
    })),
  ];
}
