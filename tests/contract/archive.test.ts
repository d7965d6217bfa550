import { copyFileSync, mkdirSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { put } from '../../core/show/change.ts';
import { answer, twoWindows } from '../helpers/copying-windows.ts';
import type { TestWindow } from '../helpers/window.ts';

const at = '2026-06-05T21:00:00.000Z';

/** The act ends, as the show moving on does it. */
async function end(window: TestWindow): Promise<void> {
  const run = put('actRuns', { id: 'run', actId: 'act', beganAt: null, endedAt: at });
  await answer(window, 'show.change', { change: { label: 'Done', put: [run], remove: [] } });
}

const found = (window: TestWindow, text: string) => answer(window, 'archive.find', { text, most: 10 });

test('an act that has ended is found and read by any window, as planned and as it ran', async () => {
  const { one, other } = twoWindows();
  expect(await found(one, '')).toEqual({ found: [], actCount: 0, removed: [] });
  await end(one);
  expect(await found(other, 'noor')).toMatchObject({
    actCount: 1,
    found: [
      {
        kind: 'performer',
        name: 'Noor',
        act: { actId: 'act', actName: 'Paper Herons', dayName: 'Saturday' },
      },
      { kind: 'source', name: 'Noor' },
    ],
  });
  const { planned, ran } = await answer(other, 'archive.read', { actId: 'act' });
  expect([planned.actRuns.length, ran.actRuns.length]).toEqual([0, 1]);
});

test('an act that nobody archived is refused in a sentence, to be read, kept, taken out and put back', async () => {
  const { one } = twoWindows();
  for (const call of ['archive.read', 'archive.keep', 'archive.remove', 'archive.putBack'] as const)
    expect(await one.call(call, { actId: 'act-of-nobody' })).toMatchObject({
      ok: false,
      problem: { code: 'not there', what: expect.stringMatching(/^This act is not/) },
    });
});

test('an act that one window takes out is gone for the other, until it is put back', async () => {
  const { one, other } = twoWindows();
  await end(one);
  await answer(one, 'archive.remove', { actId: 'act' });
  expect(await found(other, 'noor')).toMatchObject({
    found: [],
    actCount: 0,
    removed: [{ actId: 'act', actName: 'Paper Herons' }],
  });
  await answer(other, 'archive.putBack', { actId: 'act' });
  expect(await found(one, 'oor')).toMatchObject({ actCount: 1, removed: [] });
});

test('back-up copies hold the archive: one of this machine brings it to another that restores it', async () => {
  const stage = twoWindows();
  await answer(stage.one, 'archive.keep', { actId: 'act' });
  // Kept by hand is no write of the show, and a copy follows all the same.
  const copies = async () => (await answer(stage.one, 'copies.list', {})).copies;
  await expect.poll(async () => (await copies()).length).toBe(1);
  const [copy] = await copies();
  if (!copy) throw new Error('there is a copy');

  const home = twoWindows();
  expect((await found(home.one, 'herons')).actCount).toBe(0);
  mkdirSync(home.folders.first, { recursive: true });
  copyFileSync(join(stage.folders.first, copy.name), join(home.folders.first, copy.name));
  await answer(home.one, 'copies.restore', { place: copy.place, name: copy.name });
  expect((await found(home.one, 'herons')).actCount).toBe(1);
});

test('restoring a copy of before the act ended takes nothing out of the archive', async () => {
  const { one } = twoWindows();
  const { copies } = await answer(one, 'copies.make', {});
  await end(one);
  const [before] = copies;
  if (!before) throw new Error('there is a copy');
  await answer(one, 'copies.restore', { place: before.place, name: before.name });
  expect((await found(one, 'paper')).actCount).toBe(1);
});
