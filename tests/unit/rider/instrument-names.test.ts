import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { expect, test } from 'vitest';
import { kindOf, readSourceName } from '../../../core/rider/language/source-name.ts';
import { factsOfKind, type SourceGroup } from '../../../core/show/source-kinds.ts';

const groupOf = (text: string): SourceGroup => {
  const tongue = {
    spoken: new Set<never>(),
    names: new Set<string>(),
    people: new Set<string>(),
    legend: new Map(),
    read: new Map(),
  };
  return factsOfKind(kindOf(readSourceName(text, tongue), null).kind).group;
};

/**
 * General MIDI level 1 sound set, names from the open package jzz-midi-gm: which of our groups may stand for each
 * of its families (common practice: a stage sorts by who plays it, General MIDI by how it sounds). Its sound
 * effects, synth effects and invented leads and pads are no instruments of a stage and left out.
 */
const families: { from: number; to: number; groups: SourceGroup[] }[] = [
  { from: 0, to: 7, groups: ['keys'] },
  { from: 8, to: 15, groups: ['percussion', 'folk'] },
  { from: 16, to: 20, groups: ['keys'] },
  { from: 21, to: 23, groups: ['folk'] },
  { from: 24, to: 31, groups: ['guitars'] },
  { from: 32, to: 39, groups: ['bass'] },
  { from: 40, to: 45, groups: ['strings', 'bass'] },
  { from: 46, to: 47, groups: ['strings', 'percussion'] },
  { from: 48, to: 51, groups: ['strings', 'keys'] },
  { from: 52, to: 54, groups: ['vocals', 'keys'] },
  { from: 56, to: 63, groups: ['brass', 'keys'] },
  { from: 64, to: 71, groups: ['woodwind'] },
  { from: 72, to: 79, groups: ['woodwind'] },
  { from: 104, to: 111, groups: ['folk', 'strings', 'percussion', 'woodwind', 'guitars'] },
  { from: 112, to: 118, groups: ['percussion', 'drums'] },
];

type GeneralMidi = { MIDI: { programName?: (number: number) => string } };

// The package adds its names to a MIDI library; the names are all that is wanted of it here.
const midi: GeneralMidi = { MIDI: {} };
(createRequire(import.meta.url)('jzz-midi-gm') as (library: GeneralMidi) => void)(midi);
const nameOf = (program: number): string => midi.MIDI.programName?.(program) ?? '';

test.each(
  families.flatMap(({ from, to, groups }) =>
    Array.from({ length: to - from + 1 }, (_, step) => ({ name: nameOf(from + step), groups })),
  ),
)('$name of General MIDI is recognised by its family', ({ name, groups }) => {
  expect(groups).toContain(groupOf(name));
});

/** Names as stages write them, with the family of the MusicXML standard sounds (see the source in the file). */
const stageNames = JSON.parse(
  readFileSync(new URL('../../reference/instrument-names.json', import.meta.url), 'utf8'),
) as { cases: { kind: string; in: { name?: string }; out: { family?: string } }[] };

/** Families of the standard to our groups; where ours differ it is by the standard's own note on bass, bells and
 * accordion (common practice). */
const groupsOfFamily: Record<string, SourceGroup[]> = {
  voice: ['vocals', 'folk'],
  drum: ['drums', 'percussion'],
  metal: ['drums', 'percussion'],
  'pitched-percussion': ['percussion'],
  pluck: ['guitars', 'bass', 'folk', 'strings'],
  strings: ['strings', 'bass', 'folk'],
  keyboard: ['keys', 'folk'],
  synth: ['keys'],
  wind: ['woodwind', 'folk'],
  brass: ['brass'],
  rattle: ['percussion'],
  wood: ['percussion'],
};

test.each(
  stageNames.cases.flatMap((it) =>
    it.kind === 'stage-name' && it.in.name && it.out.family
      ? [{ name: it.in.name, family: it.out.family }]
      : [],
  ),
)('$name is recognised as one of the family $family', ({ name, family }) => {
  expect(groupsOfFamily[family]).toContain(groupOf(name));
});
