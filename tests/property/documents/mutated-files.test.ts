import { readdirSync, readFileSync } from 'node:fs';
import fc from 'fast-check';
import { strToU8 } from 'fflate';
import { expect, test } from 'vitest';
import { Grid } from '../../../core/rider/grid.ts';
import { readDocument } from '../../../electron/documents/read-document.ts';
import { isZip, type Mutation, mutate, mutateParts, mutationKinds } from '../../helpers/mutate-files.ts';

/** How many mutated files are read; the nightly run sets more. */
const runs = Number(process.env.FOLDBOOK_FUZZ_CASES ?? 300);

const folder = new URL('../../fixtures/documents/', import.meta.url);
const samples = [
  ...readdirSync(folder)
    .filter((name) => /\.(xlsx|pdf|docx)$/.test(name))
    .map((name) => readFileSync(new URL(name, folder))),
  Buffer.from('ch;source;mic\n1;Kick;dyn\n2;"Snare; top";dyn\n3;Hat;cond\n'),
  Buffer.from('ch\tsource\n1\tKick\n2\tSnare\n3\tHat\n', 'utf16le'),
  Buffer.from('Hi,\n\n1  Kick in    dyn\n2  Snare top  dyn\n\nAna wants lots of vocals.\n'),
];

const mutation: fc.Arbitrary<Mutation> = fc.record({
  kind: fc.constantFrom(...mutationKinds),
  /** Where, as a part of the whole. */
  at: fc.double({ min: 0, max: 1, noNaN: true }),
  bytes: fc.uint8Array({ minLength: 1, maxLength: 40 }),
  length: fc.integer({ min: 1, max: 400 }),
});

async function expectAnswer(content: Uint8Array): Promise<void> {
  const outcome = await readDocument('rider', content);
  if (outcome.ok) Grid.parse(outcome.value);
  else {
    expect(outcome.problem.what).toMatch(/^“rider” .*\.$/s);
    expect(outcome.problem.todo).toMatch(/\.$/);
  }
}

test('a damaged file of any form is read as far as it goes or refused with a sentence', async () => {
  const file = fc.constantFrom(...samples);
  await fc.assert(
    fc.asyncProperty(
      file,
      fc.array(mutation, { minLength: 1, maxLength: 6 }),
      fc.boolean(),
      async (content, changes, inside) => {
        const mutated =
          inside && isZip(content) ? mutateParts(content, changes) : changes.reduce(mutate, content);
        await expectAnswer(mutated);
      },
    ),
    { numRuns: runs },
  );
}, 600_000);

test('any bytes at all get an answer', async () => {
  await fc.assert(fc.asyncProperty(fc.uint8Array({ maxLength: 3_000 }), expectAnswer), { numRuns: runs });
}, 600_000);

/** Text of a file as rows of cells, whatever the delimiter: nothing but white space and delimiters may go. */
const told = (text: string): string => text.normalize('NFC').replace(/[\s,;|"\t]/g, '');

test('no letter of a text is lost on its way into the grid', async () => {
  const line = fc.string({ unit: fc.constantFrom(...'abcÄß1 2\t;,|"-.'), maxLength: 40 });
  await fc.assert(
    fc.asyncProperty(fc.array(line, { minLength: 1, maxLength: 12 }), async (lines) => {
      const text = lines.join('\n');
      fc.pre(/[\p{L}\p{N}]/u.test(text));
      const outcome = await readDocument('rider', strToU8(text));
      const cells = outcome.ok ? outcome.value.sheets.flatMap((sheet) => sheet.rows.flat()) : [];
      expect(told(cells.join(''))).toBe(told(text));
    }),
    { numRuns: runs },
  );
}, 600_000);
