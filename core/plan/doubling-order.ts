import type { Source } from '../show/act.ts';
import type { ActSheet } from '../show/act-sheet.ts';
import { remembered } from '../show/remember.ts';
import type { Id } from '../show/rig.ts';
import { factsOfKind, type SourceGroup, type SourceKind, sourceKinds } from '../show/source-kinds.ts';
import { distanceM, placeOf } from '../show/stage-place.ts';

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

/** Sources that get copies together or not at all, and why this is their place in the order. */
export type DoublingUnit = { sources: Source[]; why: string };

/** Everything that a copy may be proposed for, in the order of gain; phase and stereo pairs are one unit. */
export function doublingUnits(sheet: ActSheet): DoublingUnit[] {
  const unitOf = unitsOfSources(sheet.sources);
  const ranked: { source: Source; order: number; rank: number; nearM: number }[] = [];
  for (const [order, source] of sheet.sources.entries()) {
    const rank = rankOfKind.get(source.kind);
    if (rank === undefined) continue;
    const nearM = source.kind === 'lead vocal' ? 0 : nearestLoudspeakerM(sheet, source);
    ranked.push({ source, order, rank, nearM });
  }
  ranked.sort((a, b) => a.rank - b.rank || a.nearM - b.nearM || a.order - b.order);
  const seen = new Set<Source[]>();
  const units: DoublingUnit[] = [];
  for (const { source, rank } of ranked) {
    const sources = unitOf.get(source.id) ?? [source];
    if (seen.has(sources)) continue;
    seen.add(sources);
    units.push({ sources, why: doublingOrder[rank]?.why ?? '' });
  }
  return units;
}

/** Place of each kind in the doubling order: the first row that names it or its group. */
const rankOfKind: ReadonlyMap<SourceKind, number> = new Map(
  sourceKinds.flatMap((kind): [SourceKind, number][] => {
    const { group } = factsOfKind(kind);
    const rank = doublingOrder.findIndex((row) => row.kinds?.includes(kind) || row.group === group);
    return rank < 0 ? [] : [[kind, rank]];
  }),
);

/** Distance to the nearest mix that comes out of a loudspeaker; far away where a place is not known. */
function nearestLoudspeakerM(sheet: ActSheet, source: Source): number {
  const place = placeOf(source);
  let nearest = Number.MAX_VALUE;
  if (!place) return nearest;
  for (const mix of sheet.mixes) {
    if (mix.deviceKind === null || mix.deviceKind === 'in-ear') continue;
    const there = placeOf(mix);
    if (there) nearest = Math.min(nearest, distanceM(place, there));
  }
  return nearest;
}

/** For each source the unit it belongs to: its stereo pair, its phase family, a DI with its microphone. */
export const unitsOfSources = remembered((sources: readonly Source[]): Map<Id, Source[]> => {
  const unitOf = new Map<Id, Source[]>();
  const join = (a: Source, b: Source) => {
    const unitA = unitOf.get(a.id) ?? [a];
    const unitB = unitOf.get(b.id) ?? [b];
    if (unitA === unitB) return;
    const joined = [...unitA, ...unitB];
    for (const source of joined) unitOf.set(source.id, joined);
  };
  const hasPairs = sources.some((source) => source.pairSourceId !== null);
  const byId = new Map(hasPairs ? sources.map((source) => [source.id, source]) : []);
  const firstOfPlayer = new Map<Id | null, Map<number | SourceKind, Source>>();
  for (const source of sources) {
    if (!unitOf.has(source.id)) unitOf.set(source.id, [source]);
    const pair = source.pairSourceId === null ? undefined : byId.get(source.pairSourceId);
    if (pair) join(source, pair);
    const family = familyOf(source);
    if (family === null) continue;
    const firsts = firstOfPlayer.get(source.performerId) ?? new Map<number | SourceKind, Source>();
    firstOfPlayer.set(source.performerId, firsts);
    const first = firsts.get(family);
    if (!first) firsts.set(family, source);
    else if (isPhasePair(first, source)) join(first, source);
  }
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
