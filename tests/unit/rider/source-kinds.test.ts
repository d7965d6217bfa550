import { describe, expect, test } from 'vitest';
import type { Grid } from '../../../core/rider/grid.ts';
import { kindOf, readSourceName } from '../../../core/rider/language/source-name.ts';
import { readRider } from '../../../core/rider/read-rider.ts';
import type { Language } from '../../../core/rider/words/table.ts';
import type { SourceKind } from '../../../core/show/source-kinds.ts';

/** Names of lines as riders write them, by language and kind. Common practice; foreign words from memory. */
const names: [Language, SourceKind, string][] = [
  ['en', 'percussion', 'Bones & spoons; Step dancer floor; Log drum; Cowbell'],
  ['en', 'floor tom', 'T2 (floor); Floor; Floor tom 16"'],
  ['en', 'snare bottom', 'Snare dn; Snare under; SN btm'],
  ['en', 'synth bass', 'Mono synth bass; Bass synth'],
  ['en', 'synth', 'Synth stack (summed in rack); Poly synth'],
  [
    'en',
    'playback',
    'TRX left; TRX BVs left; Orchestra from tape; Sound effects right; Interval music; Phone line',
  ],
  ['en', 'acoustic guitar', 'Gypsy guitar; Resonator; Cuatro; Requinto; Portuguese guitar'],
  ['en', 'bagpipes', 'Uilleann pipes - chanter; Drones (pipes)'],
  ['en', 'presenter', 'Narrator; Spoken word; Town crier'],
  ['en', 'violin', 'Fiddle (Bridie, also sings)'],
  ['en', 'electronic drums', 'Electronic toms; Drum machine'],
  ['en', 'talkback', 'Talk to band; MD talk'],
  ['en', 'overhead', 'Condenser over the drums left; Ovrhd R'],
  ['en', 'brass', 'Brass OH'],
  ['en', 'other', 'Typewriter; Hydrophone'],
  ['pt', 'ukulele', 'Cavaquinho; Braguinha'],
  ['en', 'percussion', 'Percussion OH; Tam-tam; Thunder sheet'],
  ['en', 'kick out', 'Kick front; BD reso'],
  ['en', 'bass amp', 'Bass 4x10; Bass stack'],
  ['en', 'flugelhorn', 'Flugel'],
  ['de', 'piano', 'Flügel'],
  ['en', 'trumpet', 'Bugle'],
  ['fr', 'flugelhorn', 'Bugle'],
  ['en', 'effect return', 'Vocal reverb; Snare verb'],
  ['de', 'percussion', 'Schellen; Donnerblech; Schlagwerktisch'],
  ['fr', 'electric guitar', 'Gratte saturée'],
  ['fr', 'hi-hat', 'Cymbales charley; Charlé'],
  ['es', 'floor tom', 'Tom grande; Tom suelo'],
  ['es', 'percussion', 'Tarima de baile; Cuerda de tambores'],
  ['it', 'bass amp', 'Cassa basso; Testata basso'],
  ['nl', 'percussion', 'Slagwerktafel; Dondermachine'],
  ['nl', 'violin', '1e violen lessenaar 2'],
  ['pt', 'acoustic guitar', 'Viola de 12 cordas; Violão base'],
  ['pt', 'bass amp', 'Cubo de baixo'],
  ['de', 'percussion', 'Waschbrett; Steptanzboden; Kuhglocken'],
  ['de', 'accordion', 'Quetschkommode links; Ziach'],
  ['de', 'playback', 'Orchester vom Band L; Chor vom Band; Pausenmusik'],
  ['de', 'organ', 'Leierkasten; Drehorgel'],
  ['fr', 'accordion', 'Piano à bretelles'],
  ['fr', 'acoustic guitar', 'Guitare manouche 1'],
  ['fr', 'playback', 'Bruitages; Son vidéo; Bande orchestre'],
  ['es', 'timbales', 'Timbaletas'],
  ['es', 'playback', 'Disparos; Música grabada'],
  ['es', 'percussion', 'Tablao; Zapateo; Txalaparta'],
  ['it', 'cymbals', 'Piattini'],
  ['it', 'acoustic guitar', 'Chitarra battente'],
  ['it', 'double bass', 'Contrabb. pick-up'],
  ['nl', 'organ', 'Draaiend orgelkastje hoog'],
  ['nl', 'tuba', "Bastuba's"],
  ['nl', 'backing vocal', 'Koor Bas'],
  ['nl', 'playback', 'Pauzemuziek'],
  ['pt', 'percussion', 'Tantan; Repique de mão; Surdo de primeira'],
  ['pt', 'acoustic guitar', 'Viola de fado; Violão 7 cordas'],
  ['pt', 'harmonica', 'Gaita'],
  ['es', 'bagpipes', 'Gaita'],
];

