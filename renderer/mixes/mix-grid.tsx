import {
  type ClipboardEvent,
  type CSSProperties,
  type KeyboardEvent,
  type MouseEvent,
  memo,
  useEffect,
  useMemo,
  useRef,
  useState,
} from 'react';
import type { Id } from '../../core/show/rig.ts';
import { cursorAt, movedCursor, type Range, rangeOf } from '../parts/grid-cursor.ts';
import type { ActOnScreen } from '../state/derive-cache.ts';
import type { Here } from '../state/here.tsx';
import { words } from '../wording/words.ts';
import { CellActions } from './cell-actions.ts';
import { CellEditor, type Step } from './cell-editor.tsx';
import { type CellCommand, commandOfKey } from './cell-keys.ts';
import { ColumnHead, ColumnsBefore, GridRow, RowHead } from './grid-parts.tsx';
import type { MixTable } from './mix-table.ts';
import { pointedAt, sameCursor, useMixCursor } from './use-mix-cursor.ts';
import {
  cellWidth,
  columnHeadHeight,
  nameWidth,
  rowHeadWidth,
  rowHeight,
  useWindowOfCells,
} from './use-window-of-cells.ts';
import './mix-grid.css';

type Props = {
  open: ActOnScreen;
  table: MixTable;
  sourceId: Id | null;
  mixId: Id | null;
  hidden: ReadonlySet<Id>;
  follows: boolean;
  onDetails: () => void;
  onFindings: () => void;
  onFilter: () => void;
} & Pick<Here, 'look' | 'change' | 'tell'>;

/**
 * The table of the mixes. The whole of it is one stop of the Tab key; arrows move inside it. It is given all it
 * shows, so that what else changes in the window, such as that an edit is on the disk, does not draw it again.
 */
