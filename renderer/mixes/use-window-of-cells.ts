import { type RefObject, useCallback, useEffect, useState } from 'react';

/** Sizes of the table in CSS pixels. They are fixed, so that no layout has to look at what the cells hold. */
export const cellWidth = 78;
export const rowHeight = 27;
export const columnHeadHeight = 104;
/** Channels of a row stand side by side; a source with many copies needs more room for them. */
export const rowHeadWidth = (mostCopies: number): number => nameWidth + Math.max(2, mostCopies) * 51;
/** Socket and name of a source, at the least. */
export const nameWidth = 204;

/** What a head may take more where the columns leave room: long names of sources are read whole. */
const mostSpareWidth = 160;

/** Rows and columns that are drawn: those in sight and a few more on each side. `end` is one past the last. */
type CellWindow = { firstRow: number; endRow: number; firstColumn: number; endColumn: number; width: number };

/** Drawn beyond the edge, so that a turn of the wheel meets cells that are there already. */
const margin = { rows: 3, columns: 1 };

/** Until the table has been measured. */
const firstWindow: CellWindow = { firstRow: 0, endRow: 24, firstColumn: 0, endColumn: 9, width: 0 };

/** Follows the scrolling of a table and answers which cells are worth drawing, and how wide the heads of the rows are. */
export function useWindowOfCells(
  ref: RefObject<HTMLElement | null>,
  { rows, columns, leastHeadWidth }: { rows: number; columns: number; leastHeadWidth: number },
): CellWindow & { headWidth: number } {
  const [shown, setShown] = useState(firstWindow);
  const spare = shown.width - leastHeadWidth - columns * cellWidth;
  const headWidth = leastHeadWidth + Math.max(0, Math.min(mostSpareWidth, spare));
  const measure = useCallback(() => {
    const table = ref.current;
    if (!table) return;
    const { scrollTop, scrollLeft, clientHeight, clientWidth } = table;
    const firstRow = Math.floor(scrollTop / rowHeight);
    const firstColumn = Math.floor(scrollLeft / cellWidth);
    const next = {
      firstRow: Math.max(0, firstRow - margin.rows),
      endRow: firstRow + Math.ceil((clientHeight - columnHeadHeight) / rowHeight) + 1 + margin.rows,
      firstColumn: Math.max(0, firstColumn - margin.columns),
      endColumn: firstColumn + Math.ceil((clientWidth - headWidth) / cellWidth) + 1 + margin.columns,
      width: clientWidth,
    };
    setShown((now) => (sameWindow(now, next) ? now : next));
  }, [ref, headWidth]);
  useEffect(() => {
    const table = ref.current;
    if (!table) return;
    table.addEventListener('scroll', measure, { passive: true });
    // Tells the size at once, when it is known anyway, and each time it changes.
    const sizes = new ResizeObserver(measure);
    sizes.observe(table);
    return () => {
      table.removeEventListener('scroll', measure);
      sizes.disconnect();
    };
  }, [ref, measure]);
  return {
    ...shown,
    headWidth,
    endRow: Math.min(shown.endRow, rows),
    endColumn: Math.min(shown.endColumn, columns),
  };
}

const sameWindow = (a: CellWindow, b: CellWindow) =>
  a.width === b.width &&
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
