import { execFile } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, test } from 'vitest';
import { documentFromShow, type Show } from '../../../core/show/show.ts';
import { type FestivalRows, festivalDay, withFields } from '../../helpers/festival-day.ts';

const command = join(import.meta.dirname, '../../../electron/command-line/plan-day.ts');
const plain = festivalDay();
const folder = mkdtempSync(join(tmpdir(), 'foldbook-plan-day-'));
const patience = 60_000;

afterAll(() => rmSync(folder, { recursive: true }));

function fileOf(name: string, content: Show | string): string {
  const path = join(folder, name);
  writeFileSync(path, typeof content === 'string' ? content : JSON.stringify(documentFromShow(content)));
  return path;
}

function run(...args: string[]): Promise<{ code: number; out: string; err: string }> {
  return new Promise((resolve) => {
    execFile(process.execPath, [command, ...args], (error, out, err) => {
      resolve({ code: error ? Number(error.code) : 0, out, err });
    });
  });
}

test(
  'the plan of a day is printed with its proof, its changes and its changeovers',
  async () => {
    const { code, out, err } = await run(fileOf('day.json', festivalDay()), '--day', 'Saturday');
    expect(err).toBe('');
    expect(code).toBe(0);
    const report = JSON.parse(out);
    expect(report).toMatchObject({ day: 'Saturday', proof: 'proven minimal', gapPercent: 0, conflict: null });
    expect(report.objective).toBe(report.bound);
    expect(report.layers.sockets.assignments).toHaveLength(6);
    expect(report.layers.sockets.brokenRules).toEqual([]);
    expect(report.changeovers).toHaveLength(1);
    expect(report.changeovers[0].minutesThere).toBe(20);
    expect(report.habits.map((it: { habit: string }) => it.habit)).toContain('one festival patch');
  },
  patience,
);

/** Acts of the festival day again and again, each with rows of its own. */
function manyActs(count: number, linesEach: number): FestivalRows {
  const acts = Array.from({ length: count }, (_, at) => ({
    id: `act ${at}`,
    dayId: 'day',
    order: at,
    name: `Act ${at + 1}`,
    startMinute: 600 + at * 30,
    endMinute: 620 + at * 30,
  }));
  const sources = acts.flatMap((act) =>
    Array.from({ length: linesEach }, (_, line) => ({
      id: `${act.id} line ${line}`,
      actId: act.id,
      order: line,
      name: `Line ${line + 1}`,
      kind: 'bass di',
    })),
  );
  return { acts, sources, performers: [], mixes: [], listeners: [] };
}

test(
  'forty acts are planned like any other day',
  async () => {
    const { code, out } = await run(fileOf('forty.json', festivalDay(manyActs(40, 4))));
    expect(code).toBe(0);
    const report = JSON.parse(out);
    expect(report.proof).toBe('proven minimal');
    expect(report.changeovers).toHaveLength(39);
    expect(report.layers.sockets.brokenRules).toEqual([]);
  },
  patience,
);

test(
  'two hundred sources on eight sockets: the smallest set that collides, and a plan that leaves out the rest',
  async () => {
    const { code, out } = await run(fileOf('sources.json', festivalDay(manyActs(1, 200))));
    expect(code).toBe(1);
    const { conflict, layers } = JSON.parse(out);
    expect(conflict.what).toMatch(/^Act 1: .*9 lines need places; in A, B there are 8 sockets/);
    expect(conflict.smallestSet).toHaveLength(9);
    expect(conflict.isSmallest).toBe(true);
    expect(conflict.nearestPlan.leftOut).toHaveLength(192);
    expect(conflict.nearestPlan.isFewest).toBe(true);
    const placed = conflict.nearestPlan.assignments.filter((it: { to: string[] }) => it.to.length > 0);
    expect(new Set(placed.flatMap((it: { to: string[] }) => it.to)).size).toBe(8);
    // A desk of sixteen channels is too small as well.
    expect(layers.channels.conflict.what).toMatch(/17 copies need places; in desk there are 16 channels/);
  },
  patience,
);

