import { cpSync, mkdirSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { documentFromShow } from '../../core/show/show.ts';
import { buildShell } from '../../electron/starting/build-window.ts';
import { smallShow } from './small-show.ts';
import { temporaryFolder } from './temporary-folder.ts';

const projectRoot = resolve(import.meta.dirname, '..', '..');

/** The script and the style in its text are there to be refused. */
const smallPage = `<!doctype html><title>Page</title>
  <style>body { color: red }</style><script>globalThis.ranInline = true</script>`;

/** A program folder with the small show as its demo and a page of a few lines. */
export function smallRoot(): string {
  const root = temporaryFolder();
  mkdirSync(join(root, 'renderer', 'dist'), { recursive: true });
  mkdirSync(join(root, 'assets', 'demo'), { recursive: true });
  writeFileSync(join(root, 'renderer', 'dist', 'index.html'), smallPage);
  writeFileSync(join(root, 'assets', 'demo', 'festival.json'), JSON.stringify(documentFromShow(smallShow())));
  return root;
}

/** The same, with what Electron loads, built. */
export async function smallElectronRoot(): Promise<string> {
  await buildShell(projectRoot);
  const root = smallRoot();
  cpSync(join(projectRoot, 'renderer', 'dist-shell'), join(root, 'renderer', 'dist-shell'), {
    recursive: true,
  });
  return root;
}
