import { describe, expect, test } from 'vitest';
import { planAct } from '../../../core/plan/plan-act.ts';
import { sheetOf, type TestRow } from '../../helpers/sheet-of.ts';

/** "vocal foh 1": source, purpose and channel of every planned copy, in its order. */
function copiesOf(
  channelCount: number,
  sources: TestRow[],
  more: { copies?: TestRow[]; mixes?: TestRow[]; performers?: TestRow[] } = {},
): string[] {
  const { copies } = planAct(sheetOf({ rig: { channelCount }, sources, ...more }));
  return copies.map((copy) => `${copy.sourceId} ${copy.purpose} ${copy.channel}`);
}

const lead = { id: 'lead', kind: 'lead vocal' };
const keys = { id: 'keys', kind: 'keys' };
const kickIn = { id: 'kick in', kind: 'kick in' };
const kickOut = { id: 'kick out', kind: 'kick out' };

describe('the channels of an act', () => {
  test.each<[string, string[], string[]]>([
    [
      'sources keep their order',
      copiesOf(9, [keys, { id: 'organ', kind: 'organ' }]),
      ['keys foh 1', 'organ foh 2'],
    ],
    [
      'a vocal gets a copy for monitors after all sources',
      copiesOf(9, [lead, keys]),
      ['lead foh 1', 'lead monitors 3', 'keys foh 2'],
    ],
    [
      'keys, playback, click and talkback get none',
      copiesOf(9, [keys, { id: 'tracks', kind: 'playback' }, { id: 'talk', kind: 'talkback' }]),
      ['keys foh 1', 'tracks foh 2', 'talk foh 3'],
    ],
    [
      'what is for the monitors only has one channel',
      copiesOf(9, [{ ...lead, audience: 'monitors only' }]),
      ['lead monitors 1'],
    ],
    [
      'what is for the hall only has one channel',
      copiesOf(9, [{ ...lead, audience: 'front of house only' }]),
      ['lead foh 1'],
    ],
    ['what is not here has none', copiesOf(9, [{ ...lead, audience: 'not here' }]), []],
    [
      'a source before a copy: a full desk doubles nothing',
      copiesOf(2, [lead, keys]),
      ['lead foh 1', 'keys foh 2'],
    ],
    [
      'a desk that is too small leaves the last source without a channel',
      copiesOf(1, [lead, keys]),
      ['lead foh 1', 'keys foh null'],
    ],
    ['a desk without channels gives none', copiesOf(0, [lead]), ['lead foh null']],
    [
      'the lead vocal is doubled before the backing vocal',
      copiesOf(3, [{ id: 'backing', kind: 'backing vocal' }, lead]),
      ['backing foh 1', 'lead foh 2', 'lead monitors 3'],
    ],
    [
      'both kick microphones are doubled',
      copiesOf(4, [kickIn, kickOut]),
      ['kick in foh 1', 'kick in monitors 3', 'kick out foh 2', 'kick out monitors 4'],
    ],
    ['or none of them', copiesOf(3, [kickIn, kickOut]), ['kick in foh 1', 'kick out foh 2']],
    [
      'a pair costs two, and lies side by side',
      copiesOf(9, [
        { id: 'left', kind: 'violin', pairSourceId: 'right' },
        keys,
        { id: 'right', kind: 'violin', pairSourceId: 'left' },
      ]),
      ['left foh 1', 'left monitors 4', 'keys foh 3', 'right foh 2', 'right monitors 5'],
    ],
    [
      'a DI and a microphone of one player’s instrument belong together',
      copiesOf(3, [
        { id: 'di', kind: 'acoustic guitar', pickUp: 'di', performerId: 'ines' },
        { id: 'mic', kind: 'acoustic guitar', pickUp: 'mic', performerId: 'ines' },
      ]),
      ['di foh 1', 'mic foh 2'],
    ],
    [
      'two guitars of two players do not',
      copiesOf(3, [
        { id: 'one', kind: 'acoustic guitar', pickUp: 'di', performerId: 'ines' },
        { id: 'other', kind: 'acoustic guitar', pickUp: 'di', performerId: 'tam' },
      ]),
      ['one foh 1', 'one monitors 3', 'other foh 2'],
    ],
    [
      'a decided channel stays, and the others go around it',
      copiesOf(9, [keys, lead], { copies: [{ id: 'a', sourceId: 'lead', purpose: 'foh', channel: 1 }] }),
      ['keys foh 2', 'lead foh 1', 'lead monitors 3'],
    ],
    [
      'a copy that the engineer does not want is not made',
      copiesOf(9, [lead], { copies: [{ id: 'a', sourceId: 'lead', purpose: 'monitors', wanted: false }] }),
      ['lead foh 1'],
    ],
    [
      'a copy that the engineer wants is made, whatever the order says',
      copiesOf(9, [keys], { copies: [{ id: 'a', sourceId: 'keys', purpose: 'in-ears' }] }),
      ['keys foh 1', 'keys in-ears 2'],
    ],
    [
      'where one kick microphone must not be doubled, the other is not either',
      copiesOf(9, [kickIn, kickOut], {
        copies: [{ id: 'a', sourceId: 'kick in', purpose: 'monitors', wanted: false }],
      }),
      ['kick in foh 1', 'kick out foh 2'],
    ],
    [
      'of two vocals the one nearer to a wedge is doubled first',
      copiesOf(
        3,
        [
          { id: 'far', kind: 'vocal', xM: 5, yM: 5 },
          { id: 'near', kind: 'vocal', xM: 0, yM: 2 },
        ],
        { mixes: [{ id: 'mix', deviceKind: 'wedge', xM: 0, yM: 1 }] },
      ),
      ['far foh 1', 'near foh 2', 'near monitors 3'],
    ],
    [
      'a vocal stands where its performer does, where the plot does not say more',
      copiesOf(
        3,
        [
          { id: 'far', kind: 'vocal', performerId: 'ines' },
          { id: 'near', kind: 'vocal', performerId: 'tam' },
        ],
        {
          performers: [
            { id: 'ines', xM: 5, yM: 5 },
            { id: 'tam', xM: 0, yM: 2 },
          ],
          mixes: [{ id: 'mix', deviceKind: 'wedge', xM: 0, yM: 1 }],
        },
      ),
      ['far foh 1', 'near foh 2', 'near monitors 3'],
    ],
  ])('%s', (_, copies, expected) => {
    expect(copies).toEqual(expected);
  });

  test('what the order names and the desk has no room for is told, not dropped', () => {
    const { passedOver } = planAct(sheetOf({ rig: { channelCount: 2 }, sources: [kickIn, kickOut] }));
    expect(passedOver.map((it) => it.sourceId)).toEqual(['kick in', 'kick out']);
  });
});
