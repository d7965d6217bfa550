import { numbersText } from '../../core/sheets/plot-clusters.ts';
import { performerRadiusM } from '../../core/sheets/plot-geometry.ts';
import { words } from '../wording/words.ts';
import type { Mark } from './marks.ts';
import type { ScreenPoint } from './stage-view.ts';

/** WCAG 2.2, 2.5.8: what is pressed is at least this large, in CSS pixels. */
export const leastTargetPx = 24;

const lineHeightPx = 24;

/** How far a mark is drawn from its place, so that it covers no other. */
export function markOffset(
  { atPerformer, slot }: Pick<Mark, 'atPerformer' | 'slot'>,
  pxPerM: number,
): ScreenPoint {
  const besidePx = Math.max(performerRadiusM * pxPerM, leastTargetPx / 2) + leastTargetPx / 2 + 3;
  return { x: atPerformer ? besidePx : 0, y: slot * lineHeightPx };
}

/** The numbers of the lines of a mark, as short as they can be told. */
export const numbersOf = ({ things }: Mark) => numbersText(things.map(({ label }) => Number(label)));

/** What is written on a mark of lines: their numbers, or how many where that would be long. */
export const linesLabel = (mark: Mark) => words.stage.linesLabel(numbersOf(mark), mark.things.length);

/** The pill of a mark of lines, as wide as its numbers need; beside a performer it grows away from the circle. */
export function pillOf(mark: Mark): { leftPx: number; widthPx: number } {
  const widthPx = Math.max(leastTargetPx, 12 + linesLabel(mark).length * 7.5);
  return { leftPx: mark.atPerformer ? -leastTargetPx / 2 : -widthPx / 2, widthPx };
}

/** Where the sign of a finding begins, at the upper right of a mark. */
export function severityLeftPx(mark: Mark): number {
  if (mark.things[0].kind !== 'source') return 9;
  const { leftPx, widthPx } = pillOf(mark);
  return leftPx + widthPx - 6;
}
