import { type KeyboardEvent, useEffect, useId, useMemo, useRef, useState } from 'react';
import type { Grid } from '../../core/rider/grid.ts';
import type { LineOutcome, Reading, ReadLine } from '../../core/rider/reading.ts';
import { words } from '../wording/words.ts';
import { type Linked, lineKey, type Pointed } from './links.ts';
import './rider-page.css';

const mostColumns = 24;
/** More lines than any rider has; what comes after is drawn when it is asked for. */
const linesAtOnce = 400;
/** The mark and the number of the line come first; columns of a grid count from 1. */
const columnsBefore = 3;
const marks: Record<LineOutcome, string> = { understood: '✓', guessed: '≈', question: '?', 'set aside': '·' };

type Props = {
  grid: Grid;
  reading: Reading;
  linked: Linked;
  current: Pointed;
  onPoint: (pointed: Pointed) => void;
  onChoose: (pointed: Pointed) => void;
};

/** The rider as it came, line by line and cell by cell, with what became of each line. */
export function RiderPage({ grid, reading, linked, current, onPoint, onChoose }: Props) {
  const ref = useRef<HTMLDivElement>(null);
  const baseId = useId();
  const lines = reading.lines;
  const cells = useMemo(() => lines.map((line) => cellsOf(grid, line)), [grid, lines]);
  const columns = Math.max(1, ...cells.map((it) => it.length));
  const place = lines.findIndex((line) => linked.lines.has(lineKey(line.at)));
  const chosen = current === null ? -1 : place;
  const line = lines[place];
  const [wanted, setWanted] = useState(linesAtOnce);
  const shown = lines.slice(0, Math.max(wanted, chosen + 1));

  useEffect(() => {
    if (chosen >= 0)
      ref.current?.querySelector(`[data-line="${chosen}"]`)?.scrollIntoView({ block: 'nearest' });
  }, [chosen]);

  const onKeyDown = (event: KeyboardEvent) => {
    const by = { ArrowDown: 1, ArrowUp: -1 }[event.key];
    if (by === undefined) return;
    event.preventDefault();
    const next = lines[Math.max(0, Math.min(lines.length - 1, chosen + by))];
    if (next) onChoose({ of: 'line', at: next.at });
  };

  return (
    <>
      <div
        ref={ref}
        className="rider-lines"
        role="listbox"
        tabIndex={0}
        aria-label={words.advance.asItCame(grid.name)}
        aria-activedescendant={chosen >= 0 ? `${baseId}-${chosen}` : undefined}
        style={{ gridTemplateColumns: `1.3rem 2rem repeat(${columns}, max-content) 1fr` }}
        onKeyDown={onKeyDown}
        onMouseLeave={() => onPoint(null)}
      >
        {shown.map((line, index) => {
          const isLinked = linked.lines.has(lineKey(line.at));
          const own = cells[index] ?? [];
          // The last cell takes the rest of the line, so that a line of prose is read as one.
          const isLast = (column: number) => column === own.length - 1;
          return (
            // biome-ignore lint/a11y/useKeyWithClickEvents: the keys of this list are those of the list as a whole.
            <div
              key={lineKey(line.at)}
              id={`${baseId}-${index}`}
              role="option"
              tabIndex={-1}
              data-line={index}
              aria-selected={isLinked}
              aria-label={`${line.text}: ${words.advance.outcome[line.outcome]}. ${line.why}`}
              className={`rider-line is-${line.outcome.replace(' ', '-')}${isLinked ? ' is-linked' : ''}`}
              title={`${words.advance.outcome[line.outcome]}: ${line.why}`}
              onMouseEnter={() => onPoint({ of: 'line', at: line.at })}
              onClick={() => onChoose({ of: 'line', at: line.at })}
            >
              <span className="rider-line-mark">{marks[line.outcome]}</span>
              <span className="rider-line-number">{line.at.row + 1}</span>
              {own.map((cell, column) => (
                <span
                  // biome-ignore lint/suspicious/noArrayIndexKey: the columns of a rider never move.
                  key={column}
                  className={cellClass(isLast(column), own.length)}
                  style={isLast(column) ? { gridColumn: `${column + columnsBefore} / -1` } : undefined}
                  dir="auto"
                >
                  {cell}
                </span>
              ))}
            </div>
          );
        })}
      </div>
      {shown.length < lines.length && (
        <button type="button" onClick={() => setWanted(shown.length + linesAtOnce)}>
          {words.advance.moreLines(lines.length - shown.length)}
        </button>
      )}
      {line && (
        <p className={`rider-why is-${line.outcome.replace(' ', '-')}`}>
          <strong>
            {marks[line.outcome]}{' '}
            {words.advance.reasonOf(line.at.row + 1, words.advance.outcome[line.outcome])}
          </strong>{' '}
          {line.why}
        </p>
      )}
    </>
  );
}

function cellClass(isLast: boolean, count: number): string {
  if (!isLast) return 'rider-cell';
  return count === 1 ? 'rider-cell is-last is-alone' : 'rider-cell is-last';
}

function cellsOf(grid: Grid, line: ReadLine): string[] {
  const row = grid.sheets[line.at.sheet]?.rows[line.at.row] ?? [line.text];
  const cells = row.slice(0, row.findLastIndex((cell) => cell.trim() !== '') + 1);
  if (cells.length <= mostColumns) return cells;
  return [...cells.slice(0, mostColumns), words.advance.moreColumns(cells.length - mostColumns)];
}
