/**
 * The rule of this folder, for arguments and answers.
 *
 * - An argument outside the range a function states is a bug of the caller (the schemas of `core/show` check
 *   what a user types long before it comes here): it throws a RangeError whose sentence names the argument.
 * - `null` is the answer to a sane question that has none: the null angle of an omni, the direction to the
 *   point one stands on, a formula outside the range it was published for.
 * - `-Infinity` is the level of silence, going in and coming out. No NaN and no +Infinity ever comes out.
 */

type Named = Record<string, number>;

function requireEach(named: Named, holds: (value: number) => boolean, wanted: string): void {
  for (const [name, value] of Object.entries(named))
    if (!holds(value)) throw new RangeError(`${name} must be ${wanted}, but is ${value}.`);
}

/** Passed as `{ distanceM }`, so that the sentence of the error can name the argument. */
export function requirePositive(named: Named): void {
  requireEach(named, (value) => value > 0 && value < Infinity, 'a finite number above 0');
}

export function requireNotNegative(named: Named): void {
  requireEach(named, (value) => value >= 0 && value < Infinity, 'a finite number, 0 or more');
}

export function requireFinite(named: Named): void {
  requireEach(named, Number.isFinite, 'a finite number');
}

/** A level in dB: a finite number, or -Infinity for silence. */
export function requireLevel(named: Named): void {
  requireEach(named, (value) => value < Infinity, 'a level in dB, finite or -Infinity for silence');
}

export function requireBetween(lowest: number, highest: number, named: Named): void {
  requireEach(named, (value) => value >= lowest && value <= highest, `from ${lowest} to ${highest}`);
}

export function requireCount(named: Named): void {
  requireEach(named, (value) => Number.isSafeInteger(value) && value >= 1, 'a whole number, 1 or more');
}
