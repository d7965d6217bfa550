import type { Source, Wish } from '../show/act.ts';
import type { ActSheet } from '../show/act-sheet.ts';
import type { Rig } from '../show/rig.ts';
import { factsOfKind } from '../show/source-kinds.ts';
import type { Amount } from '../show/words.ts';
import { cyclicSameAs, orderOfMixes } from './same-as.ts';
import type { SheetIndex } from './sheet-index.ts';

/** What a mix is asked to hold of a source, one number for each cell. */
export const cellState = {
  /** No wish reaches this cell. */
  noWish: 0,
  wanted: 1,
  /** The wish that holds says none. */
  none: 2,
  /** Another source of this mix is wished alone. */
  switchedOff: 3,
  /** A wish for a group or for everything does not reach what is only for front of house. */
  fohOnly: 4,
} as const;

/**
 * The wishes of an act, resolved: which wish holds for every mix and source. Flat, mix after mix, so that a cell
 * is at `mix * sourceCount + source`.
 */
export type ResolvedWishes = {
  sourceCount: number;
  state: Uint8Array;
  /** Place in `sheet.wishes` of the wish that holds, or -1. An inherited wish is the one that names the other mix. */
  wishAt: Int32Array;
  /** Start level asked for in dB, before anything is held at unity; only of use where the state is `wanted`. */
  levelDb: Float64Array;
  amount: (Amount | null)[];
  /** Places of wishes that name another mix in a circle; they ask for nothing. */
  circular: number[];
  /** Places of wishes for a group of which the act has no source. */
  emptyGroups: number[];
  /** Places of wishes that name a source or a mix that is not there, or stand in a mix that is not. */
  lost: number[];
};

/**
 * Resolves the wishes of an act. A wish on a source goes before one on its group, a group before everything, and
 * everything before another mix; of two equals the later one holds. `only` switches off whatever no `only` of
 * the same mix names.
 */
export function resolveWishes(sheet: ActSheet, index: SheetIndex): ResolvedWishes {
  const cells = sheet.mixes.length * sheet.sources.length;
  const wishes: ResolvedWishes = {
    sourceCount: sheet.sources.length,
    state: new Uint8Array(cells),
    wishAt: new Int32Array(cells).fill(-1),
    levelDb: new Float64Array(cells),
    amount: new Array<Amount | null>(cells).fill(null),
    circular: [],
    emptyGroups: [],
    lost: [],
  };
  const ofMixes = wishesOfMixes(sheet, index, wishes.lost);
  const circular = cyclicSameAs(sheet, index);
  wishes.circular = [...circular];
  const targets = groupTargets(sheet.sources);
  for (const mixAt of orderOfMixes(sheet, index, circular)) {
    const own = new MixWishes(sheet, index, wishes, mixAt, targets);
    for (const wishAt of ofMixes[mixAt] ?? []) if (!circular.has(wishAt)) own.take(wishAt);
    own.close();
  }
  return wishes;
}

/** Start level of an amount in dB. `only` is as loud as `lots`; `none` has no level. */
function levelOfAmountDb(amount: Exclude<Amount, 'none'>, rig: Rig): number {
  if (amount === 'little') return rig.littleDb;
  return amount === 'some' ? rig.someDb : rig.lotsDb;
}

/** Places of the sources of each group, and of everything. */
type Targets = ReadonlyMap<string, readonly number[]>;

function groupTargets(sources: readonly Source[]): Targets {
  const targets = new Map<string, number[]>([['everything', sources.map((_, at) => at)]]);
  sources.forEach((source, at) => {
    const { group } = factsOfKind(source.kind);
    const ofGroup = targets.get(group);
    if (ofGroup) ofGroup.push(at);
    else targets.set(group, [at]);
  });
  return targets;
}

/** Places of the wishes of each mix, in their order. */
function wishesOfMixes(sheet: ActSheet, index: SheetIndex, lost: number[]): number[][] {
  const ofMixes: number[][] = sheet.mixes.map(() => []);
  sheet.wishes.forEach((wish, at) => {
    const mixAt = index.mixAt.get(wish.mixId);
    if (mixAt === undefined) lost.push(at);
    else ofMixes[mixAt]?.push(at);
  });
  return ofMixes;
}

const rankOfMix = 1;
const rankOfEverything = 2;
const rankOfGroup = 3;
const rankOfSource = 4;

/** The wishes of one mix being laid over each other. */
class MixWishes {
  readonly #sheet: ActSheet;
  readonly #index: SheetIndex;
  readonly #wishes: ResolvedWishes;
  readonly #targets: Targets;
  readonly #first: number;
  /** Rank of the wish that holds for each source so far; 0 where there is none. */
  readonly #rank: Uint8Array;
  /** Per target of an `only` wish its places; a later wish on the same target replaces it. */
  readonly #alone = new Map<string, readonly number[]>();

