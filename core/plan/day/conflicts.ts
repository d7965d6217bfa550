import { type Demand, demandsOf, groupNames, openGroups } from './demands.ts';
import { buildGroupModel } from './group-model.ts';
import type { LinearSolver } from './linear-model.ts';
import { groupByEveryLock, groupByPairs } from './narrow.ts';
import type { Layer } from './problem.ts';
import { roomConflict } from './room-conflict.ts';
import { type Colliding, smallestColliding } from './smallest-conflict.ts';
import { withDemands } from './with-demands.ts';

/** Why no patch keeps the rules: the fewest demands that cannot be met together. */
export type Conflict = {
  acts: string[];
  demands: Demand[];
  /** True where no smaller set collides; else leaving out any one demand makes the rest possible, no more. */
  isSmallest: boolean;
  /** The whole conflict in words, for the engineer. */
  what: string;
  todo: string;
  /** What collides elsewhere in the day, in words. */
  others: string[];
};

type Found = Colliding<Demand> & { acts: number[] };

/**
 * Finds the smallest set of colliding demands, or null where the solver sees none (then the day can be planned).
 * Acts are looked at one by one, then each with the one before it, and the whole day only where nothing collides
 * there. Slots are told apart only where their boxes alone show no conflict.
 */
export function findConflict(
  layer: Layer,
  solve: LinearSolver,
  isStopped: () => boolean = () => false,
): Conflict | null {
  const acts = layer.acts.map((_, act) => act);
  for (const grouping of [groupByEveryLock, groupByPairs]) {
    const search = (some: number[]) =>
      isStopped() ? [] : (collidingIn(layer, some, { grouping, solve, isStopped }) ?? []);
    const alone = acts.flatMap((act) => search([act]));
    const hasOwn = new Set(alone.flatMap((found) => found.acts));
    const changeovers = acts
      .slice(1)
      .filter((act) => !hasOwn.has(act) && !hasOwn.has(act - 1))
      .flatMap((act) => search([act - 1, act]));
    const found = [...alone, ...changeovers];
    if (found.length === 0) found.push(...[search(acts)].flat());
    const [smallest, ...others] = found.toSorted((a, b) => a.members.length - b.members.length);
    if (smallest)
      return { ...describe(layer, smallest), others: others.map((it) => describe(layer, it).what) };
  }
  return null;
}

type Search = { grouping: (layer: Layer) => Layer; solve: LinearSolver; isStopped: () => boolean };

function collidingIn(layer: Layer, acts: number[], search: Search): Found | null {
  const { grouping, solve, isStopped } = search;
  const demands = demandsOf(layer, acts);
  const isPossible = (kept: readonly Demand[]) =>
    canBePatched(withDemands(layer, acts, kept), grouping, solve);
  const room = acts.length === 1 ? roomConflict(layer, demands) : null;
  if (!room) {
    const found = smallestColliding(demands, isPossible, solve, { isStopped });
    return found && { ...found, acts };
  }
  const rest = withoutSome(layer, demands, room.tooMany);
  const isRestPossible = isPossible(rest.demands);
  if (isRestPossible && rest.plainLeft + 1 >= room.members.length)
    return { members: room.members, isSmallest: true, acts };
  const byCount: Colliding<Demand> | null =
    room.tooMany > mostToSearch
      ? { members: room.members, isSmallest: false }
      : smallestColliding(demands, isPossible, solve, { known: room.members, isStopped });
  if (!byCount || byCount.isSmallest || isRestPossible || isStopped()) return byCount && { ...byCount, acts };
  // Something smaller may hide behind what is too many: look again at what is left without it.
  const hidden = smallestColliding(rest.demands, isPossible, solve, { isStopped });
  const isHiddenSmaller = hidden !== null && hidden.members.length < byCount.members.length;
  return { members: isHiddenSmaller ? hidden.members : byCount.members, isSmallest: false, acts };
}

/** With more lines too many than this, every way out is long, and a search for a smaller set takes too much time. */
const mostToSearch = 3;

/**
 * The demands without some lines, those that ask for least first. `plainLeft`: how many lines that ask for nothing
 * but a place are left, where only such lines went; else 0. They are all alike, so if the rest can be had, it can be
 * had without any others of them, and a set that collides holds more than `plainLeft` of them.
 */
function withoutSome(
  layer: Layer,
  demands: readonly Demand[],
  lines: number,
): { demands: Demand[]; plainLeft: number } {
  const asked = Map.groupBy(
    demands.filter((it) => it.item >= 0),
    (it) => it.item,
  );
  const gone = new Set<number>();
  let still = lines;
  for (const [item] of [...asked].sort(([, a], [, b]) => a.length - b.length)) {
    if (still <= 0) break;
    gone.add(item);
    still -= layer.items[item]?.width ?? 1;
  }
  const plain = [...asked].flatMap(([item, of]) => (of.length === 1 ? [item] : []));
  const onlyPlainWent = [...gone].every((item) => plain.includes(item));
  return {
    demands: demands.filter((it) => !gone.has(it.item)),
    plainLeft: onlyPlainWent ? plain.length - gone.size : 0,
  };
}

