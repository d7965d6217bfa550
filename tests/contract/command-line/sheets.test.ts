import { spawnSync } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { documentFromShow } from '../../../core/show/show.ts';
import { paperShow } from '../../helpers/paper-show.ts';
import { pdfPages, wordsOf } from '../../helpers/pdf-pages.ts';

const script = join(import.meta.dirname, '..', '..', '..', 'electron', 'command-line', 'sheets.ts');
const folder = mkdtempSync(join(tmpdir(), 'foldbook-sheets-'));
afterAll(() => rmSync(folder, { recursive: true }));

const show = join(folder, 'show.json');
const rows = documentFromShow(
  paperShow([
    { name: 'Tin Lanterns', lines: 3, mixes: 1 },
    { name: 'Größe 音', lines: 6, mixes: 2 },
  ]),
);
writeFileSync(show, JSON.stringify(rows));
writeFileSync(join(folder, 'wide.json'), '{"lineLabels":{"is":"sheet","labelWidthMm":"wide"}}');
writeFileSync(
  join(folder, 'one-a-page.json'),
  '{"lineLabels":{"is":"sheet","labelWidthMm":150,"columns":1,"rows":1},"lineColours":false}',
);
writeFileSync(join(folder, 'no-show.json'), '{"format":"something else"}');

function run(...args: string[]) {
  const done = spawnSync(process.execPath, [script, ...args], {
    encoding: 'utf8',
    env: { ...process.env, FOLDBOOK_DATA: join(folder, 'data') },
  });
  return { code: done.status, out: done.stdout, err: done.stderr };
}

describe('wrong use is told in words with a code of its own', () => {
  test.each([
    { args: [], code: 2, words: 'Usage' },
    { args: ['--act', 'x'], code: 2, words: '--out' },
    { args: ['--act', 'x', '--day', 'y', '--out', folder], code: 2, words: 'either --act or --day' },
    {
      args: ['--act', 'Nobody', '--out', folder, '--show', show],
      code: 2,
      words: '“Tin Lanterns”, “Größe 音”',
    },
    { args: ['--act', 'x', '--out', folder, '--sheet', 'recipe'], code: 2, words: 'There is no such sheet' },
    { args: ['--act', 'x', '--out', folder, '--form', 'doc'], code: 2, words: 'pdf, xlsx or csv' },
    { args: ['--act', 'x', '--out', folder, '--paper', 'B5'], code: 2, words: 'A4, Letter or A3' },
    {
      args: ['--act', 'x', '--out', folder, '--show', join(folder, 'gone.json')],
      code: 1,
      words: 'is not there',
    },
    {
      args: ['--act', 'x', '--out', folder, '--show', join(folder, 'no-show.json')],
      code: 1,
      words: 'is no show',
    },
    {
      args: ['--act', 'x', '--out', folder, '--labels', join(folder, 'wide.json')],
      code: 1,
      words: 'lineLabels.labelWidthMm',
    },
  ])('sheets $args', ({ args, code, words }) => {
    const done = run(...args);
    expect([done.code, done.out]).toEqual([code, '']);
    expect(done.err).toContain(words);
  });
});

test('an act is written as one PDF, one workbook and a CSV for each table', async () => {
  const out = join(folder, 'act');
  expect(run('--act', 'größe 音', '--out', out, '--show', show)).toMatchObject({ code: 0, err: '' });
  const names = readdirSync(out);
  expect(names).toContain('Größe 音 - sheets.pdf');
  expect(names).toContain('Größe 音 - sheets.xlsx');
  expect(names.filter((name) => name.endsWith('.csv')).length).toBeGreaterThan(10);
  const words = wordsOf(await pdfPages(readFileSync(join(out, 'Größe 音 - sheets.pdf')))).replaceAll(' ', '');
  for (const { name } of rows.sources.filter((it) => it.actId === 'act-1'))
    expect(words).toContain(name.replaceAll(' ', ''));
}, 60_000);

test('labels keep to the measures that a file gives', async () => {
  const out = join(folder, 'labels');
  const only = ['--act', 'Größe 音', '--out', out, '--show', show, '--form', 'pdf', '--sheet', 'line labels'];
  expect(run(...only, '--labels', join(folder, 'one-a-page.json')).code).toBe(0);
  const pages = await pdfPages(readFileSync(join(out, readdirSync(out)[0] ?? '')));
  // Six lines, and the page before them that says how to print them.
  expect(pages).toHaveLength(7);
}, 60_000);

test('a day is one set with a cover; the second print of a changed show is version 2', async () => {
  const out = join(folder, 'day');
  const day = ['--day', 'Saturday', '--out', out, '--show', show, '--form', 'pdf'];
  expect(run(...day).code).toBe(0);
  const first = wordsOf(await pdfPages(readFileSync(join(out, 'Saturday - sheets.pdf'))));
  expect(first).toContain('All sheets');
  expect(first).not.toContain('Version 2');
  const changed = rows.sources.map((it, at) => (at === 0 ? { ...it, name: 'Kick wide' } : it));
  writeFileSync(show, JSON.stringify({ ...rows, sources: changed }));
  expect(run(...day).code).toBe(0);
  const second = wordsOf(await pdfPages(readFileSync(join(out, 'Saturday - sheets.pdf'))));
  expect(second).toMatch(/Version 2, .*, replaces version 1 of/);
}, 90_000);

test('each sheet can be a PDF of its own', () => {
  const out = join(folder, 'apart');
  const args = ['--sheet', 'line check', '--sheet', 'mixes', '--form', 'pdf', '--apart'];
  expect(run('--act', 'Tin Lanterns', '--out', out, '--show', show, ...args).code).toBe(0);
  expect(
    readdirSync(out)
      .filter((name) => name.endsWith('.pdf'))
      .sort(),
  ).toEqual(['Tin Lanterns - Line check.pdf', 'Tin Lanterns - Mixes wishes and start levels.pdf']);
});
