import { expect, test } from 'vitest';
import { criticalPath } from '../../../core/changeover/people.ts';
import type { Task } from '../../../core/changeover/task.ts';
import { stepsInTaskM, walkingMetresPerSecond } from '../../../core/changeover/task-kinds.ts';
import { waySeconds, withWays } from '../../../core/changeover/ways.ts';

/** A task of ten seconds at a spot along the front of the stage. */
const at = (xM: number | null, fields: Partial<Task> = {}): Task => ({
  kind: 'plug',
  what: `at ${xM}`,
  placeName: '',
  place: xM === null ? null : { xM, yM: 0 },
  sourceId: null,
  mixId: null,
  deviceId: null,
  socketId: null,
  seconds: 10,
  hands: 1,
  desk: 0,
  after: [],
  ...fields,
});

test.each([
  { name: 'a few steps are part of the task', from: 0, to: stepsInTaskM, seconds: 0 },
  { name: 'twelve metres more at 1.2 m/s', from: 0, to: stepsInTaskM + 12, seconds: 10 },
  { name: 'a place that nobody has told is near', from: 0, to: null, seconds: 0 },
])('a way takes $seconds s: $name', ({ from, to, seconds }) => {
  expect(walkingMetresPerSecond).toBe(1.2);
  expect(waySeconds(at(from).place, at(to).place)).toBe(seconds);
});

const far = stepsInTaskM + 12;
const cases: { name: string; tasks: Task[]; crew: number; end: number }[] = [
  { name: 'one pair of hands does what is near first', tasks: [at(0), at(far), at(0)], crew: 1, end: 40 },
  { name: 'two people share the two sides', tasks: [at(0), at(far), at(0), at(far)], crew: 2, end: 20 },
  {
    name: 'two who carry together are both there',
    tasks: [at(0), at(far, { hands: 2, after: [0] })],
    crew: 2,
    end: 30,
  },
  {
    name: 'the desk walks nowhere',
    tasks: [at(0, { hands: 0, desk: 1 }), at(far, { hands: 0, desk: 1 })],
    crew: 0,
    end: 20,
  },
  {
    name: 'whoever is free walks ahead and waits there',
    tasks: [at(0), at(null, { hands: 0, desk: 1, seconds: 30 }), at(far, { after: [1] })],
    crew: 1,
    end: 40,
  },
];

test.each(cases)('ways over the stage: $name', ({ tasks, crew, end }) => {
  const found = withWays(
    tasks,
    tasks.map((_, index) => index),
    crew,
    60,
  );
  expect(found.end).toBe(end);
  // Everybody has the time for each way between two of their tasks.
  for (const person of found.people)
    person.tasks.slice(1).forEach((task, place) => {
      const before = person.tasks[place] ?? -1;
      const [from, to] = [tasks[before], tasks[task]];
      const arrives = (found.start[before] ?? 0) + (from?.seconds ?? 0);
      expect((found.start[task] ?? 0) - arrives).toBeGreaterThanOrEqual(
        waySeconds(from?.place ?? null, to?.place ?? null),
      );
    });
  const path = criticalPath(tasks, found.start, found.ofTask, (a, b) => waySeconds(a.place, b.place));
  const [first = -1] = path;
  const last = path.at(-1) ?? -1;
  expect(found.start[first]).toBe(0);
  expect((found.start[last] ?? 0) + (tasks[last]?.seconds ?? 0)).toBe(end);
});
