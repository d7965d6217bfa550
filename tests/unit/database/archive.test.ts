import { closeSync, openSync, readFileSync, writeSync } from 'node:fs';
import { dirname, join } from 'node:path';
import Sqlite from 'better-sqlite3';
import { expect, onTestFinished, test } from 'vitest';
import { type Change, put } from '../../../core/show/change.ts';
import { changeOfImport, documentOfAct } from '../../../core/show/exchange.ts';
import { documentFromShow } from '../../../core/show/show.ts';
import { changeoverBegan } from '../../../core/show/tick.ts';
import { openSafely } from '../../../electron/copies/open-safely.ts';
import type { ShowDatabase } from '../../../electron/database/show-database.ts';
import { archiveOfNames } from '../../helpers/archive-of-names.ts';
import { testFolders } from '../../helpers/copy-folders.ts';
import { opened, showPath } from '../../helpers/open-shows.ts';
import { smallShow } from '../../helpers/small-show.ts';

const at = '2026-06-05T21:00:00.000Z';

const change = (...puts: Change['put']): Change => ({ label: 'Do', put: puts, remove: [] });
const clockStarts = change(put('ticks', { id: 'clock', actId: 'act', taskKey: changeoverBegan, doneAt: at }));
const heard = (id: string, found: 'ok' | 'silent') =>
  change(put('lineResults', { id, actId: 'act', sourceId: 'vocal', found, cameSourceId: null, foundAt: at }));
const ends = change(put('actRuns', { id: 'run', actId: 'act', beganAt: at, endedAt: at }));

function smallFestival(path = showPath()): ShowDatabase {
  return opened(path, documentFromShow(smallShow()));
}

function archived(show: ShowDatabase, actId = 'act') {
  const read = show.archivedAct(actId);
  if (!read.ok) throw new Error(read.problem.what);
  return read.value;
}

const names = (show: ShowDatabase, text: string) =>
  show.findInArchive(text, 10).map(({ kind, name }) => `${kind} ${name}`);

function renameAct(show: ShowDatabase, name: string): void {
  const act = show.read().acts.get('act');
  if (act) show.change(change(put('acts', { ...act, name })));
}

test('an act that has ended is in the archive, as it was planned when its clock started and as it ran', () => {
  const show = smallFestival();
  show.change(clockStarts);
  renameAct(show, 'Paper Herons trio');
  show.change(heard('first', 'silent'));
  expect(archived(show)).toBeNull();
  show.change(ends);
  const found = archived(show);
  expect(found?.planned.acts[0]?.name).toBe('Paper Herons');
  expect(found?.planned.lineResults).toEqual([]);
  expect(found?.planned.ticks).toEqual([]);
  expect(found?.ran.acts[0]?.name).toBe('Paper Herons trio');
  expect(found?.ran.lineResults.map((it) => it.found)).toEqual(['silent']);
  expect(found?.ran.rigs.map((it) => it.name)).toEqual(['House']);
  expect(found?.ran.sockets).toHaveLength(1);
});

test('without a clock the plan is what it was before the first thing that was kept of the run', () => {
  const show = smallFestival();
  show.change(heard('first', 'ok'));
  renameAct(show, 'Renamed');
  show.change(heard('second', 'ok'));
  show.change(ends);
  expect(archived(show)?.planned.acts[0]?.name).toBe('Paper Herons');
});

test('the archive is written with the change that ends the act: neither is on the disk without the other', () => {
  const path = showPath();
  const show = smallFestival(path);
  const broken = put('listeners', { id: 'x', mixId: 'nowhere', performerId: 'noor' });
  expect(show.change(change(...ends.put, broken)).ok).toBe(false);
  expect(archived(show)).toBeNull();
  show.change(ends);
  show.close();
  const again = opened(path);
  expect(archived(again)?.act.actName).toBe('Paper Herons');
  expect(again.archivedCount()).toBe(1);
});

test('undo and removing the act take nothing out of the archive', () => {
  const show = smallFestival();
  show.change(ends);
  show.undo();
  show.change({ label: 'Remove', put: [], remove: [{ table: 'acts', id: 'act' }] });
  expect(archived(show)?.act.actName).toBe('Paper Herons');
});

test('an act that ends again is the same act of the archive, under its new names only', () => {
  const show = smallFestival();
  show.change(ends);
  show.undo();
  renameAct(show, 'Tin Lanterns');
  show.change(ends);
  expect(show.archivedCount()).toBe(1);
  expect(names(show, 'paper')).toEqual([]);
  expect(names(show, 'tin')).toEqual(['act Tin Lanterns']);
});

