import { useId, useState } from 'react';
import { words } from '../wording/words.ts';
import './bring-in.css';

const accepted = '.csv,.tsv,.txt,.xlsx,.pdf,.docx';

type Props = {
  title: string;
  isReading: boolean;
  /** One file or more, in the order they were given. */
  onFiles: (files: File[]) => void;
  onText: (text: string) => void;
  onStop: () => void;
};

/** Three ways for a rider to come in: a file chosen, a file dropped, a text pasted. */
export function BringIn({ title, isReading, onFiles, onText, onStop }: Props) {
  const [text, setText] = useState('');
  const fileId = useId();
  const textId = useId();
  const say = words.advance;
  return (
    <section className="bring-in" aria-label={title}>
      <h2>{title}</h2>
      {isReading ? (
        <p role="status" className="bring-in-reading">
          {say.reading} <progress aria-label={say.reading} />{' '}
          <button type="button" onClick={onStop}>
            {say.stop}
          </button>
        </p>
      ) : (
        <>
          <p>
            <label htmlFor={fileId} className="bring-in-file">
              {say.chooseFile}
            </label>
            <input
              id={fileId}
              type="file"
              accept={accepted}
              multiple
              data-first-focus
              onChange={(event) => {
                onFiles([...(event.target.files ?? [])]);
                event.target.value = '';
              }}
            />
          </p>
          <p className="quiet">{say.drop}</p>
          <label htmlFor={textId}>{say.paste}</label>
          <textarea
            id={textId}
            rows={6}
            value={text}
            placeholder={say.pasteHint}
            onChange={(event) => setText(event.target.value)}
          />
          <button type="button" className="main" disabled={text.trim() === ''} onClick={() => onText(text)}>
            {say.readText}
          </button>
        </>
      )}
    </section>
  );
}
