import { AxeBuilder } from '@axe-core/playwright';
import { describe, expect, test } from 'vitest';
import { patternCoefficients } from '../../core/acoustics/microphone-patterns.ts';
import { pickupOf } from '../../core/acoustics/rejection.ts';
import { applyChange } from '../../core/show/apply-change.ts';
import { put } from '../../core/show/change.ts';
import type { Show } from '../../core/show/show.ts';
import { smallFestival } from '../fixtures/small-festival.ts';
import { chromiumForFile } from '../helpers/chromium.ts';
import { Foldbook } from './pages/foldbook.ts';
import { StagePage } from './pages/stage-page.ts';

const browser = chromiumForFile();
const stageWidthM = 12;

/** The small festival with the first wedge and the lead vocal's microphone on its plot. */
function festivalOnStage(): Show {
  const show = smallFestival();
  const mix = show.mixes.get('tarn-m0');
  const vocal = [...show.sources.values()].find((it) => it.name === 'Lead vocal');
  if (!mix || !vocal) throw new Error('The first act has a wedge and a lead vocal.');
  return applyChange(show, {
    label: 'Place',
    put: [
      put('mixes', { ...mix, xM: 4, yM: 1, aimDeg: 0 }),
      put('sources', { ...vocal, xM: 4, yM: 2.5, aimDeg: 30, heightM: 1.5, pattern: 'supercardioid' }),
    ],
    remove: [],
  });
}

/** Where another box reaches a line, the plan plugs it there: so that something is out of reach, only A is long. */
function onlyBoxAIsLong(show: Show): Show {
  const others = [...show.boxes.values()].filter(({ name }) => name !== 'A');
  return applyChange(show, {
    label: 'Short cables',
    put: others.map((box) => put('boxes', { ...box, reachM: 1 })),
    remove: [],
  });
}

async function openStage(size?: { width: number; height: number }, show = festivalOnStage()) {
  const foldbook = await Foldbook.start(browser(), show, size);
  const stage = new StagePage(foldbook);
  await stage.open();
  return { foldbook, stage, page: foldbook.page };
}

const performer = 'Performer Elin';
const wedge = 'M1 wedge, Tarn';
const vocal = 'Line 14 Lead vocal';

describe('the stage by mouse and finger', () => {
  test('a drag snaps, is one step of undo, is there after a reload, and touches only what moves', async () => {
    const { foldbook, stage, page } = await openStage();
    const { listened, px } = { listened: await stage.said(performer), px: await stage.pxPerM(stageWidthM) };
    expect(listened).toMatch(/^on the centre line, 3.0 m upstage/);
    // The audience is ahead of the engineer: to the left of the screen is stage left, down is upstage.
    await page.evaluate(() => {
      const touched = new Set<string>();
      Object.assign(window, { touched });
      new MutationObserver((records) => {
        for (const { target } of records) {
          const mark = (target as Element).closest?.('[data-mark]');
          if (mark) touched.add(mark.getAttribute('data-mark') ?? '');
        }
      }).observe(document.querySelector('.stage-svg') as Element, { subtree: true, attributes: true });
    });
    const from = await stage.middleOf(performer);
    await page.mouse.move(from.x, from.y);
    await page.mouse.down();
    await page.mouse.move(from.x - px, from.y + px);
    // What the press itself changed (who is chosen) is on screen; from here on only the moved marks may change.
    await page.evaluate(() => (window as unknown as { touched: Set<string> }).touched.clear());
    await page.mouse.move(from.x - 1.05 * px, from.y + 1.05 * px);
    await page.mouse.move(from.x - 1.52 * px, from.y + 1.02 * px);
    const touched = await page.evaluate(() => [...(window as unknown as { touched: Set<string> }).touched]);
    expect(touched.length).toBeGreaterThan(0);
    expect(
      touched.filter((key) => !/^(performer tarn-Elin|source tarn-s(10|14)|wedge tarn-m1)$/.test(key)),
    ).toEqual([]);
    await page.mouse.up();
    await expect.poll(() => stage.said(performer)).toMatch(/^1.5 m stage left, 4.0 m upstage/);
    await foldbook.saved();
    await page.reload();
    await expect.poll(() => stage.said(performer)).toMatch(/^1.5 m stage left, 4.0 m upstage/);
    // Their lines have no places of their own and stand with them.
    expect(await stage.said('Lines 11, 15 ')).toMatch(/^1.5 m stage left, 4.0 m upstage/);
    await stage.drawing().getByRole('button').first().focus();
    await foldbook.press('Control+z');
    await expect.poll(() => stage.said(performer)).toMatch(/^on the centre line, 3.0 m upstage/);
  });

  test('Ctrl suspends snapping, Escape leaves a drag, a finger drags, a frame chooses several', async () => {
    const { stage, page } = await openStage();
    const px = await stage.pxPerM(stageWidthM);
    await page.keyboard.down('Control');
    await stage.drag(wedge, { x: -0.37 * px, y: 0 });
    await page.keyboard.up('Control');
    await expect.poll(() => stage.said(wedge)).toMatch(/^4.37 m stage left, 1.0 m upstage/);

    const from = await stage.middleOf(wedge);
    await page.mouse.move(from.x, from.y);
    await page.mouse.down();
    await page.mouse.move(from.x + 200, from.y + 100);
    await page.keyboard.press('Escape');
    await page.mouse.up();
    expect(await stage.said(wedge)).toMatch(/^4.37 m stage left, 1.0 m upstage/);

    await stage.dragWithFinger(wedge, { x: 2.37 * px, y: 0.5 * px });
    await expect.poll(() => stage.said(wedge)).toMatch(/^2.0 m stage left, 1.5 m upstage/);

    const floor = await stage.drawing().locator('.stage-floor').boundingBox();
    if (!floor) throw new Error('There is a floor.');
    await page.keyboard.down('Shift');
    await page.mouse.move(floor.x + 2, floor.y + 2);
    await page.mouse.down();
    await page.mouse.move(floor.x + floor.width / 2 - px / 2, floor.y + floor.height - 2);
    await page.mouse.up();
    await page.keyboard.up('Shift');
    expect(await stage.panel().getByRole('heading', { level: 2 }).innerText()).toMatch(/^\d+ things chosen$/);
    expect(await stage.mark(wedge).getAttribute('aria-pressed')).toBe('true');
    expect(await stage.mark('Box A').getAttribute('aria-pressed')).toBe('false');
  });
});

