import { type FormEvent, useEffect, useRef, useState } from 'react';
import { whoHears } from '../parts/names.ts';
import type { ActOnScreen } from '../state/derive-cache.ts';
import { useHere } from '../state/here.tsx';
import { words } from '../wording/words.ts';
import { keepNote, type NoteAbout } from './run-changes.ts';
import './note-field.css';

type Props = {
  open: ActOnScreen;
  /** A source is being listened to, so the note is about that unless somebody says otherwise. */
  ofSource: boolean;
  onClose: () => void;
};

/** What was being written when the field was closed, by act: nothing that was typed is lost. */
const drafts = new Map<string, string>();

/** One line to write down what happened; it is kept with its time, and with whom or what it is about. */
export function NoteField({ open, ofSource, onClose }: Props) {
  const { view, change } = useHere();
  const text = words.show;
  const { act } = open.sheet;
  const mix = open.sheet.mixes.find(({ id }) => id === view.mixId);
  const source = open.sheet.sources.find(({ id }) => id === view.sourceId);
  const choices: { key: string; name: string; about: NoteAbout }[] = [
    { key: 'act', name: act.name, about: { mixId: null, sourceId: null } },
    ...(mix && !ofSource
      ? [
          {
            key: 'mix',
            name: text.mixOf(whoHears(open.sheet, mix)),
            about: { mixId: mix.id, sourceId: null },
          },
        ]
      : []),
    ...(source ? [{ key: 'source', name: source.name, about: { mixId: null, sourceId: source.id } }] : []),
  ];
  const [wanted, setWanted] = useState<string | null>(null);
  const [note, setNote] = useState(drafts.get(act.id) ?? '');
  const chosen = choices.find(({ key }) => key === wanted) ?? choices.at(ofSource ? -1 : 0);
  const field = useRef<HTMLInputElement>(null);
  useEffect(() => {
    const before = document.activeElement;
    field.current?.focus();
    return () => {
      if (before instanceof HTMLElement && before.isConnected) before.focus();
    };
  }, []);
  const type = (typed: string) => {
    drafts.set(act.id, typed);
    setNote(typed);
  };
  const keep = (event: FormEvent) => {
    event.preventDefault();
    const written = note.trim();
    if (written !== '' && chosen) change(keepNote(open.sheet, chosen.about, written, new Date()));
    drafts.delete(act.id);
    onClose();
  };
  return (
    <form
      className="note-field"
      onSubmit={keep}
      onKeyDown={(event) => {
        if (event.key !== 'Escape') return;
        event.preventDefault();
        onClose();
      }}
    >
      <input
        ref={field}
        aria-label={text.noteLabel}
        placeholder={text.noteLabel}
        maxLength={2000}
        value={note}
        onChange={(event) => type(event.target.value)}
      />
      <fieldset>
        <legend>{text.noteAbout}</legend>
        {choices.map(({ key, name }) => (
          <label key={key}>
            <input
              type="radio"
              name="note-about"
              checked={key === chosen?.key}
              onChange={() => setWanted(key)}
            />
            {name}
          </label>
        ))}
      </fieldset>
      <button type="submit" className="main">
        {text.noteSave} <kbd>↵</kbd>
      </button>
      <button type="button" onClick={onClose}>
        {text.noteClose} <kbd>Esc</kbd>
      </button>
    </form>
  );
}
