import { expect, test } from 'vitest';
import { planLayer } from '../../../core/plan/day/plan-layer.ts';
import type { Layer } from '../../../core/plan/day/problem.ts';
import { loadLinearSolver } from '../../../electron/solver/highs-solver.ts';
import { tinyLayer } from '../../helpers/tiny-layer.ts';
import reference from '../../reference/assignment.json';

/**
 * A day of one act is a linear assignment problem: every line to one socket at its own cost. Instances and optima
 * are published (SciPy tests, OR-Tools guide, an exercise page, the product matrices of Operations Research 24,
 * 1976) or computed three other ways; see the sources in `tests/reference/assignment.json`.
 */
const solve = await loadLinearSolver();

type Instance = { name: string; goal: string; cost: (number | null)[][]; optimum: number | null };

const instances = reference.cases.map((it): Instance => {
  const optimum = 'optimum' in it.out ? (it.out.optimum ?? null) : null;
  return { name: it.in.name, goal: it.in.goal, cost: matrixOf(it.in), optimum };
});

function matrixOf(given: (typeof reference.cases)[number]['in']): (number | null)[][] {
  if (Array.isArray(given.cost)) return given.cost;
  const size = Number(given.name.split(' ').at(-1));
  return Array.from({ length: size }, (_, row) =>
    Array.from({ length: size }, (_, column) => (row + 1) * (column + 1)),
  );
}

/** Costs are turned so that all are wholes from 0 up and the shorter side are the lines. */
function layerOf({ cost, goal }: Instance): { layer: Layer; backToCost: (planned: number) => number } {
  const rows =
    cost.length <= (cost[0]?.length ?? 0)
      ? cost
      : (cost[0] ?? []).map((_, at) => cost.map((row) => row[at] ?? null));
  const known = rows.flat().filter((it) => it !== null);
  const sign = goal === 'maximise' ? -1 : 1;
  const offset = -Math.min(...known.map((it) => sign * it));
  const boxes = (rows[0] ?? []).map((_, column) => ({ name: `B${column}-`, slots: 1 }));
  const layer = tinyLayer(
    boxes,
    1,
    rows.map((row, at) => ({
      act: 0,
      name: `line ${at}`,
      reach: row.flatMap((value, column) => (value === null ? [] : [`B${column}-`])),
      cost: row.map((value) => sign * (value ?? 0) + offset),
    })),
  );
  for (const item of layer.items) item.coldCost = item.hotCost;
  return { layer, backToCost: (planned) => sign * (planned - offset * rows.length) };
}

test.each(instances)('published assignment: $name', (instance) => {
  const { layer, backToCost } = layerOf(instance);
  const plan = planLayer(layer, { solve });
  if (instance.optimum === null) return expect(plan?.isClean ?? false).toBe(false);
  expect(plan?.isProven).toBe(true);
  expect(backToCost(plan?.cost ?? Number.NaN)).toBe(instance.optimum);
});
