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
 * running order and the first act's mixes are there. The browser is running already; the show is opened, the page
 * loaded and drawn from nothing in each round.
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

type Round = { serving: number; painted: number; useful: number };
const times: Round[] = [];
for (let round = 0; round < rounds; round++) times.push(await start(browser));
await browser.close();
rmSync(folder, { recursive: true });

const report = (what: string, ms: (round: Round) => number) =>
  console.log(
    `${what.padEnd(34)} ${median(times.map(ms)).toFixed(0)} ms in the middle, ${percentile(times.map(ms), 0).toFixed(0)} at the least of ${rounds}`,
  );
report('start to serving', (it) => it.serving);
report('start to first paint', (it) => it.painted);
report('start to first useful paint', (it) => it.useful);
const useful = median(times.map((it) => it.useful));
console.log(`goal ${goalMs} ms: ${useful <= goalMs ? 'held' : 'NOT HELD'}`);

async function start(shownIn: Browser): Promise<Round> {
  const started = performance.now();
  const program = await startProgram(folder);
  const serving = performance.now() - started;
  const context = await shownIn.newContext();
  const page = await context.newPage();
  const asked = performance.now() - started;
  await page.goto(program.address);
  await page.getByText(firstAct).first().waitFor();
  await page.getByRole('grid', { name: /^Mixes of/ }).waitFor();
  await page.evaluate(() => new Promise((done) => requestAnimationFrame(() => setTimeout(done))));
  const useful = performance.now() - started;
  const paintMs = await page.evaluate(
    () => performance.getEntriesByName('first-contentful-paint')[0]?.startTime,
  );
  await context.close();
  await program.stop();
  return { serving, painted: asked + (paintMs ?? Number.NaN), useful };
}
