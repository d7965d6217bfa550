import fc from 'fast-check';
import { expect, test } from 'vitest';
import { findConflict } from '../../../core/plan/day/conflicts.ts';
import { demandsOf } from '../../../core/plan/day/demands.ts';
import { evaluate } from '../../../core/plan/day/evaluate.ts';
import { improvePatch } from '../../../core/plan/day/local-search.ts';
import { brokenRuleCost, PatchBoard } from '../../../core/plan/day/patch-board.ts';
import { costOfPatch } from '../../../core/plan/day/patch-cost.ts';
import { planLayer } from '../../../core/plan/day/plan-layer.ts';
import type { Phantom } from '../../../core/plan/day/problem.ts';
import { seeded } from '../../../core/plan/day/seeded-order.ts';
import { withDemands } from '../../../core/plan/day/with-demands.ts';
import { loadLinearSolver } from '../../../electron/solver/highs-solver.ts';
import { cheapestOfAll } from '../../helpers/every-patch.ts';
import { type TinyItem, tinyLayer } from '../../helpers/tiny-layer.ts';

/** The exact model and every patch are tried many times; a busy machine may take long over it. */
const patience = 120_000;

const solve = await loadLinearSolver();

const boxNames = [['A', 'B'], ['A', 'B'], ['A'], ['B']];

const tinyItem = (acts: number): fc.Arbitrary<TinyItem> =>
  fc
    .record({
      act: fc.nat(acts - 1),
      shared: fc.option(fc.nat(2), { freq: 2 }),
      pair: fc.boolean(),
      phantom: fc.constantFrom<Phantom[]>('any', 'any', 'any', 'on', 'off'),
      lock: fc.option(fc.constantFrom('A1', 'A2', 'A3', 'B1'), { freq: 6 }),
      ready: fc.integer({ min: 0, max: 5 }).map((draw) => draw === 0),
      near: fc.constantFrom(...boxNames),
      cost: fc.array(fc.integer({ min: 5, max: 30 }), { minLength: 2, maxLength: 2 }),
    })
    .map((drawn) => (drawn.shared === null ? ownItem(drawn) : sharedItem(drawn, drawn.shared)));

type Drawn = {
  act: number;
  pair: boolean;
  phantom: Phantom;
  lock: string | null;
  ready: boolean;
  near: string[];
  cost: number[];
};

function ownItem({ act, pair, phantom, lock, ready, near, cost }: Drawn): TinyItem {
  const isPair = pair && lock === null;
  return {
    act,
    name: `line ${act}`,
    phantom,
    reach: near,
    cost: isPair ? cost.map((it) => 2 * it) : cost,
    ...(isPair ? { pair: true } : {}),
    ...(lock === null ? {} : { lock }),
    ...(ready ? { ready: true } : {}),
  };
}

/** One of three shared lines: a plain one, one that 48 V harms, and a pair. */
function sharedItem({ act, lock, ready, near, cost }: Drawn, shared: number): TinyItem {
  const isPair = shared === 2;
  return {
    act,
    name: `shared ${shared}`,
    key: `shared ${shared}`,
    phantom: shared === 1 ? 'off' : 'any',
    reach: near,
    cost: isPair ? cost.map((it) => 2 * it) : cost,
    ...(isPair ? { pair: true } : {}),
    ...(lock === null || (isPair && lock === 'A2') ? {} : { lock }),
    ...(ready ? { ready: true } : {}),
  };
}

/** Days so small that every patch can be tried: two boxes, up to three acts, up to seven items. */
const tinyDay = fc
  .integer({ min: 1, max: 3 })
  .chain((acts) =>
    fc.record({
      acts: fc.constant(acts),
      items: fc.array(tinyItem(acts), { minLength: 1, maxLength: 7 }),
      bankSize: fc.constantFrom(1, 2, 4),
      spare: fc.boolean(),
    }),
  )
  .map(({ acts, items, bankSize, spare }) => {
    // One line comes once an act.
    const seen = new Set<string>();
    const once = items.filter((item) => {
      const name = `${item.act} ${item.key ?? ''}`;
      if (item.key === undefined) return true;
      if (seen.has(name)) return false;
      seen.add(name);
      return true;
    });
    const boxes = [
      { name: 'A', slots: 4, bankSize },
      { name: 'B', slots: 2, bankSize },
    ];
    return tinyLayer(boxes, acts, once, spare ? { 0: { count: 1, boxes: ['A'] } } : {});
  });

