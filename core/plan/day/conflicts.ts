import { buildGroupModel } from './group-model.ts';
import type { LinearSolver } from './linear-model.ts';
import { groupByEveryLock, groupByPairs } from './narrow.ts';
import { type Item, type Layer, linkKeys } from './problem.ts';

/**
 * Why no patch keeps the rules: demands that cannot be met together, as few as could be found. Leaving any one of
 * them out makes the rest possible.
 */
export type Conflict = {
  acts: string[];
  demands: Demand[];
  /** The whole conflict in words, for the engineer. */
  what: string;
  todo: string;
};

export type Demand = {
  kind: 'place' | 'lock' | 'phantom' | 'ready early' | 'spare';
  /** Item of the layer, or -1 for the spare line of an act. */
  item: number;
  act: number;
  /** "kick out is locked to A3". */
  what: string;
};

/** Finds a smallest set of colliding demands, or null where the solver sees none (then the day can be planned). */
export function findConflict(layer: Layer, solve: LinearSolver): Conflict | null {
  for (const acts of candidateActs(layer)) {
    const demands = demandsOf(layer, acts);
    for (const grouping of [groupByEveryLock, groupByPairs]) {
      const isPossible = (kept: readonly Demand[]) => canMeet(layer, acts, kept, grouping, solve);
      if (isPossible(demands)) continue;
      const smallest = smaller(shrink(demands, isPossible), shrink([...demands].reverse(), isPossible));
      return describe(layer, smallest);
    }
  }
  return null;
}

/** One act at a time, then each changeover, then the whole day: where the conflict is, as narrowly as it shows. */
function candidateActs(layer: Layer): number[][] {
  const acts = layer.acts.map((_, act) => act);
  return [...acts.map((act) => [act]), ...acts.slice(1).map((act) => [act - 1, act]), acts];
}

function demandsOf(layer: Layer, acts: number[]): Demand[] {
  const inActs = layer.items.flatMap((item, index) => (acts.includes(item.act) ? [{ item, index }] : []));
  const demand = (kind: Demand['kind'], index: number, item: Item, what: string): Demand => ({
    kind,
    item: index,
    act: item.act,
    what,
  });
  const places = inActs.map(({ item, index }) =>
    demand(
      'place',
      index,
      item,
      `${item.name} needs ${item.width === 2 ? 'a pair' : 'a place'} (${reachText(layer, item)})`,
    ),
  );
  const rules = inActs.flatMap(({ item, index }) => [
    ...(item.locked === null
      ? []
      : [demand('lock', index, item, `${item.name} is locked to ${layer.slots[item.locked]?.name ?? '?'}`)]),
    ...(item.phantom === 'off' ? [demand('phantom', index, item, `48 V would harm ${item.name}`)] : []),
    ...(item.phantom === 'on' ? [demand('phantom', index, item, `${item.name} needs 48 V`)] : []),
    ...(item.mustPrepare
      ? [demand('ready early', index, item, `${item.name} is to be patched before the changeover`)]
      : []),
  ]);
  const spares = acts.flatMap((act): Demand[] => {
    const wanted = layer.acts[act];
    if (!wanted || wanted.spareCount === 0) return [];
    const names = wanted.spareGroups.map((group) => layer.groups[group]?.name ?? '').join(', ');
    const what = `${wanted.spareCount} spare line near the lead vocal stays free (${names})`;
    return [{ kind: 'spare', item: -1, act, what }];
  });
  return [...spares, ...rules, ...places];
}

function reachText(layer: Layer, item: Item): string {
  if (item.reach.length === 0) return 'no box in reach';
  if (layer.groups.length === 1) return layer.groups[0]?.name ?? '';
  return `in reach: ${item.reach.map((group) => layer.groups[group]?.name ?? '').join(', ')}`;
}

