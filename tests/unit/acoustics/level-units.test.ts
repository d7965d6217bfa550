import { describe, expect, test } from 'vitest';
import {
  dbfsOfDbu,
  dbSplOfPascals,
  dbuAtFullScale,
  dbuOfDbfs,
  dbuOfDbv,
  dbuOfVolts,
  dbvOfDbu,
  dbvOfVolts,
  dbvPerPascal,
  mvPerPascal,
  pascalsOfDbSpl,
  voltsOfDbu,
  voltsOfDbv,
} from '../../../core/acoustics/level-units.ts';
import {
  gainNeededDb,
  levelAtFullScaleDbSpl,
  microphoneOutputDbu,
} from '../../../core/acoustics/microphone-level.ts';
import {
  type Case,
  type Check,
  checkReference,
  decimals,
  num,
  numOr,
  printedAndExact,
  word,
} from '../../helpers/reference.ts';

/** The file's names of the calibrations, and ours. */
const calibrations: Record<string, keyof typeof dbuAtFullScale> = {
  'EBU R68': 'EBU R 68',
  'SMPTE RP 155': 'SMPTE RP 155',
  'converters with 0 dBFS = +22 dBu': '+22 dBu',
  '0 dBFS = +15 dBu (one national broadcaster)': '+15 dBu',
};

function fullScaleOf(row: Case): number {
  const name = calibrations[word(row.in, 'scheme')];
  if (!name) throw new Error('the file has a calibration that the table lacks');
  return dbuAtFullScale[name];
}

/** The file's figures in volts have 8 decimals or, where small, as many digits as a double shows. */
const volts = (what: string, got: number, want: unknown): Check => ({ what, got, want, within: decimals(8) });

const four = { exactDecimals: 4 };

