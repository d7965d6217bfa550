import { describe, expect, test } from 'vitest';
import { cellText } from '../../../core/sheets/cell-text.ts';
import { jobsOfAct, jobsOfDay } from '../../../core/sheets/jobs.ts';
import { sheetMaker } from '../../../core/sheets/make-sheets.ts';
import type { PaperJob } from '../../../core/sheets/paper-request.ts';
import type { Column, Row, Sheet } from '../../../core/sheets/sheet.ts';
import { SheetOptions } from '../../../core/sheets/sheets.ts';
import { documentFromShow, type Show, showFromRows } from '../../../core/show/show.ts';
import { madePaper, onlyFile } from '../../helpers/made-paper.ts';
import { paperShow } from '../../helpers/paper-show.ts';
import { type FoundPage, pdfPages, wordsOf } from '../../helpers/pdf-pages.ts';

/** The text of the PDF is read by pdf.js, which has nothing in common with the writer. */
async function pagesOf(
  show: Show,
  jobs: PaperJob[],
  paper: 'A4' | 'Letter' | 'A3' = 'A4',
): Promise<FoundPage[]> {
  return pdfPages(onlyFile(await madePaper(show, { jobs, file: 'pdf', paper })));
}

/** Words without their spaces: where a line ends is the setter's business. */
const run = (text: string) => text.replace(/\s+/g, '');

/** Smallest size and farthest reach that the sheets may have, in points. */
const smallestPt = 9;
const withinPt = 0.5;

function expectLegible(pages: readonly FoundPage[]): void {
  for (const { texts, widthPt, heightPt } of pages)
    for (const { text, x, y, width, sizePt } of texts) {
      expect(sizePt, text).toBeGreaterThanOrEqual(smallestPt);
      expect(x, text).toBeGreaterThanOrEqual(0);
      expect(x + width, text).toBeLessThanOrEqual(widthPt + withinPt);
      expect(y - sizePt, text).toBeGreaterThanOrEqual(0);
      expect(y, text).toBeLessThanOrEqual(heightPt);
    }
}

/** No word runs into the next one on its line. */
function expectNoOverlap(pages: readonly FoundPage[]): void {
  for (const { texts } of pages) {
    const lines = Map.groupBy(texts, ({ y }) => Math.round(y));
    for (const line of lines.values()) {
      const ordered = line.toSorted((a, b) => a.x - b.x);
      ordered.forEach((word, at) => {
        const before = ordered[at - 1];
        if (before)
          expect(before.x + before.width, `${before.text} | ${word.text}`).toBeLessThanOrEqual(
            word.x + withinPt,
          );
      });
    }
  }
}

/** What must be found, without spaces. Lines of two cells may stand between each other, so cells are in words. */
function* printedOf(sheet: Sheet | null): Generator<string> {
  for (const part of sheet?.parts ?? []) {
    if (part.is === 'text') yield* part.paragraphs.map(run);
    if (part.is === 'table') for (const row of part.rows) yield* wordsOfRow(row, part.columns);
  }
}

function wordsOfRow({ cells }: Row, columns: readonly Column[]): string[] {
  return cells.flatMap((cell, at) => {
    const column = columns[at];
    const isPrinted = column?.kind === 'text' || column?.kind === 'number';
    return isPrinted ? cellText(cell, column).split(/[\s/-]+/) : [];
  });
}

const acts = [
  { what: '32 lines', name: 'Paper Herons', lines: 32, mixes: 8 },
  { what: '96 lines', name: 'Ninety Six', lines: 96, mixes: 16 },
  { what: '2 lines', name: 'Two', lines: 2, mixes: 1 },
  { what: 'nothing', name: 'Nobody Yet', lines: 0, mixes: 0 },
];

