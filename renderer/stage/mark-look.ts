import { numbersText } from '../../core/sheets/plot-clusters.ts';
import { words } from '../wording/words.ts';
import type { Mark } from './marks.ts';

/** WCAG 2.2, 2.5.8: what is pressed is at least this large, in CSS pixels. */
export const leastTargetPx = 24;

/** The numbers of the lines of a mark, as short as they can be told. */
export const numbersOf = ({ things }: Mark) => numbersText(things.map(({ label }) => Number(label)));

/** What is written on a mark of lines: their numbers, or how many where that would be long. */
export const linesLabel = (mark: Mark) => words.stage.linesLabel(numbersOf(mark), mark.things.length);

/** The pill of a mark of lines, as wide as its text needs. */
export const pillWidthPx = (mark: Mark) => Math.max(leastTargetPx, 12 + linesLabel(mark).length * 7.5);

/** Where the sign of a finding begins, at the upper right of a mark. */
export const severityLeftPx = (mark: Mark) =>
  mark.things[0].kind === 'source' ? pillWidthPx(mark) / 2 - 6 : 9;
