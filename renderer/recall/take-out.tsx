import { useState } from 'react';
import type { ArchivedAct } from '../../core/contract/archive.ts';
import { Modal } from '../parts/modal.tsx';
import { useHere } from '../state/here.tsx';
import { words } from '../wording/words.ts';

/** Takes an act out of the archive, after a question that says what becomes of it. */
export function TakeOut({ act, onChanged }: { act: ArchivedAct; onChanged: () => void }) {
  const { connection, tell, look } = useHere();
  const [isAsking, setAsking] = useState(false);
  const text = words.recall;
  const takeOut = async () => {
    setAsking(false);
    const answer = await connection.call('archive.remove', { actId: act.actId });
    if (!answer.ok) {
      if (!answer.lost) tell(answer.problem);
      return;
    }
    look({ pastActId: null });
    onChanged();
  };
  const title = text.takeOutTitle(act.actName);
  return (
    <>
      <button type="button" className="plain" onClick={() => setAsking(true)}>
        {text.takeOut} …
      </button>
      {isAsking && (
        <Modal title={title} onClose={() => setAsking(false)}>
          <div className="modal-head">
            <h2>{title}</h2>
          </div>
          <div className="modal-body recall-bring">
            <p role="alert">{text.takeOutWhat(act.date || act.ranAt.slice(0, 10))}</p>
            <div className="recall-bring-do">
              {/* The safe answer is the one under the Enter key. */}
              <button type="button" className="main" data-first-focus onClick={() => setAsking(false)}>
                {text.takeOutKeep}
              </button>
              <button type="button" onClick={() => void takeOut()}>
                {text.takeOutYes}
              </button>
            </div>
          </div>
        </Modal>
      )}
    </>
  );
}

/** The acts that were taken out, each with a way back. */
export function TakenOut({ acts, onChanged }: { acts: readonly ArchivedAct[]; onChanged: () => void }) {
  const { connection, tell, look } = useHere();
  const text = words.recall;
  if (acts.length === 0) return null;
  const putBack = async ({ actId }: ArchivedAct) => {
    const answer = await connection.call('archive.putBack', { actId });
    if (answer.ok) look({ pastActId: actId });
    else if (!answer.lost) tell(answer.problem);
    onChanged();
  };
  return (
    <section className="recall-taken-out" aria-label={text.takenOut}>
      <h2>{text.takenOut}</h2>
      <p className="quiet">{text.takenOutHow}</p>
      <ul>
        {acts.map((act) => (
          <li key={act.actId}>
            <span>
              <strong>{act.actName}</strong>{' '}
              <span className="quiet">
                {act.dayName} {act.date || act.ranAt.slice(0, 10)}
              </span>
            </span>
            <button type="button" aria-label={text.putBackOf(act.actName)} onClick={() => void putBack(act)}>
              {text.putBack}
            </button>
          </li>
        ))}
      </ul>
    </section>
  );
}