test('acts that come in from a file did not happen here', () => {
  const show = smallFestival();
  show.change(ends);
  const document = documentOfAct(show.read(), 'act');
  if (!document) throw new Error('the act is there');
  let count = 0;
  const brought = changeOfImport(show.read(), document, { how: 'beside', dayId: 'day' }, () => `n${count++}`);
  if (brought) show.change(brought.change);
  expect(show.read().actRuns.size).toBe(2);
  expect(show.archivedCount()).toBe(1);
});

test('by hand an act is archived before it ends; one that is not there is not', () => {
  const show = smallFestival();
  expect(show.keepInArchive('act')).toEqual({ ok: true, value: true });
  expect(show.keepInArchive('nowhere')).toEqual({ ok: true, value: false });
  expect(show.archivedCount()).toBe(1);
});

test.each<[text: string, found: string[]]>([
  ['her', ['act Paper Herons']],
  ['HER pap', ['act Paper Herons']],
  ['noor', ['performer Noor', 'source Noor']],
  ['ke', ['source Keys R', 'source Keys L']],
  ['herons key', ['source Keys R', 'source Keys L']],
  ['eys', ['source Keys R', 'source Keys L']],
  ['ERON', ['act Paper Herons']],
  ['eron aper', ['act Paper Herons']],
  ['eron eys', ['source Keys R', 'source Keys L']],
  ['zzz', []],
  ['"', ['act Paper Herons']],
  ['"noor', ['performer Noor', 'source Noor']],
  ['noor OR keys', []],
  ['name:noor', []],
  ['', ['act Paper Herons']],
])('%j finds %j', (text, found) => {
  const show = smallFestival();
  show.change(ends);
  expect(names(show, text)).toEqual(found);
});

test('letters with marks are found without them, and with them, also inside a word', () => {
  const show = smallFestival();
  renameAct(show, 'Ælva Brünn');
  show.change(ends);
  for (const text of ['brunn', 'BRÜ', 'run', 'rünn']) expect(names(show, text)).toEqual(['act Ælva Brünn']);
});

test('names that begin with the letters come before those that have them inside', () => {
  const show = smallFestival();
  show.change(ends);
  show.adoptArchived(archiveOfNames(50));
  renameAct(show, 'Cobalt Mead');
  show.keepInArchive('act');
  expect(names(show, 'ber').slice(0, 1)).toEqual(['act Amber Lanterns 0']);
  const found = show.findInArchive('tern', 50).map(({ name }) => name);
  expect(found).toContain('Amber Lanterns 0');
  expect(names(show, 'mead')[0]).toBe('act Cobalt Mead');
});

test('a taken out act is neither found nor read nor counted until it is put back', () => {
  const path = showPath();
  const show = smallFestival(path);
  show.change(ends);
  expect(show.removeFromArchive('nowhere')).toEqual({ ok: true, value: false });
  expect(show.removeFromArchive('act')).toEqual({ ok: true, value: true });
  expect([names(show, 'her'), names(show, 'eron'), names(show, '')]).toEqual([[], [], []]);
  expect(archived(show)).toBeNull();
  expect(show.archivedCount()).toBe(0);
  show.close();

  const again = opened(path);
  expect(again.removedFromArchive().map(({ actName }) => actName)).toEqual(['Paper Herons']);
  expect(again.putBackIntoArchive('act')).toEqual({ ok: true, value: true });
  expect(again.putBackIntoArchive('act')).toEqual({ ok: true, value: false });
  expect(names(again, 'eron')).toEqual(['act Paper Herons']);
  expect(archived(again)?.act.actName).toBe('Paper Herons');
  expect(again.removedFromArchive()).toEqual([]);
});

test('an act that was taken out and ends again is in the archive again', () => {
  const show = smallFestival();
  show.change(ends);
  show.removeFromArchive('act');
  show.keepInArchive('act');
  expect(names(show, 'her')).toEqual(['act Paper Herons']);
  expect(show.removedFromArchive()).toEqual([]);
});

test('a taken out act stays so in another file, and one that was not comes in', () => {
  const one = smallFestival();
  one.change(ends);
  const two = smallFestival();
  two.adoptArchived(one.allArchived());
  two.removeFromArchive('act');
  two.adoptArchived(one.allArchived());
  expect(two.archivedCount()).toBe(0);
  const three = smallFestival();
  three.adoptArchived(two.allArchived());
  expect([three.archivedCount(), three.removedFromArchive().length]).toEqual([0, 1]);
});

