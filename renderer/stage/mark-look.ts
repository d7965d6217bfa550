import { performerRadiusM } from '../../core/sheets/plot-geometry.ts';
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

/** A pill as wide as its text needs, in pixels. */
export const pillWidthPx = (label: string) => Math.max(leastTargetPx, 12 + label.length * 7.5);
