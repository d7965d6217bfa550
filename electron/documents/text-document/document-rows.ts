import { cleanText } from '../decode-text.ts';
import { limits } from '../limits.ts';
import { walkXml, type XmlVisitor } from '../walk-xml.ts';
import type { ListNumbers } from './list-numbers.ts';

/** Rows of one part of a text document: a paragraph is a row, a table's row is a row with its cells. */
export function rowsOfPart(xml: string, numbers: ListNumbers): string[][] {
  const reader = new PartReader(numbers);
  walkXml(xml, reader);
  return reader.rows;
}

/** Texts that are not part of what is printed: deleted ones, field codes, and the second copy of a text box. */
const unprinted = new Set(['del', 'moveFrom', 'instrText', 'delText', 'Fallback']);

type Cell = { paragraphs: string[]; span: number; goesOn: boolean };
type Paragraph = { text: string; list: string | null; level: string; style: string };
type Attribute = (name: string) => string | undefined;

class PartReader implements XmlVisitor {
  readonly rows: string[][] = [];
  readonly #numbers: ListNumbers;
  /** A text box or a nested table stands inside a paragraph, so paragraphs are a stack. */
  readonly #paragraphs: Paragraph[] = [];
  #tableDepth = 0;
  #row: Cell[] = [];
  #above: string[] = [];
  #unprinted = 0;
  #inText = false;
  #depth = 0;

  readonly #opens: Record<string, (attribute: Attribute) => void> = {
    tbl: () => {
      this.#tableDepth += 1;
      if (this.#tableDepth === 1) this.#above = [];
    },
    tr: () => {
      if (this.#tableDepth === 1) this.#row = [];
    },
    tc: () => {
      if (this.#tableDepth === 1) this.#row.push({ paragraphs: [], span: 1, goesOn: false });
    },
    gridSpan: (attribute) => this.#inCell((cell) => (cell.span = Number(attribute('val') ?? 1))),
    vMerge: (attribute) => this.#inCell((cell) => (cell.goesOn = attribute('val') !== 'restart')),
    p: () => this.#paragraphs.push({ text: '', list: null, level: '0', style: '' }),
    pStyle: (attribute) => this.#inParagraph((it) => (it.style = attribute('val') ?? '')),
    ilvl: (attribute) => this.#inParagraph((it) => (it.level = attribute('val') ?? '0')),
    numId: (attribute) => this.#inParagraph((it) => (it.list = attribute('val') ?? null)),
    t: () => {
      this.#inText = true;
    },
    tab: () => this.#write('\t'),
    br: () => this.#write('\n'),
    cr: () => this.#write('\n'),
    noBreakHyphen: () => this.#write('-'),
  };

  readonly #closes: Record<string, () => void> = {
    t: () => {
      this.#inText = false;
    },
    p: () => this.#closeParagraph(),
    tr: () => {
      if (this.#tableDepth === 1) this.#closeRow();
    },
    tbl: () => {
      this.#tableDepth -= 1;
    },
  };

  constructor(numbers: ListNumbers) {
    this.#numbers = numbers;
  }

  open(name: string, attribute: Attribute): void {
    this.#depth += 1;
    if (this.#depth > 500) throw new Error('nested deeper than any document');
    if (unprinted.has(name)) this.#unprinted += 1;
    if (this.#unprinted === 0) this.#opens[name]?.(attribute);
  }

  text(text: string): void {
    if (this.#inText && this.#unprinted === 0) this.#write(text);
  }

  close(name: string): void {
    this.#depth -= 1;
    if (this.#unprinted === 0) this.#closes[name]?.();
    if (unprinted.has(name)) this.#unprinted -= 1;
  }

  #write(text: string): void {
    this.#inParagraph((it) => (it.text += text));
  }

  #inParagraph(change: (paragraph: Paragraph) => void): void {
    const paragraph = this.#paragraphs.at(-1);
    if (paragraph) change(paragraph);
  }

  #inCell(change: (cell: Cell) => void): void {
    const cell = this.#row.at(-1);
    if (cell && this.#tableDepth === 1) change(cell);
  }

  #closeParagraph(): void {
    const paragraph = this.#paragraphs.pop();
    if (!paragraph) return;
    const text = cleanText(this.#numbered(paragraph));
    const cell = this.#row.at(-1);
    if (this.#tableDepth > 0 && cell) cell.paragraphs.push(text);
    else for (const line of text.split('\n')) this.#addRow(line.split('\t').map((part) => part.trim()));
  }

  /** A number of a list stands before its text; in an empty cell it is the text. */
  #numbered({ text, list, level, style }: Paragraph): string {
    const ofStyle = this.#numbers.ofStyle(style);
    const number =
      list === null
        ? ofStyle && this.#numbers.next(ofStyle.list, ofStyle.level)
        : this.#numbers.next(list, level);
    if (!number) return text;
    if (text.trim() === '') return number === '-' ? '' : number;
    return number === '-' ? `- ${text}` : `${number}. ${text}`;
  }

  #closeRow(): void {
    const cells: string[] = [];
    for (const { paragraphs, span, goesOn } of this.#row) {
      const own = paragraphs
        .filter((text) => text.trim() !== '')
        .join('\n')
        .trim();
      // A cell merged over several rows holds for each of them.
      cells.push(goesOn ? (this.#above[cells.length] ?? '') : own);
      for (let more = 1; more < Math.min(span, limits.columns); more += 1) cells.push('');
    }
    this.#above = cells;
    this.#row = [];
    this.#addRow(cells);
  }

  /** One row more than is read is kept, by which the whole is then refused. */
  #addRow(cells: string[]): void {
    if (this.rows.length <= limits.rows) this.rows.push(cells);
  }
}
