import { Worker } from 'node:worker_threads';

/**
 * The engine lets the heap for young objects grow and never gives it back; measured over a day of prints, 16 MB cost
 * no time and kept 90 MB from being held.
 */
const youngHeapMb = 16;

/** A worker that has done so much is replaced: what its libraries hold on to, a little for each job, goes with it. */
const mostJobs = 30;

/**
 * Workers of one file: one that has finished is kept for a while, so that the next piece of work needs no start. An
 * idle worker holds up neither the end of the program nor its memory for long.
 */
export class WorkerKeeper {
  readonly #file: URL;
  readonly #heapMb: number;
  readonly #idleMs: number;
  readonly #jobsDone = new WeakMap<Worker, number>();
  #idle: { worker: Worker; timer: NodeJS.Timeout } | null = null;

  constructor(file: URL, heapMb: number, idleMs: number) {
    this.#file = file;
    this.#heapMb = heapMb;
    this.#idleMs = idleMs;
  }

  /** The worker that waits, or a new one. */
  take(): Worker {
    if (!this.#idle)
      return new Worker(this.#file, {
        resourceLimits: { maxOldGenerationSizeMb: this.#heapMb, maxYoungGenerationSizeMb: youngHeapMb },
      });
    const { worker, timer } = this.#idle;
    clearTimeout(timer);
    this.#idle = null;
    worker.ref();
    return worker;
  }

  /** Keeps a worker that has finished; of two, one, and none that has worked for long. */
  keep(worker: Worker): void {
    const jobsDone = (this.#jobsDone.get(worker) ?? 0) + 1;
    this.#jobsDone.set(worker, jobsDone);
    if (this.#idle || jobsDone >= mostJobs) {
      void worker.terminate();
      return;
    }
    worker.unref();
    const timer = setTimeout(() => {
      this.#idle = null;
      void worker.terminate();
    }, this.#idleMs);
    timer.unref();
    this.#idle = { worker, timer };
  }
}

/** A worker beside a file: TypeScript where Node runs the source, JavaScript in a bundle. */
export function workerBeside(moduleUrl: string, name: string): URL {
  return new URL(`./${name}.${moduleUrl.endsWith('.ts') ? 'ts' : 'js'}`, moduleUrl);
}
