import { useMemo } from 'react';
import type { LineFault } from '../../core/run/line-faults.ts';
import { type RunEvent, runLog } from '../../core/run/run-log.ts';
import type { Id } from '../../core/show/rig.ts';
import type { Show } from '../../core/show/show.ts';
import { clockText, levelText } from '../parts/format.ts';
import { whoHears } from '../parts/names.ts';
import { SeverityMark } from '../parts/severity-mark.tsx';
import type { ActOnScreen } from '../state/derive-cache.ts';
import { useHere } from '../state/here.tsx';
import { words } from '../wording/words.ts';
import { KeepInArchive } from './keep-in-archive.tsx';
import { removeNote } from './run-changes.ts';
import './as-it-ran.css';

type Props = { open: ActOnScreen; faults: readonly LineFault[]; onFault: (sourceId: Id) => void };

/** The lines that are not ok, and everything that was kept of this act's run, the newest first. */
export function AsItRan({ open, faults, onFault }: Props) {
  const { show } = useHere();
  const text = words.show;
  const { act } = open.sheet;
  const events = useMemo(() => runLog(show, act.id).filter(isWorthTelling(show, act.id)), [show, act.id]);
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a part that scrolls must be reachable by keyboard.
    <section className="show-log" aria-label={text.asItRan} tabIndex={0}>
      {faults.length > 0 && (
        <>
          <h3>
            {text.notOk}: {faults.length}
          </h3>
          <ul className="show-faults">
            {faults.map(({ sourceId, severity, cause }) => (
              <li key={sourceId}>
                <button type="button" className="list-button" onClick={() => onFault(sourceId)}>
                  <SeverityMark severity={severity} />
                  {cause}
                </button>
              </li>
            ))}
          </ul>
        </>
      )}
      <h3>{text.asItRan}</h3>
      {events.length === 0 ? (
        <p className="quiet">{text.nothingKept}</p>
      ) : (
        <ul className="show-events">
          {events.map((event) => (
            <li key={keyOf(event)}>
              <time dateTime={event.at}>{clockText(event.at)}</time>
              <EventWords open={open} event={event} />
            </li>
          ))}
        </ul>
      )}
      <KeepInArchive act={act} />
    </section>
  );
}

/** A line that was ok at once needs no word: the progress counts it. */
function isWorthTelling(show: Show, actId: Id): (event: RunEvent) => boolean {
  const troubled = new Set(
    [...show.lineResults.values()]
      .filter((it) => it.actId === actId && it.found !== 'ok')
      .map((it) => it.sourceId),
  );
  return (event) => event.is !== 'result' || troubled.has(event.result.sourceId);
}

function EventWords({ open: { sheet }, event }: { open: ActOnScreen; event: RunEvent }) {
  const { change } = useHere();
  const text = words.show;
  const sourceName = (id: Id | null) =>
    sheet.sources.find((it) => it.id === id)?.name ?? words.common.nothing;
  const mixName = (id: Id | null) => {
    const mix = sheet.mixes.find((it) => it.id === id);
    return mix ? whoHears(sheet, mix) : words.common.nothing;
  };
  switch (event.is) {
    case 'began':
      return <span>{text.beganAt}</span>;
    case 'ended':
      return <span>{text.endedAt}</span>;
    case 'result':
      return <span>{text.foundLine(sourceName(event.result.sourceId), text.found[event.result.found])}</span>;
    case 'level': {
      const { mixId, sourceId, fromDb, levelDb } = event.level;
      return (
        <span>
          {text.moved(mixName(mixId), sourceName(sourceId), levelText(fromDb), text.db(levelText(levelDb)))}
        </span>
      );
    }
    case 'note': {
      const { note } = event;
      const about = [
        ...(note.mixId === null ? [] : [mixName(note.mixId)]),
        ...(note.sourceId === null ? [] : [sourceName(note.sourceId)]),
      ].join(', ');
      return (
        <>
          <span className="show-note">
            {about !== '' && <strong>{about}: </strong>}
            {note.text}
          </span>
          <button
            type="button"
            className="plain"
            aria-label={text.noteRemove(note.text)}
            title={words.common.remove}
            onClick={() => change(removeNote(note))}
          >
            ×
          </button>
        </>
      );
    }
  }
}

function keyOf(event: RunEvent): string {
  switch (event.is) {
    case 'result':
      return event.result.id;
    case 'level':
      return event.level.id;
    case 'note':
      return event.note.id;
    default:
      return event.is;
  }
}
