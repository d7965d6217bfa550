import { describe, expect, test } from 'vitest';
import { smallFestival } from '../fixtures/small-festival.ts';
import { chromiumForFile } from '../helpers/chromium.ts';
import { Foldbook } from './pages/foldbook.ts';
import { MixesPage } from './pages/mixes-page.ts';

const browser = chromiumForFile();

async function openMixes() {
  const foldbook = await Foldbook.start(browser(), smallFestival());
  const mixes = new MixesPage(foldbook);
  await mixes.open();
  return { foldbook, mixes };
}

describe('the table of the mixes', () => {
  test('says which copy feeds a mix and how loud, and the listening line follows the chosen cell', async () => {
    const { foldbook, mixes } = await openMixes();
    expect(await mixes.feed('Kick in', 'Noor')).toBe('monitors, proposed, −6');
    expect(await mixes.feed('Kick in', 'Tarn')).toBe('not in this mix');
    await mixes.choose('Kick in', 'Noor');
    expect(await foldbook.listeningLine()).toMatch(/^Listening to Noor, mix 3, in-ears stereo, on cue pack/);
    await foldbook.press('ArrowLeft');
    expect(await foldbook.listeningLine()).toMatch(/^Listening to Elin, mix 2, wedge, on cue wedge/);
  });

  test('a word, a number and Delete change a cell, and undo and redo bring each one back', async () => {
    const { foldbook, mixes } = await openMixes();
    const guitar = () => mixes.feed('Guitar', 'Tarn');
    const states = ['proposed, −6', 'proposed, 0', 'decided, −9'].map((it) => `front of house, ${it}`);
    const type = async (text: string) => {
      await mixes.choose('Guitar', 'Tarn');
      await mixes.type(text);
    };
    expect(await guitar()).toBe(states[0]);
    await type('lots');
    expect(await guitar()).toBe(states[1]);
    await type('-9');
    expect(await guitar()).toBe(states[2]);
    await type('6');
    expect(await mixes.refusal()).toContain('above unity');
    await foldbook.press('Escape');
    expect(await guitar()).toBe(states[2]);
    await foldbook.press('Delete');
    expect(await guitar()).toBe('not in this mix');
    for (const before of states.toReversed()) {
      await foldbook.saved();
      await foldbook.press('Control+z');
      await expect.poll(guitar).toBe(before);
    }
    for (const after of states.slice(1)) {
      await foldbook.saved();
      await foldbook.press('Control+Shift+z');
      await expect.poll(guitar).toBe(after);
    }
  });

  test('typing goes on as in a spreadsheet, a range is typed into, filled and moved by decibels', async () => {
    const { foldbook, mixes } = await openMixes();
    await mixes.choose('Kick in', 'Tarn');
    // Enter goes down, Tab right, the arrow up.
    await foldbook.type('-3', 'Enter', '-4', 'Tab', '-5', 'ArrowUp', '-6', 'Enter');
    for (const [source, who, level] of [
      ['Kick in', 'Tarn', '−3'],
      ['Kick out', 'Tarn', '−4'],
      ['Kick out', 'Elin', '−5'],
      ['Kick in', 'Elin', '−6'],
    ] as const)
      expect(await mixes.feed(source, who)).toBe(`monitors, decided, ${level}`);

    await mixes.chooseRange(['Kick in', 'Tarn'], ['Kick out', 'Elin']);
    await mixes.type('little');
    expect(await mixes.feeds(['Kick in', 'Kick out'], ['Tarn', 'Elin'])).toEqual(
      Array(4).fill('monitors, proposed, −12'),
    );
    await foldbook.press('Alt+ArrowUp', 'Alt+ArrowUp', 'Alt+ArrowDown');
    expect(await mixes.feeds(['Kick in', 'Kick out'], ['Tarn', 'Elin'])).toEqual(
      Array(4).fill('monitors, decided, −11'),
    );

    await mixes.choose('Snare top', 'Tarn');
    await mixes.type('-2');
    await mixes.chooseRange(['Snare top', 'Tarn'], ['Snare top', 'Elin']);
    await foldbook.press('Control+r');
    expect(await mixes.feed('Snare top', 'Elin')).toMatch(/decided, −2$/);
    await mixes.choose('Snare bottom', 'Elin');
    await foldbook.press('Control+d');
    expect(await mixes.feed('Snare bottom', 'Elin')).toMatch(/decided, −2$/);

    await foldbook.press('Control+a', 'Delete');
    expect(await mixes.feed('Lead vocal', 'Noor')).toBe('not in this mix, none');
    await foldbook.saved();
    await foldbook.press('Control+z');
    await expect.poll(() => mixes.feed('Lead vocal', 'Noor')).not.toMatch(/^not in/);
  });

  test('cells go to a spreadsheet and come back, quoted, repeated, too many or wrong', async () => {
    const { foldbook, mixes } = await openMixes();
    const { page } = foldbook;
    const clipboard = (text: string) =>
      page.evaluate((written) => navigator.clipboard.writeText(written), text);
    await mixes.chooseRange(['Lead vocal', 'Tarn'], ['Lead vocal', 'Elin']);
    await foldbook.press('Control+c');
    expect(await page.evaluate(() => navigator.clipboard.readText())).toBe('lots\tsome');

    await clipboard('"-3"\tlittle\r\n\t"lots"\r\n');
    await mixes.choose('Hi-hat', 'Tarn');
    await foldbook.press('Control+v');
    await expect.poll(() => mixes.feed('Hi-hat', 'Tarn')).toBe('front of house, decided, −3');
    expect(await mixes.feed('Hi-hat', 'Elin')).toBe('front of house, proposed, −12');
    expect(await mixes.feed('Rack tom', 'Elin')).toBe('front of house, proposed, 0');

    await clipboard('lots\tvery loud');
    await foldbook.press('Control+v');
    await expect.poll(() => foldbook.problem()).toMatch(/Hi-hat in Elin.*very loud/s);
    expect(await mixes.feed('Hi-hat', 'Tarn')).toBe('front of house, decided, −3');

    // One row over two: it fills both.
    await clipboard('-7\t-8');
    await mixes.chooseRange(['Kick in', 'Tarn'], ['Kick out', 'Elin']);
    await foldbook.press('Control+v');
    await expect.poll(() => mixes.feed('Kick out', 'Elin')).toMatch(/decided, −8$/);
    expect(await mixes.feed('Kick out', 'Tarn')).toMatch(/decided, −7$/);

    await foldbook.press('Control+x');
    expect(await mixes.feed('Kick in', 'Tarn')).toBe('not in this mix');
    expect(await page.evaluate(() => navigator.clipboard.readText())).toBe('-7\t-8\n-7\t-8');

    await clipboard('-9\n-9\n-9');
    await foldbook.press('Control+End', 'Control+v');
    await expect.poll(() => foldbook.problem()).toMatch(/^2 of 3 pasted cells lay outside/);
  });

  test('it is filtered, follows who is chosen, hides and shows again', async () => {
    const { foldbook, mixes } = await openMixes();
    const all = await mixes.sources();
    expect(all).toContain('Guitar');
    await mixes.choose('Guitar', 'Tarn');
    await foldbook.type('/', 'kick');
    expect(await mixes.sources()).toEqual(['Kick in', 'Kick out']);
    await foldbook.press('Enter');
    expect(await foldbook.focused()).toMatch(/^Mixes of/);
    await foldbook.type('/');
    await foldbook.press('Escape');
    expect(await mixes.sources()).toEqual(all);

    await mixes.choose('Guitar', 'Elin');
    await foldbook.press('w');
    expect(await mixes.sources()).not.toContain('Kick in');
    await foldbook.press('ArrowRight');
    expect(await foldbook.listeningLine()).toContain('Listening to Noor');
    expect(await mixes.sources()).toContain('Kick in');
    await foldbook.press('w');

    await mixes.chooseRange(['Kick in', 'Tarn'], ['Kick out', 'Tarn']);
    await foldbook.press('h');
    expect(await mixes.sources()).toEqual(all.filter((name) => !name.startsWith('Kick')));
    await foldbook.press('Shift+H');
    expect(await mixes.listeners()).not.toContain('Tarn');
    await foldbook.press('u');
    expect(await mixes.sources()).toEqual(all);
    expect(await mixes.listeners()).toContain('Tarn');

    await foldbook.type('/', 'no such thing');
    await foldbook.page.getByRole('button', { name: 'Show everything' }).click();
    expect(await mixes.sources()).toEqual(all);

    // The table alone, and the panel beside it again.
    const panel = foldbook.page.getByRole('complementary', { name: 'Findings' });
    await mixes.choose('Guitar', 'Elin');
    await foldbook.press('f');
    expect(await panel.count()).toBe(0);
    await foldbook.page.getByRole('button', { name: /^Findings \d/ }).click();
    expect(await panel.count()).toBe(1);
    await panel.getByRole('button', { name: 'Close: the table alone' }).click();
    expect(await panel.count()).toBe(0);
    expect(await foldbook.focused()).toMatch(/^Mixes of/);
  });

  test('the mouse chooses a range by drawing over it, a row or a column at its head', async () => {
    const { mixes } = await openMixes();
    await mixes.drawOver(['Kick in', 'Tarn'], ['Kick out', 'Elin']);
    expect(await mixes.chosenCount()).toBe(4);
    await mixes
      .heads(/Guitar/)
      .first()
      .click();
    expect(await mixes.chosenCount()).toBe((await mixes.listeners()).length);
    await mixes.table().getByRole('columnheader', { name: /Elin/ }).click();
    expect(await mixes.chosenCount()).toBe((await mixes.sources()).length);
  });
});

