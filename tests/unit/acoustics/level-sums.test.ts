import { describe, expect, test } from 'vitest';
import { levelAtDistanceDb, levelOfLineAtDistanceDb } from '../../../core/acoustics/distance-law.ts';
import {
  coherentSumDb,
  coherentSumOfTwoDb,
  equalSourcesDb,
  incoherentRestDb,
  incoherentSumDb,
} from '../../../core/acoustics/level-sums.ts';
import { loudspeakerLevelDbSpl } from '../../../core/acoustics/loudspeaker.ts';
import { type Case, checkReference, decimals, num, nums, printedAndExact } from '../../helpers/reference.ts';

const known = (row: Case) => ({
  levelDb: num(row.in, 'dB'),
  atM: num(row.in, 'at'),
  thenAtM: num(row.in, 'then_at'),
});
const four = { exactDecimals: 4 };

checkReference('level-sums', {
  'incoherent-sum': (row) => printedAndExact(row, 'dB', incoherentSumDb(nums(row.in, 'levels')), four),
  'incoherent-difference-table': (row) => {
    const added = incoherentSumDb([0, -num(row.in, 'difference_dB')]);
    return printedAndExact(row, 'add_to_higher_dB', added, four);
  },
  'incoherent-difference': (row) => {
    const got = incoherentRestDb(num(row.in, 'total'), num(row.in, 'one'));
    return [{ what: 'the other one', got, want: row.out.other_dB, within: decimals(4) }];
  },
  'coherent-sum-in-phase': (row) => printedAndExact(row, 'dB', coherentSumDb(nums(row.in, 'levels')), four),
  'coherent-difference-table': (row) => {
    const lower = -num(row.in, 'difference_dB');
    return [
      {
        what: 'in phase',
        got: coherentSumDb([0, lower]),
        want: row.out.in_phase_add_dB,
        within: decimals(4),
      },
      {
        what: 'opposite phase',
        got: coherentSumOfTwoDb(0, lower, 180),
        want: row.out.opposite_phase_add_dB,
        within: decimals(4),
      },
    ];
  },
  'coherent-sum-with-phase': (row) => {
    const [first = Number.NaN, second = Number.NaN] = nums(row.in, 'levels');
    return printedAndExact(row, 'dB', coherentSumOfTwoDb(first, second, num(row.in, 'phase_degrees')), four);
  },
  'n-equal-sources': (row) => {
    const count = num(row.in, 'n');
    const added = equalSourcesDb(count);
    const equal = Array.from({ length: count }, () => 0);
    const { incoherent_add_dB: incoherent, coherent_add_dB: coherent } = row.out;
    return [
      { what: 'incoherent', got: added.incoherentDb, want: incoherent, within: decimals(4) },
      { what: 'coherent', got: added.coherentDb, want: coherent, within: decimals(4) },
      { what: 'incoherent, summed', got: incoherentSumDb(equal), want: incoherent, within: decimals(4) },
      { what: 'coherent, summed', got: coherentSumDb(equal), want: coherent, within: decimals(4) },
    ];
  },
  'point-source-distance': (row) => printedAndExact(row, 'dB', levelAtDistanceDb(known(row)), four),
  'line-source-distance': (row) => printedAndExact(row, 'dB', levelOfLineAtDistanceDb(known(row)), four),
  'loudspeaker-level': (row) => {
    const level = loudspeakerLevelDbSpl({
      sensitivityDbSpl: num(row.in, 'sensitivity_dB_1W_1m'),
      powerW: num(row.in, 'watts'),
      distanceM: num(row.in, 'metres'),
    });
    return printedAndExact(row, 'dB', level, four);
  },
});

describe('what is left of a sum', () => {
  test.each([
    { totalDb: 90, oneDb: 90, restDb: -Infinity },
    { totalDb: 90, oneDb: -Infinity, restDb: 90 },
    { totalDb: -Infinity, oneDb: -Infinity, restDb: -Infinity },
    { totalDb: 90, oneDb: 91, restDb: null },
  ])('$totalDb dB without $oneDb dB is $restDb dB', ({ totalDb, oneDb, restDb }) => {
    expect(incoherentRestDb(totalDb, oneDb)).toBe(restDb);
  });

  test('of nothing at all is silence', () => {
    expect(incoherentSumDb([])).toBe(-Infinity);
    expect(coherentSumDb([-Infinity, -Infinity])).toBe(-Infinity);
    expect(coherentSumOfTwoDb(-Infinity, -Infinity, 0)).toBe(-Infinity);
  });
});
