import loadHighs from 'highs';
import { expect, test } from 'vitest';
import { buildLineLayer } from '../../../core/plan/day/build-line-layer.ts';
import { planLayer } from '../../../core/plan/day/plan-layer.ts';
import { loadLinearSolver } from '../../../electron/solver/highs-solver.ts';
import { familyDay } from '../../bench/day-family.ts';
import { socketModel } from '../../helpers/socket-model.ts';

const highs = await loadHighs();
const solve = await loadLinearSolver();

const smallShape = {
  acts: 4,
  boxes: 2,
  socketsPerBox: 10,
  fewestLines: 15,
  mostLines: 17,
  sharing: 0.7,
  bankSize: 1,
};

test.each([2, 3, 4, 5])(
  'small festival day %i costs the same in a second formulation, socket by socket',
  (seed) => {
    const { layer } = buildLineLayer(familyDay(smallShape, seed), 'day');
    const plan = planLayer(layer, { solve });
    const second = highs.solve(socketModel(layer), { output_flag: false, mip_rel_gap: 0 });
    expect(plan?.isClean ?? false).toBe(second.Status === 'Optimal');
    if (second.Status !== 'Optimal') return;
    expect(plan?.cost).toBe(Math.round(second.ObjectiveValue));
    expect(plan?.isProven).toBe(true);
  },
  120_000,
);
