import { expect, test } from 'vitest';
import { Day } from '../../core/show/act.ts';
import { Box, Rig, Socket } from '../../core/show/rig.ts';
import { showFromRows } from '../../core/show/show.ts';
import { smallFestivalRows } from '../fixtures/small-festival.ts';
import { chromiumForFile } from '../helpers/chromium.ts';
import { smallShow } from '../helpers/small-show.ts';
import { barriers } from './pages/barriers.ts';
import { Foldbook } from './pages/foldbook.ts';
import { ShowPage } from './pages/show-page.ts';

const browser = chromiumForFile();

/** The small festival, and a second day in another house with a smaller rig. */
function twoDays() {
  const rows = smallFestivalRows();
  return showFromRows({
    ...rows,
    rigs: [...(rows.rigs ?? []), Rig.parse({ id: 'barn', name: 'Barn rig', channelCount: 12 })],
    boxes: [...(rows.boxes ?? []), Box.parse({ id: 'box-barn', rigId: 'barn', name: 'K' })],
    sockets: [
      ...(rows.sockets ?? []),
      ...Array.from({ length: 24 }, (_, at) =>
        Socket.parse({ id: `k${at + 1}`, boxId: 'box-barn', number: at + 1 }),
      ),
    ],
    days: [...(rows.days ?? []), Day.parse({ id: 'sunday', rigId: 'barn', order: 1, name: 'Sunday' })],
  });
}

/** An act that did not run as planned: two sockets were swapped in the plan, Elin's guitar came up by 2 dB. */
async function playTarn(foldbook: Foldbook): Promise<{ show: ShowPage; swapped: string }> {
  const show = new ShowPage(foldbook);
  await show.open();
  await foldbook.press('b', 'l', '1');
  const swapped = await show.line();
  await foldbook.press('4', 'ArrowDown', 'Enter', 's', 'Escape');
  await show.performers().getByRole('button', { name: /Elin/ }).press('Space');
  await foldbook.press('ArrowRight', 'ArrowDown', '+', '+');
  await expect.poll(() => show.heard('Elin', 'Guitar')).toMatch(/^−4 Guitar planned −6/);
  return { show, swapped };
}

const oneLine = (text: string) => text.replace(/\s+/g, ' ').trim();

test('an act is archived when the show moves on, found by a name, and stands as planned beside as it ran', async () => {
  const foldbook = await Foldbook.start(browser(), twoDays());
  const { page } = foldbook;
  await foldbook.press('Alt+9');
  await page.getByText('No act is in the archive yet.').waitFor();
  const { swapped } = await playTarn(foldbook);
  await foldbook.press('t');
  await page.keyboard.type('Second guitar came late');
  await foldbook.press('Enter', 'n', 'n');
  await expect.poll(() => foldbook.actName()).toBe('Pale Harbour Choir');
  await foldbook.saved();

  // By find anything, from anywhere.
  await foldbook.press('Control+k');
  await page.keyboard.type('ferry');
  const past = page.getByRole('option', { name: /^past/ }).first();
  expect(oneLine(await past.innerText())).toBe('past Tarn & the Ferrymen Saturday 2031-06-14');
  while ((await past.getAttribute('aria-selected')) !== 'true') await foldbook.press('ArrowDown');
  await foldbook.press('Enter');
  await page.getByRole('heading', { level: 2, name: 'Tarn & the Ferrymen' }).waitFor();

  // In the archive itself, by a source of it, after the program was killed.
  await foldbook.kill();
  await foldbook.reopen();
  await foldbook.press('Alt+9');
  await page.getByRole('combobox').waitFor();
  await foldbook.press('/');
  await page.keyboard.type('guit');
  const option = page.getByRole('option', { name: /^source/ });
  expect(oneLine(await option.innerText())).toBe('source Guitar in Tarn & the Ferrymen, Saturday 2031-06-14');
  await foldbook.press('Enter');
  const side = page.getByRole('region', { name: 'Past act', exact: true });
  await side.getByRole('heading', { level: 2, name: 'Tarn & the Ferrymen' }).waitFor();
  const texts = oneLine(await side.innerText());
  expect(texts).toMatch(/As planned: 14:00 to 14:50 · As it ran: \d\d:\d\d to \d\d:\d\d/);
  expect(texts).toContain('3 differences between plan and run');
  expect(texts).toContain('Second guitar came late');

  // Only what differs: the two lines that were swapped, and one level.
  await foldbook.press('d');
  const row = (name: string) => side.getByRole('row', { name: new RegExp(`^${name}`) });
  expect(oneLine(await row('Guitar').innerText())).toBe('Guitar −6 dB ≠ differs: −4 dB');
  const swap = oneLine(await row(swapped).innerText());
  const [planned, ran] = [...swap.matchAll(/\b[AB]\d+\b/g)].map(String);
  expect(planned).not.toBe(ran);
  expect(swap).toMatch(/differs: .*later$/);
  expect(await side.getByRole('row').count()).toBe(5);
  expect(await barriers(page)).toEqual([]);
});

