import { describe, expect, test } from 'vitest';
import { neutralReading } from '../../../core/rider/neutral.ts';
import { readRider } from '../../../core/rider/read-rider.ts';

/** Tables of mixes as bands draw them, and what they say of devices once for all. Invented; common practice. */
const inputs = [
  ['Ch', 'Source', 'Mic'],
  ['1', 'Kick in', 'mic'],
  ['2', 'Kick out', 'mic'],
  ['3', 'Snare', 'mic'],
  ['4', 'Bass', 'DI'],
  ['5', 'Keys L', 'DI'],
  ['6', 'Keys R', 'DI'],
  ['7', 'Lead vocal Runa', 'mic'],
];

/** "who: device, format, own; channels and amounts" of every mix below the list of inputs. */
function mixesOf(rows: readonly (readonly string[])[]): string[] {
  const sheet = { name: 'Rider', rows: [...inputs, [''], ...rows].map((row) => [...row]) };
  const { mixes } = neutralReading(readRider({ name: 'rider.csv', form: 'csv', sheets: [sheet] }));
  return mixes.map(({ listener, kind, format, own, wishes }) => {
    const device = [kind, format, own === null ? null : own ? 'own' : 'house'].filter(Boolean).join(' ');
    const amounts = [...new Set(wishes.map(({ amount }) => amount))];
    const heard = amounts.map((amount) => {
      const channels = wishes.flatMap((wish) => (wish.amount === amount ? [wish.channels].flat() : []));
      return `${channels.join('+')} ${amount}`;
    });
    return `${listener}: ${device}${heard.length > 0 ? `; ${heard.join(', ')}` : ''}`;
  });
}

describe('tables of mixes are told by what stands in them', () => {
  const runa = 'Runa: wedge; 1+2+3 some, 7 lots';
  const tjark = 'Tjark: in-ear stereo own; 4 lots, 5+6 little';
  test.each<[string, string[][]]>([
    [
      'headings that nobody knows',
      [
        ['MONITORS'],
        ['No', 'Whose ears', 'Boxes', 'Goodies'],
        ['1', 'Runa', '2 wedges', 'kick and snare, lots of lead vocal'],
        ['2', 'Tjark', 'own IEM stereo', 'lots of bass, a bit of keys'],
      ],
    ],
    [
      'no headings',
      [
        ['MONITORS'],
        ['M1', 'Runa', '2 wedges', 'kick and snare, lots of lead vocal'],
        ['M2', 'Tjark', 'own IEM stereo', 'lots of bass, a bit of keys'],
        ['M3', 'Bo', 'wedge', 'bass, keys'],
      ],
    ],
    [
      'number, listener, place and device in one cell',
      [
        ['MONITORS'],
        ['Mix', 'Content'],
        ['1 Runa, down centre, 2 wedges', 'kick and snare, lots of lead vocal'],
        ['2 Tjark (own IEM stereo)', 'lots of bass, a bit of keys'],
      ],
    ],
    [
      'sources down, numbers over names over devices',
      [
        ['MONITORS'],
        ['', 'Mix 1', 'Mix 2'],
        ['', 'Runa', 'Tjark'],
        ['', '2 wedges', 'own IEM stereo'],
        ['Kick/Snare', '++', ''],
        ['Bass', '', '+++'],
        ['Keys', '', '+'],
        ['Lead vocal', '+++', ''],
      ],
    ],
    [
      'listeners down with a column of devices',
      [
        ['MONITORS'],
        ['', 'Type', 'Kick + snare', 'Bass', 'Keys', 'Lead vocal'],
        ['Runa', '2 wedges', '++', '', '', '+++'],
        ['Tjark', 'own IEM stereo', '', '+++', '+', ''],
      ],
    ],
    [
      'numbers from 1 to 10',
      [
        ['MONITORS (scale 1-10, empty = up to you)'],
        ['', 'Runa (2 wedges)', 'Tjark (own IEM stereo)'],
        ['Kick+snare', '6', ''],
        ['Bass', '', '9'],
        ['Keys', '', '2'],
        ['Lead vocal', '10', ''],
      ],
    ],
  ])('%s', (_, rows) => {
    expect(mixesOf(rows).slice(0, 2)).toEqual([runa, tjark]);
  });

  test('nought is full level where the others stand in dB, in cells and behind sources', () => {
    const head = ['Mix', 'Who', 'Levels in dB'];
    const rows = [head, ['1', 'Runa', 'lead vocal 0, keys -6, bass -9'], ['2', 'Tjark', 'bass 0, keys -12']];
    expect(mixesOf([['MONITORS'], ...rows])).toEqual(['Runa: ; 7 0, 5+6 -6, 4 -9', 'Tjark: ; 4 0, 5+6 -12']);
  });

  test('a source goes to mixes by their numbers, and what else stands below goes on with no mix', () => {
    const rows = [
      ['MONITORS'],
      ['Mix', 'Who', 'Type', 'Content'],
      ['1', 'Runa', 'wedge', 'lead vocal'],
      ['2', 'Tjark', 'wedge', 'bass'],
      ['Keys to mixes 1 and 2'],
      ['Please bring a carpet for the bass player'],
    ];
    expect(mixesOf(rows)).toEqual(['Runa: wedge; 7+5+6 some', 'Tjark: wedge; 4+5+6 some']);
  });
});

