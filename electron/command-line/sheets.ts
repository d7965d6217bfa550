import { existsSync, mkdirSync } from 'node:fs';
import { join } from 'node:path';
import type { Outcome } from '../../core/contract/problem.ts';
import { jobsOfAct, jobsOfDay } from '../../core/sheets/jobs.ts';
import {
  type Paper,
  type PaperJob,
  PaperRequest,
  papers,
  sheetKey,
} from '../../core/sheets/paper-request.ts';
import {
  type FileForm,
  fileForms,
  makerOf,
  type SheetId,
  SheetOptions,
  sheetIds,
  sheets,
} from '../../core/sheets/sheets.ts';
import type { Show } from '../../core/show/show.ts';
import { makePaper } from '../paper/make-paper.ts';
import { timeWords } from '../paper/time-words.ts';
import { dataFolder } from '../starting/data-folder.ts';
import { argumentsOf, exitCodes } from './command.ts';
import { demoShowPath } from './house-of-file.ts';
import { labelsOfFile } from './label-file.ts';
import { ledgerIn } from './print-ledger.ts';
import { type OpenedShow, openShowOfPath } from './show-of-path.ts';
import { writeWhole } from './write-whole.ts';

const usage = `Usage: npm run sheets -- --act NAME --out FOLDER
       npm run sheets -- --day NAME --out FOLDER

Makes the sheets of an act or of a whole day, and writes them into FOLDER.

  --show FILE    a show file, or a show exported as JSON (default: the show of this computer, else the demo)
  --sheet NAME   only this sheet; may be given several times
  --form FORM    pdf, xlsx or csv; may be given several times (default: all three)
  --paper PAPER  A4, Letter or A3 (default A4)
  --labels FILE  the measures of tape and label sheets, as JSON
  --apart        each sheet as a PDF of its own, instead of one PDF with all of them
  --list         say which sheets there are
`;

const options = {
  act: { type: 'string' },
  day: { type: 'string' },
  out: { type: 'string' },
  show: { type: 'string' },
  sheet: { type: 'string', multiple: true },
  form: { type: 'string', multiple: true },
  paper: { type: 'string', default: 'A4' },
  labels: { type: 'string' },
  apart: { type: 'boolean' },
  list: { type: 'boolean' },
} as const;

type Wanted = {
  of: 'act' | 'day';
  name: string;
  out: string;
  only: SheetId[];
  forms: FileForm[];
  paper: Paper;
  apart: boolean;
};

const isSheet = (name: string): name is SheetId => Object.hasOwn(sheets, name);
const isForm = (name: string): name is FileForm => fileForms.some((it) => it === name);
const isPaper = (name: string | undefined): name is Paper => papers.some((it) => it === name);

process.exitCode = await run();

async function run(): Promise<number> {
  const args = argumentsOf(options);
  if (args?.values.help) return say(process.stdout, usage, exitCodes.done);
  if (args?.values.list) return say(process.stdout, listOfSheets(), exitCodes.done);
  if (!args || args.positionals.length > 0) return say(process.stderr, usage, exitCodes.wrongUse);
  const wanted = wantedOf(args.values);
  if (typeof wanted === 'string') return say(process.stderr, `${wanted}\n\n${usage}`, exitCodes.wrongUse);
  try {
    mkdirSync(wanted.out, { recursive: true });
  } catch {
    return say(
      process.stderr,
      `The folder “${wanted.out}” cannot be made. Name another one.\n`,
      exitCodes.unreadable,
    );
  }
  const labels = await labelsOf(args.values.labels);
  if (!labels.ok) return say(process.stderr, wordsOf(labels), exitCodes.unreadable);
  const opened = await openShowOfPath(args.values.show ?? usualShow(), ledgerIn(wanted.out));
  if (!opened.ok) return say(process.stderr, wordsOf(opened), exitCodes.unreadable);
  try {
    return await makeAll(opened.value, { ...wanted, options: labels.value });
  } finally {
    opened.value.close();
  }
}

async function labelsOf(path: string | undefined): Promise<Outcome<SheetOptions>> {
  return path === undefined ? { ok: true, value: SheetOptions.parse({}) } : labelsOfFile(path);
}

type Values = NonNullable<ReturnType<typeof argumentsOf<typeof options>>>['values'];

