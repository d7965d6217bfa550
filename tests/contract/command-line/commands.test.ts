import { spawn, spawnSync } from 'node:child_process';
import { once } from 'node:events';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { text } from 'node:stream/consumers';
import { afterAll, describe, expect, test } from 'vitest';

const root = join(import.meta.dirname, '..', '..', '..');
const folder = mkdtempSync(join(tmpdir(), 'foldbook-commands-'));
afterAll(() => rmSync(folder, { recursive: true }));

/** Runs a command of package.json as npm does, with what is given on standard input. */
function run(command: string, args: readonly string[], input: string | Uint8Array = '') {
  const { scripts } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8'));
  const [, ...script] = String(scripts[command]).split(' ');
  const done = spawnSync(process.execPath, [...script, ...args], { cwd: root, input, encoding: 'utf8' });
  return { code: done.status, out: done.stdout, err: done.stderr };
}

function fileOf(name: string, content: string | Uint8Array): string {
  const path = join(folder, name);
  writeFileSync(path, content);
  return path;
}

const list =
  'ch;source;mic;48V\n1;Kick in;dynamic;\n2;Snare top;dynamic;\n3;Overhead L;condenser;48V\n4;Overhead R;condenser;48V\n';
const rider = fileOf('rider.csv', list);
const picture = fileOf('plot.pdf', Buffer.from('89504e470d0a1a0a', 'hex'));

describe('wrong use is code 2 with the usage on standard error, and nothing on standard output', () => {
  test.each([
    ['read-rider', []],
    ['read-rider', [rider, rider]],
    ['read-rider', ['--unknown', rider]],
    ['advance', []],
    ['advance', ['--rig']],
    ['advance', ['--jason', rider]],
  ])('%s %j', (command, args) => {
    const { code, out, err } = run(command, args);
    expect(code).toBe(2);
    expect(out).toBe('');
    expect(err).toMatch(/^Usage: npm run /);
  });
});

test.each(['read-rider', 'advance'])('%s --help explains itself and is no error', (command) => {
  const { code, out, err } = run(command, ['--help']);
  expect(code).toBe(0);
  expect(out).toMatch(/^Usage: npm run .*Exit code: 0 /s);
  expect(err).toBe('');
});

test('a reader that has seen enough ends a command without a word of error', async () => {
  const command = spawn(process.execPath, ['electron/run.js', 'electron/command-line/export-show.ts'], {
    cwd: root,
    stdio: ['ignore', 'pipe', 'pipe'],
  });
  const err = text(command.stderr);
  command.stdout.once('data', () => command.stdout.destroy());
  const [code] = await once(command, 'close');
  expect(await err).toBe('');
  expect(code).toBe(0);
});

describe('read-rider prints what a rider says, and only that', () => {
  const named = (out: string) => JSON.parse(out).inputs.map((input: { name: string }) => input.name);
  const names = ['Kick in', 'Snare top', 'Overhead L', 'Overhead R'];

  test('of a file', () => {
    const { code, out, err } = run('read-rider', [rider]);
    expect(code).toBe(0);
    expect(err).toBe('');
    expect(JSON.parse(out)).toMatchObject({ refused: false, reason: null });
    expect(JSON.parse(out).inputs[2]).toMatchObject({
      channel: 3,
      name: 'Overhead L',
      kind: 'overhead',
      pair: 4,
      feed: 'mic',
      phantom: true,
    });
  });

  test.each([
    ['a text from standard input', list],
    [
      'a workbook called by another name',
      readFileSync(join(root, 'tests/fixtures/documents/merged-and-hidden.xlsx')),
    ],
  ])('of %s', (_, content) => {
    const { code, out } =
      typeof content === 'string'
        ? run('read-rider', ['-'], content)
        : run('read-rider', [fileOf('x.csv', content)]);
    expect(code).toBe(0);
    expect(named(out).length).toBeGreaterThan(2);
  });

  test('the same rider gives the same words every time', () => {
    expect(named(run('read-rider', [rider]).out)).toEqual(names);
    expect(run('read-rider', [rider]).out).toBe(run('read-rider', [rider]).out);
  });

  test.each([
    ['a picture', () => picture, /is a picture/],
    ['a file that is not there', () => join(folder, 'none.csv'), /is not there/],
    ['a folder', () => folder, /is a folder/],
  ])('%s is refused with a reason and code 1', (_, path, reason) => {
    const { code, out } = run('read-rider', [path()]);
    expect(code).toBe(1);
    const { refused, reason: said } = JSON.parse(out);
    expect(refused).toBe(true);
    expect(said).toMatch(reason);
  });
});

describe('advance reads riders against a rig', () => {
  test('as tables a person can read', () => {
    const { code, out, err } = run('advance', [rider]);
    expect(code).toBe(0);
    expect(err).toBe('');
    for (const heading of ['Sources', 'Mixes', 'Feeds', 'Findings', 'Open questions'])
      expect(out).toContain(`\n${heading}\n`);
    expect(out).toMatch(/ 3 {2}Overhead L +overhead +Overhead R .* on$/m);
  });

  test('as JSON', () => {
    const { code, out } = run('advance', ['--json', rider]);
    expect(code).toBe(0);
    const [result] = JSON.parse(out);
    expect(result.report.sources.map((it: { line: number }) => it.line)).toEqual([1, 2, 3, 4]);
    expect(result.report.sources.every((it: { socket: string | null }) => it.socket !== null)).toBe(true);
  });

  test('what cannot be read is code 1, and the others are printed all the same', () => {
    const { code, out, err } = run('advance', [picture, rider]);
    expect(code).toBe(1);
    expect(err).toMatch(/is a picture/);
    expect(out).toContain('Overhead L');
  });

  test('against a rig without a socket nothing is plugged, and a finding says so', () => {
    const rig = { id: 'r', name: 'Empty', channelCount: 0 };
    const house = fileOf('house.json', JSON.stringify({ format: 'foldbook-show', version: 1, rigs: [rig] }));
    const [result] = JSON.parse(run('advance', ['--json', '--rig', house, rider]).out);
    expect(result.report.sources.map((it: { socket: string | null }) => it.socket)).toEqual([
      null,
      null,
      null,
      null,
    ]);
    expect(result.report.findings.some((it: { severity: string }) => it.severity === 'must fix')).toBe(true);
  });

  test.each([
    ['a file that is no show', fileOf('no-show.json', '{}'), /is no show/],
    ['a show without a rig', fileOf('bare.json', '{"format":"foldbook-show","version":1}'), /holds no rig/],
  ])('%s is no rig: code 1 and a sentence', (_, path, what) => {
    const { code, out, err } = run('advance', ['--rig', path, rider]);
    expect(code).toBe(1);
    expect(out).toBe('');
    expect(err).toMatch(what);
  });
});
