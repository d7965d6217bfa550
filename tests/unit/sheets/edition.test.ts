import { expect, test } from 'vitest';
import { type Edition, nextVersion, versionText } from '../../../core/sheets/edition.ts';
import type { Sheet } from '../../../core/sheets/sheet.ts';
import { tableOf } from '../../../core/sheets/table.ts';

type Line = { id: string; name: string; socket: string };

const list = (lines: readonly Line[]): Sheet => ({
  key: 'list:act',
  title: 'List',
  subject: 'Paper Herons',
  facts: [],
  cautions: [],
  page: { orientation: 'as fits', paper: null },
  parts: [
    tableOf<Line>(
      [
        { title: 'Source', of: ({ name }) => name },
        { title: 'Socket', of: ({ socket }) => socket },
      ],
      lines,
      { key: ({ id }) => id, empty: 'Nothing.' },
    ),
  ],
});

const kick = { id: 'kick', name: 'Kick', socket: 'A1' };
const snare = { id: 'snare', name: 'Snare', socket: 'A2' };
const vocal = { id: 'vocal', name: 'Vocal', socket: 'A3' };

const printed = (lines: readonly Line[], last: Edition | null = null, at = 'Monday') =>
  nextVersion(list(lines), last, at);

test('the first print is version 1, replaces none and marks nothing', () => {
  const { edition, differences, isNew } = printed([kick]);
  expect(versionText(edition)).toBe('Version 1, Monday, replaces none');
  expect([differences.marks.size, differences.gone.length, isNew]).toEqual([0, 0, true]);
});

test('the same words printed again are the same version of the same time', () => {
  const first = printed([kick, snare]).edition;
  const again = printed([kick, snare], first, 'Tuesday');
  expect([again.edition, again.isNew]).toEqual([first, false]);
});

test.each([
  {
    what: 'a line that changed',
    now: [{ ...kick, socket: 'B1' }, snare],
    marks: [['0: kick', 'changed']],
    gone: [],
  },
  { what: 'a line that is new', now: [kick, snare, vocal], marks: [['0: vocal', 'new']], gone: [] },
  { what: 'a line that is gone', now: [kick], marks: [], gone: [['Snare', 'A2']] },
])('the next print marks $what against the last one', ({ now, marks, gone }) => {
  const first = printed([kick, snare]).edition;
  const next = printed(now, first, 'Tuesday');
  expect(versionText(next.edition)).toBe('Version 2, Tuesday, replaces version 1 of Monday');
  expect([...next.differences.marks]).toEqual(marks);
  expect(next.differences.gone.map(({ texts }) => texts)).toEqual(gone);
});

test('lines in another order are another version, for a list is read from the top', () => {
  const first = printed([kick, snare]).edition;
  expect(printed([snare, kick], first, 'Tuesday').edition.number).toBe(2);
});

test('a reprint carries the marks that its first print had', () => {
  const first = printed([kick]).edition;
  const second = printed([kick, snare], first, 'Tuesday');
  const reprint = printed([kick, snare], second.edition, 'Wednesday');
  expect([...reprint.differences.marks]).toEqual([...second.differences.marks]);
  expect(reprint.edition.number).toBe(2);
});
