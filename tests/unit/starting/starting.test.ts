import { spawnSync } from 'node:child_process';
import { chmodSync, existsSync, mkdirSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import { describe, expect, onTestFinished, test, vi } from 'vitest';
import { CopyFolders } from '../../../electron/copies/copy-folders.ts';
import { dataFolder } from '../../../electron/starting/data-folder.ts';
import { findBrowser, hasDisplay } from '../../../electron/starting/find-browser.ts';
import { findElectron, installedElectron } from '../../../electron/starting/find-electron.ts';
import { openService } from '../../../electron/starting/open-service.ts';
import { smallRoot } from '../../helpers/small-root.ts';
import { temporaryFolder } from '../../helpers/temporary-folder.ts';

const root = resolve(import.meta.dirname, '..', '..', '..');

function program(path: string): void {
  writeFileSync(path, '#!/bin/sh\n');
  chmodSync(path, 0o755);
}

describe('a Node that is too old', () => {
  test.each(['20.20.2', '22.13.0', '18.0.0'])(
    '(%s) is told so in one sentence, not in an error',
    (version) => {
      const pretend = `Object.defineProperty(process.versions, 'node', { value: '${version}' })`;
      const run = spawnSync(
        process.execPath,
        [
          '--import',
          `data:text/javascript,${encodeURIComponent(pretend)}`,
          'electron/run.js',
          'electron/start.ts',
        ],
        { cwd: root, encoding: 'utf8' },
      );
      expect(run.status).toBe(1);
      expect(run.stderr).toContain(`This is Node ${version}; Foldbook needs Node 22.18 or later.`);
      expect(run.stderr.trim().split('\n')).toHaveLength(1);
    },
  );
});

describe('the start', () => {
  test.each([[['--host', 'moon']], [['--colour']], [['extra']]])(
    'with wrong words (%s) says how it is used',
    (words) => {
      const run = spawnSync(process.execPath, ['electron/run.js', 'electron/start.ts', ...words], {
        cwd: root,
        encoding: 'utf8',
      });
      expect(run.status).toBe(2);
      expect(run.stderr).toContain('Usage: npm start');
    },
  );

  test('puts the demo festival into the very first show, and never again', () => {
    const [small, folder] = [smallRoot(), join(temporaryFolder(), 'new')];
    const first = openService(small, folder, 'browser');
    if (!first.ok) throw new Error(first.problem.what);
    first.value.close();
    writeFileSync(join(small, 'assets', 'demo', 'festival.json'), 'no demo any more');
    const second = openService(small, folder, 'browser');
    expect(second.ok).toBe(true);
    if (second.ok) second.value.close();
  });

  test('goes on in memory where the show cannot be kept, and says so at once', () => {
    const file = join(temporaryFolder(), 'file');
    writeFileSync(file, '');
    const folders = new CopyFolders(join(file, 'below'), {}, [temporaryFolder()]);
    const opened = openService(smallRoot(), join(file, 'below'), 'browser', { folders });
    if (!opened.ok) throw new Error(opened.problem.what);
    opened.value.close();
    expect(opened.value.said).toContain('Your work is not in its file.');
    expect(opened.value.said).toContain('do not close the program');
  });
});

test.each([
  ['linux', { XDG_DATA_HOME: '/data' }, /^\/data\/foldbook$/],
  ['linux', {}, /\.local\/share\/foldbook$/],
  ['darwin', {}, /Library\/Application Support\/Foldbook$/],
  ['win32', { APPDATA: '/roaming' }, /^\/roaming\/Foldbook$/],
  ['linux', { FOLDBOOK_DATA: '/elsewhere', XDG_DATA_HOME: '/data' }, /^\/elsewhere$/],
] as const)('on %s with %o the show is kept where that system keeps data', (platform, env, folder) => {
  expect(dataFolder(env, platform)).toMatch(folder);
});

describe('a browser', () => {
  test('is found on the path, the first of the family first', () => {
    const [one, two] = [temporaryFolder(), temporaryFolder()];
    program(join(one, 'google-chrome'));
    program(join(two, 'chromium'));
    expect(findBrowser({ PATH: `${one}:${two}` }, 'linux')).toBe(join(two, 'chromium'));
  });

  test('that cannot be run is none', () => {
    const folder = temporaryFolder();
    writeFileSync(join(folder, 'chromium'), '');
    expect(findBrowser({ PATH: folder }, 'linux')).toBeNull();
    expect(findBrowser({}, 'linux')).toBeNull();
  });

  test.each([
    ['linux', {}, false],
    ['linux', { DISPLAY: ':0' }, true],
    ['linux', { WAYLAND_DISPLAY: 'wayland-0' }, true],
    ['darwin', {}, true],
    ['win32', {}, true],
  ] as const)('can show a window on %s with %o: %s', (platform, env, can) => {
    expect(hasDisplay(env, platform)).toBe(can);
  });
});

describe("Electron's binary", () => {
  /** A program folder with Electron's package as npm installs it: without the binary. */
  function rootWithPackage(): string {
    const folder = temporaryFolder();
    const electron = join(folder, 'node_modules', 'electron');
    mkdirSync(electron, { recursive: true });
    writeFileSync(join(electron, 'package.json'), '{ "version": "1.2.3" }');
    writeFileSync(join(electron, 'install.js'), 'throw new Error("nothing was reachable")');
    return folder;
  }

  test('is used where it is installed', () => {
    const folder = rootWithPackage();
    expect(installedElectron(folder)).toBeNull();
    const electron = join(folder, 'node_modules', 'electron');
    mkdirSync(join(electron, 'dist'));
    program(join(electron, 'dist', 'electron'));
    writeFileSync(join(electron, 'path.txt'), 'electron');
    expect(installedElectron(folder)).toBe(join(electron, 'dist', 'electron'));
  });

  test('is asked for once where it cannot be had, and not again for that version', async () => {
    const [folder, data] = [rootWithPackage(), temporaryFolder()];
    const fetched = vi.spyOn(globalThis, 'fetch').mockRejectedValue(new TypeError('no way out'));
    onTestFinished(() => {
      fetched.mockRestore();
    });
    expect(await findElectron(folder, data)).toBeNull();
    expect(await findElectron(folder, data)).toBeNull();
    expect(fetched).toHaveBeenCalledTimes(1);
    writeFileSync(join(folder, 'node_modules', 'electron', 'package.json'), '{ "version": "1.2.4" }');
    expect(await findElectron(folder, data)).toBeNull();
    expect(fetched).toHaveBeenCalledTimes(2);
  });

  test('that the installer could not bring is remembered as well', async () => {
    const [folder, data] = [rootWithPackage(), temporaryFolder()];
    const fetched = vi.spyOn(globalThis, 'fetch').mockResolvedValue(new Response(''));
    onTestFinished(() => {
      fetched.mockRestore();
    });
    expect(await findElectron(folder, data)).toBeNull();
    expect(existsSync(join(data, 'electron-not-fetched.txt'))).toBe(true);
  });

  test('is not looked for where even its package is missing', async () => {
    expect(await findElectron(temporaryFolder(), temporaryFolder())).toBeNull();
  });
});

test('the file that says that Node is too old is itself read by an old Node: no TypeScript, no new syntax', () => {
  expect(pathToFileURL(join(root, 'electron', 'run.js')).pathname.endsWith('.js')).toBe(true);
  const old = ['/usr/bin/node', '/usr/local/bin/node'].find((path) => existsSync(path)) ?? process.execPath;
  const check = spawnSync(old, ['--check', join(root, 'electron', 'run.js')], { encoding: 'utf8' });
  expect(check.stderr).toBe('');
});
