import { describe, expect, test } from 'vitest';
import { rowsOfReading } from '../../../core/rider/again/rows-of-reading.ts';
import type { Reading } from '../../../core/rider/reading.ts';
import type { RowOf, TableName } from '../../../core/show/show.ts';
import {
  readInput as input,
  readMix as mix,
  readingWith,
  readWish as wish,
} from '../../helpers/small-reading.ts';

function rowsOf<T extends TableName>(table: T, reading: Partial<Reading>): RowOf<T>[] {
  let count = 0;
  const puts = rowsOfReading(readingWith(reading), 'act', () => `id${++count}`);
  return puts.filter((it) => it.table === table).map((it) => it.row as RowOf<T>);
}

describe('a reading becomes the rows of an act', () => {
  test('a line keeps its number and its name, and its performer is a row of the act', () => {
    const reading = { inputs: [input('Kick', { channel: 7, performer: 'Kes' })] };
    const [performer] = rowsOf('performers', reading);
    expect(performer?.name).toBe('Kes');
    expect(rowsOf('sources', reading)[0]).toMatchObject({
      name: 'Kick',
      riderLine: 7,
      performerId: performer?.id,
    });
  });

  test('both sides of a pair name each other', () => {
    const [left, right] = rowsOf('sources', {
      inputs: [input('Keys L', { pairKey: 'Keys R' }), input('Keys R', { pairKey: 'Keys L' })],
    });
    expect(left?.pairSourceId).toBe(right?.id);
    expect(right?.pairSourceId).toBe(left?.id);
  });

  test('a name too long for a label is kept whole in the notes', () => {
    const long = 'n'.repeat(10_000);
    const [source] = rowsOf('sources', { inputs: [input(long, { notes: 'loud' })] });
    expect(source?.name).toHaveLength(200);
    expect(source?.notes).toBe(`${long}\nloud`);
  });

  test('a line without a name is called by its kind', () => {
    expect(rowsOf('sources', { inputs: [input('a', { name: ' ', kind: 'click' })] })[0]?.name).toBe('click');
  });

  test('who listens is joined to the mix once', () => {
    const listeners = rowsOf('listeners', {
      mixes: [mix('Mix 1', [], { listeners: ['Ada', 'Ben', 'Ada'] })],
    });
    expect(listeners).toHaveLength(2);
  });

  test.each([
    [
      'a source just named is wished for as some',
      wish({ of: 'group', group: 'bass' }),
      { amount: 'some', levelDb: null },
    ],
    [
      'a level in dB goes before a word',
      wish({ of: 'everything' }, { amount: 'lots', levelDb: -4 }),
      { amount: null, levelDb: -4 },
    ],
    [
      'a level beyond any desk is held to what a row can say',
      wish({ of: 'everything' }, { levelDb: 99 }),
      { levelDb: 20 },
    ],
  ])('%s', (_, asked, expected) => {
    const [row] = rowsOf('wishes', { mixes: [mix('Mix 1', [asked])] });
    expect(row).toMatchObject({ ...expected, confirmed: false });
  });

  test('a wish for several lines is a wish for each', () => {
    const asked = wish({ of: 'inputs', inputKeys: ['Kick', 'Snare'] }, { amount: 'lots', words: 'drums up' });
    const rows = rowsOf('wishes', {
      inputs: [input('Kick'), input('Snare')],
      mixes: [mix('Mix 1', [asked])],
    });
    expect(rows.map((row) => [row.words, row.amount])).toEqual([
      ['drums up', 'lots'],
      ['drums up', 'lots'],
    ]);
  });

  test('another mix is taken as it is, and no mix is the same as itself', () => {
    const mixes = [
      mix('Mix 1', [wish({ of: 'mix', mixKey: 'Mix 1' })]),
      mix('Mix 2', [wish({ of: 'mix', mixKey: 'Mix 1' })]),
    ];
    const [first] = rowsOf('mixes', { mixes });
    expect(rowsOf('wishes', { mixes })).toMatchObject([
      { sameAsMixId: first?.id, amount: null, levelDb: null },
    ]);
  });
});
