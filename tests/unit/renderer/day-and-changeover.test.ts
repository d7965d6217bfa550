import { describe, expect, test } from 'vitest';
import { Day } from '../../../core/show/act.ts';
import { actsOfDay } from '../../../core/show/act-sheet.ts';
import { applyChange } from '../../../core/show/apply-change.ts';
import { put } from '../../../core/show/change.ts';
import type { Show } from '../../../core/show/show.ts';
import { changeoverTo, dayOnScreen } from '../../../renderer/changeover/changeover-cache.ts';
import { groupsByPerson, groupsByPlace } from '../../../renderer/changeover/task-groups.ts';
import { ticksOf, tickTask } from '../../../renderer/changeover/ticks.ts';
import { dayTable } from '../../../renderer/day/day-table.ts';
import { fitOf, lengthText } from '../../../renderer/day/fit.ts';
import { lockToSocket, openLock } from '../../../renderer/day/locks.ts';
import { dayWork } from '../../../renderer/day/use-day-work.ts';
import { actOnScreen } from '../../../renderer/state/derive-cache.ts';
import { smallFestival } from '../../fixtures/small-festival.ts';

const show = smallFestival();

function onScreen(of: Show) {
  const day = of.days.get('day');
  if (!day) throw new Error('the day is in the fixture');
  return dayOnScreen(of, day, actsOfDay(of, 'day'));
}

function sheetOf(of: Show, actId: string) {
  const open = actOnScreen(of, actId);
  if (!open) throw new Error('the act is in the fixture');
  return open.sheet;
}

function tableOf(of: Show) {
  const { acts } = onScreen(of);
  const { now } = dayWork(of, 'day', acts);
  return { rows: dayTable(acts, now, now), now };
}

const cell = (of: Show, socket: string, column: number) =>
  tableOf(of).rows.find((row) => row.name === socket)?.cells[column];

describe('the patch of the day', () => {
  test('has a row for every socket of the rig and a cell for every act', () => {
    const { rows } = tableOf(show);
    expect(rows).toHaveLength(40);
    expect(rows.every((row) => row.cells.length === 3)).toBe(true);
  });

  test('tells what is plugged in the changeover from what could be plugged ahead', () => {
    expect(cell(show, 'A1', 1)).toMatchObject({ name: 'Choir left', entry: 'hot', movesFrom: null });
    const { beforeAct } = tableOf(show).now;
    expect(beforeAct[0]).toEqual({ kept: 0, cold: 16, hot: 0 });
  });

  test('a line that is locked elsewhere leaves its socket and says that it is locked', () => {
    const moved = applyChange(show, lockToSocket(sheetOf(show, 'pale'), idAt('A1', 1), 'b16'));
    expect(cell(moved, 'B16', 1)).toMatchObject({ name: 'Choir left', locked: true, entry: 'cold' });
    expect(cell(moved, 'A1', 1)?.name).not.toBe('Choir left');
  });

  test('an opened lock leaves the line where it is', () => {
    const id = idAt('A1', 1);
    const locked = applyChange(show, lockToSocket(sheetOf(show, 'pale'), id, 'b16'));
    const opened = applyChange(locked, openLock(sheetOf(locked, 'pale'), id));
    expect(cell(opened, 'B16', 1)).toMatchObject({ name: 'Choir left', locked: false });
  });

  test('a plan that is looked at says where each line comes from', () => {
    const { acts } = onScreen(show);
    const { now } = dayWork(show, 'day', acts);
    const id = idAt('A1', 1);
    const plan = { ...now, socketOf: new Map([...now.socketOf, [id, 'b16']]) };
    const rows = dayTable(acts, plan, now);
    expect(rows.find((row) => row.name === 'B16')?.cells[1]).toMatchObject({ movesFrom: 'A1' });
    expect(rows.find((row) => row.name === 'A2')?.cells[1]).toMatchObject({ movesFrom: null });
  });

  const idAt = (socket: string, column: number) => cell(show, socket, column)?.sourceId ?? '';
});

describe('a changeover', () => {
  const changeover = (of: Show) => {
    const found = changeoverTo(onScreen(of), 1);
    if (!found) throw new Error('there is an act before');
    return found;
  };

  test('before the first act there is none', () => {
    expect(changeoverTo(onScreen(show), 0)).toBeNull();
  });

  test('has every task at the desk or with a person, and the same tasks by place', () => {
    const found = changeover(show);
    const byPerson = groupsByPerson(found);
    expect(byPerson.map((group) => group.head)).toEqual(['Desk', 'Hand 1', 'Hand 2', 'Hand 3']);
    const told = new Set(byPerson.flatMap((group) => group.tasks));
    expect(told.size).toBe(found.tasks.length);
    const byPlace = groupsByPlace(found, sheetOf(show, 'pale')).flatMap((group) => group.tasks);
    expect(new Set(byPlace)).toEqual(told);
    expect(byPlace).toHaveLength(found.tasks.length);
  });

  test('lists each in the order of its start', () => {
    for (const { tasks } of groupsByPerson(changeover(show))) {
      const starts = tasks.map((task) => task.startSeconds);
      expect(starts).toEqual([...starts].sort((a, b) => a - b));
    }
  });

  test('is scheduled anew when there are fewer people', () => {
    const day = show.days.get('day');
    const alone = applyChange(show, {
      label: 'Crew',
      put: [put('days', Day.parse({ ...day, crewSize: 1 }))],
      remove: [],
    });
    expect(groupsByPerson(changeover(alone)).map((group) => group.head)).toEqual(['Desk', 'Hand 1']);
    expect(changeover(alone).secondsNeeded).toBeGreaterThan(changeover(show).secondsNeeded ?? Infinity);
  });

  test('keeps a tick for as long as the same thing is to be done', () => {
    const { act } = sheetOf(show, 'pale');
    const task = changeover(show).tasks.find((it) => it.kind === 'plug');
    if (!task) throw new Error('something is plugged');
    const ticked = applyChange(show, tickTask(ticksOf(show, act.id), act, task, new Date(0)));
    expect([...ticksOf(ticked, act.id).values()]).toMatchObject([{ doneAt: '1970-01-01T00:00:00.000Z' }]);
    const again = applyChange(ticked, tickTask(ticksOf(ticked, act.id), act, task, new Date(0)));
    expect(ticksOf(again, act.id).size).toBe(0);
  });
});

test.each([
  [0, '0:00'],
  [65, '1:05'],
  [599.6, '10:00'],
  [-30, '−0:30'],
])('%d seconds read %s', (seconds, text) => {
  expect(lengthText(seconds)).toBe(text);
});

test('a changeover that does not fit says by how much', () => {
  const changeover = changeoverTo(onScreen(show), 1);
  if (!changeover) throw new Error('there is an act before');
  expect(fitOf({ ...changeover, secondsNeeded: 1230, secondsThere: 1200 })).toEqual({
    needed: '20:30',
    there: '20',
    over: '0:30',
  });
  expect(fitOf({ ...changeover, secondsNeeded: 1200, secondsThere: 1200 }).over).toBeNull();
});
