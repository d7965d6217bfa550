import { describe, expect, test } from 'vitest';
import type { Show } from '../../core/show/show.ts';
import { showFromRows } from '../../core/show/show.ts';
import { familyDay, twentyActs } from '../bench/day-family.ts';
import { smallFestival, smallFestivalRows } from '../fixtures/small-festival.ts';
import { chromiumForFile } from '../helpers/chromium.ts';
import { DayPage } from './pages/day-page.ts';
import { Foldbook } from './pages/foldbook.ts';

const browser = chromiumForFile();

async function start(show: Show = smallFestival()) {
  const foldbook = await Foldbook.start(browser(), show);
  const day = new DayPage(foldbook);
  await day.open();
  return { foldbook, day };
}

describe('planning the day, by keyboard alone', () => {
  test('shows what the plan changes before it is taken, is taken, and is undone', async () => {
    const { foldbook, day } = await start();
    const before = await day.cost('As it stands');
    expect(before).toMatch(/^As it stands [1-9]/);
    // Lines, minutes of the changeovers, minutes of hands and work, for both habits as well.
    for (const habit of ['Each list from socket 1', 'Fixed homes'])
      expect(await day.cost(habit)).toMatch(new RegExp(`^${habit} \\d+ [1-9]\\d* \\d+ \\d+`));
    const home = await day.cell('A1', 'Pale Harbour Choir');
    expect(home).toBe('plugged in the changeover: Choir left');
    await day.planAndWait();
    expect(await day.cost('Planned')).toMatch(/^Planned 0 .*proven minimal/);
    expect(await day.cost('As it stands')).toBe(before);
    expect(await day.difference().innerText()).toMatch(/0 lines to plug in the changeovers instead of [1-9]/);
    await foldbook.press('t');
    await expect.poll(() => day.cost('As it stands')).toMatch(/^As it stands 0 .*proven minimal/);
    await foldbook.saved();
    expect(await day.cell('A1', 'Pale Harbour Choir')).not.toBe(home);
    await foldbook.press('Control+z');
    await expect.poll(() => day.cost('As it stands')).toBe(before);
    await foldbook.press('Escape');
    await expect.poll(() => day.cell('A1', 'Pale Harbour Choir')).toBe(home);
  });

  test('leaves everything where it is when the plan is left', async () => {
    const { foldbook, day } = await start();
    const before = await day.cost('As it stands');
    await day.planAndWait();
    await foldbook.press('Escape');
    await day.difference().waitFor({ state: 'detached' });
    expect(await day.cost('As it stands')).toBe(before);
    await foldbook.saved();
  });

  test('keeps a line where it was locked, and tells what the lock costs', async () => {
    const { foldbook, day } = await start();
    await day.choose(0, 1);
    expect(await day.chosen()).toMatch(/Choir left/);
    await foldbook.press('l');
    await expect.poll(() => day.cell('A1', 'Pale Harbour Choir')).toMatch(/Choir left ?, locked$/);
    await day.planAndWait();
    await foldbook.press('t');
    await expect.poll(() => day.cost('As it stands')).toMatch(/proven minimal/);
    expect(await day.cell('A1', 'Pale Harbour Choir')).toMatch(/Choir left ?, locked$/);
    await foldbook.press('l');
    await expect.poll(() => day.cell('A1', 'Pale Harbour Choir')).toMatch(/Choir left$/);
  });

  test('says in words which demands collide when two lines are locked to one socket', async () => {
    const { foldbook, day } = await start();
    const page = foldbook.page;
    await day.choose(0, 0);
    await foldbook.press('l');
    await day.choose(1, 0);
    await page.getByLabel('Move to').selectOption('a1');
    await foldbook.saved();
    await foldbook.press('p');
    const said = page.getByRole('status').filter({ hasText: 'cannot all be met' });
    await said.waitFor();
    expect(await said.innerText()).toMatch(/The nearest plan: with open locks of /);
    expect(await said.innerText()).toMatch(/locked to A1; .* locked to A1.*Open one of the locks/s);
    await foldbook.press('t');
    await said.waitFor({ state: 'detached' });
    await foldbook.saved();
    await foldbook.press('p');
    await expect.poll(() => day.cost('As it stands')).toMatch(/proven minimal/);
  });

  test('keeps what is patched where a new plan gains less than the engineer asks for', async () => {
    const { foldbook, day } = await start();
    const page = foldbook.page;
    await day.planAndWait();
    await foldbook.press('t');
    await expect.poll(() => day.cost('As it stands')).toMatch(/proven minimal/);
    await day.openOrder();
    const least = page.getByLabel('Keep what is patched unless a plan gains more than');
    await least.fill('5000');
    await least.press('Enter');
    await page.getByRole('button', { name: 'Patch', exact: true }).click();
    const taken = await day.cost('As it stands');
    const planned = await day.socketOf('Choir left', 'Pale Harbour Choir');
    const worse = await day.socketOf('Lead vocal', 'Tarn & the Ferrymen');
    await day.chooseCell(planned, 1);
    await page.getByLabel('Move to').selectOption(worse.toLowerCase());
    await day.chooseCell(worse, 1);
    await foldbook.press('l');
    await expect.poll(() => day.cost('As it stands')).not.toBe(taken);
    await foldbook.saved();
    await foldbook.press('p');
    const kept = page.getByText(/^What is patched is kept\. A new plan would be \d+, a gain of [1-9]/);
    await kept.waitFor();
    expect(await day.cell(worse, 'Pale Harbour Choir')).toMatch(/Choir left/);
  });
});

