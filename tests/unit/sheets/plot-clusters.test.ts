import { expect, test } from 'vitest';
import { clusterLines, numbersText } from '../../../core/sheets/plot-clusters.ts';
import { viewActOfShow } from '../../../core/sheets/view-show.ts';
import { paperShow } from '../../helpers/paper-show.ts';

test.each([
  { numbers: [3, 1, 2], want: '1-3' },
  { numbers: [1, 3], want: '1, 3' },
  { numbers: [7], want: '7' },
  { numbers: [], want: '' },
])('lines $numbers are told as "$want"', ({ numbers, want }) => {
  expect(numbersText(numbers)).toBe(want);
});

test('every line with a place is under exactly one dot of the plot', () => {
  const view = viewActOfShow(paperShow([{ name: 'Paper Herons', lines: 96, mixes: 2 }]), 'act-0');
  const dots = clusterLines(view?.lines ?? []);
  const told = dots.flatMap(({ lines }) => lines.map(({ line }) => line)).sort((a, b) => a - b);
  expect(told).toEqual(Array.from({ length: 96 }, (_, at) => at + 1));
});

test('lines that stand together, as at a drum kit, share one dot', () => {
  const view = viewActOfShow(paperShow([{ name: 'Paper Herons', lines: 8, mixes: 1 }]), 'act-0');
  const together =
    view?.lines.map((it, at) => ({ ...it, source: { ...it.source, xM: at * 0.05, yM: 4 } })) ?? [];
  expect(clusterLines(together).map(({ lines }) => numbersText(lines.map(({ line }) => line)))).toEqual([
    '1-8',
  ]);
});
