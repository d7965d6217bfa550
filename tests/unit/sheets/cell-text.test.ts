import { expect, test } from 'vitest';
import { cellText, clockText, levelText, numberText, spanText } from '../../../core/sheets/cell-text.ts';

test.each([
  { value: -6, decimals: 0, signed: false, want: '−6' },
  { value: -0.04, decimals: 1, signed: true, want: '0.0' },
  { value: 3, decimals: 1, signed: true, want: '+3.0' },
  { value: 12.345, decimals: 2, signed: false, want: '12.35' },
])('$value is printed as "$want"', ({ value, decimals, signed, want }) => {
  expect(numberText(value, decimals, signed)).toBe(want);
});

test.each([
  { levelDb: 0, want: '0 dB' },
  { levelDb: -4.5, want: '−4.5 dB' },
  { levelDb: -12.04, want: '−12 dB' },
])('a level of $levelDb is said as "$want"', ({ levelDb, want }) => {
  expect(levelText(levelDb)).toBe(want);
});

test.each([
  { minute: 0, want: '00:00' },
  { minute: 1439, want: '23:59' },
  { minute: 1470, want: '00:30 +1' },
  { minute: null, want: '' },
])('minute $minute of the day is "$want"', ({ minute, want }) => {
  expect(clockText(minute)).toBe(want);
});

test('a set whose end nobody knows says so', () => {
  expect(spanText(1200, null)).toBe('20:00 to ?');
  expect(spanText(null, null)).toBe('');
});

test('an empty cell and a box not yet ticked say nothing', () => {
  const column = { decimals: 0, signed: false };
  expect([null, false, true].map((cell) => cellText(cell, column))).toEqual(['', '', 'done']);
});
