import { describe, expect, test } from 'vitest';
import { levelWord } from '../../../electron/command-line/report-words.ts';
import { textTable } from '../../../electron/command-line/text-table.ts';

type Row = { line: number | null; name: string };
const columns = [
  { title: 'Line', right: true, cell: (row: Row) => row.line },
  { title: 'Name', cell: (row: Row) => row.name },
  { title: 'x', cell: () => '' },
];

describe('a table in a terminal', () => {
  test.each([
    ['no rows, no table', [], ''],
    [
      'numbers stand to the right, what is missing is a dash',
      [
        { line: 9, name: 'Kick' },
        { line: null, name: 'Lead vocal' },
      ],
      'Line  Name        x\n   9  Kick        -\n   -  Lead vocal  -',
    ],
    [
      'a line break in a name breaks no row',
      [{ line: 1, name: 'Kick\nin' }],
      'Line  Name     x\n   1  Kick in  -',
    ],
    [
      'an emoji takes two places',
      [
        { line: 1, name: '🥁ab' },
        { line: 2, name: 'abcd' },
      ],
      'Line  Name  x\n   1  🥁ab  -\n   2  abcd  -',
    ],
  ])('%s', (_, rows, text) => {
    expect(textTable(columns, rows)).toBe(text);
  });
});

test.each([
  [null, 'off'],
  [0, '0 dB'],
  [-6, '-6 dB'],
  [-7.46, '-7.5 dB'],
  [2, '+2 dB'],
])('a level of %s is written %s', (levelDb, text) => {
  expect(levelWord(levelDb)).toBe(text);
});
