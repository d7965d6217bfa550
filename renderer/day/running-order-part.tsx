import { useState } from 'react';
import type { Changeover } from '../../core/changeover/changeover.ts';
import type { DayDoubt } from '../../core/plan/day/check-day.ts';
import type { Act, Day } from '../../core/show/act.ts';
import { dropAct } from '../../core/show/running-order.ts';
import { Modal } from '../parts/modal.tsx';
import { SeverityMark } from '../parts/severity-mark.tsx';
import { useHere } from '../state/here.tsx';
import { words } from '../wording/words.ts';
import { DaySettings } from './day-settings.tsx';
import { DayStock } from './day-stock.tsx';
import { OrderTable } from './order-table.tsx';
import './running-order-part.css';

type Props = {
  day: Day;
  changeovers: readonly (Changeover | null)[];
  doubts: readonly DayDoubt[];
  /** Rules that the day breaks as it stands, and what had to be read in its own way. */
  broken: readonly string[];
  notes: readonly string[];
};

/** Order and times of the acts, what is true of the whole day, and what does not fit. */
export function RunningOrderPart({ day, changeovers, doubts, broken, notes }: Props) {
  const [dropping, setDropping] = useState<Act | null>(null);
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a part that scrolls must be reachable by keyboard.
    <section className="order-part" aria-label={words.day.parts.order} tabIndex={0}>
      <Doubts doubts={doubts} broken={broken} notes={notes} />
      <OrderTable day={day} changeovers={changeovers} onDrop={setDropping} />
      <div className="order-part-below">
        <DaySettings day={day} />
        <DayStock day={day} />
      </div>
      {dropping && <DropAsk act={dropping} onClose={() => setDropping(null)} />}
    </section>
  );
}

function Doubts({ doubts, broken, notes }: Pick<Props, 'doubts' | 'broken' | 'notes'>) {
  const text = words.day;
  if (doubts.length + broken.length + notes.length === 0) return null;
  return (
    <ul className="order-doubts" aria-label={text.doubts}>
      {doubts.map(({ stops, what, todo }) => (
        <li key={what}>
          <SeverityMark severity={stops ? 'must fix' : 'look again'} />
          <span>
            <strong>{what}</strong> {todo}
          </span>
        </li>
      ))}
      {broken.map((what) => (
        <li key={what}>
          <SeverityMark severity="look again" />
          <span>{what}</span>
        </li>
      ))}
      {notes.map((note) => (
        <li key={note}>
          <SeverityMark severity="know this" />
          <span>{note}</span>
        </li>
      ))}
    </ul>
  );
}

function DropAsk({ act, onClose }: { act: Act; onClose: () => void }) {
  const { show, change } = useHere();
  const text = words.day;
  const countOf = (rows: ReadonlyMap<string, { actId: string }>) =>
    [...rows.values()].filter((row) => row.actId === act.id).length;
  return (
    <Modal title={text.dropAsk(act.name)} onClose={onClose}>
      <div className="modal-head">
        <h2>{text.dropAsk(act.name)}</h2>
      </div>
      <div className="modal-body">
        <p>{text.dropWhat(countOf(show.sources), countOf(show.mixes))}</p>
        <p className="order-drop-tools">
          <button
            type="button"
            className="main"
            onClick={() => {
              change(dropAct(act));
              onClose();
            }}
          >
            {text.dropOf(act.name)}
          </button>
          <button type="button" onClick={onClose}>
            {text.dropKeep}
          </button>
        </p>
      </div>
    </Modal>
  );
}
