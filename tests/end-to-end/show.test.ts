import { expect, test } from 'vitest';
import { smallFestival } from '../fixtures/small-festival.ts';
import { chromiumForFile } from '../helpers/chromium.ts';
import { barriers } from './pages/barriers.ts';
import { Foldbook } from './pages/foldbook.ts';
import { MixesPage } from './pages/mixes-page.ts';
import { ShowPage } from './pages/show-page.ts';

const browser = chromiumForFile();

async function start(size?: { width: number; height: number }) {
  const foldbook = await Foldbook.start(browser(), smallFestival(), size);
  const show = new ShowPage(foldbook);
  await show.open();
  return { foldbook, show, page: foldbook.page };
}

test('the next act is two presses away: the first says what will happen, Escape leaves it, the second does it', async () => {
  const { foldbook, show, page } = await start();
  await foldbook.press('b');
  await expect.poll(() => show.state()).toMatch(/^on stage since \d\d:\d\d/);
  await foldbook.press('n');
  expect(await show.armed().innerText()).toMatch(
    /Tarn & the Ferrymen is done.*Pale Harbour Choir comes, and the clock/s,
  );
  expect(await foldbook.actName()).toBe('Tarn & the Ferrymen');
  await foldbook.press('Escape');
  await show.armed().waitFor({ state: 'detached' });
  // A key that is held down is one press, however often it comes.
  await page.keyboard.down('n');
  await page.keyboard.down('n');
  await show.armed().waitFor();
  expect(await foldbook.actName()).toBe('Tarn & the Ferrymen');
  await page.keyboard.up('n');
  await foldbook.press('n');
  expect(await foldbook.actName()).toBe('Pale Harbour Choir');
  expect(await show.clock().innerText()).toMatch(/^2[45]:\d\d$/);
  expect(await show.state()).toMatch(/^next/);
  expect(await foldbook.runningOrder().getByRole('button', { name: /Tarn/ }).innerText()).toMatch(/done/);
  await foldbook.saved();

  await foldbook.kill();
  await foldbook.reopen();
  await foldbook.openAct('Pale Harbour Choir');
  await show.open();
  expect(await show.clock().innerText()).toMatch(/^2[45]:\d\d$/);

  // One undo takes the whole step back; the show is on stage again where it was.
  await foldbook.press('Control+z');
  await expect
    .poll(() => foldbook.runningOrder().getByRole('button', { name: /Tarn/ }).innerText())
    .toMatch(/on stage/);
  await show.clock().waitFor({ state: 'detached' });
});

test('who is chosen is heard, and levels and notes are kept as they ran, apart from the plan', async () => {
  const { foldbook, show, page } = await start();
  await show.performers().getByRole('button').first().focus();
  await foldbook.press('ArrowDown');
  expect(await foldbook.listeningLine()).toMatch(/^Listening to Elin, mix 2/);
  expect(await show.hearsSources('Elin')).toEqual(['Vocal Elin', 'Guitar', 'Lead vocal']);
  expect(await show.heard('Elin', 'Guitar')).toMatch(/^−6 Guitar .* ch \d+ A\d+$/);

  // Into what she hears, down to the guitar, three steps up: one move of one hand.
  await foldbook.press('ArrowRight', 'ArrowDown', '+', '+', '+');
  await expect.poll(() => show.heard('Elin', 'Guitar')).toMatch(/^−3 Guitar planned −6/);
  expect(await show.kept()).toEqual(['Elin: Guitar −6 → −3 dB']);
  await foldbook.press('Enter');
  await page.keyboard.type('loud');
  await foldbook.press('Enter');
  expect(await page.getByRole('alert').innerText()).toMatch(/“loud” is no level/);
  await page.keyboard.press('Control+a');
  await page.keyboard.type('off');
  await foldbook.press('Enter');
  await expect.poll(() => show.heard('Elin', 'Guitar')).toMatch(/^off Guitar planned −6/);
  expect(await foldbook.focused()).toBe('Guitar');
  await foldbook.press('Backspace');
  await expect.poll(() => show.heard('Elin', 'Guitar')).toMatch(/^−6 Guitar (?!planned)/);
  await foldbook.press('Control+z');
  await expect.poll(() => show.heard('Elin', 'Guitar')).toMatch(/^off Guitar/);

  // A source that was not planned for her comes in, with the copy that the rule gives it.
  await page.getByLabel('Source that is not in this mix').selectOption('Kick in');
  await page.getByRole('button', { name: 'Bring in', exact: true }).click();
  await expect
    .poll(() => show.heard('Elin', 'Kick in'))
    .toMatch(/^−12 Kick in not planned . ?\w* ?ch \d+ A1$/);

  await foldbook.press('t');
  await page.keyboard.type('Guitar gone after the second song');
  await foldbook.press('Escape', 't');
  expect(await page.getByLabel('What happened').inputValue()).toBe('Guitar gone after the second song');
  await page.getByRole('radio', { name: 'mix of Elin' }).check();
  await page.getByLabel('What happened').press('Enter');
  await expect.poll(async () => (await show.kept())[0]).toBe('Elin: Guitar gone after the second song');
  expect(await barriers(page)).toEqual([]);
  await foldbook.saved();

  await foldbook.kill();
  await foldbook.reopen();
  await show.open();
  await show.performers().getByRole('button', { name: /Elin/ }).click();
  expect(await show.heard('Elin', 'Guitar')).toMatch(/^off Guitar planned −6/);
  expect(await show.kept()).toEqual([
    'Elin: Guitar gone after the second song',
    'Elin: Kick in off → −12 dB',
    'Elin: Guitar −6 → off',
  ]);

  const mixes = new MixesPage(foldbook);
  await mixes.open();
  expect(await mixes.feed('Guitar', 'Elin')).toMatch(/−6$/);
  expect(await mixes.feed('Kick in', 'Elin')).not.toMatch(/−12/);

  await show.open();
  await show
    .log()
    .getByRole('button', { name: /^Remove the note/ })
    .click();
  await expect.poll(() => show.kept()).toHaveLength(2);
  await foldbook.press('Control+z');
  await expect.poll(() => show.kept()).toHaveLength(3);
});