const read = (text: string, language: Language) => {
  const name = readSourceName(text, {
    spoken: new Set([language]),
    names: new Set(),
    people: new Set(),
    legend: new Map(),
    read: new Map(),
  });
  return kindOf(name, null);
};

describe('a name in a channel list', () => {
  test.each(
    names.flatMap(([language, kind, list]) => list.split('; ').map((name) => ({ language, kind, name }))),
  )('"$name" ($language) is $kind', ({ language, kind, name }) => {
    expect(read(name, language).kind).toBe(kind);
  });
});

/** Below this a reading is asked about (see `settleKind`). */
const asked = 0.7;

describe('a name that may mean something else', () => {
  test.each<[string, Language, SourceKind]>([
    ['Sperrmülltrommel', 'de', 'percussion'],
    ['Solist', 'de', 'lead vocal'],
  ])('"%s" is asked about, with a guess', (name, language, kind) => {
    const guess = read(name, language);
    expect(guess.kind).toBe(kind);
    expect(guess.certainty).toBeLessThan(asked);
  });
});

const inputsOf = (...lines: [string, string, string][]) => {
  const grid: Grid = {
    name: 'rider',
    form: 'csv',
    sheets: [{ name: 'Rider', rows: [['Ch', 'Source', 'Mic / DI'], ...lines] }],
  };
  const reading = readRider(grid, {});
  return {
    kinds: reading.inputs.map(({ kind }) => kind),
    pairs: reading.inputs.map(({ pairKey }) => pairKey !== null),
    asked: reading.questions.map(({ words }) => words),
  };
};

describe('what stands around a name', () => {
  test('makes a harp beside a drum kit one that is blown, and asks', () => {
    const { kinds, asked: words } = inputsOf(
      ['1', 'Kick', 'mic'],
      ['2', 'Snare', 'mic'],
      ['3', 'Harp', 'mic'],
    );
    expect(kinds[2]).toBe('harmonica');
    expect(words).toContain('Harp');
  });

  test('leaves a harp beside a violin one with strings', () => {
    expect(inputsOf(['1', 'Violin', 'mic'], ['2', 'Harp', 'mic']).kinds).toEqual(['violin', 'harp']);
  });

  // Sizes, casts and tables of small things: common practice.
  test.each<[string, SourceKind[], [string, string, string][]]>([
    [
      'the size of a tom',
      ['rack tom', 'floor tom'],
      [
        ['1', 'Tom 13', 'clip'],
        ['2', 'Tom 16', 'clip'],
      ],
    ],
    [
      'a cast with microphones to wear',
      ['vocal', 'vocal', 'lead vocal'],
      [
        ['1', 'The Baker (headset)', 'radio'],
        ['2', 'The Widow (headset)', 'radio'],
        ['3', 'Lead vocal', 'mic'],
      ],
    ],
    ['a table of small percussion', ['percussion'], [['1', 'Maracas and bells', 'condenser']]],
    ['microphones for feet', ['ambience'], [['1', 'Float mic left', 'boundary']]],
    ['a pick-up of a contrabaixo', ['double bass'], [['1', 'Contrabaixo pick-up', 'DI']]],
    [
      'a timbal beside congas, with a kick but no snare',
      ['congas', 'timbales', 'timbales', 'kick'],
      [
        ['1', 'Conga', 'dinámico'],
        ['2', 'Timbal agudo', 'dinámico'],
        ['3', 'Timbal grave', 'dinámico'],
        ['4', 'Bombo', 'dinámico'],
      ],
    ],
    [
      'a timbal of a kit beside congas',
      ['congas', 'snare', 'rack tom', 'floor tom'],
      [
        ['1', 'Conga', 'dinámico'],
        ['2', 'Caja', 'dinámico'],
        ['3', 'Timbal agudo', 'dinámico'],
        ['4', 'Timbal grave', 'dinámico'],
      ],
    ],
  ])('tells %s', (_, kinds, lines) => {
    expect(inputsOf(...lines).kinds).toEqual(kinds);
  });

  test('tells what a soloist plays', () => {
    expect(inputsOf(['1', 'Trumpet', 'mic'], ['2', 'Soloist, accordion', 'own mic']).kinds[1]).toBe(
      'accordion',
    );
  });

  test('makes the two lines of a submix a pair, and no pair of two toms', () => {
    expect(inputsOf(['1', 'Toms L (submix)', 'line'], ['2', 'Toms R (submix)', 'line']).pairs).toEqual([
      true,
      true,
    ]);
    expect(inputsOf(['1', 'Floor tom L', 'mic'], ['2', 'Floor tom R', 'mic']).pairs).toEqual([false, false]);
  });
});
