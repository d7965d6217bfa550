import { join } from 'node:path';
import type { Page } from 'playwright';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { makerOf, type SheetId, sheetIds } from '../../core/sheets/sheets.ts';
import { unlike, unlikeApproved } from '../helpers/approved-pictures.ts';
import { chromiumForFile } from '../helpers/chromium.ts';
import { madePaper, onlyFile } from '../helpers/made-paper.ts';
import { paperShow } from '../helpers/paper-show.ts';
import { openPainter } from '../helpers/pdf-pictures.ts';

/**
 * Pictures of every sheet against pictures that somebody has looked at and approved. After a wanted change look at
 * the sheets, then approve the new pictures: FOLDBOOK_APPROVE=1 npm test -- tests/end-to-end/paper-pictures
 */
const folder = join(import.meta.dirname, 'paper-pictures');
const widthPx = 400;
/** Share of pixels that may be unlike: fonts are painted a little differently by each Chromium. */
const mostUnlike = 0.004;

const show = paperShow([
  { name: 'Tin Lanterns', lines: 6, mixes: 2 },
  { name: 'Paper Herons', lines: 14, mixes: 4 },
]);

const browser = chromiumForFile();
let painter: Page;
beforeAll(async () => {
  painter = await openPainter(browser());
});
afterAll(() => painter?.close());

async function paint(id: SheetId, pageNumber: number): Promise<Uint8Array> {
  const ofId = makerOf(id).of === 'day' ? 'day' : 'act-1';
  const made = await madePaper(show, { jobs: [{ sheet: id, ofId }], file: 'pdf' });
  const base64 = Buffer.from(onlyFile(made)).toString('base64');
  const picture = await painter.evaluate(([pdf, page, width]) => window.painter.paint(pdf, page, width), [
    base64,
    pageNumber,
    widthPx,
  ] as const);
  return Buffer.from(picture.slice(picture.indexOf(',') + 1), 'base64');
}

/** The labels stand on the second page, behind what is said of them. */
const pageOf = (id: SheetId) => (id === 'channel labels' || id === 'line labels' ? 2 : 1);

test.each(sheetIds)('the sheet "%s" looks as it was approved', async (id) => {
  const picture = await paint(id, pageOf(id));
  const { whole } = await unlikeApproved(painter, folder, id.replaceAll(' ', '-'), picture);
  expect(whole).toBeLessThanOrEqual(mostUnlike);
});

test('a sheet with another row is seen to differ, so the comparison is no formality', async () => {
  const { whole } = await unlike(painter, await paint('line check', 1), await paint('input list stage', 1));
  expect(whole).toBeGreaterThan(mostUnlike * 3);
});