export const MixGrid = memo(function MixGrid(props: Props) {
  const {
    open,
    table,
    sourceId,
    mixId,
    hidden,
    follows,
    look,
    change,
    tell,
    onDetails,
    onFindings,
    onFilter,
  } = props;
  const ref = useRef<HTMLDivElement>(null);
  const cells = useRef<HTMLDivElement>(null);
  const { rows, columns } = table;
  const { sheet } = open;
  const actId = sheet.act.id;
  const [typing, setTyping] = useState<{ actId: Id; start: string } | null>(null);
  const typed = typing?.actId === actId ? typing.start : null;
  const setTyped = (start: string | null) => setTyping(start === null ? null : { actId, start });
  const cursor = useMixCursor(table, actId, { sourceId, mixId, look });
  const leastHeadWidth = rowHeadWidth(Math.max(0, ...rows.map((row) => row.copies.length)));
  const shown = useWindowOfCells(ref, { rows: rows.length, columns: columns.length, leastHeadWidth });
  const { headWidth, bringIntoSight } = shown;
  const width = headWidth + columns.length * cellWidth;
  const range = rangeOf(cursor.at);

  // biome-ignore lint/correctness/useExhaustiveDependencies: another act, filter or size may leave the cursor out of sight.
  useEffect(() => {
    bringIntoSight(cursor.at.row, cursor.at.column);
  }, [cursor.at.row, cursor.at.column, bringIntoSight, shown.width, actId, rows.length, columns.length]);

  const actions = new CellActions(open, table, range);
  const isRefused = useRef(false);
  const toTable = () => cells.current?.focus({ preventScroll: true });

  const commit = (text: string): string | null => {
    const outcome = actions.typed(text);
    isRefused.current = 'why' in outcome;
    if ('why' in outcome) return outcome.why;
    change(outcome.change);
    setTyped(null);
    toTable();
    return null;
  };

  /** After typing into one cell the next is at hand; a range stays chosen. */
  const stepOn = ({ rows: down, columns: across }: Step) => {
    if (range.top !== range.bottom || range.left !== range.right) return;
    const row = Math.max(0, Math.min(rows.length - 1, cursor.at.row + down));
    cursor.move(cursorAt(row, Math.max(0, Math.min(columns.length - 1, cursor.at.column + across))));
  };

  const onClipboard = (event: ClipboardEvent) => {
    if (typed !== null) return;
    event.preventDefault();
    if (event.type === 'paste') paste(event.clipboardData.getData('text/plain'));
    else event.clipboardData.setData('text/plain', actions.copied());
    if (event.type === 'cut') change(actions.takeOut());
  };

  const paste = (text: string) => {
    const outcome = actions.pasted(text);
    const code = 'wrong request';
    if (!('change' in outcome)) {
      tell({ code, what: words.mixes.pasteRefused(outcome.at), todo: outcome.why });
      return;
    }
    change(outcome.change);
    const { outside, cells } = outcome;
    if (outside > 0)
      tell({ code, what: words.mixes.pasteOutside(outside, cells), todo: words.mixes.pasteOutsideTodo });
  };

  /** Hides the chosen rows or columns; the cursor goes to the nearest that is left. */
  const hide = (what: 'sources' | 'mixes') => {
    const list = what === 'sources' ? rows.map(({ source }) => source.id) : columns.map(({ mix }) => mix.id);
    const [from, to] = what === 'sources' ? [range.top, range.bottom] : [range.left, range.right];
    const next = list[to + 1] ?? list[from - 1] ?? null;
    look({
      hidden: new Set([...hidden, ...list.slice(from, to + 1)]),
      ...(what === 'sources' ? { sourceId: next } : { mixId: next }),
    });
  };

  const changeIfAny = (made: ReturnType<CellActions['filled']>) => {
    if (made) change(made);
  };

  /** Makes the cell under the cursor the chosen one, also where nobody has chosen any yet. */
  const chosen = {
    sourceId: rows[cursor.at.row]?.source.id ?? null,
    mixId: columns[cursor.at.column]?.mix.id ?? null,
  };
  const toDetails = () => {
    look(chosen);
    onDetails();
  };

  const commands: Record<CellCommand, () => void> = {
    details: toDetails,
    edit: () => setTyped(''),
    all: () =>
      cursor.move({ row: 0, column: 0, anchorRow: rows.length - 1, anchorColumn: columns.length - 1 }),
    'take out': () => change(actions.takeOut()),
    'put back': () => change(actions.putBack()),
    'fill down': () => changeIfAny(actions.filled('down')),
    'fill right': () => changeIfAny(actions.filled('right')),
    louder: () => changeIfAny(actions.nudged(1)),
    quieter: () => changeIfAny(actions.nudged(-1)),
    'next copy': () => change(actions.chooseNextCopy()),
    'path of source': () => look({ ...chosen, path: 'source' }),
    'path of mix': () => look({ ...chosen, path: 'mix' }),
    findings: onFindings,
    filter: onFilter,
    follow: () => look({ ...chosen, follows: !follows }),
    'hide sources': () => hide('sources'),
    'hide mixes': () => hide('mixes'),
    'show all': () => look({ hidden: new Set(), filter: '' }),
  };

  const onKeyDown = (event: KeyboardEvent) => {
    if (typed !== null || rows.length === 0 || columns.length === 0) return;
    const page = Math.max(1, shown.endRow - shown.firstRow - 8);
    const moved = movedCursor(cursor.at, event, { rows: rows.length, columns: columns.length, page });
    const command = commandOfKey(event);
    if (moved) cursor.move(moved);
    else if (command) commands[command]();
    else if (startsTyping(event)) setTyped(event.key);
    else return;
    event.preventDefault();
  };

  const onMouse = (event: MouseEvent<HTMLElement>) => {
    const { dataset } =
      (event.target as HTMLElement).closest<HTMLElement>('[data-row], [data-head-row], [data-head-column]') ??
      {};
    if (!dataset || event.buttons !== 1) return;
    // The table keeps the focus, not the cell: cells come and go. What is being typed is taken, or stays with its sentence.
    event.preventDefault();
    if (event.type === 'mousedown') toTable();
    if (typed !== null && isRefused.current) return;
    const isMore = event.shiftKey || event.type === 'mousemove';
    const next = pointedAt(dataset, isMore ? cursor.at : null, {
      rows: rows.length,
      columns: columns.length,
    });
    if (sameCursor(next, cursor.at)) return;
    cursor.move(next);
  };

  const drawnColumns = useMemo(
    () => columns.slice(shown.firstColumn, shown.endColumn),
    [columns, shown.firstColumn, shown.endColumn],
  );
  const drawnRows = rows.slice(shown.firstRow, shown.endRow);
  const listenedPlace = columns.findIndex(({ mix }) => mix.id === mixId);
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: what the mouse does here the table inside does with keys.
    <div
      ref={ref}
      className="mix-grid"
      style={
        {
          '--row-head': `${headWidth}px`,
          '--cell': `${cellWidth}px`,
          '--channels': `${leastHeadWidth - nameWidth}px`,
          '--column-head': `${columnHeadHeight}px`,
        } as CSSProperties
      }
      onMouseDown={onMouse}
      onMouseMove={onMouse}
      onDoubleClick={toDetails}
    >
      {/* Not a table element: only the cells in sight are there. */}
      <div
        ref={cells}
        className="mix-cells"
        role="grid"
        tabIndex={0}
        data-first-focus
        aria-label={words.mixes.table(sheet.act.name)}
        aria-rowcount={rows.length + 1}
        aria-colcount={columns.length + 1}
        aria-multiselectable="true"
        aria-activedescendant={`cell-${cursor.at.row}-${cursor.at.column}`}
        onKeyDown={onKeyDown}
        onCopy={onClipboard}
        onCut={onClipboard}
        onPaste={onClipboard}
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
          <ColumnsBefore count={shown.firstColumn} />
          {drawnColumns.map((column, offset) => (
            <ColumnHead
              // biome-ignore lint/suspicious/noArrayIndexKey: heads and cells are told by their place, see GridRow.
              key={shown.firstColumn + offset}
              sheet={sheet}
              column={column}
              index={shown.firstColumn + offset}
              isListened={column.mix.id === mixId}
            />
          ))}
        </div>
        <div role="rowgroup" className="mix-grid-body" style={{ height: rows.length * rowHeight, width }}>
          {listenedPlace >= 0 && (
            <div
              className="mix-grid-listened"
              aria-hidden="true"
              style={{ left: headWidth + listenedPlace * cellWidth, width: cellWidth }}
            />
          )}
          {drawnRows.map((row, offset) => {
            const index = shown.firstRow + offset;
            return (
              <GridRow
                key={index}
                row={row}
                index={index}
                columns={drawnColumns}
                firstColumn={shown.firstColumn}
                places={table.places}
                activeColumn={index === cursor.at.row ? cursor.at.column : null}
                {...chosenOf(range, index)}
              />
            );
          })}
          {typed !== null && (
            // In a row and a cell of its own, as everything in a grid is.
            <div role="row" tabIndex={-1}>
              <div role="gridcell" tabIndex={-1}>
                <CellEditor
                  start={typed}
                  top={cursor.at.row * rowHeight}
                  left={headWidth + cursor.at.column * cellWidth}
                  label={words.mixes.typeHere}
                  onCommit={commit}
                  onStep={stepOn}
                  onLeave={() => {
                    setTyped(null);
                    toTable();
                  }}
                />
              </div>
            </div>
          )}
        </div>
      </div>
      {/* Each head is of its row by `aria-owns`; see GridRow for why they stand apart. */}
      <div className="mix-grid-heads">
        {drawnRows.map((row, offset) => {
          const index = shown.firstRow + offset;
          return <RowHead key={index} row={row} index={index} isListened={row.source.id === sourceId} />;
        })}
      </div>
    </div>
  );
});

/** Signs that a level or an amount begins with. */
const startsTyping = ({ key, ctrlKey, metaKey, altKey }: KeyboardEvent) =>
  !ctrlKey && !metaKey && !altKey && /^[0-9nlso+−-]$/i.test(key);

const chosenOf = ({ top, bottom, left, right }: Range, row: number) =>
  row >= top && row <= bottom
    ? { chosenLeft: left, chosenRight: right }
    : { chosenLeft: -1, chosenRight: -1 };
