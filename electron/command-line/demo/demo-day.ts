import type { z } from 'zod';
import type { Act, Day } from '../../../core/show/act.ts';
import type { Purpose } from '../../../core/show/words.ts';

/**
 * The invented day: who plays when, how far each act has come, what the engineer answered and decided. Acts, people
 * and places exist nowhere. The riders are files in assets/demo/riders and come in the way a user's do.
 */
export const demoDay: Omit<z.input<typeof Day>, 'id' | 'rigId'> = {
  name: 'Saturday',
  date: '2026-07-18',
  crewSize: 4,
  changeoverMinutes: 20,
};

/** Microphones of the house that several acts use, and where they stand all day, in metres on the plot. */
export const houseLines = {
  'House vocal centre': { xM: 0, yM: 1.8 },
  'House vocal left': { xM: 2, yM: 2 },
  'House announcer': { xM: -6.5, yM: 1.5 },
} as const;

export type DemoAct = {
  id: string;
  name: string;
  start: string;
  end: string;
  state: z.infer<typeof Act>['state'];
  notes: string;
  riderFile: string;
  /** When the rider came, as ISO 8601. */
  receivedAt: string;
  /** Answers by a piece of the question's words; `guess` takes what the reading proposes, `rest` all that is left. */
  answers: { ask: RegExp; value: 'guess' | (string & {}) }[];
  decisions: DemoDecision[];
  /** Where people stand and lines are picked up, in metres on the plot: the first whose words fit a name holds. */
  places: [name: RegExp, xM: number, yM: number][];
  /** Lines of the house that stay on stage from act to act, by the name they have all day. */
  shared: [name: RegExp, line: keyof typeof houseLines][];
  /** Lines that stand on a riser and roll with it. */
  risers: [name: RegExp, riser: string][];
};

/** Something the engineer decided, by the names on the sheet. */
export type DemoDecision =
  | { own: 'copy'; source: RegExp; purpose: Purpose; wanted?: boolean; channel?: number }
  | { own: 'socket'; source: RegExp; socket: string }
  | { own: 'device'; mix: RegExp; device: string }
  | { own: 'feed'; mix: RegExp; source: RegExp; purpose: Purpose }
  | { own: 'level'; mix: RegExp; source: RegExp; levelDb: number }
  /** Every wish of the mix was confirmed with the performer. */
  | { own: 'confirmed'; mix: RegExp };

const everything = /./;

