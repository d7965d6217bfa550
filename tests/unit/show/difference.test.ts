import { expect, test } from 'vitest';
import { applyChange } from '../../../core/show/apply-change.ts';
import { type Put, put } from '../../../core/show/change.ts';
import { differenceOf, sentenceOfDifference } from '../../../core/show/difference.ts';
import type { Show } from '../../../core/show/show.ts';
import { smallFestival } from '../../fixtures/small-festival.ts';

const before = smallFestival();
const [wish] = before.wishes.values();
const [source] = before.sources.values();
if (!wish || !source) throw new Error('the festival has wishes and sources');

const told = (one: Show, other: Show) => differenceOf(one, other).map(sentenceOfDifference);
const withRow = (row: Put) => applyChange(before, { label: 'x', put: [row], remove: [] });

test('a changed row is told field by field, with the words of both', () => {
  const renamed = withRow(put('sources', { ...source, name: 'Kick out', gainDb: 30 }));
  expect(told(before, renamed)).toEqual([
    expect.stringMatching(/^Changed: source Kick out: name from .+ to Kick out, gain dB from .+ to 30\.$/),
  ]);
});

test('a wish that came or went is told with what was wished, and nothing that is empty', () => {
  const more = withRow(
    put('wishes', { ...wish, id: 'new', amount: 'lots', levelDb: null, confirmed: false }),
  );
  const [came, ...others] = told(before, more);
  expect(others).toEqual([]);
  expect(came).toMatch(/^Added: wish .+, amount lots/);
  expect(came).not.toMatch(/level|confirmed|nothing/);
  expect(told(more, before)).toEqual([came?.replace('Added', 'Removed')]);
});

test('a named row that came is told by its name alone', () => {
  expect(told(before, withRow(put('sources', { ...source, id: 'new', name: 'Cowbell' })))).toEqual([
    'Added: source Cowbell.',
  ]);
});
