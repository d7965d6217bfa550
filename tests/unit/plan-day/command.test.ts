import { execFile } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, test } from 'vitest';
import { documentFromShow, type Show } from '../../../core/show/show.ts';
import { festivalDay, withFields } from '../../helpers/festival-day.ts';

const command = join(import.meta.dirname, '../../../electron/command-line/plan-day.ts');
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

const plain = festivalDay();
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
