import { describe, expect, test } from 'vitest';
import { planAct } from '../../../core/plan/plan-act.ts';
import { rows, sheetOf, type TestRow, type TestRows } from '../../helpers/sheet-of.ts';

/** Two boxes of four sockets: A at stage right, B at stage left. */
const stage = (): TestRows => ({
  boxes: [
    { id: 'A', xM: -4, yM: 2, reachM: 5 },
    { id: 'B', xM: 4, yM: 2, reachM: 5 },
  ],
  sockets: [...rows(4, { id: 'A', boxId: 'A' }), ...rows(4, { id: 'B', boxId: 'B' })],
});

function patchOf(sources: TestRow[], more: TestRows = {}) {
  const { patches } = planAct(sheetOf({ ...stage(), sources, ...more }));
  return patches.map((patch) => patch.socketId);
}

const left = { id: 'left', pairSourceId: 'right' };
const right = { id: 'right', pairSourceId: 'left' };

describe('where sources are plugged', () => {
  test.each<[string, (string | null)[], (string | null)[]]>([
    ['without places, in order', patchOf([{ id: 'a' }, { id: 'b' }]), ['A 1', 'A 2']],
    [
      'at the nearest box',
      patchOf([
        { id: 'a', xM: 3, yM: 2 },
        { id: 'b', xM: -3, yM: 2 },
      ]),
      ['B 1', 'A 1'],
    ],
    [
      'at the box nearest to its performer where the plot does not say where it stands itself',
      patchOf(
        [
          { id: 'a', performerId: 'ines' },
          { id: 'b', performerId: 'ines', xM: -3, yM: 2 },
          { id: 'c', performerId: 'gone' },
        ],
        { performers: [{ id: 'ines', xM: 3, yM: 2 }] },
      ),
      ['B 1', 'A 1', 'A 2'],
    ],
    [
      'at the next box when the nearest is full',
      patchOf(Array.from({ length: 5 }, (_, at) => ({ id: `${at}`, xM: -1, yM: 2 }))),
      ['A 1', 'A 2', 'A 3', 'A 4', 'B 1'],
    ],
    [
      'at the nearest box with room even where no cable reaches',
      patchOf([{ id: 'a', xM: -20, yM: 2 }]),
      ['A 1'],
    ],
    [
      'not at a reserved socket',
      patchOf([{ id: 'a' }], {
        sockets: [
          { id: 'A 1', boxId: 'A', reservedFor: 'broken' },
          { id: 'A 2', boxId: 'A' },
        ],
      }),
      ['A 2'],
    ],
    [
      'not where a spare line waits',
      patchOf([{ id: 'a' }], {
        alternates: [{ id: 'x', sourceId: 'a', kind: 'spare line', socketId: 'A 1' }],
      }),
      ['A 2'],
    ],
    ['a pair side by side', patchOf([left, { id: 'b' }, right]), ['A 1', 'A 3', 'A 2']],
    [
      'a pair apart where no two sockets lie side by side',
      patchOf([left, right], {
        sockets: [
          { id: 'A 1', boxId: 'A' },
          { id: 'B 1', boxId: 'B', number: 1 },
        ],
      }),
      ['A 1', 'B 1'],
    ],
    [
      'where it was decided, and the others around it',
      patchOf([{ id: 'a' }, { id: 'b' }], {
        decisions: [{ id: 'x', about: 'socket', sourceId: 'b', socketId: 'A 1' }],
      }),
      ['A 2', 'A 1'],
    ],
    [
      'nowhere when the stage is full',
      patchOf([{ id: 'a' }, { id: 'b' }], { sockets: [{ id: 'A 1', boxId: 'A' }] }),
      ['A 1', null],
    ],
    ['nowhere when it is not here', patchOf([{ id: 'a', audience: 'not here' }]), [null]],
    ['nowhere when it is an effect inside the desk', patchOf([{ id: 'a', kind: 'effect return' }]), [null]],
    [
      'at a socket when the effect is a box on stage',
      patchOf([{ id: 'a', kind: 'effect return', pickUp: 'line' }]),
      ['A 1'],
    ],
    ['nowhere when it is a mix that comes back', patchOf([{ id: 'a', returnsMixId: 'mix' }]), [null]],
    [
      'what 48 V harms, not in a bank that needs it',
      patchOf(
        [
          { id: 'a', phantom: 'needed' },
          { id: 'b', phantom: 'harmful' },
        ],
        {
          boxes: [{ id: 'A', phantomBankSize: 2 }, { id: 'B' }],
        },
      ),
      ['A 1', 'A 3'],
    ],
  ])('%s', (_, patch, expected) => {
    expect(patch).toEqual(expected);
  });
});

describe('phantom power', () => {
  const powered = (sources: TestRow[], more: TestRows = {}) =>
    planAct(sheetOf({ ...stage(), boxes: [{ id: 'A', phantomBankSize: 4 }], sources, ...more })).patches.map(
      (it) => it.phantomOn,
    );
  const decide = (sourceId: string, on: boolean) => ({
    id: `${sourceId} ${on}`,
    about: 'phantom',
    sourceId,
    on,
  });

  test.each<[string, boolean[], boolean[]]>([
    ['is on for what needs it', powered([{ id: 'a', phantom: 'needed' }]), [true]],
    ['is off where nobody has said', powered([{ id: 'a' }]), [false]],
    ['is off for what it harms', powered([{ id: 'a', phantom: 'harmful' }]), [false]],
    [
      'is on for a whole bank that one source needs it in',
      powered([{ id: 'a', phantom: 'needed' }, { id: 'b' }]),
      [true, true],
    ],
    [
      'stays as it was decided',
      powered([{ id: 'a', phantom: 'needed' }], { decisions: [decide('a', false)] }),
      [false],
    ],
    [
      'is off where two decisions on one switch contradict each other',
      powered([{ id: 'a' }, { id: 'b' }], { decisions: [decide('a', true), decide('b', false)] }),
      [false, false],
    ],
  ])('%s', (_, states, expected) => {
    expect(states).toEqual(expected);
  });
});