/** Whether the kept demands can be met by the items of these acts alone. */
function canMeet(
  layer: Layer,
  acts: number[],
  kept: readonly Demand[],
  grouping: (layer: Layer) => Layer,
  solve: LinearSolver,
): boolean {
  const has = (kind: Demand['kind'], item: number) => kept.some((it) => it.kind === kind && it.item === item);
  const items = layer.items.flatMap((item, index): Item[] => {
    if (!acts.includes(item.act) || !has('place', index)) return [];
    return [
      {
        ...item,
        act: acts.indexOf(item.act),
        locked: has('lock', index) ? item.locked : null,
        reach:
          item.locked !== null && !has('lock', index) ? layer.groups.map((_, group) => group) : item.reach,
        phantom: has('phantom', index) ? item.phantom : 'any',
        mustPrepare: has('ready early', index),
      },
    ];
  });
  if (items.some((item) => item.reach.length === 0)) return false;
  const part: Layer = {
    ...layer,
    acts: acts.map((act) => ({
      ...(layer.acts[act] ?? { actId: '', name: '', spareGroups: [] }),
      spareCount: kept.some((it) => it.kind === 'spare' && it.act === act)
        ? (layer.acts[act]?.spareCount ?? 0)
        : 0,
    })),
    items: linkKeys(items),
  };
  const { model } = buildGroupModel(grouping(part));
  if (solve(model, { whole: false }).status === 'infeasible') return false;
  return solve(model, { whole: true, absoluteGap: 1e9 }).status !== 'infeasible';
}

/**
 * Leaves demands out as long as the rest still collides: first in halves, for speed, then one by one, so that in
 * the end every single one is needed.
 */
function shrink(demands: readonly Demand[], isPossible: (kept: readonly Demand[]) => boolean): Demand[] {
  let kept = [...demands];
  for (let size = Math.ceil(kept.length / 2); size >= 1; size = size === 1 ? 0 : Math.ceil(size / 2)) {
    for (let from = 0; from < kept.length; ) {
      const without = [...kept.slice(0, from), ...kept.slice(from + size)];
      if (without.length < kept.length && !isPossible(without)) kept = without;
      else from += size;
    }
  }
  return kept;
}

function smaller(a: Demand[], b: Demand[]): Demand[] {
  return b.length < a.length ? b : a;
}

/** More demands than this are counted in words, not listed. */
const mostListed = 6;

function describe(layer: Layer, demands: Demand[]): Conflict {
  const nameOfAct = (act: number) => layer.acts[act]?.name ?? '';
  const acts = [...new Set(demands.map((it) => it.act))].sort((a, b) => a - b).map(nameOfAct);
  const items = [...new Set(demands.map((it) => it.item))].flatMap((index) => layer.items[index] ?? []);
  const told = new Set(demands.filter((it) => it.kind !== 'place').map((it) => it.item));
  const listed = demands.filter((it) => it.kind !== 'place' || !told.has(it.item)).map((it) => it.what);
  const counted = [roomText(layer, items), ...countedRules(demands, nameOfAct)];
  const parts = listed.length <= mostListed ? listed : counted;
  return {
    acts,
    demands,
    what: `${acts.join(' and ')}: these cannot all be met: ${parts.join('; ')}.`,
    todo: remedyOf(demands),
  };
}

/** Lines against the slots of all groups they reach. */
function roomText(layer: Layer, items: Item[]): string {
  const lines = items.reduce((sum, item) => sum + item.width, 0);
  const groups = [...new Set(items.flatMap((item) => item.reach))].sort((a, b) => a - b);
  const room = groups.reduce((sum, group) => sum + (layer.groups[group]?.slots.length ?? 0), 0);
  const names = groups.map((group) => layer.groups[group]?.name ?? '').join(', ');
  return `${lines} lines need places in ${names || 'no box'}, where there are ${room}`;
}

const manyOf = {
  lock: 'are locked to their sockets',
  phantom: 'ask for 48 V to be on, or off',
  'ready early': 'are to be patched before the changeover',
} as const;

/** The rules of a large conflict, by act and kind: one alone in its words, several as a number. */
function countedRules(demands: readonly Demand[], nameOfAct: (act: number) => string): string[] {
  const rules = Map.groupBy(
    demands.filter((it) => it.kind !== 'place'),
    (it) => `${it.act} ${it.kind}`,
  );
  return [...rules.values()].flatMap((alike) => {
    const [first] = alike;
    if (!first || first.kind === 'place') return [];
    if (alike.length === 1 || first.kind === 'spare') return [first.what];
    return [`${alike.length} items of ${nameOfAct(first.act)} ${manyOf[first.kind]}`];
  });
}

function remedyOf(demands: readonly Demand[]): string {
  const kinds = new Set(demands.map((it) => it.kind));
  if (kinds.has('lock')) return 'Open one of the locks, or move it to another socket.';
  if (kinds.has('ready early'))
    return 'Take one of these lines out of the early patch, or free its socket for it.';
  if (kinds.has('spare') && demands.length > 1)
    return 'Give up the spare line in this act, drop a line, or add a box.';
  if (kinds.has('phantom'))
    return 'Use a box with a 48 V switch for each socket, or another microphone or DI.';
  return 'Drop or merge a line, bring a box nearer, or add one.';
}
