import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { readDocument } from '../../../electron/documents/read-document.ts';

const fixture = (name: string) => readFileSync(new URL(`../../fixtures/documents/${name}`, import.meta.url));

async function rowsOf(name: string): Promise<string[][]> {
  const outcome = await readDocument(name, fixture(name));
  if (!outcome.ok) throw new Error(outcome.problem.what);
  return outcome.value.sheets.flatMap((sheet) => sheet.rows);
}

const names = [
  'Kick in',
  'Kick out',
  'Snare top',
  'Snare bottom',
  'Hi-hat',
  'Tom 1',
  'Tom 2',
  'Floor tom',
  'Overhead L',
  'Overhead R',
  'Bass DI',
  'Bass amp',
  'Gtr SR, mic and DI preferred, two lines if you have them',
  'Gtr SL',
  'Keys L',
  'Keys R',
  'Tracks L',
  'Tracks R',
  'Click',
  'Ada vocal',
  'Ben vocal',
  'Cleo vocal',
  'Spare vocal',
  'Talkback',
];
/** The line that the PDFs of Chromium hold under each number, as their maker wrote it. */
const inputLine = (number: number): string[] => [
  String(number),
  names[(number - 1) % 24] ?? '',
  number % 3 === 0 ? 'small condenser' : 'dynamic',
  number % 4 === 0 ? '' : 'short boom',
  number % 3 === 0 ? '48V' : '',
  number === 13 ? 'both amps are loud, please keep the screens away from the singers' : '',
];
const header = ['Ch', 'Source', 'Mic / DI', 'Stand', '48V', 'Notes'];
const inputLines = (count: number) => Array.from({ length: count }, (_, place) => inputLine(place + 1));
const isOf = (count: number) => (row: string[]) => row.length === count;

