import { mkdirSync, symlinkSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import type { Browser, Page } from 'playwright';
import { expect, onTestFinished } from 'vitest';
import { documentFromShow, emptyShow, type Show } from '../../../core/show/show.ts';
import { buildPage, pageFolder } from '../../../electron/starting/build-window.ts';
import { printedAddress, type ServingProcess, startServing } from '../../helpers/serving-process.ts';
import { temporaryFolder } from '../../helpers/temporary-folder.ts';

const projectRoot = resolve(import.meta.dirname, '..', '..', '..');

export type Moment =
  | 'Advance'
  | 'Mixes'
  | 'Stage'
  | 'Day'
  | 'Changeover'
  | 'Show'
  | 'Paper'
  | 'Rig'
  | 'Recall';
export const moments: readonly Moment[] = [
  'Advance',
  'Mixes',
  'Stage',
  'Day',
  'Changeover',
  'Show',
  'Paper',
  'Rig',
  'Recall',
];

/** A program folder with the real page, and a show in place of the demo. */
async function rootWith(show: Show): Promise<string> {
  await buildPage(projectRoot);
  const root = temporaryFolder();
  mkdirSync(join(root, 'renderer'), { recursive: true });
  mkdirSync(join(root, 'assets', 'demo'), { recursive: true });
  symlinkSync(pageFolder(projectRoot), join(root, 'renderer', 'dist'));
  writeFileSync(join(root, 'assets', 'demo', 'festival.json'), JSON.stringify(documentFromShow(show)));
  return root;
}

/** What Chromium itself says while the program is gone. */
const awayTrouble = /WebSocket|ERR_CONNECTION_REFUSED/;

/** Where a show lies, and in what surroundings its program runs. */
type Place = { folder?: string; surroundings?: NodeJS.ProcessEnv };

/** The program as somebody at the screen uses it. It has a folder of its own, and ends with the test. */
export class Foldbook {
  readonly page: Page;
  /** The folder of the show. */
  readonly folder: string;
  readonly #root: string;
  readonly #surroundings: NodeJS.ProcessEnv;
  #serving: ServingProcess;

  private constructor(page: Page, root: string, place: Required<Place>, serving: ServingProcess) {
    this.page = page;
    this.folder = place.folder;
    this.#root = root;
    this.#surroundings = place.surroundings;
    this.#serving = serving;
  }

  /** Starts the program on a show, and opens its window. */
  static async start(
    browser: Browser,
    show: Show = emptyShow(),
    size = { width: 1280, height: 800 },
    { folder = temporaryFolder(), surroundings = {} }: Place = {},
  ): Promise<Foldbook> {
    const root = await rootWith(show);
    const serving = startServing(root, folder, undefined, surroundings);
    const context = await browser.newContext({
      viewport: size,
      permissions: ['clipboard-read', 'clipboard-write'],
    });
    onTestFinished(() => context.close());
    const page = await context.newPage();
    const foldbook = new Foldbook(page, root, { folder, surroundings }, serving);
    const troubles: string[] = [];
    page.on('pageerror', (error) => troubles.push(String(error)));
    page.on('console', (message) => {
      if (message.type() === 'error' && !awayTrouble.test(message.text())) troubles.push(message.text());
    });
    onTestFinished(() => expect(troubles, 'the page had no error').toEqual([]));
    await page.goto(await printedAddress(serving));
    await page.getByRole('navigation', { name: 'Moments of the day' }).waitFor();
    return foldbook;
  }

  /** Kills the program as a power cut of the process would, and waits until it is gone. */
  async kill(): Promise<void> {
    this.#serving.process.kill('SIGKILL');
    await this.#serving.ended;
  }

  /** Starts the program again on the same show; the window stays as it is. */
  startAgain(): void {
    this.#serving = startServing(this.#root, this.folder, undefined, this.#surroundings);
  }

  /** Starts the program once more beside the one that runs, with a browser to show a window in. */
  startSecond(browser: string): ServingProcess {
    return startServing(this.#root, this.folder, browser, this.#surroundings);
  }

  /** Starts the program again on the same show, and opens its window. */
  async reopen(): Promise<void> {
    this.startAgain();
    await this.page.goto(await printedAddress(this.#serving));
    await this.page.getByRole('navigation', { name: 'Moments of the day' }).waitFor();
  }

  async goTo(moment: Moment): Promise<void> {
    await this.page
      .getByRole('navigation', { name: 'Moments of the day' })
      .getByRole('button', { name: moment })
      .click();
    // Some screens come in files of their own.
    await expect.poll(() => this.page.title()).toContain(`${moment} – Foldbook`);
    await this.page.getByText('Opening the show').waitFor({ state: 'hidden' });
  }

  async openAct(name: string): Promise<void> {
    await this.runningOrder().getByRole('button', { name }).click();
    await expect.poll(() => this.actName()).toBe(name);
  }

  runningOrder() {
    return this.page.getByRole('navigation', { name: 'Running order' });
  }

  actName(): Promise<string> {
    return this.page.getByRole('heading', { level: 1 }).innerText();
  }

  listeningLine(): Promise<string> {
    return this.page.getByRole('region', { name: 'Listening line' }).innerText();
  }

  /** Waits until everything that was typed is on the disk. */
  async saved(): Promise<void> {
    await expect.poll(() => this.savedState()).toBe('Saved');
  }

  savedState(): Promise<string> {
    return this.page.getByRole('region', { name: 'State of the show' }).getByRole('status').innerText();
  }

  /** The sentence of the last trouble. */
  problem(): Promise<string> {
    return this.page.getByRole('alert').first().innerText();
  }

  /** Types texts and presses keys in turn, as they come: a word that names a key is pressed. */
  async type(...parts: string[]): Promise<void> {
    for (const part of parts) {
      if (/^(Enter|Escape|Tab|Arrow(Up|Down|Left|Right))$/.test(part)) await this.page.keyboard.press(part);
      else await this.page.keyboard.type(part);
    }
  }

  async press(...keys: string[]): Promise<void> {
    for (const key of keys) await this.page.keyboard.press(key);
  }

  /** The name of what has the focus, as it is read out; empty where nothing has it. */
  focused(): Promise<string> {
    return this.page.evaluate(() => {
      const element = document.activeElement;
      if (!element || element === document.body) return '';
      const label = 'labels' in element ? (element as HTMLInputElement).labels?.[0] : null;
      return (element.getAttribute('aria-label') ?? label?.textContent ?? element.textContent ?? '').trim();
    });
  }
}
