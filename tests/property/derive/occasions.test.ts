import fc from 'fast-check';
import { expect, test, vi } from 'vitest';
import { factsOfAct } from '../../../core/derive/derive-act.ts';
import { occasionsOf } from '../../../core/derive/findings/occasions.ts';
import { findingRules } from '../../../core/derive/findings/table.ts';
import { sheetOf, type TestRow, type TestRows } from '../../helpers/sheet-of.ts';
import { anyActRows, patienceMs } from './any-act.ts';

vi.setConfig({ testTimeout: patienceMs });

const tables = ['decisions', 'copies', 'alternates', 'listeners', 'performers', 'cueOutputs'] as const;

/** Fields that most acts leave as they are, with the value that they then have. */
const plain: Partial<Record<keyof TestRows, TestRow>> = {
  sources: {
    pairSourceId: null,
    audience: 'front of house and monitors',
    returnsMixId: null,
    returnsCueOutputId: null,
    phantom: 'not needed',
  },
  mixes: { mixedAt: 'house desk' },
  devices: { outputId: null, secondOutputId: null, frequencyMhz: null, limiter: 'in the receiver' },
};

/** Acts that lack whole kinds of rows and of values, so that many rules have nothing to be about. */
const plainerActs = fc
  .tuple(anyActRows(), fc.subarray([...tables]), fc.subarray(Object.keys(plain) as (keyof TestRows)[]))
  .map(([rows, empty, plainTables]) =>
    sheetOf({
      ...rows,
      ...Object.fromEntries(empty.map((table) => [table, []])),
      ...Object.fromEntries(
        plainTables.map((table) => [
          table,
          (rows[table] as TestRow[]).map((row) => ({ ...row, ...plain[table] })),
        ]),
      ),
    }),
  );

test('a rule that is not asked, because the act has nothing that it is about, would have found nothing', () => {
  const passedOver = new Set<string>();
  fc.assert(
    fc.property(plainerActs, (sheet) => {
      const facts = factsOfAct(sheet);
      const there = occasionsOf(facts);
      for (const rule of findingRules) {
        if (!rule.when || rule.when.some((occasion) => there[occasion])) continue;
        passedOver.add(rule.code);
        expect(rule.find(facts), rule.code).toEqual([]);
      }
    }),
    { numRuns: 600 },
  );
  expect([...passedOver].toSorted()).toEqual(
    findingRules
      .filter((rule) => rule.when)
      .map((rule) => rule.code)
      .toSorted(),
  );
});