describe('a table in a PDF is read by where its text stands', () => {
  test.each([
    ['cells that wrap inside drawn lines', 'wrapped-cells-with-lines.pdf', 24],
    ['cells that wrap without any line', 'wrapped-cells-without-lines.pdf', 24],
    ['a table over several pages has its heading once', 'table-over-pages.pdf', 90],
    ['a table printed sideways', 'text-turned.pdf', 12],
  ])('%s', async (_, name, count) => {
    const rows = (await rowsOf(name)).filter((row) => row.filter((cell) => cell !== '').length > 1);
    expect(rows).toEqual([header, ...inputLines(count)]);
  });

  test('a list in two columns goes on in its own columns', async () => {
    const [title, head, ...rows] = await rowsOf('list-in-two-columns.pdf');
    expect(title?.[0]).toBe('Harbour Lanterns');
    expect(head).toEqual(['Ch', 'Source', 'Mic']);
    expect(rows).toEqual(
      names.map((name, place) => [String(place + 1), name.slice(0, 14).trim(), 'dynamic']),
    );
  });

  test('prose in two columns is read down one and then down the other', async () => {
    const text = (await rowsOf('prose-in-two-columns.pdf')).map((row) => row.join('|')).join(' ');
    const numbers = [...text.matchAll(/Paragraph (\d+) says/g)].map((match) => Number(match[1]));
    expect(numbers).toEqual(Array.from({ length: 30 }, (_, place) => place + 1));
    expect(text).not.toContain('|');
  });

  test('a page that is turned is read as it is seen', async () => {
    const rows = await rowsOf('page-turned.pdf');
    expect(rows[0]).toEqual(['Ch', 'Source', 'Mic / DI', 'Stand']);
    expect(rows.map((row) => row[1])).toEqual(['Source', ...names.slice(0, 12)]);
  });

  test('a cell merged over several lines holds for each of them', async () => {
    const rows = await rowsOf('merged-cells.pdf');
    const players = rows
      .filter(isOf(6))
      .slice(1)
      .map((row) => row[5]);
    expect(players).toEqual([...Array(10).fill('Kes'), 'Sil', 'Sil', ...Array(12).fill('')]);
    expect(rows.filter(isOf(4))).toEqual([
      ['Mix', 'Who', 'Type', 'Wants'],
      ['1', 'Ada', 'wedge', 'lots of Ada, some keys'],
      ['2', 'Ben', 'in-ear stereo', 'click lots, everything some'],
    ]);
  });

  test('two tables of one width, one below the other, have columns of their own', async () => {
    const rows = await rowsOf('two-grids-of-one-width.pdf');
    expect(rows.find((row) => row[0] === '3')).toEqual(['3', 'Overhead L', 'small condenser', 'tall', '48V']);
    const wants = 'plenty of her own vocal, a little bass, and of the drums nothing but the kick, please';
    expect(rows.slice(-3)).toEqual([
      ['1', 'Ada', '2 wedges', wants],
      ['2', 'Ben (bass)', 'in-ear stereo', 'bass, kick, some of Ada'],
      ['3', 'Cleo (drums)', 'drum fill', 'bass and kick loud'],
    ]);
  });

  test.each([
    ['only rows are parted by lines, and columns nearly touch', 'lines-between-rows-only.pdf'],
    ['no line is drawn, and cells begin at the height of their number', 'cells-that-go-on-below.pdf'],
    ['one row is a coloured stripe, and cells are centred on their number', 'one-stripe.pdf'],
  ])('two tables below each other: %s', async (_, name) => {
    const rows = (await rowsOf(name)).map((row) => row.filter((cell) => cell !== ''));
    const overheads = 'spaced pair, please, and not too low over the cymbals';
    expect(rows).toContainEqual(['CH', 'Instrument', 'Mic / DI', 'Stand', '48V', 'Notes']);
    expect(rows).toContainEqual(['6', 'Overhead L', 'small condenser', 'tall', 'x', overheads]);
    expect(rows).toContainEqual(['12', 'Lead vocal Ada', 'dynamic', 'tall', 'spare mic please']);
    expect(rows.slice(-5)).toEqual([
      ['Mix', 'Who', 'What', 'Wishes'],
      [
        '1',
        'Ada (centre)',
        '2 wedges',
        'plenty of her own vocal, guitar, a little bass, no drums but the kick',
      ],
      [
        '2',
        'Ben',
        'in-ear stereo, ours',
        'own vocal loud, bass, kick, some of Ada and the click if there is one',
      ],
      ['3', 'Cleo (drums)', 'drum fill', 'bass and kick loud, a bit of everything else'],
      ['We bring our own in-ears. Thank you!'],
    ]);
  });

  test('two tables side by side are read one after the other', async () => {
    const rows = (await rowsOf('tables-side-by-side.pdf')).filter(isOf(3));
    expect(rows.map((row) => row[0])).toEqual([
      'Ch',
      ...Array.from({ length: 12 }, (_, place) => String(place + 1)),
      'Name',
      'Ada',
      'Ben',
      'Cleo',
      'Dru',
    ]);
    expect(rows.at(-1)).toEqual(['Dru', 'drum fill', 'kick']);
  });

  test('notes over four lines stay with their line, and a footer does not part the table', async () => {
    const rows = await rowsOf('wrapped-notes-over-pages.pdf');
    const table = rows.filter((row) => /^\d+$/.test(row[0] ?? ''));
    expect(table.map((row) => Number(row[0]))).toEqual(Array.from({ length: 60 }, (_, place) => place + 1));
    const noted = table.filter((row) => row[3] !== '');
    expect(noted.map((row) => Number(row[0]) % 5)).toEqual(Array(12).fill(3));
    expect(new Set(noted.map((row) => row[3]))).toEqual(
      new Set(['please use the new cable that we bring along and not the old one']),
    );
    expect(rows.filter((row) => row.join(' ').includes('Page'))).toHaveLength(1);
  });

  test('what a band typed into the fields of a form is read with the line it stands on', async () => {
    expect((await rowsOf('filled-form.pdf')).slice(1)).toEqual([
      ['Ch', 'Source', 'Mic / DI'],
      ['1', 'Kick', 'dynamic'],
      ['2', 'Snare', 'dynamic'],
      ['3', 'Lead vocal', 'own wireless'],
      ['4', '', ''],
    ]);
  });

  test('a list lined up with spaces is a table, and a page without text is named', async () => {
    const rows = await rowsOf('spaces-and-a-picture.pdf');
    expect(rows[1]).toEqual(['1', 'Kick in', 'dynamic', 'short']);
    expect(rows[24]).toEqual(['24', 'Talkback', 'dynamic', '']);
    expect(rows.at(-1)?.[0]).toMatch(/Page 2 holds no text/);
  });
});

