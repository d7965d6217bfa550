import { expect, test } from 'vitest';
import { jobsOfAct, jobsOfDay } from '../../../core/sheets/jobs.ts';
import { makePaper } from '../../../electron/paper/make-paper.ts';
import { paperInput } from '../../helpers/made-paper.ts';
import { paperShow } from '../../helpers/paper-show.ts';

const show = paperShow([
  { name: 'Tin Lanterns', lines: 8, mixes: 2 },
  { name: 'Paper Herons', lines: 16, mixes: 4 },
]);

test('sheets are made beside the window, and how far they are is told, from the start to the end', async () => {
  const shares: number[] = [];
  const input = paperInput(show, { jobs: jobsOfDay(show, 'day', 'pdf'), file: 'pdf', coverOfDayId: 'day' });
  const outcome = await makePaper(input, (done, of) => shares.push(done / of));
  if (!outcome.ok) throw new Error(outcome.problem.what);
  expect(
    Buffer.from(outcome.value.files[0]?.bytes ?? [])
      .subarray(0, 5)
      .toString(),
  ).toBe('%PDF-');
  expect(shares).toEqual(shares.toSorted((a, b) => a - b));
  expect(shares[0]).toBe(0);
  expect(shares.at(-1)).toBe(1);
});

test('making is stopped by a signal, says so, and the next set is made all the same', async () => {
  const stop = new AbortController();
  const input = paperInput(show, { jobs: jobsOfDay(show, 'day', 'pdf'), file: 'pdf' });
  const running = makePaper(input, () => stop.abort(), stop.signal);
  expect(await running).toMatchObject({ ok: false, problem: { code: 'stopped' } });
  const again = await makePaper(paperInput(show, { jobs: jobsOfAct(show, 'act-0', 'csv'), file: 'csv' }));
  expect(again.ok && again.value.files.length).toBeGreaterThan(5);
});

test('two sets at once are both made, each with its own answer', async () => {
  const ask = (actId: string) =>
    makePaper(paperInput(show, { jobs: [{ sheet: 'line check', ofId: actId }], file: 'pdf' }));
  const answers = await Promise.all([ask('act-0'), ask('act-1')]);
  expect(answers.map((it) => it.ok && it.value.files[0]?.name)).toEqual([
    'Tin Lanterns - Line check.pdf',
    'Paper Herons - Line check.pdf',
  ]);
});

test('sheets of an act that is gone are refused in plain words', async () => {
  const input = paperInput(show, { jobs: [{ sheet: 'line check', ofId: 'gone' }], file: 'pdf' });
  expect(await makePaper(input)).toMatchObject({ ok: false, problem: { code: 'wrong request' } });
});

test('where some are gone, the others are made and the gone ones counted', async () => {
  const jobs = [
    { sheet: 'line check', ofId: 'gone' },
    { sheet: 'line check', ofId: 'act-0' },
  ] as const;
  const outcome = await makePaper(paperInput(show, { jobs: [...jobs], file: 'pdf' }));
  expect(outcome).toMatchObject({ ok: true, value: { missing: 1 } });
});
