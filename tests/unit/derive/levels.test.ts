import { describe, expect, test } from 'vitest';
import { deriveAct } from '../../../core/derive/derive-act.ts';
import { casesOfKind, num, numOr, nums } from '../../helpers/reference.ts';
import { sheetOf, type TestRow } from '../../helpers/sheet-of.ts';

/** The expected sum of a mix of sources at these start levels. */
function mixOf(
  levelsDb: readonly number[],
  rig: TestRow = {},
  extra: { copies?: TestRow[]; decisions?: TestRow[] } = {},
) {
  const derived = deriveAct(
    sheetOf({
      rig: { channelCount: 1024, ...rig },
      sources: levelsDb.map((_, at) => ({ id: `source ${at}` })),
      mixes: [{ id: 'mix', deviceKind: 'wedge' }],
      wishes: levelsDb.map((levelDb, at) => ({
        id: `wish ${at}`,
        mixId: 'mix',
        sourceId: `source ${at}`,
        levelDb,
      })),
      ...extra,
    }),
  );
  return { level: derived.levels[0], findings: derived.findings };
}

describe('the expected sum of a mix', () => {
  // Only differences count, so the loudest of each case starts at unity.
  test.each(casesOfKind('level-sums', 'incoherent-sum'))(
    'levels $in.levels give $out.dB dB ($from)',
    (row) => {
      const levels = nums(row.in, 'levels');
      const loudest = Math.max(...levels);
      const { level } = mixOf(levels.map((db) => db - loudest));
      expect(level?.sumDb).toBeCloseTo(num(row, 'exact') - loudest, 3);
      expect(Math.abs((level?.sumDb ?? 0) + loudest - num(row.out, 'dB'))).toBeLessThanOrEqual(
        num(row, 'tol'),
      );
    },
  );

  test.each(casesOfKind('level-sums', 'incoherent-difference-table'))(
    'two sources $in.difference_dB dB apart add $out.add_to_higher_dB dB to the higher ($from)',
    (row) => {
      const { level } = mixOf([0, -num(row.in, 'difference_dB')]);
      expect(level?.sumDb).toBeCloseTo(numOr(row, 'exact', num(row.out, 'add_to_higher_dB')), 3);
    },
  );

  test.each(casesOfKind('level-sums', 'n-equal-sources'))('$in.n sources at unity ($from)', (row) => {
    const { level } = mixOf(Array.from({ length: num(row.in, 'n') }, () => 0));
    expect(level?.sumDb).toBeCloseTo(num(row.out, 'incoherent_add_dB'), 3);
  });

  test.each(
    casesOfKind('level-sums', 'coherent-difference-table').filter(
      (row) => num(row.in, 'difference_dB') === 0,
    ),
  )('two copies of one source add $out.in_phase_add_dB dB ($from)', (row) => {
    const second = {
      id: 'second',
      about: 'second feed',
      mixId: 'mix',
      sourceId: 'source 0',
      purpose: 'parallel',
    };
    const { level } = mixOf(
      [0],
      {},
      {
        copies: [{ id: 'copy', sourceId: 'source 0', purpose: 'parallel' }],
        decisions: [second],
      },
    );
    expect(level?.sumDb).toBeCloseTo(num(row.out, 'in_phase_add_dB'), 3);
  });

  test('three copies of one source add 9.5 dB, twenty times the logarithm of three', () => {
    const second = (purpose: string) => ({
      id: purpose,
      about: 'second feed',
      mixId: 'mix',
      sourceId: 'source 0',
      purpose,
    });
    const { level } = mixOf(
      [0],
      {},
      {
        copies: ['parallel', 'in-ears'].map((purpose) => ({ id: purpose, sourceId: 'source 0', purpose })),
        decisions: [second('parallel'), second('in-ears')],
      },
    );
    expect(level?.sumDb).toBeCloseTo(20 * Math.log10(3), 6);
  });

  test('an empty mix has no sum', () => {
    expect(mixOf([]).level).toMatchObject({ sumDb: null, loweredByDb: 0 });
  });

  test.each([
    // Every source arrives at -18 dBFS, so 9 dB of headroom leave 9 dB for the sum: seven sources at unity.
    { sources: 7, rig: {}, loweredByDb: 0 },
    { sources: 8, rig: {}, loweredByDb: 9 - 10 * Math.log10(8) },
    { sources: 16, rig: {}, loweredByDb: 9 - 10 * Math.log10(16) },
    { sources: 2, rig: { headroomDb: 18 }, loweredByDb: -10 * Math.log10(2) },
    { sources: 1, rig: { headroomDb: 0, targetLevelDbfs: 0 }, loweredByDb: 0 },
    { sources: 4, rig: { headroomDb: 0, targetLevelDbfs: 0 }, loweredByDb: -10 * Math.log10(4) },
  ])(
    '$sources sources at unity on a rig with $rig start $loweredByDb dB lower',
    ({ sources, rig, loweredByDb }) => {
      const { level } = mixOf(
        Array.from({ length: sources }, () => 0),
        rig,
      );
      expect(level?.loweredByDb).toBeCloseTo(loweredByDb, 6);
    },
  );
});

describe('the effect of two copies in one mix, as the finding says it', () => {
  const effectOf = (trimDb: number, latencyMs: number, polarityInverted = false) =>
    mixOf(
      [0],
      {},
      {
        copies: [
          { id: 'copy', sourceId: 'source 0', purpose: 'parallel', trimDb, latencyMs, polarityInverted },
        ],
        decisions: [
          { id: 'second', about: 'second feed', mixId: 'mix', sourceId: 'source 0', purpose: 'parallel' },
        ],
      },
    ).findings.find((finding) => finding.code === 'two-copies-in-one-mix')?.cause;

  test.each(casesOfKind('level-sums', 'coherent-difference-table'))(
    'a copy trimmed $in.difference_dB dB lower adds $out.in_phase_add_dB dB ($from)',
    (row) => {
      const add = Math.round(num(row.out, 'in_phase_add_dB') * 10) / 10;
      const trimDb = -num(row.in, 'difference_dB');
      if (trimDb < -60) throw new Error('A copy cannot be trimmed so far.');
      expect(effectOf(trimDb, 0)).toContain(`${add > 0 ? '+' : ''}${add} dB against one`);
    },
  );

  test.each(casesOfKind('comb-filter', 'comb-frequencies'))(
    'a copy $in.delay_ms ms late has its first notch at $out.first_null_Hz Hz ($from)',
    (row) => {
      expect(effectOf(0, num(row.in, 'delay_ms'))).toContain(
        `${Math.round(num(row.out, 'first_null_Hz'))} Hz`,
      );
    },
  );

  test('a copy of opposite polarity takes the source away', () => {
    expect(effectOf(0, 0, true)).toContain('they cancel each other');
  });
});
