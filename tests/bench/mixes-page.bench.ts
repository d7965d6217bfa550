import type { Page } from 'playwright';
import { largeDay } from './large-act.ts';
import { median } from './median.ts';
import { PageTimer, reportTaken, type Taken } from './page-timer.ts';
import { percentile } from './percentiles.ts';
import { onServedPage } from './served-page.ts';

/**
 * The mixes at 96 sources x 40 mixes in Chromium: an edit until it is derived and painted and the page knows it on the
 * disk; changing to another act of that size until it is painted; and the longest tasks while levels are typed. The
 * wall counts from the key to the frame after the outcome, so a frame of up to 16.7 ms is in it; the machine's load is
 * in it too, which is why the processor time of the main thread stands beside it. That the disk has an edit is told by
 * the word "Saved", which has a frame of its own behind the edit's: when that is painted too is printed beside.
 */
const [sources, mixes, acts] = [96, 40, 3];
const [warmUp, edits, switches] = [15, 120, 40];

await onServedPage(largeDay(acts, sources, mixes), async (page) => {
  await page.getByRole('grid', { name: /^Mixes of/ }).waitFor();
  const timer = await PageTimer.in(page);
  // What the page fetches behind the first paint is not part of an edit.
  await page.waitForLoadState('networkidle');
  await page.getByRole('grid', { name: /^Mixes of/ }).focus();
  await timer.longTasks();

  const taken: Taken[] = [];
  for (let round = 0; round < warmUp + edits; round++) taken.push(await editOne(page, timer, round));
  reportTaken('an edit, durable, derived and painted', taken.slice(warmUp), { ms: 33, at: 0.95 });
  const allShown = taken.slice(warmUp).map((it) => it.allShownMs);
  console.log(
    `  with the frame of the word "Saved": ${percentile(allShown, 0.95).toFixed(1)} ms, middle ${median(allShown).toFixed(1)} ms`,
  );
  const long = await timer.longTasks();
  console.log(
    `tasks over 50 ms while typing ${warmUp + edits} levels: ${long.length}${long.length > 0 ? `, the longest ${Math.max(...long)} ms` : ''}; goal none`,
  );

  await page.keyboard.press('Control+Home');
  const moves: Taken[] = [];
  for (let round = 0; round < 5 + 60; round++) {
    const key = round % 30 < 15 ? 'ArrowDown' : 'ArrowUp';
    moves.push(
      await timer.take(
        'keydown',
        `return document.querySelector('.feed-cell.is-active')?.dataset.row !== window.lastRow && (window.lastRow = document.querySelector('.feed-cell.is-active')?.dataset.row, true)`,
        () => page.keyboard.press(key),
      ),
    );
  }
  reportTaken('an arrow key', moves.slice(5), { ms: 33, at: 0.95 });

  const switched: Taken[] = [];
  for (let round = 0; round < 5 + switches; round++) {
    const [key, name] = round % 2 === 0 ? ['PageDown', 'Act 2'] : ['PageUp', 'Act 1'];
    switched.push(
      await timer.take(
        'keydown',
        `return document.querySelector('.mix-cells')?.getAttribute('aria-label') === 'Mixes of ${name}'`,
        () => page.keyboard.press(`Alt+${key}`),
      ),
    );
    await page.waitForTimeout(150);
  }
  reportTaken('changing acts', switched.slice(5), { ms: 60, at: 0.95 });
  console.log(`  cells drawn: ${await page.locator('.feed-cell').count()} of ${sources * mixes}`);
});

/** Types a level into the chosen cell: the clock starts with Enter, which also goes on to the cell below. */
async function editOne(page: Page, timer: PageTimer, round: number): Promise<Taken> {
  const level = (round % 30) + 3;
  const id = await page.locator('.feed-cell.is-active').getAttribute('id');
  await page.keyboard.type(`-${level}`);
  // "Saved" still stands there when the key comes: the edit is on the disk when it says so again.
  const outcome = `return document.querySelector('#${id}')?.textContent === '−${level}'`;
  const news = `const word = document.querySelector('.saving')?.textContent;
    window.wasSaving ||= word !== 'Saved';
    return window.wasSaving && word === 'Saved' && !(window.wasSaving = false);`;
  return timer.take('keydown', outcome, () => page.keyboard.press('Enter'), news);
}
