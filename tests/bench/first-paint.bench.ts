import { spawn } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { createInterface } from 'node:readline';
import { type Browser, chromium } from 'playwright';
import { ShowDocument } from '../../core/show/show.ts';
import { buildPage } from '../../electron/starting/build-window.ts';
import { findBrowser, sandboxArguments } from '../../electron/starting/find-browser.ts';
import { median } from './median.ts';

/**
 * From the start of the program on the demo day to the first paint of its window, and to the running order being
 * there. The browser is running already; the show is opened, the page loaded and drawn from nothing in each round.
 */
const rounds = 7;
const root = resolve(import.meta.dirname, '..', '..');
if (!(await buildPage(root))) process.exit(1);

const demo = readFileSync(join(root, 'assets', 'demo', 'festival.json'), 'utf8');
const firstAct = ShowDocument.parse(JSON.parse(demo)).acts[0]?.name ?? '';

const executablePath = findBrowser();
if (!executablePath) throw new Error('This bench needs a Chromium.');
const browser = await chromium.launch({ executablePath, args: ['--disable-gpu', ...sandboxArguments()] });
const folder = mkdtempSync(join(tmpdir(), 'foldbook-bench-'));

type Round = { serving: number; painted: number; filled: number };
const times: Round[] = [];
for (let round = 0; round < rounds; round++) times.push(await start(browser));
await browser.close();
rmSync(folder, { recursive: true });

const report = (what: string, ms: (round: Round) => number) =>
  console.log(`${what.padEnd(34)} ${median(times.map(ms)).toFixed(0)} ms (median of ${rounds})`);
report('start to serving', (it) => it.serving);
report('start to first paint', (it) => it.painted);
report('start to the acts in the window', (it) => it.filled);

async function start(shownIn: Browser): Promise<Round> {
  const started = performance.now();
  const program = spawn(process.execPath, ['electron/run.js', 'electron/start.ts', '--host', 'address'], {
    cwd: root,
    env: { ...process.env, FOLDBOOK_DATA: folder },
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  const ended = new Promise((done) => program.once('close', done));
  const address = await addressOf(program.stdout);
  const serving = performance.now() - started;
  const context = await shownIn.newContext();
  const page = await context.newPage();
  const asked = performance.now() - started;
  await page.goto(address);
  await page.getByText(firstAct).first().waitFor();
  const filled = performance.now() - started;
  const paintMs = await page.evaluate(
    () => performance.getEntriesByName('first-contentful-paint')[0]?.startTime,
  );
  await context.close();
  program.kill();
  await ended;
  return { serving, painted: asked + (paintMs ?? Number.NaN), filled };
}

async function addressOf(output: NodeJS.ReadableStream): Promise<string> {
  for await (const line of createInterface({ input: output })) {
    const address = /http:\S+/.exec(line)?.[0];
    if (address) return address;
  }
  throw new Error('The program ended before it said its address.');
}
