import { describe, expect, test } from 'vitest';
import { deriveAct } from '../../../core/derive/derive-act.ts';
import { trimsAfterGainMove } from '../../../core/derive/gain.ts';
import { casesOfKind, num } from '../../helpers/reference.ts';
import { sheetOf, type TestRow } from '../../helpers/sheet-of.ts';

function gainOf(source: TestRow, rig: TestRow = {}, copies: TestRow[] = []) {
  const sheet = sheetOf({
    rig: { gainOwner: 'front of house', ...rig },
    sources: [{ id: 'vocal', kind: 'lead vocal', pickUp: 'mic', ...source }],
    copies: copies.map((copy, at) => ({ id: `copy ${at}`, sourceId: 'vocal', ...copy })),
  });
  const gain = deriveAct(sheet).gains[0];
  if (!gain) throw new Error('There is no gain.');
  return { gain, rig: sheet.rig };
}

describe('the gain a source needs', () => {
  // With full scale at 0 dBu, a target of 0 dBFS and dBV turned into dBu, the gain is the output upside down.
  test.each(casesOfKind('level-units', 'mic-output-at-spl'))(
    'a microphone of $in.mV_per_Pa mV/Pa at $in.dB_SPL dB SPL gives $out.volts V ($from)',
    (row) => {
      const { gain } = gainOf(
        { sensitivityMvPerPa: num(row.in, 'mV_per_Pa'), expectedDbSpl: num(row.in, 'dB_SPL') },
        { targetLevelDbfs: 0, fullScaleDbu: 0 },
      );
      const volts = 'exact_volts' in row ? num(row, 'exact_volts') : num(row.out, 'volts');
      // 0 dBu is the square root of 0.6 V.
      expect(gain.neededDb).toBeCloseTo(-20 * Math.log10(volts / Math.sqrt(0.6)), 2);
    },
  );

  test.each(casesOfKind('level-units', 'dbfs-to-dbu'))(
    'a line of $out.dBu dBu reads $in.dBFS dBFS without gain by $in.scheme ($from)',
    (row) => {
      const fullScaleDbu = num(row.out, 'dBu') - num(row.in, 'dBFS');
      const { gain } = gainOf(
        { pickUp: 'line', expectedDbu: num(row.out, 'dBu') },
        { targetLevelDbfs: num(row.in, 'dBFS'), fullScaleDbu },
      );
      expect(gain.neededDb).toBeCloseTo(0, 6);
    },
  );

  test.each([
    ['without the sensitivity nobody knows', { expectedDbSpl: 100 }],
    ['without the level nobody knows', { sensitivityMvPerPa: 2 }],
    ['a DI has no sensitivity, only a level', { pickUp: 'di', sensitivityMvPerPa: 2, expectedDbSpl: 100 }],
  ])('%s', (_, source) => {
    expect(gainOf(source).gain.neededDb).toBeNull();
  });
});

describe('what a moved gain does to the trims', () => {
  const moved = { gainDb: 34, trimmedAtGainDb: 30 };

  test.each([
    [
      'the copy for monitors of a gain that FOH owns moves the other way',
      'front of house',
      { foh: 0, monitors: -4 },
    ],
    ['the FOH channel of a gain that monitors own moves the other way', 'monitors', { foh: -4, monitors: 0 }],
    ['where nobody owns it, FOH is taken to have moved it', null, { foh: 0, monitors: -4 }],
  ])('%s', (_, gainOwner, trims) => {
    const { gain } = gainOf({ ...moved, gainOwner }, { gainOwner: null });
    expect(Object.fromEntries(gain.trims.map((trim) => [trim.purpose, trim.setDb]))).toEqual(trims);
  });

  test('a trim that was set before moves from where it was', () => {
    const { gain } = gainOf(moved, {}, [{ purpose: 'monitors', trimDb: 3 }]);
    expect(gain.trims.find((trim) => trim.purpose === 'monitors')).toMatchObject({
      trimDb: 3,
      neededDb: -1,
      setDb: -1,
      shortDb: 0,
    });
  });

  test.each([
    ['down', { gainDb: 50, trimmedAtGainDb: 30 }, { setDb: -18, shortDb: -2 }],
    ['up', { gainDb: 10, trimmedAtGainDb: 30 }, { setDb: 18, shortDb: 2 }],
  ])('%s, the trim ends where the desk ends, and says what is missing', (_, source, expected) => {
    const { gain } = gainOf(source);
    expect(gain.trims.find((trim) => trim.purpose === 'monitors')).toMatchObject(expected);
  });

  test('before anybody touches it, the trims after a move can be read', () => {
    const { gain, rig } = gainOf({});
    expect(trimsAfterGainMove(gain, 6, rig).map(({ purpose, setDb }) => [purpose, setDb])).toEqual([
      ['foh', 0],
      ['monitors', -6],
    ]);
  });

  test('a move and its way back leave every trim as it was', () => {
    const { gain, rig } = gainOf(moved);
    const back = trimsAfterGainMove(gain, -4, rig);
    expect(back.map(({ setDb, shortDb }) => [setDb, shortDb])).toEqual([
      [0, 0],
      [0, 0],
    ]);
  });
});
