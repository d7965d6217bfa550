import { type KeyboardEvent, useEffect, useMemo } from 'react';
import type { Mix } from '../../core/show/act.ts';
import { listeningSentence } from '../frame/listening.ts';
import { CopyMark } from '../parts/copy-mark.tsx';
import { EmptyScreen } from '../parts/empty-screen.tsx';
import { levelText } from '../parts/format.ts';
import { busText, deviceNames, deviceText, outputText, socketName, whoHears } from '../parts/names.ts';
import { SeverityMark, worstOf } from '../parts/severity-mark.tsx';
import type { ActOnScreen } from '../state/derive-cache.ts';
import { findingPlaces } from '../state/finding-places.ts';
import { useHere } from '../state/here.tsx';
import { words } from '../wording/words.ts';
import './show-screen.css';

/** Who is on stage, and for the chosen one what they hear, the loudest first. Arrows choose. */
export function ShowScreen() {
  const { open, view, look } = useHere();
  const text = words.show;
  const mixes = open?.sheet.mixes ?? [];
  const chosen = mixes.find((mix) => mix.id === view.mixId) ?? mixes[0];
  // Somebody is always chosen here, and the listening line follows who is.
  useEffect(() => {
    if (chosen) look({ mixId: chosen.id });
  }, [chosen, look]);
  if (!open || mixes.length === 0)
    return (
      <EmptyScreen
        what={text.empty}
        todo={text.emptyTodo}
        action={{ label: words.mixes.toAdvance, run: () => look({ moment: 'advance' }) }}
      />
    );
  const onKeyDown = (event: KeyboardEvent<HTMLUListElement>) => {
    const by = { ArrowDown: 1, ArrowRight: 1, ArrowUp: -1, ArrowLeft: -1 }[event.key];
    if (by === undefined || event.altKey) return;
    event.preventDefault();
    const at = Math.max(0, Math.min(mixes.length - 1, (chosen ? mixes.indexOf(chosen) : 0) + by));
    const next = mixes[at];
    if (next) look({ mixId: next.id });
    event.currentTarget.querySelectorAll<HTMLElement>('button')[at]?.focus();
  };
  return (
    <div className="show">
      <section aria-label={text.performers}>
        <ul className="show-performers" onKeyDown={onKeyDown}>
          {mixes.map((mix) => (
            <li key={mix.id}>
              <PerformerButton open={open} mix={mix} isChosen={mix === chosen} />
            </li>
          ))}
        </ul>
      </section>
      {chosen && <WhatTheyHear open={open} mix={chosen} />}
    </div>
  );
}

function PerformerButton({ open, mix, isChosen }: { open: ActOnScreen; mix: Mix; isChosen: boolean }) {
  const { look } = useHere();
  const places = useMemo(() => findingPlaces(open), [open]);
  const worst = worstOf(places.ofMix.get(mix.id) ?? []);
  const planned = open.derived.plan.mixes.find((it) => it.mixId === mix.id);
  return (
    <button
      type="button"
      className="show-performer"
      aria-pressed={isChosen}
      tabIndex={isChosen ? 0 : -1}
      onClick={() => look({ mixId: mix.id })}
    >
      <strong>
        {whoHears(open.sheet, mix)} {worst && <SeverityMark severity={worst} />}
      </strong>
      <span>{deviceNames(open.sheet, planned) ?? deviceText(mix)}</span>
    </button>
  );
}

function WhatTheyHear({ open, mix }: { open: ActOnScreen; mix: Mix }) {
  const { sheet, derived } = open;
  const { look } = useHere();
  const text = words.show;
  const planned = derived.plan.mixes.find((it) => it.mixId === mix.id);
  const heard = derived.feeds
    .flatMap((feeds, place) => {
      const feed = feeds.find((it) => it.mixId === mix.id);
      const source = sheet.sources[place];
      return source && feed && feed.purpose !== null ? [{ source, feed, purpose: feed.purpose }] : [];
    })
    .sort((a, b) => (b.feed.levelDb ?? -200) - (a.feed.levelDb ?? -200));
  const socketOf = (sourceId: string) =>
    socketName(sheet, derived.plan.patches.find((it) => it.sourceId === sourceId)?.socketId ?? null);
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a part that scrolls must be reachable by keyboard.
    <section className="show-hears" aria-label={text.hears(whoHears(sheet, mix))} tabIndex={0}>
      <h2>{text.hears(whoHears(sheet, mix))}</h2>
      <p className="show-way">
        {[
          deviceText(mix),
          words.mixes.bus(busText(sheet, planned)),
          outputText(sheet, planned) ?? words.mixes.noOutput,
        ].join(' · ')}
      </p>
      <p className="show-cue">{listeningSentence(open, mix.id)}</p>
      {heard.length === 0 ? (
        <p>{text.nothing}</p>
      ) : (
        <table>
          <caption className="unseen">{text.hears(whoHears(sheet, mix))}</caption>
          <thead>
            <tr>
              <th scope="col">{text.level}</th>
              <th scope="col">{text.source}</th>
              <th scope="col">{text.copy}</th>
              <th scope="col">{text.socket}</th>
            </tr>
          </thead>
          <tbody>
            {heard.map(({ source, feed, purpose }) => (
              <tr key={source.id}>
                <td className="show-level">{levelText(feed.levelDb)}</td>
                <th scope="row">
                  <button
                    type="button"
                    className="plain"
                    onClick={() =>
                      look({ sourceId: source.id, mixId: mix.id, moment: 'mixes', side: 'details' })
                    }
                  >
                    {source.name}
                  </button>
                </th>
                <td>
                  <CopyMark purpose={purpose} says />{' '}
                  {feed.channel === null ? '' : words.common.channel(feed.channel)}
                </td>
                <td>{socketOf(source.id) ?? words.common.nothing}</td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
    </section>
  );
}
