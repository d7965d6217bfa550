import { type ReactNode, useId } from 'react';
import { words } from '../wording/words.ts';
import './decision-field.css';

type Props = {
  label: string;
  decided: boolean;
  /** Why it is so, where the plan says it. */
  why?: string | undefined;
  onPutBack: () => void;
  /** False where the control itself says that it shows a proposal. */
  saysProposed?: boolean;
  children: (id: string) => ReactNode;
};

/** One matter that is either decided by the engineer or proposed by the program, and can be put back. */
export function DecisionField({ label, decided, why, onPutBack, saysProposed = true, children }: Props) {
  const id = useId();
  return (
    <div className={decided ? 'decision is-decided' : 'decision'}>
      <label htmlFor={id}>{label}</label>
      {children(id)}
      {decided ? (
        <button type="button" aria-label={`${words.common.putBack}: ${label}`} onClick={onPutBack}>
          {words.common.putBack}
        </button>
      ) : (
        saysProposed && <span className="quiet decision-by">{words.common.proposed}</span>
      )}
      {why && <p className="quiet decision-why">{why}</p>}
    </div>
  );
}

/** A choice among names; the first entry is the proposal. */
export function DecisionChoice({
  label,
  value,
  proposed,
  options,
  why,
  onChoose,
}: {
  label: string;
  /** The decided value, or null while the proposal stands. */
  value: string | null;
  /** The proposal, in words. */
  proposed: string;
  options: readonly { value: string; label: string }[];
  why?: string | undefined;
  onChoose: (value: string | null) => void;
}) {
  return (
    <DecisionField
      label={label}
      decided={value !== null}
      saysProposed={false}
      why={why}
      onPutBack={() => onChoose(null)}
    >
      {(id) => (
        <select
          id={id}
          value={value ?? ''}
          onChange={(event) => onChoose(event.target.value === '' ? null : event.target.value)}
        >
          <option value="">
            {value === null ? words.common.isProposed(proposed) : words.mixes.proposal}
          </option>
          {options.map((option) => (
            <option key={option.value} value={option.value}>
              {option.label}
            </option>
          ))}
        </select>
      )}
    </DecisionField>
  );
}
