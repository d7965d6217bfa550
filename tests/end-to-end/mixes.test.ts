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
  test('says for a source and a mix which copy feeds it and how loud', async () => {
    const { mixes } = await openMixes();
    expect(await mixes.feed('Kick in', 'Noor')).toBe('monitors, proposed, −6');
    expect(await mixes.feed('Kick in', 'Tarn')).toBe('not in this mix');
  });

  test('the listening line follows the chosen cell', async () => {
    const { foldbook, mixes } = await openMixes();
    await mixes.choose('Kick in', 'Noor');
    expect(await foldbook.listeningLine()).toMatch(/^Listening to Noor, mix 3, in-ears stereo, on cue pack/);
    await foldbook.press('ArrowLeft');
    expect(await foldbook.listeningLine()).toMatch(/^Listening to Elin, mix 2, wedge, on cue wedge/);
  });

  test('a word, a number and Delete change a cell, and undo brings each one back', async () => {
    const { foldbook, mixes } = await openMixes();
    await mixes.choose('Guitar', 'Tarn');
    expect(await mixes.feed('Guitar', 'Tarn')).toBe('front of house, proposed, −6');
    await mixes.type('lots');
    expect(await mixes.feed('Guitar', 'Tarn')).toBe('front of house, proposed, 0');
    await mixes.type('-9');
    expect(await mixes.feed('Guitar', 'Tarn')).toBe('front of house, decided, −9');
    await foldbook.press('Delete');
    expect(await mixes.feed('Guitar', 'Tarn')).toBe('not in this mix');
    for (const before of [
      'front of house, decided, −9',
      'front of house, proposed, 0',
      'front of house, proposed, −6',
    ]) {
      await foldbook.saved();
      await foldbook.press('Control+z');
      await expect.poll(() => mixes.feed('Guitar', 'Tarn')).toBe(before);
    }
  });

  test('a level above unity is refused at the cell, and Escape leaves it as it was', async () => {
    const { foldbook, mixes } = await openMixes();
    await mixes.choose('Guitar', 'Tarn');
    await mixes.type('6');
    expect(await mixes.refusal()).toContain('above unity');
    await foldbook.press('Escape');
    expect(await mixes.feed('Guitar', 'Tarn')).toBe('front of house, proposed, −6');
  });

  test('a range is filled by typing once', async () => {
    const { foldbook, mixes } = await openMixes();
    await mixes.choose('Kick in', 'Tarn');
    await foldbook.press('Shift+ArrowDown', 'Shift+ArrowRight');
    await mixes.type('little');
    for (const source of ['Kick in', 'Kick out'])
      for (const who of ['Tarn', 'Elin'])
        expect(await mixes.feed(source, who)).toBe('monitors, proposed, −12');
  });

  test('cells go to a spreadsheet and come back from one', async () => {
    const { foldbook, mixes } = await openMixes();
    await mixes.choose('Lead vocal', 'Tarn');
    await foldbook.press('Shift+ArrowRight', 'Control+c');
    expect(await foldbook.page.evaluate(() => navigator.clipboard.readText())).toBe('lots\tsome');
    await foldbook.page.evaluate(() => navigator.clipboard.writeText('-3\tlittle\r\n\tlots\r\n'));
    await mixes.choose('Hi-hat', 'Tarn');
    await foldbook.press('Control+v');
    await expect.poll(() => mixes.feed('Hi-hat', 'Tarn')).toBe('front of house, decided, −3');
    expect(await mixes.feed('Hi-hat', 'Elin')).toBe('front of house, proposed, −12');
    expect(await mixes.feed('Rack tom', 'Elin')).toBe('front of house, proposed, 0');
  });

  test('a value that cannot be pasted changes nothing and is named', async () => {
    const { foldbook, mixes } = await openMixes();
    await foldbook.page.evaluate(() => navigator.clipboard.writeText('lots\tvery loud'));
    await mixes.choose('Hi-hat', 'Tarn');
    await foldbook.press('Control+v');
    await expect.poll(() => foldbook.problem()).toMatch(/Hi-hat in Elin.*very loud/s);
    expect(await mixes.feed('Hi-hat', 'Tarn')).toBe('not in this mix');
  });
});

describe('what the engineer decides', () => {
  test('a chosen copy feeds the mix until it is put back', async () => {
    const { mixes } = await openMixes();
    await mixes.choose('Kick in', 'Noor');
    await mixes.openDetails();
    await mixes.chooseInDetails('Copy', 'front of house');
    expect(await mixes.feed('Kick in', 'Noor')).toBe('front of house, decided, −6');
    await mixes.details().getByRole('button', { name: 'Put back: Copy' }).click();
    expect(await mixes.feed('Kick in', 'Noor')).toBe('monitors, proposed, −6');
  });

  test('a channel outside of the desk is refused with a sentence at the field', async () => {
    const { foldbook, mixes } = await openMixes();
    await mixes.choose('Kick in', 'Noor');
    await mixes.openDetails();
    const channel = mixes.details().getByLabel('Channel of the copy for monitors');
    await channel.fill('200');
    await foldbook.press('Enter');
    expect(await mixes.details().getByRole('alert').innerText()).toBe('Type a whole number from 1 to 64.');
    await channel.fill('50');
    await foldbook.press('Enter');
    await expect
      .poll(() =>
        mixes
          .table()
          .getByRole('rowheader', { name: /Kick in/ })
          .innerText(),
      )
      .toMatch(/50/);
  });

  test('another cue output changes the listening line', async () => {
    const { foldbook, mixes } = await openMixes();
    await mixes.choose('Kick in', 'Noor');
    await mixes.openDetails();
    await mixes.chooseInDetails('Cue output', 'cue wedge');
    await expect.poll(() => foldbook.listeningLine()).toMatch(/Noor.*on cue wedge/);
  });

  test('taking away a copy moves the mixes it fed and is undone by one key', async () => {
    const { foldbook, mixes } = await openMixes();
    await mixes.choose('Kick in', 'Noor');
    await mixes.openDetails();
    await mixes.details().getByRole('checkbox', { name: 'monitors' }).uncheck();
    await expect.poll(() => mixes.feed('Kick in', 'Noor')).toBe('front of house, proposed, −6');
    await foldbook.saved();
    await mixes.table().focus();
    await foldbook.press('Control+z');
    await expect.poll(() => mixes.feed('Kick in', 'Noor')).toBe('monitors, proposed, −6');
  });
});

describe('putting back', () => {
  test('a section says how many decisions would go, asks, and is undone by one key', async () => {
    const { foldbook, mixes } = await openMixes();
    await mixes.choose('Kick in', 'Noor');
    await mixes.type('-20');
    await foldbook.press('ArrowDown');
    await mixes.type('-21');
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
  await path.getByRole('button', { name: /Mix 3/ }).click();
  expect(await foldbook.page.getByRole('region', { name: 'Path of Noor' }).count()).toBe(1);
  await foldbook.press('Escape');
  await mixes.table().waitFor();
});
