import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { Worker } from 'node:worker_threads';
import { expect, onTestFinished, test, vi } from 'vitest';
import { chromiumForFile } from '../helpers/chromium.ts';
import { smallElectronRoot } from '../helpers/small-root.ts';
import { startOnStandIn } from '../helpers/stand-in-program.ts';
import { temporaryFolder } from '../helpers/temporary-folder.ts';

const chromium = chromiumForFile();
const openWindow = async () => startOnStandIn(chromium(), await smallElectronRoot());
const openFrame = (id: number) => JSON.stringify({ id, call: 'show.open', input: {} });

test('the window is asked of Electron with isolation and sandbox, and without Node', async () => {
  const { electron } = await openWindow();
  expect(electron.app.sandboxed).toBe(true);
  expect(electron.BrowserWindow.all[0]?.options.webPreferences).toMatchObject({
    contextIsolation: true,
    sandbox: true,
    nodeIntegration: false,
    nodeIntegrationInWorker: false,
    nodeIntegrationInSubFrames: false,
    webSecurity: true,
    webviewTag: false,
  });
});

test('the page gets the two functions of the bridge, which it cannot change, and nothing else', async () => {
  const { page } = await openWindow();
  const seen = await page.evaluate(() => {
    const bridge = window.foldbook;
    if (!bridge) return null;
    try {
      bridge.send = () => {};
    } catch {
      // A module would be told; a plain script is not. Either way nothing may have changed.
    }
    const names = ['require', 'process', 'module', 'Buffer', 'global'];
    return {
      bridge: Object.keys(bridge).sort(),
      frozen: Object.isFrozen(bridge),
      node: names.filter((name) => name in globalThis),
    };
  });
  expect(seen).toEqual({ bridge: ['onFrame', 'send'], frozen: true, node: [] });
});

test('the built preload is one file that needs nothing but electron', async () => {
  const source = readFileSync(
    join(await smallElectronRoot(), 'renderer', 'dist-shell', 'preload.cjs'),
    'utf8',
  );
  expect([...source.matchAll(/require\(["']([^"']+)["']\)/g)].map((it) => it[1])).toEqual(['electron']);
});

test('the built worker, beside the built main process, reads a rider as its source does', async () => {
  await smallElectronRoot();
  const worker = new Worker(
    join(import.meta.dirname, '..', '..', 'renderer', 'dist-shell', 'grid-worker.js'),
  );
  onTestFinished(() => void worker.terminate());
  const answer = new Promise((resolve) => worker.once('message', resolve));
  worker.postMessage({ fileName: 'rider.csv', bytes: new TextEncoder().encode('1,Kick\n2,Snare') });
  expect(await answer).toMatchObject({
    ok: true,
    value: {
      sheets: [
        {
          rows: [
            ['1', 'Kick'],
            ['2', 'Snare'],
          ],
        },
      ],
    },
  });
});

test('the page cannot run a script from its text, evaluate one, or ask another host', async () => {
  const { page } = await openWindow();
  const refused = await page.evaluate(async () => {
    const directives: string[] = [];
    document.addEventListener('securitypolicyviolation', (event) =>
      directives.push(event.effectiveDirective),
    );
    const attempts: (() => unknown)[] = [
      () => {
        document.body.innerHTML = '<b>text</b>';
      },
      () => Reflect.apply(setTimeout, window, ['globalThis.ranEvaluated = true']),
      () => fetch('https://elsewhere.example/'),
      () => new WebSocket('wss://elsewhere.example/'),
    ];
    for (const attempt of attempts) {
      try {
        await attempt();
      } catch {
        // What was refused is told by the event.
      }
    }
    await new Promise((resolve) => setTimeout(resolve, 200));
    return {
      directives,
      evaluated: 'ranEvaluated' in globalThis,
      inlineScript: 'ranInline' in globalThis,
      inlineStyle: getComputedStyle(document.body).color,
    };
  });
  expect(refused.evaluated).toBe(false);
  // The small page has a script and a style in its text; neither may have had any effect.
  expect(refused.inlineScript).toBe(false);
  expect(refused.inlineStyle).toBe('rgb(0, 0, 0)');
  expect(refused.directives.sort()).toEqual([
    'connect-src',
    'connect-src',
    'require-trusted-types-for',
    'require-trusted-types-for',
  ]);
});

