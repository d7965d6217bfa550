import { spawn } from 'node:child_process';
import { buildShell } from './build-window.ts';
import { sandboxArguments } from './find-browser.ts';

/** A program that ends this soon with an error could not start (a library is missing), and another way is tried. */
const startedAfterMs = 5_000;

/** Runs the program in Electron until it ends. False where Electron could not start. */
export async function runElectron(electron: string, root: string, folder: string): Promise<boolean> {
  await buildShell(root);
  const startedMs = Date.now();
  let told = false;
  const code = await new Promise<number | null>((resolve) => {
    const window = spawn(electron, [root, ...sandboxArguments()], {
      stdio: 'inherit',
      env: { ...process.env, FOLDBOOK_DATA: folder },
    });
    for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP'] as const)
      process.on(signal, () => {
        told = true;
        window.kill(signal);
      });
    window.on('error', () => resolve(1));
    window.on('close', resolve);
  });
  return told || code === 0 || Date.now() - startedMs > startedAfterMs;
}
