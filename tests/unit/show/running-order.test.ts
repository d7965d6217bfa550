import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { Act } from '../../../core/show/act.ts';
import { actsOfDay } from '../../../core/show/act-sheet.ts';
import { applyChange } from '../../../core/show/apply-change.ts';
import type { Change } from '../../../core/show/change.ts';
import { dropAct, endActAt, insertAct, moveAct, startActAt } from '../../../core/show/running-order.ts';
import { showFromRows } from '../../../core/show/show.ts';
import { smallShow } from '../../helpers/small-show.ts';

/** "Name 18:00-19:00"; a time of "?" is not set. */
function act(text: string, order: number): Act {
  const [name = '', times = ''] = text.split(' ');
  const [startMinute, endMinute] = times.split('-').map((time) => {
    const [hours, minutes] = time.split(':').map(Number);
    return time === '?' ? null : (hours ?? 0) * 60 + (minutes ?? 0);
  });
  return Act.parse({ id: name, dayId: 'day', order, name, startMinute, endMinute });
}

const clock = (minute: number | null) =>
  minute === null
    ? '?'
    : `${String(Math.floor(minute / 60)).padStart(2, '0')}:${String(minute % 60).padStart(2, '0')}`;

const acts = (...texts: string[]) => texts.map(act);

function dayAfter(before: readonly Act[], change: Change): string[] {
  const show = showFromRows({ ...rowsOf(smallShow()), acts: [...before] });
  return actsOfDay(applyChange(show, change), 'day').map(
    (it) => `${it.name} ${clock(it.startMinute)}-${clock(it.endMinute)}`,
  );
}

const rowsOf = (show: ReturnType<typeof smallShow>) => ({
  rigs: [...show.rigs.values()],
  days: [...show.days.values()],
});

const evening = acts('Herons 18:00-19:00', 'Lanterns 19:20-20:00', 'Antlers 20:30-22:00');

describe('an act that moves to another place', () => {
  test('takes its length along, and the breaks stay where they were', () => {
    expect(dayAfter(evening, moveAct(evening, 2, 0))).toEqual([
      'Antlers 18:00-19:30',
      'Herons 19:50-20:50',
      'Lanterns 21:20-22:00',
    ]);
  });

  test('leaves acts outside of the move alone', () => {
    expect(moveAct(evening, 0, 1).put.map((it) => it.row.id)).toEqual(['Lanterns', 'Herons']);
  });

  test('changes only the order where a time is missing', () => {
    const day = acts('Herons 18:00-19:00', 'Lanterns ?-?', 'Antlers 20:30-22:00');
    expect(dayAfter(day, moveAct(day, 2, 0))).toEqual([
      'Antlers 20:30-22:00',
      'Herons 18:00-19:00',
      'Lanterns ?-?',
    ]);
  });

  test('cannot move beyond the ends of the day', () => {
    expect(moveAct(evening, 0, -1).put).toEqual([]);
    expect(moveAct(evening, 2, 9).put).toEqual([]);
    expect(moveAct(evening, 7, 0).put).toEqual([]);
  });

  test('and back again leaves the day as it was, whatever the day', () => {
    const anyDay = fc
      .array(fc.record({ length: fc.nat(120), rest: fc.nat(60) }), { minLength: 2, maxLength: 8 })
      .map((sets) => {
        let at = 600;
        return sets.map(({ length, rest }, order) => {
          const startMinute = at;
          at += length + rest;
          return Act.parse({
            id: `${order}`,
            dayId: 'day',
            order,
            name: `Act ${order}`,
            startMinute,
            endMinute: startMinute + length,
          });
        });
      });
    fc.assert(
      fc.property(anyDay, fc.nat(7), fc.nat(7), (day, from, to) => {
        const [a, b] = [from % day.length, to % day.length];
        const show = showFromRows({ ...rowsOf(smallShow()), acts: day });
        const there = applyChange(show, moveAct(day, a, b));
        const back = applyChange(there, moveAct(actsOfDay(there, 'day'), b, a));
        expect(actsOfDay(back, 'day')).toEqual(day);
      }),
    );
  });
});

describe('a set that is moved in time', () => {
  test('keeps its length', () => {
    expect(dayAfter(evening, startActAt(evening, 1, 19 * 60 + 30, false))[1]).toBe('Lanterns 19:30-20:10');
  });

  test('takes the later acts along where that is wanted', () => {
    expect(dayAfter(evening, startActAt(evening, 1, 19 * 60 + 30, true))).toEqual([
      'Herons 18:00-19:00',
      'Lanterns 19:30-20:10',
      'Antlers 20:40-22:10',
    ]);
    expect(dayAfter(evening, endActAt(evening, 0, 19 * 60 + 5, true))).toEqual([
      'Herons 18:00-19:05',
      'Lanterns 19:25-20:05',
      'Antlers 20:35-22:05',
    ]);
  });

  test('past midnight goes on counting', () => {
    const late = acts('Herons 22:00-23:30', 'Lanterns ?-?');
    expect(dayAfter(late, startActAt(late, 1, 10, false))[1]).toBe('Lanterns 24:10-?');
    expect(dayAfter(late, endActAt(late, 0, 15, false))[0]).toBe('Herons 22:00-24:15');
  });

  test('an hour early is no other day', () => {
    expect(dayAfter(evening, startActAt(evening, 1, 18 * 60 + 30, false))[1]).toBe('Lanterns 18:30-19:10');
  });

  test('loses its time where the field is emptied', () => {
    expect(dayAfter(evening, startActAt(evening, 1, null, true))).toEqual([
      'Herons 18:00-19:00',
      'Lanterns ?-20:00',
      'Antlers 20:30-22:00',
    ]);
  });
});

test('a new act comes after its place and the others make room', () => {
  const change = insertAct(evening, 0, { id: 'Otters', dayId: 'day', name: 'Otters' });
  expect(dayAfter(evening, change).map((it) => it.split(' ')[0])).toEqual([
    'Herons',
    'Otters',
    'Lanterns',
    'Antlers',
  ]);
  const first = insertAct([], -1, { id: 'Otters', dayId: 'day', name: 'Otters' });
  expect(dayAfter([], first)).toEqual(['Otters ?-?']);
});

test('a dropped act goes, and the others keep their times', () => {
  expect(dayAfter(evening, dropAct(evening[1] as Act))).toEqual([
    'Herons 18:00-19:00',
    'Antlers 20:30-22:00',
  ]);
});
