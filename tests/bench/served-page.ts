import { spawn } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { createInterface } from 'node:readline';
import { type Browser, chromium, type Page } from 'playwright';
import { documentFromShow, type Show } from '../../core/show/show.ts';
import { openShow } from '../../electron/database/open-show.ts';
import type { ShowDatabase } from '../../electron/database/show-database.ts';
import { buildPage } from '../../electron/starting/build-window.ts';
import { findBrowser, sandboxArguments } from '../../electron/starting/find-browser.ts';

const root = resolve(import.meta.dirname, '..', '..');

/** The Chromium of this machine and a built page; the bench ends where either cannot be had. */
export async function benchBrowser(): Promise<Browser> {
  if (!(await buildPage(root))) process.exit(1);
  const executablePath = findBrowser();
  if (!executablePath) throw new Error('This bench needs a Chromium.');
  return chromium.launch({ executablePath, args: ['--disable-gpu', ...sandboxArguments()] });
}

/** Starts the program on a folder; answers its address as soon as it has printed it. */
export async function startProgram(folder: string): Promise<{ address: string; stop(): Promise<void> }> {
  const program = spawn(process.execPath, ['electron/run.js', 'electron/start.ts', '--host', 'address'], {
    cwd: root,
    env: { ...process.env, FOLDBOOK_DATA: folder },
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  const ended = new Promise((done) => program.once('close', done));
  const address = await addressOf(program.stdout);
  const stop = async () => {
    program.kill();
    await ended;
  };
  return { address, stop };
}

async function addressOf(output: NodeJS.ReadableStream): Promise<string> {
  for await (const line of createInterface({ input: output })) {
    const address = /http:\S+/.exec(line)?.[0];
    if (address) return address;
  }
  throw new Error('The program ended before it said its address.');
}

/**
 * Runs `work` on the page of the program with the given show, on the disk as a user has it; `fill` puts into its file
 * what is no row of the show.
 */
export async function onServedPage(
  show: Show,
  work: (page: Page) => Promise<void>,
  fill?: (file: ShowDatabase) => void,
): Promise<void> {
  const folder = mkdtempSync(join(tmpdir(), 'foldbook-bench-'));
  const made = openShow(join(folder, 'festival.foldbook'), { firstRows: () => documentFromShow(show) });
  if (!made.ok) throw new Error(made.problem.what);
  fill?.(made.value);
  made.value.close();
  const browser = await benchBrowser();
  const program = await startProgram(folder);
  try {
    const page = await browser.newPage({ viewport: { width: 1280, height: 800 } });
    await page.goto(program.address);
    await work(page);
  } finally {
    await browser.close();
    await program.stop();
    rmSync(folder, { recursive: true });
  }
}
