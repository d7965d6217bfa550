/**
 * The rule of this folder, for arguments and answers.
 *
 * - An argument outside the range a function states is a bug of the caller (the schemas of `core/show` check
 *   what a user types long before it comes here): it throws a RangeError whose sentence names the argument.
 * - `null` is the answer to a sane question that has none: the null angle of an omni, the direction to the
 *   point one stands on, a formula outside the range it was published for.
 * - `-Infinity` is the level of silence, going in and coming out. No NaN and no +Infinity ever comes out: the
 *   ranges below are far wider than anything on a stage, and narrow enough that no formula here overflows.
 */

const highestDb = 1000;
const largest = 1e18;
const smallest = 1e-18;

/** Arguments are passed as `{ distanceM }`, so that the sentence of the error can name them. */
type Named = Record<string, number>;

function requireEach(named: Named, holds: (value: number) => boolean, wanted: string): void {
  for (const name in named) {
    const value = named[name] ?? Number.NaN;
    if (!holds(value)) throw new RangeError(`${name} must be ${wanted}, but is ${value}.`);
  }
}

export function requirePositive(named: Named): void {
  requireEach(named, (value) => value >= smallest && value <= largest, 'a number above 0');
}

export function requireNotNegative(named: Named): void {
  requireEach(named, (value) => value >= 0 && value <= largest, 'a number, 0 or more');
}

export function requireFinite(named: Named): void {
  requireEach(named, Number.isFinite, 'a finite number');
}

/** True for a finite number of decibels and for -Infinity, silence. */
export function isLevel(value: number): boolean {
  return isDecibels(value) || value === -Infinity;
}

export function requireLevel(named: Named): void {
  requireEach(named, isLevel, `a level from -${highestDb} to ${highestDb} dB, or -Infinity for silence`);
}

function isDecibels(value: number): boolean {
  return value >= -highestDb && value <= highestDb;
}

/** A difference or a reference in dB, which silence cannot be. */
export function requireDecibels(named: Named): void {
  requireEach(named, isDecibels, `from -${highestDb} to ${highestDb} dB`);
}

export function requireBetween(lowest: number, highest: number, named: Named): void {
  requireEach(named, (value) => value >= lowest && value <= highest, `from ${lowest} to ${highest}`);
}

export function requireCount(named: Named): void {
  requireEach(named, (value) => Number.isSafeInteger(value) && value >= 1, 'a whole number, 1 or more');
}
