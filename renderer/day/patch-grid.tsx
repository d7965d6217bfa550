import { type KeyboardEvent, type MouseEvent, memo, useId, useRef } from 'react';
import type { Changeover } from '../../core/changeover/changeover.ts';
import type { DayPatch } from '../../core/plan/day/day-patch.ts';
import { timeText } from '../parts/format.ts';
import { type Cursor, cursorAt, movedCursor } from '../parts/grid-cursor.ts';
import { SeverityMark } from '../parts/severity-mark.tsx';
import type { ActOnScreen } from '../state/derive-cache.ts';
import { words } from '../wording/words.ts';
import type { DayCell, DayRow } from './day-table.ts';
import { EntryMark, LockMark, MoveMark } from './entry-mark.tsx';
import { fitOf } from './fit.ts';
import './patch-grid.css';

type Props = {
  label: string;
  acts: readonly ActOnScreen[];
  rows: readonly DayRow[];
  shown: DayPatch;
  changeovers: readonly (Changeover | null)[];
  openActId: string | null;
  cursor: Cursor;
  onMove: (cursor: Cursor) => void;
  onLock: () => void;
  onOpen: () => void;
};

const socketWidthRem = 4.6;
const actWidthRem = 9;

/** The patch of a day. One stop of the Tab key: arrows move, L locks and opens locks, Enter shows the source. */
export function PatchGrid(props: Props) {
  const { label, acts, rows, cursor, onMove, onLock, onOpen } = props;
  const baseId = useId();
  const ref = useRef<HTMLTableElement>(null);

  const move = (next: Cursor) => {
    onMove(next);
    ref.current
      ?.querySelector(`[data-row="${next.row}"][data-column="${next.column}"]`)
      ?.scrollIntoView({ block: 'nearest', inline: 'nearest' });
  };
  const onKeyDown = (event: KeyboardEvent) => {
    const { key, ctrlKey, metaKey, altKey } = event;
    const moved = movedCursor(
      cursor,
      { key, ctrlKey, metaKey, altKey, shiftKey: false },
      { rows: rows.length, columns: acts.length, page: 12 },
    );
    if (moved) move(moved);
    else if (ctrlKey || metaKey || altKey) return;
    else if (key === 'l' || key === 'L') onLock();
    else if (key === 'Enter') onOpen();
    else return;
    event.preventDefault();
  };
  const onMouseDown = (event: MouseEvent<HTMLElement>) => {
    const cell = (event.target as HTMLElement).closest<HTMLElement>('[data-row]');
    if (cell) move(cursorAt(Number(cell.dataset.row), Number(cell.dataset.column)));
  };

  return (
    <div className="patch-grid-box">
      <table
        ref={ref}
        className="patch-grid"
        role="grid"
        aria-label={label}
        tabIndex={0}
        data-first-focus
        aria-activedescendant={`${baseId}-${cursor.row}-${cursor.column}`}
        onKeyDown={onKeyDown}
        onMouseDown={onMouseDown}
        onDoubleClick={onOpen}
        style={{ width: `max(100%, ${socketWidthRem + acts.length * actWidthRem}rem)` }}
      >
        <colgroup>
          <col style={{ width: `${socketWidthRem}rem` }} />
          {acts.map(({ sheet }) => (
            <col key={sheet.act.id} style={{ width: `${actWidthRem}rem` }} />
          ))}
        </colgroup>
        <PatchHead {...props} />
        <tbody>
          {rows.map((row, at) => (
            <PatchRow
              key={row.socket.id}
              row={row}
              at={at}
              baseId={baseId}
              startsBox={rows[at - 1]?.box !== row.box}
              activeColumn={at === cursor.row ? cursor.column : -1}
            />
          ))}
        </tbody>
      </table>
    </div>
  );
}

function PatchHead({ acts, shown, changeovers, openActId }: Props) {
  const text = words.day;
  return (
    <thead>
      <tr>
        <th scope="col" className="patch-corner">
          {text.socket}
        </th>
        {acts.map(({ sheet: { act } }, at) => {
          const count = shown.beforeAct[at];
          return (
            <th key={act.id} scope="col" className={act.id === openActId ? 'is-open' : undefined}>
              <span className="patch-time">
                {act.startMinute === null ? words.frame.untimed : timeText(act.startMinute)}
              </span>
              <span className="patch-act" title={act.name}>
                {act.name}
              </span>
              {count && <PatchCount count={count} isFirst={at === 0} />}
              {at > 0 && <Fit changeover={changeovers[at] ?? null} />}
            </th>
          );
        })}
      </tr>
    </thead>
  );
}

