import { describe, expect, test } from 'vitest';
import type { Grid } from '../../../core/rider/grid.ts';
import type { TaughtWord } from '../../../core/rider/language/taught-words.ts';
import { ownWordsOfAct, taughtMeaning } from '../../../core/rider/own-words.ts';
import { readRider } from '../../../core/rider/read-rider.ts';
import { Act } from '../../../core/show/act.ts';
import { type Meaning, OwnWord } from '../../../core/show/own-word.ts';
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

/** A band whose riders speak of "the girls", "the boss" and "bricks". */
const herons: Grid = {
  name: 'rider',
  form: 'text',
  sheets: [
    {
      name: 'Rider',
      rows: [
        ['Line-up'],
        ['Mara - lead vocals'],
        ['Bea - backing vocals'],
        ['Input list'],
        ['1 Kick'],
        ['2 Vox Mara'],
        ['3 Backing Vox Bea'],
        ['4 Backing Vox Cleo'],
        ['5 Tin can'],
        ['Monitors'],
        ['Mix 1 Bea: the girls a bit, kick bigtime, tin can'],
        ['Mix 2 Cleo: the boss loud, brick'],
      ],
    },
  ],
};

/** The wishes of a mix: what is heard, as the names of lines or a group, and how much. */
function wishesOf(number: number, ...taught: TaughtWord[]): string[] {
  const { mixes, inputs } = readRider(herons, {}, taught);
  const nameOf = new Map(inputs.map(({ key, name }) => [key, name]));
  const wishes = mixes.find((mix) => mix.number === number)?.wishes ?? [];
  return wishes.map(({ target, amount }) => {
    if (target.of === 'inputs')
      return `${target.inputKeys.map((key) => nameOf.get(key)).join(' + ')} ${amount}`;
    return `${target.of === 'group' ? target.group : target.of} ${amount}`;
  });
}

describe('a taught word means', () => {
  test.each<[string, number, TaughtWord, string]>([
    [
      'a group',
      1,
      { words: 'girls', of: 'group', kind: 'backing vocals' },
      'Backing Vox Bea + Backing Vox Cleo little',
    ],
    ['all voices', 1, { words: 'the girls', of: 'group', kind: 'vocals' }, 'vocals little'],
    [
      'lines by their names',
      1,
      { words: 'girls', of: 'lines', kind: 'Backing Vox Cleo; Vox Mara' },
      'Vox Mara + Backing Vox Cleo little',
    ],
    ['an amount', 1, { words: 'bigtime', of: 'amount', kind: 'lots' }, 'Kick lots'],
    ['a source, also in a wish', 1, { words: 'tin can', of: 'source', kind: 'talkback' }, 'Tin can some'],
    ['a performer', 2, { words: 'the boss', of: 'performer', kind: 'Mara' }, 'Vox Mara lots'],
  ])('%s', (_, mix, taught, wish) => {
    expect(wishesOf(mix, taught)).toContain(wish);
  });

  test('what is listened through', () => {
    const grid = {
      ...herons,
      sheets: [{ name: 'a', rows: [['1 Kick'], ['Monitors'], ['Mix 1 Bea, brick: kick']] }],
    };
    const deviceOf = (...taught: TaughtWord[]) => readRider(grid, {}, taught).mixes[0]?.deviceKind;
    expect(deviceOf()).toBe(null);
    expect(deviceOf({ words: 'brick', of: 'device', kind: 'wedge' })).toBe('wedge');
  });

  test('who listens', () => {
    const rows = [
      ['Line-up'],
      ['Mara - vocals'],
      ['1 Kick'],
      ['2 Vox Mara'],
      ['Monitors'],
      ['Mix 1 the boss: kick'],
    ];
    const grid = { ...herons, sheets: [{ name: 'a', rows }] };
    const listenersOf = (...taught: TaughtWord[]) => readRider(grid, {}, taught).mixes[0]?.listeners;
    expect(listenersOf({ words: 'boss', of: 'performer', kind: 'Mara' })).toEqual(['Mara']);
  });

  test('nothing where the list has no such line: it is asked about as before', () => {
    const taught: TaughtWord = { words: 'girls', of: 'lines', kind: 'Vox Nobody' };
    const asked = readRider(herons, {}, [taught]).questions.map(({ words }) => words);
    expect(asked).toContain('girls');
  });
});

test('every line where a taught word stands says so as its reason', () => {
  const taught: TaughtWord = { words: 'Tin-Can', of: 'source', kind: 'talkback' };
  const reasons = readRider(herons, {}, [taught]).lines.filter(({ text }) => /tin can/i.test(text));
  expect(reasons).toHaveLength(2);
  for (const { why } of reasons) expect(why).toContain('Your own word: “Tin-Can” means talkback.');
});

test('a meaning that is none is refused', () => {
  const refused = OwnWord.safeParse({ id: 'a', words: 'girls', of: 'group', kind: 'gizmos' });
  expect(refused.success).toBe(false);
  expect(OwnWord.parse({ id: 'a', words: 'tin can', kind: 'talkback' }).of).toBe('source');
});

describe('what is learnt from an answer', () => {
  const learnt = (words: string, value: string) => {
    const question = readRider(herons).questions.find((it) => it.words === words);
    return question && taughtMeaning(question, value, readRider(herons, { [question.key]: value }));
  };

  test.each<[string, string, Meaning | null]>([
    ['Tin can', 'talkback', { of: 'source', kind: 'talkback' }],
    ['Tin can', 'the shout mic for talkback', { of: 'source', kind: 'talkback' }],
    ['Tin can', 'not a source', null],
    ['girls', 'backing vocals', { of: 'group', kind: 'backing vocals' }],
    ['girls', 'vocals', { of: 'group', kind: 'vocals' }],
    ['girls', 'everything', { of: 'group', kind: 'everything' }],
    ['girls', 'Vox Mara', { of: 'lines', kind: 'Vox Mara' }],
    ['girls', 'Vox Mara and Backing Vox Cleo', { of: 'lines', kind: 'Vox Mara; Backing Vox Cleo' }],
    ['girls', 'leave out', null],
  ])('of %s, %s teaches %o', (words, value, meaning) => {
    expect(learnt(words, value)).toEqual(meaning);
  });

  test('a question that is not about words teaches nothing', () => {
    const question = readRider(herons).questions.find((it) => it.words === 'Tin can');
    if (!question) throw new Error('The tin can is asked about');
    const { words: _, ...wordless } = question;
    expect(taughtMeaning(wordless, 'talkback', readRider(herons))).toBe(null);
  });
});
