import { useHere } from '../state/here.tsx';
import { useDropped } from '../state/use-dropped.ts';
import { words } from '../wording/words.ts';
import type { Came } from './bring-many.ts';
import './what-came.css';

/** What came of several files: one line each, with a way to the act or the reason and what to do. */
export function WhatCame({
  came,
  onFiles,
  onClose,
}: {
  came: readonly Came[];
  onFiles: (files: File[]) => void;
  onClose: () => void;
}) {
  const { look } = useHere();
  useDropped(onFiles);
  const text = words.advance.many;
  const acts = came.filter((it) => 'actId' in it).length;
  return (
    <section className="what-came" aria-label={text.title}>
      <div role="status">
        <h2>{text.summary(acts, came.length - acts)}</h2>
      </div>
      <table>
        <thead>
          <tr>
            <th scope="col">{text.file}</th>
            <th scope="col">{text.became}</th>
          </tr>
        </thead>
        <tbody>
          {came.map((it, at) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: two files may have one name, and the list never moves.
            <tr key={at}>
              <th scope="row">{it.fileName}</th>
              <td>
                {'problem' in it ? (
                  <>
                    <strong>{it.problem.what}</strong> {it.problem.todo}
                  </>
                ) : (
                  <>
                    <button
                      type="button"
                      onClick={() => {
                        onClose();
                        look({ actId: it.actId, moment: 'advance' });
                      }}
                    >
                      {it.actName}
                    </button>{' '}
                    {text.holds(it.sources, it.mixes, it.questions)}
                  </>
                )}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      <p>
        {/* biome-ignore lint/a11y/noAutofocus: the summary stands in place of the page that had the focus. */}
        <button type="button" className="main" autoFocus onClick={onClose}>
          {words.common.close}
        </button>
      </p>
    </section>
  );
}
