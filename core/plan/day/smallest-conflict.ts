import { type LinearSolver, ModelBuilder } from './linear-model.ts';

/** Members of a list that cannot be had together. */
export type Colliding<T> = {
  members: T[];
  /** True where it is proven that no fewer members collide. */
  isSmallest: boolean;
};

/** Rounds of looking for a smaller set; each asks some ten times whether something is possible. */
const mostRounds = 40;
/** A set that is larger than this is only tried for being the one that every collision needs. */
const largestToBeat = 16;

/**
 * The fewest members of a list that collide; null where all of them can be had. Leaving members out as long as the
 * rest still collides gives a set in which each one is needed, but perhaps not the smallest. So every way of making
 * the rest possible that is found is kept: a colliding set must hold a member of each such way (implicit hitting
 * sets; Ignatiev, Previti, Liffiton and Marques-Silva, "Smallest MUS extraction with minimal hitting set
 * dualization", 2015). The fewest members that do so are a bound, and where they collide they are the answer.
 * `known`: a set that collides and of which each member is needed, where there is one.
 */
export function smallestColliding<T>(
  all: readonly T[],
  isPossible: (kept: readonly T[]) => boolean,
  solve: LinearSolver,
  options: { known?: readonly T[]; isStopped?: () => boolean } = {},
): Colliding<T> | null {
  if (!options.known && isPossible(all)) return null;
  let best = options.known ? [...options.known] : shrink(all, isPossible);
  const waysOut = neededByAll(best, all, isPossible);
  for (let round = 0; round < mostRounds && !options.isStopped?.(); round++) {
    const hit = fewestOfEach(all, waysOut, solve);
    if (!hit) break;
    if (hit.length >= best.length) return { members: best, isSmallest: true };
    if (best.length > largestToBeat) break;
    if (!isPossible(hit)) return { members: hit, isSmallest: true };
    const had = grow(hit, all, isPossible);
    waysOut.push(all.filter((member) => !had.has(member)));
    // A colliding set with only one member of this way out may be smaller than the best so far.
    const [first] = waysOut.at(-1) ?? [];
    if (first === undefined) break;
    const other = shrink([...had, first], isPossible);
    if (other.length < best.length) best = other;
  }
  return { members: best, isSmallest: false };
}

/** Ways out of one member each: without it, all the rest can be had. Of a large set, all or none. */
function neededByAll<T>(
  best: readonly T[],
  all: readonly T[],
  isPossible: (kept: readonly T[]) => boolean,
): T[][] {
  const ways: T[][] = [];
  for (const member of best) {
    if (isPossible(all.filter((it) => it !== member))) ways.push([member]);
    else if (best.length > largestToBeat) return [];
  }
  return ways;
}

/**
 * Leaves members out as long as the rest still collides: first in halves, for speed, then one by one, so that in
 * the end every single one is needed.
 */
function shrink<T>(all: readonly T[], isPossible: (kept: readonly T[]) => boolean): T[] {
  let kept = [...all];
  for (let size = Math.ceil(kept.length / 2); size >= 1; size = size === 1 ? 0 : Math.ceil(size / 2)) {
    for (let from = 0; from < kept.length; ) {
      const without = [...kept.slice(0, from), ...kept.slice(from + size)];
      if (without.length < kept.length && !isPossible(without)) kept = without;
      else from += size;
    }
  }
  return kept;
}

/** As many members as can be had together with the given ones, taken in halves as far as that goes. */
function grow<T>(
  given: readonly T[],
  all: readonly T[],
  isPossible: (kept: readonly T[]) => boolean,
): Set<T> {
  const had = new Set(given);
  const add = (part: readonly T[]): void => {
    if (part.length === 0) return;
    if (isPossible([...had, ...part])) {
      for (const member of part) had.add(member);
      return;
    }
    if (part.length === 1) return;
    const half = Math.ceil(part.length / 2);
    add(part.slice(0, half));
    add(part.slice(half));
  };
  add(all.filter((member) => !had.has(member)));
  return had;
}

/** The fewest members with one of each way out; null where the solver gives up. */
function fewestOfEach<T>(all: readonly T[], waysOut: readonly T[][], solve: LinearSolver): T[] | null {
  const builder = new ModelBuilder();
  const columnOf = new Map(all.map((member) => [member, builder.column(1)]));
  for (const way of waysOut)
    builder.row(
      1,
      Number.POSITIVE_INFINITY,
      way.map((member) => [columnOf.get(member) ?? 0, 1] as const),
    );
  const { values } = solve(builder.build(), { whole: true });
  return values && all.filter((member) => (values[columnOf.get(member) ?? 0] ?? 0) > 0.5);
}
