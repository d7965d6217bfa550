import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { put } from '../../core/show/change.ts';
import { documentFromShow } from '../../core/show/show.ts';
import { answer, twoWindows } from '../helpers/copying-windows.ts';
import { smallShow } from '../helpers/small-show.ts';
import { temporaryFolder } from '../helpers/temporary-folder.ts';

const first = documentFromShow(smallShow());
const ofAct = { table: 'acts', id: 'act' } as const;

function rename(name: string) {
  const [act] = first.acts;
  if (!act) throw new Error('the small show has an act');
  return { change: { label: `Rename to ${name}`, put: [put('acts', { ...act, name })], remove: [] } };
}

test('a copy says what it holds and what differs, and restoring it is one step that undo takes back', async () => {
  const { show, one, other } = twoWindows();
  const { copies } = await answer(one, 'copies.make', {});
  const [{ place, name } = { place: '', name: '' }] = copies;
  await answer(one, 'show.change', rename('Tin Lanterns'));
  const preview = await answer(one, 'copies.preview', { place, name });
  expect(preview).toMatchObject({ days: ['Saturday'], acts: ['Paper Herons'], sourceCount: 3, mixCount: 1 });
  expect(preview.differences).toEqual({
    count: 1,
    rows: [
      {
        table: 'acts',
        id: 'act',
        kind: 'changed',
        what: 'act Paper Herons',
        fields: [{ field: 'name', before: 'Tin Lanterns', after: 'Paper Herons' }],
      },
    ],
  });
  await answer(one, 'copies.restore', { place, name });
  expect(documentFromShow(show.read())).toEqual(first);
  expect(other.pushes.at(-1)).toMatchObject({
    push: 'changed',
    changed: { standing: { undo: /Restore/ } as never },
  });
  const { copies: after } = await answer(one, 'copies.list', {});
  expect(after.map(({ reason }) => reason)).toEqual(['before a step', 'by hand']);
  await answer(one, 'show.undo', {});
  expect(show.read().acts.get('act')?.name).toBe('Tin Lanterns');
});

test.each(['../festival.foldbook', 'show.2026-05-01T09-30-00-000Z.by-hand.foldbook', '/etc/passwd'])(
  'a copy is found in the list by its name and never becomes a path (%s)',
  async (name) => {
    const { one } = twoWindows();
    const reply = await one.call('copies.preview', { place: 'beside the show', name });
    expect(reply).toMatchObject({ ok: false, problem: { code: 'not there' } });
  },
);

const dialog = { choice: { how: 'dialog' } } as const;

test('the second folder comes from the dialog of the system; in a browser the answer says how it is named', async () => {
  const chosenFolder = temporaryFolder();
  const chosen = await answer(twoWindows({ chosenFolder }).one, 'copies.choose', dialog);
  expect(chosen).toMatchObject({ secondFolder: chosenFolder, hasDialog: true, isNamed: false });
  expect(chosen.copies.map(({ place }) => place).sort()).toEqual(['beside the show', 'second folder']);
  const reply = await twoWindows().one.call('copies.choose', dialog);
  expect(reply).toMatchObject({ ok: false, problem: { code: 'no dialog' } });
});

test('or is a folder on a stick that the program found; the page names it by its id, and a path is no id', async () => {
  const stick = temporaryFolder();
  const { one } = twoWindows({ stick });
  const { drives } = await answer(one, 'copies.list', {});
  expect(drives).toEqual([{ id: 'stick', name: 'STICK', where: stick }]);
  const chosen = await answer(one, 'copies.choose', { choice: { how: 'drive', driveId: 'stick' } });
  expect(chosen.secondFolder).toBe(join(stick, 'Foldbook copies'));
  expect(chosen.copies.map(({ place, isOwn }) => `${place} ${isOwn}`)).toContain('second folder true');
  for (const driveId of [stick, '../stick', '/etc']) {
    const reply = await one.call('copies.choose', { choice: { how: 'drive', driveId } });
    expect(reply).toMatchObject({ ok: false, problem: { code: 'not there' } });
  }
  expect(await answer(one, 'copies.choose', { choice: { how: 'none' } })).toMatchObject({
    secondFolder: null,
  });
});

test('a stick on which nothing can be written is refused with a sentence', async () => {
  const file = join(temporaryFolder(), 'no folder');
  writeFileSync(file, '');
  const { one } = twoWindows({ stick: file });
  const reply = await one.call('copies.choose', { choice: { how: 'drive', driveId: 'stick' } });
  expect(reply).toMatchObject({ ok: false, problem: { code: 'cannot write', what: /STICK/ as never } });
});