test('the page stays where it is and opens no other window', async () => {
  const { page, electron } = await openWindow();
  const address = page.url();
  const asked: string[] = [];
  electron.BrowserWindow.all[0]?.webContents.on('will-navigate', ({ url }) => asked.push(url));
  await page.evaluate(() => {
    location.href = 'https://elsewhere.example/';
  });
  await expect.poll(() => asked).toEqual(['https://elsewhere.example/']);
  const opened = page.waitForEvent('popup');
  await page.evaluate(() => void window.open('https://elsewhere.example/'));
  await opened;
  await expect.poll(() => page.context().pages().length).toBe(1);
  expect(page.url()).toBe(address);
  expect(await page.title()).toBe('Page');
});

test('the page is given no permission and no device, whatever it asks for', async () => {
  const { electron } = await openWindow();
  const { permissionRequest, permissionCheck, devicePermission } = electron.session.defaultSession;
  for (const permission of [
    'media',
    'geolocation',
    'notifications',
    'midi',
    'clipboard-read',
    'openExternal',
  ]) {
    const answer = vi.fn();
    permissionRequest?.({}, permission, answer);
    expect(answer, permission).toHaveBeenCalledExactlyOnceWith(false);
  }
  expect(permissionCheck?.()).toBe(false);
  expect(devicePermission?.()).toBe(false);
});

test('only the top frame of our own page is answered', async () => {
  const { electron } = await openWindow();
  const strangers = {
    'a page from elsewhere': { url: 'https://elsewhere.example/', parent: null },
    'a page whose address only begins like ours': { url: 'foldbook://page.elsewhere.example/', parent: null },
    'a page of another scheme': { url: 'file:///page/index.html', parent: null },
    'a page with no address': { url: 'about:blank', parent: null },
    'a frame inside our page': { url: 'foldbook://page/', parent: {} },
    'a frame that has gone': null,
  };
  const newSender = () => ({ send: vi.fn(), once: vi.fn(), isDestroyed: () => false });
  const senders = Object.entries(strangers).map(([who, senderFrame]) => {
    const sender = newSender();
    electron.ipcMain.emit('frame', { sender, senderFrame }, openFrame(1));
    return { who, sender };
  });
  const ours = newSender();
  const ourFrame = { url: 'foldbook://page/', parent: null };
  electron.ipcMain.emit('frame', { sender: ours, senderFrame: ourFrame }, openFrame(2));
  await expect.poll(() => ours.send.mock.calls.length).toBe(1);
  for (const { who, sender } of senders) expect(sender.send, who).not.toHaveBeenCalled();
});

test("the window's own scheme has nothing but the page", async () => {
  const { electron } = await openWindow();
  for (const path of ['/../package.json', '/%2e%2e/package.json', '/festival.foldbook', '/assets/']) {
    const answer = await electron.protocol.handlers.get('foldbook')?.(new Request(`foldbook://page${path}`));
    expect(answer?.status, path).toBe(404);
  }
});

test('another host of the scheme has nothing at all', async () => {
  const { electron } = await openWindow();
  const answer = await electron.protocol.handlers.get('foldbook')?.(new Request('foldbook://elsewhere/'));
  expect(answer?.status).toBe(404);
});

test('the menu cannot reload the page or open developer tools', async () => {
  const { electron } = await openWindow();
  expect(electron.menus).toHaveLength(1);
  const roles = JSON.stringify(electron.menus);
  expect(roles).toContain('zoomIn');
  expect(roles).not.toMatch(/reload|devtools/i);
});

test('a second start brings the window forward instead of opening another', async () => {
  const { electron } = await openWindow();
  electron.app.emit('second-instance');
  expect(electron.BrowserWindow.all).toHaveLength(1);
  expect(electron.BrowserWindow.all[0]?.focused).toBe(1);
});

test('a show that cannot be opened is said in a box, and the program ends', async () => {
  const root = await smallElectronRoot();
  const folder = temporaryFolder();
  writeFileSync(join(folder, 'festival.foldbook'), 'no show');
  vi.resetModules();
  vi.stubEnv('FOLDBOOK_DATA', folder);
  onTestFinished(() => {
    vi.unstubAllEnvs();
  });
  const electron: typeof import('../stand-in/electron.ts') = await import('../stand-in/electron.ts');
  electron.app.root = root;
  await import('../../electron/main.ts');
  electron.app.becomeReady();
  await expect.poll(() => electron.app.exitCode).toBe(1);
  expect(electron.shownErrors[0]?.[0]).toContain('is not a show of this program');
  expect(electron.BrowserWindow.all).toEqual([]);
});
