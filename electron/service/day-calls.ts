import { refuse } from '../../core/contract/problem.ts';
import { checkDay } from '../../core/plan/day/check-day.ts';
import { foundDay } from '../../core/plan/day/found-day.ts';
import type { WorkingShow } from '../database/sheltered-show.ts';
import { DayPlanner, type PlanDayJob } from '../solver/plan-day-job.ts';
import type { Handler } from './handlers.ts';

/** The planner of a show: one, because two would only halve each other's processor. */
class Planning {
  readonly #planner = new DayPlanner();
  #job: { job: PlanDayJob; stopped: boolean } | null = null;

  /** Ends what is being planned, and starts anew. */
  start(...order: Parameters<DayPlanner['start']>): { job: PlanDayJob; stopped: boolean } {
    this.stop();
    this.#job = { job: this.#planner.start(...order), stopped: false };
    return this.#job;
  }

  stop(): void {
    if (this.#job) this.end(this.#job);
  }

  end(running: { job: PlanDayJob; stopped: boolean }): void {
    running.stopped = true;
    running.job.stop();
  }

  over(running: { job: PlanDayJob; stopped: boolean }): void {
    if (this.#job === running) this.#job = null;
  }
}

const planningOf = new WeakMap<WorkingShow, Planning>();

export const planDay: Handler<'day.plan'> = async (context, { dayId, keepUnlessGain, timeLimitSeconds }) => {
  const show = context.show.read();
  const stopping = checkDay(show, dayId).find((doubt) => doubt.stops);
  if (stopping) return refuse('cannot plan', stopping.what, stopping.todo);
  const planning = planningOf.get(context.show) ?? new Planning();
  planningOf.set(context.show, planning);
  const running = planning.start(
    show,
    dayId,
    { timeLimitSeconds, ...(keepUnlessGain === null ? {} : { keepUnlessGain }) },
    ({ layer, cost, bound, isClean, assignment }) => {
      if (isClean) context.tellCaller({ push: 'day progress', soFar: { layer, cost, bound, assignment } });
    },
  );
  const leave = () => planning.end(running);
  context.gone.addEventListener('abort', leave);
  try {
    const plan = await running.job.done;
    return { ok: true, value: { found: foundDay(plan), stopped: running.stopped } };
  } finally {
    context.gone.removeEventListener('abort', leave);
    planning.over(running);
  }
};

export const stopPlanning: Handler<'day.stop'> = (context) => {
  planningOf.get(context.show)?.stop();
  return { ok: true, value: {} };
};
