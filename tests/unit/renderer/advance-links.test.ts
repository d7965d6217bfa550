import { describe, expect, test } from 'vitest';
import { actSheet } from '../../../core/show/act-sheet.ts';
import { linkedTo, openLineCount } from '../../../renderer/advance/links.ts';
import { rowLinks } from '../../../renderer/advance/row-links.ts';
import { smallFestival } from '../../fixtures/small-festival.ts';
import { readInput, readingWith, readMix } from '../../helpers/small-reading.ts';

const at = (row: number) => ({ sheet: 0, row });
const line = (row: number, more: { inputKeys?: string[]; mixKeys?: string[]; questionKeys?: string[] }) => ({
  at: at(row),
  text: `line ${row}`,
  outcome: more.questionKeys ? ('question' as const) : ('understood' as const),
  why: '',
  inputKeys: [],
  mixKeys: [],
  questionKeys: [],
  ...more,
});
const question = {
  key: 'q',
  at: at(2),
  ask: 'What is it?',
  options: [],
  freeText: true,
  guessConfidence: 0,
  weight: 1,
};

const reading = readingWith({
  inputs: [
    readInput('i1', { lines: [at(1)], channel: 1, name: 'Kick in' }),
    readInput('i2', { lines: [at(2)], channel: 2, name: 'Kick out' }),
    readInput('i3', { lines: [at(2)], channel: 3, name: 'Snare' }),
  ],
  mixes: [readMix('m1', [], { lines: [at(4)], label: 'Mix 1' })],
  lines: [
    line(1, { inputKeys: ['i1'] }),
    line(2, { inputKeys: ['i2', 'i3'], questionKeys: ['q'] }),
    line(4, { mixKeys: ['m1'] }),
  ],
  questions: [question],
});

const keys = (linked: ReturnType<typeof linkedTo>) =>
  Object.fromEntries(Object.entries(linked).map(([name, set]) => [name, [...set]]));

describe('what belongs together on Advance', () => {
  test('a line lights up all it was read as, and its question', () => {
    expect(keys(linkedTo(reading, { of: 'line', at: at(2) }))).toEqual({
      lines: ['0:2'],
      inputs: ['i2', 'i3'],
      mixes: [],
      questions: ['q'],
    });
  });

  test('a question lights up its line and what that was read as', () => {
    expect(keys(linkedTo(reading, { of: 'question', key: 'q' }))).toEqual({
      lines: ['0:2'],
      inputs: ['i2', 'i3'],
      mixes: [],
      questions: ['q'],
    });
  });

  test('a source lights up its line and question, but not its neighbour on the line', () => {
    expect(keys(linkedTo(reading, { of: 'input', key: 'i2' }))).toEqual({
      lines: ['0:2'],
      inputs: ['i2'],
      mixes: [],
      questions: ['q'],
    });
  });

  test('a mix lights up its line', () => {
    expect(keys(linkedTo(reading, { of: 'mix', key: 'm1' }))).toMatchObject({
      lines: ['0:4'],
      mixes: ['m1'],
    });
  });

  test('pointing at nothing lights up nothing', () => {
    expect(keys(linkedTo(reading, null))).toEqual({ lines: [], inputs: [], mixes: [], questions: [] });
  });

  test('the counter counts the lines that wait for an answer', () => {
    expect(openLineCount(reading)).toBe(1);
  });
});

describe('rows of the act and the rider they came from', () => {
  const sheet = actSheet(smallFestival(), 'tarn');
  if (!sheet) throw new Error('the act is in the fixture');
  const links = rowLinks(sheet, reading);

  test('are joined by number and name, and by number alone where the name was put right', () => {
    expect(links.inputOfSource.get('tarn-s0')).toBe('i1');
    expect(links.inputOfSource.get('tarn-s1')).toBe('i2');
    expect(links.inputOfSource.get('tarn-s2')).toBe('i3');
    expect(links.inputOfSource.has('tarn-s9')).toBe(false);
  });

  test('are found from either side', () => {
    expect([...links.sourcesOf(new Set(['i1', 'i3']))]).toEqual(['tarn-s0', 'tarn-s2']);
    expect([...links.mixesOf(new Set(['m1']))]).toEqual(['tarn-m0']);
  });
});
