import { spawnSync } from 'node:child_process';
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { strFromU8, unzipSync } from 'fflate';
import readXlsxFile from 'read-excel-file/node';
import { describe, expect, test } from 'vitest';
import { jobsOfAct } from '../../../core/sheets/jobs.ts';
import { sheetMaker } from '../../../core/sheets/make-sheets.ts';
import { SheetOptions } from '../../../core/sheets/sheets.ts';
import { documentFromShow, type Show, showFromRows } from '../../../core/show/show.ts';
import { readDocument } from '../../../electron/documents/read-document.ts';
import { madePaper, onlyFile } from '../../helpers/made-paper.ts';
import { paperShow } from '../../helpers/paper-show.ts';
import { temporaryFolder } from '../../helpers/temporary-folder.ts';

/** Names that a spreadsheet would run as a formula, or take for a number or a date. */
const nastyNames = [
  '=HYPERLINK("http://x.example")',
  '+49 170',
  '-6 dB',
  '@SUM(A1)',
  '1e3',
  '3-4',
  '<b>&"\u0007',
];

const show = paperShow([{ name: "Pap'er: Herons [1]/2", lines: 12, mixes: 3 }]);
const rows = documentFromShow(show);
const nasty = showFromRows({
  ...rows,
  sources: rows.sources.map((it, at) => ({
    ...it,
    name: nastyNames[at] ?? it.name,
    gainDb: at === 0 ? -3.5 : null,
  })),
});

async function workbookOf(of: Show): Promise<Uint8Array> {
  return onlyFile(await madePaper(of, { jobs: jobsOfAct(of, 'act-0', 'xlsx'), file: 'xlsx' }));
}

const readNames = async (bytes: Uint8Array) => (await readXlsxFile(Buffer.from(bytes))).map((it) => it.sheet);

const shown = (name: string) => name.replace('\u0007', '');

test('another library reads the same rows that the sheets have, numbers as numbers', async () => {
  const bytes = Buffer.from(await workbookOf(nasty));
  const sheet = sheetMaker(nasty, SheetOptions.parse({}))({ sheet: 'patch by act', ofId: 'act-0' });
  const [table] = sheet?.parts ?? [];
  if (table?.is !== 'table') throw new Error('the patch is a table');
  const found = (await readXlsxFile(bytes)).find((it) => it.sheet === 'Patch by act')?.data;
  const want = [
    table.columns.map(({ title }) => title),
    ...table.rows.map(({ cells }) => cells.map((it) => (it === '' ? null : it))),
  ].map((row) => row.map((it) => (typeof it === 'string' ? shown(it).replaceAll('\u00a0', ' ') : it)));
  expect(found).toEqual(want);
});

test('the own reader of workbooks, which reads riders, finds every source as well', async () => {
  const outcome = await readDocument('sheets.xlsx', await workbookOf(nasty));
  if (!outcome.ok) throw new Error(outcome.problem.what);
  const texts = new Set(outcome.value.sheets.flatMap((it) => it.rows.flat()));
  for (const { name } of nasty.sources.values()) expect(texts).toContain(shown(name));
});

test('no cell is a formula, and a text that looks like one is marked to stay a text', async () => {
  const parts = unzipSync(await workbookOf(nasty));
  const sheets = Object.keys(parts).filter((name) => name.startsWith('xl/worksheets/'));
  expect(sheets.length).toBeGreaterThan(10);
  for (const name of sheets) expect(strFromU8(parts[name] ?? new Uint8Array())).not.toMatch(/<f[ >]/);
  const styles = strFromU8(parts['xl/styles.xml'] ?? new Uint8Array());
  expect(styles).toContain('quotePrefix="1"');
});

test('every table has a head that stays in view and is printed on each page, filters and a print area', async () => {
  const parts = unzipSync(await workbookOf(show));
  const text = (name: string) => strFromU8(parts[name] ?? new Uint8Array());
  const names = await readNames(await workbookOf(show));
  const book = text('xl/workbook.xml');
  names.forEach((name, at) => {
    const sheet = text(`xl/worksheets/sheet${at + 1}.xml`);
    expect(sheet, name).toContain(
      '<pane ySplit="1" topLeftCell="A2" activePane="bottomLeft" state="frozen"/>',
    );
    expect(sheet, name).toContain('fitToWidth="1" fitToHeight="0"');
    for (const what of ['Print_Area', 'Print_Titles'])
      expect(book).toContain(`<definedName name="_xlnm.${what}" localSheetId="${at}">`);
  });
  expect(text('xl/worksheets/sheet1.xml')).toContain('<autoFilter ref="A1:K13"/>');
});

test('names of worksheets are unlike each other and hold no sign that a workbook forbids', async () => {
  const many = paperShow([
    { name: 'A: [very] long/name of an act that \\ nobody? reads*', lines: 2, mixes: 1 },
    { name: 'A: [very] long/name of an act that \\ nobody? reads*', lines: 2, mixes: 1 },
  ]);
  const jobs = ['act-0', 'act-1'].flatMap((id) => jobsOfAct(many, id, 'xlsx'));
  const names = await readNames(onlyFile(await madePaper(many, { jobs, file: 'xlsx' })));
  expect(new Set(names.map((it) => it.toLowerCase())).size).toBe(names.length);
  for (const name of names) expect(name).toMatch(/^[^[\]:*?/\\]{1,31}$/);
});

test('the same show gives the same bytes', async () => {
  expect(await workbookOf(show)).toEqual(await workbookOf(show));
});

const office = ['soffice', 'libreoffice'].find((it) => spawnSync(it, ['--version']).status === 0);

/** Runs where an office program is installed; elsewhere it is reported as not run, and not as passed. */
describe.runIf(office !== undefined)('an office program (LibreOffice)', () => {
  test('opens the workbook and shows every cell as the text or number it is', async () => {
    const folder = temporaryFolder();
    const path = join(folder, 'sheets.xlsx');
    writeFileSync(path, await workbookOf(nasty));
    mkdirSync(join(folder, 'profile'));
    // Comma, double quote, UTF-8, cells as they are shown, every worksheet to a file of its own.
    const form = 'csv:Text - txt - csv (StarCalc):44,34,76,1,,0,false,true,false,false,false,-1';
    const profile = `-env:UserInstallation=file://${join(folder, 'profile')}`;
    const done = spawnSync(
      office ?? '',
      [profile, '--headless', '--convert-to', form, '--outdir', folder, path],
      {
        encoding: 'utf8',
        timeout: 90_000,
      },
    );
    expect(done.status, done.stderr).toBe(0);
    const text = readFileSync(join(folder, 'sheets-Patch by act.csv'), 'utf8');
    for (const name of nastyNames) expect(text).toContain(shown(name).replaceAll('"', '""'));
    expect(readFileSync(join(folder, 'sheets-Copies and gains.csv'), 'utf8')).toContain(',-3.5,');
  }, 120_000);
});
