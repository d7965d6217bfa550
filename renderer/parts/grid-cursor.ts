/** Where the keyboard is in a table, and the range that Shift spans from the anchor. Counted from 0. */
export type Cursor = { row: number; column: number; anchorRow: number; anchorColumn: number };
export type TableSize = { rows: number; columns: number; page: number };
export type Range = { top: number; bottom: number; left: number; right: number };

export const cursorAt = (row: number, column: number): Cursor => ({
  row,
  column,
  anchorRow: row,
  anchorColumn: column,
});

export function rangeOf({ row, column, anchorRow, anchorColumn }: Cursor): Range {
  return {
    top: Math.min(row, anchorRow),
    bottom: Math.max(row, anchorRow),
    left: Math.min(column, anchorColumn),
    right: Math.max(column, anchorColumn),
  };
}

export const isInRange = (range: Range, row: number, column: number): boolean =>
  row >= range.top && row <= range.bottom && column >= range.left && column <= range.right;

type Press = { key: string; shiftKey: boolean; ctrlKey: boolean; metaKey: boolean; altKey: boolean };

/** The cursor after a key, or null where the key does not move it. Ctrl goes to the edge, Shift keeps the anchor. */
export function movedCursor(cursor: Cursor, press: Press, size: TableSize): Cursor | null {
  if (press.altKey || size.rows === 0 || size.columns === 0) return null;
  const far = press.ctrlKey || press.metaKey;
  const to = target(cursor, press.key, far, size);
  if (!to) return null;
  const row = Math.max(0, Math.min(size.rows - 1, to.row));
  const column = Math.max(0, Math.min(size.columns - 1, to.column));
  return press.shiftKey ? { ...cursor, row, column } : cursorAt(row, column);
}

function target({ row, column }: Cursor, key: string, far: boolean, size: TableSize) {
  switch (key) {
    case 'ArrowUp':
      return { row: far ? 0 : row - 1, column };
    case 'ArrowDown':
      return { row: far ? size.rows - 1 : row + 1, column };
    case 'ArrowLeft':
      return { row, column: far ? 0 : column - 1 };
    case 'ArrowRight':
      return { row, column: far ? size.columns - 1 : column + 1 };
    case 'PageUp':
      return { row: row - size.page, column };
    case 'PageDown':
      return { row: row + size.page, column };
    case 'Home':
      return { row: far ? 0 : row, column: 0 };
    case 'End':
      return { row: far ? size.rows - 1 : row, column: size.columns - 1 };
    default:
      return null;
  }
}
