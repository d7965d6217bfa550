import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { deriveAct } from '../../../core/derive/derive-act.ts';
import { documentFromShow, ShowDocument } from '../../../core/show/show.ts';
import { showSchemaText } from '../../../electron/command-line/show-schema.ts';
import { ActDraft } from '../../helpers/clean-act.ts';
import { sheetOf, showOf } from '../../helpers/sheet-of.ts';

const root = join(import.meta.dirname, '..', '..', '..');
const folder = mkdtempSync(join(tmpdir(), 'foldbook-derive-'));
afterAll(() => rmSync(folder, { recursive: true }));

function run(command: 'derive' | 'export-show', ...args: string[]) {
  const script = join(root, 'electron', 'command-line', `${command}.ts`);
  const done = spawnSync(process.execPath, [script, ...args], { encoding: 'utf8', maxBuffer: 1 << 28 });
  return { code: done.status, out: done.stdout, err: done.stderr };
}

function fileOf(name: string, content: unknown): string {
  const path = join(folder, name);
  writeFileSync(path, typeof content === 'string' ? content : JSON.stringify(content));
  return path;
}

const document = documentFromShow(showOf(new ActDraft().rows));
const showFile = fileOf('show.json', document);

describe('derive', () => {
  test('prints what follows from every act, as the page derives it', () => {
    const { code, out, err } = run('derive', showFile);
    expect([code, err]).toEqual([0, '']);
    const { problems, acts } = JSON.parse(out);
    const derived = deriveAct(sheetOf(new ActDraft().rows));
    expect(problems).toEqual([]);
    expect(acts.map((act: { act: string }) => act.act)).toEqual(['Paper Herons']);
    expect(acts[0].derived.findings).toEqual(derived.findings);
    expect(acts[0].derived.feeds).toEqual(
      derived.feeds.flat().map((feed) => ({ source: feed.sourceId, mix: feed.mixId, ...feed })),
    );
    expect(acts[0].derived.paths.nodes.length).toBeGreaterThan(0);
  });

  test('takes an act by its name, and a file that an editor began with a byte order mark', () => {
    const marked = fileOf('marked.json', `\ufeff${JSON.stringify(document)}`);
    expect(run('derive', marked, '--act', 'Paper Herons').code).toBe(0);
  });

  test.each<[string, string[], number, RegExp]>([
    ['an act that is not there', [showFile, '--act', 'Nobody'], 1, /no act “Nobody”. It has: “Paper Herons”/],
    ['a file that is not there', [join(folder, 'gone.json')], 1, /cannot be read/],
    ['an empty file', [fileOf('empty.json', '')], 1, /is not JSON/],
    ['a list', [fileOf('list.json', '[1, 2]')], 1, /is no show/],
    ['a cut file', [fileOf('cut.json', JSON.stringify(document).slice(0, 900))], 1, /is not JSON/],
    [
      'another program’s file',
      [fileOf('other.json', { rows: [] })],
      1,
      /is no show.* "format": "foldbook-show"/,
    ],
    [
      'a file of a later program',
      [fileOf('later.json', { ...document, version: 2 })],
      1,
      /its version is 2, and this program reads version 1/,
    ],
    [
      'an act whose row was left out',
      [
        fileOf('no-act.json', { ...document, acts: [{ ...document.acts[0], dayId: 5 }] }),
        '--act',
        'Paper Herons',
      ],
      1,
      /It has: none. acts, row 1 .*dayId: .* The row was left out/,
    ],
    ['no file', [], 2, /^Usage: npm run/],
    ['two files', [showFile, showFile], 2, /^Usage: npm run/],
    ['an unknown option', [showFile, '--verbose'], 2, /^Usage: npm run/],
  ])('%s is a sentence on standard error', (_, args, code, says) => {
    const done = run('derive', ...args);
    expect([done.code, done.out]).toEqual([code, '']);
    expect(done.err).toMatch(says);
  });

  test('values that cannot be, ids given twice, names of rows that are gone and acts without a rig are named, and the rest is derived', () => {
    const path = fileOf('torn.json', {
      ...document,
      sources: [{ ...document.sources[0], gainDb: 'NaN' }, ...document.sources.slice(1)],
      mixes: [...document.mixes, { ...document.mixes[0], name: 'Twice' }],
      wishes: [...document.wishes, { id: 'lost', mixId: 'Tam ears', sourceId: 'theremin', amount: 'some' }],
      acts: [...document.acts, { id: 'stray', dayId: 'gone', order: 1, name: 'Stray Cattle' }],
    });
    const { code, out } = run('derive', path);
    const { problems, acts } = JSON.parse(out);
    expect(code).toBe(0);
    const said = problems.map((problem: { what: string }) => problem.what).join('\n');
    for (const part of [
      'gainDb: Invalid input',
      'two rows with the id “Noor wedge”',
      '“theremin”',
      '“Stray Cattle” has no day',
    ])
      expect(said).toContain(part);
    expect(acts.map((act: { derived: unknown }) => act.derived !== null)).toEqual([true, false]);
  });
});

test('export-show prints the demo day as a show that derive takes', () => {
  const { code, out } = run('export-show');
  expect(code).toBe(0);
  expect(ShowDocument.parse(JSON.parse(out)).acts.length).toBeGreaterThan(0);
  expect(run('derive', fileOf('demo.json', out)).code).toBe(0);
});

test('the schema in assets/schema is the one of the rows; "npm run make-schema" writes it anew', () => {
  expect(readFileSync(join(root, 'assets', 'schema', 'show.schema.json'), 'utf8')).toBe(showSchemaText());
});
