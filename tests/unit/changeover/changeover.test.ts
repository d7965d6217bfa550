import { expect, test } from 'vitest';
import {
  type Changeover,
  changeoversOfDay,
  scheduleTasks,
  workOf,
} from '../../../core/changeover/changeover.ts';
import { entriesOfDay } from '../../../core/changeover/entries.ts';
import { remainingTasks } from '../../../core/changeover/remaining.ts';
import { slotSeconds } from '../../../core/changeover/task-kinds.ts';
import { breaks } from '../../../core/changeover/timetable.ts';
import { actsWithPlans } from '../../../core/plan/plan-act.ts';
import type { Show } from '../../../core/show/show.ts';
import { type FestivalRows, festivalDay, withFields } from '../../helpers/festival-day.ts';

const plain = festivalDay();

/** Locks each source to a socket, so that a test says where everything is. */
function patched(sockets: Record<string, string>, tables: FestivalRows = {}): Show {
  const decisions = Object.entries(sockets).map(([sourceId, socketId]) => ({
    id: `lock ${sourceId}`,
    actId: sourceId.startsWith('h') ? 'herons' : 'choir',
    about: 'socket',
    sourceId,
    socketId,
  }));
  return festivalDay({ ...tables, decisions });
}

const usual = {
  'h kick': 'a1',
  'h bass': 'a2',
  'h voc': 'b1',
  'c kick': 'a1',
  'c keys l': 'a3',
  'c keys r': 'a4',
  'c voc': 'b1',
};

function changeoverOf(show: Show): Changeover {
  const [only] = changeoversOfDay(actsWithPlans(show, 'day'));
  if (!only) throw new Error('The day has one changeover.');
  return only;
}

const placeOf = ({ tasks }: Changeover, text: string) =>
  tasks.findIndex((task) => task.what.startsWith(text));

test('lines enter as the patch says: the house kick stays, keys are ready, the vocal waits for the changeover', () => {
  const show = patched(usual);
  const entries = entriesOfDay(actsWithPlans(show, 'day'));
  expect([...entries].filter(([id]) => id.startsWith('c'))).toEqual([
    ['c kick', 'kept'],
    ['c keys l', 'cold'],
    ['c keys r', 'cold'],
    ['c voc', 'hot'],
  ]);
});

test('only what waits for the changeover is pulled and plugged in it', () => {
  const { tasks } = changeoverOf(patched(usual));
  expect(tasks.filter((it) => it.kind === 'unplug' || it.kind === 'plug').map((it) => it.what)).toEqual([
    'Pull Noor out of B1.',
    'Plug Ada into B1.',
  ]);
});

test('outputs are muted before anything is touched, and open after everything is checked', () => {
  const changeover = changeoverOf(patched(usual));
  const starts = changeover.tasks.map((task) => task.startSeconds);
  const muted = changeover.tasks[placeOf(changeover, 'Mute')];
  const opened = changeover.tasks[placeOf(changeover, 'Open')];
  for (const task of changeover.tasks) {
    if (task !== muted) expect(task.startSeconds).toBeGreaterThanOrEqual(muted?.endSeconds ?? Number.NaN);
    if (task !== opened) expect(task.endSeconds).toBeLessThanOrEqual(opened?.startSeconds ?? Number.NaN);
  }
  expect(Math.min(...starts)).toBe(0);
});

test('48 V goes off before a line that had it is pulled, and on only after the new one is in', () => {
  const needs = { phantom: 'needed' };
  const sources = withFields(plain, 'sources', 'h voc', needs).map((row) =>
    row.id === 'c voc' ? { ...row, ...needs } : row,
  );
  const changeover = changeoverOf(patched(usual, { sources }));
  const at = (text: string) => changeover.tasks[placeOf(changeover, text)];
  expect(at('48 V off on B1')?.endSeconds).toBeLessThanOrEqual(at('Pull Noor')?.startSeconds ?? Number.NaN);
  expect(at('Plug Ada')?.endSeconds).toBeLessThanOrEqual(at('48 V on for B1')?.startSeconds ?? Number.NaN);
  expect(at('48 V on for B1')?.endSeconds).toBeLessThanOrEqual(at('Check Ada')?.startSeconds ?? Number.NaN);
});

test('a line that stays gets a quick check, and none where it was checked ahead', () => {
  const kinds = (show: Show) =>
    changeoverOf(show)
      .tasks.filter((it) => it.kind.endsWith('check') && it.sourceId)
      .map((it) => `${it.what} ${it.kind}`);
  expect(kinds(patched(usual))[0]).toBe('Check Kick on A1. quick check');
  const acts = withFields(plain, 'acts', 'choir', { lineCheckAhead: true });
  expect(kinds(patched(usual, { acts }))).toEqual(['Check Ada on B1. line check']);
});

test('another microphone on the shared kick is swapped before its check', () => {
  const sources = withFields(plain, 'sources', 'h kick', { pickUpModel: 'dynamic kick mic' }).map((row) =>
    row.id === 'c kick' ? { ...row, pickUpModel: 'large condenser' } : row,
  );
  const changeover = changeoverOf(patched(usual, { sources }));
  const swap = placeOf(changeover, 'Put large condenser on Kick');
  expect(changeover.tasks[placeOf(changeover, 'Check Kick')]?.after).toContain(swap);
});

