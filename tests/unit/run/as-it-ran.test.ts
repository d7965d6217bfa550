import { describe, expect, test } from 'vitest';
import { feedsAsRun } from '../../../core/run/feeds-as-run.ts';
import { beginSet, moveFrom, moveOn, runOf } from '../../../core/run/move-on.ts';
import { heardNow, movedLevel, ranLevelsOf, steppedDb } from '../../../core/run/ran-levels.ts';
import { runLog } from '../../../core/run/run-log.ts';
import type { Act } from '../../../core/show/act.ts';
import { actsOfDay } from '../../../core/show/act-sheet.ts';
import { applyChange } from '../../../core/show/apply-change.ts';
import { type Put, put } from '../../../core/show/change.ts';
import type { Show } from '../../../core/show/show.ts';
import { changeoverBegan } from '../../../core/show/tick.ts';
import type { ActState } from '../../../core/show/words.ts';
import { smallFestival } from '../../fixtures/small-festival.ts';
import { derivedAct } from '../../helpers/derived-act.ts';

const at = '2031-06-14T15:00:00.000Z';
const later = '2031-06-14T15:50:00.000Z';

const withRows = (show: Show, ...rows: Put[]): Show =>
  applyChange(show, { label: 'Keep', put: rows, remove: [] });

const level = (id: string, sourceId: string, levelDb: number | null, mixId = 'tarn-m1', changedAt = at) =>
  put('ranLevels', { id, actId: 'tarn', mixId, sourceId, fromDb: null, levelDb, changedAt });

function hearsElin(show: Show) {
  const { sheet, derived } = derivedAct(show, 'tarn');
  return heardNow(sheet.sources, derived.feeds, 'tarn-m1', ranLevelsOf(show, 'tarn')).map(
    ({ source, levelDb, plannedDb, isChanged, isAdded }) => ({
      name: source.name,
      levelDb,
      plannedDb,
      isChanged,
      isAdded,
    }),
  );
}

describe('levels as they ran', () => {
  // Elin's wishes: her vocal lots (0 dB), lead vocal and guitar some (-6 dB), the defaults of product.md.
  const guitar = 'tarn-s10';
  const kick = 'tarn-s0';

  test('a mix is told the loudest first, as planned where nothing was changed', () => {
    const heard = hearsElin(smallFestival());
    expect(heard[0]).toMatchObject({ name: 'Vocal Elin', isChanged: false });
    expect(heard.map((it) => it.name)).toEqual(['Vocal Elin', 'Guitar', 'Lead vocal']);
    expect(heard.every((it) => it.levelDb === it.plannedDb)).toBe(true);
  });

  test('what was changed is heard, the plan says what it said, and off stays in sight at the end', () => {
    const show = withRows(smallFestival(), level('a', guitar, null), level('b', kick, -12));
    const planned = derivedAct(smallFestival(), 'tarn').derived;
    expect(derivedAct(show, 'tarn').derived).toEqual(planned);
    const heard = hearsElin(show);
    expect(heard.at(-1)).toMatchObject({ name: 'Guitar', levelDb: null, isChanged: true, isAdded: false });
    expect(heard.find((it) => it.name === 'Kick in')).toEqual({
      name: 'Kick in',
      levelDb: -12,
      plannedDb: null,
      isChanged: true,
      isAdded: true,
    });
  });

  test('the later of two changes holds, and back where it was planned is not changed', () => {
    const plannedDb = hearsElin(smallFestival()).find((it) => it.name === 'Guitar')?.plannedDb ?? null;
    const show = withRows(smallFestival(), level('a', guitar, -20), level('b', guitar, plannedDb));
    expect(hearsElin(show)).toEqual(hearsElin(smallFestival()));
  });

  test('what was brought in and taken out again is gone', () => {
    const show = withRows(smallFestival(), level('a', kick, -12), level('b', kick, null));
    expect(hearsElin(show).map((it) => it.name)).not.toContain('Kick in');
  });

  test('what was brought in is fed by the copy that the rule gives: the wedge takes no in-ear copy', () => {
    const show = withRows(smallFestival(), level('a', kick, -12));
    const { sheet, derived } = derivedAct(show, 'tarn');
    const feeds = feedsAsRun(sheet, derived.feeds, ranLevelsOf(show, 'tarn'));
    const feed = feeds.get(`tarn-m1 ${kick}`);
    expect(feed?.purpose).not.toBeNull();
    expect(feed?.purpose).not.toBe('in-ears');
    expect(feed?.channel).toEqual(
      derived.plan.copies.find((it) => it.sourceId === kick && it.purpose === feed?.purpose)?.channel,
    );
    expect(feedsAsRun(sheet, derived.feeds, new Map()).size).toBe(0);
  });

  test.each<[from: number | null, by: number, to: number | null]>([
    [-6, 1, -5],
    [-6.5, -1, -7.5],
    [0, 1, 1],
    [10, 1, 10],
    [-60, -1, null],
    [null, 1, -12],
    [null, -1, null],
    [0.1, 0.2, 0.3],
  ])('from %s dB by %s dB it is %s dB', (from, by, to) => {
    expect(steppedDb(from, by, -12)).toBe(to);
  });

  test('a hand that goes on turning is one change from where it began; after a while it is another', () => {
    const move = { actId: 'tarn', mixId: 'm', sourceId: 's', fromDb: -6, levelDb: -5, changedAt: at };
    const first = movedLevel(move, new Map(), at, () => 'one');
    expect(first).toEqual({ ...move, id: 'one' });
    const ran = new Map([['m s', first]]);
    const next = { ...move, fromDb: -5, levelDb: -4, changedAt: later };
    expect(movedLevel(next, ran, at, () => 'two')).toEqual({ ...next, id: 'one', fromDb: -6 });
    expect(movedLevel(next, ran, later, () => 'two')).toEqual({ ...next, id: 'two' });
  });
});

