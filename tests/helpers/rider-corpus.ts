import { readdirSync, readFileSync } from 'node:fs';
import Papa from 'papaparse';
import type { Grid } from '../../core/rider/grid.ts';
import { type NeutralReading, neutralReading } from '../../core/rider/neutral.ts';
import { readRider } from '../../core/rider/read-rider.ts';

/** What a person reads in a rider of `tests/riders`, as written in its `.expected` file. */
export type Expected = {
  inputs: { channel: number; name: string; kind: string; pair: number | null }[];
  mixes: { who: string; words: string[]; wishes: { channels: number[] | 'all'; amount: string }[] }[];
};

const folder = new URL('../riders/', import.meta.url);

/** Names of all riders, without their endings. */
export const riderNames = (): string[] =>
  readdirSync(folder)
    .filter((name) => name.endsWith('.expected'))
    .map((name) => name.slice(0, -'.expected'.length))
    .sort();

/** The grid of a rider, as the program's own file reading makes it of such a file. */
export function riderGrid(name: string): Grid {
  const file = readdirSync(folder).find((it) => it.startsWith(`${name}.`) && !it.endsWith('.expected'));
  if (!file) throw new Error(`No rider ${name}`);
  const text = readFileSync(new URL(file, folder), 'utf8');
  const isTable = !file.endsWith('.txt');
  const rows = isTable
    ? Papa.parse<string[]>(text, { skipEmptyLines: false, delimitersToGuess: [',', ';', '\t'] }).data
    : text.split(/\r?\n/).map((line) => [line]);
  const form = file.endsWith('.tsv') ? 'tsv' : isTable ? 'csv' : 'text';
  return { name: file, form, sheets: [{ name: 'Rider', rows }] };
}

function expectedOf(name: string): Expected {
  const expected: Expected = { inputs: [], mixes: [] };
  for (const line of readFileSync(new URL(`${name}.expected`, folder), 'utf8').split('\n')) {
    const input = /^(\d+) (.*) = ([a-z -]+?)(?: > (\d+))?$/.exec(line);
    const mix = /^mix (.*?) =(.*)$/.exec(line);
    const wish = /^ {2}(all|[\d ]+?) (-?[\w.]+)$/.exec(line);
    if (mix?.[1] !== undefined)
      expected.mixes.push({
        who: mix[1],
        words: (mix[2] ?? '').trim().split(' ').filter(Boolean),
        wishes: [],
      });
    else if (input?.[1] && input[2] && input[3])
      expected.inputs.push({
        channel: Number(input[1]),
        name: input[2],
        kind: input[3],
        pair: input[4] ? Number(input[4]) : null,
      });
    else if (wish?.[1] && wish[2])
      expected.mixes.at(-1)?.wishes.push({
        channels: wish[1] === 'all' ? 'all' : wish[1].split(' ').map(Number),
        amount: wish[2],
      });
    else if (line.trim() !== '') throw new Error(`${name}.expected cannot be read at: ${line}`);
  }
  return expected;
}

export type Score = { right: number; of: number };
export type Scores = Record<'lines' | 'kinds' | 'pairs' | 'wishes' | 'devices', Score>;

export const noScores = (): Scores => ({
  lines: { right: 0, of: 0 },
  kinds: { right: 0, of: 0 },
  pairs: { right: 0, of: 0 },
  wishes: { right: 0, of: 0 },
  devices: { right: 0, of: 0 },
});

const plain = (text: string) => text.toLowerCase().replace(/[^\p{L}\p{N}]+/gu, '');

/** Scores of one rider. A line or wish that nobody expects counts against the score as a missing one does. */
export function scoreRider(name: string, wrong: string[] = []): Scores {
  return scoreGrid(name, riderGrid(name), wrong);
}

/** The same for the rows of that rider as another form of file gives them. */
export function scoreGrid(name: string, grid: Grid, wrong: string[] = []): Scores {
  return scoreReading(name, neutralReading(readRider(grid)), expectedOf(name), wrong);
}

function scoreReading(name: string, read: NeutralReading, expected: Expected, wrong: string[]): Scores {
  const scores = noScores();
  const count = (score: Score, right: boolean, what: string) => {
    score.of += 1;
    if (right) score.right += 1;
    else wrong.push(`${name}: ${what}`);
  };
  const left = [...read.inputs];
  for (const input of expected.inputs) {
    const at = left.findIndex((it) => it.channel === input.channel && plain(it.name) === plain(input.name));
    const found = at < 0 ? undefined : left.splice(at, 1)[0];
    count(scores.lines, found !== undefined, `line ${input.channel} ${input.name} not found`);
    count(
      scores.kinds,
      found?.kind === input.kind,
      `${input.channel} ${input.name} is ${input.kind}, read as ${found?.kind}`,
    );
    if (input.pair !== null || (found && found.pair !== null))
      count(
        scores.pairs,
        found?.pair === input.pair,
        `${input.channel} ${input.name} pairs with ${input.pair}, read ${found?.pair}`,
      );
  }
  for (const surplus of left) count(scores.lines, false, `line ${surplus.channel} ${surplus.name} is none`);
  scoreMixes(read, expected, scores, count);
  return scores;
}

function scoreMixes(
  read: NeutralReading,
  expected: Expected,
  scores: Scores,
  count: (score: Score, right: boolean, what: string) => void,
): void {
  const left = [...read.mixes];
  for (const mix of expected.mixes) {
    const at = left.findIndex(
      (it) => plain(it.listener ?? '') === plain(mix.who) || plain(it.label) === plain(mix.who),
    );
    const found = at < 0 ? undefined : left.splice(at, 1)[0];
    const words = [
      found?.kind ?? '',
      found?.format ?? '',
      found?.own === true ? 'own' : found?.own === false ? 'house' : '',
    ];
    count(
      scores.devices,
      found !== undefined &&
        words
          .flatMap((word) => word.split(' '))
          .filter(Boolean)
          .join(' ') === mix.words.join(' '),
      `${mix.who} listens on "${mix.words.join(' ')}", read "${found ? words.filter(Boolean).join(' ') : 'nothing'}"`,
    );
    const wanted = amountsOf(mix.wishes);
    const got = amountsOf(found?.wishes.map((wish) => ({ ...wish, amount: String(wish.amount) })) ?? []);
    for (const channel of new Set([...wanted.keys(), ...got.keys()]))
      count(
        scores.wishes,
        wanted.get(channel) === got.get(channel),
        `${mix.who} wants ${channel} ${wanted.get(channel) ?? 'not said'}, read ${got.get(channel) ?? 'nothing'}`,
      );
  }
  for (const surplus of left) count(scores.devices, false, `mix ${surplus.label} is none`);
}

/** Amount by channel: what is said of all holds where nothing else is said. */
function amountsOf(
  wishes: readonly { channels: number[] | 'all'; amount: string }[],
): Map<number | 'all', string> {
  const amounts = new Map<number | 'all', string>();
  for (const wish of wishes) {
    if (wish.channels === 'all') amounts.set('all', wish.amount);
    else for (const channel of wish.channels) amounts.set(channel, wish.amount);
  }
  return amounts;
}

export function addScores(sum: Scores, more: Scores): void {
  for (const key of Object.keys(sum) as (keyof Scores)[]) {
    sum[key].right += more[key].right;
    sum[key].of += more[key].of;
  }
}
