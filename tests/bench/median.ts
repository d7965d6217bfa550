/** The middle value; of an even number of values the upper of the two. */
export function median(values: readonly number[]): number {
  const middle = values.toSorted((a, b) => a - b)[Math.floor(values.length / 2)];
  if (middle === undefined) throw new Error('No values, no median.');
  return middle;
}
