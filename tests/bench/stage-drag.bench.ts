import type { Page } from 'playwright';
import { applyChange } from '../../core/show/apply-change.ts';
import { put } from '../../core/show/change.ts';
import type { Show } from '../../core/show/show.ts';
import { largeDay } from './large-act.ts';
import { PageTimer, reportTaken, type Taken } from './page-timer.ts';
import { onServedPage } from './served-page.ts';

/**
 * The stage in Chromium with more than sixty things on it, every line at a place of its own with its pattern drawn:
 * a step of a drag until it is painted, letting go until the new place is derived and painted, and the longest tasks.
 */
const [sources, mixes] = [60, 12];
const [warmUp, moves, releases] = [10, 120, 30];

/** Everything of the act spread over the stage, a metre apart. */
function spread(show: Show): Show {
  const at = (nth: number) => ({ xM: (nth % 11) - 5, yM: Math.floor(nth / 11) * 1.2 + 0.5 });
  return applyChange(show, {
    label: 'Spread',
    put: [
      ...[...show.sources.values()].map((it, nth) =>
        put('sources', { ...it, ...at(nth), pattern: 'cardioid', aimDeg: (nth * 15) % 360, pickUp: 'mic' }),
      ),
      ...[...show.mixes.values()].map((it, nth) =>
        put('mixes', { ...it, deviceKind: 'wedge', ...at(nth), yM: 7.5, aimDeg: 0 }),
      ),
    ],
    remove: [],
  });
}

await onServedPage(spread(largeDay(1, sources, mixes)), async (page) => {
  await page.waitForLoadState('networkidle');
  await page.keyboard.press('Alt+3');
  await page.locator('.stage-svg').waitFor();
  const timer = await PageTimer.in(page);
  console.log(`  marks on the drawing: ${await page.locator('[data-mark]').count()}`);
  const mark = page.locator('[data-mark^="source"]').nth(24);
  const key = await mark.getAttribute('data-mark');
  const start = await middleOf(page, key);
  await page.mouse.move(start.x, start.y);
  await page.mouse.down();
  await timer.longTasks();
  // Snapped, a short step would move nothing.
  await page.keyboard.down('Control');

  const steps: Taken[] = [];
  for (let round = 0; round < warmUp + moves; round++) {
    const by = 10 + (round % 60) * 3;
    const outcome = `const now = document.querySelector('[data-mark="${key}"]').style.transform; return now !== window.lastMove && ((window.lastMove = now), true);`;
    steps.push(
      await timer.take('pointermove', outcome, () => page.mouse.move(start.x + by, start.y + by / 2)),
    );
  }
  await page.mouse.up();
  await page.keyboard.up('Control');
  reportTaken('a step of a drag', steps.slice(warmUp), { ms: 33, at: 0.95 });

  const released: Taken[] = [];
  for (let round = 0; round < 5 + releases; round++) {
    const from = await middleOf(page, key);
    await page.mouse.move(from.x, from.y);
    await page.mouse.down();
    const by = round % 2 === 0 ? 60 : -60;
    await page.mouse.move(from.x + by, from.y, { steps: 3 });
    const said = await page.locator(`[data-mark="${key}"]`).getAttribute('aria-label');
    const outcome = `return document.querySelector('[data-mark="${key}"]').getAttribute('aria-label') !== ${JSON.stringify(said)}`;
    released.push(await timer.take('pointerup', outcome, () => page.mouse.up()));
  }
  reportTaken('letting go, derived and painted', released.slice(5), { ms: 50, at: 0.95 });
  const long = await timer.longTasks();
  console.log(
    `tasks over 50 ms: ${long.length}${long.length > 0 ? `, the longest ${Math.max(...long)} ms` : ''}; goal none`,
  );
});

async function middleOf(page: Page, key: string | null): Promise<{ x: number; y: number }> {
  const box = await page.locator(`[data-mark="${key}"] .stage-shape`).boundingBox();
  if (!box) throw new Error('The mark is not on the drawing.');
  return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
}
