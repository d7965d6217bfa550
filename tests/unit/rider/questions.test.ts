import { describe, expect, test } from 'vitest';
import type { Grid } from '../../../core/rider/grid.ts';
import { neutralReading } from '../../../core/rider/neutral.ts';
import { readRider } from '../../../core/rider/read-rider.ts';
import type { Answers, Reading } from '../../../core/rider/reading.ts';

const gridOf = (...rows: string[]): Grid => ({
  name: 'rider',
  form: 'csv',
  sheets: [{ name: 'Rider', rows: rows.map((row) => row.split('|').map((cell) => cell.trim())) }],
});

const read = (rows: string[], answers?: Answers): Reading => readRider(gridOf(...rows), answers);

/** Reads, takes the one question of a matter, answers it, and reads again. */
function answered(rows: string[], matter: string, value: string): Reading {
  const question = read(rows).questions.find((it) => it.key.startsWith(`${matter}@`));
  if (!question) throw new Error(`There is no question about ${matter}`);
  const after = read(rows, { [question.key]: value });
  expect(after.questions.map((it) => it.key)).not.toContain(question.key);
  return after;
}

const kinds = (reading: Reading) => reading.inputs.map((input) => input.kind);

describe('what a rider leaves open', () => {
  const unknown = ['Ch | Source', '1 | Kick', '2 | Zorbulator'];

  test('a source that nobody knows is asked about and stays in the list', () => {
    const reading = read(unknown);
    expect(kinds(reading)).toEqual(['kick', 'other']);
    expect(reading.questions[0]?.ask).toContain('Zorbulator');
    expect(neutralReading(reading).open.map((it) => it.line)).toEqual(['2 | Zorbulator']);
  });

  test.each([
    ['an option', 'lead vocal', ['kick', 'lead vocal']],
    ['own words', 'some kind of trumpet', ['kick', 'trumpet']],
    ['that it is no source', 'not a source', ['kick']],
  ])('the engineer answers with %s and the reading follows', (_, value, expected) => {
    expect(kinds(answered(unknown, 'kind', value))).toEqual(expected);
  });

  test('a line called no source is set aside and still told', () => {
    const reading = answered(unknown, 'kind', 'not a source');
    expect(reading.lines.at(-1)?.outcome).toBe('set aside');
  });

  test('one number for "Keys L/R" is two lines until the engineer says one', () => {
    const rows = ['Ch | Source', '1 | Keys L/R', '3 | Bass'];
    expect(read(rows).inputs.map((input) => input.channel)).toEqual([1, 2, 3]);
    expect(answered(rows, 'lines', 'one').inputs.map((input) => input.channel)).toEqual([1, 3]);
  });

  test.each([
    ['acoustic, loud', 'wishes "acoustic"'],
    ['Spanish guitar', 'wishes "Spanish guitar"'],
    ['theremin a little', 'wishes "theremin a little"'],
  ])('a wish for what the list has not is asked about: %s', (wish, ask) => {
    const list = ['Ch | Source', '1 | Kick', '2 | Bass', 'Monitors', 'Mix | Who | Device | Wishes'];
    const reading = read([...list, `1 | Ann | wedge | ${wish}`]);
    expect(reading.mixes[0]?.wishes).toEqual([]);
    expect(reading.questions.map((it) => it.ask)).toContainEqual(expect.stringContaining(ask));
  });

  test('of two guitars the one that the adjective names is meant', () => {
    const list = [
      'Ch | Source',
      '1 | Guitarra española',
      '2 | Guitarra eléctrica',
      '3 | Voz Ana',
      'Monitores',
    ];
    const { inputs, mixes } = read([...list, '1 | Ana | cuña | española a tope, su voz']);
    expect(mixes[0]?.wishes[0]?.target).toEqual({ of: 'inputs', inputKeys: [inputs[0]?.key] });
    expect(mixes[0]?.wishes[0]?.amount).toBe('lots');
  });

  test('a number written twice is asked about, and may be put right', () => {
    const rows = ['Ch | Source', '1 | Kick', '2 | Snare', '2 | Hat', '4 | Bass'];
    expect(read(rows).inputs.map((input) => input.channel)).toEqual([1, 2, 2, 4]);
    expect(answered(rows, 'number', '3').inputs.map((input) => input.channel)).toEqual([1, 2, 3, 4]);
  });

  test('of several voices the engineer says which is the lead', () => {
    const rows = ['Ch | Source', '1 | Vox 1', '2 | Vox 2'];
    const second = read(rows).inputs[1]?.key ?? '';
    expect(kinds(read(rows))).toEqual(['lead vocal', 'vocal']);
    expect(kinds(answered(rows, 'lead vocal', second))).toEqual(['vocal', 'lead vocal']);
  });

  test('a wish for what is not in the list is asked about', () => {
    const rows = ['Ch | Source', '1 | Kick', '2 | Vox', 'Mix 1 - Noor: kick, lots of bagpipes'];
    expect(read(rows).mixes[0]?.wishes).toHaveLength(1);
    expect(answered(rows, 'wish', 'everything').mixes[0]?.wishes.at(-1)?.target).toEqual({
      of: 'everything',
    });
  });

  test('a mix left for the day may be told by the engineer', () => {
    const rows = ['Ch | Source', '1 | Kick', '2 | Vox', 'Mix 1 - Noor: tbd'];
    expect(read(rows).mixes[0]?.wishes).toEqual([]);
    expect(answered(rows, 'open mix', 'lots of kick').mixes[0]?.wishes[0]?.amount).toBe('lots');
  });

  test('bare numbers in a table of mixes have no scale: that is asked once', () => {
    const rows = ['Ch | Source | Mix 1 | Mix 2', '1 | Kick | 8 | 2', '2 | Vox | 5 | 10'];
    const scale = read(rows).questions.filter((it) => it.key.startsWith('scale@'));
    expect(scale.length).toBeLessThanOrEqual(2);
    expect(answered(rows, 'scale', 'order').mixes[0]?.wishes[0]?.amount).toBe('little');
  });
});