test(
  'one act, sets that overlap and a day that starts to count again past midnight are planned, with a note each',
  async () => {
    const alone = await run(fileOf('one.json', festivalDay(manyActs(1, 3))));
    expect(alone.code).toBe(0);
    expect(JSON.parse(alone.out).notes.join(' ')).toMatch(/one act, so there is no changeover/);
    const overlap = withFields(plain, 'acts', 'choir', { startMinute: 990 });
    const late = await run(fileOf('overlap.json', festivalDay({ acts: overlap })));
    expect(late.code).toBe(0);
    expect(JSON.parse(late.out).notes.join(' ')).toMatch(
      /Tin Choir starts at 16:30, before Paper Herons ends/,
    );
    expect(JSON.parse(late.out).changeovers[0]).toMatchObject({ minutesThere: 0, fits: false });
    const midnight = withFields(plain, 'acts', 'choir', { startMinute: 15, endMinute: 60 });
    const night = await run(fileOf('night.json', festivalDay({ acts: midnight })));
    expect(night.code).toBe(0);
    expect(JSON.parse(night.out).notes.join(' ')).toMatch(/00:30 is 24:30/);
  },
  patience,
);

test(
  'the plan and the habits are measured alike, and shared kit that does not last is named with the fewest more',
  async () => {
    const stock = [{ id: 'stands', rigId: 'rig', kind: 'stand', name: 'Tall', count: 1, returnMinutes: 30 }];
    const { out } = await run(fileOf('stock.json', festivalDay({ stockItems: stock })));
    const report = JSON.parse(out);
    for (const measured of [report.plan, ...report.habits])
      expect(measured).toMatchObject({
        minutesInChangeovers: expect.any(Number),
        handMinutesInChangeovers: expect.any(Number),
        replugsInChangeovers: expect.any(Number),
      });
    expect(report.changeovers[0].ahead.length + report.plan.replugsInChangeovers).toBeGreaterThan(0);
    expect(report.stock.collisions[0]).toMatchObject({ name: 'Tall', have: 1, most: 2, extra: 1 });
  },
  patience,
);

const twoLocks = ['c kick', 'c voc'].map((sourceId) => ({
  id: sourceId,
  actId: 'choir',
  about: 'socket',
  sourceId,
  socketId: 'a1',
}));

test.each([
  { name: 'no file is named', args: () => [], code: 2, words: /Usage/ },
  { name: 'an unknown option', args: () => [fileOf('a.json', plain), '--fast'], code: 2, words: /Usage/ },
  {
    name: 'a day the show does not have',
    args: () => [fileOf('b.json', plain), '--day', 'Sunday'],
    code: 2,
    words: /no day “Sunday”. It has: Saturday/,
  },
  {
    name: 'a file that is not there',
    args: () => [join(folder, 'nowhere.json')],
    code: 1,
    words: /is not there/,
  },
  {
    name: 'a file that is not JSON',
    args: () => [fileOf('c.json', 'kick, snare')],
    code: 1,
    words: /is not JSON/,
  },
  {
    name: 'JSON that is no show',
    args: () => [fileOf('d.json', '{"acts": 3}')],
    code: 1,
    words: /is not a show/,
  },
  {
    name: 'a rig without sockets',
    args: () => [fileOf('e.json', festivalDay({ sockets: [] }))],
    code: 1,
    words: /no sockets/,
  },
])(
  '$name: a sentence and code $code',
  async ({ args, code, words }) => {
    const found = await run(...args());
    expect(found.err).toMatch(words);
    expect(found.out).toBe('');
    expect(found.code).toBe(code);
  },
  patience,
);

test(
  'locks that collide: code 1, and the report says which',
  async () => {
    const { code, out } = await run(fileOf('locks.json', festivalDay({ decisions: twoLocks })));
    expect(code).toBe(1);
    const report = JSON.parse(out);
    expect(report.proof).toBe('no plan');
    expect(report.conflict.what).toMatch(/Kick is locked to A1; Ada is locked to A1/);
  },
  patience,
);

test(
  'a crew of nobody: the patch is planned, and the changeover says why it has no schedule',
  async () => {
    const { code, out } = await run(
      fileOf('crew.json', festivalDay({ days: withFields(plain, 'days', 'day', { crewSize: 0 }) })),
    );
    expect(code).toBe(0);
    const report = JSON.parse(out);
    expect(report.notes.join(' ')).toMatch(/no crew/);
    expect(report.changeovers[0]).toMatchObject({
      minutesNeeded: null,
      problem: expect.stringMatching(/nobody on stage/),
    });
  },
  patience,
);
