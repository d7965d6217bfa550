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
const wholeDay = { dayId: 'day', keepUnlessGain: null, timeLimitSeconds: 20 };
/** Two more sockets, for the pair of keys, and a spare beside the vocal. */
const roomForAll: Change = {
  label: 'More sockets',
  put: [2, 3, 4].map((number) =>
    put('sockets', { id: `socket ${number}`, boxId: 'box', number, reservedFor: null }),
  ),
  remove: [],
};
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

    test('gets a day planned with what is proven of it, hears how far it is, and the other window does not', async () => {
      const { one, other } = await openTwo();
      await one.call('show.change', { change: roomForAll });
      const reply = await one.call('day.plan', wholeDay);
      const { found, stopped } = contract['day.plan'].out.parse(reply.ok && reply.value);
      expect(stopped).toBe(false);
      expect(found.layers.sockets).toMatchObject({ proof: 'proven minimal', gapPercent: 0, conflict: null });
      expect(one.pushes.filter((it) => it.push === 'day progress').length).toBeGreaterThan(0);
      expect(other.pushes.filter((it) => it.push === 'day progress')).toEqual([]);
    });

    test('is told which demands of a day collide', async () => {
      const { one } = await openTwo();
      const reply = await one.call('day.plan', wholeDay);
      const { found } = contract['day.plan'].out.parse(reply.ok && reply.value);
      expect(found.layers.sockets.proof).toBe('no plan');
      expect(found.layers.sockets.conflict?.what).toMatch(
        /^Paper Herons: this cannot be met: Keys L \+ Keys R need two places; in A there is 1 socket\./,
      );
    });

    test('is told in a sentence why a day cannot be planned at all', async () => {
      const { one } = await openTwo();
      await one.call('show.change', {
        change: { label: 'Drop', put: [], remove: [{ table: 'acts', id: 'act' }] },
      });
      expect(await one.call('day.plan', wholeDay)).toMatchObject({
        ok: false,
        problem: { code: 'cannot plan', what: 'Saturday has no acts.' },
      });
      expect(await one.call('day.plan', { ...wholeDay, dayId: 'sunday' })).toMatchObject({
        ok: false,
        problem: { code: 'cannot plan' },
      });
    });

    test('ends its planning by a stop, and gets the best until then', async () => {
      const { one } = await openTwo();
      await one.call('show.change', { change: roomForAll });
      const [planned, stop] = await Promise.all([one.call('day.plan', wholeDay), one.call('day.stop', {})]);
      expect(stop).toMatchObject({ ok: true });
      expect(planned).toMatchObject({ ok: true, value: { stopped: true } });
      expect(await one.call('day.plan', wholeDay)).toMatchObject({ ok: true, value: { stopped: false } });
    });

    test('ends its first planning by a second one, and both are answered', async () => {
      const { one, other } = await openTwo();
      await one.call('show.change', { change: roomForAll });
      const [first, second] = await Promise.all([
        one.call('day.plan', wholeDay),
        one.call('day.plan', wholeDay),
      ]);
      expect(first).toMatchObject({ ok: true, value: { stopped: true } });
      expect(second).toMatchObject({ ok: true, value: { stopped: false } });
      expect(await other.call('day.plan', wholeDay)).toMatchObject({ ok: true, value: { stopped: false } });
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