function canBePatched(part: Layer, grouping: (layer: Layer) => Layer, solve: LinearSolver): boolean {
  if (part.items.some((item) => item.reach.length === 0)) return false;
  const { model } = buildGroupModel(grouping(part));
  if (solve(model, { whole: false }).status === 'infeasible') return false;
  return solve(model, { whole: true, absoluteGap: 1e9 }).status !== 'infeasible';
}

/** More demands than this are counted in words, not listed. */
const mostListed = 6;

function describe(layer: Layer, { members, isSmallest }: Found): Omit<Conflict, 'others'> {
  const nameOfAct = (act: number) => layer.acts[act]?.name ?? '';
  const inActs = [...new Set(members.map((it) => it.act))].filter((act) => act >= 0).sort((a, b) => a - b);
  const acts = inActs.map(nameOfAct);
  // A line that is told with what it asks for needs no sentence for its place.
  const told = new Set(
    members.filter((it) => it.kind !== 'place' && it.kind !== 'side by side').map((it) => it.item),
  );
  const listed = members.filter((it) => it.kind !== 'place' || !told.has(it.item)).map((it) => it.what);
  const isShort = listed.length <= mostListed;
  const parts = isShort ? [...listed, ...fewPlaces(layer, members)] : countedParts(layer, members, nameOfAct);
  return {
    acts,
    demands: members,
    isSmallest,
    what: `${acts.join(' and ')}: ${listed.length === 1 ? 'this cannot be met' : 'these cannot all be met'}: ${parts.join('; ')}.`,
    todo: remedyOf(members),
  };
}

/** How many slots there are, where that is what collides. */
function fewPlaces(layer: Layer, members: readonly Demand[]): string[] {
  const isAboutRoom = members.every((it) => ['place', 'reach', 'spare', 'held back'].includes(it.kind));
  return isAboutRoom ? [roomText(layer, members)] : [];
}

const nounsOf = {
  sockets: ['lines', 'sockets', 'socket'],
  channels: ['copies', 'channels', 'channel'],
  buses: ['mixes', 'buses', 'bus'],
  outputs: ['mixes', 'outputs', 'output'],
} as const;

/** Lines against the slots of all groups they reach. */
function roomText(layer: Layer, members: readonly Demand[]): string {
  const [, slots, slot] = nounsOf[layer.of];
  const groups = groupsOf(layer, members);
  const room = groups.reduce((sum, group) => sum + (layer.groups[group]?.slots.length ?? 0), 0);
  const names = groupNames(layer, groups);
  if (names === '') return 'there is nothing in reach';
  return room === 1 ? `in ${names} there is 1 ${slot}` : `in ${names} there are ${room} ${slots}`;
}

/** The groups that the items of a conflict may go to, as far as the conflict says. */
function groupsOf(layer: Layer, members: readonly Demand[]): number[] {
  const narrow = members.filter((it) => it.kind === 'reach' || it.kind === 'lock');
  const items = new Set(members.filter((it) => it.kind === 'place').map((it) => it.item));
  const isNarrow = items.size > 0 && [...items].every((item) => narrow.some((it) => it.item === item));
  if (!isNarrow) return openGroups(layer);
  const groups = [...items].flatMap((item) => layer.items[item]?.reach ?? []);
  return [...new Set(groups)].sort((a, b) => a - b);
}

const manyOf = {
  reach: 'reach only some of the boxes',
  'side by side': 'want two side by side',
  lock: 'are locked to their places',
  phantom: 'ask for 48 V to be on, or off',
  'ready early': 'are to be patched before the changeover',
} as const;

/** A large conflict: how many places for how many items, then the rules by act and kind. */
function countedParts(
  layer: Layer,
  members: readonly Demand[],
  nameOfAct: (act: number) => string,
): string[] {
  const [things] = nounsOf[layer.of];
  const items = members.filter((it) => it.kind === 'place').flatMap((it) => layer.items[it.item] ?? []);
  const count = items.reduce((sum, item) => sum + item.width, 0);
  const rules = Map.groupBy(
    members.filter((it) => it.kind !== 'place'),
    (it) => `${it.act} ${it.kind}`,
  );
  const counted = [...rules.values()].flatMap((alike) => {
    const [first] = alike;
    if (!first || first.kind === 'place') return [];
    if (alike.length === 1 || first.kind === 'spare' || first.kind === 'held back')
      return alike.map((it) => it.what);
    return [`${alike.length} items of ${nameOfAct(first.act)} ${manyOf[first.kind]}`];
  });
  return [`${count} ${things} need places; ${roomText(layer, members)}`, ...counted];
}

function remedyOf(members: readonly Demand[]): string {
  const kinds = new Set(members.map((it) => it.kind));
  if (kinds.has('lock')) return 'Open one of the locks, or move it to another place.';
  if (kinds.has('ready early'))
    return 'Take one of these lines out of the early patch, or free its socket for it.';
  if (kinds.has('spare') && members.length > 1)
    return 'Give up the spare line in this act, drop a line, or add a box.';
  if (kinds.has('phantom'))
    return 'Use a box with a 48 V switch for each socket, or another microphone or DI.';
  if (kinds.has('held back')) return 'Give up what is held back, or leave something out.';
  if (kinds.has('reach')) return 'Bring a box nearer, give this line a longer way, or leave one out.';
  return 'Drop or merge a line, or add to the rig.';
}
