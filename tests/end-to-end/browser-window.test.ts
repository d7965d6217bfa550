import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { chromium } from 'playwright';
import { expect, test } from 'vitest';
import { findBrowser } from '../../electron/starting/find-browser.ts';
import { fakeBrowser } from '../helpers/fake-browser.ts';
import { printedAddress, startServing } from '../helpers/serving-process.ts';
import { smallRoot } from '../helpers/small-root.ts';
import { openSocket } from '../helpers/socket.ts';
import { temporaryFolder } from '../helpers/temporary-folder.ts';

/** A page that connects as the real one does, and says so in its title. */
const connectingScript = `
  sessionStorage.token = location.hash.slice(1);
  const socket = new WebSocket('ws://' + location.host + '/socket', ['foldbook', 'token.' + sessionStorage.token]);
  socket.onopen = () => { document.title = 'connected'; };`;

function rootWithConnectingPage(): string {
  const root = smallRoot();
  writeFileSync(
    join(root, 'renderer', 'dist', 'index.html'),
    '<!doctype html><script src="/connect.js"></script>',
  );
  writeFileSync(join(root, 'renderer', 'dist', 'connect.js'), connectingScript);
  return root;
}

/** What is in a file, or nothing while it is not there. */
const fileText = (path: string) => (existsSync(path) ? readFileSync(path, 'utf8') : '');

test('the program shows its page in a browser and ends when that is closed', async () => {
  const folder = temporaryFolder();
  const headless = '--headless=new --disable-gpu --remote-debugging-port=0';
  const serving = startServing(
    rootWithConnectingPage(),
    folder,
    fakeBrowser(`exec ${findBrowser()} ${headless} "$@"`),
  );
  const portFile = join(folder, 'window', 'DevToolsActivePort');
  await expect.poll(() => fileText(portFile), { timeout: 30_000 }).toContain('/devtools/');
  const browser = await chromium.connectOverCDP(`http://127.0.0.1:${fileText(portFile).split('\n')[0]}`);
  const page = browser.contexts()[0]?.pages()[0];
  await expect.poll(() => page?.title(), { timeout: 20_000 }).toBe('connected');
  expect(serving.said()).toContain('Foldbook opens in a window of its own.');
  const session = await browser.newBrowserCDPSession();
  // The browser may be gone before it has answered.
  session.send('Browser.close').catch(() => undefined);
  await browser.close();
  expect(await serving.ended).toBe(0);
});

test('where the browser opens no window, the address is printed and the program serves on', async () => {
  const serving = startServing(smallRoot(), temporaryFolder(), fakeBrowser('exit 1'));
  const address = await printedAddress(serving);
  expect(serving.said()).toContain('The browser did not open a window.');
  expect(await (await openSocket(address)).window.call('show.open', {})).toMatchObject({ ok: true });
  serving.process.kill('SIGTERM');
  expect(await serving.ended).toBe(0);
});

test('a browser that is not there is no end of the program', async () => {
  const serving = startServing(smallRoot(), temporaryFolder(), join(temporaryFolder(), 'gone'));
  expect(await printedAddress(serving)).toContain('http://127.0.0.1:');
});

test('a window that a running browser took over keeps the program until it is closed', async () => {
  const wordsFile = join(temporaryFolder(), 'words');
  const serving = startServing(smallRoot(), temporaryFolder(), fakeBrowser(`echo "$1" > ${wordsFile}`));
  const words = () => fileText(wordsFile);
  await expect.poll(words, { timeout: 15_000, interval: 10 }).toContain('--app=http://127.0.0.1:');
  expect(
    words(),
    'the token is not on the command line, where every user of the machine can read it',
  ).toMatch(/^--app=http:\/\/127\.0\.0\.1:\d+\/enter\/[\w-]+$/m);
  const entry = await fetch(words().trim().slice('--app='.length), { redirect: 'manual' });
  const { socket } = await openSocket(entry.headers.get('location') ?? '');
  await new Promise((resolve) => setTimeout(resolve, 3_000));
  expect(serving.process.exitCode, 'still serving').toBeNull();
  socket.close();
  expect(await serving.ended).toBe(0);
});
