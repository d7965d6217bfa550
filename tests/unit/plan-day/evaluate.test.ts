import { expect, test } from 'vitest';
import { evaluate } from '../../../core/plan/day/evaluate.ts';
import { assignmentOf, type TinyBox, type TinyDay, tinyLayer } from '../../helpers/tiny-layer.ts';

type Day = Omit<TinyDay, 'boxes'> & {
  name: string;
  boxes?: TinyBox[];
  slots: string[];
  cost?: number;
  entries?: string[];
  broken?: string[];
};

/** A line costs 10 in the changeover and 4 in peace; the first act is set up in peace. */
const days: Day[] = [
  {
    name: 'a shared line that stays in its socket costs nothing again',
    acts: 2,
    items: [
      { act: 0, name: 'kick', key: 'kick' },
      { act: 1, name: 'kick', key: 'kick' },
    ],
    slots: ['A1', 'A1'],
    cost: 4,
    entries: ['cold', 'kept'],
  },
  {
    name: 'a shared line stays through an act that does not use it',
    acts: 3,
    items: [
      { act: 0, name: 'kick', key: 'kick' },
      { act: 1, name: 'keys' },
      { act: 2, name: 'kick', key: 'kick' },
    ],
    slots: ['A1', 'A2', 'A1'],
    cost: 8,
    entries: ['cold', 'cold', 'kept'],
  },
  {
    name: 'a shared line is plugged again after somebody else used its socket',
    acts: 3,
    items: [
      { act: 0, name: 'kick', key: 'kick' },
      { act: 1, name: 'keys' },
      { act: 2, name: 'kick', key: 'kick' },
    ],
    slots: ['A1', 'A1', 'A1'],
    cost: 24,
    entries: ['cold', 'hot', 'hot'],
  },
  {
    name: 'a line for a socket that is idle is patched while the act before plays',
    acts: 2,
    items: [
      { act: 0, name: 'bass' },
      { act: 1, name: 'keys' },
    ],
    slots: ['A1', 'A2'],
    cost: 8,
    entries: ['cold', 'cold'],
  },
  {
    name: 'a pair is prepared only if both of its sockets are idle',
    acts: 2,
    items: [
      { act: 0, name: 'bass' },
      { act: 1, name: 'keys', pair: true },
    ],
    slots: ['A2', 'A1'],
    cost: 24,
    entries: ['cold', 'hot'],
  },
  {
    name: 'two lines on one socket',
    acts: 1,
    items: [
      { act: 0, name: 'a' },
      { act: 0, name: 'b' },
    ],
    slots: ['A1', 'A1'],
    broken: ['taken twice'],
  },
  {
    name: 'a pair that starts on an even socket',
    acts: 1,
    items: [{ act: 0, name: 'keys', pair: true }],
    slots: ['A2'],
    broken: ['no pair'],
  },
  {
    name: 'a line that is nowhere',
    acts: 1,
    items: [{ act: 0, name: 'a' }],
    slots: ['nowhere'],
    broken: ['no slot'],
  },
  {
    name: 'a line away from its lock',
    acts: 1,
    items: [{ act: 0, name: 'a', lock: 'A2' }],
    slots: ['A1'],
    broken: ['moved from its lock'],
  },
  {
    name: 'a line to a box out of reach',
    boxes: [
      { name: 'A', slots: 2 },
      { name: 'B', slots: 2 },
    ],
    acts: 1,
    items: [{ act: 0, name: 'a', reach: ['B'] }],
    slots: ['A1'],
    broken: ['out of reach'],
  },
  {
    name: 'a line of an early patch whose socket is still in use',
    acts: 2,
    items: [
      { act: 0, name: 'bass' },
      { act: 1, name: 'kick', ready: true },
    ],
    slots: ['A1', 'A1'],
    broken: ['not ready'],
  },
  {
    name: 'a ribbon on a bank whose 48 V is on',
    boxes: [{ name: 'A', slots: 4, bankSize: 4 }],
    acts: 1,
    items: [
      { act: 0, name: 'overhead', phantom: 'on' },
      { act: 0, name: 'ribbon', phantom: 'off' },
    ],
    slots: ['A1', 'A2'],
    broken: ['phantom'],
  },
  {
    name: 'a ribbon that stays plugged while the act between needs 48 V on its bank',
    boxes: [{ name: 'A', slots: 4, bankSize: 4 }],
    acts: 3,
    items: [
      { act: 0, name: 'ribbon', key: 'ribbon', phantom: 'off' },
      { act: 1, name: 'overhead', phantom: 'on' },
      { act: 2, name: 'ribbon', key: 'ribbon', phantom: 'off' },
    ],
    slots: ['A1', 'A2', 'A1'],
    broken: ['phantom'],
  },
  {
    name: 'a ribbon waits for the changeover where its bank is on for the act before',
    boxes: [{ name: 'A', slots: 4, bankSize: 4 }],
    acts: 2,
    items: [
      { act: 0, name: 'overhead', phantom: 'on' },
      { act: 1, name: 'ribbon', phantom: 'off' },
    ],
    slots: ['A1', 'A2'],
    cost: 14,
    entries: ['cold', 'hot'],
  },
  {
    name: 'no spare line left near the lead vocal',
    boxes: [{ name: 'A', slots: 2 }],
    acts: 1,
    items: [
      { act: 0, name: 'a' },
      { act: 0, name: 'b' },
    ],
    spare: { 0: { count: 1, boxes: ['A'] } },
    slots: ['A1', 'A2'],
    broken: ['spare'],
  },
];

test.each(days)(
  'the referee: $name',
  ({ boxes = [{ name: 'A', slots: 4 }], acts, items, spare, slots, cost, entries, broken = [] }) => {
    const layer = tinyLayer(boxes, acts, items, spare);
    const found = evaluate(layer, assignmentOf(layer, slots));
    expect(found.broken.map((it) => it.rule)).toEqual(broken);
    if (cost !== undefined) expect(found.cost).toBe(cost);
    if (entries) expect(found.entries).toEqual(entries);
  },
);

test('the referee counts lines before each act, a pair as two', () => {
  const layer = tinyLayer([{ name: 'A', slots: 4 }], 2, [
    { act: 0, name: 'bass', key: 'bass' },
    { act: 1, name: 'bass', key: 'bass' },
    { act: 1, name: 'keys', pair: true },
  ]);
  const { beforeAct } = evaluate(layer, assignmentOf(layer, ['A1', 'A1', 'A3']));
  expect(beforeAct).toEqual([
    { kept: 0, cold: 1, hot: 0, cost: 4 },
    { kept: 1, cold: 2, hot: 0, cost: 8 },
  ]);
});
