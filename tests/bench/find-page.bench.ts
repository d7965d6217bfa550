import { largeDay } from './large-act.ts';
import { namesInAct, pastActs } from './large-archive.ts';
import { PageTimer, reportTaken, type Taken } from './page-timer.ts';
import { onServedPage } from './served-page.ts';

/**
 * A key press in find-anything, in Chromium, over a day of three acts of 96 sources and an archive of 100,000 names:
 * until what the show and the archive have for the letters is painted.
 */
const names = 100_000;
const searches = [
  'kick in ka',
  'lobane',
  'mi guitar',
  'snare top v',
  'rafen',
  'lead vocal',
  'tumor',
  'source 9',
];

await onServedPage(
  largeDay(3, 96, 40),
  async (page) => {
    await page.getByRole('grid', { name: /^Mixes of/ }).waitFor();
    await page.waitForLoadState('networkidle');
    const timer = await PageTimer.in(page);
    const taken: Taken[] = [];
    await page.keyboard.press('Control+k');
    for (const search of searches)
      for (let length = 1; length <= search.length; length++) {
        const text = search.slice(0, length);
        const outcome = `return document.querySelector('.find-text')?.value === ${JSON.stringify(text)}
          && document.querySelector('.find-list')?.getAttribute('aria-busy') === 'false'`;
        if (length === 1) await page.locator('.find-text').fill('');
        taken.push(
          await timer.take('keydown', outcome, () =>
            page.keyboard.press(search[length - 1] === ' ' ? 'Space' : (search[length - 1] ?? '')),
          ),
        );
      }
    reportTaken(`a key press over ${names} archived names`, taken, { ms: 33, at: 0.95 });
    const long = await timer.longTasks();
    console.log(
      `  tasks over 50 ms: ${long.length}; goal none; rows found last: ${await page.locator('.find-item').count()}`,
    );
  },
  (file) => {
    const filled = file.adoptArchived(pastActs(names / namesInAct));
    if (!filled.ok) throw new Error(filled.problem.what);
  },
);
