import { describe, expect, test } from 'vitest';
import { smallFestival } from '../fixtures/small-festival.ts';
import { chromiumForFile } from '../helpers/chromium.ts';
import { DayPage } from './pages/day-page.ts';
import { Foldbook } from './pages/foldbook.ts';

const browser = chromiumForFile();

async function start() {
  const foldbook = await Foldbook.start(browser(), smallFestival());
  await foldbook.openAct('Pale Harbour Choir');
  await foldbook.goTo('Changeover');
  await foldbook.page.getByRole('heading', { name: /^From Tarn/ }).waitFor();
  return foldbook;
}

const done = (foldbook: Foldbook) => foldbook.page.getByText(/\d+ of \d+ tasks done/).innerText();

describe('a changeover', () => {
  test('is ticked with the keys, and what was ticked is there after the program was killed', async () => {
    const foldbook = await start();
    const { page } = foldbook;
    expect(await done(foldbook)).toMatch(/^0 of/);
    await page.getByRole('checkbox').first().focus();
    await foldbook.press('Space', 'ArrowDown', 'Space');
    await expect.poll(() => done(foldbook)).toMatch(/^2 of .* of work left$/);
    await foldbook.press('ArrowRight', 'Space', 'b');
    await expect.poll(() => done(foldbook)).toMatch(/^3 of/);
    await page.getByRole('timer').waitFor();
    await foldbook.saved();
    await foldbook.kill();
    await foldbook.reopen();
    await foldbook.openAct('Pale Harbour Choir');
    await foldbook.goTo('Changeover');
    await expect.poll(() => done(foldbook)).toMatch(/^3 of/);
    expect(await page.getByRole('checkbox', { checked: true }).count()).toBe(3);
    // The clock runs on: a fast start may be back within the first second.
    await expect.poll(() => page.getByRole('timer').innerText()).toMatch(/^2[34]:\d\d$/);
  });

  test('takes a tick away by undo, and all ticks at once', async () => {
    const foldbook = await start();
    const boxes = foldbook.page.getByRole('checkbox');
    await boxes.nth(0).check();
    await boxes.nth(1).check();
    await foldbook.press('Control+z');
    await expect.poll(() => done(foldbook)).toMatch(/^1 of/);
    await foldbook.page.getByRole('button', { name: 'Clear the ticks' }).click();
    await expect.poll(() => done(foldbook)).toMatch(/^0 of/);
  });

  test('is scheduled anew at once for another number of people', async () => {
    const foldbook = await start();
    const { page } = foldbook;
    const needed = () =>
      page
        .getByText(/^needed/)
        .locator('..')
        .innerText();
    const withThree = await needed();
    await page.getByRole('heading', { name: /^Hand 3/ }).waitFor();
    await page.getByRole('button', { name: 'One person fewer' }).click();
    await page.getByRole('button', { name: 'One person fewer' }).click();
    await page.getByRole('heading', { name: /^Hand 2/ }).waitFor({ state: 'detached' });
    expect(await needed()).not.toBe(withThree);
    await page.getByRole('button', { name: 'One person fewer' }).click();
    await page.getByText('There is nobody on stage: set the size of the crew.').waitFor();
  });

  test('says what is off before a line is touched, who gets which device and from whom', async () => {
    const foldbook = await start();
    const { page } = foldbook;
    expect(await page.getByRole('region', { name: 'First of all' }).innerText()).toMatch(
      /Mute every output.*48 V off on /s,
    );
    const row = page.getByRole('row', { name: /^Ada/ });
    expect(await row.innerText()).toMatch(/Ada\s+Wedge 1\s+Tarn/);
  });

  test('shows the same tasks by place', async () => {
    const foldbook = await start();
    await foldbook.press('v');
    await foldbook.page.getByRole('heading', { name: /^Box A/ }).waitFor();
    await foldbook.press('v');
    await foldbook.page.getByRole('heading', { name: /^Hand 1/ }).waitFor();
  });

  test('tells what is plugged ahead, while the act before plays, and takes its ticks', async () => {
    const foldbook = await start();
    const { page } = foldbook;
    const day = new DayPage(foldbook);
    await day.open();
    await day.planAndWait();
    await foldbook.press('t');
    await foldbook.saved();
    await foldbook.goTo('Changeover');
    await page.getByRole('heading', { name: /^Ahead, while Tarn & the Ferrymen plays/ }).waitFor();
    const ahead = page.getByRole('listitem').filter({ has: page.getByRole('heading', { name: /^Ahead/ }) });
    const first = ahead.getByRole('checkbox').first();
    await first.check();
    await page.getByRole('button', { name: 'Clear the ticks' }).click();
    await expect.poll(() => first.isChecked()).toBe(false);
  });
});

test('before the first act there is no changeover, and its devices are listed', async () => {
  const foldbook = await Foldbook.start(browser(), smallFestival());
  await foldbook.openAct('Tarn & the Ferrymen');
  await foldbook.goTo('Changeover');
  await foldbook.page.getByText('The first act is set up in peace.').waitFor();
  await foldbook.page.getByRole('row', { name: /^Noor/ }).waitFor();
});
