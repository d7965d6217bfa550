import type { Sheet } from '../../../core/sheets/sheet.ts';
import { rule } from './display-list.ts';
import { lineFactor, sizes } from './measures.ts';
import type { SheetFlow } from './sheet-flow.ts';
import { wrapText } from './wrap-text.ts';

/** The head of a sheet's first page: whose it is, what it is, its facts and its cautions. */
export function setHead(flow: SheetFlow, sheet: Sheet): void {
  paragraph(flow, sheet.subject, sizes.subject, 'bold');
  paragraph(flow, sheet.title, sizes.title, 'regular');
  const facts = sheet.facts.map(({ label, value }) => `${label}: ${value}`).join('  ·  ');
  paragraph(flow, facts, sizes.body, 'regular');
  flow.advance(2);
  flow.page.marks.push(rule(flow.left, flow.y, flow.right, 1.2));
  flow.advance(4);
  for (const caution of sheet.cautions) setCaution(flow, caution);
}

/** In a frame and in words: a colour would be lost on a copy. */
function setCaution(flow: SheetFlow, caution: string): void {
  const pad = 4;
  const size = sizes.body;
  const lines = wrapText(
    `Caution: ${caution}`,
    flow.right - flow.left - 2 * pad,
    size,
    'bold',
    flow.typeCase,
  );
  const height = lines.length * size * lineFactor + 2 * pad;
  flow.page.marks.push({
    is: 'rect',
    x: flow.left,
    y: flow.y,
    width: flow.right - flow.left,
    height,
    fill: null,
    linePt: 1,
  });
  lines.forEach((line, at) => {
    flow.text(line, flow.left + pad, flow.y + pad + at * size * lineFactor, size);
  });
  flow.advance(height + 5);
}

function paragraph(flow: SheetFlow, text: string, sizePt: number, weight: 'regular' | 'bold'): void {
  for (const line of wrapText(text, flow.right - flow.left, sizePt, weight, flow.typeCase)) {
    flow.text(line, flow.left, flow.y, sizePt);
    flow.advance(sizePt * lineFactor);
  }
}
