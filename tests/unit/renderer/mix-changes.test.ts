import { describe, expect, test } from 'vitest';
import { deriveAct } from '../../../core/derive/derive-act.ts';
import type { Feed } from '../../../core/derive/derived.ts';
import { actSheet } from '../../../core/show/act-sheet.ts';
import { applyChange } from '../../../core/show/apply-change.ts';
import type { Show } from '../../../core/show/show.ts';
import {
  type CellPlace,
  changeOf,
  chooseCopy,
  decide,
  putFeedBack,
  setAmount,
  setCopy,
  setLevel,
  takeOut,
} from '../../../renderer/mixes/mix-changes.ts';
import { smallFestival } from '../../fixtures/small-festival.ts';

const actId = 'tarn';
const noorKick: CellPlace = { mixId: 'tarn-m2', sourceId: 'tarn-s0' };
const tarnKick: CellPlace = { mixId: 'tarn-m0', sourceId: 'tarn-s0' };

function open(show: Show) {
  const sheet = actSheet(show, actId);
  if (!sheet) throw new Error('the act is in the fixture');
  return { sheet, derived: deriveAct(sheet) };
}

function feedAt(show: Show, { mixId, sourceId }: CellPlace): Feed {
  const feed = open(show)
    .derived.feeds.flat()
    .find((it) => it.mixId === mixId && it.sourceId === sourceId);
  if (!feed) throw new Error('there is a feed for every source and mix');
  return feed;
}

type Part = ReturnType<typeof setAmount>;
const changed = (show: Show, part: (show: Show) => Part) => applyChange(show, changeOf('test', part(show)));

describe('what the engineer types into a cell', () => {
  test('a word on an empty cell makes a wish and a feed', () => {
    expect(feedAt(smallFestival(), tarnKick).purpose).toBeNull();
    const show = changed(smallFestival(), (it) => setAmount(open(it).sheet, tarnKick, 'some'));
    expect(feedAt(show, tarnKick)).toMatchObject({ amount: 'some', decided: false });
    expect(feedAt(show, tarnKick).purpose).not.toBeNull();
  });

  test('a number decides the start level and leaves the wish', () => {
    const wishes = smallFestival().wishes.size;
    const show = changed(smallFestival(), (it) =>
      setLevel(open(it).sheet, noorKick, feedAt(it, noorKick), -9),
    );
    expect(feedAt(show, noorKick)).toMatchObject({ levelDb: -9, decided: true });
    expect(show.wishes.size).toBe(wishes);
  });

  test('a number on an empty cell brings its wish with it', () => {
    const show = changed(smallFestival(), (it) =>
      setLevel(open(it).sheet, tarnKick, feedAt(it, tarnKick), -9),
    );
    expect(feedAt(show, tarnKick)).toMatchObject({ levelDb: -9, decided: true });
  });

  test('a word after a number takes the number back', () => {
    const numbered = changed(smallFestival(), (it) =>
      setLevel(open(it).sheet, noorKick, feedAt(it, noorKick), -20),
    );
    const show = changed(numbered, (it) => setAmount(open(it).sheet, noorKick, 'lots'));
    expect(feedAt(show, noorKick)).toMatchObject({ amount: 'lots', decided: false });
    expect(feedAt(show, noorKick).levelDb).not.toBe(-20);
  });
});

describe('taking a source out of a mix', () => {
  test('a source that came by its own wish is gone with the wish', () => {
    const place = { mixId: 'tarn-m0', sourceId: 'tarn-s13' };
    const show = changed(smallFestival(), (it) => takeOut(open(it).sheet, [place]));
    expect(feedAt(show, place).purpose).toBeNull();
    expect(
      [...show.wishes.values()].filter((it) => it.mixId === place.mixId && it.sourceId === place.sourceId),
    ).toEqual([]);
  });

  test('a source that everything would bring back is kept out by a wish for none', () => {
    const show = changed(smallFestival(), (it) => takeOut(open(it).sheet, [noorKick]));
    expect(feedAt(show, noorKick)).toMatchObject({ purpose: null, amount: 'none' });
  });
});

describe('choosing a copy and putting it back', () => {
  test('the chosen copy feeds, and putting back gives the proposal again', () => {
    const proposed = feedAt(smallFestival(), noorKick);
    expect(proposed.purpose).toBe('monitors');
    const chosen = changed(smallFestival(), (it) => chooseCopy(open(it).sheet, noorKick, 'foh'));
    expect(feedAt(chosen, noorKick)).toMatchObject({
      purpose: 'foh',
      step: 'chosen by the engineer',
      decided: true,
    });
    const back = changed(chosen, (it) => putFeedBack(open(it).sheet, noorKick));
    expect(feedAt(back, noorKick)).toEqual(proposed);
  });

  test('a source without a copy for monitors feeds its mixes from front of house', () => {
    const show = changed(smallFestival(), (it) =>
      setCopy(open(it).sheet, 'tarn-s0', 'monitors', { wanted: false }),
    );
    expect(feedAt(show, noorKick).purpose).toBe('foh');
    const back = changed(show, (it) => setCopy(open(it).sheet, 'tarn-s0', 'monitors', null));
    expect(feedAt(back, noorKick).purpose).toBe('monitors');
  });
});

describe('deciding where something is plugged', () => {
  const socketOf = (show: Show) => open(show).derived.plan.patches.find((it) => it.sourceId === 'tarn-s0');

  test('a socket stays decided until it is put back', () => {
    const proposed = socketOf(smallFestival());
    const decided = changed(smallFestival(), (it) =>
      decide(open(it).sheet, { about: 'socket', sourceId: 'tarn-s0', socketId: 'b9' }),
    );
    expect(socketOf(decided)).toMatchObject({ socketId: 'b9', by: 'engineer' });
    const back = changed(decided, (it) =>
      decide(open(it).sheet, { about: 'socket', sourceId: 'tarn-s0', socketId: null }),
    );
    expect(socketOf(back)).toEqual(proposed);
  });

  test('deciding twice keeps one decision', () => {
    const socket = (socketId: string) => (it: Show) =>
      decide(open(it).sheet, { about: 'socket' as const, sourceId: 'tarn-s0', socketId });
    const show = changed(changed(smallFestival(), socket('b9')), socket('b10'));
    expect(show.decisions.size).toBe(1);
    expect(socketOf(show)?.socketId).toBe('b10');
  });
});
