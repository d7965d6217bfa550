import { useMemo, useState } from 'react';
import { bringIntoDay, type RigLoss } from '../../core/archive/bring-into-day.ts';
import { Modal } from '../parts/modal.tsx';
import { SeverityMark } from '../parts/severity-mark.tsx';
import { useHere } from '../state/here.tsx';
import { newId } from '../state/new-id.ts';
import { words } from '../wording/words.ts';
import type { PastAct } from './use-past-act.ts';

const states = ['ran', 'planned'] as const;

/** Says what comes into the day and what cannot, then brings it in as a new act. */
export function BringPastAct({ past, onClose }: { past: PastAct; onClose: () => void }) {
  const { show, days, day, change, look } = useHere();
  const text = words.recall;
  const [dayId, setDayId] = useState(day?.id ?? '');
  const [which, setWhich] = useState<(typeof states)[number]>('ran');
  const brought = useMemo(
    () => bringIntoDay(show, past.documents[which], dayId, newId),
    [show, past, which, dayId],
  );
  const { actName } = past.act;
  const twin = [...show.acts.values()].find((it) => it.dayId === dayId && it.name === actName);
  const bring = () => {
    if (!brought) return;
    change(brought.change);
    const act = brought.change.put.find((it) => it.table === 'acts');
    if (act) look({ actId: act.row.id, moment: 'mixes' });
  };
  return (
    <Modal title={text.bringTitle(actName)} onClose={onClose}>
      <div className="modal-head">
        <h2>{text.bringTitle(actName)}</h2>
      </div>
      <div className="modal-body recall-bring">
        {days.length === 0 ? (
          <p>{text.noDay}</p>
        ) : (
          <>
            <label>
              {text.bringDay}
              <select value={dayId} onChange={(event) => setDayId(event.target.value)}>
                {days.map(({ id, name, date }) => (
                  <option key={id} value={id}>
                    {name} {date}
                  </option>
                ))}
              </select>
            </label>
            <fieldset>
              <legend>{text.bringWhich}</legend>
              {states.map((it) => (
                <label key={it}>
                  <input
                    type="radio"
                    name="which-state"
                    checked={it === which}
                    onChange={() => setWhich(it)}
                  />
                  {text.which[it]}
                </label>
              ))}
            </fieldset>
            <p>{text.bringNew}</p>
            {which === 'ran' && <p>{text.bringLevels}</p>}
            {twin && (
              <p>
                <SeverityMark severity="look again" />{' '}
                {text.bringTwice(actName, show.days.get(dayId)?.name ?? '')}
              </p>
            )}
            {brought && <Losses losses={brought.losses} />}
          </>
        )}
        <div className="recall-bring-do">
          <button type="button" className="main" data-first-focus disabled={!brought} onClick={bring}>
            {text.bringIt}
          </button>
          <button type="button" onClick={onClose}>
            {text.leave}
          </button>
        </div>
      </div>
    </Modal>
  );
}

function Losses({ losses }: { losses: readonly RigLoss[] }) {
  const text = words.recall;
  if (losses.length === 0) return <p>{text.noLoss}</p>;
  return (
    <section>
      <p>
        <SeverityMark severity="look again" /> {text.losses(losses.length)}
      </p>
      <ul className="recall-losses">
        {losses.map(({ what, name, of }) => (
          <li key={`${what} ${name} ${of}`}>{text.loss(text.lossKinds[what], name, of)}</li>
        ))}
      </ul>
      <p>{text.planAnew}</p>
    </section>
  );
}
