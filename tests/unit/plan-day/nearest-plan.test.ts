import { expect, test } from 'vitest';
import { evaluate } from '../../../core/plan/day/evaluate.ts';
import { nearestPlan } from '../../../core/plan/day/nearest-plan.ts';
import { loadLinearSolver } from '../../../electron/solver/highs-solver.ts';
import { type TinyDay, type TinyItem, tinyLayer } from '../../helpers/tiny-layer.ts';

const solve = await loadLinearSolver();

type Case = TinyDay & {
  name: string;
  /** How many lines have to go, by counting places. */
  leftOut: number;
  opened?: string[];
  notReady?: string[];
  /** These never go. */
  stays?: string[];
};

const lines = (act: number, count: number): TinyItem[] =>
  Array.from({ length: count }, (_, at) => ({ act, name: `line ${act} ${at}` }));

const cases: Case[] = [
  {
    name: 'five lines on four sockets: one goes, and not the voice',
    boxes: [{ name: 'A', slots: 4 }],
    acts: 1,
    items: [...lines(0, 4), { act: 0, name: 'voice' }],
    leftOut: 1,
    stays: ['voice'],
  },
  {
    name: 'each act by itself: two too many in the first, one in the second',
    boxes: [{ name: 'A', slots: 4 }],
    acts: 2,
    items: [...lines(0, 6), ...lines(1, 5)],
    leftOut: 3,
  },
  {
    name: 'a pair beside three singles on four sockets: one single makes way for it',
    boxes: [{ name: 'A', slots: 4 }],
    acts: 1,
    items: [...lines(0, 3), { act: 0, name: 'keys', pair: true }],
    leftOut: 1,
    stays: ['keys'],
  },
  {
    name: 'two locks on one socket: one is opened, and nothing is left out',
    boxes: [{ name: 'A', slots: 4 }],
    acts: 1,
    items: [
      { act: 0, name: 'kick', lock: 'A2' },
      { act: 0, name: 'bass', lock: 'A2' },
    ],
    leftOut: 0,
    opened: ['bass'],
  },
  {
    name: 'no room to be ready early: the line comes in during the changeover',
    boxes: [{ name: 'A', slots: 2 }],
    acts: 2,
    items: [...lines(0, 2), { act: 1, name: 'kick', ready: true }],
    leftOut: 0,
    notReady: ['kick'],
  },
  {
    name: 'out of everybody’s reach',
    boxes: [{ name: 'A', slots: 2 }],
    acts: 1,
    items: [{ act: 0, name: 'harp', reach: [] }, ...lines(0, 1)],
    leftOut: 1,
    stays: ['line 0 0'],
  },
  {
    name: 'a box whose name is that of the place for what is left out is a box like any other',
    boxes: [{ name: 'outside the rig', slots: 4 }],
    acts: 1,
    items: lines(0, 5),
    leftOut: 1,
  },
  {
    name: 'the spare line stays free',
    boxes: [{ name: 'A', slots: 2 }],
    acts: 1,
    items: lines(0, 2),
    spare: { 0: { count: 1, boxes: ['A'] } },
    leftOut: 1,
  },
  {
    name: 'a shared line that is left out is left out in each of its acts',
    boxes: [{ name: 'A', slots: 2 }],
    acts: 2,
    items: [0, 1].flatMap((act) => ['kick', 'bass', 'keys'].map((name) => ({ act, name, key: name }))),
    leftOut: 2,
  },
];

test.each(cases)('the nearest plan: $name', (given) => {
  const layer = tinyLayer(given.boxes, given.acts, given.items, given.spare);
  for (const item of layer.items) if (item.name === 'voice') item.vital = true;
  const found = nearestPlan(layer, solve);
  const names = (indexes: number[] = []) => indexes.map((index) => layer.items[index]?.name ?? '');
  expect(found?.leftOut).toHaveLength(given.leftOut);
  expect(found?.isFewest).toBe(true);
  expect(names(found?.opened)).toEqual(given.opened ?? []);
  expect(names(found?.notReady)).toEqual(given.notReady ?? []);
  for (const name of given.stays ?? []) expect(names(found?.leftOut)).not.toContain(name);
  // Whatever is not given up keeps every rule.
  const givenUp = new Set([...(found?.leftOut ?? []), ...(found?.opened ?? []), ...(found?.notReady ?? [])]);
  const { broken } = evaluate(layer, found?.assignment ?? []);
  expect(broken.filter((it) => !it.items.some((index) => givenUp.has(index))).map((it) => it.what)).toEqual(
    [],
  );
});
