import { parentPort } from 'node:worker_threads';
import { planDay } from '../../core/plan/day/day-plan.ts';
import { loadLinearSolver } from './highs-solver.ts';
import type { PlanDayOrder, PlanDayWord } from './plan-day-job.ts';

/** The thread that plans: the engine blocks, so nothing else may live here. One order at a time. */
let stopFlag: Int32Array | null = null;
const isStopped = () => stopFlag !== null && Atomics.load(stopFlag, 0) !== 0;
const solver = loadLinearSolver(isStopped);

parentPort?.on('message', async (order: PlanDayOrder) => {
  const say = (word: PlanDayWord) => parentPort?.postMessage(word);
  try {
    const solve = await solver;
    stopFlag = new Int32Array(order.stop);
    const plan = planDay(order.show, order.dayId, {
      ...order.options,
      solve,
      isStopped,
      onProgress: (progress) => say({ word: 'progress', progress }),
    });
    say({ word: 'done', plan });
  } catch (error) {
    say({ word: 'failed', reason: error instanceof Error ? (error.stack ?? error.message) : String(error) });
  }
});
