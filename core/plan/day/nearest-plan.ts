import { findConflict } from './conflicts.ts';
import { openGroups } from './demands.ts';
import { buildGroupModel, readGroupChoice } from './group-model.ts';
import type { LinearSolver } from './linear-model.ts';
import { groupByEveryLock } from './narrow.ts';
import { brokenRuleCost } from './patch-board.ts';
import { type LayerPlan, planLayer } from './plan-layer.ts';
import { type Assignment, type Item, type Layer, linkKeys, type Slot } from './problem.ts';

/** The plan that keeps most of a layer that cannot be met as a whole, and what it gives up. */
export type NearestPlan = {
  /** By item of the whole layer; -1 for what is left out. */
  assignment: Assignment;
  cost: number;
  /** No plan of what is left costs less. */
  bound: number;
  /** Items without a place. */
  leftOut: number[];
  /** Items whose locks are open in this plan. */
  opened: number[];
  /** Items that come in during the changeover though they are to be ready before it. */
  notReady: number[];
  /** True where it is proven that no plan leaves out less, with these locks open. */
  isFewest: boolean;
};

/** Units for leaving one line out: more than any plan of the rest could save by it. */
const leftOutCost = 20_000;
/** Further units for a voice, so that it stays where something else can go. */
const vitalCost = 1000;
/** Rounds in which a lock is opened. */
const mostLocksOpened = 24;

/**
 * The plan that leaves out the fewest items, and of those the one with the fewest changes. Locks that collide are
 * opened first, and lines are plugged in the changeover rather than left out; spare lines stay free. null where
 * even that finds nothing, or where it was stopped.
 */
export function nearestPlan(
  layer: Layer,
  solve: LinearSolver,
  isStopped: () => boolean = () => false,
): NearestPlan | null {
  const { layer: open, opened } = openLocks(layer, solve, isStopped);
  const first = leaveOut(open, solve);
  if (!first) return null;
  const late = first.leftOut.filter((index) => open.items[index]?.mustPrepare);
  const relaxed = withItems(open, (item, index) =>
    late.includes(index) ? { ...item, mustPrepare: false } : item,
  );
  const second = late.length === 0 ? first : (leaveOut(relaxed, solve) ?? first);
  const notReady = second === first ? [] : late.filter((index) => !second.leftOut.includes(index));
  const found = planOfRest(second === first ? open : relaxed, second.leftOut, { solve, isStopped });
  if (!found) return null;
  return {
    ...found,
    opened,
    notReady,
    isFewest: second.isProven && found.leftOut.length === second.leftOut.length,
  };
}

/** Opens locks until what remains locked can be met, were everything else left out. */
function openLocks(
  layer: Layer,
  solve: LinearSolver,
  isStopped: () => boolean,
): { layer: Layer; opened: number[] } {
  const opened: number[] = [];
  let now = layer;
  for (let round = 0; round < mostLocksOpened; round++) {
    const indexes = now.items.flatMap((item, index) => (item.locked === null ? [] : [index]));
    const conflict = indexes.length === 0 ? null : findConflict(withOnly(now, indexes), solve, isStopped);
    const last = conflict?.demands.findLast((it) => it.kind === 'lock')?.item;
    if (!conflict) break;
    // Without a lock among what collides it is the lines themselves; they are left out.
    const place = indexes[last ?? conflict.demands.findLast((it) => it.kind === 'place')?.item ?? -1];
    if (place === undefined) break;
    opened.push(place);
    now = withItems(now, (item, index) =>
      index === place ? { ...item, locked: null, reach: item.reachUnlocked ?? openGroups(now) } : item,
    );
  }
  return { layer: now, opened };
}

function withItems(layer: Layer, change: (item: Item, index: number) => Item): Layer {
  return { ...layer, items: layer.items.map(change) };
}

/** The layer with no items but those at these indexes. */
function withOnly(layer: Layer, indexes: readonly number[]): Layer {
  return { ...layer, items: linkKeys(indexes.map((index) => ({ ...(layer.items[index] as Item) }))) };
}

/** Which items to leave out, by the group model with a place outside the rig in every act. */
function leaveOut(layer: Layer, solve: LinearSolver): { leftOut: number[]; isProven: boolean } | null {
  const grouped = groupByEveryLock(withOutside(layer));
  const built = buildGroupModel(grouped);
  const answer = solve(built.model, { whole: true, nodeLimit: 500, absoluteGap: 0.4 * vitalCost });
  if (!answer.values) return null;
  const { group } = readGroupChoice(grouped, built, answer.values);
  // The slots outside were added after those of the rig.
  const isOutside = (of: number) => (grouped.groups[of]?.slots[0] ?? -1) >= layer.slots.length;
  const leftOut = layer.items.flatMap((_, index) => (isOutside(group[index] ?? -1) ? [index] : []));
  return { leftOut, isProven: answer.status === 'optimal' };
}

