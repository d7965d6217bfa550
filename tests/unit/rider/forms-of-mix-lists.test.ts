import { describe, expect, it } from 'vitest';
import { neutralReading } from '../../../core/rider/neutral.ts';
import { readRider } from '../../../core/rider/read-rider.ts';

/** The ways in which bands write lists of mixes: heads crossed with where the wishes stand. Common practice. */
type Words = {
  inputs: string;
  title: string;
  mix: string;
  wedges: string;
  ears: string;
  place: string;
  loud: string;
  quiet: string;
  sources: [string, string, string, string];
};

/** Four lines: kick, bass, keys, voice. */
const languages: Record<string, Words> = {
  en: {
    inputs: 'INPUT LIST',
    title: 'MONITORS',
    mix: 'Mix',
    wedges: '2 wedges',
    ears: 'in-ears stereo',
    place: 'stage left',
    loud: 'lots of',
    quiet: 'a little',
    sources: ['Kick', 'Bass', 'Keys', 'Lead vocal'],
  },
  de: {
    inputs: 'KANALLISTE',
    title: 'MONITORE',
    mix: 'Mix',
    wedges: '2 Wedges',
    ears: 'In-Ear stereo',
    place: 'links',
    loud: 'viel',
    quiet: 'ein bisschen',
    sources: ['Kick', 'Bass', 'Keys', 'Leadgesang'],
  },
  fr: {
    inputs: 'PATCH',
    title: 'RETOURS',
    mix: 'Retour',
    wedges: '2 wedges',
    ears: 'ears stéréo',
    place: 'jardin',
    loud: 'beaucoup de',
    quiet: 'un peu de',
    sources: ['Grosse caisse', 'Basse', 'Clavier', 'Chant lead'],
  },
  es: {
    inputs: 'LISTA DE CANALES',
    title: 'MONITORES',
    mix: 'Mezcla',
    wedges: '2 cuñas',
    ears: 'in-ear estéreo',
    place: 'izquierda',
    loud: 'mucho',
    quiet: 'un poco de',
    sources: ['Bombo', 'Guitarra', 'Teclado', 'Voz principal'],
  },
  it: {
    inputs: 'LISTA CANALI',
    title: 'MONITOR',
    mix: 'Mandata',
    wedges: '2 spie',
    ears: 'in-ear stereo',
    place: 'sinistra',
    loud: 'tanta',
    quiet: "un po' di",
    sources: ['Cassa', 'Basso', 'Tastiera', 'Voce principale'],
  },
  nl: {
    inputs: 'KANALENLIJST',
    title: 'MONITORS',
    mix: 'Mix',
    wedges: '2 wedges',
    ears: 'in-ear stereo',
    place: 'links',
    loud: 'veel',
    quiet: 'een beetje',
    sources: ['Kick', 'Bas', 'Toetsen', 'Leadzang'],
  },
  pt: {
    inputs: 'LISTA DE CANAIS',
    title: 'MONITORES',
    mix: 'Via',
    wedges: '2 monitores de chão',
    ears: 'in-ear estéreo',
    place: 'esquerda',
    loud: 'muito',
    quiet: 'um pouco de',
    sources: ['Bumbo', 'Guitarra', 'Teclado', 'Voz principal'],
  },
};

type Told = { at: number; mix: string; who: string; place: string; device: string };
const heads: ((told: Told) => string)[] = [
  ({ at, mix, who, place, device }) => `${mix} ${at}  ${who}, ${place}, ${device}`,
  ({ at, mix, who, place, device }) => `${mix} ${at}: ${who} (${place}) ${device}`,
  ({ at, mix, who, device }) => `${mix} ${at} - ${who} - ${device}`,
  ({ at, mix, who, device }) => `${mix} ${at} (${device}) ${who}`,
  ({ at, mix, who, device }) => `${mix} ${at} = ${who} = ${device}`,
  ({ at, who, place, device }) => `${at}. ${who}, ${place}, ${device}`,
  ({ at, who, device }) => `${at}) ${who} / ${device}`,
  ({ at, who, place, device }) => `${'ab'[at - 1]}) ${who}, ${place}, ${device}`,
  ({ at, who, device }) => `${'AB'[at - 1]} - ${who} (${device})`,
  ({ who, device }) => `${who} (${device})`,
  ({ who, device }) => `${who}, ${device}`,
  ({ who, device }) => `${who.toUpperCase()} ${device}`,
  ({ who, device }) => `${device} ${who}`,
  ({ at, who, device }) => `#${at} ${who}, ${device}`,
  ({ who, place, device }) => `* ${who}, ${place} (${device})`,
  ({ who, device }) => `- ${who}: ${device}`,
];

