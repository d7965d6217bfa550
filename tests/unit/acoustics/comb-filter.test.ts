import {
  combLevelDb,
  combRipple,
  combSpacingHz,
  firstNotchHz,
  notchesHz,
  peaksHz,
} from '../../../core/acoustics/comb-filter.ts';
import { delayMs, delayMsOfSamples, distanceM } from '../../../core/acoustics/delay.ts';
import { type Check, checkReference, decimals, num, nums } from '../../helpers/reference.ts';

const each = (what: string, got: number[], want: number[], within: number): Check[] =>
  want.map((value, at) => ({ what: `${what} ${at + 1}`, got: got[at], want: value, within }));

/** The inverse of the speed of ISO 9613-1. */
const temperatureAtFeetPerS = (speed: number): number => 293.15 * ((speed * 0.3048) / 343.2) ** 2 - 273.15;

checkReference('comb-filter', {
  'comb-frequencies': (row) => {
    const late = num(row.in, 'delay_ms');
    return [
      { what: 'first notch', got: firstNotchHz(late), want: row.out.first_null_Hz, within: decimals(3) },
      ...each('notch', notchesHz(late, 3), nums(row.out, 'nulls_Hz'), decimals(3)),
      ...each('peak', peaksHz(late, 3), nums(row.out, 'peaks_Hz'), decimals(3)),
      // With one copy inverted, notches and peaks change places.
      ...each('inverted, notch', notchesHz(late, 3, 'opposite'), nums(row.out, 'peaks_Hz'), decimals(3)),
      ...each('inverted, peak', peaksHz(late, 3, 'opposite'), nums(row.out, 'nulls_Hz'), decimals(3)),
      { what: 'spacing', got: combSpacingHz(late), want: row.out.spacing_Hz, within: decimals(3) },
      { what: 'path at 20 C', got: distanceM(late, 20), want: row.out.path_m_at_20C, within: decimals(5) },
    ];
  },
  'printed-comb': (row) => {
    const late = num(row.in, 'delay_ms');
    const spacing = { what: 'spacing', got: combSpacingHz(late), want: row.out.spacing_Hz };
    if (!('nulls_Hz' in row.out)) return [spacing];
    return [
      spacing,
      ...each('notch', notchesHz(late, 3), nums(row.out, 'nulls_Hz'), 0),
      ...each('peak', peaksHz(late, 3), nums(row.out, 'peaks_Hz'), 0),
    ];
  },
  // The handbook takes 1130 ft/s, the speed at about 22 C.
  'printed-path': (row) => {
    if ('path_m' in row.in) {
      const got = delayMs(num(row.in, 'path_m'), 20);
      return [
        { what: 'ms', got, want: row.out.delay_ms, within: num(row, 'tol') },
        { what: 'ms by the formula', got, want: row.exact, within: decimals(4) },
      ];
    }
    const feet = distanceM(num(row.in, 'delay_ms'), temperatureAtFeetPerS(num(row.in, 'ft_per_s'))) / 0.3048;
    const inFeet = 'path_ft' in row.out;
    const got = inFeet ? feet : feet * 12;
    return [
      { what: 'path by the formula', got, want: row.exact, within: 1e-9 },
      {
        what: 'path as printed',
        got,
        want: inFeet ? row.out.path_ft : row.out.path_in,
        within: num(row, 'tol'),
      },
    ];
  },
  ripple: (row) => {
    const { peakDb, dipDb } = combRipple(num(row.in, 'level_difference_dB'));
    const within = 'tol' in row ? num(row, 'tol') : decimals(3);
    const checks: Check[] = [
      { what: 'peak', got: peakDb, want: row.out.peak_dB, within },
      { what: 'dip', got: dipDb, want: row.out.dip_dB, within },
    ];
    if ('peak_to_dip_dB' in row.out)
      checks.push({ what: 'peak to dip', got: peakDb - dipDb, want: row.out.peak_to_dip_dB, within });
    return checks;
  },
  // The tip claims dips of 1 dB or less at 9 dB; the formula says 3.8 dB, and 1 dB takes more than 19 dB.
  'printed-claim-not-confirmed': (row) => {
    const { dipDb } = combRipple(num(row.in, 'level_difference_dB'));
    const claimed = num(row.out, 'claimed_largest_dip_dB');
    return [
      { what: 'the real dip', got: dipDb, want: -3.806, within: decimals(3) },
      { what: 'deeper than claimed', got: dipDb < claimed, want: true },
      { what: 'at 19.3 dB the claim is true', got: combRipple(19.3).dipDb > claimed, want: true },
      { what: 'at 19.2 dB it is not', got: combRipple(19.2).dipDb > claimed, want: false },
    ];
  },
  // What the manual advises leaves a dip of 3.3 dB at least, 1.7 dB better.
  advice: (row) => [
    {
      what: 'at least',
      got: combRipple(num(row.out, 'at_least_dB')).dipDb,
      want: -3.302,
      within: decimals(3),
    },
    { what: 'better', got: combRipple(num(row.out, 'better_dB')).dipDb, want: -1.701, within: decimals(3) },
  ],
  'level-at-frequency': (row) => {
    const comb = {
      delayMs: num(row.in, 'delay_ms'),
      levelDifferenceDb: num(row.in, 'level_difference_dB'),
      polarity: 'same',
    } as const;
    const got = combLevelDb(comb, num(row.in, 'Hz'));
    return [{ what: 'level', got, want: row.out.dB, within: decimals(3) }];
  },
  'latency-as-comb': (row) => {
    const late = delayMsOfSamples(num(row.in, 'samples'), num(row.in, 'sample_rate'));
    return [
      { what: 'ms', got: late, want: row.out.delay_ms, within: decimals(5) },
      { what: 'first notch', got: firstNotchHz(late), want: row.out.first_null_Hz, within: decimals(3) },
    ];
  },
});
