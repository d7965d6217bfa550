import type { Assignment, Layer } from './problem.ts';

/**
 * The cost of a complete patch, quickly: for each slot and act who plays there, then one look back for each item.
 * The planners use it thousands of times; `evaluate.ts` is the slow and independent figure that is reported.
 */
export function costOfPatch(layer: Layer, assignment: Assignment): number {
  const acts = layer.acts.length;
  const player = new Int32Array(layer.slots.length * acts).fill(-1);
  layer.items.forEach((item, index) => {
    const slot = assignment[index] ?? -1;
    if (slot < 0) return;
    player[slot * acts + item.act] = index;
    const second = item.width === 2 ? (layer.slots[slot]?.pairedWith ?? -1) : -1;
    if (second >= 0) player[second * acts + item.act] = index;
  });
  const isBankOn = bankSwitches(layer, assignment);
  const lastBefore = (slot: number, act: number): number => {
    for (let earlier = act - 1; earlier >= 0; earlier--) {
      const index = player[slot * acts + earlier] ?? -1;
      if (index >= 0) return index;
    }
    return -1;
  };
  let cost = 0;
  layer.items.forEach((item, index) => {
    const slot = assignment[index] ?? -1;
    const group = layer.slots[slot]?.group ?? -1;
    if (group < 0) return;
    const second = item.width === 2 ? (layer.slots[slot]?.pairedWith ?? -1) : -1;
    const before = lastBefore(slot, item.act);
    const beforeSecond = second < 0 ? before : lastBefore(second, item.act);
    if (
      item.previous >= 0 &&
      before === item.previous &&
      beforeSecond === item.previous &&
      assignment[item.previous] === slot
    )
      return;
    const isIdle = (index2: number) => index2 < 0 || (layer.items[index2]?.act ?? 0) < item.act - 1;
    const waitsForPhantom =
      item.phantom === 'off' &&
      (isBankOn(slot, item.act - 1) || (second >= 0 && isBankOn(second, item.act - 1)));
    const cold = layer.canPrepare && isIdle(before) && isIdle(beforeSecond) && !waitsForPhantom;
    cost += (cold ? item.coldCost[group] : item.hotCost[group]) ?? 0;
  });
  return cost;
}

/** Whether a slot's bank is on in an act, because an item that plays in the act needs it. */
function bankSwitches(layer: Layer, assignment: Assignment): (slot: number, act: number) => boolean {
  const on = new Set<number>();
  const cell = (slot: number, act: number) => (layer.slots[slot]?.bank ?? 0) * layer.acts.length + act;
  layer.items.forEach((item, index) => {
    const slot = assignment[index] ?? -1;
    if (item.phantom !== 'on' || slot < 0) return;
    on.add(cell(slot, item.act));
    const second = item.width === 2 ? (layer.slots[slot]?.pairedWith ?? -1) : -1;
    if (second >= 0) on.add(cell(second, item.act));
  });
  return (slot, act) => act >= 0 && on.has(cell(slot, act));
}