describe('the stage by keys and numbers', () => {
  test('walk, choose, move, turn, mirror, turn the view, undo: without a mouse', async () => {
    const { foldbook, stage, page } = await openStage();
    await stage.drawing().getByRole('button').first().focus();
    // The first mark is box A at stage right: from there the arrows lead to the wedge.
    for (let steps = 0; !(await foldbook.focused()).startsWith(wedge) && steps < 12; steps++)
      await foldbook.press(steps % 2 === 0 ? 'ArrowLeft' : 'ArrowUp');
    expect(await foldbook.focused()).toMatch(new RegExp(`^${wedge}`));
    await foldbook.press('Enter', 'ArrowLeft', 'ArrowLeft', 'Shift+ArrowDown');
    expect(await stage.said(wedge)).toMatch(/^4.2 m stage left, 2.0 m upstage, points upstage/);
    await foldbook.press('r', 'r', 'r');
    expect(await stage.said(wedge)).toMatch(/points upstage left/);
    await foldbook.press('m');
    expect(await stage.said(wedge)).toMatch(/^4.2 m stage right, 2.0 m upstage, points upstage right/);

    const before = await stage.middleOf(wedge);
    await foldbook.press('v');
    expect(await stage.tool('Audience’s view').getAttribute('aria-pressed')).toBe('true');
    const after = await stage.middleOf(wedge);
    expect(Math.abs(after.x - before.x) + Math.abs(after.y - before.y)).toBeGreaterThan(50);
    // From the audience an arrow to the right goes to stage left, and upwards goes upstage.
    await foldbook.press('ArrowRight', 'ArrowUp');
    expect(await stage.said(wedge)).toMatch(/^4.1 m stage right, 2.1 m upstage/);

    await foldbook.saved();
    await page.reload();
    await expect
      .poll(() => stage.said(wedge))
      .toMatch(/^4.1 m stage right, 2.1 m upstage, points upstage right/);
    expect(await stage.tool('Audience’s view').getAttribute('aria-pressed')).toBe('true');
    await stage.drawing().getByRole('button').first().focus();
    for (const place of ['4.1 m stage right, 2.0', '4.2 m stage right, 2.0', '4.2 m stage left, 2.0']) {
      await foldbook.press('Control+z');
      await expect.poll(() => stage.said(wedge)).toMatch(new RegExp(`^${place}`));
    }
  });

  test('every value can be typed, a bad one is refused with a sentence, and what a wedge does is reckoned by core', async () => {
    const { foldbook, stage, page } = await openStage();
    await stage.mark(vocal).focus();
    await foldbook.press('Enter', 'Enter');
    expect(await stage.field('Across, m').evaluate((it) => it === document.activeElement)).toBe(true);
    await stage.type('Upstage, m', 'far');
    expect(await foldbook.problem()).toContain('is no number');
    await foldbook.press('Escape');
    await stage.type('Upstage, m', '2');
    await stage.type('Aim, °', '45');
    await stage.type('Height, m', '1,4');
    await stage.field('Pattern').selectOption('hypercardioid');

    const pickup = pickupOf(
      {
        at: { xM: 4, yM: 2, zM: 1.4 },
        looking: { bearingDegrees: 45, tiltUpDegrees: 0 },
        coefficient: patternCoefficients.hypercardioid,
      },
      { xM: 4, yM: 1, zM: 0 },
      20,
    );
    const row = stage.panel().getByRole('row', { name: /^M1/ });
    expect(await row.getByRole('cell').allInnerTexts()).toEqual([
      '1.0',
      `${Math.round(pickup?.offAxisDegrees ?? 0)}°`,
      `${(-(pickup?.responseDb ?? 0)).toFixed(1)} dB`,
    ]);
    for (const words of [
      'An estimate, never a clearance',
      'textbook pattern',
      pickup?.caution ?? 'no caution',
    ])
      expect(await stage.panel().innerText()).toContain(words);

    await row.getByRole('button').click();
    expect(await stage.panel().getByRole('heading', { level: 2 }).innerText()).toContain(wedge);
    expect(await foldbook.listeningLine()).toContain('Listening to Tarn, mix 1');
    expect(
      await stage
        .panel()
        .getByRole('row', { name: /^Lead vocal/ })
        .innerText(),
    ).toContain(`${(-(pickup?.responseDb ?? 0)).toFixed(1)} dB`);

    await stage.panel().getByRole('button', { name: 'Back to the list' }).click();
    await stage.panel().getByRole('button', { name: 'Put on the plot: Cue position' }).click();
    await stage.type('Across, m', '-7');
    expect(await stage.said('Cue position')).toMatch(/^7.0 m stage right/);
    expect(await stage.panel().innerText()).toContain('from the middle of the stage');
    await foldbook.saved();

    await page.getByRole('button', { name: 'Stage plot on paper' }).click();
    await expect.poll(() => page.title()).toContain('Paper – Foldbook');
    expect(await page.getByRole('radio', { name: 'Stage plot', exact: true }).isChecked()).toBe(true);
  });

  test('a box shows how far its cables reach, and what is out of reach is named', async () => {
    const { stage } = await openStage(undefined, onlyBoxAIsLong(festivalOnStage()));
    await stage.mark('Box A').focus();
    await stage
      .panel()
      .getByRole('button', { name: /^Box A/ })
      .click();
    expect(await stage.drawing().locator('.stage-reach').count()).toBe(1);
    expect(
      await stage
        .panel()
        .getByRole('row', { name: /Kick in/ })
        .innerText(),
    ).toContain('reaches');
    await stage.type('Reach, m', '1');
    await expect
      .poll(() =>
        stage
          .panel()
          .getByRole('row', { name: /Kick in/ })
          .innerText(),
      )
      .toContain('too far');
    expect(await stage.said('Lines 1-9 ')).toContain('out of reach');
  });
});

describe('for everybody', () => {
  test('no barrier that axe knows in either theme, at twice the size, and targets are large enough', async () => {
    const { foldbook, stage, page } = await openStage({ width: 512, height: 320 });
    await stage.mark(vocal).focus();
    await foldbook.press('Enter');
    for (const theme of ['night', 'day']) {
      const { violations } = await new AxeBuilder({ page }).include('.stage').analyze();
      expect({ theme, found: violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`) }).toEqual({
        theme,
        found: [],
      });
      await foldbook.press('F8');
    }
    const small = await stage
      .drawing()
      .locator('.stage-hit')
      .evaluateAll((targets) =>
        targets
          .map((it) => it.getBoundingClientRect())
          .filter(({ width, height }) => width < 23.99 || height < 23.99)
          .map(({ width, height }) => `${width} x ${height}`),
      );
    expect(small).toEqual([]);
    const overflow = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
    expect(overflow).toBeLessThanOrEqual(0);
  });
});
