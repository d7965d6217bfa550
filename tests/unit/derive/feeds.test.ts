import { describe, expect, test } from 'vitest';
import { deriveAct } from '../../../core/derive/derive-act.ts';
import type { Feed } from '../../../core/derive/derived.ts';
import { sheetOf, type TestRow, type TestRows } from '../../helpers/sheet-of.ts';

/** The feed of the only source into the only mix. */
function feedOf({
  source,
  mix,
  wish,
  ...rest
}: TestRows & { source?: TestRow; mix?: TestRow; wish?: TestRow | null }): Feed {
  const derived = deriveAct(
    sheetOf({
      sources: [{ id: 'vocal', kind: 'keys', ...source }],
      mixes: [{ id: 'mix', deviceKind: 'wedge', ...mix }],
      wishes: wish === null ? [] : [{ id: 'wish', mixId: 'mix', sourceId: 'vocal', amount: 'some', ...wish }],
      ...rest,
    }),
  );
  const feed = derived.feeds[0]?.[0];
  if (!feed) throw new Error('There is no feed.');
  return feed;
}

const copies = (...purposes: string[]) => ({
  copies: purposes.map((purpose, at) => ({ id: `copy ${at}`, sourceId: 'vocal', purpose, channel: at + 20 })),
});
const choose = (purpose: string) => ({
  id: 'choice',
  actId: 'act',
  about: 'feed',
  mixId: 'mix',
  sourceId: 'vocal',
  purpose,
});

describe('which copy feeds a mix', () => {
  test.each<[string, Parameters<typeof feedOf>[0], Partial<Feed>]>([
    [
      'a mix without a wish for the source gets none',
      { wish: null },
      { step: 'no wish', purpose: null, levelDb: null },
    ],
    [
      'a wish for none is no feed',
      { wish: { amount: 'none' } },
      { step: 'no wish', purpose: null, amount: 'none' },
    ],
    [
      'without a copy for monitors the FOH channel feeds it',
      {},
      { step: 'foh channel', purpose: 'foh', channel: 1 },
    ],
    [
      'a copy for monitors goes before the FOH channel',
      copies('monitors'),
      { step: 'monitor copy', purpose: 'monitors', channel: 20 },
    ],
    [
      'a wedge takes the copy for wedges before the one for monitors',
      copies('monitors', 'wedges', 'in-ears'),
      { step: 'copy for this kind of device', purpose: 'wedges', channel: 21 },
    ],
    [
      'a fill takes the copy for wedges too',
      { ...copies('monitors', 'wedges', 'in-ears'), mix: { deviceKind: 'side fill' } },
      { step: 'copy for this kind of device', purpose: 'wedges' },
    ],
    [
      'in-ears take the copy for in-ears',
      { ...copies('monitors', 'wedges', 'in-ears'), mix: { deviceKind: 'in-ear' } },
      { step: 'copy for this kind of device', purpose: 'in-ears', channel: 22 },
    ],
    [
      'a mix that nobody has said the device of takes the copy for monitors',
      { ...copies('monitors', 'wedges', 'in-ears'), mix: { deviceKind: null } },
      { step: 'monitor copy', purpose: 'monitors' },
    ],
    [
      'what the engineer chose goes before all of them',
      { ...copies('monitors', 'wedges'), decisions: [choose('foh')] },
      { step: 'chosen by the engineer', purpose: 'foh', decided: true },
    ],
    [
      'a wish for none goes before what the engineer chose',
      { ...copies('monitors'), decisions: [choose('foh')], wish: { amount: 'none' } },
      { step: 'no wish', purpose: null, decided: false },
    ],
    [
      'a chosen copy that is not there is passed over',
      { decisions: [choose('in-ears')] },
      { step: 'foh channel', purpose: 'foh' },
    ],
    [
      'a parallel channel feeds no mix by itself',
      { source: { audience: 'not here' }, ...copies('parallel') },
      { step: 'not through this desk', purpose: null },
    ],
    [
      'a parallel channel feeds a mix that the engineer chose it for',
      { ...copies('parallel'), decisions: [choose('parallel')] },
      { step: 'chosen by the engineer', purpose: 'parallel' },
    ],
    [
      'what is heard in the monitors only has its one channel there',
      { source: { audience: 'monitors only' } },
      { step: 'monitor copy', purpose: 'monitors', channel: 1 },
    ],
    [
      'what is not to be heard through this desk feeds nothing',
      { source: { audience: 'not here' } },
      { step: 'not through this desk', purpose: null, channel: null, levelDb: null },
    ],
    [
      'a copy for which the desk has no channel left feeds nothing, and the next one stands in',
      { rig: { channelCount: 1 }, copies: [{ id: 'copy', sourceId: 'vocal', purpose: 'monitors' }] },
      { step: 'foh channel', purpose: 'foh', channel: 1 },
    ],
    [
      'a mix made on another desk gets nothing from this one',
      { mix: { mixedAt: 'elsewhere' } },
      { step: 'mixed elsewhere', purpose: null, levelDb: null },
    ],
    [
      'what is for front of house only reaches a mix that asks for it by name',
      { source: { audience: 'front of house only' } },
      { step: 'foh channel', purpose: 'foh' },
    ],
    [
      'what is for front of house only is no part of everything',
      { source: { audience: 'front of house only' }, wish: { sourceId: null, group: 'everything' } },
      { step: 'no wish', purpose: null },
    ],
    ['sends are pre-fader', {}, { tap: 'pre-fader' }],
    [
      'a tap that was decided stays',
      {
        decisions: [
          { id: 'tap', actId: 'act', about: 'tap', mixId: 'mix', sourceId: 'vocal', tap: 'post-fader' },
        ],
      },
      { tap: 'post-fader', decided: true },
    ],
    [
      'a level that was decided goes before the wish',
      {
        decisions: [
          { id: 'level', actId: 'act', about: 'level', mixId: 'mix', sourceId: 'vocal', levelDb: -3 },
        ],
      },
      { levelDb: -3, decided: true },
    ],
    [
      'nothing starts above unity, whoever decided it',
      {
        decisions: [
          { id: 'level', actId: 'act', about: 'level', mixId: 'mix', sourceId: 'vocal', levelDb: 5 },
        ],
      },
      { levelDb: 0 },
    ],
    [
      'nothing starts above unity, whoever asks for it',
      { wish: { amount: null, levelDb: 12 } },
      { levelDb: 0 },
    ],
  ])('%s', (_, rows, expected) => {
    expect(feedOf(rows)).toMatchObject(expected);
  });

  test('a source never feeds a mix twice, except where the engineer wants it so', () => {
    const derived = deriveAct(
      sheetOf({
        sources: [{ id: 'vocal', kind: 'keys' }],
        mixes: [{ id: 'mix', deviceKind: 'wedge' }],
        wishes: [{ id: 'wish', mixId: 'mix', sourceId: 'vocal', amount: 'some' }],
        copies: [{ id: 'copy', sourceId: 'vocal', purpose: 'monitors', channel: 9 }],
        decisions: [{ about: 'second feed', id: 'second', mixId: 'mix', sourceId: 'vocal', purpose: 'foh' }],
      }),
    );
    expect(derived.secondFeeds).toMatchObject([{ purpose: 'foh', channel: 1, levelDb: -6 }]);
  });
});
