import { useState } from 'react';
import type { Id } from '../../core/show/rig.ts';
import type { Cursor } from '../parts/grid-cursor.ts';
import type { Here } from '../state/here.tsx';
import type { MixTable } from './mix-table.ts';

type Looking = { sourceId: Id | null; mixId: Id | null; look: Here['look'] };

/** The cursor is what this window looks at: moving it moves the listening line, and the other way round. */
export function useMixCursor({ rows, columns }: MixTable, actId: Id, { sourceId, mixId, look }: Looking) {
  const [anchor, setAnchor] = useState<{ actId: Id; row: number; column: number } | null>(null);
  const row = Math.max(
    0,
    rows.findIndex(({ source }) => source.id === sourceId),
  );
  const column = Math.max(
    0,
    columns.findIndex(({ mix }) => mix.id === mixId),
  );
  const from = anchor?.actId === actId ? anchor : { row, column };
  const at: Cursor = {
    row,
    column,
    anchorRow: Math.min(from.row, Math.max(0, rows.length - 1)),
    anchorColumn: Math.min(from.column, Math.max(0, columns.length - 1)),
  };
  const move = (next: Cursor) => {
    const isRange = next.anchorRow !== next.row || next.anchorColumn !== next.column;
    setAnchor(isRange ? { actId, row: next.anchorRow, column: next.anchorColumn } : null);
    look({
      sourceId: rows[next.row]?.source.id ?? null,
      mixId: columns[next.column]?.mix.id ?? null,
    });
  };
  return { at, move };
}

/** The cell, row or column under the mouse as a cursor; from the cursor that was, where the range grows. */
export function pointedAt(
  { row, column, headRow, headColumn }: DOMStringMap,
  from: Cursor | null,
  size: { rows: number; columns: number },
): Cursor {
  const at = { row: Number(row ?? headRow ?? 0), column: Number(column ?? headColumn ?? 0) };
  const anchor = {
    anchorRow: headColumn !== undefined ? size.rows - 1 : (from?.anchorRow ?? at.row),
    anchorColumn: headRow !== undefined ? size.columns - 1 : (from?.anchorColumn ?? at.column),
  };
  return { ...at, ...anchor };
}

export const sameCursor = (a: Cursor, b: Cursor) =>
  a.row === b.row &&
  a.column === b.column &&
  a.anchorRow === b.anchorRow &&
  a.anchorColumn === b.anchorColumn;