test(
  'a proven plan costs what the best of all patches costs, and where there is none the planner finds none',
  () => {
    fc.assert(
      fc.property(tinyDay, (layer) => {
        const best = cheapestOfAll(layer);
        const plan = planLayer(layer, { solve });
        expect(plan?.isClean ?? false).toBe(best !== null);
        if (!best) return;
        expect(plan?.bound).toBeLessThanOrEqual(best.cost);
        expect(evaluate(layer, plan?.assignment ?? []).broken).toEqual([]);
        expect(evaluate(layer, plan?.assignment ?? []).cost).toBe(plan?.cost);
        expect(plan?.cost).toBe(best.cost);
        expect(plan?.isProven).toBe(true);
      }),
      { numRuns: 60 },
    );
  },
  patience,
);

test(
  'a conflict is named exactly where no patch exists, and without any one of its demands there is one',
  () => {
    fc.assert(
      fc.property(tinyDay, (layer) => {
        const conflict = findConflict(layer, solve);
        expect(conflict === null).toBe(cheapestOfAll(layer) !== null);
        if (!conflict) return;
        const acts = [...new Set(conflict.demands.map((it) => it.act))].sort((a, b) => a - b);
        const isPossible = (kept: typeof conflict.demands) =>
          cheapestOfAll(withDemands(layer, acts, kept)) !== null;
        expect(isPossible(conflict.demands)).toBe(false);
        for (const left of conflict.demands)
          expect(isPossible(conflict.demands.filter((it) => it !== left))).toBe(true);
        expect(conflict.isSmallest).toBe(true);
        // No set of one or two demands of these acts collides, unless the conflict is as small itself.
        const all = demandsOf(layer, acts);
        const smaller = all.flatMap((one, at) => [[one], ...all.slice(at + 1).map((other) => [one, other])]);
        for (const few of smaller.filter((it) => it.length < conflict.demands.length))
          expect(isPossible(few)).toBe(true);
      }),
      { numRuns: 60 },
    );
  },
  patience,
);

test(
  'the quick cost and the board agree with the referee after any exchanges',
  () => {
    fc.assert(
      fc.property(tinyDay, fc.integer(), (layer, seed) => {
        const next = seeded(seed);
        const board = new PatchBoard(
          layer,
          layer.items.map(() => -1),
        );
        let cost = board.cost();
        for (let step = 0; step < 60; step++) {
          const slot = () => Math.floor(next() * board.pairOf.length);
          const first = Math.floor(next() * board.acts);
          const last = first + Math.floor(next() * (board.acts - first));
          const move = [slot(), slot(), next() < 0.5 ? 1 : 2, first, last] as const;
          const change = board.exchange(...move);
          if (change !== null && next() < 0.5) board.takeBack(...move);
          else cost += change ?? 0;
        }
        expect(board.cost()).toBe(cost);
        const assignment = board.assignment();
        const { cost: refereed, broken } = evaluate(layer, assignment);
        expect(costOfPatch(layer, assignment)).toBe(refereed);
        expect(cost % brokenRuleCost).toBe(refereed);
        expect(cost < brokenRuleCost).toBe(broken.length === 0);
      }),
      { numRuns: 300 },
    );
  },
  patience,
);

test(
  'a search never makes a patch dearer, and the same seed gives the same patch',
  () => {
    fc.assert(
      fc.property(tinyDay, fc.nat(1000), (layer, seed) => {
        const start = layer.items.map(() => -1);
        const options = { steps: 500, seed, warmth: 5, goodEnough: 0 };
        const found = improvePatch(layer, start, options);
        expect(found.cost).toBeLessThanOrEqual(new PatchBoard(layer, start).cost());
        expect(improvePatch(layer, start, options)).toEqual(found);
      }),
      { numRuns: 60 },
    );
  },
  patience,
);
