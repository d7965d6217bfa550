import { useMemo } from 'react';
import { findStockCollisions } from '../../core/plan/day/stock.ts';
import type { Day } from '../../core/show/act.ts';
import { SeverityMark } from '../parts/severity-mark.tsx';
import { useHere } from '../state/here.tsx';
import { words } from '../wording/words.ts';

/** What several acts of the day need at once, and how many more would do. */
export function DayStock({ day }: { day: Day }) {
  const { show } = useHere();
  const text = words.day;
  const { collisions, unlisted } = useMemo(() => findStockCollisions(show, day.id), [show, day.id]);
  const isListed = [...show.stockItems.values()].some((item) => item.rigId === day.rigId);
  return (
    <section className="day-stock">
      <h2>{text.stock}</h2>
      {collisions.length === 0 && <p>{isListed ? text.noStock : text.noStockListed}</p>}
      <ul>
        {collisions.map(({ stockId, what }) => (
          <li key={stockId}>
            <SeverityMark severity="must fix" /> {what}
          </li>
        ))}
      </ul>
      {isListed && unlisted.length > 0 && (
        <p className="quiet">
          {text.unlisted(unlisted.map(({ kind, name, most }) => `${most} × ${name || kind}`).join(', '))}
        </p>
      )}
    </section>
  );
}
