import { cellText } from '../../../core/sheets/cell-text.ts';
import { type Mark as ChangeMark, rowId } from '../../../core/sheets/differences.ts';
import type { Column, Row, TablePart } from '../../../core/sheets/sheet.ts';
import type { SetLine } from '../fonts/type-case.ts';
import { type ColumnSet, cellPad, columnSets } from './column-widths.ts';
import { greys, rule } from './display-list.ts';
import { lineFactor, sizes } from './measures.ts';
import { setHeading, setMarginMark, setText } from './set-text.ts';
import type { SheetFlow } from './sheet-flow.ts';
import { wrapText } from './wrap-text.ts';

const rowPad = 2.5;
const tickSide = 9;
/** A table does not begin at the foot of a page for fewer rows. */
const togetherRows = 3;

type Marks = ReadonlyMap<string, ChangeMark>;

/** A table with its heading: its head again on every page, its rows never broken over two. */
export function setTable(flow: SheetFlow, part: TablePart, partAt: number, marks: Marks): void {
  if (part.rows.length === 0) {
    if (part.heading !== null) setHeading(flow, part.heading, sizes.body * 3);
    setText(flow, [part.empty]);
    return;
  }
  const sizePt = sizeFor(flow, part);
  const sets = columnSets(part, flow.right - flow.left, sizePt, flow.typeCase);
  sets.forEach((set, at) => {
    const heading =
      sets.length === 1
        ? part.heading
        : `${part.heading ?? ''} (${at + 1} of ${sets.length} beside each other)`;
    new TableSetter(flow, part, partAt, set, sizePt, marks).set(heading?.trim() ?? null);
  });
  flow.advance(6);
}

/** The usual size where it breaks few rows into lines, the smallest that is legible otherwise. */
function sizeFor(flow: SheetFlow, part: TablePart): number {
  const widthPt = flow.right - flow.left;
  const sets = columnSets(part, widthPt, sizes.body, flow.typeCase);
  const [only] = sets;
  if (sets.length > 1 || !only) return sizes.narrowBody;
  const broken = part.rows.filter((row) =>
    linesOfRow(flow, part, row, only, sizes.body).some((it) => it.length > 1),
  );
  return broken.length * 8 > part.rows.length ? sizes.narrowBody : sizes.body;
}

function linesOfRow(flow: SheetFlow, part: TablePart, row: Row, set: ColumnSet, sizePt: number): SetLine[][] {
  const weight = row.look === 'strong' || row.look === 'group' ? 'bold' : 'regular';
  return set.columns.map((at, place) => {
    const column = part.columns[at];
    if (!column || column.kind === 'tick') return [];
    const width = (set.widths[place] ?? 0) - 2 * cellPad;
    return wrapText(cellText(row.cells[at] ?? null, column), width, sizePt, weight, flow.typeCase);
  });
}

class TableSetter {
  readonly #flow: SheetFlow;
  readonly #part: TablePart;
  readonly #partAt: number;
  readonly #set: ColumnSet;
  readonly #sizePt: number;
  readonly #marks: Marks;
  readonly #head: SetLine[][];

