import { type FormEvent, useId, useMemo, useState } from 'react';
import type { ActSheet } from '../../core/show/act-sheet.ts';
import { type Meaning, type MeaningOf, meaningsOf } from '../../core/show/own-word.ts';
import { useHere } from '../state/here.tsx';
import { words as wording } from '../wording/words.ts';
import type { Scope } from './remember-word.tsx';
import { teachChange } from './teach-changes.ts';

/** What a word may mean in an act, those first that are chosen most. */
function meaningsIn({ sources, performers }: ActSheet): { of: MeaningOf; kinds: readonly string[] }[] {
  const named: Partial<Record<MeaningOf, string[]>> = {
    lines: sources.map(({ name }) => name),
    performer: performers.map(({ name }) => name),
  };
  const order = Object.keys(wording.advance.meaningOf) as MeaningOf[];
  return order
    .map((of) => ({ of, kinds: [...new Set<string>(meaningsOf[of] ?? named[of])] }))
    .filter(({ kinds }) => kinds.length > 0);
}

/** One line: the word, what it means, for whom. */
export function TeachWord({ sheet }: { sheet: ActSheet }) {
  const { show, change } = useHere();
  const id = useId();
  const meanings = useMemo(() => meaningsIn(sheet), [sheet]);
  const [typed, setTyped] = useState('');
  const [meaning, setMeaning] = useState<Meaning | null>(null);
  const [scope, setScope] = useState<Scope>('band');
  const text = wording.advance;
  const teach = (event: FormEvent) => {
    event.preventDefault();
    if (meaning === null || typed.trim() === '') return;
    change(teachChange(show, sheet.act, typed.trim(), meaning, scope));
    setTyped('');
    setMeaning(null);
  };
  const choose = (value: string) => {
    const [of, kind] = JSON.parse(value) as [MeaningOf, string];
    setMeaning({ of, kind });
  };
  return (
    <form className="teach-word" onSubmit={teach}>
      <p className="quiet">{text.ownWordsSay}</p>
      <label htmlFor={`${id}word`}>{text.ownWordsHead.words}</label>
      <label htmlFor={`${id}means`}>{text.ownWordsHead.kind}</label>
      <label htmlFor={`${id}band`}>{text.ownWordsHead.band}</label>
      <input
        id={`${id}word`}
        data-first-focus
        maxLength={200}
        placeholder={text.ownWordsPlace}
        value={typed}
        onChange={({ target }) => setTyped(target.value)}
      />
      <select
        id={`${id}means`}
        value={meaning ? JSON.stringify([meaning.of, meaning.kind]) : ''}
        onChange={({ target }) => choose(target.value)}
      >
        <option value="" disabled>
          {text.ownWordsChoose}
        </option>
        {meanings.map(({ of, kinds }) => (
          <optgroup key={of} label={text.meaningOf[of]}>
            {kinds.map((kind) => (
              <option key={kind} value={JSON.stringify([of, kind])}>
                {kind}
              </option>
            ))}
          </optgroup>
        ))}
      </select>
      <select
        id={`${id}band`}
        value={scope}
        onChange={({ target }) => setScope(target.value === 'all' ? 'all' : 'band')}
      >
        <option value="band">{text.rememberScope.band(sheet.act.name)}</option>
        <option value="all">{text.rememberScope.all}</option>
      </select>
      <button type="submit" className="main" disabled={meaning === null || typed.trim() === ''}>
        {text.teach}
      </button>
    </form>
  );
}
