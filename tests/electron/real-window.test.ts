import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { _electron, type ElectronApplication, type Page } from 'playwright';
import { expect, onTestFinished, test } from 'vitest';
import { contract } from '../../core/contract/contract.ts';
import { put } from '../../core/show/change.ts';
import { buildPage, buildShell } from '../../electron/starting/build-window.ts';
import { sandboxArguments } from '../../electron/starting/find-browser.ts';
import { installedElectron } from '../../electron/starting/find-electron.ts';
import { bridgeWindow } from '../helpers/bridge-window.ts';

const root = resolve(import.meta.dirname, '..', '..');

async function startElectron(folder: string): Promise<{ program: ElectronApplication; page: Page }> {
  const executablePath = installedElectron(root);
  if (!executablePath) throw new Error('This test is only listed where the binary is.');
  const program = await _electron.launch({
    executablePath,
    args: [root, ...sandboxArguments()],
    env: { ...process.env, FOLDBOOK_DATA: folder },
  });
  return { program, page: await program.firstWindow() };
}

test('in Electron itself a change is saved, and is there after the program was closed and started again', async () => {
  expect(await buildPage(root)).toBe(true);
  await buildShell(root);
  const folder = mkdtempSync(join(tmpdir(), 'foldbook-electron-'));
  onTestFinished(() => rmSync(folder, { recursive: true, force: true, maxRetries: 5 }));

  const first = await startElectron(folder);
  expect(await first.page.evaluate(() => 'require' in globalThis || 'process' in globalThis)).toBe(false);
  const window = await bridgeWindow(first.page);
  const reply = await window.call('show.open', {});
  const { show, host } = contract['show.open'].out.parse(reply.ok && reply.value);
  expect(host).toBe('electron');
  const act = show.acts[0];
  if (!act) throw new Error('The demo has acts.');
  const change = { label: 'Rename', put: [put('acts', { ...act, name: 'Tin Lanterns' })], remove: [] };
  expect(await window.call('show.change', { change })).toMatchObject({ ok: true });
  await first.program.close();

  const second = await startElectron(folder);
  onTestFinished(() => second.program.close());
  const again = await (await bridgeWindow(second.page)).call('show.open', {});
  expect(JSON.stringify(again)).toContain('Tin Lanterns');
});