describe('what everybody listens through is told once', () => {
  const mixes = [
    ['Mix', 'Who', 'Content'],
    ['1', 'Runa', 'bass'],
    ['2', 'Tjark', 'keys'],
  ];
  test.each<[string, string, string]>([
    [
      'All players on their own stereo in-ears. Packs come with us.',
      'in-ear stereo own',
      'in-ear stereo own',
    ],
    ['We use two mixes, all house wedges, mono.', 'wedge mono house', 'wedge mono house'],
    ['Alle beide auf In-Ear stereo, Funkstrecken gehören uns.', 'in-ear stereo own', 'in-ear stereo own'],
    ['Tous sur wedges de la salle sauf Tjark : ears mono, les siens.', 'wedge house', 'in-ear mono own'],
    ['Tutti in cuffia, sistemi nostri, stereo.', 'in-ear stereo own', 'in-ear stereo own'],
    ['Dos mezclas, cuñas de la sala.', 'wedge house', 'wedge house'],
    ['Iedereen op eigen in-ears (stereo). Zenders nemen wij mee.', 'in-ear stereo own', 'in-ear stereo own'],
    ['Duas vias, com monitores de chão da casa.', 'wedge house', 'wedge house'],
    ['Graag alles van het huis.', 'house', 'house'],
  ])('%s', (text, runa, tjark) => {
    const read = mixesOf([['MONITORS'], [text], ...mixes]).map((it) => it.replace(/;.*/, ''));
    expect(read.sort()).toEqual([`Runa: ${runa}`, `Tjark: ${tjark}`]);
  });

  test('and a mix that names a device and refuses a source is a mix, no word on all', () => {
    const rows = [['MONITORS'], ['Runa: wedge, own vocal'], ['Tjark: in-ears, no vocals at all, bass']];
    expect(mixesOf(rows)).toEqual(['Runa: wedge; 7 some', 'Tjark: in-ear; 7 none, 4 some']);
  });

  test('and a numbered line that is short stays a line of the list', () => {
    const rows = [['1 Kick'], ['2 Bajo'], ['3 Voz Ana'], [''], ['Monitores'], ['Ana: cuña, su voz, bajo']];
    const { inputs: read } = readRider({ name: 'rider', form: 'text', sheets: [{ name: '', rows }] });
    expect(read.map(({ kind }) => kind)).toEqual(['kick', 'bass', 'lead vocal']);
  });
});
