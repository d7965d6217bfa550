import { type RefObject, useCallback, useEffect, useState } from 'react';

/** Sizes of the table in CSS pixels. They are fixed, so that no layout has to look at what the cells hold. */
export const cellWidth = 78;
export const rowHeight = 27;
export const columnHeadHeight = 104;
/** Channels of a row stand side by side; a source with many copies needs more room for them. */
export const rowHeadWidth = (mostCopies: number): number => 204 + Math.max(2, mostCopies) * 51;

/** Rows and columns that are drawn: those in sight and a few more on each side. `end` is one past the last. */
export type CellWindow = { firstRow: number; endRow: number; firstColumn: number; endColumn: number };

const margin = 3;

/** Follows the scrolling of a table and answers which cells are worth drawing. */
export function useWindowOfCells(
  ref: RefObject<HTMLElement | null>,
  rows: number,
  columns: number,
): CellWindow {
  const [shown, setShown] = useState<CellWindow>({ firstRow: 0, endRow: 40, firstColumn: 0, endColumn: 16 });
  const measure = useCallback(() => {
    const table = ref.current;
    if (!table) return;
    const firstRow = Math.max(0, Math.floor(table.scrollTop / rowHeight) - margin);
    const firstColumn = Math.max(0, Math.floor(table.scrollLeft / cellWidth) - margin);
    const next = {
      firstRow,
      endRow: firstRow + Math.ceil(table.clientHeight / rowHeight) + 2 * margin,
      firstColumn,
      endColumn: firstColumn + Math.ceil(table.clientWidth / cellWidth) + 2 * margin,
    };
    setShown((now) => (sameWindow(now, next) ? now : next));
  }, [ref]);
  useEffect(() => {
    const table = ref.current;
    if (!table) return;
    measure();
    table.addEventListener('scroll', measure, { passive: true });
    const sizes = new ResizeObserver(measure);
    sizes.observe(table);
    return () => {
      table.removeEventListener('scroll', measure);
      sizes.disconnect();
    };
  }, [ref, measure]);
  return {
    ...shown,
    endRow: Math.min(shown.endRow, rows),
    endColumn: Math.min(shown.endColumn, columns),
  };
}

const sameWindow = (a: CellWindow, b: CellWindow) =>
  a.firstRow === b.firstRow &&
  a.endRow === b.endRow &&
  a.firstColumn === b.firstColumn &&
  a.endColumn === b.endColumn;

/** Scrolls as little as it takes for a cell to stand clear of the heads. */
export function bringIntoSight(table: HTMLElement, row: number, column: number, headWidth: number): void {
  const [top, left] = [row * rowHeight, column * cellWidth];
  const [height, width] = [table.clientHeight - columnHeadHeight, table.clientWidth - headWidth];
  if (top < table.scrollTop) table.scrollTop = top;
  else if (top + rowHeight > table.scrollTop + height) table.scrollTop = top + rowHeight - height;
  if (left < table.scrollLeft) table.scrollLeft = left;
  else if (left + cellWidth > table.scrollLeft + width) table.scrollLeft = left + cellWidth - width;
}