describe('the show moves on', () => {
  const states = (show: Show) => actsOfDay(show, 'day').map((act) => act.state);
  function festival(...wanted: ActState[]): Show {
    const show = smallFestival();
    const acts = actsOfDay(show, 'day');
    return withRows(
      show,
      ...acts.map((act, place) => put('acts', { ...act, state: wanted[place] ?? act.state })),
    );
  }
  const goOn = (show: Show, openId: string, time = at) => {
    const move = moveFrom(actsOfDay(show, 'day'), openId);
    let count = show.actRuns.size + show.ticks.size;
    return move
      ? applyChange(
          show,
          moveOn(show, move, time, () => `n${count++}`),
        )
      : show;
  };

  test.each<[why: string, states: ActState[], open: string, ends: string, comes: string | null]>([
    ['from the act on stage', ['on stage', 'ready', 'ready'], 'tarn', 'tarn', 'pale'],
    ['from the act on stage, whatever is open', ['on stage', 'ready', 'ready'], 'glass', 'tarn', 'pale'],
    ['from the open act where none is on stage', ['done', 'next', 'ready'], 'pale', 'pale', 'glass'],
    ['the open one of two that are on stage', ['on stage', 'on stage', 'ready'], 'tarn', 'tarn', 'pale'],
    ['to nothing after the last', ['done', 'done', 'on stage'], 'glass', 'glass', null],
  ])('%s', (_, wanted, open, ends, comes) => {
    const move = moveFrom(actsOfDay(festival(...wanted), 'day'), open);
    expect(move?.ends.id).toBe(ends);
    expect(move?.comes?.id ?? null).toBe(comes);
  });

  test('one is done and has ended, the next one comes and its clock runs from that moment', () => {
    const show = goOn(festival('on stage', 'ready', 'ready'), 'tarn');
    expect(states(show)).toEqual(['done', 'next', 'ready']);
    expect(runOf(show, 'tarn')).toMatchObject({ beganAt: null, endedAt: at });
    expect([...show.ticks.values()]).toEqual([
      expect.objectContaining({ actId: 'pale', taskKey: changeoverBegan, doneAt: at }),
    ]);
  });

  test('what stands already stays: a clock that runs, an end that was kept', () => {
    const once = goOn(festival('on stage', 'ready', 'ready'), 'tarn');
    const acts = actsOfDay(once, 'day');
    const [ends, comes] = acts as [Act, Act];
    expect(moveOn(once, { ends, comes }, later, () => 'x')).toMatchObject({ put: [], remove: [] });
  });

  test('the set begins: on stage from now, once; and again where it had ended by mistake', () => {
    let show = festival('ready', 'ready', 'ready');
    const act = (it: Show) => it.acts.get('tarn') as Act;
    show = applyChange(
      show,
      beginSet(show, act(show), at, () => 'run'),
    );
    expect(act(show).state).toBe('on stage');
    expect(runOf(show, 'tarn')).toMatchObject({ beganAt: at, endedAt: null });
    expect(beginSet(show, act(show), later, () => 'x').put).toEqual([]);
    show = goOn(show, 'tarn', later);
    show = applyChange(
      show,
      beginSet(show, act(show), later, () => 'x'),
    );
    expect(runOf(show, 'tarn')).toMatchObject({ id: 'run', beganAt: at, endedAt: null });
    expect(show.actRuns.size).toBe(1);
  });
});

test('what was kept of an act is told the newest first, and nothing of another act', () => {
  const show = withRows(
    smallFestival(),
    put('actRuns', { id: 'run', actId: 'tarn', beganAt: at, endedAt: later }),
    level('a', 'tarn-s0', -3, 'tarn-m1', '2031-06-14T15:10:00.000Z'),
    put('runNotes', { id: 'n', actId: 'tarn', mixId: null, sourceId: null, text: 'Loud', notedAt: at }),
    put('runNotes', { id: 'o', actId: 'pale', mixId: null, sourceId: null, text: 'Other', notedAt: at }),
  );
  expect(runLog(show, 'tarn').map((event) => event.is)).toEqual(['ended', 'level', 'note', 'began']);
  expect(runLog(show, 'glass')).toEqual([]);
});
