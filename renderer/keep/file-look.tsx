import { useId } from 'react';
import type { ExchangeLook } from '../../core/contract/copies.ts';
import type { Day } from '../../core/show/act.ts';
import { words } from '../wording/words.ts';
import { AskFirst } from './ask-first.tsx';
import { DifferenceList } from './difference-list.tsx';
import { Holdings } from './holdings.tsx';

type Props = {
  name: string;
  look: ExchangeLook;
  days: readonly Day[];
  dayId: string | null;
  onDay: (dayId: string) => void;
  onBringIn: (way: 'beside' | 'replace') => void;
};

/** What a file holds and what each way of bringing it in would do. */
export function FileLook({ name, look, days, dayId, onDay, onBringIn }: Props) {
  const dayFieldId = useId();
  const text = words.keep.files;
  const differing = look.replace?.differences.count ?? 0;
  return (
    <section aria-label={text.lookTitle(name)}>
      <h3>{text.lookTitle(name)}</h3>
      <p>{look.holds === 'act' ? text.holdsAct : text.holdsShow}</p>
      <Holdings
        days={look.holds === 'show' ? look.days : null}
        acts={look.acts}
        sourceCount={look.sourceCount}
        mixCount={look.mixCount}
      />
      {look.alreadyThere.length > 0 && (
        <p className="keep-caution">{text.alreadyThere(words.keep.list(look.alreadyThere))}</p>
      )}
      {look.holds === 'act' && days.length > 0 && (
        <p className="keep-row">
          <label htmlFor={dayFieldId}>{text.onDay}</label>
          <select id={dayFieldId} value={dayId ?? ''} onChange={(event) => onDay(event.target.value)}>
            {days.map((it) => (
              <option key={it.id} value={it.id}>
                {it.name}
              </option>
            ))}
          </select>
        </p>
      )}
      {look.beside ? (
        <>
          <p>{text.besideWould(look.beside.rowCount, look.beside.leftOut)}</p>
          <p>
            <button type="button" className="main" onClick={() => onBringIn('beside')}>
              {text.beside}
            </button>
          </p>
        </>
      ) : (
        <p>{text.noDay}</p>
      )}
      {look.replace && differing === 0 && <p>{text.replaceSame}</p>}
      {look.replace && differing > 0 && (
        <>
          <AskFirst
            label={text.replace}
            question={text.sure(name, differing)}
            yes={text.yes}
            no={text.no}
            onYes={() => onBringIn('replace')}
          />
          <p>{text.replaceWould(differing)}</p>
          <DifferenceList differences={look.replace.differences} tense="would" />
        </>
      )}
    </section>
  );
}
