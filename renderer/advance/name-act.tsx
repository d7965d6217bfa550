import { type FormEvent, useId, useState } from 'react';
import { words } from '../wording/words.ts';

/** Asks what a band is called whose pasted rider does not say it. An empty answer is a new act without a name yet. */
export function NameAct({ onName, onBack }: { onName: (name: string) => void; onBack: () => void }) {
  const id = useId();
  const [name, setName] = useState('');
  const text = words.advance;
  const done = (event: FormEvent) => {
    event.preventDefault();
    onName(name.trim() || text.newActName);
  };
  return (
    <form className="bring-in" aria-label={text.nameless} onSubmit={done}>
      <h2>{text.nameless}</h2>
      <label htmlFor={id}>{text.namelessField}</label>
      <input
        id={id}
        // biome-ignore lint/a11y/noAutofocus: the question stands in place of the form that had the focus.
        autoFocus
        maxLength={200}
        value={name}
        onChange={({ target }) => setName(target.value)}
      />
      <p>
        <button type="submit" className="main">
          {text.namelessDone}
        </button>{' '}
        <button type="button" className="plain" onClick={onBack}>
          {text.namelessBack}
        </button>
      </p>
    </form>
  );
}
