import { expect, test } from 'vitest';
import { smallFestival } from '../fixtures/small-festival.ts';
import { chromiumForFile } from '../helpers/chromium.ts';
import { Foldbook } from './pages/foldbook.ts';
import { MixesPage } from './pages/mixes-page.ts';

const browser = chromiumForFile();

test('what was said to be saved is there after the program was killed', async () => {
  const foldbook = await Foldbook.start(browser(), smallFestival());
  const mixes = new MixesPage(foldbook);
  await mixes.open();
  await mixes.choose('Guitar', 'Tarn');
  await mixes.type('-11');
  await foldbook.saved();
  await foldbook.kill();
  await foldbook.reopen();
  await mixes.open();
  expect(await mixes.feed('Guitar', 'Tarn')).toBe('front of house, decided, −11');
});

test('what is typed while the program is gone stays on screen and says that it is not saved', async () => {
  const foldbook = await Foldbook.start(browser(), smallFestival());
  const mixes = new MixesPage(foldbook);
  await mixes.open();
  await foldbook.kill();
  await mixes.choose('Guitar', 'Tarn');
  await mixes.type('-11');
  expect(await mixes.feed('Guitar', 'Tarn')).toBe('front of house, decided, −11');
  await expect.poll(() => foldbook.savedState()).toMatch(/^Not saved yet/);
});

test('a reload comes back to the same act and moment', async () => {
  const foldbook = await Foldbook.start(browser(), smallFestival());
  await foldbook.openAct('Glass Antlers');
  await foldbook.goTo('Show');
  await foldbook.page.reload();
  await foldbook.page.getByRole('heading', { name: 'Ruth hears' }).waitFor();
  expect(await foldbook.actName()).toBe('Glass Antlers');
});
