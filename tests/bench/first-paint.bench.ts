import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import type { Browser } from 'playwright';
import { ShowDocument } from '../../core/show/show.ts';
import { median } from './median.ts';
import { percentile } from './percentiles.ts';
import { benchBrowser, startProgram } from './served-page.ts';

/**
 * From the start of the program on the demo day to the first paint of its window, and to the first useful one: the
 * running order and the first act's mixes are there. An empty page waits already; the show is opened, the page loaded
 * and drawn from nothing in each round. The page itself takes the times, so that what drives it does not count, and
 * says how long keys would wait at the most once it can be used.
 */
const rounds = 7;
const goalMs = 1500;
const demo = readFileSync(
  resolve(import.meta.dirname, '..', '..', 'assets', 'demo', 'festival.json'),
  'utf8',
);
const firstAct = ShowDocument.parse(JSON.parse(demo)).acts[0]?.name ?? '';

const browser = await benchBrowser();
const folder = mkdtempSync(join(tmpdir(), 'foldbook-bench-'));

type Round = { serving: number; painted: number; useful: number; longestTask: number };
const times: Round[] = [];
for (let round = 0; round < rounds; round++) times.push(await start(browser));
await browser.close();
rmSync(folder, { recursive: true });

const report = (what: string, ms: (round: Round) => number) =>
  console.log(
    `${what.padEnd(40)} ${median(times.map(ms)).toFixed(0)} ms in the middle, ${percentile(times.map(ms), 0).toFixed(0)} at the least of ${rounds}`,
  );
report('start to serving', (it) => it.serving);
report('start to first paint', (it) => it.painted);
report('start to first useful paint', (it) => it.useful);
report('longest task behind it', (it) => it.longestTask);
const useful = median(times.map((it) => it.useful));
console.log(`goal ${goalMs} ms: ${useful <= goalMs ? 'held' : 'NOT HELD'}`);

async function start(shownIn: Browser): Promise<Round> {
  const context = await shownIn.newContext();
  const page = await context.newPage();
  await page.addInitScript(`(${watchPaints})(${JSON.stringify(firstAct)})`);
  const startedAt = Date.now();
  const program = await startProgram(folder);
  const serving = Date.now() - startedAt;
  // The reader of riders comes last: where nothing is fetched any more, all is there.
  await page.goto(program.address, { waitUntil: 'networkidle' });
  const { painted, useful, tasks } = await page.evaluate(() => window.paints);
  await context.close();
  await program.stop();
  if (painted === undefined || useful === undefined)
    throw new Error('The window did not show the first act.');
  const behind = tasks.filter(({ at }) => at >= useful).map(({ ms }) => ms);
  return {
    serving,
    painted: painted - startedAt,
    useful: useful - startedAt,
    longestTask: Math.max(0, ...behind),
  };
}

type Paints = { painted?: number; useful?: number; tasks: { at: number; ms: number }[] };
declare global {
  interface Window {
    paints: Paints;
  }
}

/** Runs in the page: when it was first painted and first useful, and its tasks of over 50 ms, by the machine's clock. */
function watchPaints(act: string): void {
  const paints: Paints = { tasks: [] };
  window.paints = paints;
  const clock = (ms: number) => performance.timeOrigin + ms;
  new PerformanceObserver((list) => {
    for (const { name, startTime } of list.getEntries())
      if (name === 'first-contentful-paint') paints.painted = clock(startTime);
  }).observe({ type: 'paint', buffered: true });
  new PerformanceObserver((list) => {
    for (const it of list.getEntries()) paints.tasks.push({ at: clock(it.startTime), ms: it.duration });
  }).observe({ type: 'longtask', buffered: true });
  const observer = new MutationObserver(() => {
    const order = document.querySelector('.running-order')?.textContent ?? '';
    if (!order.includes(act) || !document.querySelector('[role="grid"]')) return;
    observer.disconnect();
    // The frame is over when a task runs after its animation frame.
    requestAnimationFrame(() => {
      const { port1, port2 } = new MessageChannel();
      port1.onmessage = () => {
        paints.useful = clock(performance.now());
      };
      port2.postMessage(null);
    });
  });
  observer.observe(document, { subtree: true, childList: true });
}
