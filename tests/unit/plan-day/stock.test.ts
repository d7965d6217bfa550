import { expect, test } from 'vitest';
import { findStockCollisions } from '../../../core/plan/day/stock.ts';
import { type FestivalRows, festivalDay } from '../../helpers/festival-day.ts';

const packs = (fields: Record<string, unknown>) => [
  { id: 'packs', rigId: 'rig', kind: 'in-ear pack', count: 3, ...fields },
];
const inEars = (own: boolean | null = null) =>
  ['herons', 'choir'].flatMap((act) =>
    [1, 2].map((number) => ({
      id: `${act} ${number}`,
      actId: act,
      order: number,
      name: `Mix ${number}`,
      deviceKind: 'in-ear',
      ownDevice: own,
    })),
  );

const cases: { name: string; tables: FestivalRows; extra: number | null; words?: RegExp }[] = [
  {
    name: 'packs that are back and charged before the next hand-out are enough',
    tables: {
      mixes: inEars(),
      stockItems: packs({ count: 2, handOutMinutes: 5, returnMinutes: 5, chargeMinutes: 10 }),
    },
    extra: null,
  },
  {
    name: 'packs that charge for half an hour are missing in the next act',
    tables: { mixes: inEars(), stockItems: packs({ chargeMinutes: 30 }) },
    extra: 1,
    words: /Paper Herons and Tin Choir hold 4 together, and there are 3. 1 more would do/,
  },
  {
    name: 'packs that the band brings are not counted',
    tables: { mixes: inEars(true), stockItems: packs({ count: 0 }) },
    extra: null,
  },
  {
    name: 'one act alone may ask for more than there is',
    tables: { stockItems: [{ id: 'stands', rigId: 'rig', kind: 'stand', name: 'Tall', count: 0 }] },
    extra: 1,
    words: /Tall/,
  },
];

test.each(cases)('stock over the day: $name', ({ tables, extra, words }) => {
  const { collisions } = findStockCollisions(festivalDay(tables), 'day');
  expect(collisions.map((it) => it.extra)).toEqual(extra === null ? [] : [extra]);
  if (words) expect(collisions[0]?.what).toMatch(words);
});

test('a stand that stays with the house kit is one stand, however many acts play on it', () => {
  const onKit = [...festivalDay().sources.values()].map((row) =>
    row.name === 'Kick' ? { ...row, stand: 'short' } : row,
  );
  const stockItems = [
    {
      id: 'short',
      rigId: 'rig',
      kind: 'stand',
      name: 'Short',
      count: 1,
      handOutMinutes: 15,
      returnMinutes: 15,
    },
  ];
  expect(findStockCollisions(festivalDay({ sources: onKit, stockItems }), 'day').collisions).toEqual([]);
  const own = onKit.map((row) => ({ ...row, sharedLine: '' }));
  expect(findStockCollisions(festivalDay({ sources: own, stockItems }), 'day').collisions[0]?.extra).toBe(1);
});

test('what nobody has counted is told, with the most that one act asks for', () => {
  expect(findStockCollisions(festivalDay(), 'day').unlisted).toEqual([
    { kind: 'stand', name: 'tall', most: 1 },
    { kind: 'wedge', name: '', most: 1 },
  ]);
});
