import type { Sheet } from '../../../core/sheets/sheet.ts';
import { shortName } from '../../../core/sheets/short-name.ts';
import type { Weight } from '../fonts/font-table.ts';
import type { SetLine, TypeCase } from '../fonts/type-case.ts';
import type { Page } from './display-list.ts';
import { lineFactor, margins, type PageSize, sizes } from './measures.ts';
import { setLine } from './set-line.ts';

/**
 * The pages of one sheet as they fill up: parts ask for room, and get the place where they may stand. A new page
 * begins with a short head, so that a single page that lies on the stage is known for what it is.
 */
export class SheetFlow {
  readonly size: PageSize;
  readonly typeCase: TypeCase;
  readonly pages: Page[] = [];
  readonly #running: SetLine;
  #y = 0;

  /** Pages after the first are headed by whose sheet it is, in one line, and by what it is. */
  constructor(size: PageSize, typeCase: TypeCase, { subject, title }: Pick<Sheet, 'subject' | 'title'>) {
    this.size = size;
    this.typeCase = typeCase;
    const head = (name: string) => setLine(`${name}: ${title}, continued`, 'bold', typeCase);
    const room = (this.right - this.left) / sizes.heading;
    this.#running = head(shortName(subject, (name) => head(name).unitWidth <= room));
    this.#addPage();
  }

  /** Where the next thing would stand. */
  get y(): number {
    return this.#y;
  }

  get page(): Page {
    const page = this.pages.at(-1);
    if (!page) throw new Error('A sheet has at least one page.');
    return page;
  }

  get left(): number {
    return margins.left;
  }

  get right(): number {
    return this.size.widthPt - margins.right;
  }

  get bottom(): number {
    return this.size.heightPt - margins.bottom - sizes.foot * lineFactor;
  }

  /** Height that a fresh page has for a part. */
  get fullHeight(): number {
    return this.bottom - this.#topOfFollowing();
  }

  /** Whether so much still stands on this page. */
  hasRoom(heightPt: number): boolean {
    return this.#y + heightPt <= this.bottom + 0.01;
  }

  /** Goes down by a height that was used, or left empty. */
  advance(heightPt: number): void {
    this.#y += heightPt;
  }

  newPage(): void {
    this.#addPage();
    this.text(this.#running, this.left, margins.top, sizes.heading);
    this.#y = this.#topOfFollowing();
  }

  /** Places a line of text with its top at `y`. */
  text(line: SetLine, x: number, y: number, sizePt: number): void {
    if (line.runs.length > 0) this.page.marks.push({ is: 'text', x, y: y + sizePt, sizePt, line });
  }

  words(text: string, x: number, y: number, sizePt: number, weight: Weight = 'regular'): void {
    this.text(setLine(text, weight, this.typeCase), x, y, sizePt);
  }

  #topOfFollowing(): number {
    return margins.top + sizes.heading * lineFactor + 6;
  }

  #addPage(): void {
    this.pages.push({ ...this.size, marks: [] });
    this.#y = margins.top;
  }
}
