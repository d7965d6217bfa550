import {
  acceptanceAngleDegrees,
  directivityIndexDb,
  distanceFactor,
  type MicrophonePattern,
  nullAngleDegrees,
  patternCoefficients,
  randomEnergyEfficiency,
  responseDb,
} from '../../../core/acoustics/microphone-patterns.ts';
import {
  type Case,
  type Check,
  checkReference,
  decimals,
  fieldsOf,
  num,
  word,
} from '../../helpers/reference.ts';

const coefficientOf = (row: Case): number =>
  patternCoefficients[word(row.in, 'pattern') as MicrophonePattern] ?? Number.NaN;

function everythingAbout(coefficient: number): Record<string, number | null> {
  return {
    at_90_dB: responseDb(coefficient, 90),
    at_180_dB: responseDb(coefficient, 180),
    null_degrees: nullAngleDegrees(coefficient),
    acceptance_minus3dB_degrees: acceptanceAngleDegrees(coefficient, 3),
    acceptance_minus6dB_degrees: acceptanceAngleDegrees(coefficient, 6),
    random_energy_efficiency: randomEnergyEfficiency(coefficient),
    distance_factor: distanceFactor(coefficient),
    directivity_index_dB: directivityIndexDb(coefficient),
  };
}

/** How each figure of the file was rounded. */
const roundedTo: Record<string, number> = {
  at_90_dB: 3,
  at_180_dB: 3,
  null_degrees: 2,
  acceptance_minus3dB_degrees: 2,
  acceptance_minus6dB_degrees: 2,
  random_energy_efficiency: 6,
  distance_factor: 4,
  directivity_index_dB: 3,
};

function check(row: Case, coefficient: number, withinOf: (name: string) => number): Check[] {
  const got = everythingAbout(coefficient);
  return Object.entries(row.out)
    .filter(([name]) => name !== 'coefficient')
    .map(([name, want]) => ({ what: name, got: got[name], want, within: withinOf(name) }));
}

const asComputed = (name: string): number => decimals(roundedTo[name] ?? Number.NaN);

/** Sum of the picked-up energy over a part of the sphere, by the midpoint rule: independent of any closed form. */
function energy(coefficient: number, fromDegrees: number, toDegrees: number): number {
  const steps = 4000;
  const width = (toDegrees - fromDegrees) / steps;
  let sum = 0;
  for (let step = 0; step < steps; step++) {
    const angle = fromDegrees + (step + 0.5) * width;
    sum += 10 ** (responseDb(coefficient, angle) / 10) * Math.sin((angle * Math.PI) / 180);
  }
  return sum * ((width * Math.PI) / 180);
}

checkReference('microphone-patterns', {
  pattern: (row) => {
    const coefficient = coefficientOf(row);
    return [
      { what: 'coefficient', got: coefficient, want: row.out.coefficient, within: decimals(6) },
      ...check(row, coefficient, asComputed),
      {
        what: 'random energy efficiency, integrated over the sphere',
        got: energy(coefficient, 0, 180) / 2,
        want: row.out.random_energy_efficiency,
        within: 1e-6,
      },
    ];
  },
  // The file rounds the coefficient itself to 6 decimals and computes on with the exact one.
  'pattern-other-coefficient': (row) =>
    check(row, num(row.out, 'coefficient'), (name) => asComputed(name) + 2e-6),
  'printed-table': (row) => {
    const tol = fieldsOf(row, 'tol');
    return check(row, coefficientOf(row), (name) => {
      if (name === 'null_degrees') return num(tol, 'null_degrees');
      return num(tol, name.endsWith('dB') ? 'dB' : 'arc');
    });
  },
  'printed-random-energy': (row) => check(row, coefficientOf(row), () => num(row, 'tol')),
  'printed-distance-factor': (row) => check(row, coefficientOf(row), () => num(row, 'tol')),
  // The note defines the supercardioid by its share of front energy: any coefficient beside it has less.
  'supercardioid-definition': (row) => {
    const share = (coefficient: number) => energy(coefficient, 0, 90) / energy(coefficient, 0, 180);
    const best = patternCoefficients.supercardioid;
    return [
      { what: 'coefficient', got: best, want: row.out.coefficient, within: num(row, 'tol') },
      { what: 'front energy', got: share(best), want: row.out.front_to_total, within: num(row, 'tol') },
      { what: 'less with a little more', got: share(best + 0.005) < share(best), want: true },
      { what: 'less with a little less', got: share(best - 0.005) < share(best), want: true },
    ];
  },
  'response-at-angle': (row) => {
    const coefficient = coefficientOf(row);
    const degrees = num(row.in, 'degrees');
    return [
      { what: 'level', got: responseDb(coefficient, degrees), want: row.out.dB, within: decimals(3) },
      {
        what: 'from the other side',
        got: responseDb(coefficient, -degrees),
        want: row.out.dB,
        within: decimals(3),
      },
    ];
  },
});
