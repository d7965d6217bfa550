import { statSync } from 'node:fs';
import { resolve } from 'node:path';
import type { CopyInList, CopyPreview } from '../../core/contract/copies.ts';
import type { Outcome } from '../../core/contract/problem.ts';
import { ageInWords } from '../../core/show/age-in-words.ts';
import { sentenceOfDifference } from '../../core/show/difference.ts';
import { CopyFolders } from '../copies/copy-folders.ts';
import { copyList } from '../copies/copy-keeper.ts';
import { dataFolder, makeDataFolder } from '../starting/data-folder.ts';
import { argumentsOf, exitCodes, fail, sayUsage } from './command.ts';
import { type OwnShow, withOwnShow } from './own-show.ts';
import { textTable } from './text-table.ts';

const usage = `Usage: npm run copies -- list             all copies of the show, the newest first
       npm run copies -- make             makes a copy now
       npm run copies -- preview COPY     what a copy holds, and what restoring it would change
       npm run copies -- restore COPY     makes the show what the copy holds, after a copy of the present show
       npm run copies -- second FOLDER    copies also go to this folder from now on; "none" for no second folder
COPY is a name from the list, or "newest". FOLDBOOK_COPIES=FOLDER names a second folder for this once: so another
machine takes over, with "restore newest". Close the window first; "list" and "second" also work while it is open.
Exit code: 0 done, 1 it could not be done, 2 wrong use.`;

/** As many differences as a screen takes; the others are counted. */
const mostTold = 20;

const folders = new CopyFolders(dataFolder());
process.exitCode = await run();

async function run(): Promise<number> {
  const given = argumentsOf({});
  if (given?.values.help) return sayUsage(usage, true);
  const [what, named, ...more] = given?.positionals ?? [];
  if (what === 'list' && named === undefined) return list();
  if (what === 'make' && named === undefined)
    return withShow(
      (show) => show.call('copies.make', {}),
      () => list(),
    );
  if (what === 'second' && named !== undefined && more.length === 0) return second(named);
  if ((what === 'preview' || what === 'restore') && named !== undefined && more.length === 0) {
    const copy = copyOf(named);
    if (!copy) return fail(`There is no copy “${named}”. "npm run copies -- list" says which there are.`);
    return what === 'preview' ? preview(copy) : restore(copy);
  }
  return sayUsage(usage);
}

function list(): number {
  const { copies, secondFolder } = copyList(folders);
  const table = textTable<CopyInList>(
    [
      { title: 'Age', right: true, cell: ageOf },
      { title: 'Made', cell: ({ reason }) => reason },
      { title: 'Where', cell: ({ place }) => place },
      { title: 'Machine', cell: ({ machine }) => machine ?? '' },
      { title: 'kB', right: true, cell: ({ byteCount }) => Math.round(byteCount / 1024) },
      { title: 'Copy', cell: ({ name }) => name },
    ],
    copies,
  );
  return say(`${table || 'There is no copy yet.'}\nSecond folder: ${secondFolder ?? 'none'}`);
}

function copyOf(named: string): CopyInList | undefined {
  const { copies } = copyList(folders);
  return named === 'newest' ? copies[0] : copies.find(({ name }) => name === named);
}

function preview({ place, name }: CopyInList): Promise<number> {
  return withShow(
    (show) => show.call('copies.preview', { place, name }),
    (value) => say(wordsOf(value)),
  );
}

function restore(copy: CopyInList): Promise<number> {
  const { place, name } = copy;
  return withShow(
    (show) => show.call('copies.restore', { place, name }),
    () => say(`The show is what “${name}” holds, which is ${ageOf(copy)} old. Undo takes it back.`),
  );
}

function second(named: string): number {
  const folder = named === 'none' ? null : resolve(named);
  if (folder !== null && !statSync(folder, { throwIfNoEntry: false })?.isDirectory())
    return fail(`“${folder}” is no folder. Make it, or put the stick in.`);
  try {
    makeDataFolder(dataFolder());
    folders.choose(folder);
  } catch {
    return fail('The choice could not be kept: look whether the folder of the show may be written to.');
  }
  return say(folder === null ? 'There is no second folder any more.' : `Copies also go to “${folder}”.`);
}

async function withShow<T>(
  work: (show: OwnShow) => Promise<Outcome<T>>,
  done: (value: T) => number,
): Promise<number> {
  const outcome = await withOwnShow(work);
  return outcome.ok ? done(outcome.value) : fail(outcome.problem);
}

function wordsOf({ copy, days, acts, sourceCount, mixCount, differences }: CopyPreview): string {
  const left = differences.count - Math.min(differences.count, mostTold);
  return [
    `“${copy.name}”, ${ageOf(copy)} old, holds ${sourceCount} sources and ${mixCount} mixes.`,
    `Days: ${days.join(', ') || 'none'}`,
    `Acts: ${acts.join(', ') || 'none'}`,
    differences.count === 0
      ? 'The show is the same now.'
      : `Restoring it would change ${differences.count} rows:`,
    ...differences.rows.slice(0, mostTold).map((row) => `  ${sentenceOfDifference(row)}`),
    ...(left > 0 ? [`  and ${left} more`] : []),
  ].join('\n');
}

function ageOf({ madeAt }: CopyInList): string {
  return ageInWords(Date.now() - Date.parse(madeAt));
}

function say(text: string): number {
  console.log(text);
  return exitCodes.done;
}