const places: ((head: string, wishes: readonly string[]) => string)[] = [
  (head, wishes) => `${head}: ${wishes.join(', ')}`,
  (head, wishes) => `${head} - ${wishes.join(', ')}`,
  (head, wishes) => `${head}\n${wishes.join(', ')}`,
  (head, wishes) => `${head}:\n${wishes.join(', ')}`,
  (head, wishes) => `${head}\n     ${wishes[0]},\n     ${wishes[1]}.`,
  (head, wishes) => `${head}\n${wishes.map((wish) => `- ${wish}`).join('\n')}`,
  (head, wishes) => `${head}:\n${wishes.map((wish) => `   ${wish}`).join('\n')}`,
  (head, wishes) => `${head}\n\n${wishes.join(', ')}.`,
];

/** What was read differently from what was written: two mixes, each with a device and two wishes. */
function differs(words: Words, head: (typeof heads)[number], place: (typeof places)[number]): string[] {
  const [kick, second, keys, voice] = words.sources;
  const mixes = [
    {
      who: 'Runa',
      device: words.wedges,
      kind: 'wedge',
      wishes: [`${words.loud} ${voice}`, keys],
      heard: { 4: 'lots', 3: 'some' },
    },
    {
      who: 'Tjark',
      device: words.ears,
      kind: 'in-ear',
      wishes: [`${words.loud} ${kick}`, `${words.quiet} ${second}`],
      heard: { 1: 'lots', 2: 'little' },
    },
  ];
  const list = mixes.map(({ who, device, wishes }, at) =>
    place(head({ at: at + 1, mix: words.mix, who, place: words.place, device }), wishes),
  );
  const inputs = words.sources.map((source, at) => `${at + 1} ${source}`);
  const text = [words.inputs, ...inputs, '', words.title, '', list.join('\n\n')].join('\n');
  const rows = text.split('\n').map((line) => [line]);
  const reading = neutralReading(readRider({ name: 'mail', form: 'text', sheets: [{ name: '', rows }] }));
  const read = reading.mixes.map((mix) => ({
    who: mix.listener?.toLowerCase(),
    kind: mix.kind,
    heard: Object.fromEntries(
      mix.wishes.flatMap(({ channels, amount }): [string, unknown][] =>
        channels === 'all' ? [['all', amount]] : channels.map((channel) => [String(channel), amount]),
      ),
    ),
  }));
  const wanted = mixes.map(({ who, kind, heard }) => ({ who: who.toLowerCase(), kind, heard }));
  return JSON.stringify(read) === JSON.stringify(wanted)
    ? []
    : [`${text.split('\n\n').slice(2).join(' / ')}: ${JSON.stringify(read)}`];
}

describe('lists of mixes are read whichever way they are written', () => {
  for (const [language, words] of Object.entries(languages)) {
    // Half of the crossings in each language, the other half in the next.
    const offset = Object.keys(languages).indexOf(language);
    it(`in ${language}`, () => {
      const wrong = heads.flatMap((head, at) =>
        places.flatMap((place, nth) => ((at + nth + offset) % 2 === 0 ? differs(words, head, place) : [])),
      );
      expect(wrong).toEqual([]);
    });
  }
});

/** Tables that have one column for who listens, where and through what. */
const whereCells: [string, { who: string; kind: string | null; place: string }][] = [
  ['Runa, wedge', { who: 'Runa', kind: 'wedge', place: '' }],
  ['Runa, stage left', { who: 'Runa', kind: null, place: 'stage left' }],
  ['Runa: 2 wedges, stage left', { who: 'Runa', kind: 'wedge', place: 'stage left' }],
  ['Wedge, Runa', { who: 'Runa', kind: 'wedge', place: '' }],
  ['Drums, stage left', { who: 'Drums', kind: null, place: 'stage left' }],
];

describe('the column that says where a mix is may also say whose it is', () => {
  it.each(whereCells)('"%s"', (cell, wanted) => {
    const rows = [
      ['Ch', 'Source', 'Mic'],
      ['1', 'Kick', 'dynamic'],
      ['2', 'Keys', 'DI'],
      [],
      ['Mix', 'Where', 'Content'],
      ['M1', cell, 'lots of kick'],
    ];
    const reading = readRider({ name: 'table', form: 'text', sheets: [{ name: '', rows }] });
    const neutral = neutralReading(reading);
    const read = reading.mixes.map(({ deviceKind, place }, at) => ({
      who: neutral.mixes[at]?.listener,
      kind: deviceKind,
      place,
    }));
    expect(read).toEqual([wanted]);
  });
});
