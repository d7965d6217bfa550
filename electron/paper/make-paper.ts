import { type Outcome, refuse } from '../../core/contract/problem.ts';
import { WorkerKeeper, workerBeside } from '../worker-keeper.ts';
import type { MadePaper, PaperInput, Progress } from './make-files.ts';

/** What the worker says while it works and when it is done. */
export type FromWorker =
  | { says: 'progress'; done: number; of: number; what: string }
  | { says: 'made'; made: MadePaper };

const limits = { heapMb: 768, idleMs: 120_000, longestMs: 180_000 } as const;

const workers = new WorkerKeeper(workerBeside(import.meta.url, 'paper-worker'), limits.heapMb, limits.idleMs);

/**
 * Makes the files of a set of sheets in a worker, so that no window waits. `signal` stops it: the answer is then a
 * problem with the code `stopped`, and nothing was kept.
 */
export async function makePaper(
  input: PaperInput,
  tell: Progress = () => {},
  signal?: AbortSignal,
): Promise<Outcome<MadePaper>> {
  if (signal?.aborted) return stopped();
  const worker = workers.take();
  return new Promise((resolve, reject) => {
    const finish = (outcome: Outcome<MadePaper>, reusable: boolean) => {
      clearTimeout(timer);
      signal?.removeEventListener('abort', stop);
      worker.off('message', heard).off('error', broke);
      if (reusable) workers.keep(worker);
      else void worker.terminate();
      resolve(outcome);
    };
    const stop = () => finish(stopped(), false);
    const timer = setTimeout(() => finish(tooLong(), false), limits.longestMs);
    signal?.addEventListener('abort', stop);
    const heard = (message: FromWorker) => {
      if (message.says === 'progress') tell(message.done, message.of, message.what);
      else finish(answerOf(message.made), true);
    };
    const broke = (error: Error & { code?: string }) => {
      // Only memory is expected trouble: a bug is thrown, so that it is written down with its place.
      if (error.code !== 'ERR_WORKER_OUT_OF_MEMORY') reject(error);
      finish(tooMuch(), false);
    };
    worker.on('message', heard).on('error', broke);
    worker.postMessage(input);
  });
}

function answerOf(made: MadePaper): Outcome<MadePaper> {
  if (made.editions.length > 0) return { ok: true, value: made };
  return refuse(
    'wrong request',
    'None of these sheets is in the show any more.',
    'Choose an act or a day that is there, and make the sheets again.',
  );
}

function stopped() {
  return refuse(
    'stopped',
    'Making the sheets was stopped; no file was written.',
    'Start it again when you like.',
  );
}

function tooLong() {
  return refuse(
    'stopped',
    `The sheets were not ready within ${limits.longestMs / 60_000} minutes and were given up.`,
    'Make fewer sheets at once: an act, or a single sheet.',
  );
}

function tooMuch() {
  return refuse(
    'stopped',
    'These sheets need more memory than the program takes for them, and were given up.',
    'Make fewer sheets at once: an act, or a single sheet.',
  );
}
