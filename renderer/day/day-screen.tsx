import { useMemo } from 'react';
import { EmptyScreen } from '../parts/empty-screen.tsx';
import { timeText } from '../parts/format.ts';
import { useHere } from '../state/here.tsx';
import { words } from '../wording/words.ts';
import { type DayCell, dayTable } from './day-table.ts';
import './day-screen.css';

const socketWidthRem = 5.6;
const actWidthRem = 8.4;

/** The patch of the whole day at once: sockets down, acts across, what is plugged anew marked. */
export function DayScreen() {
  const { show, acts, look, open, day } = useHere();
  const table = useMemo(() => dayTable(show, acts), [show, acts]);
  const text = words.day;
  if (!table)
    return (
      <EmptyScreen
        what={text.empty}
        todo={text.emptyTodo}
        action={{ label: words.mixes.toAdvance, run: () => look({ moment: 'advance' }) }}
      />
    );
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a part that scrolls must be reachable by keyboard.
    <section className="day" aria-label={text.table(day?.name ?? '')} tabIndex={0}>
      <p className="day-note quiet">{text.note}</p>
      <table className="day-table" style={{ width: `${socketWidthRem + acts.length * actWidthRem}rem` }}>
        <thead>
          <tr>
            <th scope="col">{text.socket}</th>
            {acts.map((act, at) => (
              <th key={act.id} scope="col" className={act.id === open?.sheet.act.id ? 'is-open' : undefined}>
                <button type="button" onClick={() => look({ actId: act.id })}>
                  <span className="quiet">{act.startMinute === null ? '' : timeText(act.startMinute)}</span>
                  <span className="day-act">{act.name}</span>
                  <DayTotals totals={table.totals[at]} isFirst={at === 0} />
                </button>
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {table.rows.map(({ socket, box, cells }, index) => (
            <tr key={socket.id} className={table.rows[index - 1]?.box === box ? undefined : 'starts-box'}>
              <th scope="row">
                {box.name}
                {socket.number}
                {socket.reservedFor !== null && <span className="quiet"> {socket.reservedFor}</span>}
              </th>
              {cells.map((cell, at) => (
                <td key={acts[at]?.id ?? at} className={cellClass(cell)}>
                  {cell && (
                    <button
                      type="button"
                      onClick={() =>
                        look({
                          actId: acts[at]?.id ?? null,
                          moment: 'mixes',
                          sourceId: cell.sourceId,
                          side: 'details',
                        })
                      }
                    >
                      <span aria-hidden="true">{cell.isChange ? '▸' : ' '}</span>
                      <span className="unseen">{cell.isChange ? text.plugged : text.stays} </span>
                      <span className="cut">{cell.name}</span>
                    </button>
                  )}
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}

function DayTotals({
  totals,
  isFirst,
}: {
  totals: { plugged: number; lines: number; withoutSocket: number } | undefined;
  isFirst: boolean;
}) {
  if (!totals) return null;
  const text = words.day;
  return (
    <span className="day-totals">
      {isFirst ? text.lines(totals.lines) : text.replug(totals.plugged, totals.lines)}
      {totals.withoutSocket > 0 && (
        <strong className="day-missing"> {text.withoutSocket(totals.withoutSocket)}</strong>
      )}
    </span>
  );
}

function cellClass(cell: DayCell | null): string | undefined {
  if (!cell) return undefined;
  return (
    [cell.isChange && 'is-change', cell.isDecided && 'is-decided'].filter(Boolean).join(' ') || undefined
  );
}