test('a wedge that both acts use in one place is left alone; a pack comes back before it goes out again', () => {
  const stays = changeoverOf(patched(usual));
  expect(stays.tasks.some((it) => it.kind.includes('wedge'))).toBe(false);
  const mixes = [...plain.mixes.values()].map((mix) => ({ ...mix, deviceKind: 'in-ear' }));
  const packs = changeoverOf(patched(usual, { mixes }));
  const back = placeOf(packs, 'Take back Pack 1');
  expect(packs.tasks[placeOf(packs, 'Hand out Pack 1')]?.after).toContain(back);
  expect(packs.tasks[placeOf(packs, 'Ask Ada')]?.after).toContain(placeOf(packs, 'Hand out Pack 1'));
});

test('a riser of the act before rolls off before the next one rolls on, and takes two people', () => {
  const sources = [...plain.sources.values()].map((row) =>
    row.id === 'h bass' || row.id === 'c keys l' ? { ...row, riser: 'side riser' } : row,
  );
  const changeover = changeoverOf(patched(usual, { sources }));
  const on = changeover.tasks[placeOf(changeover, 'Roll on')];
  expect(on?.after).toContain(placeOf(changeover, 'Roll off'));
  expect(on?.people).toHaveLength(2);
});

test('the schedule breaks nothing, meets its own bound here, and everybody has one thing to do at a time', () => {
  const changeover = changeoverOf(patched(usual));
  const work = workOf(changeover.tasks, 2);
  const start = changeover.tasks.map((task) => task.startSeconds / slotSeconds);
  expect(breaks(work, { start, end: 0 })).toEqual([]);
  expect(changeover.secondsNeeded).toBeGreaterThanOrEqual(changeover.lowerBoundSeconds);
  for (const person of changeover.people) {
    const own = person.tasks.map((index) => changeover.tasks[index]);
    own.slice(1).forEach((task, at) => {
      expect(task?.startSeconds).toBeGreaterThanOrEqual(own[at]?.endSeconds ?? Number.NaN);
    });
  }
});

test('what the plan counts on being plugged ahead is told, box by box, and costs the changeover nothing', () => {
  const { ahead, tasks } = changeoverOf(patched(usual));
  expect(ahead.map((it) => it.what)).toEqual(['Plug Keys L into A3.', 'Plug Keys R into A4.']);
  expect(tasks.some((it) => it.what.includes('Keys L into'))).toBe(false);
});

test('48 V for what was plugged ahead goes on after the recall, and not before outputs are muted', () => {
  const sources = withFields(plain, 'sources', 'c keys l', { phantom: 'needed' });
  const changeover = changeoverOf(patched(usual, { sources }));
  const at = (text: string) => changeover.tasks[placeOf(changeover, text)];
  expect(at('48 V on for A3')?.after).toEqual([placeOf(changeover, 'Recall')]);
  expect(at('Check Keys L')?.after).toContain(placeOf(changeover, '48 V on for A3'));
  const acts = withFields(plain, 'acts', 'choir', { lineCheckAhead: true });
  expect(placeOf(changeoverOf(patched(usual, { sources, acts })), '48 V on for A3')).toBe(-1);
});

test('the critical path runs without a gap from the start to the end, where nobody has far to walk', () => {
  const { criticalPath, tasks, secondsNeeded, secondsWithoutWays } = changeoverOf(patched(usual));
  expect(secondsNeeded).toBe(secondsWithoutWays);
  const path = criticalPath.map((index) => tasks[index]);
  expect(path[0]?.startSeconds).toBe(0);
  expect(path.at(-1)?.endSeconds).toBe(secondsNeeded);
  path.slice(1).forEach((task, at) => {
    expect(task?.startSeconds).toBe(path[at]?.endSeconds);
  });
});

test.each([
  { name: 'from the times of the acts', tables: {}, seconds: 20 * 60 },
  {
    name: 'as the day says where times are missing',
    tables: {
      acts: withFields(plain, 'acts', 'choir', { startMinute: null }),
      days: withFields(plain, 'days', 'day', { changeoverMinutes: 12 }),
    },
    seconds: 12 * 60,
  },
  {
    name: 'none where sets overlap, and never less',
    tables: { acts: withFields(plain, 'acts', 'choir', { startMinute: 990 }) },
    seconds: 0,
  },
  {
    name: 'past midnight',
    tables: {
      acts: withFields(
        festivalDay({ acts: withFields(plain, 'acts', 'herons', { startMinute: 1380, endMinute: 1430 }) }),
        'acts',
        'choir',
        { startMinute: 1455, endMinute: 1500 },
      ),
    },
    seconds: 25 * 60,
  },
])('minutes there are: $name', ({ tables, seconds }) => {
  expect(changeoverOf(patched(usual, tables)).secondsThere).toBe(seconds);
});

test.each([
  { crew: 0, words: /nobody on stage/ },
  { crew: 1, words: /needs 2 people and the crew has 1/ },
])('a crew of $crew has no schedule for a riser, and it is said why', ({ crew, words }) => {
  const sources = withFields(plain, 'sources', 'c keys l', { riser: 'side riser' });
  const days = withFields(plain, 'days', 'day', { crewSize: crew });
  const changeover = changeoverOf(patched(usual, { sources, days }));
  expect(changeover.secondsNeeded).toBeNull();
  expect(changeover.problem).toMatch(words);
  expect(changeover.tasks.length).toBeGreaterThan(0);
});

test('what is ticked off is no longer waited for, and the rest is scheduled again', () => {
  const changeover = changeoverOf(patched(usual));
  const done = new Set([placeOf(changeover, 'Mute'), placeOf(changeover, 'Pull Noor')]);
  const left = remainingTasks(changeover.tasks, done);
  expect(left).toHaveLength(changeover.tasks.length - 2);
  const again = scheduleTasks(left, 2, 50, changeover);
  expect(again.problem).toBeNull();
  expect(again.secondsNeeded).toBeLessThan(changeover.secondsNeeded ?? 0);
});
