import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Grid } from '../../../core/rider/grid.ts';
import { NeutralReading, neutralReading } from '../../../core/rider/neutral.ts';
import { readRider } from '../../../core/rider/read-rider.ts';
import { riderGrid, riderNames } from '../../helpers/rider-corpus.ts';

/** Words that riders are made of, mixed with anything: most odd grids come from odd arrangements of usual words. */
const usual = fc.constantFrom(
  ...[
    'Ch',
    'Source',
    'Mic',
    '48V',
    'Kick',
    'Snare top',
    'OH L/R',
    'Keys',
    'Vox Noor',
    'Mix 1',
    'IEM stereo',
    'wedge',
    '1',
    '13/14',
    '7.',
    'x',
    '+++',
  ],
  ...[
    'lots of me',
    'Mix 2: Noor - wedge: kick loud, no keys',
    'same as mix 1',
    'Monitors',
    'DRUMS',
    '- Bass DI',
    'Noor (vox)',
    'tbd',
    '80 %',
    '-6 dB',
    '',
  ],
  ...[
    'Kanal',
    'Gesang',
    'Retours',
    'Voz principal',
    'everything except click',
    '1. Kick – dynamic',
    'Noor needs lots of herself',
    '🎸',
    'שירה',
    '---',
  ],
);
const cell = fc.oneof(
  { weight: 4, arbitrary: usual },
  fc.string({ maxLength: 30, unit: 'grapheme' }),
  fc.string({ maxLength: 12, unit: 'binary' }),
);
const grid: fc.Arbitrary<Grid> = fc
  .array(fc.array(fc.array(cell, { maxLength: 6 }), { maxLength: 14 }), { maxLength: 2 })
  .map((sheets) => ({
    name: 'rider',
    form: 'csv',
    sheets: sheets.map((rows, at) => ({ name: `Sheet ${at}`, rows })),
  }));

const seen = /[^\s\u00ad\u200b-\u200f\u2028-\u202e\u2060-\u2069\ufeff\p{Variation_Selector}]/u;

function linesThatShow(it: Grid): string[] {
  return it.sheets.flatMap((sheet, at) =>
    sheet.rows.flatMap((row, line) => (row.some((text) => seen.test(text)) ? [`${at}:${line}`] : [])),
  );
}

test('whatever the grid, no line is lost and none is told twice', () => {
  fc.assert(
    fc.property(grid, (it) => {
      const reading = readRider(it);
      expect(reading.lines.map(({ at }) => `${at.sheet}:${at.row}`)).toEqual(linesThatShow(it));
      const known = new Set(reading.questions.map((question) => question.key));
      for (const line of reading.lines) {
        expect(line.why).not.toBe('');
        expect(line.questionKeys.every((key) => known.has(key))).toBe(true);
        expect(line.outcome === 'question').toBe(line.questionKeys.length > 0);
      }
    }),
    { numRuns: 400 },
  );
});

test('whatever the grid, keys are unique and what they name is there', () => {
  fc.assert(
    fc.property(grid, (it) => {
      const { inputs, mixes, performers, questions } = readRider(it);
      const inputKeys = new Set(inputs.map((input) => input.key));
      const mixKeys = new Set(mixes.map((mix) => mix.key));
      const names = new Set(performers.map((performer) => performer.name));
      expect(inputKeys.size).toBe(inputs.length);
      expect(mixKeys.size).toBe(mixes.length);
      expect(new Set(questions.map((question) => question.key)).size).toBe(questions.length);
      for (const input of inputs) {
        const pair = inputs.find((other) => other.key === input.pairKey);
        expect(input.pairKey === null || pair?.pairKey === input.key).toBe(true);
        expect(input.performer === null || names.has(input.performer)).toBe(true);
      }
      for (const mix of mixes) {
        expect(mix.listeners.every((name) => names.has(name))).toBe(true);
        for (const { target } of mix.wishes) {
          if (target.of === 'inputs') expect(target.inputKeys.every((key) => inputKeys.has(key))).toBe(true);
          if (target.of === 'mix') expect(mixKeys.has(target.mixKey)).toBe(true);
        }
      }
      for (const question of questions) expect(question.options.length).toBeGreaterThan(1);
    }),
    { numRuns: 400 },
  );
});

test('reading twice gives the same, and the neutral shape always fits its schema', () => {
  fc.assert(
    fc.property(grid, (it) => {
      const reading = readRider(it);
      expect(readRider(structuredClone(it))).toEqual(reading);
      expect(NeutralReading.safeParse(neutralReading(reading)).success).toBe(true);
    }),
    { numRuns: 200 },
  );
});

test('an answer takes its question away', () => {
  fc.assert(
    fc.property(grid, fc.nat(), (it, pick) => {
      for (const question of readRider(it).questions.slice(0, 3)) {
        const option = question.options[pick % question.options.length];
        const after = readRider(it, { [question.key]: option?.value ?? '' });
        expect(after.questions.map((other) => other.key)).not.toContain(question.key);
      }
    }),
    { numRuns: 200 },
  );
});

test('the first option is what the reading already uses', () => {
  for (const name of riderNames()) {
    const it = riderGrid(name);
    const reading = readRider(it);
    const answers = Object.fromEntries(
      reading.questions.map((question) => [question.key, question.options[0]?.value ?? '']),
    );
    const after = neutralReading(readRider(it, answers));
    expect({ ...after, open: [] }, name).toEqual({ ...neutralReading(reading), open: [] });
  }
});

/** Names that no table knows: other scripts, made-up words, very long ones. */
const unknownName = fc.oneof(
  fc.constantFrom('غيتار', 'שירה', '太鼓', 'Zwirbelfant', 'Kvorpl Ümmt', 'é', `${'wumm '.repeat(40)}`),
  fc.stringMatching(/^[B-Z][a-z]{3,12}$/),
  fc.integer({ min: 1600, max: 10_000 }).map((length) => 'w'.repeat(length)),
);

test('a numbered line among numbered lines is an input, whatever its words are', () => {
  const marks = fc.constantFrom('', '.', ')', ':', ' -');
  fc.assert(
    fc.property(unknownName, marks, fc.boolean(), (name, mark, titled) => {
      const names = ['Kick', 'Snare', name, 'Bass DI', 'Lead vox'];
      const rows = names.map((text, at) => [`${at + 1}${mark} ${text}`]);
      const it: Grid = {
        name: 'rider',
        form: 'text',
        sheets: [{ name: '', rows: titled ? [['Input list'], ...rows] : rows }],
      };
      const { inputs, lines } = readRider(it);
      const line = lines.at(-3);
      expect(inputs.map((input) => input.channel)).toEqual(expect.arrayContaining([1, 2, 3, 4, 5]));
      expect(line?.inputKeys.length).toBeGreaterThan(0);
    }),
    { numRuns: 200 },
  );
});
