import { describe, expect, test } from 'vitest';
import { deriveAct } from '../../../core/derive/derive-act.ts';
import { findingRules } from '../../../core/derive/findings/table.ts';
import { ActDraft } from '../../helpers/clean-act.ts';
import { sheetOf } from '../../helpers/sheet-of.ts';
import { type FaultCase, faultCases } from './fault-cases.ts';

function codesOf(draft: ActDraft): string[] {
  return deriveAct(sheetOf(draft.rows)).findings.map((finding) => finding.code);
}

describe('findings', () => {
  test('an act without a fault has no finding', () => {
    expect(deriveAct(sheetOf(new ActDraft().rows)).findings).toEqual([]);
  });

  test('every kind of finding has a case here, and every case a kind', () => {
    expect(faultCases.map((it) => it.code).toSorted()).toEqual(
      findingRules.map((rule) => rule.code).toSorted(),
    );
  });

  test('there are at least 45 kinds', () => {
    expect(new Set(findingRules.map((rule) => rule.code)).size).toBeGreaterThanOrEqual(45);
  });

  test.each(faultCases)('$code: $fault, until $mended', (it: FaultCase) => {
    const draft = new ActDraft();
    it.break(draft);
    const derived = deriveAct(sheetOf(draft.rows));
    const found = derived.findings.filter((finding) => finding.code === it.code);
    expect(found, derived.findings.map((finding) => finding.cause).join('\n')).not.toEqual([]);
    for (const finding of found) {
      expect(finding.subjects).not.toEqual([]);
      // No brace is left open, no name missing, no figure without meaning.
      expect(`${finding.cause} ${finding.remedy}`).not.toMatch(
        /[{}]|undefined|null|NaN|Infinity|not in the show;? ?"/,
      );
      expect(finding.cause).toMatch(/^["A-Z0-9].*\.$/);
      expect(finding.remedy).toMatch(/^["A-Z0-9].*\.$/);
    }
    if (it.says)
      expect(found.map((finding) => `${finding.cause} ${finding.remedy}`).join(' ')).toContain(it.says);
    it.mend(draft);
    expect(codesOf(draft)).not.toContain(it.code);
  });

  test('the most serious come first', () => {
    const draft = new ActDraft()
      .remove('listeners', 'listener 1')
      .add('mixes', { id: 'empty', deviceKind: null })
      .set('sources', 'vocal', { riderLine: 1 })
      .set('sources', 'spare', { riderLine: 1 });
    const severities = deriveAct(sheetOf(draft.rows)).findings.map((finding) => finding.severity);
    const rank = { 'must fix': 0, 'look again': 1, 'know this': 2 };
    expect(new Set(severities).size).toBe(3);
    expect(severities.map((severity) => rank[severity])).toEqual(
      severities.map((severity) => rank[severity]).toSorted(),
    );
  });
});
