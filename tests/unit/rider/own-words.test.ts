import { describe, expect, test } from 'vitest';
import type { Grid } from '../../../core/rider/grid.ts';
import { ownWordsOfAct, taughtKind } from '../../../core/rider/own-words.ts';
import { readRider } from '../../../core/rider/read-rider.ts';
import { Act } from '../../../core/show/act.ts';
import { OwnWord } from '../../../core/show/own-word.ts';
import { showFromRows } from '../../../core/show/show.ts';

const grid: Grid = {
  name: 'rider',
  form: 'csv',
  sheets: [
    {
      name: 'Rider',
      rows: [
        ['Ch', 'Source'],
        ['1', 'Kick'],
        ['2', 'Tin can'],
      ],
    },
  ],
};

const show = showFromRows({
  acts: [
    Act.parse({ id: 'herons', dayId: 'day', order: 0, name: 'Paper  HÉRONS' }),
    Act.parse({ id: 'row', dayId: 'day', order: 1, name: 'Lantern Row' }),
  ],
  ownWords: [
    OwnWord.parse({ id: 'a', words: 'tin can', kind: 'spare vocal' }),
    OwnWord.parse({ id: 'h', words: 'tin can', kind: 'talkback', band: 'Paper Herons' }),
    OwnWord.parse({ id: 'r', words: 'big box', kind: 'percussion', band: 'Old name', actId: 'row' }),
  ],
});
const idsOf = (actId: string) => ownWordsOfAct(show, actId).map(({ id }) => id);

describe('a taught word', () => {
  test('holds for a band of the same name, however it is spelt, and goes before one for all bands', () => {
    expect(idsOf('herons')).toEqual(['h', 'a']);
    expect(readRider(grid, {}, ownWordsOfAct(show, 'herons')).inputs[1]?.kind).toBe('talkback');
  });

  test('holds on the act where it was taught also after that was renamed', () => {
    expect(idsOf('row')).toEqual(['r', 'a']);
    expect(readRider(grid, {}, ownWordsOfAct(show, 'row')).inputs[1]?.kind).toBe('spare vocal');
  });

  test('of an act that is gone is none', () => expect(idsOf('gone')).toEqual([]));
});

describe('what is learnt from an answer', () => {
  const question = readRider(grid).questions.find((it) => it.words === 'Tin can');
  const learnt = (value: string) =>
    question && taughtKind(question, readRider(grid, { [question.key]: value }));

  test.each([
    ['talkback', 'talkback'],
    ['the shout mic for talkback', 'talkback'],
    ['not a source', null],
  ])('%s teaches %s', (value, kind) => {
    expect(learnt(value)).toBe(kind);
  });

  test('a question that is not about words teaches nothing', () => {
    if (!question) throw new Error('The tin can is asked about');
    const { words, ...wordless } = question;
    expect(words).toBe('Tin can');
    expect(taughtKind(wordless, readRider(grid))).toBe(null);
  });
});
