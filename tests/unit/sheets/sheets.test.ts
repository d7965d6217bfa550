import { describe, expect, test } from 'vitest';
import type { Grid } from '../../../core/rider/grid.ts';
import { readRider } from '../../../core/rider/read-rider.ts';
import { cellText } from '../../../core/sheets/cell-text.ts';
import { jobsOfAct, jobsOfDay } from '../../../core/sheets/jobs.ts';
import { kitOfDay } from '../../../core/sheets/kit.ts';
import { sheetMaker } from '../../../core/sheets/make-sheets.ts';
import { type PaperJob, sheetKey } from '../../../core/sheets/paper-request.ts';
import type { Sheet, TablePart } from '../../../core/sheets/sheet.ts';
import { type SheetId, SheetOptions, sheetIds } from '../../../core/sheets/sheets.ts';
import { viewActOfShow, viewDayOfShow } from '../../../core/sheets/view-show.ts';
import { documentFromShow, type Show, type ShowDocument, showFromRows } from '../../../core/show/show.ts';
import { paperShow } from '../../helpers/paper-show.ts';

const options = SheetOptions.parse({});

function made(show: Show, job: PaperJob): Sheet {
  const sheet = sheetMaker(show, options)(job);
  if (!sheet) throw new Error(`no sheet ${job.sheet} of ${job.ofId}`);
  return sheet;
}

const tablesOf = (sheet: Sheet) => sheet.parts.filter((part) => part.is === 'table');
const wordsOf = ({ rows, columns }: TablePart) =>
  rows.map(({ cells }) =>
    cells.map((cell, at) => cellText(cell, columns[at] ?? { decimals: 0, signed: false })),
  );

const sizes = [
  { what: 'an act of 32 lines and 8 mixes', lines: 32, mixes: 8 },
  { what: 'an act of 96 lines and 16 mixes', lines: 96, mixes: 16 },
  { what: 'an act of 2 lines', lines: 2, mixes: 1 },
  { what: 'an act with nothing in it', lines: 0, mixes: 0 },
];

describe.each(sizes)('$what', ({ lines, mixes }) => {
  const show = paperShow([
    { name: 'Tin Lanterns', lines: 5, mixes: 1 },
    { name: 'Paper Herons', lines, mixes },
  ]);
  const jobs = [...jobsOfAct(show, 'act-1', 'pdf'), ...jobsOfDay(show, 'day', 'pdf').slice(0, 4)];

  test.each(jobs)('has a whole $sheet, with a cell for every column and no row twice', (job) => {
    const sheet = made(show, job);
    expect(sheet.key).toBe(sheetKey(job));
    for (const table of tablesOf(sheet)) {
      for (const { cells } of table.rows) expect(cells).toHaveLength(table.columns.length);
      expect(new Set(table.rows.map(({ key }) => key)).size).toBe(table.rows.length);
      expect(table.empty === '' ? table.rows.length : 1).toBeGreaterThan(0);
    }
  });

  const listsOfLines: SheetId[] = [
    'input list foh',
    'input list stage',
    'input list band',
    'patch by box',
    'patch by act',
    'copies and gains',
    'mixes',
    'line check',
    'stage plot',
  ];

  test.each(listsOfLines)('has every source on the sheet "%s"', (id) => {
    const told = tablesOf(made(show, { sheet: id, ofId: 'act-1' }))
      .flatMap(wordsOf)
      .flat();
    const view = viewActOfShow(show, 'act-1');
    for (const { source } of view?.lines ?? []) expect(told).toContain(source.name);
  });

  test('tells the socket of every line where it is plugged, and says who has none', () => {
    const told = tablesOf(made(show, { sheet: 'patch by act', ofId: 'act-1' })).flatMap(wordsOf);
    const view = viewActOfShow(show, 'act-1');
    const want = view?.lines.map(({ source, socketName }) => [source.name, socketName || 'not patched']);
    expect(told.map((row) => [row[1], row[2]])).toEqual(want);
  });
});

test('every sheet of the table is made for an act, a day or a changeover', () => {
  const show = paperShow([
    { name: 'Tin Lanterns', lines: 5, mixes: 1 },
    { name: 'Paper Herons', lines: 6, mixes: 2 },
  ]);
  expect(new Set(jobsOfDay(show, 'day', 'pdf').map(({ sheet }) => sheet))).toEqual(new Set(sheetIds));
});

test('what is not in the show has no sheet', () => {
  const make = sheetMaker(paperShow([]), options);
  expect(make({ sheet: 'line check', ofId: 'nobody' })).toBeNull();
  expect(make({ sheet: 'kit', ofId: 'no day' })).toBeNull();
  expect(make({ sheet: 'changeover by person', ofId: 'nobody' })).toBeNull();
});