test('a line check: one line large, five results with one key each, what was put off comes back at the end', async () => {
  const { foldbook, show, page } = await start();
  await foldbook.openAct('Pale Harbour Choir');
  await foldbook.press('l');
  const [first, second, third] = (await show.lines()).map((line) =>
    line.replace(/^\S+ /, '').replace(' not heard yet', ''),
  );
  expect(await show.line()).toBe(first);
  expect(await show.progress()).toBe('0 of 5 lines heard 5 left');
  expect(await show.known('Socket')).toMatch(/^[AB]\d+$/);
  expect(await show.known('48 V')).toBe('on');

  await foldbook.press('5');
  expect(await show.line()).toBe(second);
  await foldbook.press('1');
  expect(await show.line()).toBe(third);
  await foldbook.press('2', '3');
  expect(await show.progress()).toBe('3 of 5 lines heard 2 not ok · 1 for later · 1 left');

  // Swapped: which one came is asked, and what to do stands there.
  const last = await show.line();
  await foldbook.press('4');
  const ask = page.getByRole('dialog', { name: `Which line came where ${last} belongs?` });
  await ask.waitFor();
  expect(await barriers(page)).toEqual([]);
  await page.keyboard.type((third ?? '').slice(0, 8));
  await foldbook.press('Enter');
  expect(await show.check().innerText()).toContain(`${third} came where ${last} (`);
  expect(await show.check().innerText()).toMatch(/Mute both and switch 48 V off before a plug is pulled/);
  expect(await show.progress()).toBe('4 of 5 lines heard 3 not ok · 1 for later · 0 left');
  expect(await barriers(page)).toEqual([]);

  // Swap the two sockets in the plan: one step, and both come back to be heard.
  const before = await show.known('Socket');
  await foldbook.press('s');
  await expect.poll(() => show.progress()).toBe('2 of 5 lines heard 1 not ok · 3 for later · 0 left');
  expect(await show.known('Socket')).not.toBe(before);
  await foldbook.press('Control+z');
  await expect.poll(() => show.progress()).toBe('4 of 5 lines heard 3 not ok · 1 for later · 0 left');
  expect(await show.known('Socket')).toBe(before);

  // Mended after all: the same line is ok, and then the one that was put off comes.
  await foldbook.press('1');
  expect(await show.line()).toBe(first);
  await foldbook.press('1');
  expect(await show.progress()).toMatch(/^Every line has been heard. 2 lines not ok/);

  // Back to one that was silent, by its order on the desk.
  await foldbook.press('o');
  const silent = (await show.lines()).findIndex((line) => line.includes('silent'));
  await page.getByRole('region', { name: 'Lines in their order' }).getByRole('listitem').nth(silent).click();
  await foldbook.press('1');
  expect(await show.progress()).toMatch(/1 line not ok/);
  await foldbook.saved();

  await page.reload();
  await page.getByRole('button', { name: /^Line check/ }).waitFor();
  expect(await page.getByRole('button', { name: /^Line check/ }).innerText()).toMatch(/5 of 5/);
  // Not ok stays marked on Show, and leads to the line.
  await show
    .log()
    .getByRole('button', { name: /was noisy/ })
    .click();
  expect(await show.check().innerText()).toMatch(/Never lift the earth of a mains plug/);
  await foldbook.press('1', 'Escape');
  expect(await show.log().innerText()).not.toMatch(/Lines not ok/);
});

test('on a tablet upright everything is there and large enough for a finger, without a barrier', async () => {
  const { foldbook, show, page } = await start({ width: 768, height: 1024 });
  const tooSmall = () =>
    page.locator('main button:visible, main select:visible').evaluateAll((all) =>
      all.flatMap((it) => {
        const { width, height } = it.getBoundingClientRect();
        return Math.round(height) < 44 || Math.round(width) < 24 ? [it.textContent] : [];
      }),
    );
  expect(await tooSmall()).toEqual([]);
  expect(await barriers(page)).toEqual([]);
  await foldbook.press('l');
  await show.check().waitFor();
  expect(await tooSmall()).toEqual([]);
  expect(await barriers(page)).toEqual([]);
  const overflow = await page.evaluate(() => document.documentElement.scrollWidth > window.innerWidth);
  expect(overflow).toBe(false);
  await page.getByRole('button', { name: '1 ok', exact: false }).first().click();
  await expect.poll(() => show.progress()).toMatch(/^1 of 16/);
  await foldbook.press('F8');
  expect(await barriers(page, 'day')).toEqual([]);
  await foldbook.press('Escape');
  expect(await barriers(page, 'day')).toEqual([]);
});