test('a long run is stopped, gives the best until then, and the next one starts', async () => {
  const { foldbook, day } = await start(familyDay(twentyActs, 3));
  const page = foldbook.page;
  await foldbook.press('p');
  const stop = page.getByRole('button', { name: /^Stop/ });
  await stop.waitFor();
  await page.getByText(/^Sockets: work \d+ found/).waitFor();
  await foldbook.press('Escape');
  await day.difference().waitFor();
  expect(await day.difference().innerText()).toMatch(/Stopped: this is the best plan until then/);
  expect(await day.cost('Planned')).toMatch(/above the proven bound/);
  await foldbook.press('p');
  await stop.waitFor();
  await foldbook.press('Escape');
  await day.difference().waitFor();
});

describe('the running order', () => {
  test('moves an act with the keys; lengths go along and breaks stay', async () => {
    const { foldbook, day } = await start();
    await day.openOrder();
    expect(await day.order()).toEqual([
      'Tarn & the Ferrymen 14:00-14:50',
      'Pale Harbour Choir 15:15-16:05',
      'Glass Antlers 16:30-17:20',
    ]);
    await foldbook.page.getByRole('button', { name: /move Glass Antlers/ }).focus();
    await foldbook.press('Alt+ArrowUp');
    await expect
      .poll(() => day.order())
      .toEqual([
        'Tarn & the Ferrymen 14:00-14:50',
        'Glass Antlers 15:15-16:05',
        'Pale Harbour Choir 16:30-17:20',
      ]);
    expect(await foldbook.focused()).toMatch(/^2, move Glass Antlers/);
    await foldbook.saved();
  });

  test('moves an act with the mouse', async () => {
    const { foldbook, day } = await start();
    await day.openOrder();
    const handle = foldbook.page.getByRole('button', { name: /move Tarn/ });
    const target = foldbook.page.getByRole('button', { name: /move Glass/ });
    await handle.hover();
    await foldbook.page.mouse.down();
    await target.hover();
    await foldbook.page.mouse.up();
    await expect
      .poll(async () => (await day.order()).map((it) => it.replace(/ \d.*$/, '')))
      .toEqual(['Pale Harbour Choir', 'Glass Antlers', 'Tarn & the Ferrymen']);
  });

  test('says in words which sets overlap, and what is past midnight', async () => {
    const { foldbook, day } = await start();
    await day.openOrder();
    await day.setTime('Starts of Pale Harbour Choir', '14:30');
    const doubts = foldbook.page.getByRole('list', { name: 'To look at before planning' });
    await expect
      .poll(() => doubts.innerText())
      .toMatch(/Pale Harbour Choir starts at 14:30, before Tarn & the Ferrymen ends at 14:50/);
    await day.setTime('Starts of Pale Harbour Choir', '23:30');
    await day.setTime('Starts of Glass Antlers', '00:40');
    await expect.poll(() => doubts.count()).toBe(0);
    expect(await foldbook.page.getByRole('row', { name: /Glass Antlers/ }).innerText()).toMatch(/next day/);
  });

  test('asks before it drops an act, and undo brings it back with all that was its own', async () => {
    const { foldbook, day } = await start();
    await day.openOrder();
    const drop = foldbook.page.getByRole('button', { name: 'Drop Pale Harbour Choir' });
    await drop.click();
    const ask = foldbook.page.getByRole('dialog', { name: 'Drop Pale Harbour Choir from the day?' });
    expect(await ask.innerText()).toMatch(/5 sources and 2 mixes go with it/);
    await ask.getByRole('button', { name: 'Drop Pale Harbour Choir' }).click();
    await expect.poll(async () => (await day.order()).length).toBe(2);
    await foldbook.press('Control+z');
    await expect.poll(async () => (await day.order()).length).toBe(3);
    await foldbook.page.getByRole('button', { name: 'Patch', exact: true }).click();
    expect(await day.cell('A1', 'Pale Harbour Choir')).toMatch(/Choir left/);
  });

  test('takes in a new act at its place', async () => {
    const { foldbook, day } = await start();
    await day.openOrder();
    await foldbook.page.getByRole('button', { name: 'Insert an act after Tarn & the Ferrymen' }).click();
    await expect.poll(async () => (await day.order())[1]).toBe('New act -');
  });
});

test('a day without people on stage says that there is no schedule', async () => {
  const rows = smallFestivalRows();
  const { foldbook } = await start(
    showFromRows({ ...rows, days: (rows.days ?? []).map((it) => ({ ...it, crewSize: 0 })) }),
  );
  await expect
    .poll(() => foldbook.page.getByRole('columnheader', { name: /Pale Harbour/ }).innerText())
    .toMatch(/no schedule/);
});