describe('the changeover', () => {
  const show = paperShow([
    { name: 'Tin Lanterns', lines: 8, mixes: 2 },
    { name: 'Paper Herons', lines: 12, mixes: 3 },
  ]);
  const byPlace = tablesOf(made(show, { sheet: 'changeover by place', ofId: 'act-1' }));
  const byPerson = tablesOf(made(show, { sheet: 'changeover by person', ofId: 'act-1' }));
  const whats = (tables: TablePart[], title: string) =>
    tables.flatMap((table) =>
      wordsOf(table).map((row) => row[table.columns.findIndex((it) => it.title === title)]),
    );

  test('by place tells each task once, and by person leaves none out', () => {
    const all = whats(byPlace, 'What');
    expect(new Set(all).size).toBe(all.length);
    expect(new Set(whats(byPerson, 'What'))).toEqual(new Set(all));
    expect(all.length).toBeGreaterThan(12);
  });

  test('tells first what is plugged ahead, while the act before plays', () => {
    for (const [first] of [byPerson, byPlace]) {
      expect(first?.heading).toBe('Ahead, while Tin Lanterns plays');
      expect(whats([first as TablePart], 'What')).toContain('Plug Keys L 12 into D2.');
    }
  });

  test('mutes the outputs before anything else, and opens them last', () => {
    const desk = wordsOf(byPerson.find((it) => it.heading === 'Desk') as TablePart);
    expect(desk[0]?.[1]).toMatch(/^Mute every output/);
    expect(desk.at(-1)?.[1]).toMatch(/^Open the outputs/);
  });

  test('before the first act of the day there is none, and the sheet says so', () => {
    const sheet = made(show, { sheet: 'changeover by person', ofId: 'act-0' });
    expect(tablesOf(sheet)).toEqual([]);
    expect(jobsOfAct(show, 'act-0', 'pdf').map(({ sheet: id }) => id)).not.toContain('changeover by person');
  });
});

test('the kit counts what the house brings, act by act, and what is short', () => {
  const show = paperShow([
    { name: 'Tin Lanterns', lines: 3, mixes: 1 },
    { name: 'Paper Herons', lines: 6, mixes: 12 },
  ]);
  const day = viewDayOfShow(show, 'day');
  if (!day) throw new Error('the day is in the show');
  // Lines 1 and 4 are DIs, the others microphones on a boom; every other mix is a wedge. Four wedges are in stock.
  expect(kitOfDay(day).map(({ kind, ofAct, stock }) => [kind, ofAct, stock])).toEqual([
    ['mic', [2, 4], null],
    ['di', [1, 2], null],
    ['stand', [2, 4], null],
    ['wedge', [1, 6], 4],
    ['in-ear pack', [0, 6], null],
  ]);
  const [table] = tablesOf(made(show, { sheet: 'kit', ofId: 'day' }));
  const wedge = table && wordsOf(table).find((row) => row[0] === 'Wedge');
  expect(wedge?.slice(2, 6)).toEqual(['6', '7', '4', '2']);
});

test('the patch of the day marks what is plugged in a changeover, and what is plugged in peace', () => {
  const show = paperShow([
    { name: 'Tin Lanterns', lines: 1, mixes: 0 },
    { name: 'Paper Herons', lines: 2, mixes: 0 },
  ]);
  const cells = tablesOf(made(show, { sheet: 'day patch', ofId: 'day' }))
    .flatMap(wordsOf)
    .flat();
  expect(cells).toContain('» Kick in 1');
  expect(cells).toContain('› Kick out 2');
});

test('the reply to the band asks what the rider leaves open, and no more once it is answered', () => {
  const rows = documentFromShow(paperShow([{ name: 'Paper Herons', lines: 2, mixes: 1 }]));
  const grid: Grid = {
    name: 'rider.csv',
    form: 'csv',
    sheets: [
      {
        name: '',
        rows: [
          ['ch', 'source'],
          ['1', 'Kick'],
          ['2', 'Zzyzx frobnicator'],
        ],
      },
    ],
  };
  const rider = {
    id: 'rider',
    actId: 'act-0',
    order: 0,
    fileName: 'rider.csv',
    receivedAt: '',
    writtenOn: '',
    validUntil: '',
    replaced: false,
    grid,
  };
  const questions = (answers: ShowDocument['answers']) => {
    const show = showFromRows({ ...rows, riders: [rider], answers });
    const sheet = made(show, { sheet: 'advance reply', ofId: 'act-0' });
    return (
      tablesOf(sheet)
        .find(({ heading }) => heading === 'Open questions')
        ?.rows.map(({ key }) => key) ?? []
    );
  };
  const open = questions([]);
  expect(open.length).toBeGreaterThan(0);
  const reading = readRider(grid);
  const answers = reading.questions.map(({ key, options: [first] }, at) => ({
    id: `answer ${at}`,
    riderId: 'rider',
    questionKey: key,
    value: first?.value ?? '',
  }));
  expect(questions(answers).filter((key) => open.includes(key))).toEqual([]);
});
