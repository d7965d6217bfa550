import { describe, expect, test } from 'vitest';
import { deriveBetween } from '../../../core/derive/between-acts.ts';
import { betweenFindings } from '../../../core/derive/findings/between.ts';
import { ActDraft } from '../../helpers/clean-act.ts';
import { sheetOf } from '../../helpers/sheet-of.ts';

type Edit = (act: ActDraft) => unknown;
const asItIs: Edit = () => undefined;

/** What is found between two acts that are both like the clean one, but for one edit each. */
function between(before: Edit, next: Edit) {
  const drafts = [before, next].map((edit) => {
    const draft = new ActDraft();
    edit(draft);
    return sheetOf(draft.rows);
  });
  const [first, second] = drafts;
  if (!first || !second) throw new Error('Two acts are needed.');
  return deriveBetween(first, second);
}

const codes = (before: Edit, next: Edit) => between(before, next).findings.map((finding) => finding.code);
const onlyLittle: Edit = (act) =>
  act.set('wishes', 'wish 1', { amount: 'little' }).set('wishes', 'wish 2', { amount: 'little' });
const line: Edit = (act) => act.set('sources', 'vocal', { pickUp: 'line', expectedDbu: 4 });

describe('between two acts', () => {
  test('the same act again changes nothing', () => {
    expect(between(asItIs, asItIs).findings).toEqual([]);
  });

  test('every kind of finding between acts has a case here', () => {
    const tested = cases.map(([code]) => code);
    expect(betweenFindings.map((rule) => rule.code).toSorted()).toEqual(tested.toSorted());
  });

  const cases: [string, Edit, Edit, Edit, string][] = [
    [
      'phantom-left-from-before',
      (act) => act.set('sources', 'vocal', { phantom: 'needed' }),
      (act) => act.set('sources', 'vocal', { phantom: 'harmful' }),
      (act) => act.set('sources', 'vocal', { phantom: 'not needed' }),
      'A1',
    ],
    [
      'gain-left-from-before',
      (act) => act.set('sources', 'vocal', { gainDb: 45 }),
      line,
      (act) => act.set('sources', 'vocal', { gainDb: 40 }),
      'stands at +45 dB',
    ],
    ['louder-on-recall', onlyLittle, asItIs, onlyLittle, 'by 12 dB'],
    [
      'opens-on-recall',
      (act) => act.remove('mixes', 'Tam ears').keepFirst('wishes', 2).remove('listeners', 'listener 2'),
      asItIs,
      (act) => act.remove('mixes', 'Tam ears').keepFirst('wishes', 2).remove('listeners', 'listener 2'),
      'output 2',
    ],
    [
      'pack-handed-straight-on',
      (act) => act.act({ startMinute: 600, endMinute: 640 }),
      (act) => act.act({ startMinute: 645, endMinute: 700 }),
      (act) => act.act({ startMinute: 660, endMinute: 700 }),
      'only 5 minutes',
    ],
  ];

  test.each(cases)('%s appears, and goes away', (code, before, next, mended, says) => {
    const { findings } = between(before, next);
    const found = findings.find((finding) => finding.code === code);
    expect(found?.cause).toContain(says);
    expect(`${found?.cause} ${found?.remedy}`).not.toMatch(/[{}]|undefined|null|NaN/);
    expect(found?.subjects.length).toBeGreaterThan(0);
    expect(codes(before, mended)).not.toContain(code);
  });

  test('every output of the next act is listed with what it carried before', () => {
    const { outputs } = between(onlyLittle, asItIs);
    expect(outputs.map((it) => [it.outputId, it.mixId])).toEqual([
      ['output 1', 'Noor wedge'],
      ['output 2', 'Tam ears'],
      ['output 3', 'Tam ears'],
    ]);
    const [wedge] = outputs;
    expect((wedge?.toDb ?? 0) - (wedge?.fromDb ?? 0)).toBeCloseTo(12, 6);
  });
});
