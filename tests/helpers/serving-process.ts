import { type ChildProcess, spawn } from 'node:child_process';
import { join } from 'node:path';
import { createInterface } from 'node:readline';
import { onTestFinished } from 'vitest';

export type ServingProcess = { process: ChildProcess; address: string; ended: Promise<number | null> };

/** Starts the serving program on a page and a show folder, and waits until it says its address. */
export async function startServing(root: string, folder: string): Promise<ServingProcess> {
  const script = join(import.meta.dirname, 'serve-show.ts');
  const child = spawn(process.execPath, [script, root, folder], { stdio: ['ignore', 'pipe', 'inherit'] });
  const ended = new Promise<number | null>((resolve) => child.once('close', resolve));
  onTestFinished(() => {
    child.kill('SIGKILL');
  });
  for await (const line of createInterface({ input: child.stdout })) {
    const address = /http:\S+/.exec(line)?.[0];
    if (address) return { process: child, address, ended };
  }
  throw new Error('The program ended before it said its address.');
}
