import { useEffect, useId, useState } from 'react';
import './checked-field.css';

type Props = {
  id?: string;
  label?: string;
  /** The value as text; empty where there is none. */
  value: string;
  placeholder?: string;
  /** Id of a `datalist` with what else is written there. */
  list?: string;
  /** Takes the text; answers the sentence that says why not, or null where it was taken. */
  onCommit: (text: string) => string | null;
};

/** A text field that is kept when it is left or Enter is pressed, and refuses with a sentence beside it. */
export function CheckedField({ id, label, value, placeholder, list, onCommit }: Props) {
  const [text, setText] = useState(value);
  const [why, setWhy] = useState<string | null>(null);
  const whyId = useId();
  useEffect(() => {
    setText(value);
    setWhy(null);
  }, [value]);
  const commit = () => {
    if (text !== value) setWhy(onCommit(text));
  };
  return (
    <span className="checked-field">
      <input
        id={id}
        aria-label={label}
        value={text}
        placeholder={placeholder}
        list={list}
        aria-invalid={why !== null}
        aria-describedby={why === null ? undefined : whyId}
        onChange={(event) => setText(event.target.value)}
        onKeyDown={(event) => {
          if (event.key === 'Enter') commit();
          else if (event.key === 'Escape' && text !== value) {
            event.stopPropagation();
            setText(value);
            setWhy(null);
          }
        }}
        onBlur={commit}
      />
      {why !== null && (
        <span id={whyId} role="alert" className="checked-field-why">
          {why}
        </span>
      )}
    </span>
  );
}
