import { type LayerPlan, type PlanLayerOptions, planLayer } from './plan-layer.ts';
import { type Item, type Layer, slotsTaken } from './problem.ts';

/** What a new plan would move of the plan before, and what that gains. */
export type KeptOrNew = {
  taken: 'kept' | 'new';
  /** Cost of the plan that keeps what was patched or printed as far as it can; null where it cannot. */
  keptCost: number | null;
  newCost: number;
  /** Items that the new plan puts elsewhere than the plan before, by index. */
  moved: number[];
  /** Items of the plan before that could not stay even in the plan that keeps. */
  released: number[];
};

/**
 * Plans a layer that had a plan before. Without a threshold the earlier plan is forgotten. With one it is kept
 * wherever the rows still allow it, and the new plan is taken only if it costs more than the threshold less.
 */
export function planWithEarlier(
  layer: Layer,
  options: PlanLayerOptions,
  keepUnlessGain: number | null,
): { plan: LayerPlan | null; stability: KeptOrNew | null } {
  if (keepUnlessGain === null || layer.items.every((item) => item.earlier === null))
    return { plan: planLayer(layer, options), stability: null };
  const { held, released } = holdEarlier(layer);
  const kept = planLayer(held, options);
  const start = kept?.isClean ? { ...options, start: kept.assignment } : options;
  const fresh = planLayer(layer, start);
  if (!fresh?.isClean) return { plan: fresh, stability: null };
  const keptCost = kept?.isClean ? kept.cost : null;
  const isKept = keptCost !== null && keptCost - fresh.cost <= keepUnlessGain;
  const moved = layer.items.flatMap((item, index) =>
    item.earlier !== null && fresh.assignment[index] !== item.earlier ? [index] : [],
  );
  const stability: KeptOrNew = {
    taken: isKept ? 'kept' : 'new',
    keptCost,
    newCost: fresh.cost,
    moved,
    released,
  };
  if (!isKept || !kept) return { plan: fresh, stability };
  // The bound holds for every plan, so it also says what keeping the old one costs.
  return { plan: { ...kept, bound: fresh.bound, isProven: kept.cost <= fresh.bound }, stability };
}

/** The layer with every item locked to where it was, except where two would meet or the way has become too far. */
function holdEarlier(layer: Layer): { held: Layer; released: number[] } {
  const used = new Set<string>();
  const cells = (item: Item, slot: number) =>
    slotsTaken(layer, item, slot).map((taken) => `${item.act} ${taken}`);
  for (const item of layer.items)
    if (item.locked !== null) for (const cell of cells(item, item.locked)) used.add(cell);
  const released: number[] = [];
  const items = layer.items.map((item, index) => {
    if (item.locked !== null || item.earlier === null) return item;
    const taken = cells(item, item.earlier);
    const canStay =
      taken.length === item.width &&
      item.reach.includes(layer.slots[item.earlier]?.group ?? -1) &&
      taken.every((cell) => !used.has(cell));
    if (!canStay) {
      released.push(index);
      return item;
    }
    for (const cell of taken) used.add(cell);
    return { ...item, locked: item.earlier };
  });
  return { held: { ...layer, items }, released };
}
