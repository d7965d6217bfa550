import { describe, expect, test } from 'vitest';
import { smallFestival } from '../fixtures/small-festival.ts';
import { chromiumForFile } from '../helpers/chromium.ts';
import { Foldbook, moments } from './pages/foldbook.ts';
import { MixesPage } from './pages/mixes-page.ts';

const browser = chromiumForFile();

describe('with the keyboard alone', () => {
  test('the walk of a day: an act, every moment, a search, a change, the theme, the keys', async () => {
    const foldbook = await Foldbook.start(browser(), smallFestival());
    const { page } = foldbook;

    await foldbook.press('F6');
    await foldbook.press('ArrowDown', 'Enter');
    expect(await foldbook.actName()).toBe('Pale Harbour Choir');

    for (const [place, moment] of moments.entries()) {
      await foldbook.press(`Alt+${place + 1}`);
      const current = page.getByRole('navigation', { name: 'Moments of the day' }).locator('[aria-current]');
      expect(await current.innerText()).toBe(moment);
    }

    await foldbook.press('Control+k');
    await page.keyboard.type('guitar');
    await foldbook.press('Enter');
    expect(await foldbook.actName()).toBe('Tarn & the Ferrymen');
    const mixes = new MixesPage(foldbook);
    expect(await mixes.heads(/Guitar/).getAttribute('class')).toContain('is-listened');

    await foldbook.press('F6');
    while (!(await foldbook.focused()).startsWith('Mixes of')) await foldbook.press('F6');
    await foldbook.press('ArrowRight');
    await mixes.type('-4');
    expect(await mixes.feed('Guitar', 'Elin')).toBe('front of house, decided, −4');

    await foldbook.press('F8');
    expect(await page.locator('html').getAttribute('data-theme')).toBe('day');
    await foldbook.press('?');
    expect(await page.getByRole('dialog', { name: 'Keys' }).isVisible()).toBe(true);
    await foldbook.press('Escape');
    expect(await page.getByRole('dialog').count()).toBe(0);
  });

  test('Tab reaches every part of the window and is caught in none', async () => {
    const foldbook = await Foldbook.start(browser(), smallFestival());
    const seen = new Set<string>();
    for (let step = 0; step < 80; step++) {
      await foldbook.press('Tab');
      seen.add(
        await foldbook.page.evaluate(
          () => document.activeElement?.closest('[data-region]')?.getAttribute('data-region') ?? 'body',
        ),
      );
    }
    expect([...seen].sort()).toEqual(
      expect.arrayContaining(['bottom', 'main', 'running-order', 'side', 'top']),
    );
  });

  test('F6 goes round the parts of the window and Shift+F6 back', async () => {
    const foldbook = await Foldbook.start(browser(), smallFestival());
    const region = () =>
      foldbook.page.evaluate(() =>
        document.activeElement?.closest('[data-region]')?.getAttribute('data-region'),
      );
    await foldbook.press('F6');
    expect(await region()).toBe('running-order');
    await foldbook.press('F6');
    expect(await region()).toBe('top');
    await foldbook.press('Shift+F6');
    expect(await region()).toBe('running-order');
  });

  test('digits and letters typed into a field are text, not keys of the program', async () => {
    const foldbook = await Foldbook.start(browser(), smallFestival());
    await foldbook.goTo('Rig');
    const desk = foldbook.page.getByLabel('Desk', { exact: true });
    await desk.fill('');
    await desk.pressSequentially('What? 2 desks');
    await foldbook.press('Enter');
    expect(await foldbook.page.getByRole('dialog').count()).toBe(0);
    expect(await desk.inputValue()).toBe('What? 2 desks');
    await foldbook.saved();
  });
});
