import { randomUUID } from 'node:crypto';
import { readFile } from 'node:fs/promises';
import { changeoversOfDay } from '../../core/changeover/changeover.ts';
import { changeFromDayPlan } from '../../core/plan/day/change-from-day-plan.ts';
import { checkDay } from '../../core/plan/day/check-day.ts';
import { findStockCollisions } from '../../core/plan/day/stock.ts';
import { actsWithPlans } from '../../core/plan/plan-act.ts';
import type { Day } from '../../core/show/act.ts';
import { applyChange } from '../../core/show/apply-change.ts';
import { type Show, ShowDocument, showFromRows } from '../../core/show/show.ts';
import { DayPlanner } from '../solver/plan-day-job.ts';
import { argumentsOf, exitCodes } from './command.ts';
import { dayReport } from './day-report.ts';

const usage = `Usage: npm run --silent plan-day -- SHOW.json [--day NAME] [--seconds N] [--keep UNITS]

Plans all acts of a day at once, with as few re-plugs between them as can be proven, and their changeovers.
SHOW.json is an exported show. The plan is printed as JSON; the show is not changed.

  --day NAME     the day to plan, by its name; needed where the show has several
  --seconds N    stop after N seconds with the best plan so far (default 60)
  --keep UNITS   keep the plan that the show holds unless a new one costs this many units less
`;

process.exitCode = await run();

async function run(): Promise<number> {
  const args = argumentsOf({
    day: { type: 'string' },
    seconds: { type: 'string', default: '60' },
    keep: { type: 'string' },
  });
  const [path, ...more] = args?.positionals ?? [];
  if (args?.values.help) return say(process.stdout, usage, exitCodes.done);
  const seconds = Number(args?.values.seconds);
  const keep = args?.values.keep === undefined ? undefined : Number(args.values.keep);
  if (!args || path === undefined || more.length > 0 || !(seconds > 0) || Number.isNaN(keep ?? 0))
    return say(process.stderr, usage, exitCodes.wrongUse);
  const show = await readShow(path);
  if (typeof show === 'string') return say(process.stderr, `${show}\n`, exitCodes.unreadable);
  const day = chooseDay(show, args.values.day);
  if (typeof day === 'string') return say(process.stderr, `${day}\n`, exitCodes.wrongUse);
  return plan(show, day, seconds, keep);
}

async function plan(show: Show, day: Day, seconds: number, keep: number | undefined): Promise<number> {
  const doubts = checkDay(show, day.id);
  const stopping = doubts.filter((doubt) => doubt.stops);
  if (stopping.length > 0)
    return say(
      process.stderr,
      stopping.map((it) => `${it.what} ${it.todo}\n`).join(''),
      exitCodes.unreadable,
    );
  const planner = new DayPlanner();
  const started = performance.now();
  const job = planner.start(show, day.id, {
    timeLimitSeconds: seconds,
    ...(keep === undefined ? {} : { keepUnlessGain: keep }),
  });
  process.once('SIGINT', () => job.stop());
  const found = await job.done;
  await planner.close();
  const milliseconds = Math.round(performance.now() - started);
  const planned = applyChange(show, changeFromDayPlan(show, found, randomUUID));
  const acts = actsWithPlans(planned, day.id);
  const report = dayReport(planned, day, found, changeoversOfDay(acts), {
    doubts,
    stock: findStockCollisions(show, day.id),
    milliseconds,
    acts,
  });
  const isPlanned = found.layers.sockets.proof !== 'no plan';
  return say(
    process.stdout,
    `${JSON.stringify(report, null, 2)}\n`,
    isPlanned ? exitCodes.done : exitCodes.unreadable,
  );
}

/** The show in a file, or what is wrong with it in a sentence. */
async function readShow(path: string): Promise<Show | string> {
  let text: string;
  try {
    text = await readFile(path, 'utf8');
  } catch (error) {
    const code = error instanceof Error && 'code' in error ? String(error.code) : '';
    return code === 'ENOENT'
      ? `“${path}” is not there. Check its name.`
      : `“${path}” cannot be opened (${code}).`;
  }
  let json: unknown;
  try {
    json = JSON.parse(text);
  } catch {
    return `“${path}” is not JSON. Export the show again and use that file.`;
  }
  const document = ShowDocument.safeParse(json);
  if (document.success) return showFromRows(document.data);
  const [issue] = document.error.issues;
  const where = issue?.path.join('.') ?? '';
  return `“${path}” is not a show of this program: ${where ? `at ${where}: ` : ''}${issue?.message ?? ''}. Export the show again and use that file.`;
}

/** The day that is meant, or what to say instead. */
function chooseDay(show: Show, name: string | undefined): Day | string {
  const days = [...show.days.values()];
  const names = days.map((day) => day.name).join(', ');
  if (name !== undefined)
    return (
      days.find((day) => day.name === name) ?? `The show has no day “${name}”. It has: ${names || 'no day'}.`
    );
  const [only] = days;
  if (only && days.length === 1) return only;
  return days.length === 0 ? 'The show has no day.' : `Say which day with --day: ${names}.`;
}

function say(stream: NodeJS.WriteStream, text: string, code: number): number {
  stream.write(text);
  return code;
}
