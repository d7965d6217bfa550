import { useState } from 'react';
import type { ActSheet } from '../../core/show/act-sheet.ts';
import { Modal } from '../parts/modal.tsx';
import { useHere } from '../state/here.tsx';
import { words } from '../wording/words.ts';
import { forgetChange } from './teach-changes.ts';
import { TeachWord } from './teach-word.tsx';
import './own-words.css';

/** The words that were taught, each with a way to forget it, and a line to teach another. */
export function OwnWords({ sheet }: { sheet: ActSheet }) {
  const { show, change } = useHere();
  const [isOpen, setOpen] = useState(false);
  const text = words.advance;
  const head = text.ownWordsHead;
  const taught = [...show.ownWords.values()].sort((a, b) => a.words.localeCompare(b.words));
  return (
    <>
      <button type="button" className="plain" onClick={() => setOpen(true)}>
        {text.ownWords(taught.length)}
      </button>
      {isOpen && (
        <Modal title={text.ownWordsTitle} onClose={() => setOpen(false)}>
          <div className="modal-head">
            <h2>{text.ownWordsTitle}</h2>
            <button type="button" onClick={() => setOpen(false)}>
              {words.common.close}
            </button>
          </div>
          <div className="modal-body">
            <TeachWord sheet={sheet} />
            {taught.length === 0 ? (
              <p>{text.ownWordsNone}</p>
            ) : (
              <table className="own-words">
                <thead>
                  <tr>
                    <th scope="col">{head.words}</th>
                    <th scope="col">{head.kind}</th>
                    <th scope="col">{head.band}</th>
                    <th scope="col">{text.forget}</th>
                  </tr>
                </thead>
                <tbody>
                  {taught.map((word) => (
                    <tr key={word.id}>
                      <th scope="row">{word.words}</th>
                      <td>
                        {word.kind} <span className="quiet">({text.meaningIs[word.of]})</span>
                      </td>
                      <td>
                        {word.band === '' ? text.rememberScope.all : text.rememberScope.band(word.band)}
                      </td>
                      <td>
                        <button
                          type="button"
                          aria-label={text.forgetOf(word.words)}
                          onClick={() => change(forgetChange(show, word))}
                        >
                          {text.forget}
                        </button>
                      </td>
                    </tr>
                  ))}
                </tbody>
              </table>
            )}
          </div>
        </Modal>
      )}
    </>
  );
}
