import { existsSync, readdirSync, readFileSync, rmSync, truncateSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import Sqlite from 'better-sqlite3';
import { expect, onTestFinished, test } from 'vitest';
import { put } from '../../../core/show/change.ts';
import { documentFromShow } from '../../../core/show/show.ts';
import { CopyKeeper } from '../../../electron/copies/copy-keeper.ts';
import { nameOfCopy } from '../../../electron/copies/copy-names.ts';
import { openSafely } from '../../../electron/copies/open-safely.ts';
import { smallFestival } from '../../fixtures/small-festival.ts';
import { testFolders } from '../../helpers/copy-folders.ts';
import { opened, showPath } from '../../helpers/open-shows.ts';

/** Enough for every run; FOLDBOOK_DAMAGES=500 is for the patient. */
const damages = Number(process.env.FOLDBOOK_DAMAGES ?? 24);

const whole = documentFromShow(smallFestival());

/** A closed show file, with a copy where one is wanted. */
async function closedShow(withCopy: boolean): Promise<string> {
  const path = showPath();
  const show = opened(path, whole);
  if (withCopy) await new CopyKeeper(show, testFolders(dirname(path))).make('by itself');
  show.close();
  return path;
}

function openAgain(path: string) {
  const outcome = openSafely(path, {
    folders: testFolders(dirname(path)),
    firstRows: () => ({ rigs: [] }),
  });
  if (outcome.ok) onTestFinished(() => outcome.value.show.close());
  return outcome;
}

/** The same number for the same seed: a damage that is found can be made again. */
function seeded(seed: number): () => number {
  let state = seed * 2654435761 + 1;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 32;
  };
}

const kinds: readonly [name: string, damage: (bytes: Buffer, random: () => number) => Buffer][] = [
  ['cut off', (bytes, random) => bytes.subarray(0, Math.floor(random() * bytes.length))],
  [
    'with flipped bits',
    (bytes, random) => {
      for (let flip = 0; flip < 20; flip++) {
        const at = Math.floor(random() * bytes.length);
        bytes[at] = (bytes[at] ?? 0) ^ (1 << Math.floor(random() * 8));
      }
      return bytes;
    },
  ],
  ['with a lost page', (bytes, random) => bytes.fill(0, ...pageAt(bytes, random))],
  [
    'with noise in a page',
    (bytes, random) => {
      const [from, to] = pageAt(bytes, random);
      for (let at = from; at < to; at++) bytes[at] = Math.floor(random() * 256);
      return bytes;
    },
  ],
];

function pageAt(bytes: Buffer, random: () => number): [number, number] {
  const from = 4096 * Math.floor(random() * Math.floor(bytes.length / 4096));
  return [from, from + 4096];
}

test(
  `${damages} damaged shows of which there is a copy all open again, from the copy with every letter; the damaged file is kept`,
  async () => {
    const came = {
      repaired: 0,
      'from a copy': 0,
      'not noticed, all rows right': 0,
      'not noticed, letters changed': 0,
    };
    for (let seed = 0; seed < damages; seed++) {
      const path = await closedShow(true);
      const [, damage] = kinds[seed % kinds.length] ?? [];
      const bytes = damage?.(readFileSync(path), seeded(seed)) ?? Buffer.alloc(0);
      writeFileSync(path, bytes);
      const outcome = openAgain(path);
      if (!outcome.ok) throw new Error(`seed ${seed}: ${outcome.problem.what}`);
      const { show, notice } = outcome.value;
      const isRight = JSON.stringify(documentFromShow(show.read())) === JSON.stringify(whole);
      if (notice) {
        expect(notice.code).toBe('was repaired');
        const kept = readdirSync(join(dirname(path), 'damaged')).find((it) => it.endsWith('.foldbook'));
        expect(readFileSync(join(dirname(path), 'damaged', kept ?? ''))).toHaveLength(bytes.length);
        const isCopy = notice.what.includes('from the copy');
        if (isCopy) expect(isRight, `seed ${seed}: the copy holds every row`).toBe(true);
        came[isCopy ? 'from a copy' : 'repaired'] += 1;
      } else if (bytes.length > 0)
        came[isRight ? 'not noticed, all rows right' : 'not noticed, letters changed'] += 1;
    }
    console.log(`Damaged shows: ${JSON.stringify(came)} of ${damages}`);
    expect(came.repaired + came['from a copy']).toBeGreaterThan(damages / 3);
    expect(came['not noticed, letters changed'], 'every row has a sum').toBe(0);
  },
  2_000 * damages + 20_000,
);

