import type { DecisionIndex } from '../plan/decided.ts';
import type { Plan, PlannedMix } from '../plan/plan.ts';
import { rowsOfCopies } from '../plan/plan-copies.ts';
import type { Copy, Mix, Source } from '../show/act.ts';
import type { ActSheet } from '../show/act-sheet.ts';
import type { Device, Id } from '../show/rig.ts';
import type { SheetIndex } from '../show/sheet-index.ts';
import type { SourceKind } from '../show/source-kinds.ts';
import type { Purpose } from '../show/words.ts';
import type { CopiesOfSource } from './copies-of-source.ts';
import type { Derived } from './derived.ts';
import type { CellDecisions } from './feed-decisions.ts';
import type { People } from './people.ts';
import type { Sends } from './sends.ts';
import type { ResolvedWishes } from './wishes.ts';

/** Everything that is known of an act once it is planned and derived: what findings and paths are read from. */
export type ActFacts = Omit<Derived, 'feeds' | 'feedsOfSource' | 'findings'> & {
  sheet: ActSheet;
  index: SheetIndex;
  decided: DecisionIndex;
  mixes: MixWithPlan[];
  wishes: ResolvedWishes;
  cells: CellDecisions;
  /** What the feeds are told from with `feedOf`. */
  sends: Sends;
  copies: readonly CopiesOfSource[];
  people: People;
};

export function sourceOf(facts: Pick<ActFacts, 'sheet' | 'index'>, id: Id): Source | undefined {
  const at = facts.index.sourceAt.get(id);
  return at === undefined ? undefined : facts.sheet.sources[at];
}

export function mixOf(facts: ActFacts, id: Id): Mix | undefined {
  const at = facts.index.mixAt.get(id);
  return at === undefined ? undefined : facts.sheet.mixes[at];
}

/** What was decided about a copy; undefined: nothing. */
export function copyRowOf(
  facts: Pick<ActFacts, 'sheet' | 'index'>,
  sourceId: Id,
  purpose: Purpose,
): Copy | undefined {
  return rowsOfCopies(facts.sheet)[facts.index.sourceAt.get(sourceId) ?? -1]?.[purpose];
}

/** Places of the sources of these kinds, in sheet order. */
export function placesOfKinds({ sheet }: Pick<ActFacts, 'sheet'>, ...kinds: readonly SourceKind[]): number[] {
  const places: number[] = [];
  for (let at = 0; at < sheet.sources.length; at++) {
    const source = sheet.sources[at];
    if (source && kinds.includes(source.kind)) places.push(at);
  }
  return places;
}

/** A mix with its plan. */
export type MixWithPlan = {
  mix: Mix;
  planned: PlannedMix;
  mixAt: number;
  /** The planned devices that are in the rig. */
  devices: readonly Device[];
};

/** Each mix with its plan, in sheet order. */
export function mixesWithPlans(sheet: ActSheet, plan: Plan, devices: readonly Device[][]): MixWithPlan[] {
  const mixes: MixWithPlan[] = [];
  for (let mixAt = 0; mixAt < sheet.mixes.length; mixAt++) {
    const mix = sheet.mixes[mixAt];
    const planned = plan.mixes[mixAt];
    if (mix && planned) mixes.push({ mix, planned, mixAt, devices: devices[mixAt] ?? [] });
  }
  return mixes;
}

/** The two sides of a stereo pair, each pair once. */
export type Pair = { one: Source; oneAt: number; other: Source; otherAt: number };

export function pairsOf(facts: ActFacts): Pair[] {
  return facts.sheet.sources.flatMap((one, oneAt) => {
    const otherAt = one.pairSourceId === null ? undefined : facts.index.sourceAt.get(one.pairSourceId);
    const other = otherAt === undefined || otherAt <= oneAt ? undefined : facts.sheet.sources[otherAt];
    return other && otherAt !== undefined ? [{ one, oneAt, other, otherAt }] : [];
  });
}

/** Whether anything but in-ears carries a mix. A device that nobody has named yet counts as a wedge. */
export function isLoudspeakerMix(mix: Mix): boolean {
  return mix.deviceKind !== 'in-ear';
}
