import { Worker } from 'node:worker_threads';

/**
 * Workers of one file: one that has finished is kept for a while, so that the next piece of work needs no start. An
 * idle worker holds up neither the end of the program nor its memory for long.
 */
export class WorkerKeeper {
  readonly #file: URL;
  readonly #heapMb: number;
  readonly #idleMs: number;
  #idle: { worker: Worker; timer: NodeJS.Timeout } | null = null;

  constructor(file: URL, heapMb: number, idleMs: number) {
    this.#file = file;
    this.#heapMb = heapMb;
    this.#idleMs = idleMs;
  }

  /** The worker that waits, or a new one. */
  take(): Worker {
    if (!this.#idle)
      return new Worker(this.#file, { resourceLimits: { maxOldGenerationSizeMb: this.#heapMb } });
    const { worker, timer } = this.#idle;
    clearTimeout(timer);
    this.#idle = null;
    worker.ref();
    return worker;
  }

  /** Keeps a worker that has finished; of two, one. */
  keep(worker: Worker): void {
    if (this.#idle) {
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
