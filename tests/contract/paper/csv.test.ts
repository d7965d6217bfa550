import Papa from 'papaparse';
import { expect, test } from 'vitest';
import { sheetMaker } from '../../../core/sheets/make-sheets.ts';
import { makerOf, SheetOptions, sheetIds } from '../../../core/sheets/sheets.ts';
import { documentFromShow, showFromRows } from '../../../core/show/show.ts';
import { writeCsv } from '../../../electron/paper/tables/write-csv.ts';
import { paperShow } from '../../helpers/paper-show.ts';

const rows = documentFromShow(
  paperShow([
    { name: 'Tin Lanterns', lines: 3, mixes: 1 },
    { name: 'Paper Herons', lines: 7, mixes: 2 },
  ]),
);
const nastyNames = ['plain', 'comma, inside', '"quoted"', 'two\nlines', '=1+1', '-6 dB', '@home'];
const show = showFromRows({
  ...rows,
  sources: rows.sources.map((it) =>
    it.actId === 'act-1' ? { ...it, name: nastyNames[it.order] ?? it.name, gainDb: -3.5 } : it,
  ),
});
const make = sheetMaker(show, SheetOptions.parse({}));

/** Read by the rules of RFC 4180, by another library than the one that wrote it. */
const parsed = (text: string) =>
  Papa.parse<string[]>(text.replace(/^\ufeff/, ''), { delimiter: ',', newline: '\r\n' });

test.each(sheetIds.filter((id) => makerOf(id).files.includes('csv')))(
  'the CSV of "%s" has a head and whole records of one length (RFC 4180)',
  (id) => {
    const sheet = make({ sheet: id, ofId: makerOf(id).of === 'day' ? 'day' : 'act-1' });
    const files = sheet ? writeCsv(sheet) : [];
    expect(files.length).toBeGreaterThan(0);
    expect(new Set(files.map(({ name }) => name)).size).toBe(files.length);
    for (const { text } of files) {
      expect(text.startsWith('\ufeff')).toBe(true);
      expect(text.endsWith('\r\n')).toBe(true);
      const { data, errors } = parsed(text);
      expect(errors).toEqual([]);
      const records = data.slice(0, -1);
      expect(new Set(records.map((it) => it.length)).size).toBe(1);
    }
  },
);

test('commas, quotes and line breaks come back as they were, and what looks like a formula is held back', () => {
  const sheet = make({ sheet: 'patch by act', ofId: 'act-1' });
  const [file] = sheet ? writeCsv(sheet) : [];
  const names = parsed(file?.text ?? '')
    .data.slice(1, -1)
    .map((record) => record[1]);
  expect(names).toEqual(['plain', 'comma, inside', '"quoted"', 'two\nlines', "'=1+1", "'-6 dB", "'@home"]);
});

test('a number keeps its point and its own minus, so that a spreadsheet counts with it', () => {
  const sheet = make({ sheet: 'copies and gains', ofId: 'act-1' });
  const [file] = sheet ? writeCsv(sheet) : [];
  const [head = [], first = []] = parsed(file?.text ?? '').data;
  expect(first[head.indexOf('Gain, dB')]).toBe('-3.5');
});

test('tables of the same columns share one file that says which a row is of', () => {
  const sheet = make({ sheet: 'patch by box', ofId: 'act-1' });
  const files = sheet ? writeCsv(sheet) : [];
  expect(files.map(({ name }) => name)).toEqual(['all', 'Not patched']);
  const records = parsed(files[0]?.text ?? '').data;
  expect(records[0]?.slice(0, 2)).toEqual(['Table', 'Socket']);
  expect(records[1]?.slice(0, 2)).toEqual(['Box A', 'A1']);
});