const outside = 'outside the rig';

/**
 * The layer with a group of slots outside the rig for each act, at the price of leaving an item out. One group an
 * act, so that nothing stays outside for nothing when it comes again. Locked items have no way out: see `openLocks`.
 */
function withOutside(layer: Layer): Layer {
  const slots = layer.slots.map((slot) => ({ ...slot }));
  const groups = layer.groups.map((group) => ({ ...group }));
  const groupOfAct = layer.acts.map((_, act) => {
    const count = layer.items.filter((item) => item.act === act).length * 2;
    const first = slots.length;
    const group = groups.length;
    for (let at = 0; at < count; at++) slots.push(outsideSlot(group, at, first));
    groups.push({ name: outside, slots: Array.from({ length: count }, (_, at) => first + at) });
    return group;
  });
  const items = layer.items.map((item): Item => {
    const way = groupOfAct[item.act] ?? -1;
    const price = item.width * (leftOutCost + (item.vital ? vitalCost : 0));
    const priced = (costs: number[]) => groups.map((_, at) => (at === way ? price : (costs[at] ?? 0)));
    return {
      ...item,
      reach: item.locked === null ? [...item.reach, way] : item.reach,
      hotCost: priced(item.hotCost),
      coldCost: priced(item.coldCost),
    };
  });
  return { ...layer, slots, groups, items };
}

function outsideSlot(group: number, at: number, first: number): Slot {
  return {
    group,
    id: null,
    number: at + 1,
    name: outside,
    // A switch of its own for each, apart from those of the rig.
    bank: -1 - first - at,
    pairedWith: at % 2 === 0 ? first + at + 1 : -1,
  };
}

/** How often something more is left out, where the rest still finds no patch. */
const mostRounds = 4;

/** A patch for what is not left out. What the planner cannot place even so is left out as well. */
function planOfRest(
  layer: Layer,
  leftOut: readonly number[],
  options: { solve: LinearSolver; isStopped: () => boolean },
): Pick<NearestPlan, 'assignment' | 'cost' | 'bound' | 'leftOut'> | null {
  let without = new Set(leftOut);
  for (let round = 0; round < mostRounds; round++) {
    const kept = [...layer.items.keys()].filter((index) => !without.has(index));
    const plan: LayerPlan | null = planLayer(withOnly(layer, kept), options);
    if (!plan) return null;
    const assignment: Assignment = layer.items.map(() => -1);
    kept.forEach((index, place) => {
      assignment[index] = plan.assignment[place] ?? -1;
    });
    if (plan.cost < brokenRuleCost)
      return { assignment, cost: plan.cost, bound: plan.bound, leftOut: [...without].sort((a, b) => a - b) };
    const placeless = kept.filter((index) => assignment[index] === -1);
    if (placeless.length === 0) return null;
    without = new Set([...without, ...placeless]);
  }
  return null;
}

/** What a nearest plan gives up, in a sentence: "Without Keys (Tin Choir) everything else has its place." */
export function nearestInWords(layer: Layer, nearest: NearestPlan): string {
  const named = (indexes: readonly number[]) => {
    const byAct = Map.groupBy(indexes, (index) => layer.items[index]?.act ?? -1);
    return [...byAct]
      .map(([act, of]) => {
        const names = of.map((index) => layer.items[index]?.name ?? '');
        const shown = names.slice(0, mostNamed).join(', ');
        const more = names.length > mostNamed ? ` and ${names.length - mostNamed} more` : '';
        return `${shown}${more} (${layer.acts[act]?.name ?? ''})`;
      })
      .join('; ');
  };
  const parts: string[] = [];
  if (nearest.opened.length > 0) parts.push(`with open locks of ${named(nearest.opened)}`);
  if (nearest.notReady.length > 0)
    parts.push(`with ${named(nearest.notReady)} plugged in the changeover instead of ahead`);
  if (nearest.leftOut.length > 0) parts.push(`without ${named(nearest.leftOut)}`);
  const fewest = nearest.leftOut.length > 0 && nearest.isFewest ? ' No plan leaves out fewer.' : '';
  return `The nearest plan: ${parts.join(', ')}, everything else has its place.${fewest}`;
}

/** Names of one act that are told one by one. */
const mostNamed = 5;
