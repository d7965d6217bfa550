import { describe, expect, test } from 'vitest';
import { smallFestival } from '../fixtures/small-festival.ts';
import { chromiumForFile } from '../helpers/chromium.ts';
import { barriers } from './pages/barriers.ts';
import { DayPage } from './pages/day-page.ts';
import { Foldbook, moments } from './pages/foldbook.ts';
import { MixesPage } from './pages/mixes-page.ts';

const browser = chromiumForFile();

type Theme = 'night' | 'day';

describe.each<Theme>(['night', 'day'])('in the %s theme', (theme) => {
  const start = async (size?: { width: number; height: number }) => {
    const foldbook = await Foldbook.start(browser(), smallFestival(), size);
    if (theme === 'day') await foldbook.press('F8');
    return foldbook;
  };

  test('no moment has a barrier that axe knows', async () => {
    const foldbook = await start();
    for (const moment of moments) {
      await foldbook.goTo(moment);
      expect({ moment, found: await barriers(foldbook.page, theme) }).toEqual({ moment, found: [] });
    }
  });

  const places: [place: string, open: (foldbook: Foldbook) => Promise<void>][] = [
    ['the details of a cell', (foldbook) => foldbook.press('Enter')],
    ['the path of a source', (foldbook) => foldbook.press('p')],
    [
      'the path of an output',
      async (foldbook) => {
        await foldbook.press('p');
        await foldbook.page.getByRole('button', { name: 'Output', exact: true }).click();
      },
    ],
    ['a filter that nothing fits', (foldbook) => foldbook.type('/', 'no such thing')],
    ['a level that is refused', (foldbook) => foldbook.type('6', 'Enter')],
    ['back-ups and files', (foldbook) => foldbook.press('Control+s')],
    ['the search', (foldbook) => foldbook.press('Control+k')],
    ['the key card', (foldbook) => foldbook.press('F1')],
    ['putting back', (foldbook) => foldbook.page.getByRole('button', { name: 'Put back …' }).click()],
    ['the way to a new act', (foldbook) => foldbook.page.getByRole('button', { name: 'New act' }).click()],
  ];

  test('neither has anything that opens over the mixes, in the smallest window', async () => {
    const foldbook = await start({ width: 1024, height: 640 });
    const mixes = new MixesPage(foldbook);
    await mixes.open();
    for (const [place, open] of places) {
      await mixes.choose('Kick in', 'Tarn');
      await open(foldbook);
      expect({ place, found: await barriers(foldbook.page, theme) }).toEqual({ place, found: [] });
      await foldbook.press('Escape');
    }
  });

  test('neither have a plan that may be taken, a collision, the running order, its question and a ticked changeover', async () => {
    const foldbook = await start({ width: 1024, height: 640 });
    const { page } = foldbook;
    const day = new DayPage(foldbook);
    await day.open();
    await day.planAndWait();
    await page.getByText('What moves').click();
    expect(await barriers(foldbook.page, theme)).toEqual([]);
    await foldbook.press('Escape');
    await day.choose(0, 0);
    await foldbook.press('l');
    await day.choose(1, 0);
    await page.getByLabel('Move to').selectOption('a1');
    await foldbook.press('p');
    await page.getByText(/cannot all be met/).waitFor();
    expect(await barriers(foldbook.page, theme)).toEqual([]);
    await day.openOrder();
    await day.setTime('Starts of Pale Harbour Choir', '14:30');
    expect(await barriers(foldbook.page, theme)).toEqual([]);
    await page.getByRole('button', { name: 'Drop Pale Harbour Choir' }).click();
    expect(await barriers(foldbook.page, theme)).toEqual([]);
    await foldbook.press('Escape');
    await foldbook.openAct('Glass Antlers');
    await foldbook.goTo('Changeover');
    await page.getByRole('checkbox').first().check();
    await foldbook.press('b');
    await page.getByRole('timer').waitFor();
    expect(await barriers(foldbook.page, theme)).toEqual([]);
    await foldbook.press('v');
    expect(await barriers(foldbook.page, theme)).toEqual([]);
  });
});

test.each<Theme>(['night', 'day'])(
  'an empty show has no barrier in the %s theme, and leads to the first rig and the first rider',
  async (theme) => {
    const foldbook = await Foldbook.start(browser());
    if (theme === 'day') await foldbook.press('F8');
    expect(await barriers(foldbook.page, theme)).toEqual([]);
    await foldbook.page.getByRole('button', { name: 'Set up the rig' }).click();
    expect(await barriers(foldbook.page, theme)).toEqual([]);
    await foldbook.page.getByRole('button', { name: 'Begin with a small rig' }).click();
    await foldbook.page.getByRole('grid', { name: 'Stage boxes' }).waitFor();
    await foldbook.goTo('Mixes');
    await foldbook.page.getByRole('button', { name: 'Bring in a rider' }).click();
    await foldbook.page.getByLabel(/Choose a file/).waitFor();
    expect(await barriers(foldbook.page, theme)).toEqual([]);
  },
);
