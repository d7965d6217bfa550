import type { SetLine } from '../fonts/type-case.ts';

/**
 * A page as a list of marks, in points from the top left. It is made before anything is written, so that a sheet can
 * be tried lying and upright, its pages counted, and everything on it checked to lie within the page.
 */
export type Mark =
  | { is: 'text'; x: number /** Of the base line. */; y: number; sizePt: number; line: SetLine }
  | { is: 'rect'; x: number; y: number; width: number; height: number; fill: string | null; linePt: number }
  | {
      is: 'path';
      points: [number, number][];
      closed: boolean;
      fill: string | null;
      linePt: number;
      dashed: boolean;
    }
  | { is: 'circle'; x: number; y: number; radius: number; fill: string | null; linePt: number };

export type Page = { widthPt: number; heightPt: number; marks: Mark[] };

/** Greys that a copier keeps apart. */
export const greys = {
  head: '#e4e4e4',
  group: '#eeeeee',
  rule: '#9a9a9a',
  dark: '#333333',
} as const;

export function rule(x1: number, y: number, x2: number, thickPt: number, fill: string = '#000000'): Mark {
  return { is: 'rect', x: x1, y: y - thickPt / 2, width: x2 - x1, height: thickPt, fill, linePt: 0 };
}
