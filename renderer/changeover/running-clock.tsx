import { useEffect, useState } from 'react';
import type { Act } from '../../core/show/act.ts';
import { changeoverBegan, type Tick } from '../../core/show/tick.ts';
import { lengthText } from '../day/fit.ts';
import { useHere } from '../state/here.tsx';
import { words } from '../wording/words.ts';
import { tickClock } from './ticks.ts';
import './running-clock.css';

/** Starts the clock of a changeover, then counts down the time there is, and on when it is over. */
export function RunningClock({
  to,
  ticks,
  secondsThere,
}: {
  to: Act;
  ticks: ReadonlyMap<string, Tick>;
  secondsThere: number;
}) {
  const { change } = useHere();
  const text = words.changeover;
  const began = ticks.get(changeoverBegan);
  const [now, setNow] = useState(() => Date.now());
  useEffect(() => {
    if (!began) return;
    setNow(Date.now());
    const timer = setInterval(() => setNow(Date.now()), 500);
    return () => clearInterval(timer);
  }, [began]);
  const toggle = () => change(tickClock(ticks, to, new Date()));
  if (!began)
    return (
      <div className="changeover-figure">
        <button type="button" onClick={toggle}>
          {text.begin} <kbd>B</kbd>
        </button>
      </div>
    );
  const gone = (now - Date.parse(began.doneAt)) / 1000;
  const left = Math.ceil(secondsThere - Math.max(0, gone));
  return (
    <div className={left < 0 ? 'changeover-figure is-over' : 'changeover-figure is-running'}>
      <span className="quiet">{left < 0 ? text.overtime : text.began}</span>
      <strong role="timer">{lengthText(Math.abs(left))}</strong>
      <button type="button" className="plain" onClick={toggle}>
        {text.stopClock}
      </button>
    </div>
  );
}
