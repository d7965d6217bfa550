import type { Change } from '../../core/show/change.ts';
import type { Range } from '../parts/grid-cursor.ts';
import type { ActOnScreen } from '../state/derive-cache.ts';
import { words } from '../wording/words.ts';
import {
  cellForSpreadsheet,
  fromTabbedText,
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
    const places = this.#places();
    return {
      change: this.#change(
        words.mixes.set,
        places,
        places.map((place) => ({ place, cell })),
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
    return toTabbedText(rows.map(({ feeds }) => feeds.slice(left, right + 1).map(cellForSpreadsheet)));
  }

  /** Sets cells to what a spreadsheet gave, from the top left of the range on; one bad cell refuses all of it. */
  pasted(text: string): { change: Change } | { at: string; why: string } {
    const cells = spread(fromTabbedText(text), this.#range).flatMap(({ row, column, text: typed }) => {
      const place = this.#placeAt(row, column);
      return place ? [{ place, cell: readTypedCell(typed) }] : [];
    });
    for (const { place, cell } of cells)
      if (cell.of === 'refused') return { at: cellLabel(this.#open.sheet, place), why: cell.why };
    return {
      change: this.#change(
        words.mixes.paste,
        cells.map(({ place }) => place),
        cells,
      ),
    };
  }

  #places(): CellPlace[] {
    const { top, bottom, left, right } = this.#range;
    const places: CellPlace[] = [];
    for (let row = top; row <= bottom; row++)
      for (let column = left; column <= right; column++) {
        const place = this.#placeAt(row, column);
        if (place) places.push(place);
      }
    return places;
  }

  #placeAt(row: number, column: number): CellPlace | null {
    const [source, mix] = [this.#table.rows[row]?.source, this.#table.columns[column]?.mix];
    return source && mix ? { mixId: mix.id, sourceId: source.id } : null;
  }

  #change(
    verb: string,
    places: readonly CellPlace[],
    cells: readonly { place: CellPlace; cell: TypedCell }[],
  ): Change {
    const { sheet } = this.#open;
    const parts = cells.flatMap(({ place, cell }) => {
      if (cell.of === 'amount') return [setAmount(sheet, place, cell.amount)];
      const feed = this.#feedAt(place);
      return cell.of === 'level' && feed ? [setLevel(sheet, place, feed, cell.levelDb)] : [];
    });
    const emptied = cells.filter(({ cell }) => cell.of === 'nothing').map(({ place }) => place);
    return changeOf(this.#label(verb, places), ...parts, takeOut(sheet, emptied));
  }

  #feedAt({ mixId, sourceId }: CellPlace) {
    const row = this.#table.rows.find(({ source }) => source.id === sourceId);
    return row?.feeds.find((feed) => feed.mixId === mixId);
  }

  #label(verb: string, places: readonly CellPlace[]): string {
    const first = places[0];
    const what =
      first && places.length === 1 ? cellLabel(this.#open.sheet, first) : words.mixes.cells(places.length);
    return `${verb}: ${what}`;
  }
}

/** Pasted cells from the top left of the range on; a single one fills the whole range. */
function spread(pasted: string[][], range: Range) {
  const only = pasted.length === 1 && pasted[0]?.length === 1 ? pasted[0][0] : undefined;
  if (only === undefined)
    return pasted.flatMap((cells, down) =>
      cells.map((text, across) => ({ row: range.top + down, column: range.left + across, text })),
    );
  const filled: { row: number; column: number; text: string }[] = [];
  for (let row = range.top; row <= range.bottom; row++)
    for (let column = range.left; column <= range.right; column++) filled.push({ row, column, text: only });
  return filled;
}