  constructor(
    flow: SheetFlow,
    part: TablePart,
    partAt: number,
    set: ColumnSet,
    sizePt: number,
    marks: Marks,
  ) {
    this.#flow = flow;
    this.#part = part;
    this.#partAt = partAt;
    this.#set = set;
    this.#sizePt = sizePt;
    this.#marks = marks;
    this.#head = set.columns.map((at, place) =>
      wrapText(
        part.columns[at]?.title ?? '',
        (set.widths[place] ?? 0) - 2 * cellPad,
        sizePt,
        'bold',
        flow.typeCase,
      ),
    );
  }

  set(heading: string | null): void {
    const rows = this.#part.rows.map((row) =>
      linesOfRow(this.#flow, this.#part, row, this.#set, this.#sizePt),
    );
    const first = rows.slice(0, togetherRows).reduce((sum, lines) => sum + this.#heightOf(lines), 0);
    const needed = Math.min(this.#heightOf(this.#head) + first, this.#flow.fullHeight / 2);
    if (heading !== null) setHeading(this.#flow, heading, needed);
    else if (!this.#flow.hasRoom(needed)) this.#flow.newPage();
    this.#setHeadRow();
    this.#part.rows.forEach((row, at) => {
      for (const lines of this.#piecesOf(rows[at] ?? [])) this.#setRow(row, lines);
    });
  }

  /** A row that is taller than a page is the only one that may go on overleaf. */
  #piecesOf(lines: SetLine[][]): SetLine[][][] {
    const room = this.#flow.fullHeight - this.#heightOf(this.#head) - 2 * rowPad;
    const most = Math.max(1, Math.floor(room / (this.#sizePt * lineFactor)));
    const longest = Math.max(0, ...lines.map((it) => it.length));
    const pieces: SetLine[][][] = [];
    for (let from = 0; from === 0 || from < longest; from += most)
      pieces.push(lines.map((it) => it.slice(from, from + most)));
    return pieces;
  }

  #heightOf(lines: SetLine[][]): number {
    const most = Math.max(1, ...lines.map((it) => it.length));
    return Math.max(most * this.#sizePt * lineFactor, tickSide + 1) + 2 * rowPad;
  }

  #setHeadRow(): void {
    const height = this.#heightOf(this.#head);
    this.#fill(height, greys.head);
    this.#setCells(this.#head, height, 'bottom');
    this.#flow.page.marks.push(rule(this.#flow.left, this.#flow.y + height, this.#endX, 1));
    this.#flow.advance(height);
  }

  #setRow(row: Row, lines: SetLine[][]): void {
    const height = this.#heightOf(lines);
    if (!this.#flow.hasRoom(height)) {
      this.#flow.newPage();
      this.#setHeadRow();
    }
    if (row.look === 'group' || row.look === 'strong') this.#fill(height, greys.group);
    const mark = this.#marks.get(rowId(this.#part, this.#partAt, row.key));
    if (mark) setMarginMark(this.#flow, mark, height);
    this.#setCells(lines, height, 'top');
    this.#setTicks(row);
    this.#flow.page.marks.push(rule(this.#flow.left, this.#flow.y + height, this.#endX, 0.5, greys.rule));
    this.#flow.advance(height);
  }

  #setCells(lines: SetLine[][], height: number, stand: 'top' | 'bottom'): void {
    this.#eachColumn((column, place, x, width) => {
      const cell = lines[place] ?? [];
      const used = cell.length * this.#sizePt * lineFactor;
      const top = this.#flow.y + (stand === 'top' ? rowPad : height - rowPad - used);
      cell.forEach((line, at) => {
        const free = width - 2 * cellPad - line.unitWidth * this.#sizePt;
        const shift = column.align === 'right' ? free : column.align === 'centre' ? free / 2 : 0;
        this.#flow.text(
          line,
          x + cellPad + Math.max(0, shift),
          top + at * this.#sizePt * lineFactor,
          this.#sizePt,
        );
      });
    });
  }

  #setTicks(row: Row): void {
    this.#eachColumn((column, place, x, width) => {
      if (column.kind !== 'tick' || row.look === 'group' || row.look === 'quiet') return;
      const side = { x: x + (width - tickSide) / 2, y: this.#flow.y + rowPad + 0.5 };
      this.#flow.page.marks.push({
        is: 'rect',
        ...side,
        width: tickSide,
        height: tickSide,
        fill: null,
        linePt: 0.8,
      });
      const at = this.#set.columns[place] ?? -1;
      if (row.cells[at] === true) this.#cross(side.x, side.y);
    });
  }

  #cross(x: number, y: number): void {
    const ends: [number, number][][] = [
      [
        [x, y],
        [x + tickSide, y + tickSide],
      ],
      [
        [x, y + tickSide],
        [x + tickSide, y],
      ],
    ];
    for (const points of ends)
      this.#flow.page.marks.push({ is: 'path', points, closed: false, fill: null, linePt: 1, dashed: false });
  }

  #eachColumn(then: (column: Column, place: number, x: number, width: number) => void): void {
    let x = this.#flow.left;
    this.#set.columns.forEach((at, place) => {
      const column = this.#part.columns[at];
      const width = this.#set.widths[place] ?? 0;
      if (column) then(column, place, x, width);
      x += width;
    });
  }

  get #endX(): number {
    return this.#flow.left + this.#set.widths.reduce((sum, it) => sum + it, 0);
  }

  #fill(height: number, fill: string): void {
    const { left, y } = this.#flow;
    this.#flow.page.marks.push({ is: 'rect', x: left, y, width: this.#endX - left, height, fill, linePt: 0 });
  }
}
