import { describe, expect, test } from 'vitest';
import { delayMs, distanceM, samplesOfDelay } from '../../../core/acoustics/delay.ts';
import { soundSpeedInHumidAirMPerS, soundSpeedMPerS } from '../../../core/acoustics/sound-speed.ts';
import { checkReference, decimals, num, printedAndExact } from '../../helpers/reference.ts';

const metresPerFoot = 0.3048;
const seaLevel = 101.325;

checkReference('sound-speed-and-delay', {
  'sound-speed-dry-air': (row) => {
    const celsius = num(row.in, 'celsius');
    const humid = soundSpeedInHumidAirMPerS({
      temperatureC: celsius,
      relativeHumidityPercent: 0,
      pressureKpa: seaLevel,
    });
    return [
      { what: 'speed', got: soundSpeedMPerS(celsius), want: row.out.m_per_s, within: decimals(3) },
      { what: 'ms for a metre', got: delayMs(1, celsius), want: row.out.ms_per_m, within: decimals(5) },
      { what: 'the humid-air polynomial at 0 %', got: humid, want: row.jasa93_dry, within: decimals(3) },
      {
        what: 'the square-root law from 331.3 m/s',
        got: soundSpeedMPerS(celsius),
        want: row.ideal_gas_331_3,
        within: 0.02,
      },
    ];
  },
  'sound-speed-humid-air': (row) => {
    const got = soundSpeedInHumidAirMPerS({
      temperatureC: num(row.in, 'celsius'),
      relativeHumidityPercent: num(row.in, 'relative_humidity_percent'),
      pressureKpa: num(row.in, 'kPa'),
    });
    return [{ what: 'speed', got, want: row.out.m_per_s, within: decimals(3) }];
  },
  'printed-sound-speed': (row) =>
    printedAndExact(row, 'm_per_s', soundSpeedMPerS(num(row.in, 'celsius')), {
      exact: 'exact_iso',
      exactDecimals: 3,
    }),
  // The textbook lies about 0.5 m/s below the standard: the two must not be mistaken for each other.
  'printed-sound-speed-that-differs': (row) => {
    const got = soundSpeedMPerS(num(row.in, 'celsius'));
    return [
      { what: 'the standard', got, want: row.exact_iso, within: decimals(3) },
      { what: 'above the textbook by', got: got - num(row.out, 'm_per_s'), want: 0.56, within: 0.02 },
    ];
  },
  delay: (row) => {
    const celsius = num(row.in, 'celsius');
    const metres = num(row.in, 'metres');
    const got = delayMs(metres, celsius);
    return [
      { what: 'ms', got, want: row.out.ms, within: decimals(4) },
      { what: 'and back', got: distanceM(got, celsius), want: metres, within: 1e-9 },
      { what: 'samples at 48 kHz', got: samplesOfDelay(got, 48_000), want: row.samples_48k },
      { what: 'samples at 96 kHz', got: samplesOfDelay(got, 96_000), want: row.samples_96k },
    ];
  },
  'rule-of-thumb': (row) => {
    const metres = 'feet' in row.in ? num(row.in, 'feet') * metresPerFoot : num(row.in, 'metres');
    const got = delayMs(metres, 20);
    return [
      { what: 'ms', got, want: row.exact_20C, within: decimals(4) },
      { what: 'near the rule of thumb', got, want: row.out.ms, within: 0.12 },
    ];
  },
});

describe('humid air', () => {
  // Source: range of validity, J. Acoust. Soc. Am. 93 (1993) 2510.
  test.each([
    { temperatureC: 30, pressureKpa: 102, known: true },
    { temperatureC: 0, pressureKpa: 75, known: true },
    { temperatureC: 30.1, pressureKpa: 101, known: false },
    { temperatureC: -0.1, pressureKpa: 101, known: false },
    { temperatureC: 20, pressureKpa: 74.9, known: false },
    { temperatureC: 20, pressureKpa: 102.1, known: false },
  ])(
    'at $temperatureC C and $pressureKpa kPa has a formula: $known',
    ({ temperatureC, pressureKpa, known }) => {
      const speed = soundSpeedInHumidAirMPerS({ temperatureC, pressureKpa, relativeHumidityPercent: 50 });
      expect(speed !== null).toBe(known);
    },
  );
});
