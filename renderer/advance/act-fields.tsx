import { useId } from 'react';
import type { Act } from '../../core/show/act.ts';
import { put } from '../../core/show/change.ts';
import { actStates } from '../../core/show/words.ts';
import { CheckedField } from '../parts/checked-field.tsx';
import { parseTime, timeText } from '../parts/format.ts';
import { withField } from '../parts/row-fields.ts';
import { useHere } from '../state/here.tsx';
import { words } from '../wording/words.ts';
import './act-fields.css';

/** Name, times and state of the act. */
export function ActFields({ act }: { act: Act }) {
  const { change } = useHere();
  const id = useId();
  const text = words.advance;
  const set = (head: string, next: Act) =>
    change({
      label: words.field.changed(head, act.name),
      put: [put('acts', next)],
      remove: [],
    });
  const commitName = (typed: string): string | null => {
    const outcome = withField('acts', act, 'name', 'text', typed);
    if ('why' in outcome) return outcome.why;
    set(text.actName, outcome.row);
    return null;
  };
  const commitTime = (field: 'startMinute' | 'endMinute', head: string) => (typed: string) => {
    const minute = typed.trim() === '' ? null : parseTime(typed);
    if (minute === null && typed.trim() !== '') return text.timeBad;
    set(head, { ...act, [field]: minute });
    return null;
  };
  const time = (minute: number | null) => (minute === null ? '' : timeText(minute));
  return (
    <section className="act-fields" aria-label={text.act}>
      <label htmlFor={`${id}name`}>{text.act}</label>
      <CheckedField id={`${id}name`} value={act.name} onCommit={commitName} />
      <label htmlFor={`${id}start`}>{text.start}</label>
      <CheckedField
        id={`${id}start`}
        value={time(act.startMinute)}
        onCommit={commitTime('startMinute', text.start)}
      />
      <label htmlFor={`${id}end`}>{text.end}</label>
      <CheckedField
        id={`${id}end`}
        value={time(act.endMinute)}
        onCommit={commitTime('endMinute', text.end)}
      />
      <label htmlFor={`${id}state`}>{text.state}</label>
      <select
        id={`${id}state`}
        value={act.state}
        onChange={({ target }) => {
          const state = actStates.find((it) => it === target.value);
          if (state) set(text.state, { ...act, state });
        }}
      >
        {actStates.map((state) => (
          <option key={state} value={state}>
            {words.actState[state]}
          </option>
        ))}
      </select>
    </section>
  );
}
