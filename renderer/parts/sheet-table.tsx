import { type KeyboardEvent, type MouseEvent, type ReactNode, useId, useRef, useState } from 'react';
import { words } from '../wording/words.ts';
import { type Cursor, cursorAt, movedCursor } from './grid-cursor.ts';
import { TableCellEditor } from './table-cell-editor.tsx';
import './sheet-table.css';

export type SheetColumn<Row> = {
  key: string;
  head: string;
  /** In rem; the table lays nothing out by its contents. */
  width: number;
  /** The text of a cell, as it is read and as it is edited. */
  text: (row: Row) => string;
  /** What is drawn in place of the text. */
  draw?: (row: Row) => ReactNode;
  options?: (row: Row) => readonly string[];
  numeric?: boolean;
  /** Takes what was typed; answers the sentence that says why not, or null. Without it the column is read only. */
  set?: (row: Row, text: string) => string | null;
};

type Props<Row> = {
  label: string;
  rows: readonly Row[];
  /** How a row is called where it is removed; without it, by its first column. */
  nameOf?: (row: Row) => string;
  columns: readonly SheetColumn<Row>[];
  /** Rows that belong to what is chosen elsewhere. */
  marked?: ReadonlySet<string>;
  onRow?: (row: Row) => void;
  onHover?: (row: Row | null) => void;
  /** Takes rows away: Ctrl+Delete, since it takes more than one cell. */
  onRemove?: (row: Row) => void;
  onAdd?: { label: string; run: () => void };
  empty: string;
};

/** More rows than any act has; what comes after is drawn when it is asked for. */
const rowsAtOnce = 200;

/** A table that is edited in place: one stop of the Tab key, arrows move, Enter or typing edits, Escape leaves. */
export function SheetTable<Row extends { id: string }>(props: Props<Row>) {
  const { label, columns, nameOf, marked, onRow, onHover, onRemove, onAdd, empty } = props;
  const [wantedRows, setWantedRows] = useState(rowsAtOnce);
  const rows = props.rows.slice(0, wantedRows);
  const hidden = props.rows.length - rows.length;
  const ref = useRef<HTMLTableElement>(null);
  const baseId = useId();
  const [wanted, setWanted] = useState<Cursor>(cursorAt(0, 0));
  const [editing, setEditing] = useState<string | null>(null);
  const row = Math.min(wanted.row, rows.length - 1);
  const cursor = cursorAt(Math.max(row, 0), wanted.column);
  const current = rows[cursor.row];
  const column = columns[cursor.column];

  const move = (next: Cursor) => {
    setWanted(next);
    setEditing(null);
    const there = rows[next.row];
    if (there) onRow?.(there);
    ref.current
      ?.querySelector(`[data-row="${next.row}"][data-column="${next.column}"]`)
      ?.scrollIntoView({ block: 'nearest', inline: 'nearest' });
  };
  const edit = (start: string) => {
    if (current && column?.set) setEditing(start);
  };
  const leave = () => {
    setEditing(null);
    ref.current?.focus();
  };

  const onKeyDown = (event: KeyboardEvent) => {
    if (editing !== null) return;
    const size = { rows: rows.length, columns: columns.length, page: 12 };
    const moved = movedCursor(cursor, { ...pressOf(event), shiftKey: false }, size);
    const isText = event.key.length === 1 && !event.ctrlKey && !event.metaKey && !event.altKey;
    if (moved) move(moved);
    else if (event.key === 'Enter' || event.key === 'F2') edit(column && current ? column.text(current) : '');
    else if (event.key === 'Delete' && (event.ctrlKey || event.metaKey) && current) onRemove?.(current);
    else if (isText && event.key !== '?') edit(event.key);
    else return;
    event.preventDefault();
  };

  const onMouseDown = (event: MouseEvent<HTMLElement>) => {
    const cell = (event.target as HTMLElement).closest<HTMLElement>('[data-row]');
    if (!cell || (event.target as HTMLElement).matches('input, select, option')) return;
    move(cursorAt(Number(cell.dataset.row), Number(cell.dataset.column)));
  };

  return (
    <div className="sheet-table-box">
      <table
        ref={ref}
        className="sheet-table"
        role="grid"
        aria-label={label}
        tabIndex={0}
        aria-activedescendant={current ? `${baseId}-${cursor.row}-${cursor.column}` : undefined}
        style={{ width: `${columns.reduce((sum, it) => sum + it.width, 0)}rem` }}
        onKeyDown={onKeyDown}
        onMouseDown={onMouseDown}
        onDoubleClick={() => edit(column && current ? column.text(current) : '')}
      >
        <colgroup>
          {columns.map((it) => (
            <col key={it.key} style={{ width: `${it.width}rem` }} />
          ))}
        </colgroup>
        <thead>
          <tr>
            {columns.map((it) => (
              <th key={it.key} scope="col" className={it.numeric ? 'is-numeric' : undefined}>
                {it.head}
              </th>
            ))}
          </tr>
        </thead>
        <tbody onMouseLeave={() => onHover?.(null)}>
          {rows.map((it, rowIndex) => (
            <tr
              key={it.id}
              className={marked?.has(it.id) ? 'is-marked' : undefined}
              onMouseEnter={() => onHover?.(it)}
            >
              {columns.map((cell, columnIndex) => {
                const isActive = rowIndex === cursor.row && columnIndex === cursor.column;
                return (
                  <td
                    key={cell.key}
                    id={`${baseId}-${rowIndex}-${columnIndex}`}
                    data-row={rowIndex}
                    data-column={columnIndex}
                    className={cellClass(isActive, cell)}
                  >
                    {isActive && editing !== null && cell.set ? (
                      <TableCellEditor
                        label={`${cell.head}, ${label}`}
                        start={editing}
                        options={cell.options?.(it)}
                        onCommit={(text) => {
                          const why = text === cell.text(it) ? null : (cell.set?.(it, text) ?? null);
                          if (why === null) leave();
                          return why;
                        }}
                        onLeave={leave}
                      />
                    ) : (
                      (cell.draw?.(it) ?? cell.text(it))
                    )}
                  </td>
                );
              })}
            </tr>
          ))}
        </tbody>
      </table>
      {hidden > 0 && (
        <button type="button" onClick={() => setWantedRows(wantedRows + rowsAtOnce)}>
          {words.common.moreRows(hidden)}
        </button>
      )}
      {rows.length === 0 && <p className="sheet-table-empty quiet">{empty}</p>}
      {onAdd && (
        <div className="sheet-table-tools">
          <button type="button" onClick={onAdd.run}>
            + {onAdd.label}
          </button>
          {onRemove && current && (
            <button
              type="button"
              className="plain"
              onClick={() => onRemove(current)}
              title={words.common.removeKey}
            >
              {words.common.removeRow(nameOf?.(current) ?? columns[0]?.text(current) ?? '')}
            </button>
          )}
        </div>
      )}
    </div>
  );
}

const pressOf = ({ key, ctrlKey, metaKey, altKey }: KeyboardEvent) => ({ key, ctrlKey, metaKey, altKey });

function cellClass<Row>(isActive: boolean, column: SheetColumn<Row>): string | undefined {
  const classes = [isActive && 'is-active', column.numeric && 'is-numeric', !column.set && 'is-fixed'].filter(
    Boolean,
  );
  return classes.length > 0 ? classes.join(' ') : undefined;
}
