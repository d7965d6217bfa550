import { describe, expect, test } from 'vitest';
import { smallFestival } from '../fixtures/small-festival.ts';
import { chromiumForFile } from '../helpers/chromium.ts';
import { Foldbook } from './pages/foldbook.ts';

const browser = chromiumForFile();

async function openRig() {
  const foldbook = await Foldbook.start(browser(), smallFestival());
  await foldbook.goTo('Rig');
  return foldbook;
}

describe('the house kit', () => {
  test('a bad number is refused with a sentence at the field and changes nothing', async () => {
    const foldbook = await openRig();
    const channels = foldbook.page.getByLabel('Channels', { exact: true });
    await channels.fill('9000');
    await foldbook.press('Enter');
    expect(await foldbook.problem()).toBe('9000 is too large: the most is 1024.');
    await foldbook.press('Escape');
    expect(await channels.inputValue()).toBe('64');
  });

  test('a smaller desk is a finding at once', async () => {
    const foldbook = await openRig();
    await foldbook.page.getByLabel('Channels', { exact: true }).fill('8');
    await foldbook.press('Enter');
    await foldbook.saved();
    await foldbook.goTo('Mixes');
    const findings = foldbook.page.getByRole('complementary', { name: 'Findings' });
    expect(await findings.getByRole('button', { name: /must fix.*channel/s }).count()).toBeGreaterThan(0);
  });

  test('a cell of a table is edited in place and kept', async () => {
    const foldbook = await openRig();
    const devices = foldbook.page.getByRole('grid', { name: 'Listening devices' });
    await devices.getByRole('gridcell', { name: 'Wedge 1', exact: true }).click();
    await foldbook.page.keyboard.type('Old wedge');
    await foldbook.press('Enter');
    await foldbook.saved();
    await foldbook.page.reload();
    await devices.getByRole('gridcell', { name: 'Old wedge', exact: true }).waitFor();
  });

  test('two buses never get the same number', async () => {
    const foldbook = await openRig();
    const buses = foldbook.page.getByRole('grid', { name: 'Buses' });
    await buses.getByRole('gridcell', { name: '2', exact: true }).click();
    await foldbook.page.keyboard.type('3');
    await foldbook.press('Enter');
    expect(await buses.getByRole('alert').innerText()).toContain('3 is there already');
    await foldbook.press('Escape');
    expect(await buses.getByRole('gridcell', { name: '2', exact: true }).count()).toBe(1);
  });

  test('a box with fewer sockets loses the last ones, and undo brings them back', async () => {
    const foldbook = await openRig();
    const boxes = foldbook.page.getByRole('grid', { name: 'Stage boxes' });
    const sockets = foldbook.page.getByRole('grid', { name: 'Sockets' });
    await boxes.getByRole('gridcell', { name: '16', exact: true }).click();
    await foldbook.page.keyboard.type('4');
    await foldbook.press('Enter');
    await expect.poll(() => sockets.getByRole('gridcell', { name: 'B5', exact: true }).count()).toBe(0);
    await foldbook.saved();
    await boxes.focus();
    await foldbook.press('Control+z');
    await expect.poll(() => sockets.getByRole('gridcell', { name: 'B16', exact: true }).count()).toBe(1);
  });
});
