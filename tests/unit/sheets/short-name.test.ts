import fc from 'fast-check';
import { expect, test } from 'vitest';
import { shortName } from '../../../core/sheets/short-name.ts';

const upTo = (most: number) => (text: string) => [...new Intl.Segmenter().segment(text)].length <= most;

test.each([
  { name: 'Kick in', most: 10, want: 'Kick in', why: 'what fits stays as it is' },
  { name: 'Kick (inside)', most: 6, want: 'Kick', why: 'what stands in brackets goes first' },
  { name: 'Snare bottom', most: 11, want: 'Snare bttm', why: 'vowels inside a word go before letters' },
  { name: 'Guitar stage left', most: 12, want: 'Gtr stg left', why: 'the longest words give first' },
  {
    name: 'Guitar solo amp stage left',
    most: 9,
    want: 'Gtr left',
    why: 'the first and the last word tell most',
  },
  { name: 'Ü', most: 1, want: 'Ü', why: 'one letter is always left' },
])('"$name" on a label of $most signs is "$want": $why', ({ name, most, want }) => {
  expect(shortName(name, upTo(most))).toBe(want);
});

test('a shortened name always fits, is never empty, and never tears an accent from its letter', () => {
  fc.assert(
    fc.property(
      fc.string({ unit: 'grapheme', minLength: 1 }),
      fc.integer({ min: 2, max: 20 }),
      (name, most) => {
        fc.pre(name.trim() !== '');
        const short = shortName(name, upTo(most));
        expect(short).not.toBe('');
        expect(upTo(most)(short), short).toBe(true);
      },
    ),
  );
});
