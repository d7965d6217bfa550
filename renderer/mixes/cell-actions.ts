import type { Feed } from '../../core/derive/derived.ts';
import type { Change } from '../../core/show/change.ts';
import { offsetText } from '../parts/format.ts';
import type { Range } from '../parts/grid-cursor.ts';
import type { ActOnScreen } from '../state/derive-cache.ts';
import { words } from '../wording/words.ts';
import {
  cellForSpreadsheet,
  fromTabbedText,
  lowestDb,
  readTypedCell,
  type TypedCell,
  toTabbedText,
} from './cell-text.ts';
import {
  type CellPlace,
  cellLabel,
  changeOf,
  chooseCopy,
  putFeedBack,
  setAmount,
  setLevel,
  takeOut,
} from './mix-changes.ts';
import type { MixTable } from './mix-table.ts';
import { nextCopy } from './next-copy.ts';

/** What can be done with a range of cells: each as one change, so that one undo takes it back. */
export class CellActions {
  readonly #open: ActOnScreen;
  readonly #table: MixTable;
  readonly #range: Range;

  constructor(open: ActOnScreen, table: MixTable, range: Range) {
    this.#open = open;
    this.#table = table;
    this.#range = range;
  }

  /** Sets every cell to what was typed; or says why not. */
  typed(text: string): { change: Change } | { why: string } {
    const cell = readTypedCell(text);
    if (cell.of === 'refused') return { why: cell.why };
    return {
      change: this.#change(
        words.mixes.set,
        this.#places().map((place) => ({ place, cell })),
      ),
    };
  }

  takeOut(): Change {
    const places = this.#places();
    return changeOf(this.#label(words.mixes.takeOut, places), takeOut(this.#open.sheet, places));
  }

  putBack(): Change {
    const places = this.#places();
    const label = this.#label(words.mixes.putBack, places);
    return changeOf(label, ...places.map((place) => putFeedBack(this.#open.sheet, place)));
  }

  chooseNextCopy(): Change {
    const places = this.#places();
    const label = this.#label(words.mixes.copy, places);
    return changeOf(
      label,
      ...places.map((place) => chooseCopy(this.#open.sheet, place, nextCopy(this.#open, place))),
    );
  }

  /** The range as a spreadsheet takes it. */
  copied(): string {
    const { top, bottom, left, right } = this.#range;
    const rows = this.#table.rows.slice(top, bottom + 1);
    const columns = this.#table.columns.slice(left, right + 1);
    return toTabbedText(
      rows.map(({ feeds }) => columns.map(({ place }) => cellForSpreadsheet(feeds()[place]))),
    );
  }

  /** Sets the range to what its first row or column says; a range of one takes what stands before it. */
  filled(towards: 'down' | 'right'): Change | null {
    const { top, bottom, left, right } = this.#range;
    const [before, one] =
      towards === 'down' ? [{ row: top - 1 }, top === bottom] : [{ column: left - 1 }, left === right];
    const from = one ? before : towards === 'down' ? { row: top } : { column: left };
    const cells = this.#cells().flatMap(({ row, column, place }) => {
      const feed = this.#feedOf(from.row ?? row, from.column ?? column);
      return feed ? [{ place, cell: readTypedCell(cellForSpreadsheet(feed)) }] : [];
    });
    if (cells.length === 0) return null;
    return this.#change(words.mixes.fill, cells);
  }

  /** Makes every level of the range louder or quieter by the same; nothing goes above 0 dB. */
  nudged(byDb: number): Change | null {
    const cells = this.#cells().flatMap(({ row, column, place }) => {
      const levelDb = this.#feedOf(row, column)?.levelDb;
      if (levelDb == null) return [];
      const next = Math.max(lowestDb, Math.min(0, levelDb + byDb));
      return next === levelDb ? [] : [{ place, cell: { of: 'level', levelDb: next } as const }];
    });
    if (cells.length === 0) return null;
    return this.#change(offsetText(byDb), cells);
  }

  /**
   * Sets cells to what a spreadsheet gave, from the top left of the range on; one bad cell refuses all of it.
   * `outside` counts the cells that found no place in the table.
   */
  pasted(text: string): { change: Change; cells: number; outside: number } | { at: string; why: string } {
    const all = spread(fromTabbedText(text), this.#range);
    const cells = all.flatMap(({ row, column, text: typed }) => {
      const place = this.#placeAt(row, column);
      return place ? [{ place, cell: readTypedCell(typed) }] : [];
    });
    for (const { place, cell } of cells)
      if (cell.of === 'refused') return { at: cellLabel(this.#open.sheet, place), why: cell.why };
    return {
      cells: all.length,
      outside: all.length - cells.length,
      change: this.#change(words.mixes.paste, cells),
    };
  }

  #places(): CellPlace[] {
    return this.#cells().map(({ place }) => place);
  }

  #cells(): { row: number; column: number; place: CellPlace }[] {
    const { top, bottom, left, right } = this.#range;
    const cells: { row: number; column: number; place: CellPlace }[] = [];
    for (let row = top; row <= bottom; row++)
      for (let column = left; column <= right; column++) {
        const place = this.#placeAt(row, column);
        if (place) cells.push({ row, column, place });
      }
    return cells;
  }

  #placeAt(row: number, column: number): CellPlace | null {
    const [source, mix] = [this.#table.rows[row]?.source, this.#table.columns[column]?.mix];
    return source && mix ? { mixId: mix.id, sourceId: source.id } : null;
  }

  #change(verb: string, cells: readonly { place: CellPlace; cell: TypedCell }[]): Change {
    const { sheet } = this.#open;
    const places = cells.map(({ place }) => place);
    const parts = cells.flatMap(({ place, cell }) => {
      if (cell.of === 'amount') return [setAmount(sheet, place, cell.amount)];
      const feed = this.#feedAt(place);
      return cell.of === 'level' && feed ? [setLevel(sheet, place, feed, cell.levelDb)] : [];
    });
    const emptied = cells.filter(({ cell }) => cell.of === 'nothing').map(({ place }) => place);
    return changeOf(this.#label(verb, places), ...parts, takeOut(sheet, emptied));
  }

  #feedOf(row: number, column: number): Feed | undefined {
    const place = this.#table.columns[column]?.place;
    return place === undefined ? undefined : this.#table.rows[row]?.feeds()[place];
  }

  #feedAt({ mixId, sourceId }: CellPlace): Feed | undefined {
    const row = this.#table.rows.find(({ source }) => source.id === sourceId);
    const column = this.#table.columns.find(({ mix }) => mix.id === mixId);
    return column && row?.feeds()[column.place];
  }

  #label(verb: string, places: readonly CellPlace[]): string {
    const first = places[0];
    const what =
      first && places.length === 1 ? cellLabel(this.#open.sheet, first) : words.mixes.cells(places.length);
    return `${verb}: ${what}`;
  }
}

/**
 * Pasted cells from the top left of the range on. Where the range is a whole number of them in both directions they
 * are repeated, so that one cell or one row fills all of it.
 */
function spread(pasted: string[][], range: Range) {
  const [down, across] = [range.bottom - range.top + 1, range.right - range.left + 1];
  const [rows, columns] = [pasted.length, Math.max(0, ...pasted.map((cells) => cells.length))];
  const repeats = columns > 0 && down % rows === 0 && across % columns === 0;
  const [times, timesAcross] = repeats ? [down / rows, across / columns] : [1, 1];
  return Array.from({ length: rows * times }, (_, row) => {
    const cells = pasted[row % rows] ?? [];
    return Array.from({ length: timesAcross }, (_, time) =>
      cells.map((text, column) => ({
        row: range.top + row,
        column: range.left + time * columns + column,
        text,
      })),
    );
  }).flat(2);
}
