import type { Browser, Page } from 'playwright';
import { expect, onTestFinished, vi } from 'vitest';
import { temporaryFolder } from './temporary-folder.ts';

type Electron = typeof import('../stand-in/electron.ts');
export type StandInProgram = { electron: Electron; page: Page; folder: string };

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