describe('what the engineer decides', () => {
  test('a copy, a channel, a cue output and a copy less count until they are put back', async () => {
    const { foldbook, mixes } = await openMixes();
    await mixes.choose('Kick in', 'Noor');
    await mixes.openDetails();
    await mixes.chooseInDetails('Copy', 'front of house');
    expect(await mixes.feed('Kick in', 'Noor')).toMatch(/^front of house, decided, −6/);
    await mixes.details().getByRole('button', { name: 'Put back: Copy' }).click();
    expect(await mixes.feed('Kick in', 'Noor')).toBe('monitors, proposed, −6');

    const channel = mixes.details().getByLabel('Channel of the copy for monitors');
    await channel.fill('200');
    await foldbook.press('Enter');
    expect(await mixes.details().getByRole('alert').innerText()).toBe('Type a whole number from 1 to 64.');
    await channel.fill('50');
    await foldbook.press('Enter');
    const head = mixes.heads(/Kick in/);
    await expect.poll(() => head.innerText()).toMatch(/50/);

    await mixes.chooseInDetails('Cue output', 'cue wedge');
    await expect.poll(() => foldbook.listeningLine()).toMatch(/Noor.*on cue wedge/);

    await mixes.details().getByRole('checkbox', { name: 'monitors' }).uncheck();
    await expect.poll(() => mixes.feed('Kick in', 'Noor')).toMatch(/^front of house, proposed, −6/);
    await foldbook.saved();
    await mixes.table().focus();
    await foldbook.press('Control+z');
    await expect.poll(() => mixes.feed('Kick in', 'Noor')).toBe('monitors, proposed, −6');
  });

  test('a section says how many decisions would go, asks, and is undone by one key', async () => {
    const { foldbook, mixes } = await openMixes();
    await mixes.choose('Kick in', 'Noor');
    await foldbook.type('-20', 'Enter', '-21', 'Enter');
    await foldbook.saved();
    await foldbook.page.getByRole('button', { name: 'Put back …' }).click();
    const dialog = foldbook.page.getByRole('dialog', { name: 'Put back to the proposal' });
    await dialog.getByRole('button', { name: 'Put back: Levels' }).click();
    expect(await dialog.getByRole('alert').innerText()).toBe(
      'Levels: 2 decisions of yours would go. Put back?',
    );
    await dialog.getByRole('button', { name: 'No, keep them' }).click();
    await dialog.getByRole('button', { name: 'Put back: The whole act' }).click();
    await dialog.getByRole('button', { name: 'Yes, put back' }).click();
    await expect.poll(() => mixes.feed('Kick out', 'Noor')).toBe('monitors, proposed, −6');
    await foldbook.saved();
    await foldbook.press('Control+z');
    await expect.poll(() => mixes.feed('Kick out', 'Noor')).toBe('monitors, decided, −21');
  });
});