test('what was taken out more than a month ago goes for good when the next act is taken out', () => {
  const show = smallFestival();
  const [old] = archiveOfNames(50);
  if (!old) throw new Error('there is one');
  show.adoptArchived([{ ...old, removedAt: '2020-01-01T00:00:00.000Z' }]);
  show.change(ends);
  expect(show.removedFromArchive()).toHaveLength(1);
  show.removeFromArchive('act');
  expect(show.removedFromArchive().map(({ actId }) => actId)).toEqual(['act']);
  expect(show.allArchived()).toHaveLength(1);
});

test('an archive of the version before is found by the inside of its names after it was brought up', () => {
  const path = showPath();
  const database = new Sqlite(path);
  const frozen = join(import.meta.dirname, '..', '..', 'fixtures', 'shows', 'version-10.sql');
  database.exec(readFileSync(frozen, 'utf8'));
  const [past] = archiveOfNames(50);
  const columns = [
    'actId',
    'actName',
    'dayName',
    'date',
    'rigName',
    'device',
    'plannedAt',
    'planned',
    'ranAt',
    'ran',
  ];
  database
    .prepare(
      `INSERT INTO "archivedActs" (${columns.join(', ')}) VALUES (${columns.map((it) => `@${it}`).join(', ')})`,
    )
    .run(past);
  database.exec(`
    INSERT INTO "archivedNames" ("act", "kind", "name", "place") VALUES (1, 'act', 'Amber Lanterns 0', 'Saturday');
    INSERT INTO "archivedNamesIndex" ("archivedNamesIndex") VALUES ('rebuild');`);
  database.close();
  const show = opened(path);
  expect([names(show, 'lan'), names(show, 'tern')]).toEqual([
    ['act Amber Lanterns 0'],
    ['act Amber Lanterns 0'],
  ]);
});

test('where more is found than fits, acts, performers and sources have their share, the newest first', () => {
  const show = smallFestival();
  expect(show.adoptArchived(archiveOfNames(2000)).ok).toBe(true);
  const found = show.findInArchive('h', 12);
  expect(found.map((it) => it.kind)).toEqual([
    ...['act', 'act', 'act', 'act'],
    ...['performer', 'performer', 'performer', 'performer'],
    ...['source', 'source', 'source', 'source'],
  ]);
  expect(found[0]?.act.actName).toBe('Harrow Orchard 37');
  const [latest] = show.findInArchive('', 1);
  expect(latest?.act.actName).toBe('Juniper Orchard 39');
});

test('acts of another file come in; of one that both have, the one that ran later stays', () => {
  const one = smallFestival();
  one.change(ends);
  const two = smallFestival();
  two.change(ends);
  renameAct(two, 'Tin Lanterns');
  two.keepInArchive('act');
  one.adoptArchived(two.allArchived());
  expect(names(one, 'tin')).toEqual(['act Tin Lanterns']);
  two.adoptArchived(archiveOfNames(50));
  one.adoptArchived([
    ...two.allArchived(),
    { ...archiveOfNames(50)[0], actId: 'bad', ran: Buffer.from('?') } as never,
  ]);
  expect(one.archivedCount()).toBe(2);
});

test('a damaged show that is repaired keeps its archive', () => {
  const path = showPath();
  const show = smallFestival(path);
  show.change(ends);
  show.close();
  breakTable(path, 'printedSheets');
  const outcome = openSafely(path, { folders: testFolders(dirname(path)), firstRows: () => ({}) });
  if (!outcome.ok) throw new Error(outcome.problem.what);
  onTestFinished(() => outcome.value.show.close());
  expect(outcome.value.notice?.what).toMatch(/^The show was damaged/);
  expect(outcome.value.show.findInArchive('herons', 5).map((it) => it.name)).toEqual(['Paper Herons']);
});

/** Writes nonsense over the page on which a table begins. */
function breakTable(path: string, table: string): void {
  const database = new Sqlite(path, { readonly: true });
  const pageSize = Number(database.pragma('page_size', { simple: true }));
  const page = Number(
    database.prepare('SELECT rootpage FROM sqlite_schema WHERE name = ?').pluck().get(table),
  );
  database.close();
  const file = openSync(path, 'r+');
  writeSync(file, Buffer.alloc(pageSize, 0xab), 0, pageSize, (page - 1) * pageSize);
  closeSync(file);
}

test('a long name search stays a search of beginnings: marks of the search language are letters', () => {
  const show = smallFestival();
  show.change(ends);
  for (const text of [
    '*',
    'a*b',
    '(noor',
    'noor)',
    '{',
    '^noor',
    '- noor',
    "'",
    'NEAR(a b)',
    'x'.repeat(200),
  ])
    expect(() => show.findInArchive(text, 10)).not.toThrow();
});
