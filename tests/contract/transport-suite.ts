import { describe, expect, test } from 'vitest';
import { contract } from '../../core/contract/contract.ts';
import type { Act } from '../../core/show/act.ts';
import { type Change, put } from '../../core/show/change.ts';
import { documentFromShow } from '../../core/show/show.ts';
import { smallShow } from '../helpers/small-show.ts';
import type { TestWindow } from '../helpers/window.ts';

/** Two windows on the small show, whatever carries their frames. */
export type TwoWindows = { one: TestWindow; other: TestWindow; host: 'electron' | 'browser' };

const act = smallShow().acts.get('act') as Act;
const rename = (name: string): Change => ({
  label: `Rename to ${name}`,
  put: [put('acts', { ...act, name })],
  remove: [],
});
const base64 = (text: string) => Buffer.from(text).toString('base64');

/** What every transport must do the same: the calls of the contract, over frames. */
export function describeTransport(name: string, openTwo: () => Promise<TwoWindows>): void {
  describe(`a window over ${name}`, () => {
    test('gets the whole show when it opens', async () => {
      const { one, host } = await openTwo();
      const reply = await one.call('show.open', {});
      expect(reply).toMatchObject({ ok: true, value: { host, file: 'festival.foldbook' } });
      const { show } = contract['show.open'].out.parse(reply.ok && reply.value);
      expect(show).toEqual(documentFromShow(smallShow()));
    });

    test('hears that its change is saved, and the other window hears the change', async () => {
      const { one, other } = await openTwo();
      const change = rename('Tin Lanterns');
      const standing = { revision: 1, undo: change.label, redo: null };
      expect(await one.call('show.change', { change })).toMatchObject({ ok: true, value: { standing } });
      await expect.poll(() => other.pushes).toEqual([{ push: 'changed', changed: { change, standing } }]);
      expect(one.pushes).toEqual([]);
    });

    test('takes back and does again, and the other window follows', async () => {
      const { one, other } = await openTwo();
      await one.call('show.change', { change: rename('Tin Lanterns') });
      const undone = await other.call('show.undo', {});
      expect(undone).toMatchObject({
        ok: true,
        value: { change: { put: [{ row: { name: 'Paper Herons' } }] }, standing: { undo: null } },
      });
      await expect.poll(() => one.pushes.length).toBe(1);
      const redone = await one.call('show.redo', {});
      expect(redone).toMatchObject({
        ok: true,
        value: { change: { put: [{ row: { name: 'Tin Lanterns' } }] } },
      });
      expect(await one.call('show.redo', {})).toMatchObject({
        ok: false,
        problem: { code: 'nothing to undo' },
      });
    });

    test('gets its changes answered in the order they were made', async () => {
      const { one } = await openTwo();
      const names = Array.from({ length: 40 }, (_, index) => `Act ${index}`);
      const replies = await Promise.all(names.map((it) => one.call('show.change', { change: rename(it) })));
      const undoable = replies.map(
        (reply) => reply.ok && (reply.value as { standing: { undo: string } }).standing.undo,
      );
      expect(undoable).toEqual(names.map((it) => `Rename to ${it}`));
    });

    test('gets a rider as a grid of text, or a sentence why not', async () => {
      const { one } = await openTwo();
      const csv = await one.call('rider.grid', { fileName: 'rider.csv', base64: base64('1,Kick\n2,Snare') });
      expect(csv).toMatchObject({
        ok: true,
        value: {
          grid: {
            sheets: [
              {
                rows: [
                  ['1', 'Kick'],
                  ['2', 'Snare'],
                ],
              },
            ],
          },
        },
      });
      const empty = await one.call('rider.grid', { fileName: 'rider.csv', base64: '' });
      expect(empty).toMatchObject({ ok: false, problem: { code: 'unreadable file' } });
    });

    test('gets a rider of two megabytes through, whole', async () => {
      const { one } = await openTwo();
      const line = `1,Kick,${'dynamic kick mic '.repeat(100)}\n`;
      const count = Math.ceil(2_000_000 / line.length);
      const reply = await one.call('rider.grid', {
        fileName: 'long.csv',
        base64: base64(line.repeat(count)),
      });
      const { grid } = contract['rider.grid'].out.parse(reply.ok && reply.value);
      expect(grid.sheets[0]?.rows).toHaveLength(count);
    });

    test('is told when a change refers to what is not there, and nothing of it is written', async () => {
      const { one } = await openTwo();
      const change = { ...rename('Tin Lanterns'), put: [put('acts', { ...act, dayId: 'nobody' })] };
      expect(await one.call('show.change', { change })).toMatchObject({
        ok: false,
        problem: { code: 'broken reference' },
      });
      const reply = await one.call('show.open', {});
      expect(reply).toMatchObject({ ok: true, value: { show: { acts: [{ dayId: 'day' }] } } });
    });

    test.each([...Object.keys(contract)])('is refused %s with a field that nobody knows', async (call) => {
      const { one } = await openTwo();
      expect(await one.call(call, { sneak: 1 })).toMatchObject({
        ok: false,
        problem: { code: 'wrong request' },
      });
    });

    test.each(['show.drop', 'toString', '__proto__', 'constructor', ''])(
      'is refused the unknown call "%s"',
      async (call) => {
        const { one } = await openTwo();
        expect(await one.call(call, {})).toMatchObject({ ok: false, problem: { code: 'wrong request' } });
      },
    );
  });
}
