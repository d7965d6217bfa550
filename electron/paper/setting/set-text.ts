import type { Mark as ChangeMark } from '../../../core/sheets/differences.ts';
import { lineFactor, sizes } from './measures.ts';
import type { SheetFlow } from './sheet-flow.ts';
import { wrapText } from './wrap-text.ts';

/** A heading that never stands alone at the foot of a page: `followedBy` is the height of what must stand under it. */
export function setHeading(flow: SheetFlow, heading: string, followedBy: number): void {
  const lines = wrapText(heading, flow.right - flow.left, sizes.heading, 'bold', flow.typeCase);
  const height = lines.length * sizes.heading * lineFactor + 4;
  if (!flow.hasRoom(height + followedBy)) flow.newPage();
  else flow.advance(4);
  for (const line of lines) {
    flow.text(line, flow.left, flow.y, sizes.heading);
    flow.advance(sizes.heading * lineFactor);
  }
  flow.advance(2);
}

/** Running text; it may go on overleaf. A line break in it is kept. */
export function setText(
  flow: SheetFlow,
  paragraphs: readonly string[],
  markOf: (at: number) => ChangeMark | null = () => null,
): void {
  const step = sizes.body * lineFactor;
  paragraphs.forEach((paragraph, at) => {
    const mark = markOf(at);
    for (const piece of paragraph.split(/\r?\n/))
      for (const line of wrapText(piece, flow.right - flow.left, sizes.body, 'regular', flow.typeCase)) {
        if (!flow.hasRoom(step)) flow.newPage();
        if (mark) setMarginMark(flow, mark, step);
        flow.text(line, flow.left, flow.y, sizes.body);
        flow.advance(step);
      }
    flow.advance(3);
  });
}

const markLetters: Record<ChangeMark, string> = { new: 'N', changed: 'C' };

/** A bar and a letter in the margin: seen on a copy, and told apart without colour. */
export function setMarginMark(flow: SheetFlow, mark: ChangeMark, height: number): void {
  const x = flow.left - 6;
  flow.page.marks.push({
    is: 'rect',
    x,
    y: flow.y + 1,
    width: 2.5,
    height: height - 2,
    fill: '#000000',
    linePt: 0,
  });
  flow.words(markLetters[mark], x - 10, flow.y + 1, sizes.foot, 'bold');
}
