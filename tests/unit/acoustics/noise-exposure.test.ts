import { describe, expect, test } from 'vitest';
import {
  euExposureValues,
  euValuesReached,
  exposureOfLex8hPa2h,
  lex8hDba,
  lex8hOfExposureDba,
  soundExposurePa2h,
} from '../../../core/acoustics/daily-exposure.ts';
import {
  dosePercent,
  exposureCriteria,
  permittedHours,
  referenceHours,
  timeWeightedAverageDba,
} from '../../../core/acoustics/exposure-dose.ts';
import { dbSplOfPascals } from '../../../core/acoustics/level-units.ts';
import {
  exposurePoints,
  lexWeeklyDba,
  lexWeeklyOfPointsDba,
  weeklyAllowancePercent,
  weeklyHoursAtLevel,
} from '../../../core/acoustics/weekly-exposure.ts';
import {
  type Case,
  type Check,
  checkReference,
  decimals,
  type Fields,
  fieldsOf,
  num,
  nums,
  printedAndExact,
  word,
} from '../../helpers/reference.ts';

const { niosh, 'osha action': oshaAction, 'osha permissible': oshaPermissible } = exposureCriteria;
/** The journal's rows and Table G-16a count every level. */
const oshaOfAllLevels = { ...oshaAction, countedFromDba: -Infinity };

function segmentsOf(row: Case) {
  const periods = row.in.periods;
  if (!Array.isArray(periods)) throw new Error('the case has no periods');
  return (periods as Fields[]).map((period) => ({
    levelDba: num(period, 'dBA'),
    hours: 'hours' in period ? num(period, 'hours') : num(period, 'minutes') / 60,
  }));
}

const oneSegment = (row: Case) => [
  {
    levelDba: num(row.in, 'dBA'),
    hours: 'hours' in row.in ? num(row.in, 'hours') : num(row.in, 'minutes') / 60,
  },
];

