import { readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { parseArgs } from 'node:util';
import { buildPage } from './starting/build-window.ts';
import { dataFolder, makeDataFolder } from './starting/data-folder.ts';
import { findBrowser, hasDisplay } from './starting/find-browser.ts';
import { findElectron } from './starting/find-electron.ts';
import { runElectron } from './starting/run-electron.ts';
import { serve } from './starting/serve.ts';

const usage = `Usage: npm start [-- [--host HOST] [--new-window]]
HOST is where the window is shown: electron, browser, or address (only serve, and print the address).
Without it the first of these that this machine has is taken. FOLDBOOK_DATA names the folder of the show.
Where the program runs already its window says where it is; --new-window opens one more on the same show.`;

const root = resolve(import.meta.dirname, '..');
const folder = dataFolder();
process.exitCode = await start();

/** Starts the program and waits for its end; answers the exit code. */
async function start(): Promise<number> {
  const wanted = wantedStart();
  if (wanted === null) {
    console.error(usage);
    return 2;
  }
  const { host, newWindow } = wanted;
  console.log(`Foldbook ${version()}`);
  if (!(await buildPage(root))) return 1;
  if (host === 'address') return serve(root, folder, { browser: null, why: 'Foldbook is running.' });
  if (!hasDisplay()) return serve(root, folder, { browser: null, why: 'There is no display here.' });
  if (host !== 'browser' && (await runInElectron())) return 0;
  const browser = findBrowser();
  const why = 'There is no browser here that can show a window of its own.';
  return serve(root, folder, { browser, why, newWindow });
}

function version(): string {
  return JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')).version;
}

function wantedStart(): { host: string; newWindow: boolean } | null {
  try {
    const { host, 'new-window': newWindow } = parseArgs({
      options: {
        host: { type: 'string', default: 'any' },
        'new-window': { type: 'boolean', default: false },
      },
    }).values;
    return ['any', 'electron', 'browser', 'address'].includes(host) ? { host, newWindow } : null;
  } catch {
    return null;
  }
}

async function runInElectron(): Promise<boolean> {
  makeDataFolder(folder);
  const electron = await findElectron(root, folder);
  return electron !== null && (await runElectron(electron, root, folder));
}
