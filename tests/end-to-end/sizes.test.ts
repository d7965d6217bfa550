import type { Page } from 'playwright';
import { expect, test } from 'vitest';
import { smallFestival } from '../fixtures/small-festival.ts';
import { chromiumForFile } from '../helpers/chromium.ts';
import { Foldbook, moments } from './pages/foldbook.ts';

const browser = chromiumForFile();

/** What is wrong with how the page fits its window: the page itself scrolls sideways, or something cannot be reached. */
function misfits(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const nameOf = (it: Element) =>
      `${it.tagName.toLowerCase()} "${(it.getAttribute('aria-label') ?? it.textContent ?? '').trim().slice(0, 40)}"`;

    /** Scrolls to a control; says what hides it, or null where it can be pressed. */
    const hiddenBy = (control: Element): string | null => {
      control.scrollIntoView({ block: 'center', inline: 'center', behavior: 'instant' });
      const { left, right, top, bottom } = control.getBoundingClientRect();
      // What is larger than the window, such as a box for text, is there when its middle is.
      const [x, y] = [(left + right) / 2, (top + bottom) / 2];
      const isCut = right - left <= innerWidth && (left < -1 || right > innerWidth + 1);
      const met = document.elementFromPoint(x, y);
      if (met === null || isCut) return 'the edge of the window';
      if (control.contains(met) || met.contains(control)) return null;
      return met.closest('label')?.control === control ? null : nameOf(met);
    };

    const { scrollWidth, clientWidth } = document.documentElement;
    const scope = document.querySelector('dialog[open]') ?? document;
    const controls = [...scope.querySelectorAll('button, input, select, textarea, a[href], summary')];
    return [
      ...(scrollWidth > clientWidth ? [`the page is ${scrollWidth} wide`] : []),
      ...controls.flatMap((control) => {
        const hides = control.checkVisibility({ visibilityProperty: true }) ? hiddenBy(control) : null;
        return hides === null ? [] : [`${nameOf(control)} is hidden by ${hides}`];
      }),
    ];
  });
}

// A window of 1280 x 800 at 200 % has this many CSS pixels (WCAG 2.2, 1.4.4 Resize Text).
test.each([
  ['at twice its size in a window of 1280 x 800', { width: 640, height: 400 }],
  ['in a window of 1024 x 640', { width: 1024, height: 640 }],
  ['on a tablet upright', { width: 768, height: 1024 }],
])('%s nothing is cut off and everything can be reached', async (_, size) => {
  const foldbook = await Foldbook.start(browser(), smallFestival(), size);
  const { page } = foldbook;
  for (const moment of moments) {
    await foldbook.goTo(moment);
    expect.soft({ moment, found: await misfits(page) }).toEqual({ moment, found: [] });
  }
  for (const [key, name] of [
    ['Control+k', 'Find anything'],
    ['F1', 'Keys'],
  ] as const) {
    await foldbook.press(key);
    await page.getByRole('dialog', { name }).waitFor();
    expect.soft({ name, found: await misfits(page) }).toEqual({ name, found: [] });
    await foldbook.press('Escape');
  }
});