describe.each(acts)('an act of $what', ({ name, lines, mixes }) => {
  const show = paperShow([
    { name: 'Tin Lanterns', lines: 5, mixes: 2 },
    { name, lines, mixes },
  ]);
  const jobs = jobsOfAct(show, 'act-1', 'pdf');
  const make = sheetMaker(show, SheetOptions.parse({}));

  test.each(jobs)('has all it says on the paper of $sheet: every cell of every table', async (job) => {
    const pages = await pagesOf(show, [job]);
    const paper = run(wordsOf(pages));
    for (const words of printedOf(make(job))) expect(paper).toContain(words);
  });

  test('is legible: nothing smaller than 9 points, nothing over an edge, nothing over its neighbour', async () => {
    const pages = await pagesOf(show, jobs);
    expectLegible(pages);
    expectNoOverlap(pages);
  });

  test('fits Letter and A3 as well', async () => {
    for (const paper of ['Letter', 'A3'] as const) expectLegible(await pagesOf(show, jobs, paper));
  });
});

test('heads stand on every page of a list, and no row is broken over two', async () => {
  const show = paperShow([{ name: 'Ninety Six', lines: 96, mixes: 4 }]);
  const pages = await pagesOf(show, [{ sheet: 'line check', ofId: 'act-0' }]);
  expect(pages.length).toBeGreaterThan(1);
  const view = sheetMaker(show, SheetOptions.parse({}))({ sheet: 'line check', ofId: 'act-0' });
  const [table] = view?.parts ?? [];
  if (table?.is !== 'table') throw new Error('the line check is a table');
  const perPage = pages.map((page) => run(wordsOf([page])));
  for (const words of perPage.slice(0, -1)) expect(words).toContain('SocketSource');
  for (const { cells } of table.rows)
    expect(
      perPage.filter((words) => words.includes(run(String(cells[2])))).length,
      String(cells[2]),
    ).toBeGreaterThan(0);
});

test('every page says its number, its version and what it replaces', async () => {
  const show = paperShow([{ name: 'Paper Herons', lines: 60, mixes: 4 }]);
  const jobs = jobsOfAct(show, 'act-0', 'pdf');
  const first = await madePaper(show, { jobs, file: 'pdf' });
  for (const page of await pdfPages(onlyFile(first)))
    expect(wordsOf([page])).toMatch(
      /Version 1, 12 Jun 2027, 09:30, replaces none.*Page \d+ of \d+, in the set \d+ of \d+/,
    );
  const rows = documentFromShow(show);
  const changed = showFromRows({
    ...rows,
    sources: rows.sources
      .filter(({ id }) => id !== 'act-0-source-59')
      .map((it) => (it.id === 'act-0-source-1' ? { ...it, name: 'Kick wide' } : it)),
  });
  const editions = new Map(first.editions.map(({ key, edition }) => [key, edition]));
  const again = await madePaper(
    changed,
    { jobs: [{ sheet: 'line check', ofId: 'act-0' }], file: 'pdf' },
    editions,
  );
  const pages = await pdfPages(onlyFile(again));
  for (const page of pages)
    expect(wordsOf([page])).toContain(
      'Version 2, 12 Jun 2027, 09:30, replaces version 1 of 12 Jun 2027, 09:30',
    );
  const marked = pages.flatMap(({ texts }) =>
    texts
      .filter(({ text }) => text === 'C')
      .map((mark) => texts.find((it) => Math.abs(it.y - mark.y) < 4 && it.text.includes('Kick wide'))?.text),
  );
  expect(marked).toEqual(['Kick wide']);
  expect(wordsOf(pages)).toContain('Gone since version 1 of 12 Jun 2027, 09:30');
});

test('names in every script are on the paper, with the letters that carry their meaning', async () => {
  const names = [
    'Žižkov Łódź',
    'Größe',
    'Trumpet in B♭',
    'Tuba in F♯',
    '音楽の夜',
    '周杰',
    '서울 밴드',
    'Αθήνα',
    'Москва',
    'فرقة النور',
    'להקה',
  ];
  const rows = documentFromShow(paperShow([{ name: 'Paper Herons', lines: names.length, mixes: 0 }]));
  const show = showFromRows({
    ...rows,
    sources: rows.sources.map((it, at) => ({ ...it, name: names[at] ?? '' })),
  });
  const pages = await pagesOf(show, [{ sheet: 'line check', ofId: 'act-0' }]);
  const found = run(wordsOf(pages)).normalize('NFKC');
  // A reader gives words that are written from right to left in the order they stand on paper, or turned round.
  const either = (word: string) => [word, [...word].reverse().join('')];
  for (const word of names.flatMap((name) => name.split(' ')))
    expect(
      either(word).some((it) => found.includes(it.normalize('NFKC'))),
      word,
    ).toBe(true);
  expect(found).not.toContain('[U+');
});

