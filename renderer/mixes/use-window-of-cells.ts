import { type RefObject, useCallback, useEffect, useRef, useState } from 'react';

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

/**
 * Follows the scrolling of a table and answers which cells are worth drawing, how wide the heads of the rows are, and
 * what brings a cell into sight. Nobody else asks the table for its place or size: after a change that would make the
 * browser lay out everything at once, and again before it paints.
 */
export function useWindowOfCells(
  ref: RefObject<HTMLElement | null>,
  { rows, columns, leastHeadWidth }: { rows: number; columns: number; leastHeadWidth: number },
): CellWindow & { headWidth: number; bringIntoSight: (row: number, column: number) => void } {
  const [shown, setShown] = useState(firstWindow);
  const seen = useRef({ scrollTop: 0, scrollLeft: 0, clientHeight: 0, clientWidth: 0 });
  const spare = shown.width - leastHeadWidth - columns * cellWidth;
  const headWidth = leastHeadWidth + Math.max(0, Math.min(mostSpareWidth, spare));
  const measure = useCallback(() => {
    const table = ref.current;
    if (!table) return;
    const { scrollTop, scrollLeft, clientHeight, clientWidth } = table;
    seen.current = { scrollTop, scrollLeft, clientHeight, clientWidth };
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
  const bringIntoSight = useCallback(
    (row: number, column: number) => {
      const { scrollTop, scrollLeft, clientHeight, clientWidth } = seen.current;
      if (!ref.current || clientHeight === 0) return;
      const top = nearest(scrollTop, row * rowHeight, rowHeight, clientHeight - columnHeadHeight);
      const left = nearest(scrollLeft, column * cellWidth, cellWidth, clientWidth - headWidth);
      if (top === scrollTop && left === scrollLeft) return;
      ref.current.scrollTo(left, top);
      seen.current = { ...seen.current, scrollTop: top, scrollLeft: left };
    },
    [ref, headWidth],
  );
  return {
    ...shown,
    headWidth,
    bringIntoSight,
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

/** How far to scroll, at the least, so that something at a place and of a size is in the room there is. */
function nearest(scrolled: number, at: number, size: number, room: number): number {
  return Math.max(at + size - room, Math.min(at, scrolled));
}
