import { type ChildProcess, spawn } from 'node:child_process';
import { join } from 'node:path';
import { expect, onTestFinished } from 'vitest';

export type ServingProcess = {
  process: ChildProcess;
  /** All that the program has said so far. */
  said(): string;
  /** Its exit code, when it has ended. */
  ended: Promise<number | null>;
};

/**
 * Starts the serving program on a page and a show folder, with a browser to show the page in or without, and with
 * more or other words of its surroundings.
 */
export function startServing(
  root: string,
  folder: string,
  browser?: string,
  surroundings: NodeJS.ProcessEnv = {},
): ServingProcess {
  const script = join(import.meta.dirname, 'serve-show.ts');
  const words = [script, root, folder, ...(browser ? [browser] : [])];
  const child = spawn(process.execPath, words, {
    stdio: ['ignore', 'pipe', 'inherit'],
    env: { ...process.env, ...surroundings },
  });
  let said = '';
  child.stdout.on('data', (part) => {
    said += String(part);
  });
  onTestFinished(() => {
    child.kill('SIGKILL');
  });
  const ended = new Promise<number | null>((resolve) => child.once('close', resolve));
  return { process: child, said: () => said, ended };
}

/** The address that the program prints where it has no window to show. */
export async function printedAddress(serving: ServingProcess): Promise<string> {
  const address = () => /http:\S+/.exec(serving.said())?.[0];
  await expect.poll(address, { timeout: 60_000, interval: 10 }).toBeDefined();
  return address() ?? '';
}
