import { useId } from 'react';
import { words as wording } from '../wording/words.ts';

/** For whom a taught word holds. */
export type Scope = 'band' | 'all';
export type Remember = {
  /** null: the answer is not remembered. */
  scope: Scope | null;
  band: string;
  onScope: (scope: Scope | null) => void;
};

const scopes: readonly (Scope | null)[] = [null, 'band', 'all'];

/** The next way to remember, as the key goes through them. */
export function nextScope(scope: Scope | null): Scope | null {
  return scopes[(scopes.indexOf(scope) + 1) % scopes.length] ?? null;
}

/** Chosen before the answer: the word of the question then means the answer from now on. */
export function RememberWord({ words, scope, band, onScope }: Remember & { words: string }) {
  const id = useId();
  const text = wording.advance;
  const { once, all } = text.rememberScope;
  return (
    <p className="question-remember">
      <label htmlFor={id}>
        <kbd>W</kbd> {text.remember(words)}
      </label>
      <select
        id={id}
        value={scope ?? ''}
        onChange={({ target }) => onScope(scopes.find((it) => (it ?? '') === target.value) ?? null)}
      >
        <option value="">{once}</option>
        <option value="band">{text.rememberScope.band(band)}</option>
        <option value="all">{all}</option>
      </select>
      {scope !== null && <span role="status">{text.rememberThen}</span>}
    </p>
  );
}
