import { expect, test } from 'vitest';
import { contract } from '../../../core/contract/contract.ts';
import { put } from '../../../core/show/change.ts';
import { documentFromShow } from '../../../core/show/show.ts';
import { openLog } from '../../../electron/service/log.ts';
import { Service } from '../../../electron/service/service.ts';
import { opened, showPath } from '../../helpers/open-shows.ts';
import { paperShow } from '../../helpers/paper-show.ts';
import { temporaryFolder } from '../../helpers/temporary-folder.ts';
import { type TestWindow, windowOf } from '../../helpers/window.ts';

const rows = documentFromShow(paperShow([{ name: 'Paper Herons', lines: 12, mixes: 3 }]));

function windowOn(path: string) {
  const show = opened(path, rows);
  const service = new Service(show, 'browser', openLog(temporaryFolder()));
  return { show, window: windowOf(service).window };
}

const lineCheck = { jobs: [{ sheet: 'line check', ofId: 'act-0' }], file: 'pdf' };

async function make(window: TestWindow, keep: boolean, request: unknown = lineCheck) {
  const reply = await window.call('paper.make', { request, keep });
  if (!reply.ok) throw new Error(reply.problem.what);
  return contract['paper.make'].out.parse(reply.value);
}

test('a window gets a sheet as a PDF, and hears how far it is', async () => {
  const { window } = windowOn(showPath());
  const made = await make(window, false);
  expect(made.files.map(({ name }) => name)).toEqual(['Paper Herons - Line check.pdf']);
  expect(
    Buffer.from(made.files[0]?.base64 ?? '', 'base64')
      .subarray(0, 5)
      .toString(),
  ).toBe('%PDF-');
  expect(made.pageCount).toBe(1);
  expect(window.pushes.at(-1)).toMatchObject({ push: 'paper progress', share: 1 });
});

test('only what went out counts as printed, and it is still known after the next start', async () => {
  const path = showPath();
  const { show, window } = windowOn(path);
  const source = rows.sources[0];
  if (!source) throw new Error('the show has a source');
  await make(window, false);
  expect((await make(window, true)).versions).toEqual([{ key: 'line check:act-0', number: 1, isNew: true }]);
  expect((await make(window, true)).versions).toEqual([{ key: 'line check:act-0', number: 1, isNew: false }]);
  show.change({ label: 'Rename', put: [put('sources', { ...source, name: 'Kick wide' })], remove: [] });
  show.close();
  const { window: next } = windowOn(path);
  expect((await make(next, false)).versions).toEqual([{ key: 'line check:act-0', number: 2, isNew: true }]);
});

test('what was printed is no step of undo: the last edit is', async () => {
  const { show, window } = windowOn(showPath());
  await make(window, true);
  expect(show.standing()).toEqual({ revision: 0, undo: null, redo: null });
});

test('a window stops what it has begun, and is told so', async () => {
  const { window } = windowOn(showPath());
  const many = Array.from({ length: 60 }, () => lineCheck.jobs[0]);
  const running = window.call('paper.make', { request: { jobs: many, file: 'pdf' }, keep: true });
  await window.call('paper.stop', {});
  expect(await running).toMatchObject({ ok: false, problem: { code: 'stopped' } });
});

test.each([
  { what: 'no sheet at all', request: { jobs: [], file: 'pdf' } },
  {
    what: 'a sheet that does not exist',
    request: { jobs: [{ sheet: 'recipe', ofId: 'act-0' }], file: 'pdf' },
  },
  { what: 'an act that is gone', request: { jobs: [{ sheet: 'line check', ofId: 'gone' }], file: 'pdf' } },
])('asking for $what is refused in words', async ({ request }) => {
  const { window } = windowOn(showPath());
  const reply = await window.call('paper.make', { request, keep: true });
  expect(reply).toMatchObject({ ok: false, problem: { code: 'wrong request' } });
});
