import { mkdirSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { expect, test } from 'vitest';
import { put } from '../../../core/show/change.ts';
import { documentFromShow } from '../../../core/show/show.ts';
import { CopyKeeper } from '../../../electron/copies/copy-keeper.ts';
import { nameOfCopy } from '../../../electron/copies/copy-names.ts';
import { readCopy } from '../../../electron/copies/read-copy.ts';
import { testFolders } from '../../helpers/copy-folders.ts';
import { opened, showPath } from '../../helpers/open-shows.ts';
import { smallShow } from '../../helpers/small-show.ts';

const first = documentFromShow(smallShow());

function keeper() {
  const path = showPath();
  const folder = dirname(path);
  const second = join(folder, 'stick');
  mkdirSync(second);
  const show = opened(path, first);
  return { show, second, copies: new CopyKeeper(show, testFolders(folder, second)), folder };
}

function rename(name: string) {
  const [act] = first.acts;
  if (!act) throw new Error('the small show has an act');
  return { label: 'Rename', put: [put('acts', { ...act, name })], remove: [] };
}

test('a copy lies in both folders and is the show as it was', async () => {
  const { show, copies, second } = keeper();
  const made = await copies.make('by hand');
  show.change(rename('Tin Lanterns'));
  if (!made.ok) throw new Error(made.problem.what);
  const { copies: all, trouble } = copies.list();
  expect(all.map(({ place, reason }) => `${place}, ${reason}`)).toEqual([
    'beside the show, by hand',
    'second folder, by hand',
  ]);
  expect(trouble).toBeNull();
  for (const path of [made.value.path, join(second, made.value.name)])
    expect(readCopy(path, (it) => documentFromShow(it.read()))).toEqual({ ok: true, value: first });
});

test('edits that come while a copy is being made wait for nothing, and the copy is whole', async () => {
  const { show, copies } = keeper();
  const making = copies.make('by hand');
  for (let number = 0; number < 50; number++) show.change(rename(`Name ${number}`));
  const made = await making;
  expect(made).toMatchObject({ ok: true });
  if (made.ok) expect(readCopy(made.value.path, (it) => it.damage())).toEqual({ ok: true, value: null });
});

test('by itself it copies only what was changed since', async () => {
  const { show, copies, folder } = keeper();
  await copies.makeIfDue();
  await copies.makeIfDue();
  expect(readdirSync(join(folder, 'copies'))).toHaveLength(1);
  show.change(rename('Tin Lanterns'));
  await copies.makeIfDue();
  expect(readdirSync(join(folder, 'copies'))).toHaveLength(2);
});

test('on a shared stick the old copies of another machine are left alone', async () => {
  const { copies, second } = keeper();
  const old = new Date('2020-05-01T09:30:00Z');
  const [theirs, ours] = [nameOfCopy(old, 'by itself', 'tower'), nameOfCopy(old, 'by itself')];
  for (const name of [theirs, ours]) writeFileSync(join(second, name), '');
  await copies.make('by hand');
  expect(readdirSync(second)).toContain(theirs);
  expect(readdirSync(second)).not.toContain(ours);
  expect(copies.list().copies.find(({ name }) => name === theirs)).toMatchObject({
    machine: 'tower',
    isOwn: false,
  });
});

test('a stick that is not in is told, is not made, and the copy beside the show is there', async () => {
  const { copies, second } = keeper();
  rmSync(second, { recursive: true });
  expect(await copies.make('by hand')).toMatchObject({ ok: true });
  expect(copies.list().trouble).toMatch(/took no copy \(ENOENT\)/);
  expect(copies.list().copies).toHaveLength(1);
});
