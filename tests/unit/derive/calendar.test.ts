import { expect, test } from 'vitest';
import { daysBetween } from '../../../core/derive/calendar.ts';

const dayMs = 86_400_000;

// The platform's own calendar is the other opinion; it knows the leap days of 1900, 2000 and 2100.
test.each([
  ['2027-06-12', '2027-06-12'],
  ['2026-12-31', '2027-01-01'],
  ['2028-02-28', '2028-03-01'],
  ['2100-02-28', '2100-03-01'],
  ['2000-02-28', '2000-03-01'],
  ['2027-06-12', '2025-06-01'],
  ['1999-01-01', '2027-11-30'],
])('from %s to %s', (from, to) => {
  expect(daysBetween(from, to)).toBe((Date.parse(to) - Date.parse(from)) / dayMs);
});

test.each([
  ['', '2027-06-12'],
  ['2027-13-01', '2027-06-12'],
  ['next spring', '2027-06-12'],
])('"%s" is no day', (from, to) => {
  expect(daysBetween(from, to)).toBeNull();
});
