import { expect, test } from 'vitest';
import type { CopyReason } from '../../../core/contract/copies.ts';
import { copiesToForget } from '../../../electron/copies/kept-by-age.ts';

const now = Date.parse('2026-07-04T12:00:00Z');
const minute = 60_000;

function made(agesMinutes: number[], reason: CopyReason = 'by itself') {
  return agesMinutes.map((age) => ({
    name: `${age}`,
    path: '',
    madeAtMs: now - age * minute,
    reason,
    byteCount: 1,
    machine: null,
  }));
}

/** How many stay; the newest always does, so each case begins with one that was made now. */
const stays = (copies: ReturnType<typeof made>) => {
  const gone = new Set(copiesToForget(copies, now));
  return copies.filter((it) => !gone.has(it)).length;
};

test.each<[string, number[], number]>([
  ['every copy of the last hour', [0, 5, 10, 59], 4],
  ['one of an hour that is past', [0, 65, 70, 75, 80], 2],
  ['one of each hour of the last day', [0, ...Array.from({ length: 12 * 22 }, (_, at) => 65 + 5 * at)], 23],
  [
    'one of each day of the last month',
    [0, ...Array.from({ length: 28 * 24 }, (_, at) => 1440 + 60 * at)],
    30,
  ],
  ['the newest, whatever its age', [90 * 1440, 91 * 1440], 1],
  ['a copy with a time to come, for some clock was wrong', [-500, 5], 2],
])('of the copies made by themselves stay %s', (_what, ages, count) => {
  expect(stays(made(ages))).toBe(count);
});

test('a copy that somebody made, or that was made before a step, stays a month beside the others', () => {
  expect(stays([...made([0]), ...made([70, 71, 72], 'by hand'), ...made([50_000], 'before a step')])).toBe(4);
});

test('thinning again takes nothing more: what stays does not depend on how often it is looked at', () => {
  const copies = made(Array.from({ length: 1000 }, (_, at) => 7 * at));
  const gone = new Set(copiesToForget(copies, now));
  expect(
    copiesToForget(
      copies.filter((it) => !gone.has(it)),
      now,
    ),
  ).toEqual([]);
});
