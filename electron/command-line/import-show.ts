import { readFile } from 'node:fs/promises';
import { type Outcome, refuse } from '../../core/contract/problem.ts';
import { argumentsOf, exitCodes, fail, sayUsage } from './command.ts';
import { type OwnShow, withOwnShow } from './own-show.ts';

const usage = `Usage: npm run import-show -- [--day NAME] [--replace] FILE
Brings an exported show or act into the show of this machine, under new ids, beside what is there.
  --day NAME  the day that an act comes to; without it the first one
  --replace   the show becomes what the file holds, after a copy of the present show; not for a single act
Close the window first. Exit code: 0 done, 1 it could not be done, 2 wrong use.`;

process.exitCode = await run();

async function run(): Promise<number> {
  const given = argumentsOf({ day: { type: 'string' }, replace: { type: 'boolean', default: false } });
  const [file, ...more] = given?.positionals ?? [];
  if (!given || given.values.help || file === undefined || more.length > 0)
    return sayUsage(usage, given?.values.help);
  const outcome = await importFile(file, given.values);
  if (!outcome.ok) return fail(outcome.problem);
  console.log(outcome.value);
  return exitCodes.done;
}

async function importFile(
  file: string,
  { day, replace }: { day?: string; replace: boolean },
): Promise<Outcome<string>> {
  const text = await readFile(file, 'utf8').catch(() => null);
  if (text === null)
    return refuse('unreadable file', `“${file}” cannot be read.`, 'Check the name and that you may read it.');
  return withOwnShow(async (own) => {
    const dayId = replace ? null : await dayOf(own, day);
    const way = replace ? ({ how: 'replace' } as const) : ({ how: 'beside', dayId } as const);
    const done = await own.call('exchange.import', { text, way });
    if (!done.ok) return done;
    const { changed, leftOut } = done.value;
    const left =
      leftOut === 0 ? '' : ` ${leftOut} rows were left out: they belong to what this show has not.`;
    return {
      ok: true,
      value: `${changed.change.label}: ${changed.change.put.length} rows.${left} Undo takes it back.`,
    };
  });
}

async function dayOf(own: OwnShow, name: string | undefined): Promise<string | null> {
  const answer = await own.call('show.open', {});
  if (!answer.ok) return null;
  const { days } = answer.value.show;
  return (name === undefined ? days[0] : days.find((it) => it.name === name))?.id ?? null;
}