test('a past act comes into another house as a new act: what its rig has not is named, nothing is touched', async () => {
  const foldbook = await Foldbook.start(browser(), twoDays(), { width: 1024, height: 640 });
  const { page } = foldbook;
  const { show } = await playTarn(foldbook);
  await foldbook.press('a');
  await page.getByText(/^Tarn & the Ferrymen is in the archive/).waitFor();
  await foldbook.press('F8', 'Alt+9');
  await page.getByRole('option', { name: /Tarn/ }).first().waitFor();
  await page.getByRole('combobox').press('Enter');
  await page.getByRole('heading', { level: 2, name: 'Tarn & the Ferrymen' }).waitFor();
  expect(await barriers(page, 'day')).toEqual([]);
  await foldbook.press('b');
  const dialog = page.getByRole('dialog', { name: 'Bring Tarn & the Ferrymen into a day' });
  await dialog.waitFor();
  expect(await dialog.innerText()).toMatch(/Saturday has an act named Tarn & the Ferrymen already/);
  await dialog.getByLabel('Day').selectOption({ label: 'Sunday ' });
  expect(await dialog.innerText()).toMatch(/2 decisions cannot come along.*socket [AB]\d+ \(/s);
  expect(await barriers(page)).toEqual([]);
  await dialog.getByRole('button', { name: 'Bring it in' }).press('Enter');

  const order = foldbook.runningOrder();
  await expect.poll(() => order.getByRole('heading').innerText()).toBe('Sunday');
  expect(await foldbook.actName()).toBe('Tarn & the Ferrymen');
  expect(await order.getByRole('button', { name: /Tarn/ }).innerText()).toMatch(/advancing/);
  await foldbook.saved();
  await show.open();
  await show.performers().getByRole('button', { name: /Elin/ }).click();
  await expect.poll(() => show.heard('Elin', 'Guitar')).toMatch(/^−4 Guitar .*K\d+$/);
  expect(await show.kept()).toEqual([]);

  await foldbook.press('Control+z');
  await expect.poll(() => order.getByRole('heading').innerText()).toBe('Saturday');
  expect(await order.getByRole('button', { name: /Tarn/ }).innerText()).toMatch(/on stage/);
});

test('a show without an act finds its past acts all the same; one is taken out after a question and put back', async () => {
  const foldbook = await Foldbook.start(browser(), smallShow());
  const { page } = foldbook;
  const show = new ShowPage(foldbook);
  await show.open();
  await foldbook.press('a');
  await page.getByText(/^Paper Herons is in the archive/).waitFor();
  await foldbook.goTo('Advance');
  await page.getByRole('button', { name: 'Remove this act' }).press('Enter');
  await page.getByRole('button', { name: 'Yes, remove the act' }).press('Enter');
  await foldbook.press('Alt+9');
  await page.getByRole('combobox').waitFor();
  await foldbook.press('/');
  await page.keyboard.type('oor');
  await page.getByRole('option', { name: /^performer Noor in Paper Herons/ }).waitFor();
  await foldbook.press('Enter');
  await page.getByText('It ran as it was planned.').waitFor();

  await page.getByRole('button', { name: 'Take out of the archive' }).press('Enter');
  const ask = page.getByRole('dialog', { name: 'Take Paper Herons out of the archive?' });
  expect(await ask.getByRole('alert').innerText()).toContain('for 30 days at least');
  expect(await barriers(page)).toEqual([]);
  await foldbook.press('Enter');
  await page.getByText('It ran as it was planned.').waitFor();
  await page.getByRole('button', { name: 'Take out of the archive' }).press('Enter');
  await ask.getByRole('button', { name: 'Yes, take it out' }).press('Enter');
  await page.getByText('Nothing of that name').waitFor();
  expect(await barriers(page)).toEqual([]);
  await page.getByRole('button', { name: 'Put back Paper Herons' }).press('Enter');
  await page.getByRole('option', { name: /^performer Noor in Paper Herons/ }).waitFor();
  await page.getByText('It ran as it was planned.').waitFor();
});
