import { Worker } from 'node:worker_threads';

/** The worker beside this file: TypeScript where Node runs the source, JavaScript in a bundle. */
const workerFile = new URL(
  import.meta.url.endsWith('.ts') ? './check-copy-worker.ts' : './check-copy-worker.js',
  import.meta.url,
);

/** What a thorough check finds wrong in a copy, or null. Makes it one whole file on the way. */
export function damageOfCopy(path: string): Promise<string | null> {
  return new Promise((resolve) => {
    const worker = new Worker(workerFile, { workerData: path });
    worker.once('message', (found) => resolve(found === 'ok' ? null : String(found)));
    worker.once('error', (error) => resolve(error.message));
    worker.once('exit', () => resolve('the check was ended'));
  });
}
