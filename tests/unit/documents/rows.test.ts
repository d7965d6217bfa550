import { describe, expect, test } from 'vitest';
import { findDelimiter, rowsFromDelimited } from '../../../electron/documents/rows-from-delimited.ts';
import { rowsFromText } from '../../../electron/documents/rows-from-text.ts';

describe('a table in text is known by its lines, not by its file name', () => {
  test.each([
    ['commas', 'ch,source,mic\n1,Kick,dyn\n2,Snare,dyn', ','],
    ['semicolons with commas inside', 'ch;source\n1;Kick, inside\n2;Snare, top', ';'],
    ['tabs', 'ch\tsource\n1\tKick\n2\tSnare', '\t'],
    ['bars', '| ch | source |\n|----|----|\n| 1 | Kick |', '|'],
    [
      'a heading above the table',
      'Tech rider 2026\n\nch;source;mic\n1;Kick;dyn\n2;Snare;dyn\n3;Hat;cond',
      ';',
    ],
    ['decimal commas in a table of semicolons', 'name;m;kg\nA;1,5;2,5\nB;2,5;3,5', ';'],
    ['the delimiter is written in the first line', 'sep=;\na,b;c\nd,e;f', ';'],
    ['a mail with commas', 'Hello,\nwe are five, two sing, one drums.\nThanks, see you', null],
    ['a list of words by commas', 'drums: kick, snare, hat, toms\nbass, guitar, keys', null],
    ['a list without any', '1 Kick\n2 Snare', null],
  ])('%s', (_, text, delimiter) => {
    expect(findDelimiter(text)).toBe(delimiter);
  });
});

describe('rows of a table keep every line', () => {
  test.each([
    [
      'the frame of a drawn table is no cell',
      '| ch | source |\n| 1 | Kick |',
      '|',
      [
        ['ch', 'source'],
        ['1', 'Kick'],
      ],
    ],
    [
      'an inch sign is no quotation',
      '1;16" floor tom;dyn\n2;14" snare;dyn',
      ';',
      [
        ['1', '16" floor tom', 'dyn'],
        ['2', '14" snare', 'dyn'],
      ],
    ],
    [
      'a quotation that is never closed swallows no line',
      '1,"Kick\n2,Snare\n3,Hat',
      ',',
      [
        ['1', '"Kick'],
        ['2', 'Snare'],
        ['3', 'Hat'],
      ],
    ],
    ['a line that names the delimiter is no line of the rider', 'sep=;\n1;Kick\n', ';', [['1', 'Kick']]],
    ['a blank line keeps its place', 'a,b\n\nc,d', ',', [['a', 'b'], [''], ['c', 'd']]],
  ] as const)('%s', (_, text, delimiter, rows) => {
    expect(rowsFromDelimited(text, delimiter)).toEqual(rows);
  });
});

describe('lines of a mail become rows', () => {
  test.each([
    [
      'two numbers that ran into the next column go back into theirs',
      '01  Kick         dynamic\n02  Snare        dynamic\n03  Bass         DI\n04-05 Keys (st)  2 x DI',
      [
        ['01', 'Kick', 'dynamic'],
        ['02', 'Snare', 'dynamic'],
        ['03', 'Bass', 'DI'],
        ['04-05', 'Keys (st)', '2 x DI'],
      ],
    ],
    [
      'prose is one cell a line',
      'Hello there\nwe need  two wedges',
      [['Hello there'], ['we need  two wedges']],
    ],
    [
      'columns of spaces',
      '1  Kick in    dyn\n2  Snare top  dyn',
      [
        ['1', 'Kick in', 'dyn'],
        ['2', 'Snare top', 'dyn'],
      ],
    ],
    [
      'a number of two digits close to its name',
      '9  Keys L     DI\n10 Keys R     DI\n11 Lead vox   mic',
      [
        ['9', 'Keys L', 'DI'],
        ['10', 'Keys R', 'DI'],
        ['11', 'Lead vox', 'mic'],
      ],
    ],
    [
      'an empty cell between two columns',
      '1   Kick     dyn     short\n2   Bass             none\n3   Vocal    dyn     tall',
      [
        ['1', 'Kick', 'dyn', 'short'],
        ['2', 'Bass', '', 'none'],
        ['3', 'Vocal', 'dyn', 'tall'],
      ],
    ],
    [
      'columns that are not aligned',
      '1  Kick  dyn\n2  Snare top  dyn\n3  Hat  cond',
      [
        ['1', 'Kick', 'dyn'],
        ['2', 'Snare top', 'dyn'],
        ['3', 'Hat', 'cond'],
      ],
    ],
    ['tabs inside a mail', 'Our list:\n1\tKick\n2\tSnare', [['Our list:'], ['1', 'Kick'], ['2', 'Snare']]],
    ['line ends of every kind', 'a\r\nb\rc\u2028d', [['a'], ['b'], ['c'], ['d']]],
    ['a blank line keeps its place', 'a\n\nb\n', [['a'], [''], ['b']]],
  ])('%s', (_, text, rows) => {
    expect(rowsFromText(text)).toEqual(rows);
  });
});
