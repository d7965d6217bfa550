import { distanceM, placeOf, type StagePlace } from '../show/stage-place.ts';
import type { LineView } from './act-view.ts';

export type Cluster = { at: StagePlace; lines: LineView[] };

/** So close together that their numbers would be written over each other. */
const nearM = 0.45;

/** Lines that stand at nearly one place, as at a drum kit, under one dot. Lines without a place are left out. */
export function clusterLines(lines: readonly LineView[]): Cluster[] {
  const clusters: Cluster[] = [];
  for (const line of lines) {
    const at = placeOf(line.source);
    if (!at) continue;
    const near = clusters.find((it) => distanceM(it.at, at) < nearM);
    if (near) near.lines.push(line);
    else clusters.push({ at, lines: [line] });
  }
  return clusters;
}

/** Numbers as short as they can be told: "1-4, 7". */
export function numbersText(numbers: readonly number[]): string {
  const sorted = numbers.toSorted((a, b) => a - b);
  const runs: [number, number][] = [];
  for (const number of sorted) {
    const last = runs.at(-1);
    if (last && number === last[1] + 1) last[1] = number;
    else runs.push([number, number]);
  }
  return runs.map(([first, last]) => (first === last ? `${first}` : `${first}-${last}`)).join(', ');
}
