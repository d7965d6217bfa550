import { existsSync, readdirSync, readFileSync, statSync } from 'node:fs';
import { hostname, release } from 'node:os';
import { join, resolve } from 'node:path';
import { createInterface } from 'node:readline/promises';
import { strToU8, zipSync } from 'fflate';
import { CopyFolders } from '../copies/copy-folders.ts';
import { copiesIn, nameOfCopy } from '../copies/copy-names.ts';
import { dataFolder } from '../starting/data-folder.ts';
import { argumentsOf, exitCodes, fail, sayUsage } from './command.ts';
import { textTable } from './text-table.ts';
import { writeWhole } from './write-whole.ts';

const usage = `Usage: npm run trouble-report -- [--without-show] [--yes] [FILE]
Packs the logs, what this machine runs, and the newest copy of the show into FILE (foldbook-report.zip), to go with
a report. It first says what is in it and asks. The logs hold no text of yours; the copy of the show holds all of it.
  --without-show  leaves the copy of the show out
  --yes           does not ask
Exit code: 0 done or you said no, 1 it could not be written, 2 wrong use.`;

type Part = { name: string; bytes: Uint8Array; what: string };

process.exitCode = await run();

async function run(): Promise<number> {
  const given = argumentsOf({
    'without-show': { type: 'boolean', default: false },
    yes: { type: 'boolean', default: false },
  });
  if (!given || given.values.help || given.positionals.length > 1) return sayUsage(usage, given?.values.help);
  const file = resolve(given.positionals[0] ?? 'foldbook-report.zip');
  const parts = [about(), ...logs(), ...(given.values['without-show'] ? [] : newestCopy())];
  console.log(tableOf(parts));
  if (!given.values.yes && !(await isWanted(file))) {
    console.log('Nothing was written.');
    return exitCodes.done;
  }
  const zip = zipSync(Object.fromEntries(parts.map(({ name, bytes }) => [name, bytes])));
  const written = await writeWhole(file, zip);
  if (!written.ok) return fail(written.problem);
  console.log(`Written: ${file}. It was sent nowhere.`);
  return exitCodes.done;
}

/** What runs here; the name of the machine is not told, it may be somebody's. */
function about(): Part {
  const { version } = JSON.parse(readFileSync(join(import.meta.dirname, '..', '..', 'package.json'), 'utf8'));
  const lines = [`Foldbook ${version}`, `Node ${process.versions.node}`, `${process.platform} ${release()}`];
  return {
    name: 'about.txt',
    bytes: strToU8(`${lines.join('\n')}\n`),
    what: 'versions of the program and the system',
  };
}

function logs(): Part[] {
  const folder = join(dataFolder(), 'log');
  if (!existsSync(folder)) return [];
  return readdirSync(folder)
    .filter((name) => /^foldbook\.log(\.\d)?$/.test(name) && statSync(join(folder, name)).isFile())
    .map((name) => ({
      name: `log/${name}`,
      bytes: strToU8(readFileSync(join(folder, name), 'utf8').replaceAll(hostname(), 'this-machine')),
      what: 'places in the program where something broke, no text of yours',
    }));
}

function newestCopy(): Part[] {
  const [copy] = copiesIn(new CopyFolders(dataFolder()).first);
  if (!copy) return [];
  const what = 'ALL of the show: acts, names, notes, riders, and the archive of past acts, as of that copy';
  // The name of the machine stands in that of the copy.
  const name = nameOfCopy(new Date(copy.madeAtMs), copy.reason, 'this-machine');
  return [{ name: `show/${name}`, bytes: readFileSync(copy.path), what }];
}

function tableOf(parts: readonly Part[]): string {
  return textTable<Part>(
    [
      { title: 'In the report', cell: ({ name }) => name },
      { title: 'bytes', right: true, cell: ({ bytes }) => bytes.length },
      { title: 'what it is', cell: ({ what }) => what },
    ],
    parts,
  );
}

/** Where nobody can be asked, nobody has said yes. */
async function isWanted(file: string): Promise<boolean> {
  if (!process.stdin.isTTY) {
    console.log('There is nobody to ask here: give --yes to write it.');
    return false;
  }
  const asking = createInterface({ input: process.stdin, output: process.stdout });
  const answer = await asking.question(`Write this to ${file}? (y/n) `);
  asking.close();
  return /^y(es)?$/i.test(answer.trim());
}