test('two states of an act tell what changed, when and on which machine; other acts have no part in it', async () => {
  const { show, one } = twoWindows();
  const { state } = await answer(one, 'states.keep', { of: ofAct, name: 'After the sound check' });
  await answer(one, 'show.change', rename('Tin Lanterns'));
  await answer(one, 'show.change', {
    change: { label: 'Rig', put: [put('rigs', { ...firstRig(), name: 'Other house' })], remove: [] },
  });
  const { differences, writings } = await answer(one, 'states.compare', {
    of: ofAct,
    fromId: state.id,
    toId: null,
  });
  expect(differences.rows.map(({ what }) => what)).toEqual(['act Tin Lanterns']);
  expect(writings.map(({ label, did }) => `${label}: ${did}`)).toEqual(['Rename to Tin Lanterns: done']);
  expect(writings[0]?.device).not.toBe('');
  const { leftOut } = await answer(one, 'states.restore', { of: ofAct, stateId: state.id });
  expect(leftOut).toBe(0);
  expect(show.read().acts.get('act')?.name).toBe('Paper Herons');
  expect(show.read().rigs.get('rig')?.name).toBe('Other house');
  const { states } = await answer(one, 'states.list', { of: ofAct });
  expect(states.map(({ name }) => name)).toEqual(['After the sound check']);
});

test('putting a state back takes away nothing of what happened on the day', async () => {
  const { show, one } = twoWindows();
  const { state } = await answer(one, 'states.keep', { of: ofAct, name: 'Before the day' });
  const at = '2026-06-05T21:00:00.000Z';
  const note = { id: 'note', actId: 'act', mixId: 'mix', sourceId: null, text: 'Feedback', notedAt: at };
  const tick = { id: 'tick', actId: 'act', taskKey: 'plug', doneAt: at };
  await answer(one, 'show.change', {
    change: { label: 'Note', put: [put('runNotes', note), put('ticks', tick)], remove: [] },
  });
  await answer(one, 'show.change', rename('Tin Lanterns'));
  const of = { of: ofAct, fromId: state.id, toId: null };
  const { differences } = await answer(one, 'states.compare', of);
  expect(differences.rows.map(({ what }) => what)).toEqual(['act Tin Lanterns']);
  await answer(one, 'states.restore', { of: ofAct, stateId: state.id });
  expect(show.read().acts.get('act')?.name).toBe('Paper Herons');
  expect([show.read().runNotes.size, show.read().ticks.size]).toEqual([1, 1]);
});

function firstRig() {
  const [rig] = first.rigs;
  if (!rig) throw new Error('the small show has a rig');
  return rig;
}

test('an act goes out as a file and comes in beside; replacing the show has to be said, and leaves a copy', async () => {
  const { show, one } = twoWindows();
  const act = await answer(one, 'exchange.export', { actId: 'act' });
  expect(act.name).toBe('Paper Herons.foldbook-act.json');
  const look = await answer(one, 'exchange.look', { text: act.text, dayId: 'day' });
  expect(look).toMatchObject({
    holds: 'act',
    alreadyThere: ['Paper Herons'],
    beside: { leftOut: 0 },
    replace: null,
  });
  const homeless = await answer(one, 'exchange.look', { text: act.text, dayId: null });
  expect(homeless.beside).toBeNull();
  expect(documentFromShow(show.read()), 'a look changes nothing').toEqual(first);
  await answer(one, 'exchange.import', { text: act.text, way: { how: 'beside', dayId: 'day' } });
  expect([...show.read().acts.values()].map(({ name }) => name)).toEqual(['Paper Herons', 'Paper Herons']);
  const refused = await one.call('exchange.import', { text: act.text, way: { how: 'replace' } });
  expect(refused).toMatchObject({ ok: false, problem: { code: 'wrong request' } });
  const whole = await answer(one, 'exchange.look', { text: JSON.stringify(first), dayId: null });
  expect(whole.replace?.differences.rows).toContainEqual(
    expect.objectContaining({ kind: 'removed', what: 'act Paper Herons' }),
  );
  await answer(one, 'exchange.import', { text: JSON.stringify(first), way: { how: 'replace' } });
  expect(documentFromShow(show.read())).toEqual(first);
  expect((await answer(one, 'copies.list', {})).copies).toHaveLength(2);
});

test('what another window writes while the copy is made is replaced too: the show is what the file holds', async () => {
  const { show, one, other } = twoWindows();
  const [act] = first.acts;
  if (!act) throw new Error('the small show has an act');
  const replaced = answer(one, 'exchange.import', {
    text: JSON.stringify(first),
    way: { how: 'replace' },
  });
  const late = put('acts', { ...act, id: 'late', name: 'Late guest', order: 7 });
  await answer(other, 'show.change', { change: { label: 'Late', put: [late], remove: [] } });
  expect(show.read().acts.size, 'the copy is still being made').toBe(2);
  await replaced;
  expect(documentFromShow(show.read())).toEqual(first);
  await answer(one, 'show.undo', {});
  expect(show.read().acts.get('late')?.name).toBe('Late guest');
});
