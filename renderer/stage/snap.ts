import type { StagePlace } from '../../core/show/stage-place.ts';

/** Where other things stand that a moved one may come in line with. */
export type Lines = { xs: readonly number[]; ys: readonly number[] };
export type Snapped = {
  at: StagePlace;
  /** The line that was met, for a guide on the drawing; null: none. */
  alongX: number | null;
  alongY: number | null;
};

const gridM = 0.25;

/** Places are kept to the centimetre: nobody sets up a stage finer, and sums of steps stay round. */
export const toCentimetre = (m: number) => Math.round(m * 100) / 100 + 0;

/** A place drawn to the lines of others within reach, else to the grid. */
export function snapped(at: StagePlace, lines: Lines, reachM: number): Snapped {
  const alongX = nearest(at.xM, lines.xs, reachM);
  const alongY = nearest(at.yM, lines.ys, reachM);
  return {
    at: { xM: toCentimetre(alongX ?? toGrid(at.xM)), yM: toCentimetre(alongY ?? toGrid(at.yM)) },
    alongX,
    alongY,
  };
}

/** A place as it is, to the centimetre. */
export function unsnapped(at: StagePlace): Snapped {
  return { at: { xM: toCentimetre(at.xM), yM: toCentimetre(at.yM) }, alongX: null, alongY: null };
}

const toGrid = (m: number) => Math.round(m / gridM) * gridM;

function nearest(value: number, lines: readonly number[], reachM: number): number | null {
  let found: number | null = null;
  for (const line of lines) {
    const apart = Math.abs(line - value);
    if (apart <= reachM && (found === null || apart < Math.abs(found - value))) found = line;
  }
  return found;
}

/** The lines of everything that stays where it is, and the stage's centre line. */
export function linesOfOthers(
  things: readonly { key: string; at: StagePlace }[],
  moving: ReadonlySet<string>,
): Lines {
  const others = things.filter(({ key }) => !moving.has(key));
  return { xs: [0, ...others.map(({ at }) => at.xM)], ys: others.map(({ at }) => at.yM) };
}
