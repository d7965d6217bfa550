import { describe, expect, test } from 'vitest';
import { deriveAct } from '../../../core/derive/derive-act.ts';
import { sheetOf, type TestRow } from '../../helpers/sheet-of.ts';

const on = (sourceId: string, amount: string) => ({ sourceId, amount });
const group = (name: string, amount: string) => ({ group: name, amount });
const sameAs = (sameAsMixId: string, rest: TestRow = {}) => ({ sameAsMixId, ...rest });

/** Start levels of every source in the first mix, from the wishes of up to three mixes. */
function levels(...wishesOfMixes: TestRow[][]): Record<string, number | null> {
  const { feeds } = deriveAct(
    sheetOf({
      sources: [
        { id: 'kick', kind: 'kick' },
        { id: 'snare', kind: 'snare' },
        { id: 'keys', kind: 'keys' },
        { id: 'lead', kind: 'lead vocal' },
      ],
      mixes: ['first', 'second', 'third'].map((id) => ({ id, deviceKind: 'in-ear' })),
      wishes: wishesOfMixes.flatMap((wishes, mixAt) =>
        wishes.map((wish, at) => ({
          id: `wish ${mixAt} ${at}`,
          mixId: ['first', 'second', 'third'][mixAt],
          ...wish,
        })),
      ),
    }),
  );
  return Object.fromEntries(feeds.map((row) => [row[0]?.sourceId, row[0]?.levelDb ?? null]));
}

const off = { kick: null, snare: null, keys: null, lead: null };

describe('what a mix asks for', () => {
  test.each<[string, TestRow[][], Record<string, number | null>]>([
    ['lots starts at 0 dB', [[on('lead', 'lots')]], { ...off, lead: 0 }],
    ['some starts at -6 dB', [[on('lead', 'some')]], { ...off, lead: -6 }],
    ['little starts at -12 dB', [[on('lead', 'little')]], { ...off, lead: -12 }],
    ['none is off', [[on('lead', 'none')]], off],
    ['a number of dB is taken as it is', [[{ sourceId: 'lead', levelDb: -4.5 }]], { ...off, lead: -4.5 }],
    ['drums are all drums', [[group('drums', 'some')]], { ...off, kick: -6, snare: -6 }],
    [
      'everything is every source',
      [[group('everything', 'little')]],
      { kick: -12, snare: -12, keys: -12, lead: -12 },
    ],
    [
      'a source goes before its group, wherever it stands',
      [[on('kick', 'lots'), group('drums', 'little')]],
      { ...off, kick: 0, snare: -12 },
    ],
    [
      'a group goes before everything, wherever it stands',
      [[group('drums', 'lots'), group('everything', 'little')]],
      { kick: 0, snare: 0, keys: -12, lead: -12 },
    ],
    [
      'of two equals the later one holds',
      [[on('kick', 'lots'), on('kick', 'little')]],
      { ...off, kick: -12 },
    ],
    [
      'all but the keys',
      [[group('everything', 'some'), on('keys', 'none')]],
      { kick: -6, snare: -6, keys: null, lead: -6 },
    ],
    ['only switches all others off', [[on('lead', 'only'), group('drums', 'some')]], { ...off, lead: 0 }],
    ['two onlys leave both', [[on('lead', 'only'), on('kick', 'only')]], { ...off, lead: 0, kick: 0 }],
    [
      'only a group leaves the group',
      [[group('drums', 'only'), on('lead', 'lots')]],
      { ...off, kick: 0, snare: 0 },
    ],
    [
      'within an only, a source may still have its own level',
      [[group('drums', 'only'), on('snare', 'little')]],
      { ...off, kick: 0, snare: -12 },
    ],
    [
      'an only that was taken back leaves the others',
      [[on('lead', 'only'), on('lead', 'some'), on('kick', 'some')]],
      { ...off, lead: -6, kick: -6 },
    ],
    [
      'the same as another mix',
      [[sameAs('second')], [on('kick', 'lots'), on('lead', 'some')]],
      { ...off, kick: 0, lead: -6 },
    ],
    [
      'the same as another mix, plus more of one source',
      [
        [sameAs('second'), on('lead', 'lots')],
        [on('kick', 'lots'), on('lead', 'some')],
      ],
      { ...off, kick: 0, lead: 0 },
    ],
    [
      'the same as another mix, without one source',
      [
        [on('lead', 'none'), sameAs('second')],
        [on('kick', 'lots'), on('lead', 'some')],
      ],
      { ...off, kick: 0 },
    ],
    [
      'the same sources as another mix, but little of them',
      [[sameAs('second', { amount: 'little' })], [on('kick', 'lots'), on('lead', 'none')]],
      { ...off, kick: -12 },
    ],
    [
      'the same as a mix that is the same as a third',
      [[sameAs('second')], [sameAs('third'), on('keys', 'some')], [on('kick', 'lots')]],
      { ...off, kick: 0, keys: -6 },
    ],
    [
      'an only of the other mix is part of what it holds',
      [
        [sameAs('second'), on('keys', 'some')],
        [on('lead', 'only'), on('kick', 'lots')],
      ],
      { ...off, lead: 0, keys: -6 },
    ],
    [
      'mixes in a circle hold what they ask for themselves',
      [
        [sameAs('second'), on('kick', 'lots')],
        [sameAs('first'), on('lead', 'lots')],
      ],
      { ...off, kick: 0 },
    ],
    [
      'a mix that is the same as itself holds nothing by that',
      [[sameAs('first'), on('kick', 'some')]],
      { ...off, kick: -6 },
    ],
    [
      'a wish for a source that is not there asks for nothing',
      [[on('theremin', 'only'), on('kick', 'some')]],
      { ...off, kick: -6 },
    ],
  ])('%s', (_, wishes, expected) => {
    expect(levels(...wishes)).toEqual(expected);
  });

  test('the words of a wish start where the rig says', () => {
    const { feeds } = deriveAct(
      sheetOf({
        rig: { lotsDb: -2, someDb: -5, littleDb: -9 },
        sources: [{ id: 'a' }, { id: 'b' }, { id: 'c' }],
        mixes: [{ id: 'mix' }],
        wishes: ['lots', 'some', 'little'].map((amount, at) => ({
          id: amount,
          mixId: 'mix',
          sourceId: 'abc'[at],
          amount,
        })),
      }),
    );
    expect(feeds.map((row) => row[0]?.levelDb)).toEqual([-2, -5, -9]);
  });

  test('a chain of thousands of mixes that name each other is followed to its end', () => {
    const count = 5000;
    const { feeds } = deriveAct(
      sheetOf({
        sources: [{ id: 'kick', kind: 'kick' }],
        mixes: Array.from({ length: count }, (_, at) => ({ id: `mix ${at}` })),
        wishes: [
          ...Array.from({ length: count - 1 }, (_, at) => ({
            id: `wish ${at}`,
            mixId: `mix ${at}`,
            sameAsMixId: `mix ${at + 1}`,
          })),
          { id: 'last', mixId: `mix ${count - 1}`, sourceId: 'kick', amount: 'some' },
        ],
      }),
    );
    expect(feeds[0]?.[0]?.levelDb).toBe(-6);
  });
});
