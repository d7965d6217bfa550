/** The value below which `share` of the values lie: the nearest rank. */
export function percentile(values: readonly number[], share: number): number {
  const sorted = values.toSorted((a, b) => a - b);
  const found = sorted[Math.min(sorted.length - 1, Math.floor(sorted.length * share))];
  if (found === undefined) throw new Error('No values, no percentile.');
  return found;
}
