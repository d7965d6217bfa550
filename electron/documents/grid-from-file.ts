import { type Outcome, refuse } from '../../core/contract/problem.ts';
import type { Grid } from '../../core/rider/grid.ts';
import { WorkerKeeper, workerBeside } from '../worker-keeper.ts';
import { limits } from './limits.ts';

const workers = new WorkerKeeper(
  workerBeside(import.meta.url, 'grid-worker'),
  limits.workerHeapMb,
  limits.idleWorkerMs,
);

/**
 * Turns the bytes of a rider into a grid of text. Never throws for a bad file: the answer is a problem that says
 * what is wrong and what to ask for. The file is read in a worker with a limit on time and memory, so that no file
 * can stop or swell the program. `signal` stops the reading; the answer is then a problem with the code `stopped`.
 */
export async function gridFromFile(
  fileName: string,
  bytes: Uint8Array,
  signal?: AbortSignal,
): Promise<Outcome<Grid>> {
  const name = fileName.slice(0, 400);
  if (signal?.aborted) return stopped(name);
  if (bytes.byteLength > limits.fileBytes) return tooLarge(name, bytes.byteLength);
  const worker = workers.take();
  return new Promise((resolve) => {
    const finish = (outcome: Outcome<Grid>, reusable: boolean) => {
      clearTimeout(timer);
      clearInterval(watch);
      signal?.removeEventListener('abort', stop);
      worker.off('message', answered).off('error', broke);
      if (reusable) workers.keep(worker);
      else void worker.terminate();
      resolve(outcome);
    };
    const stop = () => finish(stopped(name), false);
    const timer = setTimeout(() => finish(tooSlow(name), false), limits.readingMs);
    const before = process.memoryUsage.rss();
    const watch = setInterval(() => {
      if (process.memoryUsage.rss() - before > limits.growthMb * 1024 * 1024) finish(tooHungry(name), false);
    }, limits.lookEveryMs);
    signal?.addEventListener('abort', stop);
    const answered = (outcome: Outcome<Grid>) => finish(outcome, true);
    const broke = (error: Error) => finish(failed(name, error), false);
    worker.on('message', answered).on('error', broke);
    worker.postMessage({ fileName: name, bytes });
  });
}

const pasteInstead = 'Copy the list out of it and paste it here, or ask the band for it as XLSX or CSV.';

function stopped(name: string) {
  return refuse(
    'stopped',
    `Reading “${name}” was stopped; nothing has changed.`,
    'Bring it in again when you like.',
  );
}

function tooLarge(name: string, byteLength: number) {
  const megabytes = Math.round(byteLength / 1024 / 1024);
  const limit = limits.fileBytes / 1024 / 1024;
  return refuse(
    'file too large',
    `“${name}” has ${megabytes} MB; riders of up to ${limit} MB are read.`,
    'Check that this is the rider. If it is, ask for it without pictures, or save only the pages with the lists.',
  );
}

function tooSlow(name: string) {
  return refuse(
    'unreadable file',
    `“${name}” could not be read within ${limits.readingMs / 1000} seconds and was given up; nothing has changed.`,
    pasteInstead,
  );
}

function tooHungry(name: string) {
  return refuse(
    'unreadable file',
    `“${name}” needs more memory to read than any rider should and was given up; nothing has changed.`,
    pasteInstead,
  );
}

function failed(name: string, error: Error & { code?: string }) {
  if (error.code === 'ERR_WORKER_OUT_OF_MEMORY') return tooHungry(name);
  return refuse(
    'unreadable file',
    `“${name}” could not be read: it is damaged or written in an unusual way (${error.message.slice(0, 200)}).`,
    pasteInstead,
  );
}
