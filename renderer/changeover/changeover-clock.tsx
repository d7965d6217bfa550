import type { Changeover } from '../../core/changeover/changeover.ts';
import { type Act, Day } from '../../core/show/act.ts';
import { put } from '../../core/show/change.ts';
import type { Tick } from '../../core/show/tick.ts';
import { lengthText } from '../day/fit.ts';
import { timeText } from '../parts/format.ts';
import { SeverityMark } from '../parts/severity-mark.tsx';
import { useHere } from '../state/here.tsx';
import { words } from '../wording/words.ts';
import { RunningClock } from './running-clock.tsx';
import './changeover-clock.css';

type Props = {
  day: Day;
  from: Act;
  to: Act;
  changeover: Changeover;
  /** Seconds that the schedule of what is not ticked takes; null where there is none. */
  secondsLeft: number | null;
  done: number;
  ticks: ReadonlyMap<string, Tick>;
};

/** The time there is and the time it takes, the clock, and the people who do it. */
export function ChangeoverClock({ day, from, to, changeover, secondsLeft, done, ticks }: Props) {
  const text = words.changeover;
  const { secondsNeeded, secondsWithoutWays, secondsThere, lowerBoundSeconds, limitedBy, problem } =
    changeover;
  const ways = (secondsNeeded ?? 0) - (secondsWithoutWays ?? 0);
  const spare = secondsNeeded === null ? null : secondsThere - secondsNeeded;
  return (
    <section className="changeover-clock" aria-label={text.there}>
      <Figure label={text.there} value={lengthText(secondsThere)} note={breakText(from, to)} />
      <Figure
        label={text.needed}
        value={secondsNeeded === null ? words.common.nothing : lengthText(secondsNeeded)}
        note={spare !== null && spare >= 0 ? text.spare(lengthText(spare)) : ''}
      >
        {spare !== null && spare < 0 && (
          <strong className="changeover-short">
            <SeverityMark severity="must fix" /> {text.short(lengthText(-spare))}
          </strong>
        )}
      </Figure>
      <People day={day} />
      <RunningClock to={to} ticks={ticks} secondsThere={secondsThere} />
      <div className="changeover-words">
        {problem !== null && (
          <p className="changeover-short">
            <SeverityMark severity="must fix" /> {problem}
          </p>
        )}
        {secondsNeeded !== null && (
          <p>
            {text.bound(lengthText(lowerBoundSeconds))} {ways > 0 && text.ways(lengthText(ways))}{' '}
            {text.limit[limitedBy]}
          </p>
        )}
        <p role="status">
          {text.done(done, changeover.tasks.length)}
          {done > 0 && secondsLeft !== null
            ? ` · ${secondsLeft === 0 ? text.allDone : text.left(lengthText(secondsLeft))}`
            : ''}
        </p>
        {breakText(from, to) === '' && <p className="quiet">{text.untimed}</p>}
      </div>
    </section>
  );
}

/** From when to when, or by how much the sets overlap; empty where a time is missing. */
function breakText(from: Act, to: Act): string {
  const text = words.changeover;
  if (from.endMinute === null || to.startMinute === null) return '';
  return to.startMinute < from.endMinute
    ? text.overlap(from.endMinute - to.startMinute)
    : text.between(timeText(from.endMinute), timeText(to.startMinute));
}

function Figure({
  label,
  value,
  note,
  children,
}: {
  label: string;
  value: string;
  note: string;
  children?: React.ReactNode;
}) {
  return (
    <p className="changeover-figure">
      <span className="quiet">{label}</span>
      <strong>{value}</strong>
      {note !== '' && <span>{note}</span>}
      {children}
    </p>
  );
}

/** How many plug and carry; the schedule follows at once. */
function People({ day }: { day: Day }) {
  const { change } = useHere();
  const text = words.changeover;
  const step = (by: number) => {
    const next = Day.safeParse({ ...day, crewSize: day.crewSize + by });
    if (next.success)
      change({
        label: words.field.changed(text.people, day.name),
        put: [put('days', next.data)],
        remove: [],
      });
  };
  return (
    <fieldset className="changeover-figure changeover-people">
      <legend className="quiet">{text.people}</legend>
      <button type="button" aria-label={text.fewer} disabled={day.crewSize === 0} onClick={() => step(-1)}>
        −
      </button>
      <strong role="status">{day.crewSize}</strong>
      <button type="button" aria-label={text.more} onClick={() => step(1)}>
        +
      </button>
    </fieldset>
  );
}