function PatchCount({ count, isFirst }: { count: DayPatch['beforeAct'][number]; isFirst: boolean }) {
  const text = words.day;
  if (isFirst) return <span className="patch-count">{text.setUp(count.cold + count.hot)}</span>;
  return (
    <span className="patch-count">
      <EntryMark entry="hot" />
      <strong aria-hidden="true">{count.hot}</strong>
      <EntryMark entry="cold" />
      <span aria-hidden="true">{count.cold}</span>
      {count.kept > 0 && (
        <>
          <EntryMark entry="kept" />
          <span aria-hidden="true">{count.kept}</span>
        </>
      )}
      <span className="unseen">
        {text.changes(count.hot)}, {text.ahead(count.cold)}, {text.stays(count.kept)}
      </span>
    </span>
  );
}

function Fit({ changeover }: { changeover: Changeover | null }) {
  const text = words.day;
  if (!changeover) return <span className="patch-fit quiet">…</span>;
  const fit = fitOf(changeover);
  if (fit.needed === null) return <span className="patch-fit">{text.noSchedule}</span>;
  return (
    <span className="patch-fit">
      <span aria-hidden="true">{text.needsOf(fit.needed, fit.there)}</span>
      <span className="unseen">{text.needsSpoken(fit.needed, fit.there)}</span>
      {fit.over !== null && (
        <strong className="patch-over">
          <SeverityMark severity="must fix" says={false} /> {text.tooLong(fit.over)}
        </strong>
      )}
    </span>
  );
}

type RowProps = { row: DayRow; at: number; baseId: string; startsBox: boolean; activeColumn: number };

const PatchRow = memo(
  function PatchRow({ row, at, baseId, startsBox, activeColumn }: RowProps) {
    return (
      <tr className={startsBox ? 'starts-box' : undefined}>
        <th scope="row" title={row.socket.reservedFor ?? undefined}>
          {row.name}
          {row.socket.reservedFor !== null && <span className="quiet"> {row.socket.reservedFor}</span>}
        </th>
        {row.cells.map((cell, column) => (
          <td
            // biome-ignore lint/suspicious/noArrayIndexKey: a column has no other name than its place.
            key={column}
            id={`${baseId}-${at}-${column}`}
            data-row={at}
            data-column={column}
            className={cellClass(cell, column === activeColumn)}
          >
            {cell && <PatchCell cell={cell} isFirst={column === 0} />}
          </td>
        ))}
      </tr>
    );
  },
  (one, other) =>
    one.activeColumn === other.activeColumn &&
    one.at === other.at &&
    one.startsBox === other.startsBox &&
    isSameRow(one.row, other.row),
);

function isSameRow(one: DayRow, other: DayRow): boolean {
  return (
    one.socket === other.socket &&
    one.box === other.box &&
    one.cells.length === other.cells.length &&
    one.cells.every((cell, at) => isSameCell(cell, other.cells[at] ?? null))
  );
}

function isSameCell(one: DayCell | null, other: DayCell | null): boolean {
  if (one === null || other === null) return one === other;
  return (Object.keys(one) as (keyof DayCell)[]).every((key) => one[key] === other[key]);
}

function PatchCell({ cell, isFirst }: { cell: DayCell; isFirst: boolean }) {
  const text = words.day;
  return (
    <span className="patch-cell">
      <EntryMark entry={cell.entry} />
      <span className="unseen">{isFirst ? text.firstEntry : text.entry[cell.entry]}: </span>
      <span className="cut">{cell.name}</span>
      {cell.clashes !== '' && (
        <span className="patch-clash">
          <SeverityMark severity="must fix" /> {text.and(cell.clashes)}
        </span>
      )}
      {cell.movesFrom !== null && (
        <span className="patch-from">
          <MoveMark /> <span className="unseen">{text.from}</span>
          {cell.movesFrom || text.newHere}
        </span>
      )}
      {cell.locked && (
        <>
          <LockMark />
          <span className="unseen">, {text.lockedMark}</span>
        </>
      )}
    </span>
  );
}

function cellClass(cell: DayCell | null, isActive: boolean): string | undefined {
  const classes = [cell && `is-${cell.entry}`, cell?.movesFrom != null && 'is-move', isActive && 'is-active'];
  return classes.filter(Boolean).join(' ') || undefined;
}
