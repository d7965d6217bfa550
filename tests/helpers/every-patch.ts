import { evaluate } from '../../core/plan/day/evaluate.ts';
import type { Assignment, Layer } from '../../core/plan/day/problem.ts';

/**
 * The cheapest patch that breaks no rule, by trying every one; null where there is none. For tiny days only. It
 * knows nothing of planning but the referee.
 */
export function cheapestOfAll(layer: Layer): { cost: number; assignment: Assignment } | null {
  let best: { cost: number; assignment: Assignment } | null = null;
  const assignment: Assignment = layer.items.map(() => -1);
  const used = layer.acts.map(() => new Set<number>());
  const tryFrom = (index: number): void => {
    const item = layer.items[index];
    if (!item) {
      const { cost, broken } = evaluate(layer, assignment);
      if (broken.length === 0 && (!best || cost < best.cost)) best = { cost, assignment: [...assignment] };
      return;
    }
    const taken = used[item.act] ?? new Set();
    for (let slot = 0; slot < layer.slots.length; slot++) {
      const second = item.width === 2 ? (layer.slots[slot]?.pairedWith ?? -1) : slot;
      if (second < 0 || taken.has(slot) || taken.has(second)) continue;
      taken.add(slot).add(second);
      assignment[index] = slot;
      tryFrom(index + 1);
      taken.delete(slot);
      taken.delete(second);
    }
    assignment[index] = -1;
  };
  tryFrom(0);
  return best;
}
