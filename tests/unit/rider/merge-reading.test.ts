import { describe, expect, test } from 'vitest';
import { mergeReading } from '../../../core/rider/again/merge-reading.ts';
import type { Reading } from '../../../core/rider/reading.ts';
import { Act, Day } from '../../../core/show/act.ts';
import { actSheet } from '../../../core/show/act-sheet.ts';
import { applyChange, findBrokenReferences } from '../../../core/show/apply-change.ts';
import { put } from '../../../core/show/change.ts';
import { Rig } from '../../../core/show/rig.ts';
import { type Show, showFromRows } from '../../../core/show/show.ts';
import { readInput, readingWith, readMix, readWish } from '../../helpers/small-reading.ts';

const emptyAct = () =>
  showFromRows({
    rigs: [Rig.parse({ id: 'rig', name: 'House', channelCount: 32 })],
    days: [Day.parse({ id: 'day', rigId: 'rig', name: 'Day' })],
    acts: [Act.parse({ id: 'act', dayId: 'day', order: 0, name: 'Act' })],
  });

let made = 0;

function merged(show: Show, before: Partial<Reading> | null, after: Partial<Reading>): Show {
  const sheet = actSheet(show, 'act');
  if (!sheet) throw new Error('the act is there');
  const change = mergeReading(
    sheet,
    before && readingWith(before),
    readingWith(after),
    () => `new ${made++}`,
  );
  const next = applyChange(show, { label: 'read', ...change });
  expect(findBrokenReferences(next)).toEqual([]);
  return next;
}

const kick = readInput('1', { name: 'Kick', channel: 1, performer: 'Kes' });
const keysLeft = readInput('2', { name: 'Keys', channel: 2, pairKey: '3', performer: 'Ines' });
const keysRight = readInput('3', { name: 'Keys', channel: 3, pairKey: '2', performer: 'Ines' });
const mix = readMix('m', [readWish({ of: 'inputs', inputKeys: ['1'] }, { words: 'kick', amount: 'lots' })], {
  label: 'Mix 1',
  listeners: ['Kes'],
});
const rider: Partial<Reading> = { inputs: [kick, keysLeft, keysRight], mixes: [mix] };

const sources = (show: Show) => actSheet(show, 'act')?.sources ?? [];
const named = (show: Show, name: string) => sources(show).filter((it) => it.name === name);
const count = (show: Show) =>
  (['performers', 'sources', 'mixes', 'listeners', 'wishes'] as const).map((table) => show[table].size);

describe('a rider is read into an act', () => {
  test('a first rider brings everything it names', () => {
    const show = merged(emptyAct(), null, rider);
    expect(count(show)).toEqual([2, 3, 1, 1, 1]);
    expect(named(show, 'Keys')[0]?.pairSourceId).toBe(named(show, 'Keys')[1]?.id);
  });

  test('the same reading once more changes nothing', () => {
    const show = merged(emptyAct(), null, rider);
    const sheet = actSheet(show, 'act');
    const change = sheet && mergeReading(sheet, readingWith(rider), readingWith(rider), () => 'never');
    expect(change).toEqual({ put: [], remove: [] });
    expect(merged(show, null, rider)).toEqual(show);
  });
});

describe('an answer', () => {
  test('changes the field it is about and no other', () => {
    const show = merged(emptyAct(), null, rider);
    const source = named(show, 'Kick')[0];
    if (!source) throw new Error('the kick is there');
    const edited = applyChange(show, {
      label: 'x',
      put: [put('sources', { ...source, name: 'Kick, old drum', stand: 'short' })],
      remove: [],
    });
    const answered = merged(edited, rider, {
      ...rider,
      inputs: [{ ...kick, kind: 'kick in' }, keysLeft, keysRight],
    });
    expect(sources(answered)[0]).toEqual({
      ...source,
      name: 'Kick, old drum',
      stand: 'short',
      kind: 'kick in',
    });
  });

  test('keeps the ids of rows, so that every decision on them stays', () => {
    const show = merged(emptyAct(), null, rider);
    const answered = merged(show, rider, { ...rider, mixes: [{ ...mix, deviceKind: 'in-ear' }] });
    expect([...answered.mixes.keys()]).toEqual([...show.mixes.keys()]);
    expect([...answered.mixes.values()][0]?.deviceKind).toBe('in-ear');
  });

  test('can split a line in two and join it again', () => {
    const show = merged(emptyAct(), null, rider);
    const split = {
      ...rider,
      inputs: [kick, keysLeft, keysRight, readInput('4', { name: 'Click', channel: 4 })],
    };
    const answered = merged(show, rider, split);
    expect(named(answered, 'Click')).toHaveLength(1);
    expect(count(merged(answered, split, rider))).toEqual(count(show));
  });

  test('does not bring back what was taken away by hand', () => {
    const show = merged(emptyAct(), null, rider);
    const source = named(show, 'Kick')[0];
    const without = applyChange(show, {
      label: 'x',
      put: [],
      remove: [{ table: 'sources', id: source?.id ?? '' }],
    });
    const answered = merged(without, rider, {
      ...rider,
      inputs: [{ ...kick, kind: 'kick in' }, keysLeft, keysRight],
    });
    expect(named(answered, 'Kick')).toEqual([]);
  });

  test('changes an amount without a second wish', () => {
    const show = merged(emptyAct(), null, rider);
    const quieter = readWish({ of: 'inputs', inputKeys: ['1'] }, { words: 'kick', amount: 'little' });
    const answered = merged(show, rider, { ...rider, mixes: [{ ...mix, wishes: [quieter] }] });
    expect([...answered.wishes.values()].map((it) => it.amount)).toEqual(['little']);
  });

  test('that names another performer lets the one go whom nothing names any more', () => {
    const show = merged(emptyAct(), null, rider);
    const answered = merged(show, rider, {
      inputs: [{ ...kick, performer: 'Jo' }, keysLeft, keysRight],
      mixes: [{ ...mix, listeners: ['Jo'] }],
    });
    expect([...answered.performers.values()].map((it) => it.name).sort()).toEqual(['Ines', 'Jo']);
  });
});

describe('a second rider', () => {
  test('adds what is new, corrects what it says, and leaves what it does not speak of', () => {
    const show = merged(emptyAct(), null, {
      ...rider,
      inputs: [{ ...kick, stand: 'short' }, keysLeft, keysRight],
    });
    const newer = merged(show, null, {
      inputs: [{ ...kick, kind: 'kick in' }, readInput('9', { name: 'Whistle', channel: 9 })],
    });
    expect(named(newer, 'Kick')).toMatchObject([{ kind: 'kick in', stand: 'short' }]);
    expect(sources(newer).map((it) => it.name)).toEqual(['Kick', 'Keys', 'Keys', 'Whistle']);
  });
});