test('a word the engineer taught holds before all others', () => {
  const grid = gridOf('Ch | Source', '1 | Tin can', '2 | Kick');
  const reading = readRider(grid, {}, [{ words: 'tin can', of: 'source', kind: 'talkback' }]);
  expect(kinds(reading)).toEqual(['talkback', 'kick']);
  expect(reading.questions).toEqual([]);
});

test('the most urgent question comes first', () => {
  const weights = read(['Ch | Source', '1 | Vox 1', '2 | Vox 2', '2 | Zorbulator', '5 | Kick']).questions.map(
    (it) => it.weight,
  );
  expect(weights).toEqual([...weights].sort((a, b) => b - a));
  expect(weights.length).toBeGreaterThan(2);
});

test('what may stand in for a microphone is kept apart from the one that is asked for', () => {
  const reading = read([
    'Ch | Source | Mic',
    '1 | Kick | dynamic kick mic or large condenser',
    '2 | Snare | snare clip A / snare clip B',
    '3 | Vox | mic',
    '4 | Fiddle | condenser or dynamic',
  ]);
  const asked = reading.inputs.map(({ pickUpModel, alternatives, phantom }) => ({
    pickUpModel,
    alternatives,
    phantom,
  }));
  expect(asked).toEqual([
    { pickUpModel: 'dynamic kick mic', alternatives: ['large condenser'], phantom: 'not said' },
    { pickUpModel: 'snare clip A', alternatives: ['snare clip B'], phantom: 'not said' },
    { pickUpModel: '', alternatives: [], phantom: 'not said' },
    { pickUpModel: 'condenser', alternatives: ['dynamic'], phantom: 'needed' },
  ]);
  expect(reading.inputs.map(({ notes }) => notes)).toEqual(['', '', '', '']);
});

test('a surdo is percussion, but the floor tom of a kit where the rider is Portuguese', () => {
  const english = ['Ch | Source', '1 | Kick', '2 | Snare', '3 | Surdo'];
  const portuguese = ['Canal | Instrumento', '1 | Bumbo', '2 | Caixa', '3 | Surdo', '4 | Voz principal'];
  expect(kinds(read(english)).at(2)).toBe('percussion');
  expect(kinds(read(portuguese)).at(2)).toBe('floor tom');
});

test('a guitar of no said kind is a guess that says how sure it is', () => {
  const reading = read(['Ch | Source', '1 | Kick', '2 | Guitar']);
  expect(reading.inputs[1]?.kindConfidence).toBeLessThan(0.8);
  expect(reading.lines.at(-1)).toMatchObject({
    outcome: 'guessed',
    why: 'Input 2: taken for electric guitar, 75% sure.',
  });
});

describe('everybody is told to listen through something, and no mix is listed', () => {
  const rows = [
    'Line-up',
    'Mara - vocals',
    'Bea - keys',
    'Ch | Source',
    '1 | Kick',
    '2 | Vox',
    'All on in-ears.',
  ];
  const listenersOf = (reading: Reading) =>
    reading.mixes.map(({ listeners, deviceKind }) => `${listeners.join('+')} ${deviceKind}`);

  test('no mix is made up, and the line is a question', () => {
    const reading = read(rows);
    expect(reading.mixes).toEqual([]);
    expect(reading.lines.at(-1)?.outcome).toBe('question');
  });

  test.each([
    ['each', ['Mara in-ear', 'Bea in-ear']],
    ['one', [' in-ear']],
    ['none', []],
  ])('answered with %s there are %j', (value, mixes) => {
    expect(listenersOf(answered(rows, 'mixes for all', value))).toEqual(mixes);
  });

  test('a mix that is listed answers it', () => {
    const reading = read([...rows, 'Mix 1 Mara: kick']);
    expect(reading.questions.map(({ key }) => key).filter((key) => key.startsWith('mixes'))).toEqual([]);
    expect(listenersOf(reading)).toEqual(['Mara in-ear']);
  });
});

