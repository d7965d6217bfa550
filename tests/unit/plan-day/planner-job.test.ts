import { afterAll, expect, test } from 'vitest';
import { type DayProgress, layerNames } from '../../../core/plan/day/day-plan.ts';
import { DayPlanner } from '../../../electron/solver/plan-day-job.ts';
import { familyDay, twelveActs } from '../../bench/day-family.ts';
import { festivalDay } from '../../helpers/festival-day.ts';

const planner = new DayPlanner();
const patience = 60_000;
const largeDay = () => familyDay({ ...twelveActs, bankSize: 1 }, 1);

afterAll(() => planner.close());

test(
  'a plan from the thread is the plan',
  async () => {
    const plan = await planner.start(festivalDay(), 'day').done;
    expect(plan.layers.sockets.proof).toBe('proven minimal');
  },
  patience,
);

test(
  'a large day can be stopped once there is a clean patch, and that patch is what comes back',
  async () => {
    const seen: DayProgress[] = [];
    const job = planner.start(largeDay(), 'day', { only: ['sockets'] }, (progress) => {
      seen.push(progress);
      if (progress.isClean) job.stop();
    });
    const { sockets } = (await job.done).layers;
    expect(sockets.evaluation.broken).toEqual([]);
    expect(sockets.proof).toBe('within the gap');
    expect(sockets.plan.cost).toBeLessThanOrEqual(Math.min(...seen.map((it) => it.cost)));
    expect(sockets.plan.bound).toBeLessThanOrEqual(sockets.plan.cost);
  },
  patience,
);

test(
  'a day that cannot be planned tells no progress of the nearest plan, which is none of its layers',
  async () => {
    const decisions = ['h kick', 'h bass'].map((sourceId) => ({
      id: `lock ${sourceId}`,
      actId: 'herons',
      about: 'socket',
      sourceId,
      socketId: 'a1',
    }));
    const seen: DayProgress[] = [];
    const job = planner.start(festivalDay({ decisions }), 'day', {}, (progress) => seen.push(progress));
    const { sockets } = (await job.done).layers;
    expect(sockets.nearest?.opened).toHaveLength(1);
    expect(seen.every((it) => layerNames.includes(it.layer))).toBe(true);
    expect(seen.filter((it) => it.layer === 'sockets' && it.isClean)).toEqual([]);
  },
  patience,
);

test(
  'two plans asked for at once come one after the other',
  async () => {
    const jobs = [planner.start(festivalDay(), 'day'), planner.start(festivalDay(), 'day')];
    const [first, second] = await Promise.all(jobs.map((job) => job.done));
    expect(second).toEqual(first);
  },
  patience,
);

test(
  'a planner that is closed says so to whoever waits',
  async () => {
    const other = new DayPlanner();
    const job = other.start(largeDay(), 'day');
    const refused = expect(job.done).rejects.toThrow(/closed/);
    await new Promise((resolve) => setTimeout(resolve, 50));
    await other.close();
    await refused;
  },
  patience,
);
