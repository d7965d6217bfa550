import { type KeyboardEvent, memo, useEffect, useRef, useState } from 'react';
import type { Act } from '../../core/show/act.ts';
import type { Show } from '../../core/show/show.ts';
import { timeText } from '../parts/format.ts';
import { SeverityMark, worstOf } from '../parts/severity-mark.tsx';
import { actOnScreen } from '../state/derive-cache.ts';
import { useHere } from '../state/here.tsx';
import { useLater } from '../state/later.ts';
import { useOpenQuestionCount } from '../state/reading-cache.ts';
import { words } from '../wording/words.ts';
import './running-order.css';

/** The acts of the day: where each one stands, at a glance. Arrows move, Enter opens. */
export function RunningOrder({ onNewAct }: { onNewAct: () => void }) {
  const { acts, day, open, look, show } = useHere();
  // The numbers of the acts may follow a moment after what is being typed.
  const shownShow = useLater(show);
  const openId = open?.sheet.act.id ?? null;
  const [cursor, setCursor] = useState<number | null>(null);
  const openPlace = acts.findIndex((act) => act.id === openId);
  const place = Math.min(cursor ?? Math.max(openPlace, 0), acts.length - 1);

  const list = useRef<HTMLUListElement>(null);
  useEffect(() => {
    list.current?.children[openPlace]?.scrollIntoView({ block: 'nearest', inline: 'center' });
  }, [openPlace]);

  const onKeyDown = (event: KeyboardEvent<HTMLUListElement>) => {
    const to = { ArrowDown: place + 1, ArrowUp: place - 1, Home: 0, End: acts.length - 1 }[event.key];
    if (to === undefined || event.altKey || event.ctrlKey) return;
    event.preventDefault();
    const next = Math.max(0, Math.min(acts.length - 1, to));
    setCursor(next);
    event.currentTarget.querySelectorAll<HTMLElement>('button')[next]?.focus();
  };

  return (
    <nav className="running-order" aria-label={words.frame.runningOrder} data-region="running-order">
      <h2 className="cut">{day?.name ?? words.frame.runningOrder}</h2>
      <ul ref={list} onKeyDown={onKeyDown}>
        {acts.map((act, index) => (
          <li key={act.id}>
            <button
              type="button"
              className="list-button running-order-act"
              tabIndex={index === place ? 0 : -1}
              aria-current={act.id === openId ? 'true' : undefined}
              onClick={() => {
                setCursor(null);
                look({ actId: act.id });
              }}
            >
              <ActLine act={act} show={shownShow} />
            </button>
          </li>
        ))}
      </ul>
      <button type="button" className="running-order-new" onClick={onNewAct}>
        + {words.frame.newAct}
      </button>
    </nav>
  );
}

const ActLine = memo(function ActLine({ act, show }: { act: Act; show: Show }) {
  const findings = actOnScreen(show, act.id)?.derived.findings ?? [];
  const questions = useOpenQuestionCount(show, act.id);
  const worst = worstOf(findings);
  return (
    <>
      <span className="running-order-time">
        {act.startMinute === null ? words.frame.untimed : timeText(act.startMinute)}
      </span>
      <span className="running-order-state">{words.actState[act.state]}</span>
      <strong>{act.name}</strong>
      <span className="running-order-numbers">
        {questions > 0 && (
          <span>
            <span aria-hidden="true">{questions} ?</span>
            <span className="unseen">, {words.frame.questions(questions)}</span>
          </span>
        )}
        {worst && (
          <span>
            <SeverityMark severity={worst} says={false} /> <span aria-hidden="true">{findings.length}</span>
            <span className="unseen">, {words.frame.findings(findings.length)}</span>
          </span>
        )}
        {questions === 0 && !worst && <span className="unseen">, {words.frame.calm}</span>}
      </span>
    </>
  );
});
