import fc from 'fast-check';
import { expect, test } from 'vitest';
import { jobsOfAct } from '../../../core/sheets/jobs.ts';
import { sheetMaker } from '../../../core/sheets/make-sheets.ts';
import { SheetOptions } from '../../../core/sheets/sheets.ts';
import { documentFromShow, showFromRows } from '../../../core/show/show.ts';
import { TypeCase } from '../../../electron/paper/fonts/type-case.ts';
import type { Page } from '../../../electron/paper/setting/display-list.ts';
import { laySheet } from '../../../electron/paper/setting/lay-sheet.ts';
import { paperShow } from '../../helpers/paper-show.ts';

const typeCase = new TypeCase();
const unchanged = { marks: new Map(), gone: [] };

/** Names as they come: long, without a space, in several scripts, of odd signs. */
const name = fc.oneof(
  fc.string({ unit: 'grapheme', minLength: 1, maxLength: 200 }),
  fc.string({ unit: fc.constantFrom('x', 'M', 'ﷺ', 'ä', '音', 'ع', '-', '/'), minLength: 1, maxLength: 200 }),
  fc.lorem({ maxCount: 20 }).map((text) => text.slice(0, 200)),
);

/** What lies over an edge of its page, or is too small to be read. */
function faults({ widthPt, heightPt, marks }: Page): string[] {
  return marks.flatMap((mark) => {
    if (mark.is !== 'text') return [];
    const right = mark.x + mark.line.unitWidth * mark.sizePt;
    const said = mark.line.runs.map(({ text }) => text).join('');
    const isInside = mark.x >= 0 && right <= widthPt + 0.5 && mark.y - mark.sizePt >= 0 && mark.y <= heightPt;
    return isInside && mark.sizePt >= 9 ? [] : [`${said} at ${mark.x}, ${mark.y}`];
  });
}

test('whatever lines, places, stands and notes are called, every sheet keeps within its page and to 9 points', () => {
  const rows = documentFromShow(paperShow([{ name: 'Paper Herons', lines: 6, mixes: 3 }]));
  fc.assert(
    fc.property(
      fc.array(name, { minLength: 8, maxLength: 8 }),
      fc.constantFrom('A4', 'Letter'),
      (names, paper) => {
        const show = showFromRows({
          ...rows,
          acts: rows.acts.map((it) => ({ ...it, name: names[6] ?? '' })),
          sources: rows.sources.map((it, at) => ({
            ...it,
            name: names[at] ?? '',
            stand: names[7] ?? '',
            place: names[6] ?? '',
            notes: (names[7] ?? '').repeat(5),
          })),
          mixes: rows.mixes.map((it, at) => ({ ...it, name: names[at] ?? '' })),
        });
        const make = sheetMaker(show, SheetOptions.parse({}));
        for (const job of jobsOfAct(show, 'act-0', 'pdf')) {
          const sheet = make(job);
          if (!sheet) throw new Error('the act is in the show');
          const { pages } = laySheet(sheet, paper, unchanged, null, typeCase);
          expect(pages.length).toBeGreaterThan(0);
          expect(pages.flatMap(faults), job.sheet).toEqual([]);
        }
      },
    ),
    { numRuns: 25 },
  );
}, 60_000);
