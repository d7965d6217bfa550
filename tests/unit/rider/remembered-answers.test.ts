import { describe, expect, test } from 'vitest';
import { answersAsBefore, askedAndAnswered } from '../../../core/rider/again/remembered-answers.ts';
import type { Grid } from '../../../core/rider/grid.ts';
import { readRider } from '../../../core/rider/read-rider.ts';
import type { Answers } from '../../../core/rider/reading.ts';

const gridOf = (...rows: string[]): Grid => ({
  name: 'rider',
  form: 'csv',
  sheets: [{ name: 'Rider', rows: rows.map((row) => row.split('|').map((cell) => cell.trim())) }],
});
const reader = (grid: Grid) => (answers: Answers) => readRider(grid, answers);

const first = gridOf('Ch | Source', '1 | Kick', '2 | Tin can');
/** The first rider with its one question of a matter answered by an option or in own words. */
function earlier(value: string) {
  const read = reader(first);
  const question = read({}).questions.find((it) => it.key.startsWith('kind@'));
  if (!question) throw new Error('The tin can is asked about');
  return askedAndAnswered(read, { [question.key]: value });
}

/** Kind of the line of a name in a later rider, where earlier answers are taken over. */
function kindLater(rows: string[], value: string, name: string) {
  const read = reader(gridOf(...rows));
  const answers = answersAsBefore(read, earlier(value));
  return {
    kind: read(answers).inputs.find((it) => it.name === name)?.kind,
    count: Object.keys(answers).length,
  };
}

describe('an answer is remembered', () => {
  test('for the same word on another line, however it is spelt', () => {
    const rows = ['Nr | Source', '1 | Kick', '2 | Snare', '3 | TIN  CAN'];
    expect(kindLater(rows, 'lead vocal', 'TIN CAN')).toEqual({ kind: 'lead vocal', count: 1 });
  });

  test('also where it was in own words', () => {
    expect(kindLater(['Ch | Source', '4 | Tin can'], 'talkback mic', 'Tin can').kind).toBe('talkback');
  });

  test('but not for another word', () => {
    const rows = ['Ch | Source', '1 | Kick', '2 | Zorbulator'];
    expect(kindLater(rows, 'lead vocal', 'Zorbulator')).toEqual({ kind: 'other', count: 0 });
  });
});

test('what is answered on this rider already is not changed by what was said before', () => {
  const read = reader(first);
  const key = read({}).questions.find((it) => it.key.startsWith('kind@'))?.key ?? '';
  expect(answersAsBefore(read, earlier('lead vocal'), { [key]: 'percussion' })).toEqual({
    [key]: 'percussion',
  });
});

test('of two earlier answers the later one holds', () => {
  const read = reader(first);
  const answers = answersAsBefore(read, [...earlier('lead vocal'), ...earlier('percussion')]);
  expect(Object.values(answers)).toEqual(['percussion']);
});

test('a line that is offered as the answer is found again by its name, not by its place', () => {
  const voices = reader(gridOf('Ch | Source | Player', '1 | Vox | Ada', '2 | Vox | Ben', '3 | Vox | Cleo'));
  const moved = reader(
    gridOf('Title', 'Ch | Source | Player', '1 | Vox | Ada', '2 | Vox | Ben', '3 | Vox | Cleo'),
  );
  const question = voices({}).questions.find((it) => it.key.startsWith('lead vocal@'));
  const ben = question?.options.find((option) => option.label.startsWith('2 '));
  if (!question || !ben) throw new Error('The lead voice is asked about');
  const answers = answersAsBefore(moved, askedAndAnswered(voices, { [question.key]: ben.value }));
  expect(Object.values(answers)).not.toContain(ben.value);
  expect(moved(answers).inputs.map((it) => it.kind)).toEqual(['vocal', 'lead vocal', 'vocal']);
});
