import { Worker } from 'node:worker_threads';
import type { DayPlan, DayPlanOptions, DayProgress } from '../../core/plan/day/day-plan.ts';
import type { Id } from '../../core/show/rig.ts';
import type { Show } from '../../core/show/show.ts';

/** What may be asked of a plan besides the day: see `DayPlanOptions`. */
export type PlanDayChoices = Pick<DayPlanOptions, 'keepUnlessGain' | 'only'> & {
  /** Ends the job by itself after this long; without it, when all is proven or nothing is left to try. */
  timeLimitSeconds?: number;
};

export type PlanDayOrder = { show: Show; dayId: Id; options: PlanDayChoices; stop: SharedArrayBuffer };

export type PlanDayWord =
  | { word: 'progress'; progress: DayProgress }
  | { word: 'done'; plan: DayPlan }
  | { word: 'failed'; reason: string };

/** A plan being made. `stop` ends it soon; `done` then gives the best plan so far, and says what is proven of it. */
export type PlanDayJob = { done: Promise<DayPlan>; stop: () => void };

/** Plans days in a thread of its own, one after the other. Keep one: the engine takes a moment to load. */
export class DayPlanner {
  #worker: Worker | null = null;
  #last: Promise<unknown> = Promise.resolve();

  /** Loads the engine ahead of the first plan. */
  warmUp(): void {
    this.#open();
  }

  /** `done` rejects only where the program itself is at fault. */
  start(
    show: Show,
    dayId: Id,
    options: PlanDayChoices = {},
    onProgress: (progress: DayProgress) => void = () => {},
  ): PlanDayJob {
    const stop = new SharedArrayBuffer(4);
    const done = this.#last.then(() => this.#run({ show, dayId, options, stop }, onProgress));
    this.#last = done.catch(() => {});
    return { done, stop: () => Atomics.store(new Int32Array(stop), 0, 1) };
  }

  /** Ends the thread, and with it whatever is being planned. */
  async close(): Promise<void> {
    const worker = this.#worker;
    this.#worker = null;
    await worker?.terminate();
  }

  #open(): Worker {
    if (this.#worker) return this.#worker;
    const worker = new Worker(workerFile);
    worker.unref();
    this.#worker = worker;
    return worker;
  }

  #run(order: PlanDayOrder, onProgress: (progress: DayProgress) => void): Promise<DayPlan> {
    const worker = this.#open();
    worker.ref();
    return new Promise<DayPlan>((resolve, reject) => {
      const hear = (word: PlanDayWord) => {
        if (word.word === 'progress') return onProgress(word.progress);
        leave();
        return word.word === 'done' ? resolve(word.plan) : reject(new Error(word.reason));
      };
      const broke = (error: Error) => {
        this.#worker = null;
        leave();
        reject(error);
      };
      const ended = () => broke(new Error('The planner was closed.'));
      const leave = () => {
        worker.off('message', hear).off('error', broke).off('exit', ended);
        worker.unref();
      };
      worker.on('message', hear).on('error', broke).on('exit', ended);
      worker.postMessage(order);
    });
  }
}

/** The worker beside this file: TypeScript where Node runs the source, JavaScript in a bundle. */
const workerFile = new URL(
  import.meta.url.endsWith('.ts') ? './plan-day-worker.ts' : './plan-day-worker.js',
  import.meta.url,
);
