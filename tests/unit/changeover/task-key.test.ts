import { describe, expect, test } from 'vitest';
import { changeoversOfDay, scheduleTasks, usualTries } from '../../../core/changeover/changeover.ts';
import { keyOfTask, tasksLeft } from '../../../core/changeover/task-key.ts';
import { actsWithPlans } from '../../../core/plan/plan-act.ts';
import { applyChange } from '../../../core/show/apply-change.ts';
import { put } from '../../../core/show/change.ts';
import type { Show } from '../../../core/show/show.ts';
import { familyDay, twelveActs } from '../../bench/day-family.ts';
import { smallFestival } from '../../fixtures/small-festival.ts';

function changeovers(show: Show) {
  return changeoversOfDay(actsWithPlans(show, 'day'), 1);
}

const keysOf = (show: Show) => changeovers(show).map(({ tasks }) => tasks.map(keyOfTask));

describe('the key of a task', () => {
  test.each([1, 2, 3])('is its own within a changeover (day %i)', (seed) => {
    for (const keys of keysOf(familyDay({ ...twelveActs, acts: 5 }, seed)))
      expect(new Set(keys).size).toBe(keys.length);
  });

  test('stays when names change, so that no tick is lost', () => {
    const show = smallFestival();
    const renamed = applyChange(show, {
      label: 'Rename',
      put: [
        ...[...show.sources.values()].map((row) => put('sources', { ...row, name: `${row.name} new` })),
        ...[...show.acts.values()].map((row) => put('acts', { ...row, name: `${row.name} new` })),
        ...[...show.performers.values()].map((row) => put('performers', { ...row, name: `${row.name} new` })),
      ],
      remove: [],
    });
    expect(keysOf(renamed)).toEqual(keysOf(show));
  });

  test('is another one when the line goes to another socket', () => {
    const show = smallFestival();
    const [before] = changeovers(show);
    const plug = before?.tasks.find((task) => task.kind === 'plug');
    const other = [...show.sockets.keys()].find((id) => id !== plug?.socketId) ?? '';
    const moved = applyChange(show, {
      label: 'Move',
      put: [
        put('decisions', {
          id: 'lock',
          actId: 'pale',
          locked: true,
          about: 'socket',
          sourceId: plug?.sourceId ?? '',
          socketId: other,
        }),
      ],
      remove: [],
    });
    expect(plug).toBeDefined();
    expect(keysOf(moved)[0]).not.toContain(plug && keyOfTask(plug));
  });
});

describe('what is left of a changeover', () => {
  const [first] = changeovers(smallFestival());
  if (!first) throw new Error('the small festival has a changeover');

  test('is everything while nothing is done, and nothing when all is', () => {
    expect(tasksLeft(first.tasks, () => false)).toEqual(first.tasks);
    expect(tasksLeft(first.tasks, () => true)).toEqual([]);
    expect(scheduleTasks([], 3, usualTries, first).secondsNeeded).toBe(0);
  });

  test('waits only for what is left, and for the same tasks as before', () => {
    const isDone = (task: { kind: string }) => ['mute', 'phantom off', 'unplug'].includes(task.kind);
    const left = tasksLeft(first.tasks, isDone);
    for (const task of left) {
      const original = first.tasks.find((it) => keyOfTask(it) === keyOfTask(task));
      const names = (original?.after ?? [])
        .flatMap((index) => first.tasks[index] ?? [])
        .filter((it) => !isDone(it))
        .map(keyOfTask);
      expect(task.after.flatMap((index) => left[index] ?? []).map(keyOfTask)).toEqual(names);
    }
    expect(scheduleTasks(left, 3, usualTries, first).secondsNeeded).toBeLessThan(first.secondsNeeded ?? 0);
  });
});