test('a text document gives its tables as cells and counts its automatic numbers', async () => {
  expect(await rowsOf('numbered-lists.docx')).toEqual([
    ['Harbour Lanterns - rider v2'],
    ['Input list'],
    ['Ch', 'Source', 'Mic', 'Player'],
    ['1', 'Kick', 'dynamic', 'Kes'],
    ['2', 'Snare', 'dynamic', 'Kes'],
    ['3', 'Overhead L', 'condenser', 'Kes'],
    ['4', 'Overhead R', 'condenser', 'Kes'],
    ['5', 'Bass', 'DI', 'Sil'],
    ['All lines from stage right', '', '', ''],
    ['Monitors'],
    ['1. Ada: wedge, lots of own vocal'],
    ['2. Ben: in-ears, click lots'],
    ['- no smoke please'],
    ['Power', 'one drop at each side'],
    ['Thanks!'],
    ['valid until December'],
  ]);
});

const kit = ['Kick in', 'Kick out', 'Snare', 'Hi-hat'];

describe('pages of a PDF as bands lay them out', () => {
  test.each([
    [
      'headings across a grid are lines of their own',
      'headings-in-a-grid.pdf',
      [
        ['The Velvet Kettles'],
        ['#', 'Instrument', 'Mic (1st / 2nd choice)', '', 'Notes'],
        ['DRUMS'],
        ...kit.map((name, place) => [String(place + 1), name, 'dynamic', 'any', 'Lena, riser please']),
        ['VOCALS'],
        ['5', 'Lead vox', 'own wireless', '', 'Ida'],
        ['6', 'BV', 'dynamic', '', 'Lena'],
        ['Mix 1: Ida, ears stereo, own pack'],
        ['Mix 2: Lena, ears, click loud'],
      ],
    ],
    [
      'a line the band did not number stays a line',
      'headings-without-lines.pdf',
      [
        ['The Velvet Kettles'],
        ['#', 'Instrument', 'Mic', 'Notes'],
        ['', 'DRUMS', '', ''],
        ...kit.map((name, place) => [String(place + 1), name, 'dynamic', place === 2 ? 'top only' : '']),
        ['', 'VOCALS', '', ''],
        ['5', 'Lead vox', 'own wireless', 'Ida'],
        ['', 'spare for 5', 'dynamic', ''],
        ['6', 'BV', 'dynamic', 'Lena'],
      ],
    ],
    [
      'stripes leave no row out',
      'stripes.pdf',
      [
        ['Inputs'],
        ['1', 'Kick', 'dynamic', 'short'],
        ['2', 'Snare', 'dynamic', 'short'],
        ['3', 'Bass', 'DI', ''],
        ['4', 'Vox Ida', 'dynamic', 'tall'],
        ['Monitors'],
        ['A', 'Ida centre', 'lots of vox Ida, some bass, and a very little bit of snare if the stage is big'],
        ['B', 'Lena drums', 'bass, vox Ida'],
      ],
    ],
    [
      'a stage plot beside a list does not mix with it',
      'plot-beside-a-grid.pdf',
      [
        ['Ch', 'Source', 'Mic'],
        ...[...kit, 'Bass', 'Vox'].map((name, place) => [String(place + 1), name, 'dyn']),
        ...['Lena drums', 'Bass amp', 'Keys', 'Ida vox', 'AUDIENCE'].map((name) => [name]),
      ],
    ],
    [
      'lists keep their numbers',
      'lists.pdf',
      [
        ['Input list'],
        ['1. Kick (dynamic, short stand)'],
        ['2. Snare'],
        ['3. Bass DI'],
        ['4. Vox Ida (own mic)'],
        ['Monitor mixes'],
        ['Ida: wedge, lots of vox'],
        ['Lena: drum fill, kick and bass'],
        [
          'We need four DIs and two risers. Please send the stage plan to the address that you have from the agency, and tell us when we can load in.',
        ],
      ],
    ],
  ])('%s', async (_, name, rows) => {
    expect(await rowsOf(name)).toEqual(rows);
  });
});

describe('a PDF that cannot be read says what to ask for', () => {
  test.each([
    ['a scan', fixture('scan.pdf'), /holds no text: it is a scan/, /a PDF with text/],
    ['a password', fixture('locked.pdf'), /protected with a password/, /without a password/],
    ['a damaged file', fixture('merged-cells.pdf').subarray(0, 300), /damaged PDF/, /send the file again/],
    ['a PDF only by its first line', Buffer.from('%PDF-1.7\nKick in'), /damaged PDF/, /send the file again/],
  ])('%s', async (_, bytes, what, todo) => {
    const outcome = await readDocument('rider.pdf', bytes);
    if (outcome.ok) expect.fail(JSON.stringify(outcome.value));
    expect(outcome.problem.what).toMatch(what);
    expect(outcome.problem.todo).toMatch(todo);
  });
});
