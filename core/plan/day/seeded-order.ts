/**
 * Numbers that look random and are not: the same seed gives the same row of numbers, so the same day gives the
 * same plan. The generator is mulberry32, a public-domain mixing of 32-bit integers.
 */
export type Seeded = () => number;

/** Returns a function that gives the next number in [0, 1). */
export function seeded(seed: number): Seeded {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4_294_967_296;
  };
}

/** A new list with the same members in an order drawn from `next`. */
export function shuffled<T>(list: readonly T[], next: Seeded): T[] {
  const result = [...list];
  for (let last = result.length - 1; last > 0; last--) {
    const other = Math.floor(next() * (last + 1));
    const held = result[last] as T;
    result[last] = result[other] as T;
    result[other] = held;
  }
  return result;
}
