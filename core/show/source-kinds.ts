import { z } from 'zod';

/** Groups of sources that a wish or a patch can name at once. */
export const sourceGroups = [
  'drums',
  'percussion',
  'bass',
  'guitars',
  'keys',
  'playback',
  'click',
  'brass',
  'woodwind',
  'strings',
  'folk',
  'vocals',
  'speech',
  'ambience',
  'effects',
  'other',
] as const;
export const SourceGroup = z.enum(sourceGroups);
export type SourceGroup = z.infer<typeof SourceGroup>;

/**
 * Every kind of source the program knows, in the usual order of a channel list (drums first, vocals and stage
 * talk last: common practice). A newcomer adds a kind here and its words in `core/rider/words`.
 * `wedgeSafe: false` marks what must never come out of a loudspeaker on stage.
 */
const table = {
  'kick in': { group: 'drums' },
  'kick out': { group: 'drums' },
  kick: { group: 'drums' },
  'snare top': { group: 'drums' },
  'snare bottom': { group: 'drums' },
  snare: { group: 'drums' },
  'hi-hat': { group: 'drums' },
  'rack tom': { group: 'drums' },
  'floor tom': { group: 'drums' },
  tom: { group: 'drums' },
  ride: { group: 'drums' },
  cymbals: { group: 'drums' },
  overhead: { group: 'drums' },
  drums: { group: 'drums' },
  'electronic drums': { group: 'drums' },
  percussion: { group: 'percussion' },
  congas: { group: 'percussion' },
  bongos: { group: 'percussion' },
  cajon: { group: 'percussion' },
  djembe: { group: 'percussion' },
  timbales: { group: 'percussion' },
  tambourine: { group: 'percussion' },
  shaker: { group: 'percussion' },
  timpani: { group: 'percussion' },
  glockenspiel: { group: 'percussion' },
  xylophone: { group: 'percussion' },
  marimba: { group: 'percussion' },
  vibraphone: { group: 'percussion' },
  bells: { group: 'percussion' },
  steelpan: { group: 'percussion' },
  'bass di': { group: 'bass' },
  'bass amp': { group: 'bass' },
  bass: { group: 'bass' },
  'double bass': { group: 'bass' },
  'synth bass': { group: 'bass' },
  'electric guitar': { group: 'guitars' },
  'acoustic guitar': { group: 'guitars' },
  'pedal steel': { group: 'guitars' },
  keys: { group: 'keys' },
  piano: { group: 'keys' },
  organ: { group: 'keys' },
  synth: { group: 'keys' },
  clavinet: { group: 'keys' },
  harpsichord: { group: 'keys' },
  playback: { group: 'playback' },
  sampler: { group: 'playback' },
  dj: { group: 'playback' },
  click: { group: 'click', wedgeSafe: false },
  timecode: { group: 'click', wedgeSafe: false },
  cue: { group: 'click', wedgeSafe: false },
  trumpet: { group: 'brass' },
  flugelhorn: { group: 'brass' },
  trombone: { group: 'brass' },
  'french horn': { group: 'brass' },
  tuba: { group: 'brass' },
  brass: { group: 'brass' },
  saxophone: { group: 'woodwind' },
  clarinet: { group: 'woodwind' },
  flute: { group: 'woodwind' },
  oboe: { group: 'woodwind' },
  bassoon: { group: 'woodwind' },
  recorder: { group: 'woodwind' },
  whistle: { group: 'woodwind' },
  bagpipes: { group: 'woodwind' },
  violin: { group: 'strings' },
  viola: { group: 'strings' },
  cello: { group: 'strings' },
  strings: { group: 'strings' },
  harp: { group: 'strings' },
  accordion: { group: 'folk' },
  harmonica: { group: 'folk' },
  banjo: { group: 'folk' },
  mandolin: { group: 'folk' },
  ukulele: { group: 'folk' },
  bouzouki: { group: 'folk' },
  dulcimer: { group: 'folk' },
  'hurdy-gurdy': { group: 'folk' },
  sitar: { group: 'folk' },
  'lead vocal': { group: 'vocals' },
  vocal: { group: 'vocals' },
  'backing vocal': { group: 'vocals' },
  choir: { group: 'vocals' },
  'spare vocal': { group: 'vocals' },
  'guest vocal': { group: 'vocals' },
  presenter: { group: 'speech' },
  talkback: { group: 'speech', wedgeSafe: true },
  ambience: { group: 'ambience', wedgeSafe: false },
  'effect return': { group: 'effects' },
  'spare line': { group: 'other' },
  other: { group: 'other' },
} satisfies Record<string, { group: SourceGroup; wedgeSafe?: boolean }>;

export type SourceKind = keyof typeof table;
export const sourceKinds = Object.keys(table) as [SourceKind, ...SourceKind[]];
export const SourceKind = z.enum(sourceKinds);

export type SourceKindFacts = { group: SourceGroup; wedgeSafe: boolean; order: number };

const facts = new Map<SourceKind, SourceKindFacts>(
  sourceKinds.map((kind, order) => {
    const row: { group: SourceGroup; wedgeSafe?: boolean } = table[kind];
    return [kind, { group: row.group, wedgeSafe: row.wedgeSafe ?? true, order }];
  }),
);

/** 1 by the order of a kind where it is so, else 0: for many sources, a place in an array is found faster than a text. */
export function marksOfKinds(isSo: (kind: SourceKind, facts: SourceKindFacts) => boolean): Uint8Array {
  return Uint8Array.from(sourceKinds, (kind) => (isSo(kind, factsOfKind(kind)) ? 1 : 0));
}

/** What the program knows of a kind of source: its group, whether a loudspeaker may carry it, its usual order. */
export function factsOfKind(kind: SourceKind): SourceKindFacts {
  const found = facts.get(kind);
  if (!found) throw new Error(`No such kind of source: ${kind}`);
  return found;
}
