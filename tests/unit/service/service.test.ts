import { readdirSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { Reply } from '../../../core/contract/contract.ts';
import { largestLogBytes, openLog } from '../../../electron/service/log.ts';
import { Service } from '../../../electron/service/service.ts';
import { opened, showPath } from '../../helpers/open-shows.ts';
import { temporaryFolder } from '../../helpers/temporary-folder.ts';

const logText = (folder: string) => readFileSync(join(folder, 'foldbook.log'), 'utf8');

test('a bug is answered with a sentence and an id that finds its line in the log', async () => {
  const folder = temporaryFolder();
  const show = opened(showPath());
  show.read = () => {
    throw new RangeError('the private words of a rider');
  };
  const service = new Service(show, 'browser', openLog(folder));
  const reply = await new Promise<Reply>((resolve) => {
    const window = service.connect((frame) => resolve(Reply.parse(JSON.parse(frame))));
    window.take(JSON.stringify({ id: 7, call: 'show.open', input: {} }));
  });
  if (reply.ok) throw new Error('the bug went unnoticed');
  expect(reply).toMatchObject({ id: 7, problem: { code: 'internal error' } });
  const line = logText(folder)
    .split('\n')
    .find((it) => it.includes(reply.problem.id ?? 'no id'));
  expect(line).toMatch(/show\.open: RangeError at .*electron\/service\/service\.ts/);
  expect(line).not.toContain('private');
});

test('a window that has gone hears nothing more, and the others do', async () => {
  const service = new Service(opened(showPath()), 'browser', openLog(temporaryFolder()));
  const heard: string[] = [];
  const gone = service.connect((frame) => heard.push(`gone: ${frame}`));
  const stays = service.connect((frame) => heard.push(frame));
  gone.take(JSON.stringify({ id: 1, call: 'show.open', input: {} }));
  gone.close();
  stays.take(JSON.stringify({ id: 2, call: 'show.open', input: {} }));
  await expect.poll(() => heard.length).toBe(1);
  expect(heard[0]).toContain('"id":2');
  expect(service.windowCount).toBe(1);
});

test('the log keeps four older files and no more, each of bounded size', () => {
  const folder = temporaryFolder();
  const log = openLog(folder);
  const error = new Error('x');
  error.stack = `Error\n    at work (/home/noor/foldbook/core/${'x'.repeat(60_000)}.ts:1:1)`;
  for (let count = 0; count < 80; count++) log.trouble('work', error);
  expect(readdirSync(folder).sort()).toEqual([
    'foldbook.log',
    'foldbook.log.1',
    'foldbook.log.2',
    'foldbook.log.3',
    'foldbook.log.4',
  ]);
  for (const name of readdirSync(folder))
    expect(statSync(join(folder, name)).size).toBeLessThan(largestLogBytes + 100_000);
  expect(logText(folder), 'no folder above the program, for it names the user').not.toContain('noor');
});

test.each([
  [
    'an error with a code',
    Object.assign(new Error('secret'), { code: 'SQLITE_ERROR' }),
    /Error SQLITE_ERROR at/,
  ],
  ['a text', 'secret', /a thrown string/],
  ['nothing', undefined, /a thrown undefined/],
])('what is thrown may be %s', (_what, thrown, line) => {
  const folder = temporaryFolder();
  openLog(folder).trouble('work', thrown);
  expect(logText(folder)).toMatch(line);
  expect(logText(folder)).not.toContain('secret');
});

test('a log that cannot be written breaks nothing', () => {
  expect(openLog('/dev/null/log').trouble('work', new Error('x'))).toMatch(/^[0-9a-f]{8}$/);
});
