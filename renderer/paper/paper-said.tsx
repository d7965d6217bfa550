import { words } from '../wording/words.ts';
import type { MadePaper } from './use-paper-calls.ts';
import type { Sheets } from './use-sheets.ts';

/** What is going on with the sheets: how far they are, which version they are, what went wrong. */
export function PaperSaid({ sheets }: { sheets: Sheets }) {
  const { making, drawing, problem, shown, note, stop, again } = sheets;
  const text = words.paper;
  if (making || drawing)
    return (
      <div className="paper-said">
        <progress
          aria-label={text.making}
          max={1}
          value={drawing ? drawing.done / drawing.of : making?.share}
        />
        <span className="paper-doing">
          {drawing ? text.drawing(drawing.done, drawing.of) : making?.what || text.preparing}
        </span>
        <button type="button" onClick={stop}>
          {text.stop} <kbd>Esc</kbd>
        </button>
      </div>
    );
  return (
    <div className="paper-said" role="status">
      {problem ? (
        <>
          <p className="paper-trouble">
            <strong>{problem.what}</strong> {problem.todo}
          </p>
          <button type="button" onClick={again}>
            {text.again}
          </button>
        </>
      ) : (
        <>
          {shown && <span>{[text.pages(shown.pageCount), versionText(shown.versions)].join(' · ')}</span>}
          {shown && shown.missing > 0 && <span>{text.missing(shown.missing)}</span>}
          {note && <span className="quiet">{note}</span>}
        </>
      )}
    </div>
  );
}

function versionText(versions: MadePaper['versions']): string {
  const [first] = versions;
  if (first && versions.length === 1) return words.paper.version(first.number, first.isNew);
  return words.paper.versions(versions.filter(({ isNew }) => isNew).length, versions.length);
}
