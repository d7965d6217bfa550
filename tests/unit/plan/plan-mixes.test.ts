import { describe, expect, test } from 'vitest';
import { planAct } from '../../../core/plan/plan-act.ts';
import { rows, sheetOf, type TestRow, type TestRows } from '../../helpers/sheet-of.ts';

const wedge = (id: string, more: TestRow = {}) => ({ id, deviceKind: 'wedge', format: 'mono', ...more });
const ears = (id: string, more: TestRow = {}) => ({ id, deviceKind: 'in-ear', format: 'stereo', ...more });
const mixesOf = (given: TestRows) => planAct(sheetOf(given)).mixes;
const decide = (about: string, mixId: string, what: TestRow) => ({
  id: `${about} ${mixId}`,
  about,
  mixId,
  ...what,
});

describe('buses', () => {
  const busesOf = (mixes: TestRow[], count: number, more: TestRows = {}) =>
    mixesOf({ mixes, buses: rows(count, { id: 'bus' }), ...more }).map((mix) =>
      mix.busIds.map((id) => Number(id.slice(4))),
    );

  test.each<[string, number[][], number[][]]>([
    ['mixes in order', busesOf([wedge('a'), wedge('b')], 8), [[1], [2]]],
    ['a stereo mix on an odd one and the next', busesOf([wedge('a'), ears('b')], 8), [[1], [3, 4]]],
    [
      'a mono mix fills the gap that a stereo one left',
      busesOf([wedge('a'), ears('b'), wedge('c')], 8),
      [[1], [3, 4], [2]],
    ],
    ['stereo mixes first where the order leaves one out', busesOf([wedge('a'), ears('b')], 3), [[3], [1, 2]]],
    ['what does not fit has none', busesOf([ears('a'), ears('b')], 3), [[1, 2], []]],
    [
      'a mix made elsewhere takes none',
      busesOf([ears('a', { mixedAt: 'elsewhere' }), wedge('b')], 8),
      [[], [1]],
    ],
    [
      'a decided one, and its partner',
      busesOf([ears('a'), wedge('b')], 8, { decisions: [decide('bus', 'a', { busId: 'bus 4' })] }),
      [[3, 4], [1]],
    ],
    [
      'not the bus of the cue',
      busesOf([wedge('a')], 8, { cueOutputs: [{ id: 'cue', kind: 'wedge', busId: 'bus 1' }] }),
      [[2]],
    ],
  ])('%s', (_, buses, expected) => {
    expect(buses).toEqual(expected);
  });
});

describe('devices', () => {
  const stock: TestRow[] = [
    { id: 'engineer', kind: 'in-ear', forCue: true },
    { id: 'kept', kind: 'in-ear', reservedFor: 'spare' },
    { id: 'mono pack', kind: 'in-ear' },
    { id: 'stereo pack', kind: 'in-ear', format: 'stereo' },
    { id: 'wedge 1', kind: 'wedge' },
    { id: 'wedge 2', kind: 'wedge' },
  ];
  const devicesOf = (mixes: TestRow[], more: TestRows = {}) =>
    mixesOf({ mixes, devices: stock, ...more }).map((mix) => mix.deviceIds);

  test.each<[string, string[][], string[][]]>([
    ['of the right kind and format', devicesOf([ears('a')]), [['stereo pack']]],
    [
      'of the other format when those are used up',
      devicesOf([ears('a'), ears('b')]),
      [['stereo pack'], ['mono pack']],
    ],
    ['as many as the mix asks for', devicesOf([wedge('a', { deviceCount: 2 })]), [['wedge 1', 'wedge 2']]],
    [
      'fewer when the house has no more',
      devicesOf([wedge('a', { deviceCount: 3 })]),
      [['wedge 1', 'wedge 2']],
    ],
    ['none of the house when the band brings its own', devicesOf([ears('a', { ownDevice: true })]), [[]]],
    ['none when nobody has said what it is heard through', devicesOf([{ id: 'a', deviceKind: null }]), [[]]],
    [
      'the decided one',
      devicesOf([wedge('a'), wedge('b')], { decisions: [decide('device', 'b', { deviceId: 'wedge 1' })] }),
      [['wedge 2'], ['wedge 1']],
    ],
  ])('%s', (_, devices, expected) => {
    expect(devices).toEqual(expected);
  });

  test.each([
    ['in-ears that nobody has said the format of are stereo if the house has stereo packs', stock, 'stereo'],
    ['and mono if it has none', stock.filter((device) => device.format !== 'stereo'), 'mono'],
  ])('%s', (_, devices, format) => {
    expect(mixesOf({ mixes: [ears('a', { format: null })], devices })[0]?.format).toBe(format);
  });
});

describe('outputs', () => {
  const house: TestRows = {
    boxes: [
      { id: 'A', xM: -4, yM: 2 },
      { id: 'B', xM: 4, yM: 2 },
    ],
    outputs: [
      { id: 'record', place: 'record', number: 1 },
      { id: 'net', place: 'network', number: 1 },
      ...rows(2, { id: 'A', place: 'stage box', boxId: 'A' }),
      ...rows(3, { id: 'B', place: 'stage box', boxId: 'B' }),
    ],
  };
  const outputsOf = (mixes: TestRow[], more: TestRows = {}) =>
    mixesOf({ ...house, mixes, ...more }).map((mix) => mix.outputIds);

  test.each<[string, string[][], string[][]]>([
    ['on boxes before the network', outputsOf([wedge('a')]), [['A 1']]],
    ['nearest to where the mix is heard', outputsOf([wedge('a', { xM: 3, yM: 1 })]), [['B 1']]],
    ['two side by side for a stereo mix', outputsOf([wedge('a'), ears('b')]), [['A 1'], ['B 1', 'B 2']]],
    [
      'on the network when the boxes are full, never on a record feed',
      outputsOf(['a', 'b', 'c', 'd', 'e', 'f', 'g'].map((id) => wedge(id))),
      [['A 1'], ['A 2'], ['B 1'], ['B 2'], ['B 3'], ['net'], []],
    ],
    [
      'never on an output of the cue',
      outputsOf([wedge('a')], { cueOutputs: [{ id: 'cue', kind: 'wedge', outputId: 'A 1' }] }),
      [['A 2']],
    ],
    [
      'where its device is wired, so that it keeps it from act to act',
      outputsOf([wedge('a'), wedge('b')], { devices: [{ id: 'x', kind: 'wedge', outputId: 'B 3' }] }),
      [['B 3'], ['A 1']],
    ],
    [
      'at every output that its devices are wired to',
      outputsOf([wedge('a', { deviceCount: 2 })], {
        devices: [
          { id: 'x', kind: 'wedge', outputId: 'B 3' },
          { id: 'y', kind: 'wedge', outputId: 'B 1' },
        ],
      }),
      [['B 3', 'B 1']],
    ],
    [
      'where it was decided, even on a record feed',
      outputsOf([wedge('a')], { decisions: [decide('output', 'a', { outputId: 'record' })] }),
      [['record']],
    ],
    [
      'a decided one and the next for a stereo mix',
      outputsOf([ears('a')], { decisions: [decide('output', 'a', { outputId: 'B 2' })] }),
      [['B 2', 'B 3']],
    ],
    ['to the pack of the band from this desk', outputsOf([ears('a', { ownDevice: true })]), [['A 1', 'A 2']]],
  ])('%s', (_, outputs, expected) => {
    expect(outputs).toEqual(expected);
  });
});