test('damage to an index alone loses nothing: edits since the last copy are there', async () => {
  const path = await closedShow(true);
  const later = opened(path);
  const [act] = whole.acts;
  if (!act) throw new Error('the festival has acts');
  later.change({ label: 'Rename', put: [put('acts', { ...act, name: 'Late Herons' })], remove: [] });
  later.close();
  const database = new Sqlite(path);
  const page = database
    .prepare(`SELECT "rootpage" FROM sqlite_schema WHERE "name" = 'sources by actId'`)
    .pluck()
    .get();
  database.close();
  const bytes = readFileSync(path);
  bytes.fill(0xa5, 4096 * (Number(page) - 1), 4096 * Number(page));
  writeFileSync(path, bytes);
  const outcome = openAgain(path);
  if (!outcome.ok) throw new Error(outcome.problem.what);
  expect(outcome.value.notice?.what).toMatch(/All of its \d+ rows could be read/);
  expect(outcome.value.show.read().acts.get(act.id)?.name).toBe('Late Herons');
  expect(outcome.value.show.read().sources.size).toBe(whole.sources.length);
});

test('one changed letter is noticed: the last write comes from its copy, and without one the row is named', async () => {
  for (const withCopy of [true, false]) {
    const path = await closedShow(withCopy);
    const bytes = readFileSync(path);
    const at = bytes.indexOf('Glass Antlers');
    bytes.write('K', at);
    writeFileSync(path, bytes);
    const outcome = openAgain(path);
    if (!outcome.ok) throw new Error(outcome.problem.what);
    const { show, notice } = outcome.value;
    expect(notice?.what).toMatch(/a row of its acts is not as it was written \(“Klass Antlers”\)/);
    const names = [...show.read().acts.values()].map(({ name }) => name);
    expect(names.includes('Glass Antlers')).toBe(withCopy);
  }
});

test('a damaged show without a copy gives what can still be read, and says that rows are lost', async () => {
  const path = await closedShow(false);
  const bytes = readFileSync(path);
  for (let at = 8 * 4096; at < 12 * 4096; at++) bytes[at] = 0xa5;
  writeFileSync(path, bytes);
  const outcome = openAgain(path);
  if (!outcome.ok) throw new Error(outcome.problem.what);
  expect(outcome.value.notice?.what).toMatch(/rows could be read/);
  expect(outcome.value.show.read().rigs.size).toBeLessThanOrEqual(whole.rigs.length);
});

test('a show that was removed comes back from its newest copy, and says how old it is', async () => {
  const path = await closedShow(true);
  rmSync(path);
  const outcome = openAgain(path);
  if (!outcome.ok) throw new Error(outcome.problem.what);
  expect(outcome.value.notice?.what).toMatch(/restored from the copy .*0 minutes old/);
  expect(documentFromShow(outcome.value.show.read())).toEqual(whole);
});

test('a show of which a power cut left no bytes comes back from its copy, and the log of the old one is no part of it', async () => {
  const path = await closedShow(true);
  const other = opened(showPath(), { rigs: whole.rigs });
  other.change({ label: 'Remove', put: [], remove: [{ table: 'rigs', id: whole.rigs[0]?.id ?? '' }] });
  writeFileSync(`${path}-wal`, readFileSync(`${other.path}-wal`));
  writeFileSync(path, '');
  const outcome = openAgain(path);
  if (!outcome.ok) throw new Error(outcome.problem.what);
  expect(outcome.value.notice?.what).toMatch(/restored from the copy/);
  expect(documentFromShow(outcome.value.show.read())).toEqual(whole);
  expect(readdirSync(join(dirname(path), 'damaged'))).toEqual([expect.stringMatching(/-wal$/)]);
});

test('a damaged copy is passed over for an older one that is good', async () => {
  const path = await closedShow(true);
  const copies = join(dirname(path), 'copies');
  const [good = ''] = readdirSync(copies);
  const newer = join(copies, good.replace(/\d{4}/, '2999'));
  writeFileSync(newer, readFileSync(join(copies, good)));
  truncateSync(newer, 20_000);
  rmSync(path);
  const outcome = openAgain(path);
  expect(outcome).toMatchObject({ ok: true });
  if (outcome.ok) expect(outcome.value.notice?.what).toContain(good);
});

test('a newer copy of another machine never goes before an own one, and is taken where there is no other', async () => {
  const path = await closedShow(true);
  const copies = join(dirname(path), 'copies');
  const [own = ''] = readdirSync(copies);
  const other = opened(showPath(), { rigs: whole.rigs });
  const foreign = nameOfCopy(new Date('2999-05-01T09:30:00Z'), 'by itself', 'tower');
  await other.copyTo(join(copies, foreign));
  rmSync(path);
  const first = openAgain(path);
  if (!first.ok) throw new Error(first.problem.what);
  expect(first.value.notice?.what).toContain(own);
  expect(documentFromShow(first.value.show.read())).toEqual(whole);
  first.value.show.close();
  for (const gone of [path, join(copies, own)]) rmSync(gone);
  const second = openAgain(path);
  if (!second.ok) throw new Error(second.problem.what);
  expect(second.value.notice?.what).toContain(`“${foreign}” of the machine “tower”`);
});

test('a file of another program stays where it is, as long as there is no copy of a show beside it', () => {
  const path = showPath();
  writeFileSync(path, 'Channel;Source');
  expect(openAgain(path)).toMatchObject({ ok: false, problem: { code: 'not a show' } });
  expect(readFileSync(path, 'utf8')).toBe('Channel;Source');
  expect(existsSync(join(dirname(path), 'damaged'))).toBe(false);
});
