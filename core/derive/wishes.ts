import type { Source, Wish } from '../show/act.ts';
import type { ActSheet } from '../show/act-sheet.ts';
import { addToList } from '../show/add-to-list.ts';
import type { SheetIndex } from '../show/sheet-index.ts';
import { factsOfKind } from '../show/source-kinds.ts';
import type { Amount } from '../show/words.ts';
import { cyclicSameAs, namedMixes, orderOfMixes } from './same-as.ts';

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
  /** The start levels that wishes ask for in dB, each once, before anything is held at unity. */
  levelsDb: number[];
  /** Place in `levelsDb` of the level asked for; only of use where the state is `wanted`. */
  levelAt: Uint32Array;
  /** Amounts that come from another mix, by cell; to be read with `amountOfCell`. */
  inherited: Map<number, Amount | null>;
  /** Places of the wishes for everything. */
  forEverything: number[];
  /** Places of wishes that name another mix in a circle; they ask for nothing. */
  circular: number[];
  /** Places of wishes for a group of which the act has no source. */
  emptyGroups: number[];
  /** Places of wishes that name a source or a mix that is not there, or stand in a mix that is not. */
  lost: number[];
};

/** The amount asked for in a cell; null where no wish leads there, or one that says a level in dB. */
export function amountOfCell(sheet: ActSheet, wishes: ResolvedWishes, cell: number): Amount | null {
  const inherited = wishes.inherited.size === 0 ? undefined : wishes.inherited.get(cell);
  if (inherited !== undefined) return inherited;
  const wishAt = wishes.wishAt[cell] ?? -1;
  return wishAt < 0 ? null : (sheet.wishes[wishAt]?.amount ?? null);
}

/**
 * Resolves the wishes of an act. A wish on a source goes before one on its group, a group before everything, and
 * everything before another mix; of two equals the later one holds. `only` switches off whatever no `only` of
 * the same mix names.
 */
export function resolveWishes(sheet: ActSheet, index: SheetIndex): ResolvedWishes {
  const wishes = noWishes(sheet);
  const layers = new WishLayers(sheet, index, wishes);
  // Whatever a mix says itself goes before what another mix says, so other mixes can wait for the end.
  const naming = layers.takeOwn();
  if (naming.length === 0) layers.closeAll();
  else takeOtherMixes(sheet, index, layers, wishes, naming);
  sortByMix(wishes.emptyGroups, sheet, index);
  sortByMix(wishes.lost, sheet, index);
  return wishes;
}

/** Puts places of wishes into the order of their mixes; those of mixes that are not there come first. */
function sortByMix(places: number[], sheet: ActSheet, index: SheetIndex): void {
  const mixAt = (wishAt: number) => index.mixAt.get(sheet.wishes[wishAt]?.mixId ?? '') ?? -1;
  if (places.length > 1) places.sort((a, b) => mixAt(a) - mixAt(b) || a - b);
}

function noWishes(sheet: ActSheet): ResolvedWishes {
  const cells = sheet.mixes.length * sheet.sources.length;
  // One piece of memory is had, and given back, faster than three.
  const memory = new ArrayBuffer(cells * 9);
  return {
    sourceCount: sheet.sources.length,
    wishAt: new Int32Array(memory, 0, cells).fill(-1),
    levelAt: new Uint32Array(memory, cells * 4, cells),
    state: new Uint8Array(memory, cells * 8, cells),
    levelsDb: [],
    inherited: new Map(),
    forEverything: [],
    circular: [],
    emptyGroups: [],
    lost: [],
  };
}

/** Lays the wishes that name another mix under all others, each mix after those it names. */
function takeOtherMixes(
  sheet: ActSheet,
  index: SheetIndex,
  layers: WishLayers,
  wishes: ResolvedWishes,
  naming: readonly number[],
): void {
  const named = namedMixes(sheet, index, naming);
  const circular = cyclicSameAs(named);
  wishes.circular = [...circular];
  for (const wishAt of naming) {
    const wish = sheet.wishes[wishAt];
    if (wish && !(index.mixAt.has(wish.mixId) && index.mixAt.has(wish.sameAsMixId ?? '')))
      wishes.lost.push(wishAt);
  }
  for (const mixAt of orderOfMixes(named, circular)) {
    for (const { wishAt, otherAt } of named[mixAt] ?? []) {
      const wish = sheet.wishes[wishAt];
      if (wish && !circular.has(wishAt)) layers.takeOtherMix(wishAt, wish, mixAt, otherAt);
    }
    layers.close(mixAt);
  }
}