describe('findings', () => {
  test('a fault that was made appears in the list, is marked at its place, and leads there', async () => {
    const { foldbook, mixes } = await openMixes();
    await mixes.choose('Kick in', 'Noor');
    await mixes.openDetails();
    // The cue wedge is on this output.
    await mixes.chooseInDetails('Output', 'Out 19');
    await mixes.table().focus();
    await foldbook.press('f', 'ArrowLeft');
    expect(
      await mixes
        .table()
        .getByRole('columnheader', { name: /Noor.*Out 19/s })
        .innerText(),
    ).toContain('must fix');
    await mixes
      .findings()
      .getByRole('button', { name: /must fix.*Out 19/s })
      .click();
    expect(await mixes.details().innerText()).toContain('Out 19');
    expect(await foldbook.listeningLine()).toContain('Listening to Noor');
  });
});

test('the path of a source is drawn from who plays to who listens, and leads on', async () => {
  const { foldbook, mixes } = await openMixes();
  await mixes.choose('Kick in', 'Noor');
  await foldbook.press('p');
  const path = foldbook.page.getByRole('region', { name: 'Path of Kick in' });
  for (const name of [/Mara/, /A1/, /ch 1,/, /Mix 3/, /Pack 1/, /Noor/])
    expect(await path.getByRole('button', { name }).count()).toBeGreaterThan(0);
  await path.locator('.path-node', { hasText: 'Mix 3' }).click();
  expect(await foldbook.page.getByRole('region', { name: 'Path of 3 Noor' }).count()).toBe(1);

  // The page keys go through the mixes, and an output has its path too.
  await foldbook.press('PageUp');
  await foldbook.page.getByRole('region', { name: 'Path of 2 Elin' }).waitFor();
  await foldbook.page.getByRole('button', { name: 'Output', exact: true }).click();
  await foldbook.page.getByRole('combobox', { name: 'Path of' }).selectOption('Out 19');
  const ofOutput = foldbook.page.getByRole('region', { name: 'Path of Out 19' });
  expect(await ofOutput.getByRole('button', { name: /cue wedge/i }).count()).toBeGreaterThan(0);

  // A finding on the way leads to its place.
  await foldbook.page.getByRole('button', { name: 'Source', exact: true }).click();
  await foldbook.page.getByRole('combobox', { name: 'Path of' }).selectOption('Lead vocal');
  const findings = foldbook.page.getByRole('region', { name: 'Findings on this path' });
  await findings.getByRole('button').first().click();
  await mixes.details().waitFor();
  await mixes.table().waitFor();
});
