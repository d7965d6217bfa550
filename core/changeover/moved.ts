import { distanceM, type StagePlace } from '../show/stage-place.ts';
import { movedMetres } from './task-kinds.ts';

/** Whether two places are apart. A place that nobody has told counts as the same. */
export function isMoved(a: StagePlace | null, b: StagePlace | null): boolean {
  return a !== null && b !== null && distanceM(a, b) > movedMetres;
}

/** The middle of the places that are known, or null. */
export function middleOf(places: (StagePlace | null)[]): StagePlace | null {
  const known = places.filter((it) => it !== null);
  if (known.length === 0) return null;
  const mean = (of: (place: StagePlace) => number) =>
    known.reduce((sum, it) => sum + of(it), 0) / known.length;
  return { xM: mean((it) => it.xM), yM: mean((it) => it.yM) };
}
