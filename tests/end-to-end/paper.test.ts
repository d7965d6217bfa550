import { AxeBuilder } from '@axe-core/playwright';
import { unzipSync } from 'fflate';
import { describe, expect, test } from 'vitest';
import type { Show } from '../../core/show/show.ts';
import { familyDay, twentyActs } from '../bench/day-family.ts';
import { smallFestival } from '../fixtures/small-festival.ts';
import { chromiumForFile } from '../helpers/chromium.ts';
import { pdfPages, wordsOf } from '../helpers/pdf-pages.ts';
import { Foldbook } from './pages/foldbook.ts';
import { PaperPage } from './pages/paper-page.ts';

const browser = chromiumForFile();

async function start(show: Show = smallFestival(), size?: { width: number; height: number }) {
  const foldbook = await Foldbook.start(browser(), show, size);
  const paper = new PaperPage(foldbook);
  await paper.open();
  return { foldbook, paper };
}

function sourcesOf(show: Show, actName: string): string[] {
  const act = [...show.acts.values()].find(({ name }) => name === actName);
  return [...show.sources.values()].flatMap((it) => (it.actId === act?.id ? [it.name] : []));
}

describe('a sheet is taken along', () => {
  test('its preview has pages with ink, its PDF and its CSV hold every source', async () => {
    const show = smallFestival();
    const { foldbook, paper } = await start(show);
    await foldbook.openAct('Glass Antlers');
    const sources = sourcesOf(show, 'Glass Antlers');
    expect(sources.length).toBeGreaterThan(2);
    await paper.choose('Patch by act');
    await paper.shows('Patch by act');
    expect(await paper.said()).toMatch(/Version 1, replaces none/);
    const pages = paper.preview('Patch by act').getByRole('img');
    expect(await paper.inkOf(pages.first())).toBeGreaterThan(0.002);

    const pdf = await paper.save('s');
    expect(pdf.name).toBe('Glass Antlers - Patch by act.pdf');
    expect(pdf.bytes.subarray(0, 5).toString()).toBe('%PDF-');
    const words = wordsOf(await pdfPages(pdf.bytes));
    expect(sources.filter((name) => !words.includes(name))).toEqual([]);
    await expect.poll(() => paper.said()).toMatch(/Version 1, the same as last printed or saved/);

    const csv = await paper.save('c');
    expect(csv.name).toMatch(/^Glass Antlers - Patch by act.*\.csv$/);
    const text = csv.bytes.toString('utf8');
    expect(sources.filter((name) => !text.includes(name))).toEqual([]);

    const xlsx = await paper.save('x');
    expect(Object.keys(unzipSync(xlsx.bytes))).toContain('xl/workbook.xml');
  });

  test('all sheets of the act go in one archive of tables and in one PDF', async () => {
    const { foldbook, paper } = await start();
    await paper.choose('All sheets of the act');
    await paper.shows('All sheets of the act');
    const csv = await paper.save('c');
    expect(csv.name).toMatch(/ - sheets\.zip$/);
    const names = Object.keys(unzipSync(csv.bytes));
    expect(names.some((name) => name.includes('Input list for the band'))).toBe(true);
    expect(names.every((name) => name.endsWith('.csv'))).toBe(true);
    await foldbook.saved();
  });
});

test('labels keep to the measures of the sheet at hand, which this computer remembers', async () => {
  const { foldbook, paper } = await start();
  const { page } = foldbook;
  await paper.choose('Labels for lines');
  await paper.shows('Labels for lines');
  await paper.measure('Down', '0');
  await page.getByText('0 is too small: the least is 1.').waitFor();
  await paper.measure('Down', '1');
  await paper.measure('Across', '1');
  // One a page, after the page that says how to print them.
  const lines = sourcesOf(smallFestival(), await foldbook.actName()).length;
  await expect.poll(() => paper.said()).toMatch(new RegExp(`^${lines + 1} pages`));
  await page.getByRole('checkbox', { name: /IEC 60062/ }).uncheck();
  await page.reload();
  await paper.open();
  await paper.choose('Labels for lines');
  expect(await page.getByLabel('Across', { exact: true }).inputValue()).toBe('1');
  expect(await page.getByRole('checkbox', { name: /IEC 60062/ }).isChecked()).toBe(false);
  await page.getByLabel('Labels on').selectOption('a strip of tape');
  await expect.poll(() => paper.said()).toMatch(/^2 pages/);
});

test('the printer gets every page, each as large as its paper', async () => {
  const { foldbook, paper } = await start();
  const { page } = foldbook;
  await page.getByRole('combobox', { name: 'Paper' }).selectOption('A3');
  await paper.shows('Input list for the stage');
  await page.evaluate(() => {
    window.print = () => {
      document.title = 'printing';
    };
  });
  await foldbook.press('p');
  await expect.poll(() => page.title()).toBe('printing');
  const pictures = await page.locator('.print-pages img').count();
  const onPaper = await page.pdf({ preferCSSPageSize: true });
  const pages = await pdfPages(onPaper);
  expect(pages).toHaveLength(pictures);
  // A3 in points by ISO 216: 297 x 420 mm.
  for (const { widthPt, heightPt } of pages) {
    expect(Math.abs(Math.min(widthPt, heightPt) - 841.9)).toBeLessThan(2);
    expect(Math.abs(Math.max(widthPt, heightPt) - 1190.6)).toBeLessThan(2);
  }
  // What was drawn for the printer goes when it is printed.
  await expect.poll(() => page.locator('.print-pages img').count()).toBe(0);
});

test('a long run is stopped, says so, and is made again when asked', async () => {
  const { foldbook, paper } = await start(familyDay(twentyActs, 3));
  const { page } = foldbook;
  await paper.choose('All sheets of the day, with a cover');
  const stop = page.getByRole('button', { name: /^Stop/ });
  await stop.waitFor();
  await foldbook.press('Escape');
  await expect.poll(() => paper.said()).toMatch(/Making the sheets was stopped/);
  await page.getByRole('button', { name: 'Make it again' }).click();
  await stop.waitFor();
  await paper.choose('Input list for the band');
  await paper.shows('Input list for the band');
});

test.each(['night', 'day'])(
  'no barrier in the %s theme, in the smallest window: list, preview, long run, stopped',
  async (theme) => {
    const { foldbook, paper } = await start(familyDay(twentyActs, 3), { width: 1024, height: 640 });
    const violations = async () => {
      const { violations: found } = await new AxeBuilder({ page: foldbook.page }).analyze();
      return found.map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`);
    };
    if (theme === 'day') await foldbook.press('F8');
    expect(await violations()).toEqual([]);
    await paper.choose('Stage plot');
    await paper.shows('Stage plot');
    expect(await paper.said()).toMatch(/no table/);
    expect(await violations()).toEqual([]);
    await paper.choose('All sheets of the day, with a cover');
    await foldbook.page.getByRole('button', { name: /^Stop/ }).waitFor();
    await foldbook.press('Escape');
    await expect.poll(() => paper.said()).toMatch(/was stopped/);
    expect(await violations()).toEqual([]);
  },
);