checkReference('level-units', {
  'reference-voltage': (row) => [
    ...printedAndExact(row, 'volts', voltsOfDbu(num(row.in, 'dBu')), {
      exact: 'exact_volts',
      exactDecimals: 10,
    }),
  ],
  'dbu-to-volts': (row) => {
    const dbu = num(row.in, 'dBu');
    const back = { what: 'and back', got: dbuOfVolts(voltsOfDbu(dbu)), want: dbu, within: 1e-9 };
    if ('exact_volts' in row)
      return [
        back,
        ...printedAndExact(row, 'volts', voltsOfDbu(dbu), { exact: 'exact_volts', exactDecimals: 6 }),
      ];
    return [
      back,
      volts('volts', voltsOfDbu(dbu), row.out.volts),
      { what: 'dBV', got: dbvOfDbu(dbu), want: row.dBV, within: decimals(4) },
    ];
  },
  'dbv-to-volts': (row) => {
    const dbv = num(row.in, 'dBV');
    return [
      { what: 'volts', got: voltsOfDbv(dbv), want: row.out.volts, within: numOr(row, 'tol', decimals(8)) },
      { what: 'dBu', got: dbuOfDbv(dbv), want: row.dBu, within: decimals(4) },
      { what: 'and back', got: dbvOfVolts(voltsOfDbv(dbv)), want: dbv, within: 1e-9 },
    ];
  },
  offset: (row) => [
    { what: 'from dBV to dBu', got: dbuOfDbv(0), want: row.out.add_dB, within: decimals(6) },
    { what: 'as printed', got: dbuOfDbv(0), want: row.printed, within: num(row, 'tol') },
  ],
  'mic-sensitivity': (row) => {
    const mv = num(row.in, 'mV_per_Pa');
    const checks = printedAndExact(row, 'dBV_per_Pa', dbvPerPascal(mv), four);
    checks.push({ what: 'and back', got: mvPerPascal(dbvPerPascal(mv)), want: mv, within: 1e-9 });
    if ('dBu_at_94dB' in row)
      checks.push({
        what: 'output at 94 dB SPL',
        got: microphoneOutputDbu(mv, 94),
        want: row.dBu_at_94dB,
        within: decimals(3),
      });
    return checks;
  },
  // 1 microbar is 0.1 Pa: what the microphone gives at 74 dB SPL, taking 94 for 1 Pa.
  'mic-sensitivity-old-unit': (row) => [
    {
      what: 'dBV at a microbar',
      got: dbvOfDbu(microphoneOutputDbu(mvPerPascal(num(row.in, 'dBV_per_Pa')), 74)),
      want: row.out.dBV_per_microbar,
      within: 1e-9,
    },
  ],
  'spl-to-pressure': (row) => {
    const spl = num(row.in, 'dB_SPL');
    return [
      ...printedAndExact(row, 'Pa', pascalsOfDbSpl(spl), {
        exact: 'exact_Pa',
        exactDecimals: 'exact_Pa' in row ? 6 : 8,
      }),
      { what: 'and back', got: dbSplOfPascals(pascalsOfDbSpl(spl)), want: spl, within: 1e-9 },
    ];
  },
  'one-pascal': (row) => [
    {
      what: 'dB SPL',
      got: dbSplOfPascals(num(row.in, 'Pa')),
      want: row.out.dB_SPL,
      within: decimals(4),
    },
  ],
  'mic-output-at-spl': (row) => {
    const output = microphoneOutputDbu(num(row.in, 'mV_per_Pa'), num(row.in, 'dB_SPL'));
    if ('exact_volts' in row)
      return printedAndExact(row, 'volts', voltsOfDbu(output), { exact: 'exact_volts', exactDecimals: 6 });
    return [
      volts('volts', voltsOfDbu(output), row.out.volts),
      { what: 'dBu', got: output, want: row.out.dBu, within: decimals(3) },
      { what: 'dBV', got: dbvOfDbu(output), want: row.out.dBV, within: decimals(3) },
      {
        what: 'gain to 0 dBu',
        got: gainNeededDb(output, { targetDbfs: 0, fullScaleDbu: 0 }),
        want: row.gain_dB_to_0_dBu,
        within: decimals(3),
      },
    ];
  },
  alignment: (row) => [
    { what: 'full scale in dBu', got: fullScaleOf(row), want: row.out.dBu_at_0_dBFS },
    {
      what: 'volts at full scale',
      got: voltsOfDbu(dbuOfDbfs(0, fullScaleOf(row))),
      want: row.volts_rms_at_0_dBFS,
      within: decimals(4),
    },
    {
      what: 'alignment level',
      got: dbfsOfDbu(num(row.out, 'alignment_dBu'), fullScaleOf(row)),
      want: row.out.alignment_dBFS,
    },
  ],
  'dbfs-to-dbu': (row) => [
    { what: 'dBu', got: dbuOfDbfs(num(row.in, 'dBFS'), fullScaleOf(row)), want: row.out.dBu },
  ],
});

describe('the gain a source needs', () => {
  const desk = { targetDbfs: -18, fullScaleDbu: 18 };

  test('brings a vocal of 110 dB SPL on a dynamic microphone to -18 dBFS', () => {
    // 1.5 mV/Pa at 110 dB SPL is -38.26 dBu (table above), and -18 dBFS is 0 dBu where full scale is +18.
    expect(gainNeededDb(microphoneOutputDbu(1.5, 110), desk)).toBeCloseTo(38.26, 2);
  });

  test('is negative where a kick needs a pad', () => {
    expect(gainNeededDb(microphoneOutputDbu(20, 130), desk)).toBeCloseTo(-4.24, 2);
  });

  test('leaves as much room above the expected sound as the target lies below full scale', () => {
    const gainDb = gainNeededDb(microphoneOutputDbu(1.5, 110), desk);
    expect(gainDb).not.toBeNull();
    expect(levelAtFullScaleDbSpl(1.5, gainDb ?? 0, 18)).toBeCloseTo(128, 9);
  });

  test('does not exist for silence', () => {
    expect(gainNeededDb(-Infinity, desk)).toBeNull();
  });
});