describe('two of a band with one first name', () => {
  const rows = [
    'Line-up',
    'Ana Kessel - lead vocals, guitar',
    'Ana Brodt - backing vocals',
    'Rik - bass',
    'Input list',
    '1 Kick',
    '2 Guitar Ana',
    '3 Vox Ana K',
    '4 Vox Ana B',
    '5 Vox Ana Brodt',
    'Monitors',
    'Mix 1 Ana Brodt: kick',
    'Mix 2 Ana: lots of Ana',
    'Mix 3 Ana K.: kick',
  ];
  const asText = (answers: Answers = {}) =>
    readRider({ name: 'r', form: 'text', sheets: [{ name: '', rows: rows.map((row) => [row]) }] }, answers);

  test('are two performers, told apart by their other names, by a letter of them or by what they play', () => {
    const reading = asText();
    expect(reading.performers.map(({ name }) => name)).toEqual(['Ana Kessel', 'Ana Brodt', 'Rik']);
    expect(reading.inputs.map(({ performer }) => performer)).toEqual([
      null,
      'Ana Kessel',
      'Ana Kessel',
      'Ana Brodt',
      'Ana Brodt',
    ]);
    expect(reading.mixes.map(({ listeners }) => listeners[0])).toEqual([
      'Ana Brodt',
      'Ana Kessel',
      'Ana Kessel',
    ]);
  });

  test('are two also where one of them has no other name', () => {
    const rows = [
      'Line-up',
      'Lea (vox)',
      'Lea M. (keys)',
      'Input list',
      '1 Kick',
      '2 Vox Lea',
      '3 Vox Lea M',
    ];
    const reading = readRider({
      name: 'r',
      form: 'text',
      sheets: [{ name: '', rows: rows.map((it) => [it]) }],
    });
    expect(reading.performers.map(({ name }) => name)).toEqual(['Lea', 'Lea M.']);
    expect(reading.inputs.map(({ performer }) => performer)).toEqual([null, 'Lea', 'Lea M.']);
  });

  test('are asked about where only the first name stands, and the answer holds for the whole line', () => {
    const asked = asText().questions.filter(({ key }) => key.startsWith('namesake@'));
    expect(asked.map(({ options }) => options.map(({ value }) => value))).toEqual([
      ['Ana Kessel', 'Ana Brodt'],
    ]);
    const reading = asText({ [asked[0]?.key ?? '']: 'Ana Brodt' });
    expect(reading.mixes[1]?.listeners).toEqual(['Ana Brodt']);
    const wished = reading.mixes[1]?.wishes[0]?.target;
    expect(wished).toEqual({ of: 'inputs', inputKeys: reading.inputs.slice(3).map(({ key }) => key) });
  });
});

describe('what a rider asks for besides sound', () => {
  const notesOf = (...rows: string[]) =>
    readRider({
      name: 'r',
      form: 'text',
      sheets: [{ name: '', rows: ['Input list', '1 Kick', '2 Vox', '', ...rows].map((row) => [row]) }],
    });

  test.each([
    ['Power: 2 x 16 A stage left, one at the drum riser.', 'power'],
    ['Strom: 3x Schuko 16A', 'power'],
    ['We need a riser 2x2 m, 40 cm high for the drums.', 'risers'],
    ['Drum riser 3x2m', 'risers'],
    ['Podest 2m x 1m für die Keys', 'risers'],
    ['Please give us a talkback from the monitor desk to the band.', 'talkback'],
    ['Talkback: please provide a switched mic to talk to all mixes', 'talkback'],
  ])('"%s" is a note about %s, no source and no mix', (row, about) => {
    const reading = notesOf(row);
    expect(reading.notes).toEqual([{ about, text: row, at: { sheet: 0, row: 4 } }]);
    expect(reading.inputs).toHaveLength(2);
    expect(reading.mixes).toEqual([]);
  });

  test.each(['3 Kick on the riser, mic', '3 Talkback mic MD', 'Mix 1 Mara: lots of talkback, please'])(
    'but "%s" is read',
    (row) => {
      const reading = notesOf(row);
      expect(reading.notes).toEqual([]);
      expect(reading.inputs.length + reading.mixes.length).toBe(3);
    },
  );
});
