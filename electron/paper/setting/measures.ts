import type { Paper } from '../../../core/sheets/paper-request.ts';

/** PDF counts in points of 1/72 inch. */
const pointsPerMm = 72 / 25.4;
export const mm = (millimetres: number) => millimetres * pointsPerMm;

/** Nothing on paper is smaller: below 9 points a sheet cannot be read at arm's length in bad light. */
export const smallestPt = 9;

export const sizes = { subject: 18, title: 13, heading: 11, body: 10, narrowBody: 9, foot: 9 } as const;

/** Height of a line of text against its size. */
export const lineFactor = 1.22;

export const margins = { left: mm(14), right: mm(10), top: mm(10), bottom: mm(14) } as const;

const papers = {
  A4: [mm(210), mm(297)],
  Letter: [612, 792],
  A3: [mm(297), mm(420)],
} as const satisfies Record<Paper, readonly [number, number]>;

/** A page in points. */
export type PageSize = { widthPt: number; heightPt: number };

export function pageSize(paper: Paper, orientation: 'portrait' | 'landscape'): PageSize {
  const [short, long] = papers[paper];
  return orientation === 'portrait' ? { widthPt: short, heightPt: long } : { widthPt: long, heightPt: short };
}
