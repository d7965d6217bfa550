import { percentile } from './percentiles.ts';

/** The middle value; of an even number of values the upper of the two. */
export const median = (values: readonly number[]): number => percentile(values, 0.5);
