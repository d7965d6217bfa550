import { type KeyboardEvent, useEffect, useMemo, useRef } from 'react';
import type { LineFault } from '../../core/run/line-faults.ts';
import type { Mix } from '../../core/show/act.ts';
import type { Id } from '../../core/show/rig.ts';
import { placeOf, thirdOfStage } from '../../core/show/stage-place.ts';
import type { Severity } from '../../core/show/words.ts';
import { deviceNames, deviceText, listenersOf, whoHears } from '../parts/names.ts';
import { SeverityMark, worstOf } from '../parts/severity-mark.tsx';
import type { ActOnScreen } from '../state/derive-cache.ts';
import { findingPlaces } from '../state/finding-places.ts';
import { useHere } from '../state/here.tsx';
import { words } from '../wording/words.ts';
import { AsItRan } from './as-it-ran.tsx';
import { WhatTheyHear } from './what-they-hear.tsx';
import './performers.css';

type Props = { open: ActOnScreen; faults: readonly LineFault[]; onFault: (sourceId: Id) => void };

/** Who is on stage; for the chosen one what they hear; beside it what happened so far. */
export function Performers({ open, faults, onFault }: Props) {
  const { view, look } = useHere();
  const { mixes } = open.sheet;
  const { ofMix } = useMemo(() => findingPlaces(open), [open]);
  const chosen = mixes.find((mix) => mix.id === view.mixId) ?? mixes[0];
  const hears = useRef<HTMLDivElement>(null);
  const list = useRef<HTMLUListElement>(null);
  // Somebody is always chosen here, and the listening line follows who is.
  useEffect(() => {
    if (chosen) look({ mixId: chosen.id });
  }, [chosen, look]);
  const onKeyDown = (event: KeyboardEvent<HTMLUListElement>) => {
    if (event.altKey || event.ctrlKey || event.metaKey) return;
    if (event.key === 'ArrowRight') {
      event.preventDefault();
      hears.current?.querySelector<HTMLElement>('tbody button[tabindex="0"]')?.focus();
      return;
    }
    const at = chosen ? mixes.indexOf(chosen) : 0;
    const to = { ArrowDown: at + 1, ArrowUp: at - 1, Home: 0, End: mixes.length - 1 }[event.key];
    if (to === undefined) return;
    event.preventDefault();
    const place = Math.max(0, Math.min(mixes.length - 1, to));
    const next = mixes[place];
    if (next) look({ mixId: next.id });
    event.currentTarget.querySelectorAll<HTMLElement>('button')[place]?.focus();
  };
  const toPerformers = () => list.current?.querySelector<HTMLElement>('button[aria-pressed="true"]')?.focus();
  return (
    <div className="show-body">
      <section className="show-people" aria-label={words.show.performers}>
        <ul ref={list} onKeyDown={onKeyDown}>
          {mixes.map((mix) => (
            <li key={mix.id}>
              <PerformerButton
                open={open}
                mix={mix}
                worst={worstOf(ofMix.get(mix.id) ?? [])}
                isChosen={mix === chosen}
              />
            </li>
          ))}
        </ul>
      </section>
      <div ref={hears} className="show-hears-place">
        {chosen ? (
          <WhatTheyHear key={chosen.id} open={open} mix={chosen} faults={faults} onLeave={toPerformers} />
        ) : (
          <p className="show-hears">{words.show.empty}</p>
        )}
      </div>
      <AsItRan open={open} faults={faults} onFault={onFault} />
    </div>
  );
}

type ButtonProps = { open: ActOnScreen; mix: Mix; worst: Severity | null; isChosen: boolean };

function PerformerButton({ open, mix, worst, isChosen }: ButtonProps) {
  const { look } = useHere();
  const place =
    placeOf(mix) ??
    listenersOf(open.sheet, mix.id)
      .map(placeOf)
      .find((it) => it !== null);
  const planned = open.derived.plan.mixes.find((it) => it.mixId === mix.id);
  return (
    <button
      type="button"
      className="list-button show-performer"
      aria-pressed={isChosen}
      data-first-focus={isChosen ? true : undefined}
      tabIndex={isChosen ? 0 : -1}
      onClick={() => look({ mixId: mix.id })}
    >
      <strong>
        {whoHears(open.sheet, mix)} {worst && <SeverityMark severity={worst} />}
      </strong>
      <span>{deviceNames(open.sheet, planned) ?? deviceText(mix)}</span>
      {place && <span>{words.show.stands(thirdOfStage(place, open.sheet.rig))}</span>}
    </button>
  );
}
