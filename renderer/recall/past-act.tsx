import { useMemo, useState } from 'react';
import { sideBySide } from '../../core/archive/side-by-side.ts';
import { runOf } from '../../core/run/move-on.ts';
import type { RunNote } from '../../core/show/as-ran.ts';
import type { Id } from '../../core/show/rig.ts';
import { useMomentKeys } from '../keys/use-moment-keys.ts';
import { clockText, timeText } from '../parts/format.ts';
import { mixNumber, whoHears } from '../parts/names.ts';
import { words } from '../wording/words.ts';
import { BringPastAct } from './bring-past-act.tsx';
import { LevelsBeside } from './levels-beside.tsx';
import { LinesBeside } from './lines-beside.tsx';
import { TakeOut } from './take-out.tsx';
import { type PastAct, usePastAct } from './use-past-act.ts';

/** One act of the archive: as planned beside as it ran, with what differs marked. */
export function PastActView({ actId, onChanged }: { actId: Id; onChanged: () => void }) {
  const past = usePastAct(actId);
  if (past === null) return <p role="status">{words.recall.loading}</p>;
  if ('code' in past)
    return (
      <p role="alert">
        <strong>{past.what}</strong> {past.todo}
      </p>
    );
  return <BothStates past={past} onChanged={onChanged} />;
}

function BothStates({ past, onChanged }: { past: PastAct; onChanged: () => void }) {
  const text = words.recall;
  const [onlyDiffering, setOnlyDiffering] = useState(false);
  const [brings, setBrings] = useState(false);
  const { act, planned, ran } = past;
  const beside = useMemo(() => sideBySide(planned, ran), [planned, ran]);
  const differences =
    beside.lines.filter((it) => it.differs).length +
    beside.mixes.flatMap((it) => it.levels).filter((it) => it.differs).length;
  useMomentKeys((key) => {
    if (key === 'd') setOnlyDiffering(!onlyDiffering);
    else if (key === 'b') setBrings(true);
    else return false;
    return true;
  });
  const shown = <T extends { differs: boolean }>(list: readonly T[]) =>
    onlyDiffering ? list.filter((it) => it.differs) : list;
  return (
    <>
      <header className="recall-head">
        <div>
          <h2>{act.actName}</h2>
          <p>{text.ranOn([act.dayName, act.date].filter(Boolean).join(' '), act.rigName)}</p>
          <Times past={past} />
          <p className="recall-differences" role="status">
            {differences === 0 ? text.noDifference : text.differences(differences)}
          </p>
        </div>
        <div className="recall-tools">
          <button type="button" className="main" onClick={() => setBrings(true)}>
            {text.bring} … <kbd>B</kbd>
          </button>
          <button type="button" aria-pressed={onlyDiffering} onClick={() => setOnlyDiffering(!onlyDiffering)}>
            {text.onlyDiffering} <kbd>D</kbd>
          </button>
          <TakeOut act={act} onChanged={onChanged} />
        </div>
      </header>
      <Notes past={past} />
      <LinesBeside lines={shown(beside.lines)} />
      <div className="recall-mixes">
        {shown(beside.mixes).map(({ mix, levels }) => {
          const { sheet } = ran.sheet.mixes.some(({ id }) => id === mix.id) ? ran : planned;
          const title = text.mix(mixNumber(sheet, mix.id), whoHears(sheet, mix));
          return <LevelsBeside key={mix.id} title={title} levels={shown(levels)} />;
        })}
      </div>
      {brings && <BringPastAct past={past} onClose={() => setBrings(false)} />}
    </>
  );
}

/** When the set was to be, and when it was. */
function Times({ past: { planned, ran } }: { past: PastAct }) {
  const text = words.recall;
  const { startMinute, endMinute } = planned.sheet.act;
  const run = runOf(ran.show, ran.sheet.act.id);
  const was = [run?.beganAt, run?.endedAt].map((at) => (at ? clockText(at) : '?'));
  return (
    <p>
      {text.planned}:{' '}
      {startMinute === null || endMinute === null
        ? text.noTimes
        : text.times(timeText(startMinute), timeText(endMinute))}
      {' · '}
      {text.ran}: {run ? text.times(was[0] ?? '?', was[1] ?? '?') : text.noTimes}
    </p>
  );
}

function Notes({ past: { ran } }: { past: PastAct }) {
  const text = words.recall;
  const { sheet, show } = ran;
  const notes = [...show.runNotes.values()].filter(({ actId }) => actId === sheet.act.id);
  if (notes.length === 0) return null;
  const about = ({ mixId, sourceId }: RunNote) => {
    const mix = sheet.mixes.find(({ id }) => id === mixId);
    const source = sheet.sources.find(({ id }) => id === sourceId);
    return [mix && whoHears(sheet, mix), source?.name].filter(Boolean).join(', ');
  };
  return (
    <section className="recall-notes" aria-label={text.notes}>
      <h3>{text.notes}</h3>
      <ul>
        {notes.map((note) => (
          <li key={note.id}>
            <time dateTime={note.notedAt}>{clockText(note.notedAt)}</time>{' '}
            {about(note) !== '' && <strong>{about(note)}: </strong>}
            {note.text}
          </li>
        ))}
      </ul>
    </section>
  );
}