/** What is wanted, or what is wrong with how it was said. */
function wantedOf(values: Values): Wanted | string {
  const { act, day, out, paper, apart = false } = values;
  const only = (values.sheet ?? []).filter(isSheet);
  const forms = (values.form ?? [...fileForms]).filter(isForm);
  if ((act === undefined) === (day === undefined)) return 'Say either --act or --day, with its name.';
  if (out === undefined) return 'Say with --out which folder the sheets go to.';
  if (only.length < (values.sheet ?? []).length)
    return `There is no such sheet. There are: ${sheetIds.join(', ')}.`;
  if (forms.length < (values.form ?? []).length) return 'A form is pdf, xlsx or csv.';
  if (!isPaper(paper)) return 'The paper is A4, Letter or A3.';
  const of = act === undefined ? 'day' : 'act';
  return { of, name: act ?? day ?? '', out, only, forms, paper, apart };
}

/** The show the user works on; the demo where there is none yet. */
function usualShow(): string {
  const own = join(dataFolder(), 'festival.foldbook');
  return existsSync(own) ? own : demoShowPath;
}

async function makeAll(opened: OpenedShow, wanted: Wanted & { options: SheetOptions }): Promise<number> {
  const id = idOf(opened.show, wanted);
  if (id.startsWith('!')) return say(process.stderr, `${id.slice(1)}\n`, exitCodes.wrongUse);
  const started = performance.now();
  let written = 0;
  for (const request of requestsOf(opened.show, id, wanted)) {
    const outcome = await makeOne(opened, request, wanted);
    if (!outcome.ok) return say(process.stderr, wordsOf(outcome), exitCodes.unreadable);
    written += outcome.value;
  }
  if (written === 0)
    return say(process.stderr, 'These sheets do not exist in the forms you named.\n', exitCodes.wrongUse);
  const seconds = ((performance.now() - started) / 1000).toFixed(1);
  return say(process.stdout, `${written} files in “${wanted.out}”, in ${seconds} s.\n`, exitCodes.done);
}

/** The id of the act or day that is meant, or a sentence after "!". */
function idOf(show: Show, { of, name }: Wanted): string {
  const rows = [...(of === 'act' ? show.acts : show.days).values()];
  const found = rows.filter((it) => it.name.toLowerCase() === name.toLowerCase());
  const [only] = found;
  if (only && found.length === 1) return only.id;
  const names = rows.map((it) => `“${it.name}”`).join(', ');
  if (found.length > 1) return `!There are ${found.length} of the name “${name}”. Rename one of them.`;
  return `!The show has no ${of} “${name}”. It has: ${names || `no ${of} at all`}.`;
}

/** What is asked of the paper: one request for each form, or for each sheet where they are to be apart. */
function requestsOf(
  show: Show,
  id: string,
  { of, only, forms, paper, apart, options: labels }: Wanted & { options: SheetOptions },
): PaperRequest[] {
  return forms.flatMap((file) => {
    const all = of === 'act' ? jobsOfAct(show, id, file) : jobsOfDay(show, id, file);
    const jobs = all.filter(({ sheet }) => only.length === 0 || only.includes(sheet));
    if (jobs.length === 0) return [];
    const sets: PaperJob[][] = apart && file === 'pdf' ? jobs.map((job) => [job]) : [jobs];
    const cover = of === 'day' && file === 'pdf' && !apart ? id : null;
    return sets.map((set) =>
      PaperRequest.parse({ jobs: set, file, paper, options: labels, coverOfDayId: cover }),
    );
  });
}

async function makeOne(opened: OpenedShow, request: PaperRequest, { out }: Wanted): Promise<Outcome<number>> {
  const now = new Date();
  const lastEditions = opened.lastPrints(request.jobs.map(sheetKey));
  const made = await makePaper({ show: opened.show, request, lastEditions, now, madeAt: timeWords(now) });
  if (!made.ok) return made;
  for (const { name, bytes } of made.value.files) {
    const outcome = await writeWhole(join(out, name), bytes);
    if (!outcome.ok) return outcome;
    process.stdout.write(`${name}\n`);
  }
  const kept = await opened.keepPrints(made.value.editions);
  return kept.ok ? { ok: true, value: made.value.files.length } : kept;
}

function listOfSheets(): string {
  return sheetIds.map((id) => `${id}: ${makerOf(id).title} (${makerOf(id).files.join(', ')})\n`).join('');
}

function wordsOf(refused: Outcome<unknown> & { ok: false }): string {
  return `${refused.problem.what} ${refused.problem.todo}\n`;
}

function say(stream: NodeJS.WriteStream, text: string, code: number): number {
  stream.write(text);
  return code;
}
