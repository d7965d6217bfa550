import type { Page } from 'playwright';
import { TestWindow } from './window.ts';

declare global {
  function testTake(frame: string): Promise<void>;
}

/** A window over the bridge that the preload puts into the page. */
export async function bridgeWindow(page: Page): Promise<TestWindow> {
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
