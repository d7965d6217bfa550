import type { TypeCase } from '../fonts/type-case.ts';
import { type Page, rule } from './display-list.ts';
import { margins, mm, sizes } from './measures.ts';
import { setLine } from './set-line.ts';
import { wrapText } from './wrap-text.ts';

export type Foot = { version: string; page: string };

/** The foot of a page: which version it is and what it replaces at the left, which page at the right. */
export function setFoot(page: Page, foot: Foot, typeCase: TypeCase): void {
  const number = setLine(foot.page, 'regular', typeCase);
  const right = page.widthPt - margins.right;
  const room = right - margins.left - number.unitWidth * sizes.foot - mm(5);
  const y = page.heightPt - margins.bottom + sizes.foot;
  page.marks.push(rule(margins.left, y - sizes.foot - 3, right, 0.6));
  wrapText(foot.version, room, sizes.foot, 'regular', typeCase).forEach((line, at) => {
    page.marks.push({ is: 'text', x: margins.left, y: y + at * sizes.foot * 1.2, sizePt: sizes.foot, line });
  });
  page.marks.push({
    is: 'text',
    x: right - number.unitWidth * sizes.foot,
    y,
    sizePt: sizes.foot,
    line: number,
  });
}
