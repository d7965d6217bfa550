import { describe, expect, test } from 'vitest';
import { type Consequence, compareReadings } from '../../../core/rider/again/compare-readings.ts';
import { mergeReading } from '../../../core/rider/again/merge-reading.ts';
import { takeConsequences } from '../../../core/rider/again/take-consequences.ts';
import type { Grid } from '../../../core/rider/grid.ts';
import { readRider } from '../../../core/rider/read-rider.ts';
import { Act, Day } from '../../../core/show/act.ts';
import { actSheet } from '../../../core/show/act-sheet.ts';
import { applyChange, findBrokenReferences } from '../../../core/show/apply-change.ts';
import { put } from '../../../core/show/change.ts';
import { Rig } from '../../../core/show/rig.ts';
import { type Show, showFromRows } from '../../../core/show/show.ts';

const read = (...rows: string[]) =>
  readRider({
    name: 'rider',
    form: 'csv',
    sheets: [{ name: 'Rider', rows: rows.map((row) => row.split('|').map((cell) => cell.trim())) }],
  } satisfies Grid);

const first = [
  'Ch | Source | Mic / DI | Player',
  '1 | Kick | mic | Bram',
  '2 | Bass | DI | Ivo',
  '3 | Keys L | DI | Ines',
  '4 | Keys R | DI | Ines',
  '5 | Lead vocal | mic | Nell',
  'Mix 1 - Nell: wedge, vocal lots, bass some',
  'Mix 2 - Bram: in-ears, kick lots',
];

let made = 0;
const newId = () => `new ${made++}`;
const sheetOf = (show: Show) => {
  const sheet = actSheet(show, 'act');
  if (!sheet) throw new Error('the act is there');
  return sheet;
};

/** An act as a first rider brought it. */
function actFrom(rows: string[]): Show {
  const empty = showFromRows({
    rigs: [Rig.parse({ id: 'rig', name: 'House', channelCount: 32 })],
    days: [Day.parse({ id: 'day', rigId: 'rig', name: 'Day' })],
    acts: [Act.parse({ id: 'act', dayId: 'day', order: 0, name: 'Act' })],
  });
  return applyChange(empty, { label: 'x', ...mergeReading(sheetOf(empty), null, read(...rows), newId) });
}

const compare = (show: Show, later: string[]) =>
  compareReadings(sheetOf(show), read(...first), read(...later), newId);

function take(show: Show, all: readonly Consequence[], which: (it: Consequence) => boolean): Show {
  const keys = new Set(all.filter(which).map(({ key }) => key));
  const next = applyChange(show, { label: 'x', ...takeConsequences(sheetOf(show), all, keys) });
  expect(findBrokenReferences(next)).toEqual([]);
  return next;
}

const said = ({ kind, of, name, field }: Consequence) => [kind, of, name, field].filter(Boolean).join(' ');
const names = (show: Show) => sheetOf(show).sources.map(({ riderLine, name }) => `${riderLine} ${name}`);

describe('a rider that came again', () => {
  test('and says the same has no consequence', () => {
    expect(compare(actFrom(first), first)).toEqual({ lines: [], consequences: [] });
  });

  test('with a line put in tells of one new source and of moved numbers, of nothing else', () => {
    const later = [
      ...first.slice(0, 2),
      '2 | Snare top | mic | Bram',
      '3 | Bass | DI | Ivo',
      '4 | Keys L | DI | Ines',
      '5 | Keys R | DI | Ines',
      '6 | Lead vocal | mic | Nell',
      ...first.slice(6),
    ];
    const show = actFrom(first);
    const { consequences } = compare(show, later);
    expect(consequences.map(said)).toEqual([
      'added source Snare top',
      'changed source Bass riderLine',
      'changed source Keys L riderLine',
      'changed source Keys R riderLine',
      'changed source Lead vocal riderLine',
    ]);
    expect(names(take(show, consequences, () => true))).toEqual([
      '1 Kick',
      '2 Snare top',
      '3 Bass',
      '4 Keys L',
      '5 Keys R',
      '6 Lead vocal',
    ]);
  });

  test('without a line tells that its source goes, and says the line in words', () => {
    const { lines, consequences } = compare(
      actFrom(first),
      first.filter((row) => !row.startsWith('2 |')),
    );
    expect(consequences.map(said)).toContain('removed source Bass');
    expect(lines).toContainEqual({ before: '2 | Bass | DI | Ivo', after: null });
  });

  test('with a louder wish changes the one wish there is', () => {
    const later = first.map((row) => row.replace('bass some', 'bass lots'));
    const show = actFrom(first);
    const { lines, consequences } = compare(show, later);
    expect(consequences.filter(({ of }) => of === 'wish').map((it) => [it.kind, it.now, it.next])).toEqual([
      ['changed', 'some', 'lots'],
    ]);
    expect(lines).toHaveLength(1);
    expect(lines[0]?.before).toContain('bass some');
    expect(lines[0]?.after).toContain('bass lots');
    expect(take(show, consequences, () => true).wishes.size).toBe(show.wishes.size);
  });
});

describe('what the engineer decided', () => {
  const later = first.map((row) => row.replace('2 | Bass | DI', '2 | Bass | mic'));
  const edited = () => {
    const show = actFrom(first);
    const bass = sheetOf(show).sources.find(({ name }) => name === 'Bass');
    if (!bass) throw new Error('the bass is there');
    return applyChange(show, { label: 'x', put: [put('sources', { ...bass, pickUp: 'line' })], remove: [] });
  };

  test('is marked where the later rider would overwrite it, and stays where it is left', () => {
    const show = edited();
    const { consequences } = compare(show, later);
    const pickUp = consequences.find(({ field }) => field === 'pickUp');
    expect(pickUp).toMatchObject({ now: 'line', next: 'mic', overwrites: true });
    const after = take(show, consequences, ({ overwrites }) => !overwrites);
    expect(sheetOf(after).sources.find(({ name }) => name === 'Bass')?.pickUp).toBe('line');
  });

  test('is no mark on what nobody touched', () => {
    const { consequences } = compare(actFrom(first), later);
    expect(consequences.filter(({ overwrites }) => overwrites)).toEqual([]);
    expect(consequences.map(({ field }) => field)).toContain('pickUp');
  });
});

test('a source that is left leaves the wishes for it out too', () => {
  const later = [
    ...first.slice(0, 6),
    '6 | Accordion | mic | Ines',
    'Mix 1 - Nell: wedge, vocal lots, bass some, accordion lots',
    ...first.slice(7),
  ];
  const show = actFrom(first);
  const { consequences } = compare(show, later);
  expect(consequences.map(said)).toContain('added source Accordion');
  const after = take(show, consequences, ({ of }) => of !== 'source');
  expect(after.sources.size).toBe(show.sources.size);
  expect(after.wishes.size).toBe(show.wishes.size);
});

test('a line that is no input and begins as one before did has changed', () => {
  const [old, next] = ['Paper Herons - technical rider 2030', 'Paper Herons - technical rider 2031, new'];
  const { lines } = compareReadings(
    sheetOf(actFrom([old, ...first])),
    read(old, ...first),
    read(next, ...first, 'Catering for six'),
    newId,
  );
  expect(lines).toEqual([
    { before: old, after: next },
    { before: null, after: 'Catering for six' },
  ]);
});
