import type { GroupChoice } from './group-model.ts';
import type { Item, Layer } from './problem.ts';

/** A run of items of one key that stays in one slot: one plug for several acts. */
export type Chain = {
  group: number;
  items: number[];
  /** First and last act in which it holds its slot; a chain prepared early holds it one act before it plays. */
  from: number;
  to: number;
  /** Plugged while the act before its first one plays. */
  cold: boolean;
};

/** Items to chains, in the order in which they first hold a slot. Items without a group are left out. */
export function chainsOf(layer: Layer, choice: GroupChoice): Chain[] {
  const chainOfItem = new Map<number, Chain>();
  const chains: Chain[] = [];
  layer.items.forEach((item, index) => {
    const group = choice.group[index] ?? -1;
    if (group < 0) return;
    const before = chainOfItem.get(item.previous);
    if (choice.entry[index] === 'kept' && before && before.group === group) {
      before.items.push(index);
      before.to = item.act;
      chainOfItem.set(index, before);
      return;
    }
    const chain = chainFrom(layer, group, [index], choice.entry[index] === 'cold');
    chains.push(chain);
    chainOfItem.set(index, chain);
  });
  return chains.sort((a, b) => a.from - b.from);
}

/** A chain of the given items with its span worked out. */
export function chainFrom(layer: Layer, group: number, items: number[], cold: boolean): Chain {
  const first = layer.items[items[0] ?? -1] as Item;
  const last = layer.items[items.at(-1) ?? -1] as Item;
  return { group, items, from: Math.max(0, first.act - (cold ? 1 : 0)), to: last.act, cold };
}
