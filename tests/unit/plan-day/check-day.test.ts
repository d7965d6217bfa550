import { expect, test } from 'vitest';
import { checkDay } from '../../../core/plan/day/check-day.ts';
import { type FestivalRows, festivalDay, withFields } from '../../helpers/festival-day.ts';

const plain = festivalDay();
const only = (id: string) => [...plain.acts.values()].filter((act) => act.id === id);
const none = { sources: [], performers: [], mixes: [], listeners: [] };

const cases: { name: string; tables: FestivalRows; stops: boolean; words: RegExp }[] = [
  { name: 'no sockets', tables: { sockets: [] }, stops: true, words: /no sockets/ },
  {
    name: 'every socket reserved',
    tables: { sockets: [...plain.sockets.values()].map((row) => ({ ...row, reservedFor: 'truck' })) },
    stops: true,
    words: /reserved/,
  },
  { name: 'no acts', tables: { acts: [], ...none }, stops: true, words: /no acts/ },
  { name: 'no lines', tables: none, stops: true, words: /No act of Saturday has a line/ },
  {
    name: 'one act',
    tables: {
      acts: only('herons'),
      sources: [...plain.sources.values()].filter((row) => row.actId === 'herons'),
      mixes: [],
      listeners: [],
      performers: [],
    },
    stops: false,
    words: /one act/,
  },
  {
    name: 'sets that overlap',
    tables: { acts: withFields(plain, 'acts', 'choir', { startMinute: 990 }) },
    stops: false,
    words: /Tin Choir starts at 16:30, before Paper Herons ends at 16:40/,
  },
  {
    name: 'a set past midnight that starts counting again',
    tables: { acts: withFields(plain, 'acts', 'choir', { startMinute: 15, endMinute: 60 }) },
    stops: false,
    words: /past midnight/,
  },
  {
    name: 'a set that ends before it starts',
    tables: { acts: withFields(plain, 'acts', 'choir', { endMinute: 1010 }) },
    stops: false,
    words: /ends at 16:50, before it starts at 17:00/,
  },
  {
    name: 'zero crew',
    tables: { days: withFields(plain, 'days', 'day', { crewSize: 0 }) },
    stops: false,
    words: /no crew/,
  },
  {
    name: 'a sound check too short for its lines and mixes',
    tables: {
      acts: withFields(plain, 'acts', 'choir', { soundCheckStartMinute: 600, soundCheckEndMinute: 600 }),
    },
    stops: false,
    words: /sound check of Tin Choir has 0 min, and its lines and mixes take about 1/,
  },
  {
    name: 'a sound check after the set',
    tables: {
      acts: withFields(plain, 'acts', 'choir', { soundCheckStartMinute: 1100, soundCheckEndMinute: 1110 }),
    },
    stops: false,
    words: /sound check of Tin Choir comes after its set/,
  },
  {
    name: 'two sound checks at once',
    tables: {
      acts: ['herons', 'choir'].map((id) => ({
        ...plain.acts.get(id),
        soundCheckStartMinute: 600,
        soundCheckEndMinute: 620,
      })),
    },
    stops: false,
    words: /sound checks of Paper Herons and Tin Choir overlap/,
  },
  {
    name: 'a sound check during a set',
    tables: {
      acts: withFields(plain, 'acts', 'choir', { soundCheckStartMinute: 970, soundCheckEndMinute: 980 }),
    },
    stops: false,
    words: /sound check of Tin Choir falls into the set of Paper Herons/,
  },
];

test.each(cases)('before planning: $name', ({ tables, stops, words }) => {
  const doubts = checkDay(festivalDay(tables), 'day');
  const [doubt] = doubts;
  expect(doubts).toHaveLength(1);
  expect(doubt?.what).toMatch(words);
  expect(doubt?.stops).toBe(stops);
  expect(doubt?.todo).not.toBe('');
});

test('a plain day gives no doubt, also when it goes on past midnight', () => {
  expect(checkDay(plain, 'day')).toEqual([]);
  const acts = withFields(plain, 'acts', 'choir', { startMinute: 1470, endMinute: 1500 });
  expect(checkDay(festivalDay({ acts }), 'day')).toEqual([]);
});
