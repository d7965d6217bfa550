import { expect, test } from 'vitest';
import { planWithEarlier } from '../../../core/plan/day/stability.ts';
import { loadLinearSolver } from '../../../electron/solver/highs-solver.ts';
import { type TinyItem, tinyLayer } from '../../helpers/tiny-layer.ts';

const solve = await loadLinearSolver();

/** Before the change the keys of act 2 were on A1, where act 1 plays: a plug in the changeover (10) for nothing. */
const wasteful: TinyItem[] = [
  { act: 0, name: 'bass', earlier: 'A1' },
  { act: 1, name: 'keys', earlier: 'A1' },
];

const cases: {
  name: string;
  items: TinyItem[];
  threshold: number | null;
  taken: 'kept' | 'new' | null;
  cost: number;
  moved?: number;
  released?: number;
}[] = [
  {
    name: 'a gain of 6 is not worth it to an engineer who asks for 10',
    items: wasteful,
    threshold: 10,
    taken: 'kept',
    cost: 14,
  },
  {
    name: 'a gain of 6 is worth it to an engineer who asks for 5',
    items: wasteful,
    threshold: 5,
    taken: 'new',
    cost: 8,
    moved: 1,
  },
  {
    name: 'without a threshold the plan before is forgotten',
    items: wasteful,
    threshold: null,
    taken: null,
    cost: 8,
  },
  {
    name: 'a line whose socket now has another lock is let go, the rest stays',
    items: [
      { act: 0, name: 'bass', earlier: 'A1' },
      { act: 0, name: 'guest', lock: 'A1' },
      { act: 1, name: 'keys', earlier: 'A2' },
    ],
    threshold: 100,
    taken: 'kept',
    cost: 12,
    released: 1,
  },
];

test.each(cases)('$name', ({ items, threshold, taken, cost, moved, released }) => {
  const { plan, stability } = planWithEarlier(
    tinyLayer([{ name: 'A', slots: 4 }], 2, items),
    { solve },
    threshold,
  );
  expect(stability?.taken ?? null).toBe(taken);
  expect(plan?.cost).toBe(cost);
  if (moved !== undefined) expect(stability?.moved).toHaveLength(moved);
  if (released !== undefined) expect(stability?.released).toHaveLength(released);
});