  constructor(sheet: ActSheet, index: SheetIndex, wishes: ResolvedWishes, mixAt: number, targets: Targets) {
    this.#sheet = sheet;
    this.#index = index;
    this.#wishes = wishes;
    this.#targets = targets;
    this.#first = mixAt * wishes.sourceCount;
    this.#rank = new Uint8Array(wishes.sourceCount);
  }

  take(wishAt: number): void {
    const wish = this.#sheet.wishes[wishAt];
    if (!wish) return;
    if (wish.sameAsMixId !== null) this.#takeOtherMix(wishAt, wish, wish.sameAsMixId);
    else if (wish.sourceId !== null) {
      const sourceAt = this.#index.sourceAt.get(wish.sourceId);
      if (sourceAt === undefined) this.#wishes.lost.push(wishAt);
      else this.#takeSource(wishAt, wish, wish.sourceId, sourceAt);
    } else if (wish.group !== null) {
      const rank = wish.group === 'everything' ? rankOfEverything : rankOfGroup;
      const places = this.#targets.get(wish.group) ?? [];
      if (places.length === 0) this.#wishes.emptyGroups.push(wishAt);
      this.#takeGroup(wishAt, wish, `group ${wish.group}`, places, rank);
    }
  }

  /** Switches off what an `only` leaves out. To be called once, after the last wish. */
  close(): void {
    if (this.#alone.size === 0) return;
    const kept = new Uint8Array(this.#wishes.sourceCount);
    for (const places of this.#alone.values()) for (const at of places) kept[at] = 1;
    for (let at = 0; at < this.#wishes.sourceCount; at++)
      if (!kept[at] && this.#wishes.state[this.#first + at] === cellState.wanted)
        this.#wishes.state[this.#first + at] = cellState.switchedOff;
  }

  #takeSource(wishAt: number, wish: Wish, sourceId: string, at: number): void {
    if (wish.amount === 'only') this.#alone.set(sourceId, [at]);
    else if (this.#alone.size > 0) this.#alone.delete(sourceId);
    // Nothing goes before a wish on a source but a later one on it.
    this.#rank[at] = rankOfSource;
    this.#set(at, wishAt, wish.amount, this.#levelDb(wish), cellState.wanted);
  }

  #takeGroup(wishAt: number, wish: Wish, target: string, places: readonly number[], rank: number): void {
    if (wish.amount === 'only') this.#alone.set(target, places);
    else this.#alone.delete(target);
    const levelDb = this.#levelDb(wish);
    for (const at of places) {
      if ((this.#rank[at] ?? 0) > rank) continue;
      this.#rank[at] = rank;
      const forHallOnly = this.#sheet.sources[at]?.audience === 'front of house only';
      this.#set(at, wishAt, wish.amount, levelDb, forHallOnly ? cellState.fohOnly : cellState.wanted);
    }
  }

  #takeOtherMix(wishAt: number, wish: Wish, otherMixId: string): void {
    const otherAt = this.#index.mixAt.get(otherMixId);
    if (otherAt === undefined) {
      this.#wishes.lost.push(wishAt);
      return;
    }
    const { state, amount, levelDb, sourceCount } = this.#wishes;
    const asItIs = (wish.amount === null && wish.levelDb === null) || wish.amount === 'only';
    const heard: number[] = [];
    for (let at = 0; at < sourceCount; at++) {
      const cell = otherAt * sourceCount + at;
      const stateThere = state[cell] ?? cellState.noWish;
      if (stateThere === cellState.wanted) heard.push(at);
      if (stateThere === cellState.noWish || (this.#rank[at] ?? 0) > rankOfMix) continue;
      this.#rank[at] = rankOfMix;
      if (asItIs || stateThere !== cellState.wanted)
        this.#set(at, wishAt, amount[cell] ?? null, levelDb[cell] ?? 0, stateThere);
      else this.#set(at, wishAt, wish.amount, this.#levelDb(wish), cellState.wanted);
    }
    if (wish.amount === 'only') this.#alone.set(`mix ${otherMixId}`, heard);
    else this.#alone.delete(`mix ${otherMixId}`);
  }

  #levelDb(wish: Wish): number {
    if (wish.amount === null || wish.amount === 'none') return wish.levelDb ?? 0;
    return levelOfAmountDb(wish.amount, this.#sheet.rig);
  }

  #set(at: number, wishAt: number, amount: Amount | null, levelDb: number, state: number): void {
    const cell = this.#first + at;
    this.#wishes.wishAt[cell] = wishAt;
    this.#wishes.amount[cell] = amount;
    this.#wishes.levelDb[cell] = levelDb;
    this.#wishes.state[cell] = amount === 'none' && state === cellState.wanted ? cellState.none : state;
  }
}
