import fc from 'fast-check';
import { expect, test } from 'vitest';
import { deriveAct } from '../../../core/derive/derive-act.ts';
import { jsonPieces } from '../../../electron/command-line/print-json.ts';
import { ActDraft } from '../../helpers/clean-act.ts';
import { sheetOf } from '../../helpers/sheet-of.ts';

const text = (value: unknown) => [...jsonPieces(value)].join('');

test.each<[string, unknown]>([
  ['nothing', null],
  ['a name with a line break and quotes', { name: 'kick\n"in"' }],
  ['empty lists and rows', { acts: [], act: {}, deep: [[[[[[[], {}]]]]]] }],
  ['what is not told', { a: undefined, b: [undefined, 1] }],
  ['what follows from an act', { acts: [{ derived: deriveAct(sheetOf(new ActDraft().rows)) }] }],
])('%s is printed as JSON, piece by piece', (_, value) => {
  expect(text(value)).toBe(JSON.stringify(value, null, 1));
});

test('whatever is printed in pieces is the same text', () => {
  fc.assert(
    fc.property(fc.jsonValue({ maxDepth: 8 }), (value) => {
      expect(text(value)).toBe(JSON.stringify(value, null, 1));
    }),
  );
});
