import { join } from 'node:path';
import type { Page } from 'playwright';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { Show } from '../../core/show/show.ts';
import { smallFestival } from '../fixtures/small-festival.ts';
import { unlike, unlikeApproved } from '../helpers/approved-pictures.ts';
import { chromiumForFile } from '../helpers/chromium.ts';
import { openPainter } from '../helpers/pdf-pictures.ts';
import { Foldbook, type Moment, moments } from './pages/foldbook.ts';

/**
 * Pictures of the screens against pictures that somebody has looked at and approved. After a wanted change look at
 * the screens, then approve the new pictures: FOLDBOOK_APPROVE=1 npm test -- tests/end-to-end/screens
 */
const folder = join(import.meta.dirname, 'approved-screens');
/** Fonts are painted a little differently by each Chromium; one number that is another is more than a square bears. */
const most = { whole: 0.004, worstSquare: 0.012 };

const browser = chromiumForFile();
let painter: Page;
beforeAll(async () => {
  painter = await openPainter(browser());
});
afterAll(() => painter?.close());

async function start(theme: 'night' | 'day', show?: Show): Promise<Foldbook> {
  const foldbook = await Foldbook.start(browser(), show);
  await foldbook.page.clock.setFixedTime('2026-07-04T12:00:00');
  if (theme === 'day') await foldbook.press('F8');
  return foldbook;
}

/** The picture of a window that has come to rest: its fonts are there, and two pictures on end are the same. */
async function picture({ page }: Foldbook): Promise<Uint8Array> {
  await page.mouse.move(0, 0);
  await page.evaluate(() => document.fonts.ready);
  let before = await page.screenshot({ animations: 'disabled' });
  for (let again = 0; again < 20; again++) {
    const now = await page.screenshot({ animations: 'disabled' });
    if (now.equals(before)) return now;
    before = now;
  }
  throw new Error('The window does not come to rest.');
}

async function looksAsApproved(foldbook: Foldbook, name: string): Promise<void> {
  const found = await unlikeApproved(painter, folder, name, await picture(foldbook));
  const isAlike = found.whole <= most.whole && found.worstSquare <= most.worstSquare;
  expect.soft({ name, ...found, isAlike }).toEqual({ name, ...found, isAlike: true });
}

/** What a moment shows last. */
const shown: Partial<Record<Moment, (page: Page) => Promise<void>>> = {
  // The minutes of hands are worked out when the rest is drawn, those of the last habit last.
  Day: async (page) => {
    const habit = page.getByRole('row', { name: /^Keep and fill/ });
    await expect.poll(async () => (await habit.innerText()).match(/\d+/g)?.length).toBe(4);
  },
  Paper: async (page) => {
    await page
      .getByRole('img', { name: /^Page 1 of/ })
      .first()
      .waitFor();
    await page
      .getByRole('status')
      .filter({ hasText: /\d pages?/ })
      .waitFor();
  },
};

describe.each(['night', 'day'] as const)('in the %s theme', (theme) => {
  test('every moment looks as it was approved', async () => {
    const foldbook = await start(theme, smallFestival());
    await foldbook.openAct('Pale Harbour Choir');
    for (const moment of moments) {
      await foldbook.goTo(moment);
      await shown[moment]?.(foldbook.page);
      await looksAsApproved(foldbook, `${moment.toLowerCase()}-${theme}`);
    }
  });

  test('and so does what opens over the mixes, and the first start with an empty show', async () => {
    const foldbook = await start(theme, smallFestival());
    await foldbook.goTo('Mixes');
    await foldbook.page.getByRole('gridcell', { name: 'Kick in for Noor:' }).click();
    await foldbook.press('Enter');
    await looksAsApproved(foldbook, `mixes-details-${theme}`);
    await foldbook.press('Escape', 'p');
    await looksAsApproved(foldbook, `path-${theme}`);
    await foldbook.press('Control+k');
    await foldbook.type('vocal');
    await foldbook.page.getByRole('dialog').getByRole('option').first().waitFor();
    await looksAsApproved(foldbook, `find-${theme}`);
    await foldbook.press('Escape', 'F1');
    await looksAsApproved(foldbook, `keys-${theme}`);
    await looksAsApproved(await start(theme), `empty-${theme}`);
  });
});

test('a level that is another is seen to differ, so the comparison is no formality', async () => {
  const foldbook = await start('night', smallFestival());
  await foldbook.page.getByRole('gridcell', { name: 'Kick in for Noor:' }).click();
  const before = await picture(foldbook);
  await foldbook.type('-17', 'Enter', 'ArrowUp');
  await foldbook.saved();
  const { worstSquare } = await unlike(painter, before, await picture(foldbook));
  expect(worstSquare).toBeGreaterThan(most.worstSquare);
});
