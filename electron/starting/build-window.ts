import { readdirSync, statSync } from 'node:fs';
import { basename, join } from 'node:path';
import { stripVTControlCharacters } from 'node:util';

/** What the window is made of: if any of it is newer than what was built, it is built again. */
const pageSources = ['renderer', 'core', 'package-lock.json'];
const shellSources = ['electron', 'core', 'package-lock.json'];

export const pageFolder = (root: string) => join(root, 'renderer', 'dist');
const shellFolder = (root: string) => join(root, 'renderer', 'dist-shell');

/** Builds the page where it is missing or older than its sources. False, and said, where that does not work. */
export async function buildPage(root: string): Promise<boolean> {
  if (isNewer(join(pageFolder(root), 'index.html'), root, pageSources)) return true;
  console.log('Building the window (only after a change) ...');
  try {
    const { build } = await import('vite');
    await build({ configFile: join(root, 'renderer', 'vite.config.ts'), logLevel: 'silent' });
    return true;
  } catch (error) {
    const reason = error instanceof Error ? stripVTControlCharacters(error.message).trim() : String(error);
    console.error(`The window could not be built from its sources.\n${reason}`);
    return false;
  }
}

/**
 * Builds what Electron loads: the main process and its worker as modules, the preload as the one CommonJS file that
 * a sandboxed window takes.
 */
export async function buildShell(root: string): Promise<void> {
  const outDir = shellFolder(root);
  if (isNewer(join(outDir, 'preload.cjs'), root, shellSources)) return;
  const { build } = await import('vite');
  const bundle = (input: Record<string, string>, format: 'es' | 'cjs', emptyOutDir: boolean) =>
    build({
      root,
      configFile: false,
      logLevel: 'warn',
      publicDir: false,
      ssr: { external: true, target: 'node' },
      build: {
        ssr: true,
        outDir,
        emptyOutDir,
        target: 'node24',
        rolldownOptions: {
          input,
          external: ['electron'],
          output: { format, entryFileNames: format === 'cjs' ? '[name].cjs' : '[name].js' },
        },
      },
    });
  await bundle({ main: join(root, 'electron', 'main.ts'), ...workersIn(join(root, 'electron')) }, 'es', true);
  await bundle({ preload: join(root, 'electron', 'preload.ts') }, 'cjs', false);
}

/** Every `NAME-worker.ts` becomes `NAME-worker.js` beside main.js, which is where a bundled caller looks for it. */
function workersIn(folder: string): Record<string, string> {
  const files = readdirSync(folder, { recursive: true, encoding: 'utf8' });
  const workers = files.filter((file) => file.endsWith('-worker.ts'));
  return Object.fromEntries(workers.map((file) => [basename(file, '.ts'), join(folder, file)]));
}

function isNewer(built: string, root: string, sources: readonly string[]): boolean {
  const builtMs = statSync(built, { throwIfNoEntry: false })?.mtimeMs;
  return builtMs !== undefined && sources.every((it) => newestMs(join(root, it)) <= builtMs);
}

/** When a file, or the newest file below a folder, was written; what was built counts as no source. */
function newestMs(path: string): number {
  const found = statSync(path);
  if (!found.isDirectory()) return found.mtimeMs;
  const names = readdirSync(path).filter((name) => !name.startsWith('dist'));
  return Math.max(0, ...names.map((name) => newestMs(join(path, name))));
}
