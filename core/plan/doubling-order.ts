import type { Source } from '../show/act.ts';
import type { ActSheet } from '../show/act-sheet.ts';
import { addToList } from '../show/add-to-list.ts';
import { placeOfSource } from '../show/place-of-source.ts';
import { remembered } from '../show/remember.ts';
import { indexSheet } from '../show/sheet-index.ts';
import { factsOfKind, type SourceGroup, type SourceKind, sourceKinds } from '../show/source-kinds.ts';
import { distanceM, placeOf, type StagePlace } from '../show/stage-place.ts';

/**
 * Which sources gain most from a copy of their own for monitors, the greatest first. Common practice: voices are
 * equalised and compressed most for the audience and fed back most from a wedge; keys are doubled rarely,
 * playback and click almost never, talkback never, so those are not proposed at all.
 */
const doublingOrder: readonly {
  kinds?: readonly SourceKind[];
  group?: SourceGroup;
  why: string;
}[] = [
  { kinds: ['lead vocal'], why: 'the lead vocal gains most from processing of its own' },
  { kinds: ['spare vocal'], why: 'a spare must be able to stand in for the lead vocal as it is' },
  { group: 'vocals', why: 'vocals near a wedge gain next' },
  {
    kinds: ['acoustic guitar'],
    why: 'acoustic guitars and strings ring in a wedge with the processing of FOH',
  },
  { group: 'strings', why: 'acoustic guitars and strings ring in a wedge with the processing of FOH' },
  { kinds: ['presenter'], why: 'speech needs other settings on stage than in the audience' },
  { group: 'brass', why: 'horns are compressed hard for FOH' },
  { group: 'woodwind', why: 'horns are compressed hard for FOH' },
  { kinds: ['kick in', 'kick out', 'kick'], why: 'the kick is gated and compressed hard for FOH' },
  { kinds: ['snare top', 'snare bottom', 'snare'], why: 'the snare is gated and compressed hard for FOH' },
  { group: 'bass', why: 'the bass is compressed hard for FOH' },
];

/** Microphones of one instrument that must keep their phase, so that they are doubled together or not at all. */
const phaseFamilies: readonly (readonly SourceKind[])[] = [
  ['kick in', 'kick out', 'kick'],
  ['snare top', 'snare bottom', 'snare'],
  ['bass di', 'bass amp', 'bass'],
];

const familyOfKind: ReadonlyMap<SourceKind, number> = new Map(
  phaseFamilies.flatMap((kinds, family) => kinds.map((kind): [SourceKind, number] => [kind, family])),
);

/** Sources that get copies together or not at all, by their places in the sheet. */
export type DoublingUnit = readonly number[];

/** Place of each kind in the doubling order: the first row that names it or its group; -1: it is not proposed. */
const rankOfKind = Int8Array.from(sourceKinds, (kind) => {
  const { group } = factsOfKind(kind);
  return doublingOrder.findIndex((row) => row.kinds?.includes(kind) || row.group === group);
});

const whyOfRank = doublingOrder.map(({ why }) => `A copy for monitors: ${why}.`);

/**
 * Everything that a copy may be proposed for, in the order of gain, with the reason for its place there; phase and
 * stereo pairs are one unit. Among equals the nearest to a loudspeaker goes first.
 */
export function doublingUnits(sheet: ActSheet): { unit: DoublingUnit; why: string }[] {
  const { sources } = sheet;
  const unitOf = unitsOfSources(sources);
  const byRank: number[][] = doublingOrder.map(() => []);
  const { kindAt } = indexSheet(sheet);
  for (let at = 0; at < kindAt.length; at++) byRank[rankOfKind[kindAt[at] ?? 0] ?? -1]?.push(at);
  sortByNearness(byRank, sheet);
  const isSeen = new Uint8Array(sources.length);
  const units: { unit: DoublingUnit; why: string }[] = [];
  for (let rank = 0; rank < byRank.length; rank++)
    for (const at of byRank[rank] ?? []) {
      const unit = unitOf[at];
      if (!unit || isSeen[at]) continue;
      for (const member of unit) isSeen[member] = 1;
      units.push({ unit, why: whyOfRank[rank] ?? '' });
    }
  return units;
}

/** Those of one rank by their distance to a loudspeaker; a lead vocal keeps its place. */
function sortByNearness(byRank: readonly number[][], sheet: ActSheet): void {
  const loudspeakers = placesOfLoudspeakers(sheet);
  if (loudspeakers.length === 0) return;
  const nearM = sheet.sources.map((source) =>
    source.kind === 'lead vocal' ? 0 : nearestM(placeOfSource(sheet, source), loudspeakers),
  );
  for (const alike of byRank) alike.sort((a, b) => (nearM[a] ?? 0) - (nearM[b] ?? 0));
}

function placesOfLoudspeakers(sheet: ActSheet): StagePlace[] {
  return sheet.mixes.flatMap((mix) =>
    mix.deviceKind === null || mix.deviceKind === 'in-ear' ? [] : (placeOf(mix) ?? []),
  );
}

/** Distance to the nearest of these places; far away where none is known. */
function nearestM(from: StagePlace | null, places: readonly StagePlace[]): number {
  let nearest = Number.MAX_VALUE;
  if (from) for (const there of places) nearest = Math.min(nearest, distanceM(from, there));
  return nearest;
}

/**
 * For each source, in their order, the unit it belongs to: its stereo pair, its phase family, a DI with its
 * microphone. All members of a unit share one list.
 */
export const unitsOfSources = remembered((sources: readonly Source[]): DoublingUnit[] => {
  const unitOf: number[][] = sources.map((_, at) => [at]);
  const join = (a: number, b: number) => {
    const [unitA = [], unitB = []] = [unitOf[a], unitOf[b]];
    if (unitA === unitB) return;
    const joined = [...unitA, ...unitB];
    for (const at of joined) unitOf[at] = joined;
  };
  const hasPairs = sources.some((source) => source.pairSourceId !== null);
  const placeOfId = new Map(hasPairs ? sources.map((source, at) => [source.id, at]) : []);
  /** For each family the first source of every player. */
  const firstsOfFamily = new Map<number | SourceKind, Source[]>();
  const firstAts = new Map<Source, number>();
  sources.forEach((source, at) => {
    const pairAt = source.pairSourceId === null ? undefined : placeOfId.get(source.pairSourceId);
    if (pairAt !== undefined) join(at, pairAt);
    const family = familyOf(source);
    if (family === null) return;
    const first = firstsOfFamily.get(family)?.find((it) => it.performerId === source.performerId);
    if (!first) {
      addToList(firstsOfFamily, family, source);
      firstAts.set(source, at);
    } else if (isPhasePair(first, source)) join(firstAts.get(first) ?? at, at);
  });
  return unitOf;
});

/** What microphones of one player's instrument share, or null where a source has no such relatives. */
function familyOf(source: Source): number | SourceKind | null {
  const family = familyOfKind.get(source.kind);
  if (family !== undefined) return family;
  const known = source.performerId !== null && (source.pickUp === 'mic' || source.pickUp === 'di');
  return known ? source.kind : null;
}

/** Two kinds of one family, or a DI and a microphone on one player's instrument; two kicks are two instruments. */
function isPhasePair(a: Source, b: Source): boolean {
  return a.kind !== b.kind || (a.pickUp !== b.pickUp && a.pickUp !== null && b.pickUp !== null);
}
