import { expect, test } from 'vitest';
import { entriesOfDay } from '../../../core/changeover/entries.ts';
import { changeFromDayPlan } from '../../../core/plan/day/change-from-day-plan.ts';
import { planDay } from '../../../core/plan/day/day-plan.ts';
import { actsWithPlans } from '../../../core/plan/plan-act.ts';
import { applyChange } from '../../../core/show/apply-change.ts';
import { loadLinearSolver } from '../../../electron/solver/highs-solver.ts';
import { familyDay } from '../../bench/day-family.ts';

const solve = await loadLinearSolver();
const shape = {
  acts: 5,
  boxes: 2,
  socketsPerBox: 16,
  fewestLines: 18,
  mostLines: 24,
  sharing: 0.8,
  bankSize: 8,
};

test.each([1, 2, 3])(
  'on day %i the changeover sees every line as the planner costed it: kept, ready or waiting',
  (seed) => {
    const show = familyDay(shape, seed);
    const found = planDay(show, 'day', { solve, only: ['sockets'] });
    const { layer, evaluation, proof } = found.layers.sockets;
    expect(proof).not.toBe('no plan');
    let count = 0;
    const planned = applyChange(
      show,
      changeFromDayPlan(show, found, () => `new ${count++}`),
    );
    const asPlanned = layer.items.flatMap((item, index) =>
      item.ids.map((id) => [id, evaluation.entries[index]]),
    );
    const seen = entriesOfDay(actsWithPlans(planned, 'day'));
    expect(asPlanned.map(([id]) => [id, seen.get(id ?? '')])).toEqual(asPlanned);
  },
  60_000,
);
