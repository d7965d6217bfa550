import { describe, expect, test } from 'vitest';
import type { Grid } from '../../../core/rider/grid.ts';
import { readRider } from '../../../core/rider/read-rider.ts';

/**
 * Lines whose kind or partner only the rest of their row or of the list tells. Common practice throughout. A line is
 * written "kind" or, where it has a stereo partner, "kind > number".
 */
const gridOf = (rows: readonly string[]): Grid => ({
  name: 'rider',
  form: 'csv',
  sheets: [{ name: 'Rider', rows: rows.map((row) => row.split('|').map((cell) => cell.trim())) }],
});

function lines(rows: readonly string[]): string[] {
  const { inputs } = readRider(gridOf(rows));
  return inputs.map(({ kind, pairKey }) => {
    const partner = inputs.find((input) => input.key === pairKey);
    return partner ? `${kind} > ${partner.channel}` : kind;
  });
}

const isAsked = (rows: readonly string[], line: string) =>
  readRider(gridOf(rows)).lines.some(({ text, outcome }) => text.includes(line) && outcome === 'question');

describe('what the rest of the rider says of a line', () => {
  test.each<[string, string[], string[]]>([
    [
      'parts in a play who wear microphones sing, and one who only speaks does not',
      [
        'Line | Source | Pick-up | Remarks',
        '1 | The Miller | headworn radio |',
        '2 | Old Crow | headworn radio | speaks only',
      ],
      ['lead vocal', 'presenter'],
    ],
    [
      'who is said to sing most leads',
      ['Ch | Source | Mic | Notes', '1 | Vox Ada | dynamic |', '2 | Vox Bo | dynamic | sings most'],
      ['vocal', 'lead vocal'],
    ],
    [
      'the line of a player of an acoustic guitar is acoustic too',
      [
        'Canal | Fuente | Artista | Micro',
        '1 | Guitarra flamenca | Lola | condensador',
        '2 | Guitarra Lola línea | Lola | DI',
      ],
      ['acoustic guitar', 'acoustic guitar'],
    ],
    [
      'alto, tenor and baritone beside trumpets and trombones are saxophones',
      ['Kanal | Instrument', '1 | Alt 1', '2 | Tenor 1', '3 | Bariton', '4 | Posaune 1', '5 | Trompete 1'],
      ['saxophone', 'saxophone', 'saxophone', 'trombone', 'trumpet'],
    ],
    [
      'a baritone beside a tenor horn, where nobody plays saxophone, is brass',
      ['Kanal | Instrument', '1 | Tenorhorn', '2 | Bariton', '3 | Trompete', '4 | Posaune'],
      ['brass', 'brass', 'trumpet', 'trombone'],
    ],
    [
      'the toms of a French kit are called by their size',
      ['Voie | Source', '1 | GC', '2 | CC', '3 | HH', '4 | Alto', '5 | Médium', '6 | Basse', '7 | Basse DI'],
      ['kick', 'snare', 'hi-hat', 'rack tom', 'rack tom', 'floor tom', 'bass di'],
    ],
    [
      'a Portuguese viola is a guitar, and with bows beside it a viola',
      ['Canal | Instrumento', '1 | Viola', '2 | Acordeão', '3 | Voz'],
      ['acoustic guitar', 'accordion', 'lead vocal'],
    ],
    [
      'low and high of a piano are its two sides',
      ['Kanal | Instrument', '1 | Flügel tief', '2 | Flügel hoch'],
      ['piano > 2', 'piano > 1'],
    ],
    [
      'the two hands of an accordion are no left and right',
      ['Voie | Source', '1 | Accordéon main droite', '2 | Accordéon main gauche'],
      ['accordion', 'accordion'],
    ],
    [
      'what comes out of a drum machine keeps its sides',
      [
        '1. Caixa de ritmos - bombo',
        '2. Caixa de ritmos - resto L',
        '3. Caixa de ritmos - resto R',
        '4. Voz',
      ],
      ['electronic drums', 'electronic drums > 3', 'electronic drums > 2', 'lead vocal'],
    ],
    [
      'what stands in brackets says what is made of it, not what it is',
      ['Ch | Source', '1 | Cello (loops)', '2 | Flute (tenor 2)', '3 | Percussion (bass drum, triangle)'],
      ['cello', 'flute', 'percussion'],
    ],
    [
      'an empty channel is no line',
      ['Kanal | Instrument', '1 | Kick', '2 | frei', '3 | Bass'],
      ['kick', 'bass'],
    ],
    [
      'a microphone that only the band hears is talkback',
      [
        'Kan. | Bron | Mic | Opmerking',
        '1 | Kick | grensvlak |',
        '2 | Praatmic Joost | dynamisch met knop | alleen oortjes',
      ],
      ['kick', 'talkback'],
    ],
    [
      'one told in a sentence with its stands and microphones is one line',
      [
        'Patch',
        "- voix d'Aubin, c'est lui qui chante presque tout : micro chant, grand pied",
        '- une valise qui sert de grosse caisse : micro dynamique dedans, petit pied',
        '- contrebasse : DI',
      ],
      ['lead vocal', 'kick', 'double bass'],
    ],
  ])('%s', (_, rows, expected) => {
    expect(lines(rows)).toEqual(expected);
  });

  test.each([
    ['en', 'Guest? (sax or flute)', ''],
    ['en', 'Trumpet', 'tbc'],
    ['de', 'Röhrenglocken', 'steht noch nicht fest'],
    ['fr', 'Clarinette', 'on vous confirme'],
    ['es', 'Chelo pedales', 'creo'],
    ['it', 'Sirena', 'non sappiamo ancora'],
    ['nl', 'Viool', 'weten we nog niet'],
    ['pt', 'Coro convidado', 'se vier'],
  ])('a line that the band is not sure of is asked about (%s: %s %s)', (_, name, remark) => {
    expect(isAsked(['Ch | Source | Mic | Notes', '1 | Kick | |', `2 | ${name} | | ${remark}`], name)).toBe(
      true,
    );
  });

  test('a line that the engineer leaves out is gone, and still told', () => {
    const grid = gridOf(['Ch | Source | Notes', '1 | Kick |', '2 | Trumpet | tbc']);
    const [question] = readRider(grid).questions.filter(({ key }) => key.startsWith('wanted@'));
    const after = readRider(grid, { [question?.key ?? '']: 'no' });
    expect(after.inputs.map(({ kind }) => kind)).toEqual(['kick']);
    expect(after.lines.at(-1)?.outcome).toBe('set aside');
  });
});
