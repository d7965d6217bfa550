import { type Browser, chromium } from 'playwright';
import { afterAll, beforeAll } from 'vitest';
import { findBrowser, sandboxArguments } from '../../electron/starting/find-browser.ts';

/**
 * The Chromium of this machine for all tests of a file: call it once, outside of tests. `npm test` has made sure
 * that there is one.
 */
export function chromiumForFile(): () => Browser {
  let browser: Browser | null = null;
  beforeAll(async () => {
    const executablePath = findBrowser();
    if (!executablePath) throw new Error('No Chromium here: start the tests with npm test.');
    browser = await chromium.launch({ executablePath, args: [...quietArguments, ...sandboxArguments()] });
  });
  afterAll(() => browser?.close());
  return () => {
    if (!browser) throw new Error('Chromium is there only while the tests of its file run.');
    return browser;
  };
}

const quietArguments = [
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];
