import { execFileSync, spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { resolve } from 'node:path';
import { startVitest } from 'vitest/node';
import { buildPage } from '../electron/starting/build-window.ts';
import { findBrowser } from '../electron/starting/find-browser.ts';
import { ClosingLine } from './closing-line.ts';
import { electronTestNote } from './electron-project.ts';

/** `npm test [-- FILES]`: everything the tests need, then all of them; the last line says how it went. */
const root = resolve(import.meta.dirname, '..');

if (!findBrowser() && !installChromium()) {
  console.error(
    'The tests need a Chromium. Install one (on Debian: apt-get install chromium), then run them again.',
  );
  process.exit(1);
}
if (!(await buildPage(root))) process.exit(1);

const closingLine = new ClosingLine();
const vitest = await startVitest('test', process.argv.slice(2), {
  config: resolve(root, 'tests', 'vitest.config.ts'),
  watch: false,
  reporters: [['default', { summary: process.stdout.isTTY }], closingLine],
});
await vitest.close();
const note = electronTestNote(root);
if (note) console.log(note);
console.log(closingLine.text());
process.exit(closingLine.isGood ? 0 : 1);

/** On Debian and its kin, as root, the package manager can bring one. */
function installChromium(): boolean {
  if (process.getuid?.() !== 0 || !existsSync('/usr/bin/apt-get')) return false;
  console.log('Installing a Chromium for the tests ...');
  const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
  spawnSync('apt-get', ['update', '-qq'], { stdio: 'ignore', env });
  try {
    execFileSync('apt-get', ['install', '-y', '-qq', '--no-install-recommends', 'chromium'], {
      stdio: ['ignore', 'ignore', 'inherit'],
      env,
    });
  } catch {
    return false;
  }
  return findBrowser() !== null;
}
