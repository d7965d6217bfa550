import { describe, expect, test } from 'vitest';
import { lineReaches } from '../../../core/derive/box-reach.ts';
import { deriveAct } from '../../../core/derive/derive-act.ts';
import { nearPairs } from '../../../core/derive/stage-pickup.ts';
import { ActDraft } from '../../helpers/clean-act.ts';
import { sheetOf } from '../../helpers/sheet-of.ts';

/** The clean act with one microphone and one wedge on its plot, and nothing else. */
function stage(microphone: Record<string, unknown>, wedge: Record<string, unknown> = {}) {
  const sheet = sheetOf(new ActDraft().rows);
  const source = sheet.sources.find((it) => it.pickUp === 'mic');
  const mix = sheet.mixes.find((it) => it.deviceKind === 'wedge');
  if (!source || !mix) throw new Error('The clean act has a microphone and a wedge.');
  return {
    ...sheet,
    performers: [],
    sources: [
      { ...source, xM: 0, yM: 2, pattern: 'cardioid' as const, aimDeg: 0, performerId: null, ...microphone },
    ],
    mixes: [{ ...mix, xM: 0, yM: 1, ...wedge }],
  };
}

describe('what a microphone takes of a wedge near it', () => {
  // Cardioid 0.5 + 0.5 cos: 6.02 dB down at 90 degrees, nothing at 180. Source: HyperPhysics, as in core/acoustics.
  test.each<[what: string, microphone: Record<string, unknown>, offDeg: number, responseDb: number]>([
    ['straight behind a cardioid nothing', {}, 180, -Infinity],
    ['at its side half of it', { aimDeg: 90 }, 90, -6.0206],
    ['at its front all of it', { aimDeg: 180 }, 0, 0],
    ['a metre higher and level, from 135 degrees', { heightM: 1 }, 135, -16.687],
  ])('%s', (_, microphone, offDeg, responseDb) => {
    const [pair] = nearPairs(stage(microphone));
    expect(pair?.pickup?.offAxisDegrees).toBeCloseTo(offDeg, 6);
    if (responseDb === -Infinity) expect(pair?.pickup?.responseDb).toBeLessThan(-300);
    else expect(pair?.pickup?.responseDb).toBeCloseTo(responseDb, 2);
  });

  test.each<[what: string, microphone: Record<string, unknown>]>([
    ['its pattern', { pattern: null }],
    ['its aim', { aimDeg: null }],
  ])('nobody can tell without %s', (_, microphone) => {
    expect(nearPairs(stage(microphone))).toMatchObject([{ apartM: 1, pickup: null }]);
  });

  test.each<[what: string, microphone: Record<string, unknown>, wedge: Record<string, unknown>]>([
    ['farther than 3 m', { yM: 4.1 }, {}],
    ['a line without a microphone', { pickUp: 'di', kind: 'bass di' }, {}],
    ['not heard here', { audience: 'not here' }, {}],
    ['a mix in the ears', {}, { deviceKind: 'in-ear' }],
    ['a wedge without a place', {}, { xM: null }],
    ['a microphone without a place', { yM: null }, {}],
  ])('is not asked for: %s', (_, microphone, wedge) => {
    expect(nearPairs(stage(microphone, wedge))).toEqual([]);
  });
});

describe('whether the cables of a box reach a line', () => {
  const reach = (microphone: Record<string, unknown>, box: Record<string, unknown>) => {
    const sheet = stage(microphone);
    const [first] = sheet.boxes;
    if (!first) throw new Error('The clean act has a box.');
    const placed = { ...sheet, boxes: sheet.boxes.map((it) => ({ ...it, xM: 3, yM: 6, ...box })) };
    return lineReaches(placed, deriveAct(placed).plan);
  };

  // A right triangle of 3, 4 and 5 (Euclid).
  test.each<[what: string, microphone: Record<string, unknown>, box: Record<string, unknown>, found: object]>(
    [
      ['5 m away with cables of 6 m: yes', {}, { reachM: 6 }, { apartM: 5, reaches: true }],
      ['with cables of exactly 5 m: yes', {}, { reachM: 5 }, { apartM: 5, reaches: true }],
      ['with cables of 4.9 m: no', {}, { reachM: 4.9 }, { apartM: 5, reaches: false }],
      ['nobody said a reach', {}, { reachM: null }, { apartM: 5, reaches: null }],
      ['the line has no place', { xM: null }, { reachM: 6 }, { apartM: null, reaches: null }],
    ],
  )('%s', (_, microphone, box, found) => {
    expect(reach(microphone, box)).toMatchObject([found]);
  });
});

describe('a line that has no place of its own stands where its performer does', () => {
  const codesOf = (draft: ActDraft) => deriveAct(sheetOf(draft.rows)).findings.map(({ code }) => code);

  test('for the cables of a box', () => {
    const far = new ActDraft().set('performers', 'Noor', { xM: 20, yM: 4 });
    expect(codesOf(far)).toContain('cable-does-not-reach');
    expect(codesOf(far.set('performers', 'Noor', { xM: 5 }))).not.toContain('cable-does-not-reach');
  });

  test('for the wedge before its microphone', () => {
    const beside = new ActDraft().set('sources', 'vocal', { pattern: 'cardioid', aimDeg: 90 });
    expect(codesOf(beside)).toContain('wedge-off-the-null');
    expect(codesOf(beside.set('sources', 'vocal', { aimDeg: 0 }))).not.toContain('wedge-off-the-null');
  });
});