/** Places of the sources of each group, and of everything. */
type Targets = ReadonlyMap<string, readonly number[]>;

function groupTargets(sources: readonly Source[]): Targets {
  const targets = new Map<string, number[]>([['everything', sources.map((_, at) => at)]]);
  sources.forEach((source, at) => {
    addToList(targets, factsOfKind(source.kind).group, at);
  });
  return targets;
}

const rankOfMix = 1;
const rankOfEverything = 2;
const rankOfGroup = 3;
const rankOfSource = 4;

/** What a wish goes before; 0 for no wish. */
function rankOf(wish: Wish | undefined): number {
  if (!wish) return 0;
  if (wish.sameAsMixId !== null) return rankOfMix;
  if (wish.sourceId !== null) return rankOfSource;
  return wish.group === 'everything' ? rankOfEverything : rankOfGroup;
}

/** The wishes of all mixes being laid over each other. */
class WishLayers {
  readonly #sheet: ActSheet;
  readonly #index: SheetIndex;
  readonly #wishes: ResolvedWishes;
  /** By mix, per target of an `only` wish its places; a later wish on the same target replaces it. */
  readonly #alone = new Map<number, Map<string, readonly number[]>>();
  /** Places of the levels in the list of levels. */
  readonly #placeOfDb = new Map<number, number>();
  readonly #placeOfLots: number;
  readonly #placeOfSome: number;
  readonly #placeOfLittle: number;
  #targets: Targets | null = null;

  constructor(sheet: ActSheet, index: SheetIndex, wishes: ResolvedWishes) {
    this.#sheet = sheet;
    this.#index = index;
    this.#wishes = wishes;
    this.#placeOfLots = this.#placeOfLevel(sheet.rig.lotsDb);
    this.#placeOfSome = this.#placeOfLevel(sheet.rig.someDb);
    this.#placeOfLittle = this.#placeOfLevel(sheet.rig.littleDb);
  }

  /** All wishes on sources and groups; returns the places of those that name another mix. */
  takeOwn(): number[] {
    const { wishes } = this.#sheet;
    const { sourceAt, mixAt } = this.#index;
    const naming: number[] = [];
    // Wishes of one mix usually follow each other.
    let mixId: string | null = null;
    let here: number | undefined;
    for (let at = 0; at < wishes.length; at++) {
      const wish = wishes[at] as Wish;
      if (wish.sameAsMixId !== null) {
        naming.push(at);
        continue;
      }
      if (wish.mixId !== mixId) {
        mixId = wish.mixId;
        here = mixAt.get(mixId);
      }
      const source = wish.sourceId === null ? undefined : sourceAt.get(wish.sourceId);
      if (here === undefined || (wish.sourceId !== null && source === undefined)) this.#wishes.lost.push(at);
      else if (source !== undefined) this.#takeSource(at, wish, here, source);
      else if (wish.group !== null) this.#takeGroup(at, wish, wish.group, here);
    }
    return naming;
  }

