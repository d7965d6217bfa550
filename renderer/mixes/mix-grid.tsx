import {
  type ClipboardEvent,
  type CSSProperties,
  type KeyboardEvent,
  type MouseEvent,
  useEffect,
  useMemo,
  useRef,
  useState,
} from 'react';
import { type Cursor, cursorAt, isInRange, movedCursor, rangeOf } from '../parts/grid-cursor.ts';
import { whoHears } from '../parts/names.ts';
import type { ActOnScreen } from '../state/derive-cache.ts';
import { useHere } from '../state/here.tsx';
import { words } from '../wording/words.ts';
import { CellActions } from './cell-actions.ts';
import { CellEditor } from './cell-editor.tsx';
import { ColumnHead, FeedCell, RowHead } from './grid-parts.tsx';
import { feedKey, type MixTable } from './mix-table.ts';
import {
  bringIntoSight,
  cellWidth,
  columnHeadHeight,
  rowHeadWidth,
  rowHeight,
  useWindowOfCells,
} from './use-window-of-cells.ts';
import './mix-grid.css';

type Props = { open: ActOnScreen; table: MixTable; onDetails: () => void };

/** The table of the mixes. The whole of it is one stop of the Tab key; arrows move inside it. */
export function MixGrid({ open, table, onDetails }: Props) {
  const { view, look, change, tell } = useHere();
  const ref = useRef<HTMLDivElement>(null);
  const [typed, setTyped] = useState<string | null>(null);
  const { rows, columns } = table;
  const headWidth = rowHeadWidth(Math.max(0, ...rows.map((row) => row.copies.length)));
  const width = headWidth + columns.length * cellWidth;
  const cursor = useCursor(table);
  const shown = useWindowOfCells(ref, rows.length, columns.length);
  const range = rangeOf(cursor.at);
  const { sheet } = open;

  useEffect(() => {
    if (ref.current) bringIntoSight(ref.current, cursor.at.row, cursor.at.column, headWidth);
  }, [cursor.at.row, cursor.at.column, headWidth]);

  const actions = new CellActions(open, table, range);

  const commit = (text: string): string | null => {
    const outcome = actions.typed(text);
    if ('why' in outcome) return outcome.why;
    change(outcome.change);
    setTyped(null);
    ref.current?.focus();
    return null;
  };

  const paste = (event: ClipboardEvent) => {
    if (typed !== null) return;
    event.preventDefault();
    const outcome = actions.pasted(event.clipboardData.getData('text/plain'));
    if ('change' in outcome) change(outcome.change);
    else tell({ code: 'wrong request', what: words.mixes.pasteRefused(outcome.at), todo: outcome.why });
  };

  const copy = (event: ClipboardEvent) => {
    if (typed !== null) return;
    event.preventDefault();
    event.clipboardData.setData('text/plain', actions.copied());
  };

  const onKeyDown = (event: KeyboardEvent) => {
    if (typed !== null) return;
    const page = Math.max(1, shown.endRow - shown.firstRow - 8);
    const moved = movedCursor(cursor.at, event, { rows: rows.length, columns: columns.length, page });
    if (moved) cursor.move(moved);
    else if (!command(event)) return;
    event.preventDefault();
  };

  const command = (event: KeyboardEvent): boolean => {
    if (event.ctrlKey || event.metaKey || event.altKey) return false;
    switch (event.key) {
      case 'Enter':
        onDetails();
        return true;
      case 'F2':
        setTyped('');
        return true;
      case 'Delete':
        change(actions.takeOut());
        return true;
      case 'Backspace':
        change(actions.putBack());
        return true;
      case 'c':
        change(actions.chooseNextCopy());
        return true;
      case 'p':
      case 'P':
        look({ path: event.key === 'P' ? 'mix' : 'source' });
        return true;
      case 'f':
        look({ side: 'findings' });
        return true;
    }
    if (!/^[0-9nlso+−-]$/i.test(event.key)) return false;
    setTyped(event.key);
    return true;
  };

  const onMouseDown = (event: MouseEvent<HTMLElement>) => {
    const cell = (event.target as HTMLElement).closest<HTMLElement>('[data-row]');
    if (!cell) return;
    setTyped(null);
    const [row, column] = [Number(cell.dataset.row), Number(cell.dataset.column)];
    cursor.move(event.shiftKey ? { ...cursor.at, row, column } : cursorAt(row, column));
  };

  const activeId = `cell-${cursor.at.row}-${cursor.at.column}`;
  const drawnColumns = columns.slice(shown.firstColumn, shown.endColumn);
  return (
    // Not a table element: only the cells in sight are there.
    <div
      ref={ref}
      className="mix-grid"
      style={{ '--row-head': `${headWidth}px` } as CSSProperties}
      role="grid"
      tabIndex={0}
      data-first-focus
      aria-label={words.mixes.table(sheet.act.name)}
      aria-rowcount={rows.length + 1}
      aria-colcount={columns.length + 1}
      aria-multiselectable="true"
      aria-activedescendant={activeId}
      onKeyDown={onKeyDown}
      onMouseDown={onMouseDown}
      onDoubleClick={onDetails}
      onCopy={copy}
      onPaste={paste}
    >
      <div
        role="row"
        tabIndex={-1}
        aria-rowindex={1}
        className="mix-grid-head"
        style={{ width, height: columnHeadHeight }}
      >
        <div role="columnheader" tabIndex={-1} aria-colindex={1} className="mix-grid-corner">
          {words.mixes.corner}
        </div>
        {drawnColumns.map((column, index) => (
          <ColumnHead
            key={column.mix.id}
            open={open}
            column={column}
            index={shown.firstColumn + index}
            isChosen={column.mix.id === view.mixId}
          />
        ))}
      </div>
      <div role="rowgroup" className="mix-grid-body" style={{ height: rows.length * rowHeight, width }}>
        {rows.slice(shown.firstRow, shown.endRow).map((row, index) => {
          const rowIndex = shown.firstRow + index;
          return (
            <div
              key={row.source.id}
              role="row"
              tabIndex={-1}
              aria-rowindex={rowIndex + 2}
              className={row.startsGroup ? 'mix-grid-row starts-group' : 'mix-grid-row'}
              style={{ top: rowIndex * rowHeight, height: rowHeight }}
            >
              <RowHead row={row} isChosen={row.source.id === view.sourceId} />
              {drawnColumns.map((column, place) => {
                const columnIndex = shown.firstColumn + place;
                const feed = row.feeds[columnIndex];
                return feed ? (
                  <FeedCell
                    key={column.mix.id}
                    feed={feed}
                    row={rowIndex}
                    column={columnIndex}
                    label={words.mixes.cell(whoHears(sheet, column.mix), row.source.name)}
                    findings={table.places.ofFeed.get(feedKey(column.mix.id, row.source.id))}
                    isActive={rowIndex === cursor.at.row && columnIndex === cursor.at.column}
                    isChosen={isInRange(range, rowIndex, columnIndex)}
                    isListened={column.mix.id === view.mixId}
                  />
                ) : null;
              })}
            </div>
          );
        })}
        {typed !== null && (
          <CellEditor
            start={typed}
            top={cursor.at.row * rowHeight}
            left={headWidth + cursor.at.column * cellWidth}
            label={words.mixes.typeHere}
            onCommit={commit}
            onLeave={() => {
              setTyped(null);
              ref.current?.focus();
            }}
          />
        )}
      </div>
    </div>
  );
}

/** The cursor is what this window looks at: moving it moves the listening line, and the other way round. */
function useCursor({ rows, columns }: MixTable) {
  const { view, look } = useHere();
  const [anchor, setAnchor] = useState<{ row: number; column: number } | null>(null);
  const row = Math.max(
    0,
    rows.findIndex(({ source }) => source.id === view.sourceId),
  );
  const column = Math.max(
    0,
    columns.findIndex(({ mix }) => mix.id === view.mixId),
  );
  const at: Cursor = useMemo(
    () => ({ row, column, anchorRow: anchor?.row ?? row, anchorColumn: anchor?.column ?? column }),
    [row, column, anchor],
  );
  const move = (next: Cursor) => {
    const isRange = next.anchorRow !== next.row || next.anchorColumn !== next.column;
    setAnchor(isRange ? { row: next.anchorRow, column: next.anchorColumn } : null);
    look({
      sourceId: rows[next.row]?.source.id ?? null,
      mixId: columns[next.column]?.mix.id ?? null,
    });
  };
  return { at, move };
}