export const demoActs: readonly DemoAct[] = [
  {
    id: 'unterklee',
    name: 'Blaskapelle Unterklee',
    start: '12:00',
    end: '12:40',
    state: 'ready',
    notes: 'Eleven players, no in-ears. Gustl speaks from his place.',
    riderFile: 'Blaskapelle Unterklee - Mail vom 3. Juni.txt',
    receivedAt: '2026-06-03T08:12:00.000Z',
    answers: [{ ask: everything, value: 'guess' }],
    decisions: [{ own: 'confirmed', mix: /[124]$/ }],
    places: [
      [/Toni|Trommel|Snare|Becken/, 0, 7.5],
      [/Gustl|Tuba|Ansage/, 4, 6.5],
      [/Vroni|Tenorhorn/, 2.5, 6],
      [/Hias|Leni|Posaune/, -4, 6],
      [/Hannes|Sepp|Trompete/, 0, 5],
      [/Bartl|Kathi|Flügelhorn/, 2, 4.5],
      [/Traudl|Burgi|Klarinette|flöte/, -3, 3],
      [/Resi|Akkordeon|Gesang/, 0, 2.2],
    ],
    shared: [
      [/^Gesang/, 'House vocal centre'],
      [/^Ansage/, 'House announcer'],
    ],
    risers: [],
  },
  {
    id: 'wexmoor',
    name: 'Oona Wexmoor',
    start: '13:00',
    end: '13:40',
    state: 'ready',
    notes: 'Fenn and the cello are coming. Never mute the guitar between songs.',
    riderFile: 'Oona Wexmoor rider.txt',
    receivedAt: '2026-06-09T17:40:00.000Z',
    answers: [{ ask: everything, value: 'guess' }],
    decisions: [
      { own: 'copy', source: /^Acoustic guitar$/, purpose: 'monitors' },
      { own: 'level', mix: /1$/, source: /Lead vocal/, levelDb: -3 },
      { own: 'confirmed', mix: /[12]$/ },
    ],
    places: [
      [/Fenn|Cello/, 2.5, 2.5],
      [/Stomp|Looper|Harmonica/, -0.6, 2.2],
      [/Oona|OONA|vocal|guitar/, 0, 2.2],
    ],
    shared: [[/^Lead vocal/, 'House vocal centre']],
    risers: [],
  },
  {
    id: 'lindeboog',
    name: 'Kwartet Lindeboog',
    start: '14:00',
    end: '14:45',
    state: 'ready',
    notes: 'Acoustic sound wanted; the grand piano is ours and is tuned at 10:30.',
    riderFile: 'Kwartet Lindeboog technische lijst.csv',
    receivedAt: '2026-06-11T09:05:00.000Z',
    answers: [
      { ask: /Praatmicrofoon/, value: 'presenter' },
      { ask: everything, value: 'guess' },
    ],
    decisions: [{ own: 'confirmed', mix: /[1-4]$/ }],
    places: [
      [/Wout|Bassdrum|Snare|Overhead/, 1, 6],
      [/Joppe|Contrabas/, -0.5, 5],
      [/Saar|Vleugel/, -4, 4.5],
      [/Lotte|sax|Praat/, 2, 3],
    ],
    shared: [[/^Praatmicrofoon/, 'House vocal centre']],
    risers: [],
  },
  {
    id: 'galoches',
    name: 'Les Galoches d’Orvelin',
    start: '15:10',
    end: '16:00',
    state: 'advancing',
    notes: 'Asked about ears for Enora on 20 June, no answer yet.',
    riderFile: 'Les Galoches d’Orvelin - fiche technique.xlsx',
    receivedAt: '2026-06-19T21:30:00.000Z',
    answers: [],
    decisions: [],
    places: [
      [/Enora|Cajón|Podo|percus/, 0, 6],
      [/Corentin|Vielle|Cornemuse/, -3.5, 3],
      [/Soazig|Violon/, -1.8, 2.6],
      [/Maëlle|Accordéon|^Chant/, 0, 2.4],
      [/Yann|Guitare|Chœur/, 1.8, 2.6],
      [/Briac|Contrebasse/, 3.5, 3.4],
    ],
    shared: [
      [/^Chant/, 'House vocal centre'],
      [/^Chœur/, 'House vocal left'],
      [/^Micro danse/, 'House announcer'],
    ],
    risers: [],
  },
  {
    id: 'parsonage',
    name: 'Fuzz Parsonage',
    start: '16:30',
    end: '17:20',
    state: 'ready',
    notes: 'Dag’s amplifier has a ribbon microphone on it: no 48 V there.',
    riderFile: 'FUZZ_PARSONAGE_inputs_2026_v7_FINAL.csv',
    receivedAt: '2026-05-12T11:20:00.000Z',
    answers: [
      { ask: /^What is "Tin can"/, value: 'backing vocal' },
      { ask: everything, value: 'guess' },
    ],
    decisions: [
      { own: 'copy', source: /^Kick in$/, purpose: 'monitors' },
      { own: 'copy', source: /^Kick out$/, purpose: 'monitors' },
      { own: 'feed', mix: /4$/, source: /^Kick out$/, purpose: 'foh' },
      { own: 'confirmed', mix: /[1-4]$/ },
    ],
    places: [
      [/Bram|^Kick|Snare|^HH|^Rack|^Floor|^OH/, 0, 7],
      [/Ivo|^Bass/, -3, 4.5],
      [/Nell|Gtr SR|Tin can/, 0, 2],
      [/Dag|Gtr SL/, 3.5, 2.8],
    ],
    shared: [
      [/^Nell Vox/, 'House vocal centre'],
      [/^Dag Vox/, 'House vocal left'],
    ],
    risers: [[/^Kick|^Snare|^HH|^Rack|^Floor|^OH|^Bram/, 'Riser 1']],
  },
  {
    id: 'lunare',
    name: 'Cassa Lunare',
    start: '17:50',
    end: '18:40',
    state: 'advancing',
    notes: 'Two tables stage centre, everything comes from their rack.',
    riderFile: 'cassa lunare - scheda tecnica.tsv',
    receivedAt: '2026-06-22T14:02:00.000Z',
    answers: [],
    decisions: [],
    places: [
      [/Alba|Voce principale|Synth|Campionatore/, -1, 3],
      [/Tancredi|vocoder|Cassa|Percussioni|Basi|Click|Ritorno/, 1, 3],
    ],
    shared: [[/^Voce principale/, 'House vocal centre']],
    risers: [],
  },
  {
    id: 'korvane',
    name: 'Milla Korvane',
    start: '19:15',
    end: '20:15',
    state: 'ready',
    notes: 'All in-ears, their own transmitters. Frequencies come one week before.',
    riderFile: 'MILLA KORVANE - Audio Rider S26.xlsx',
    receivedAt: '2026-05-28T10:00:00.000Z',
    answers: [{ ask: everything, value: 'guess' }],
    decisions: [
      { own: 'copy', source: /^Milla vocal$/, purpose: 'in-ears', channel: 65 },
      { own: 'copy', source: /^Milla spare$/, purpose: 'in-ears', channel: 66 },
      { own: 'socket', source: /^Milla vocal$/, socket: 'D1' },
      { own: 'socket', source: /^Milla spare$/, socket: 'D2' },
      { own: 'confirmed', mix: /[1-5]$/ },
    ],
    places: [
      [/Kes|^Kick|Snare|Hi-hat|tom|Overhead|Sample/, 0, 7],
      [/Sil|^Bass/, -4, 4],
      [/Pau|Keys|Track|Click|Guide|Timecode|Synth/, 4, 6],
      [/Tove|uitar/, 4, 3],
      [/Milla/, 0, 1.5],
      [/Audience L/, -6, 0],
      [/Audience R/, 6, 0],
      [/Tech/, -6.5, 6.5],
    ],
    shared: [],
    risers: [
      [/^Kick|^Snare|^Hi-hat|tom$|^Overhead|^Sample|^Kes/, 'Riser 2'],
      [/^Keys|^Track|^Click|^Guide|^Timecode|^Synth|^Pau/, 'Riser 3'],
    ],
  },
  {
    id: 'farolillo',
    name: 'Orquesta Farolillo Mayor',
    start: '21:00',
    end: '22:30',
    state: 'advancing',
    notes: 'Own desk for five ear mixes. Nobody has said yet who brings the splitter.',
    riderFile: 'Orquesta Farolillo Mayor - rider técnico 2026.xlsx',
    receivedAt: '2026-06-25T18:45:00.000Z',
    answers: [],
    decisions: [],
    places: [
      [/Baltasar|Bombo|Caja|Charles|Timbal|Aéreo/, 0, 7.5],
      [/Yolanda|Congas|Bong|Cachivaches|Percusión/, -3.5, 7],
      [/Casilda|Piano|Órgano|Clavinet|Talkback|Click/, 4.5, 5.5],
      [/Ulises|Bajo/, 2, 6.5],
      [/Fermina|Guitarra/, 3, 4.5],
      [/Nicanor|Delfina|Evaristo|Piedad|Gaspar|Oria|Trom|Saxo/, -4.5, 4.5],
      [/Remedios/, 0, 2],
      [/Anselmo/, 1.5, 2],
      [/reserva|invitado/i, -1.5, 1.8],
      [/Ambiente L/, -6, 0],
      [/Ambiente R/, 6, 0],
    ],
    shared: [[/reserva/, 'House vocal centre']],
    risers: [[/^Bombo|^Caja|^Charles|^Timbal |^Aéreo/, 'Riser 1']],
  },
];
