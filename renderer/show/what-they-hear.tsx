import { type KeyboardEvent, useMemo, useRef, useState } from 'react';
import { feedsAsRun } from '../../core/run/feeds-as-run.ts';
import type { LineFault } from '../../core/run/line-faults.ts';
import { type HeardNow, heardNow, ranLevelsOf, steppedDb } from '../../core/run/ran-levels.ts';
import type { Mix } from '../../core/show/act.ts';
import { feedKey } from '../../core/show/feed-key.ts';
import type { Id } from '../../core/show/rig.ts';
import { socketName } from '../../core/show/socket-name.ts';
import { useMomentKeys } from '../keys/use-moment-keys.ts';
import { CopyMark } from '../parts/copy-mark.tsx';
import { levelText } from '../parts/format.ts';
import { busText, deviceText, outputText, whoHears } from '../parts/names.ts';
import { SeverityMark } from '../parts/severity-mark.tsx';
import type { ActOnScreen } from '../state/derive-cache.ts';
import { useHere } from '../state/here.tsx';
import { words } from '../wording/words.ts';
import { LevelBar } from './level-bar.tsx';
import { keepLevel } from './run-changes.ts';
import './what-they-hear.css';

type Props = { open: ActOnScreen; mix: Mix; faults: readonly LineFault[]; onLeave: () => void };

/** What one performer hears now, the loudest first. A level that was changed at the desk is kept from here. */
export function WhatTheyHear({ open, mix, faults, onLeave }: Props) {
  const { sheet, derived } = open;
  const { show, view, look, change } = useHere();
  const text = words.show;
  const [isTyping, setTyping] = useState(false);
  const table = useRef<HTMLTableElement>(null);
  const ran = useMemo(() => ranLevelsOf(show, sheet.act.id), [show, sheet.act.id]);
  const feeds = useMemo(() => feedsAsRun(sheet, derived.feeds, ran), [sheet, derived, ran]);
  const heard = useMemo(
    () => heardNow(sheet.sources, derived.feeds, mix.id, ran),
    [sheet, derived, mix.id, ran],
  );
  const chosen = heard.find(({ source }) => source.id === view.sourceId) ?? null;
  const planned = derived.plan.mixes.find((it) => it.mixId === mix.id);
  const who = whoHears(sheet, mix);

  const set = (it: Pick<HeardNow, 'source' | 'levelDb'>, levelDb: number | null) => {
    look({ sourceId: it.source.id });
    if (levelDb !== it.levelDb) change(keepLevel(show, sheet, mix, it, levelDb, new Date()));
  };
  const step = (byDb: number) => {
    if (chosen) set(chosen, steppedDb(chosen.levelDb, byDb, sheet.rig.littleDb));
    else if (heard[0]) look({ sourceId: heard[0].source.id });
  };
  const focusRow = (sourceId: Id) =>
    table.current?.querySelector<HTMLElement>(`[data-source="${CSS.escape(sourceId)}"]`)?.focus();

  useMomentKeys((key) => {
    if (key === '+' || key === '=') step(1);
    else if (key === '-' || key === '−') step(-1);
    else if (key === 'Backspace' && chosen?.isChanged) set(chosen, chosen.plannedDb);
    else return false;
    return true;
  });
  const onKeyDown = (event: KeyboardEvent<HTMLTableElement>) => {
    if (event.altKey || event.ctrlKey || event.metaKey) return;
    const at = chosen ? heard.indexOf(chosen) : 0;
    const to = { ArrowDown: at + 1, ArrowUp: at - 1, Home: 0, End: heard.length - 1 }[event.key];
    if (event.key === 'ArrowLeft') onLeave();
    else if (to !== undefined) {
      const next = heard[Math.max(0, Math.min(heard.length - 1, to))];
      if (next) {
        look({ sourceId: next.source.id });
        focusRow(next.source.id);
      }
    } else return;
    event.preventDefault();
  };

  return (
    <section className="show-hears" aria-label={text.hears(who)}>
      <h2>{text.hears(who)}</h2>
      <p className="show-way">
        {[
          deviceText(mix),
          words.mixes.bus(busText(sheet, planned)),
          outputText(sheet, planned) ?? words.mixes.noOutput,
        ].join(' · ')}
      </p>
      {heard.length === 0 ? (
        <p className="show-way">{mix.mixedAt === 'elsewhere' ? text.elsewhere : text.nothing}</p>
      ) : (
        <table ref={table} onKeyDown={onKeyDown}>
          <caption className="unseen">{text.hears(who)}</caption>
          <thead>
            <tr>
              <th scope="col" className="show-level">
                {text.level}
              </th>
              <th scope="col">{text.source}</th>
              <th scope="col">{text.copy}</th>
              <th scope="col">{text.socket}</th>
            </tr>
          </thead>
          <tbody>
            {heard.map((it) => (
              <HeardRow
                key={it.source.id}
                open={open}
                it={it}
                feed={feeds.get(feedKey({ mixId: mix.id, sourceId: it.source.id })) ?? it.feed}
                fault={faults.find(({ sourceId }) => sourceId === it.source.id) ?? null}
                isChosen={it === chosen}
                takesFocus={it === (chosen ?? heard[0])}
                onChoose={() => look({ sourceId: it.source.id })}
                onType={() => {
                  look({ sourceId: it.source.id });
                  setTyping(true);
                }}
              />
            ))}
          </tbody>
        </table>
      )}
      <LevelBar
        open={open}
        mix={mix}
        chosen={chosen}
        heard={heard}
        isTyping={isTyping && chosen !== null}
        onType={setTyping}
        onStep={step}
        onSet={set}
        onDone={() => chosen && focusRow(chosen.source.id)}
      />
    </section>
  );
}

type RowProps = {
  open: ActOnScreen;
  it: HeardNow;
  feed: HeardNow['feed'];
  fault: LineFault | null;
  isChosen: boolean;
  takesFocus: boolean;
  onChoose: () => void;
  onType: () => void;
};

function HeardRow({ open, it, feed, fault, isChosen, takesFocus, onChoose, onType }: RowProps) {
  const text = words.show;
  const { sheet, derived } = open;
  const { source, levelDb, plannedDb } = it;
  const socketId = derived.plan.patches.find(({ sourceId }) => sourceId === source.id)?.socketId ?? null;
  return (
    <tr className={isChosen ? 'is-chosen' : undefined}>
      <td className="show-level">{levelText(levelDb)}</td>
      <th scope="row">
        <button
          type="button"
          className="plain"
          aria-pressed={isChosen}
          data-source={source.id}
          tabIndex={takesFocus ? 0 : -1}
          onClick={onChoose}
          onKeyDown={(event) => {
            if (event.key !== 'Enter') return;
            event.preventDefault();
            onType();
          }}
        >
          {source.name}
        </button>{' '}
        {fault && (
          <span className="show-fault">
            <SeverityMark severity={fault.severity} says={false} /> {text.found[fault.found]}
          </span>
        )}{' '}
        {it.isChanged && (
          <span className="show-planned">
            {it.isAdded ? text.notPlanned : text.plannedLevel(levelText(plannedDb))}
          </span>
        )}
      </th>
      <td className="show-copy">
        {feed.purpose !== null && <CopyMark purpose={feed.purpose} says />}{' '}
        {feed.channel === null ? '' : words.common.channel(feed.channel)}
      </td>
      <td>{socketName(sheet, socketId) ?? words.common.nothing}</td>
    </tr>
  );
}