  /** A wish for what another mix holds, which must have been closed. */
  takeOtherMix(wishAt: number, wish: Wish, mixAt: number, otherAt: number): void {
    const { state, levelAt, inherited, sourceCount } = this.#wishes;
    const asItIs = (wish.amount === null && wish.levelDb === null) || wish.amount === 'only';
    const heard: number[] = [];
    for (let at = 0; at < sourceCount; at++) {
      const there = otherAt * sourceCount + at;
      const here = mixAt * sourceCount + at;
      const stateThere = state[there] ?? cellState.noWish;
      if (stateThere === cellState.wanted) heard.push(at);
      if (stateThere === cellState.noWish || this.#rankOfCell(here) > rankOfMix) continue;
      this.#set(here, wishAt, wish, cellState.wanted);
      inherited.delete(here);
      if (!asItIs && stateThere === cellState.wanted) continue;
      inherited.set(here, amountOfCell(this.#sheet, this.#wishes, there));
      levelAt[here] = levelAt[there] ?? 0;
      state[here] = stateThere;
    }
    this.#remember(mixAt, `mix ${wish.sameAsMixId}`, wish, heard);
  }

  /** Switches off what an `only` of a mix leaves out. To be called once, after the last wish of the mix. */
  close(mixAt: number): void {
    const alone = this.#alone.get(mixAt);
    if (!alone || alone.size === 0) return;
    const { sourceCount, state } = this.#wishes;
    const kept = new Uint8Array(sourceCount);
    for (const places of alone.values()) for (const at of places) kept[at] = 1;
    for (let at = 0, cell = mixAt * sourceCount; at < sourceCount; at++, cell++)
      if (!kept[at] && state[cell] === cellState.wanted) state[cell] = cellState.switchedOff;
  }

  closeAll(): void {
    for (const mixAt of this.#alone.keys()) this.close(mixAt);
  }

  /** Nothing goes before a wish on a source but a later one on it. */
  #takeSource(wishAt: number, wish: Wish, mixAt: number, sourceAt: number): void {
    if (wish.amount === 'only' || this.#alone.size > 0)
      this.#remember(mixAt, wish.sourceId ?? '', wish, [sourceAt]);
    this.#set(mixAt * this.#wishes.sourceCount + sourceAt, wishAt, wish, cellState.wanted);
  }

  #takeGroup(wishAt: number, wish: Wish, group: string, mixAt: number): void {
    this.#targets ??= groupTargets(this.#sheet.sources);
    const places = this.#targets.get(group) ?? [];
    if (places.length === 0) this.#wishes.emptyGroups.push(wishAt);
    if (group === 'everything') this.#wishes.forEverything.push(wishAt);
    const rank = rankOf(wish);
    this.#remember(mixAt, `group ${group}`, wish, places);
    for (const at of places) {
      const cell = mixAt * this.#wishes.sourceCount + at;
      if (this.#rankOfCell(cell) > rank) continue;
      const forHallOnly = this.#sheet.sources[at]?.audience === 'front of house only';
      this.#set(cell, wishAt, wish, forHallOnly ? cellState.fohOnly : cellState.wanted);
    }
  }

  /** Notes whether the last wish on a target wants it alone. */
  #remember(mixAt: number, target: string, wish: Wish, places: readonly number[]): void {
    const ofMix = this.#alone.get(mixAt);
    if (wish.amount !== 'only') ofMix?.delete(target);
    else if (ofMix) ofMix.set(target, places);
    else this.#alone.set(mixAt, new Map([[target, places]]));
  }

  #rankOfCell(cell: number): number {
    const wishAt = this.#wishes.wishAt[cell] ?? -1;
    return wishAt < 0 ? 0 : rankOf(this.#sheet.wishes[wishAt]);
  }

  #set(cell: number, wishAt: number, wish: Wish, state: number): void {
    const { amount } = wish;
    this.#wishes.wishAt[cell] = wishAt;
    this.#wishes.levelAt[cell] =
      amount === null ? this.#placeOfLevel(wish.levelDb ?? 0) : this.#placeOfAmount(amount);
    this.#wishes.state[cell] = amount === 'none' && state === cellState.wanted ? cellState.none : state;
  }

  /** `only` is as loud as `lots`; `none` has no level, and any place will do. */
  #placeOfAmount(amount: Amount): number {
    if (amount === 'some') return this.#placeOfSome;
    return amount === 'little' ? this.#placeOfLittle : this.#placeOfLots;
  }

  #placeOfLevel(levelDb: number): number {
    const known = this.#placeOfDb.get(levelDb);
    if (known !== undefined) return known;
    this.#placeOfDb.set(levelDb, this.#wishes.levelsDb.length);
    return this.#wishes.levelsDb.push(levelDb) - 1;
  }
}
