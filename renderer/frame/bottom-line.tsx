import { useHere, useSaved } from '../state/here.tsx';
import { words } from '../wording/words.ts';
import { listeningSentence } from './listening.ts';
import { UnsavedBar } from './unsaved-bar.tsx';
import './bottom-line.css';

/** The listening line, and whether everything is on the disk. */
export function BottomLine() {
  const { open, view, undo, redo, look, dismiss } = useHere();
  const { saving, standing, problem } = useSaved();
  const sentence = open && listeningSentence(open, view.mixId);
  const said = standing.unsaved && saving === 'not saved' ? words.keep.unsaved.short : words.saving[saving];
  const other = view.theme === 'night' ? 'day' : 'night';
  return (
    <footer className="bottom-line" data-region="bottom">
      {problem && (
        <div className="bottom-line-problem" role="alert">
          <strong>{problem.what}</strong> {problem.todo}
          {problem.id !== undefined && <span className="quiet"> ({problem.id})</span>}
          <button type="button" aria-label={words.saving.dismiss} onClick={dismiss}>
            {words.common.close}
          </button>
        </div>
      )}
      {standing.unsaved && <UnsavedBar {...standing.unsaved} />}
      <section className="bottom-line-listening" aria-label={words.frame.listening} aria-live="polite">
        {sentence ?? <span className="quiet">{words.listening.nobody}</span>}
      </section>
      <section className="bottom-line-status" aria-label={words.frame.status}>
        <output className={`saving saving-${saving.replaceAll(' ', '-')}`}>{said}</output>
        <button
          type="button"
          className="plain"
          disabled={standing.undo === null}
          title={words.saving.undo(standing.undo)}
          onClick={undo}
        >
          {words.saving.undoShort}
        </button>
        <button
          type="button"
          className="plain"
          disabled={standing.redo === null}
          title={words.saving.redo(standing.redo)}
          onClick={redo}
        >
          {words.saving.redoShort}
        </button>
        <button
          type="button"
          className="plain"
          title={words.keep.openTitle}
          onClick={() => look({ open: 'keep' })}
        >
          {words.keep.open}
        </button>
        <button type="button" className="plain" onClick={() => look({ theme: other })}>
          {other === 'day' ? words.frame.toDay : words.frame.toNight}
        </button>
        <button type="button" className="plain" onClick={() => look({ open: 'keys' })}>
          <kbd>?</kbd> {words.frame.keys}
        </button>
      </section>
    </footer>
  );
}
