import { useId } from 'react';
import type { CallOutput } from '../../core/contract/contract.ts';
import type { KeptState } from '../../core/contract/copies.ts';
import { words } from '../wording/words.ts';
import { AskFirst } from './ask-first.tsx';
import { DifferenceList } from './difference-list.tsx';
import { whenText } from './times.ts';

type Props = {
  state: KeptState | null;
  others: readonly KeptState[];
  /** What the state is compared with; null: how it is now. */
  toId: string | null;
  found: CallOutput<'states.compare'> | null;
  /** "the act …", for the question. */
  what: string;
  onCompare: (toId: string | null) => void;
  onBringBack: (state: KeptState) => void;
};

/** What changed since a kept state, who wrote it and when; and the way back to it. */
export function StateLook({ state, others, toId, found, what, onCompare, onBringBack }: Props) {
  const withId = useId();
  const text = words.keep.states;
  if (!state)
    return (
      <section className="keep-column quiet">
        <p>{text.choose}</p>
      </section>
    );
  const count = found?.differences.count ?? 0;
  return (
    <section className="keep-column" aria-label={text.compareTitle(state.name)}>
      <h3>{text.compareTitle(state.name)}</h3>
      <p className="keep-row">
        <label htmlFor={withId}>{text.compareWith}</label>
        <select id={withId} value={toId ?? ''} onChange={(event) => onCompare(event.target.value || null)}>
          <option value="">{text.now}</option>
          {others.map(({ id, name, keptAt }) => (
            <option key={id} value={id}>
              {name} ({whenText(keptAt)})
            </option>
          ))}
        </select>
      </p>
      {toId === null && count > 0 && (
        <AskFirst
          label={text.bringBack(state.name)}
          question={text.sure(state.name, what, count)}
          yes={text.yes}
          no={text.no}
          onYes={() => onBringBack(state)}
        />
      )}
      {found && count === 0 && <p>{text.same}</p>}
      {found && count > 0 && (
        <>
          <p>{text.differs(count)}</p>
          <DifferenceList differences={found.differences} tense="did" />
          <h3>{text.written}</h3>
          {found.writings.length === 0 && <p className="quiet">{text.writtenUnknown}</p>}
          <Writings writings={found.writings} />
        </>
      )}
    </section>
  );
}

function Writings({ writings }: Pick<CallOutput<'states.compare'>, 'writings'>) {
  const text = words.keep.states;
  return (
    <ul className="keep-writings">
      {[...writings].reverse().map(({ madeAt, device, did, label }, at) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: writes have no id, and the list never moves.
        <li key={at}>
          <span className="quiet">
            {whenText(madeAt)}, {device}
          </span>{' '}
          {label} {text.did[did]}
        </li>
      ))}
    </ul>
  );
}
