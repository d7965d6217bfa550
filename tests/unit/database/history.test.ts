import Database from 'better-sqlite3';
import { expect, test } from 'vitest';
import { applyChange } from '../../../core/show/apply-change.ts';
import { type Change, put } from '../../../core/show/change.ts';
import { Rig } from '../../../core/show/rig.ts';
import { documentFromShow, type RowOf, type Show, type TableName } from '../../../core/show/show.ts';
import { opened, showPath } from '../../helpers/open-shows.ts';
import { smallShow } from '../../helpers/small-show.ts';

const first = documentFromShow(smallShow());

function rowOf<T extends TableName>(show: Show, table: T, id: string): RowOf<T> {
  const row = show[table].get(id);
  if (!row) throw new Error(`The small show has no ${id} in ${table}.`);
  return row as RowOf<T>;
}

const rename = (name: string): Change => ({
  label: `Rename to ${name}`,
  put: [put('acts', { ...rowOf(smallShow(), 'acts', 'act'), name })],
  remove: [],
});

test('what the user did at once is taken back at once, with all that went along', () => {
  const show = opened(showPath(), first);
  show.change({ label: 'Remove the act', put: [], remove: [{ table: 'acts', id: 'act' }] });
  expect(documentFromShow(show.read()).wishes).toEqual([]);
  expect(show.undo()).toMatchObject({
    ok: true,
    value: { standing: { undo: null, redo: 'Remove the act' } },
  });
  expect(documentFromShow(show.read())).toEqual(first);
});

test('undo and redo go on where they stood after the program was closed', () => {
  const path = showPath();
  const before = opened(path, first);
  before.change(rename('Tin Lanterns'));
  before.change(rename('Salt Choir'));
  before.undo();
  before.close();
  const after = opened(path);
  expect(after.standing()).toEqual({
    revision: 3,
    undo: 'Rename to Tin Lanterns',
    redo: 'Rename to Salt Choir',
  });
  after.redo();
  expect(after.read().acts.get('act')?.name).toBe('Salt Choir');
});

test('a new change forgets what was undone', () => {
  const show = opened(showPath(), first);
  show.change(rename('Tin Lanterns'));
  show.undo();
  show.change(rename('Salt Choir'));
  expect(show.redo()).toMatchObject({ ok: false, problem: { code: 'nothing to undo' } });
  expect(show.standing()).toEqual({ revision: 3, undo: 'Rename to Salt Choir', redo: null });
});

test('a change that changes nothing is no step, so that undo never seems to do nothing', () => {
  const show = opened(showPath(), first);
  show.change(rename('Tin Lanterns'));
  show.undo();
  expect(show.change(rename('Paper Herons'))).toEqual({
    ok: true,
    value: { revision: 2, undo: null, redo: 'Rename to Tin Lanterns' },
  });
});

test('a change that is refused leaves no trace in the history', () => {
  const show = opened(showPath(), first);
  const orphan = { ...rowOf(smallShow(), 'acts', 'act'), dayId: 'nobody' };
  expect(show.change({ label: 'Move', put: [put('acts', orphan)], remove: [] }).ok).toBe(false);
  expect(show.standing()).toEqual({ revision: 0, undo: null, redo: null });
});

test('a box that goes back to its old rig keeps its sockets in the window that follows the undo', () => {
  const show = opened(showPath(), first);
  const other = Rig.parse({ id: 'other', name: 'Other house', channelCount: 32 });
  const box = rowOf(smallShow(), 'boxes', 'box');
  const moved: Change = {
    label: 'Move box A',
    put: [put('rigs', other), put('boxes', { ...box, rigId: 'other' })],
    remove: [],
  };
  show.change(moved);
  const undone = show.undo();
  if (!undone.ok) throw new Error(undone.problem.what);
  // The other rig goes, and in a window all that is on it; the box was, when the window still showed it there.
  const window = applyChange(applyChange(smallShow(), moved), undone.value.change);
  expect(window.sockets.get('socket')).toEqual(rowOf(smallShow(), 'sockets', 'socket'));
});

test('the history is long but not endless: the oldest of more than five thousand steps are forgotten', () => {
  const path = showPath();
  opened(path, first).close();
  const database = new Database(path);
  database.exec(`
    WITH RECURSIVE "numbers" ("n") AS (SELECT 1 UNION ALL SELECT "n" + 1 FROM "numbers" WHERE "n" < 6000)
    INSERT INTO "steps" ("number", "label", "madeAt") SELECT "n", 'Step ' || "n", '' FROM "numbers"`);
  database.close();
  const show = opened(path);
  show.change(rename('Tin Lanterns'));
  show.close();
  const after = new Database(path);
  expect(after.prepare('SELECT count(*), min("number") FROM "steps"').raw().get()).toEqual([5000, 1002]);
  after.close();
});
