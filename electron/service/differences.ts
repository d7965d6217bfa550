import { type Differences, mostDifferences } from '../../core/contract/copies.ts';
import { differenceOf } from '../../core/show/difference.ts';
import type { Show } from '../../core/show/show.ts';

/** What differs between two shows, as a window is told it. */
export function toldDifferences(before: Show, after: Show): Differences {
  const all = differenceOf(before, after);
  return { rows: all.slice(0, mostDifferences), count: all.length };
}
