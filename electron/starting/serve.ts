import { spawn } from 'node:child_process';
import { mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as wait } from 'node:timers/promises';
import { firstWritable } from '../copies/copy-folders.ts';
import { type LocalHost, startLocalHost } from '../local-host/local-host.ts';
import { readPageFiles } from '../local-host/page-files.ts';
import { type CameForward, newSecret } from '../local-host/second-start.ts';
import type { Service } from '../service/service.ts';
import { pageFolder } from './build-window.ts';
import { askToComeForward, leaveNote, leftBehind } from './come-forward.ts';
import { sandboxArguments } from './find-browser.ts';
import { openService } from './open-service.ts';

/** How long no window may be connected before the program that was only there for it ends. */
const withoutWindowMs = 2_000;

/**
 * Serves the show on this machine until it is told to stop: with a browser, as a window, until that is closed;
 * without, at an address that is printed after the reason `why`. Answers the exit code.
 */
export async function serve(
  root: string,
  folder: string,
  { browser, why, newWindow = false }: { browser: string | null; why: string; newWindow?: boolean },
): Promise<number> {
  const opened = openService(root, folder, 'browser');
  if (!opened.ok) {
    const came = opened.problem.code === 'show in use' ? await askToComeForward(folder) : null;
    if (came) return comeForward(came, folder, browser, newWindow);
    console.error(`${opened.problem.what}\n${opened.problem.todo}`);
    return 1;
  }
  const { service, said, close } = opened.value;
  if (said) console.log(said);
  const secret = newSecret();
  const before = leftBehind(folder);
  const host = await startLocalHost(service, readPageFiles(pageFolder(root)), secret, before);
  const takeNoteAway = leaveNote(folder, host.address, secret);
  const stopped = untilSignal();
  try {
    const shown = browser !== null && (await showWindow(browser, folder, host, service, stopped.signal));
    if (!shown && !stopped.signal.aborted) {
      const reason = browser === null ? why : 'The browser did not open a window.';
      console.log(`${reason} Open this address on this machine: ${host.address}`);
      await new Promise((resolve) => stopped.signal.addEventListener('abort', resolve));
    }
  } finally {
    takeNoteAway();
    await host.close();
    close();
  }
  return 0;
}

/**
 * The program runs already. While one of its windows lives it is that window that says where it is; no second one is
 * opened on the same show unless `newWindow` asks for it. Without a browser the address is printed.
 */
function comeForward(
  { entry, windowCount }: CameForward,
  folder: string,
  browser: string | null,
  newWindow: boolean,
): number {
  console.log('Foldbook is running already.');
  if (windowCount > 0 && browser !== null && !newWindow)
    console.log(
      'Its window was told: look for “Here is Foldbook” among your windows. For one more: npm start -- --new-window',
    );
  else if (browser === null) console.log(`Open this address on this machine within half a minute: ${entry}`);
  else spawn(browser, windowArguments(entry, folder), { stdio: 'ignore', detached: true }).unref();
  return 0;
}

function untilSignal(): AbortController {
  const stopped = new AbortController();
  for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP'] as const) process.on(signal, () => stopped.abort());
  return stopped;
}

function windowArguments(address: string, folder: string): string[] {
  return [
    `--app=${address}`,
    `--user-data-dir=${windowFolder(folder)}`,
    '--window-size=1360,860',
    '--no-first-run',
    '--no-default-browser-check',
    '--disable-background-networking',
    '--disable-component-update',
    '--disable-sync',
    ...sandboxArguments(),
  ];
}

/** Where the browser keeps what it needs; elsewhere where the folder of the show cannot be written. */
function windowFolder(folder: string): string {
  return firstWritable([join(folder, 'window')]) ?? mkdtempSync(join(tmpdir(), 'foldbook-window-'));
}

/** Shows the page in a window of its own and waits until it is closed. False where none came up. */
async function showWindow(
  browser: string,
  folder: string,
  host: LocalHost,
  service: Service,
  stop: AbortSignal,
): Promise<boolean> {
  const window = spawn(browser, windowArguments(host.entryAddress(), folder), { stdio: 'ignore' });
  let running = true;
  window.on('error', () => {
    running = false;
  });
  window.on('close', () => {
    running = false;
  });
  console.log('Foldbook opens in a window of its own. Close that window, or press Ctrl+C here, to end it.');
  const shown = await untilClosed(() => running, service, stop);
  window.kill();
  return shown;
}

/**
 * Waits for the end of the window. A browser that is running already takes the window over and its new process
 * ends at once; one that stays running (as programs do on a Mac) may have no window left. So the connection counts.
 */
async function untilClosed(isRunning: () => boolean, service: Service, stop: AbortSignal): Promise<boolean> {
  const wasSeen = () => service.windowsSeen > 0;
  let lastSeenMs = Date.now();
  while (!stop.aborted) {
    if (service.windowCount > 0) lastSeenMs = Date.now();
    const awayMs = Date.now() - lastSeenMs;
    const mayEnd = !isRunning() || (wasSeen() && process.platform === 'darwin');
    if (mayEnd && awayMs > withoutWindowMs) break;
    await wait(200, undefined, { signal: stop }).catch(() => undefined);
  }
  return wasSeen();
}