checkReference('noise-exposure', {
  'niosh-duration': (row) =>
    printedAndExact(row, 'seconds', (permittedHours(num(row.in, 'dBA'), niosh) ?? 0) * 3600, {
      exact: 'exact_seconds',
      tol: 'tol_seconds',
      exactDecimals: 2,
    }),
  'niosh-dose-to-twa': (row) =>
    printedAndExact(row, 'twa_dBA', timeWeightedAverageDba(num(row.in, 'dose_percent'), niosh), {
      exactDecimals: 3,
    }),
  'niosh-dose-of-periods': (row) => {
    const dose = dosePercent(segmentsOf(row), niosh);
    const exact = fieldsOf(row, 'exact');
    const tol = fieldsOf(row, 'tol');
    const twa = timeWeightedAverageDba(dose, niosh);
    return [
      { what: 'dose as printed', got: dose, want: row.out.dose_percent, within: num(tol, 'dose_percent') },
      { what: 'dose', got: dose, want: exact.dose_percent, within: decimals(3) },
      { what: 'TWA as printed', got: twa, want: row.out.twa_dBA, within: num(tol, 'twa_dBA') },
      { what: 'TWA', got: twa, want: exact.twa_dBA, within: decimals(3) },
    ];
  },
  'osha-reference-duration': (row) =>
    printedAndExact(row, 'hours', referenceHours(num(row.in, 'dBA'), oshaAction), {
      exact: 'exact_hours',
      tol: 'tol_hours',
      exactDecimals: 5,
    }),
  // The table rounds to whole or half hours and whole decibels: 92, 97 and 102 dBA do not invert exactly.
  'osha-permissible-exposure-table-G-16': (row) => {
    const got = permittedHours(num(row.out, 'dBA'), oshaPermissible);
    return [
      { what: 'hours', got, want: row.exact_hours_at_level, within: decimals(4) },
      {
        what: 'hours as in the table',
        got,
        want: row.in.hours,
        within: 0.011 * num(row.in, 'hours'),
      },
    ];
  },
  'osha-dose-to-twa': (row) =>
    printedAndExact(row, 'twa_dBA', timeWeightedAverageDba(num(row.in, 'dose_percent'), oshaAction), {
      exactDecimals: 3,
    }),
  'osha-dose': (row) =>
    printedAndExact(row, 'dose_percent', dosePercent(oneSegment(row), oshaPermissible), { exactDecimals: 3 }),
  'dose-and-twa-worked-row': (row) => {
    const exact = fieldsOf(row, 'exact');
    const osha = dosePercent(oneSegment(row), oshaOfAllLevels);
    const recommended = dosePercent(oneSegment(row), niosh);
    const figures = {
      osha_dose_percent: osha,
      osha_twa_dBA: timeWeightedAverageDba(osha, oshaOfAllLevels),
      niosh_dose_percent: recommended,
      niosh_twa_dBA: timeWeightedAverageDba(recommended, niosh),
    };
    return Object.entries(figures).flatMap(([name, got]): Check[] => [
      { what: `${name} as printed`, got, want: row.out[name], within: num(row, 'tol') },
      { what: name, got, want: exact[name], within: decimals(3) },
    ]);
  },
  'eu-values': (row) => {
    const value = euExposureValues.find(({ name }) => word(row.in, 'value').startsWith(name));
    return [
      { what: 'L_EX,8h', got: value?.lexDba, want: row.out.lex_8h_dBA },
      { what: 'peak in pascals', got: value?.peakPa, want: row.out.peak_Pa },
      { what: 'peak in dB', got: value?.peakDbc, want: row.out.peak_dBC },
      {
        what: 'the pascals as a level',
        got: dbSplOfPascals(num(row.out, 'peak_Pa')),
        want: row.exact_peak_dB,
        within: decimals(2),
      },
      {
        what: 'the printed level',
        got: dbSplOfPascals(num(row.out, 'peak_Pa')),
        want: row.out.peak_dBC,
        within: num(row, 'tol'),
      },
    ];
  },
  'equivalent-level-and-time': (row) =>
    printedAndExact(row, 'lex_8h_dBA', lex8hDba(oneSegment(row)), { exactDecimals: 2 }),
  'uk-hse-exposure-points': (row) => {
    const got = exposurePoints(num(row.in, 'lep_d_dBA'));
    return [
      { what: 'points', got, want: row.exact, within: decimals(2) },
      {
        what: 'points as printed',
        got,
        want: row.out.points,
        within: (num(row, 'tol_percent') / 100) * num(row.out, 'points'),
      },
    ];
  },
  'uk-hse-weekly-level': (row) =>
    printedAndExact(row, 'lep_w_dBA', lexWeeklyOfPointsDba(num(row.in, 'week_points')), { exactDecimals: 3 }),
  'sound-exposure-to-lex8h': (row) => {
    const pa2h = num(row.in, 'Pa2h');
    const got = lex8hOfExposureDba(pa2h);
    return [
      ...printedAndExact(row, 'lex_8h_dBA', got, { exactDecimals: 3 }),
      { what: 'and back', got: exposureOfLex8hPa2h(got), want: pa2h, within: 1e-9 },
    ];
  },
  'weekly-sound-allowance': (row) => {
    const week = [{ levelDba: num(row.in, 'dBA'), hours: num(row.in, 'hours_per_week') }];
    const pa2h = soundExposurePa2h(week);
    const listener = word(row.in, 'mode') === 'child' ? 'child' : 'adult';
    return [
      { what: 'exposure', got: pa2h, want: row.exact_Pa2h, within: decimals(5) },
      {
        what: 'share',
        got: weeklyAllowancePercent(pa2h, listener),
        want: row.out.dose_percent,
        within: 1e-9,
      },
    ];
  },
  'weekly-time-at-level': (row) => {
    const levelDba = num(row.in, 'dBA');
    return [
      {
        what: 'adult',
        got: weeklyHoursAtLevel(levelDba, 'adult'),
        want: row.out.adult_hours,
        within: decimals(4),
      },
      {
        what: 'child',
        got: weeklyHoursAtLevel(levelDba, 'child'),
        want: row.out.child_hours,
        within: decimals(4),
      },
    ];
  },
  'day-of-periods': (row) => {
    const day = segmentsOf(row);
    const recommended = dosePercent(day, niosh);
    const legal = dosePercent(day, oshaAction);
    const { out } = row;
    return [
      { what: 'L_EX,8h', got: lex8hDba(day), want: out.lex_8h_dBA, within: decimals(3) },
      { what: 'exposure', got: soundExposurePa2h(day), want: out.Pa2h, within: decimals(4) },
      { what: 'NIOSH dose', got: recommended, want: out.niosh_dose_percent, within: decimals(2) },
      {
        what: 'NIOSH TWA',
        got: timeWeightedAverageDba(recommended, niosh),
        want: out.niosh_twa_dBA,
        within: decimals(3),
      },
      { what: 'OSHA dose', got: legal, want: out.osha_dose_percent_80dBA_threshold, within: decimals(2) },
      {
        what: 'OSHA TWA',
        got: timeWeightedAverageDba(legal, oshaAction),
        want: out.osha_twa_dBA,
        within: decimals(3),
      },
    ];
  },
  'week-of-days': (row) => [
    {
      what: 'L_EX,w',
      got: lexWeeklyDba(nums(row.in, 'lex_8h_dBA')),
      want: row.out.lex_w_dBA,
      within: decimals(3),
    },
  ],
});

