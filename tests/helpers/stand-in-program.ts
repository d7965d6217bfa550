import { cpSync, mkdirSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import type { Browser, Page } from 'playwright';
import { expect, onTestFinished, vi } from 'vitest';
import { documentFromShow } from '../../core/show/show.ts';
import { buildShell } from '../../electron/starting/build-window.ts';
import { smallShow } from './small-show.ts';
import { temporaryFolder } from './temporary-folder.ts';

export type Electron = typeof import('../stand-in/electron.ts');
export type StandInProgram = { electron: Electron; page: Page; folder: string };

const projectRoot = resolve(import.meta.dirname, '..', '..');

const smallPage = `<!doctype html><title>Page</title>
  <style>body { color: red }</style><script>globalThis.ranInline = true</script>`;

/** A program folder with the built preload, the small show as its demo, and a page of a few lines. */
export async function smallRoot(): Promise<string> {
  await buildShell(projectRoot);
  const root = temporaryFolder();
  mkdirSync(join(root, 'renderer', 'dist'), { recursive: true });
  mkdirSync(join(root, 'assets', 'demo'), { recursive: true });
  writeFileSync(join(root, 'renderer', 'dist', 'index.html'), smallPage);
  writeFileSync(join(root, 'assets', 'demo', 'festival.json'), JSON.stringify(documentFromShow(smallShow())));
  cpSync(join(projectRoot, 'renderer', 'dist-shell'), join(root, 'renderer', 'dist-shell'), {
    recursive: true,
  });
  return root;
}

/** Runs electron/main.ts on the stand-in until its window is shown. It ends with the test. */
export async function startOnStandIn(browser: Browser, root: string): Promise<StandInProgram> {
  const folder = temporaryFolder();
  vi.resetModules();
  vi.stubEnv('FOLDBOOK_DATA', folder);
  const electron: Electron = await import('../stand-in/electron.ts');
  electron.app.root = root;
  const context = await browser.newContext();
  onTestFinished(() => context.close());
  electron.BrowserWindow.context = context;
  await import('../../electron/main.ts');
  electron.app.becomeReady();
  onTestFinished(() => {
    electron.app.quit();
    vi.unstubAllEnvs();
  });
  await expect.poll(() => electron.BrowserWindow.all[0]?.shown, { timeout: 20_000 }).toBe(true);
  const page = electron.BrowserWindow.all[0]?.page;
  if (!page) throw new Error('The window has no page.');
  return { electron, page, folder };
}
