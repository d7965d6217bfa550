import { jobsOfAct, jobsOfDay } from '../../core/sheets/jobs.ts';
import { PaperRequest } from '../../core/sheets/paper-request.ts';
import type { Show } from '../../core/show/show.ts';
import { TypeCase } from '../../electron/paper/fonts/type-case.ts';
import { makeFiles } from '../../electron/paper/make-files.ts';
import { paperShow } from '../helpers/paper-show.ts';
import { median } from './median.ts';

/**
 * The sheets of an act and of a day, from the show to the bytes of the files. Goals: an act's full set under 1 s, a
 * day of 12 acts under 8 s. The first set of a process is told apart: it also warms the program up. Beside the
 * clock, the time that the processor worked, for other work on a machine makes the clock run longer.
 */
const goals = { actMs: 1000, dayMs: 8000 } as const;

async function timed(
  show: Show,
  file: 'pdf' | 'xlsx',
  jobs: PaperRequest['jobs'],
  typeCase: TypeCase,
  dayId: string | null = null,
) {
  const now = new Date();
  const request = PaperRequest.parse({ jobs, file, coverOfDayId: dayId });
  const work = process.cpuUsage();
  const started = performance.now();
  const made = await makeFiles({ show, request, lastEditions: new Map(), now, madeAt: 'now' }, typeCase);
  const ms = performance.now() - started;
  const { user, system } = process.cpuUsage(work);
  const bytes = made.files.reduce((sum, it) => sum + it.bytes.length, 0);
  return { ms, workMs: (user + system) / 1000, pages: made.pageCount, kilobytes: Math.round(bytes / 1024) };
}

type Timed = Awaited<ReturnType<typeof timed>>;

function tell(what: string, runs: readonly Timed[], goalMs: number | null): void {
  const ms = median(runs.map((it) => it.ms));
  const workMs = median(runs.map((it) => it.workMs));
  const [first] = runs;
  const goal = goalMs === null ? '' : ms <= goalMs ? `goal ${goalMs} ms met` : `GOAL ${goalMs} ms MISSED`;
  const size = `${first?.pages} pages, ${first?.kilobytes} kB`;
  console.log(
    `${what.padEnd(44)} ${ms.toFixed(0).padStart(6)} ms (work ${workMs.toFixed(0)} ms)  ${size}  ${goal}`,
  );
  if (goalMs !== null && ms > goalMs) process.exitCode = 1;
}

const act = (name: string, lines: number, mixes: number) => ({ name, lines, mixes });
const day = paperShow([
  ...Array.from({ length: 11 }, (_, at) => act(`Act ${at + 1}`, 24 + ((at * 7) % 40), 4 + (at % 9))),
  act('Ninety Six', 96, 16),
]);

const opened = performance.now();
const typeCase = new TypeCase();
console.log(`fonts read in ${(performance.now() - opened).toFixed(0)} ms`);

const actJobs = jobsOfAct(day, 'act-5', 'pdf');
tell('an act, all its sheets as PDF, the very first', [await timed(day, 'pdf', actJobs, typeCase)], null);
const warm: Timed[] = [];
for (let round = 0; round < 7; round++) warm.push(await timed(day, 'pdf', actJobs, typeCase));
tell('an act, all its sheets as PDF', warm, goals.actMs);
tell(
  'an act of 96 lines, all its sheets as PDF',
  [await timed(day, 'pdf', jobsOfAct(day, 'act-11', 'pdf'), typeCase)],
  goals.actMs,
);
tell(
  'an act, all its sheets as XLSX',
  [await timed(day, 'xlsx', jobsOfAct(day, 'act-5', 'xlsx'), typeCase)],
  goals.actMs,
);

const heapBefore = process.memoryUsage().rss;
const dayJobs = jobsOfDay(day, 'day', 'pdf');
const days: Timed[] = [];
for (let round = 0; round < 3; round++) days.push(await timed(day, 'pdf', dayJobs, typeCase, 'day'));
tell(`a day of 12 acts, ${dayJobs.length} sheets as one PDF`, days, goals.dayMs);
tell(
  'a day of 12 acts as one workbook',
  [await timed(day, 'xlsx', jobsOfDay(day, 'day', 'xlsx'), typeCase)],
  goals.dayMs,
);
const grown = Math.round((process.memoryUsage().rss - heapBefore) / 1024 / 1024);
console.log(`memory grown by ${grown} MB over four days`);