test('a sign that no font has is told by its number, never left out', async () => {
  const rows = documentFromShow(paperShow([{ name: 'Paper Herons', lines: 1, mixes: 0 }]));
  const show = showFromRows({
    ...rows,
    sources: rows.sources.map((it) => ({ ...it, name: 'Vocal \u{1F3A4}' })),
  });
  expect(wordsOf(await pagesOf(show, [{ sheet: 'line check', ofId: 'act-0' }]))).toContain('Vocal [U+1F3A4]');
});

test('a note of thousands of letters is shortened in its row, says so, and stands below in full', async () => {
  const note = Array.from({ length: 900 }, (_, at) => `word${at}`).join(' ');
  const rows = documentFromShow(paperShow([{ name: 'Paper Herons', lines: 2, mixes: 0 }]));
  const show = showFromRows({ ...rows, sources: rows.sources.map((it) => ({ ...it, notes: note })) });
  const words = run(wordsOf(await pagesOf(show, [{ sheet: 'input list stage', ofId: 'act-0' }])));
  expect(words).toContain('(shortened,infullbelow)');
  expect(words).toContain(run(`Line 1, Kick in 1: word0`));
  for (const at of [0, 450, 899]) expect(words).toContain(`word${at}`);
});

test('a day of 40 acts makes one set with a cover, its pages numbered through', async () => {
  const show = paperShow(
    Array.from({ length: 40 }, (_, at) => ({
      name: `Act ${at + 1}`,
      lines: 6 + (at % 5),
      mixes: 1 + (at % 3),
    })),
  );
  const jobs = jobsOfDay(show, 'day', 'pdf').filter(({ sheet }) => sheet !== 'stage plot');
  const made = await madePaper(show, { jobs, file: 'pdf', coverOfDayId: 'day' });
  const pages = await pdfPages(onlyFile(made));
  expect(pages).toHaveLength(made.pageCount);
  pages.forEach((page, at) => {
    expect(wordsOf([page])).toContain(`in the set ${at + 1} of ${pages.length}`);
  });
  expectLegible(pages);
  const cover = run(wordsOf(pages.slice(0, 30)));
  for (let act = 1; act <= 40; act++) expect(cover).toContain(`Act${act}`);
  const patch = run(wordsOf(pages.filter(({ widthPt }) => widthPt > 1100)));
  for (let act = 1; act <= 40; act++) expect(patch).toContain(`Act${act}`);
}, 60_000);

test('labels keep to the measures of the form, and say on a page of their own which names were made shorter', async () => {
  const show = paperShow([{ name: 'Paper Herons', lines: 20, mixes: 0 }]);
  const form = {
    is: 'sheet',
    labelWidthMm: 22,
    labelHeightMm: 15,
    columns: 5,
    rows: 10,
    leftMm: 10,
    topMm: 20,
  } as const;
  const made = await madePaper(show, {
    jobs: [{ sheet: 'line labels', ofId: 'act-0' }],
    file: 'pdf',
    options: { lineLabels: form },
  });
  const [told, labels] = await pdfPages(onlyFile(made));
  if (!told || !labels) throw new Error('labels have two pages');
  const mm = 72 / 25.4;
  const numberAt = (line: string) => labels.texts.find(({ text, sizePt }) => text === line && sizePt > 10);
  const first = numberAt('1');
  const seventh = numberAt('7');
  expect((seventh?.y ?? 0) - (first?.y ?? 0)).toBeCloseTo(15 * mm, 1);
  expect(numberAt('2')?.x ?? 0).toBeCloseTo((first?.x ?? 0) + 22 * mm, 1);
  expect(wordsOf([told])).toContain('Drüber Größe Mikrofon 17');
  expect(wordsOf([labels])).not.toContain('Drüber Größe Mikrofon 17');
});
