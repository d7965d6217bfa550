import type { Page } from 'playwright';
import { describeTransport } from '../contract/transport-suite.ts';
import { chromiumForFile } from '../helpers/chromium.ts';
import { smallRoot, startOnStandIn } from '../helpers/stand-in-program.ts';
import { TestWindow } from '../helpers/window.ts';

const chromium = chromiumForFile();

/** A window over the bridge that the preload puts into the page. */
async function windowOf(page: Page): Promise<TestWindow> {
  const takers: ((frame: string) => void)[] = [];
  await page.exposeFunction('testTake', (frame: string) => {
    for (const take of takers) take(frame);
  });
  await page.evaluate(() => window.foldbook?.onFrame((frame) => void testTake(frame)));
  return new TestWindow({
    send: (frame) => void page.evaluate((text) => window.foldbook?.send(text), frame),
    onFrame: (take) => takers.push(take),
  });
}

declare global {
  function testTake(frame: string): Promise<void>;
}

describeTransport("Electron's IPC (main.ts and the built preload, on the stand-in)", async () => {
  const { electron, page } = await startOnStandIn(chromium(), await smallRoot());
  const second = new electron.BrowserWindow(electron.BrowserWindow.all[0]?.options);
  await second.loadURL('foldbook://page/');
  if (!second.page) throw new Error('The second window has no page.');
  const [one, other] = [await windowOf(page), await windowOf(second.page)];
  // A window is known to the service from its first frame on.
  await other.call('show.open', {});
  return { one, other, host: 'electron' };
});
