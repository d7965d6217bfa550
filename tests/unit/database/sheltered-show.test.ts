import { spawnSync } from 'node:child_process';
import { mkdirSync, readdirSync, rmSync, statfsSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { expect, test } from 'vitest';
import { put } from '../../../core/show/change.ts';
import { documentFromShow } from '../../../core/show/show.ts';
import { copiesIn } from '../../../electron/copies/copy-names.ts';
import { openSafely } from '../../../electron/copies/open-safely.ts';
import { readCopy } from '../../../electron/copies/read-copy.ts';
import { ShelteredShow } from '../../../electron/database/sheltered-show.ts';
import { testFolders } from '../../helpers/copy-folders.ts';
import { opened, showPath } from '../../helpers/open-shows.ts';
import { smallDisk } from '../../helpers/small-disk.ts';
import { smallShow } from '../../helpers/small-show.ts';
import { temporaryFolder } from '../../helpers/temporary-folder.ts';

const first = documentFromShow(smallShow());

function rename(name: string, notes = '') {
  const [act] = first.acts;
  if (!act) throw new Error('the small show has an act');
  return { label: `Rename to ${name}`, put: [put('acts', { ...act, name, notes })], remove: [] };
}

const nameIn = (show: { read: ShelteredShow['read'] }) => show.read().acts.get('act')?.name;

/** A file whose disk is full for as long as it is said to be. */
function onFullDisk() {
  const file = opened(showPath(), first);
  const disk = { isFull: true };
  for (const call of ['change', 'undo'] as const) {
    const work = file[call].bind(file) as never as (...given: unknown[]) => never;
    file[call] = ((...given: unknown[]) =>
      disk.isFull
        ? { ok: false, problem: { code: 'cannot write', what: 'The disk is full.', todo: 'Make room.' } }
        : work(...given)) as never;
  }
  return { file, disk };
}

test('on a full disk the work goes on, every answer says so, and all is written once there is room', () => {
  const { file, disk } = onFullDisk();
  let heard = 0;
  const show = ShelteredShow.onFile(file, {
    refuge: { keep: async () => null, leave: () => undefined },
    tell: () => heard++,
  });
  const answer = show.change(rename('Tin Lanterns'));
  expect(answer.ok && answer.value.unsaved?.what).toMatch(/not in its file.*disk is full.*memory only/i);
  show.change(rename('Salt Choir'));
  const undone = show.undo();
  expect(undone.ok && undone.value.standing.unsaved).toBeDefined();
  expect([nameIn(show), nameIn(file)]).toEqual(['Tin Lanterns', 'Paper Herons']);
  show.tryFile();
  expect(show.isSheltered).toBe(true);
  disk.isFull = false;
  show.tryFile();
  expect(heard).toBe(1);
  expect([show.isSheltered, nameIn(file)]).toEqual([false, 'Tin Lanterns']);
  expect(show.standing()).toEqual({
    revision: 3,
    undo: 'Rename to Tin Lanterns',
    redo: 'Rename to Salt Choir',
  });
});

test('a show whose folder is away opens from nothing, is kept elsewhere, and goes to its folder when that is back', async () => {
  const folder = temporaryFolder();
  const path = join(folder, 'away', 'festival.foldbook');
  const outcome = openSafely(path, { folders: testFolders(folder), firstRows: () => first });
  if (!outcome.ok) throw new Error(outcome.problem.what);
  const { show } = outcome.value;
  expect(show.change(rename('Tin Lanterns'))).toMatchObject({ ok: true });
  await show.kept();
  expect(show.standing().unsaved?.what).toContain(join(folder, 'rescued'));
  const [kept] = copiesIn(join(folder, 'rescued'));
  expect(readCopy(kept?.path ?? '', nameIn)).toEqual({ ok: true, value: 'Tin Lanterns' });
  mkdirSync(dirname(path));
  show.tryFile();
  expect(show.standing().unsaved).toBeUndefined();
  show.close();
  expect(nameIn(opened(path))).toBe('Tin Lanterns');
  expect(readdirSync(join(folder, 'rescued'))).toEqual([]);
});

test('a show on a write-protected stick is worked on in memory, and is written when the stick lets it', async (context) => {
  const stick = smallDisk();
  if (!stick) return context.skip('no small disk can be mounted here');
  const path = join(stick, 'festival.foldbook');
  opened(path, first).close();
  const mount = (how: string) => spawnSync('mount', ['-o', `remount,${how}`, stick]);
  mount('ro');
  const outcome = openSafely(path, { folders: testFolders(temporaryFolder()), firstRows: () => first });
  if (!outcome.ok) throw new Error(outcome.problem.what);
  const { show } = outcome.value;
  expect(show.standing().unsaved?.what).toContain('The show "festival.foldbook" may only be read');
  expect(show.change(rename('Tin Lanterns'))).toMatchObject({ ok: true });
  mount('rw');
  show.tryFile();
  expect(show.isSheltered).toBe(false);
  show.close();
  expect(nameIn(opened(path))).toBe('Tin Lanterns');
});

test('a disk that is truly full costs no edit that was answered', async (context) => {
  const disk = smallDisk();
  if (!disk) return context.skip('no small disk can be mounted here');
  const elsewhere = temporaryFolder();
  const path = join(disk, 'festival.foldbook');
  const outcome = openSafely(path, { folders: testFolders(elsewhere), firstRows: () => first });
  if (!outcome.ok) throw new Error(outcome.problem.what);
  const { show } = outcome.value;
  const free = statfsSync(disk);
  writeFileSync(join(disk, 'film'), Buffer.alloc(free.bavail * free.bsize - 20_000));
  for (let number = 1; number <= 30; number++)
    expect(show.change(rename(`Name ${number}`, 'x'.repeat(5_000 + number)))).toMatchObject({ ok: true });
  expect(show.isSheltered).toBe(true);
  await show.kept();
  expect(copiesIn(join(elsewhere, 'rescued'))).toHaveLength(1);
  rmSync(join(disk, 'film'));
  show.tryFile();
  expect(show.isSheltered).toBe(false);
  expect(show.standing().revision).toBe(30);
  show.close();
  expect(nameIn(opened(path))).toBe('Name 30');
}, 60_000);
