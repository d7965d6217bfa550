import { parentPort } from 'node:worker_threads';
import { planDay } from '../../core/plan/day/day-plan.ts';
import { loadLinearSolver } from './highs-solver.ts';
import type { PlanDayOrder, PlanDayWord } from './plan-day-job.ts';

/** The thread that plans: the engine blocks, so nothing else may live here. One order at a time. */
let stopFlag: Int32Array | null = null;
let deadlineMs = Number.POSITIVE_INFINITY;
const isStopped = () =>
  (stopFlag !== null && Atomics.load(stopFlag, 0) !== 0) || performance.now() > deadlineMs;
const solver = loadLinearSolver(isStopped);

parentPort?.on('message', async (order: PlanDayOrder) => {
  const say = (word: PlanDayWord) => parentPort?.postMessage(word);
  try {
    const solve = await solver;
    stopFlag = new Int32Array(order.stop);
    const { timeLimitSeconds = Number.POSITIVE_INFINITY, ...options } = order.options;
    deadlineMs = performance.now() + timeLimitSeconds * 1000;
    const plan = planDay(order.show, order.dayId, {
      ...options,
      solve,
      isStopped,
      onProgress: (progress) => say({ word: 'progress', progress }),
    });
    say({ word: 'done', plan });
  } catch (error) {
    say({ word: 'failed', reason: error instanceof Error ? (error.stack ?? error.message) : String(error) });
  }
});
