import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { strFromU8, unzipSync } from 'fflate';
import { expect, test } from 'vitest';
import { actSchemaText } from '../../../electron/command-line/show-schema.ts';
import { temporaryFolder } from '../../helpers/temporary-folder.ts';

const root = join(import.meta.dirname, '..', '..', '..');

/** Commands of package.json on a show of the test's own, which starts as the demo. */
function machine(more: Record<string, string> = {}) {
  const folder = temporaryFolder();
  const run = (command: string, ...args: string[]) => {
    const { scripts } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8'));
    const [, ...script] = String(scripts[command]).split(' ');
    const env = { ...process.env, HOME: folder, FOLDBOOK_DATA: join(folder, 'data'), ...more };
    const done = spawnSync(process.execPath, [...script, ...args], { cwd: root, encoding: 'utf8', env });
    return { code: done.status, out: done.stdout, err: done.stderr };
  };
  return { folder, run };
}

test('a copy goes to a stick, and another machine takes over from it and is told how old it is', () => {
  const stick = temporaryFolder();
  const one = machine();
  expect(one.run('copies', 'second', stick)).toMatchObject({ code: 0 });
  expect(one.run('copies', 'make')).toMatchObject({ code: 0, out: expect.stringContaining('second folder') });
  const other = machine({ FOLDBOOK_COPIES: stick });
  const taken = other.run('copies', 'restore', 'newest');
  expect(taken).toMatchObject({ code: 0, out: expect.stringContaining('0 minutes old') });
  expect(other.run('copies', 'preview', 'newest').out).toContain('The show is the same now.');
});

test('an act goes to another machine as a file and comes in beside its acts', () => {
  const [one, other] = [machine(), machine()];
  const exported = one.run('export-show', '--own', '--act', 'Milla Korvane');
  expect(JSON.parse(exported.out)).toMatchObject({
    format: 'foldbook-act',
    acts: [{ name: 'Milla Korvane' }],
  });
  const file = join(other.folder, 'act.json');
  writeFileSync(file, exported.out);
  expect(other.run('import-show', file)).toMatchObject({
    code: 0,
    out: expect.stringContaining('Bring in Milla Korvane'),
  });
  const { acts } = JSON.parse(other.run('export-show', '--own').out);
  expect(acts.filter(({ name }: { name: string }) => name === 'Milla Korvane')).toHaveLength(2);
  expect(other.run('import-show', '--replace', file)).toMatchObject({ code: 1, out: '' });
});

test('the schema of an act file in the assets is the one of the program', () => {
  expect(readFileSync(join(root, 'assets', 'schema', 'act.schema.json'), 'utf8')).toBe(actSchemaText());
});

test('a report says what is in it before it is written, and is not written where nobody can say yes', () => {
  const { folder, run } = machine();
  mkdirSync(join(folder, 'data', 'log'), { recursive: true });
  writeFileSync(join(folder, 'data', 'log', 'foldbook.log'), 'a line\n');
  run('copies', 'make');
  const file = join(folder, 'report.zip');
  const asked = run('trouble-report', file);
  expect(asked.out).toMatch(/log\/foldbook\.log.*ALL of the show/s);
  expect(existsSync(file)).toBe(false);
  expect(run('trouble-report', '--yes', file)).toMatchObject({ code: 0 });
  const parts = unzipSync(readFileSync(file));
  expect(Object.keys(parts).map((name) => name.split('/')[0])).toEqual(['about.txt', 'log', 'show']);
  expect(strFromU8(parts['log/foldbook.log'] ?? new Uint8Array())).toBe('a line\n');
  run('trouble-report', '--yes', '--without-show', file);
  expect(Object.keys(unzipSync(readFileSync(file)))).toEqual(['about.txt', 'log/foldbook.log']);
});

test.each([
  ['copies'],
  ['copies', 'restore'],
  ['copies', 'burn'],
  ['import-show'],
  ['export-show', 'FILE'],
  ['trouble-report', 'a', 'b'],
])('%s %s is wrong use: code 2 and the usage', (command, ...args) => {
  const { run } = machine();
  const { code, out, err } = run(command, ...args);
  expect([code, out]).toEqual([2, '']);
  expect(err).toMatch(/^Usage: npm run /);
});

test('a copy that is not there, a folder that is not there and a file that is no show are told in a sentence', () => {
  const { folder, run } = machine();
  expect(run('copies', 'restore', 'nothing').err).toContain('There is no copy “nothing”');
  expect(run('copies', 'second', join(folder, 'away')).err).toContain('is no folder');
  writeFileSync(join(folder, 'x.json'), '{');
  expect(run('import-show', join(folder, 'x.json'))).toMatchObject({
    code: 1,
    err: expect.stringContaining('not JSON'),
  });
});