describe('where printed sources are off', () => {
  test('NIOSH prints 18 min 59 s at 99 dBA, five seconds more than its own formula', () => {
    const seconds = (permittedHours(99, niosh) ?? 0) * 3600;
    expect(Math.round(seconds)).toBe(18 * 60 + 54);
  });

  test('Table G-16a is printed with 21.1 h and with 21.2 h at 83 dBA: the formula is on the side of 21.1', () => {
    expect(permittedHours(83, oshaAction)).toBeCloseTo(21.11, 2);
  });

  test('a dose turned into a level by 10 log is 0.1 dB off the energy at 115 dBA', () => {
    const day = [{ levelDba: 115, hours: 8 }];
    const twaDba = timeWeightedAverageDba(dosePercent(day, niosh), niosh) ?? 0;
    expect(twaDba - lex8hDba(day)).toBeCloseTo(0.1, 2);
  });
});

describe('the EU values that a day reaches', () => {
  // Source: Directive 2003/10/EC, article 3.
  test.each([
    { levelDba: 79.9, peakDbc: null, reached: [] },
    { levelDba: 80, peakDbc: null, reached: ['lower action value'] },
    { levelDba: 85, peakDbc: null, reached: ['lower action value', 'upper action value'] },
    { levelDba: 87, peakDbc: null, reached: ['lower action value', 'upper action value', 'limit value'] },
    { levelDba: 70, peakDbc: 138, reached: ['lower action value', 'upper action value'] },
  ])(
    'eight hours at $levelDba dBA with a peak of $peakDbc dBC reach $reached',
    ({ levelDba, peakDbc, reached }) => {
      expect(euValuesReached(lex8hDba([{ levelDba, hours: 8 }]), peakDbc)).toEqual(reached);
    },
  );
});

describe('levels above the ceiling of a criterion', () => {
  // Source: the end of 29 CFR 1910.95 table G-16; NIOSH 98-126, chapter 1; both from memory.
  test.each([
    { criterion: oshaPermissible, levelDba: 115, minutes: 15 },
    { criterion: oshaPermissible, levelDba: 115.1, minutes: 0 },
    { criterion: niosh, levelDba: 140.1, minutes: 0 },
  ])('$levelDba dBA is permitted for $minutes minutes', ({ criterion, levelDba, minutes }) => {
    expect((permittedHours(levelDba, criterion) ?? Number.NaN) * 60).toBeCloseTo(minutes, 9);
  });

  test('still count toward the dose', () => {
    // Table G-16a: 130 dBA has a reference duration of 0.031 h.
    expect(dosePercent([{ levelDba: 130, hours: 0.03125 }], oshaPermissible)).toBeCloseTo(100, 9);
  });
});

describe('levels that a criterion does not count', () => {
  test('have no permitted time and add no dose', () => {
    expect(permittedHours(79.9, oshaAction)).toBeNull();
    expect(dosePercent([{ levelDba: 89.9, hours: 8 }], oshaPermissible)).toBe(0);
  });

  test('silence has no permitted time in any criterion', () => {
    expect(permittedHours(-Infinity, niosh)).toBeNull();
    expect(weeklyHoursAtLevel(-Infinity, 'adult')).toBeNull();
  });
});
