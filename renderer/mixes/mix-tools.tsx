import { useHere } from '../state/here.tsx';
import { words } from '../wording/words.ts';
import type { MixTable } from './mix-table.ts';
import './mix-tools.css';

type Props = { all: MixTable; shown: MixTable; findingCount: number; onTable: () => void };

/**
 * What of the table is looked at: a filter, the sources of the chosen mix alone, and what was hidden; and the way to
 * the panel beside it where that is closed.
 */
export function MixTools({ all, shown, findingCount, onTable }: Props) {
  const { view, look } = useHere();
  const text = words.mixes;
  const chosen = all.columns.find(({ mix }) => mix.id === view.mixId);
  const isAll = shown.rows.length === all.rows.length && shown.columns.length === all.columns.length;
  return (
    <div className="mix-tools">
      <label>
        {text.filter}{' '}
        <input
          type="search"
          className="mix-filter"
          value={view.filter}
          placeholder={text.filterHint}
          onChange={({ target }) => look({ filter: target.value })}
          onKeyDown={(event) => {
            if (event.key === 'Escape') look({ filter: '' });
            else if (event.key !== 'Enter' && event.key !== 'ArrowDown') return;
            event.preventDefault();
            onTable();
          }}
        />
      </label>
      <label className="cut">
        <input
          type="checkbox"
          checked={view.follows}
          onChange={({ target }) => look({ follows: target.checked })}
        />{' '}
        {chosen ? text.only(chosen.who) : text.onlyChosen}
      </label>
      {view.hidden.size > 0 && (
        <button type="button" className="plain" onClick={() => look({ hidden: new Set() })}>
          {text.hiddenNow(view.hidden.size)}
        </button>
      )}
      <output className="quiet cut">
        {isAll
          ? ''
          : text.shownOf(shown.rows.length, all.rows.length, shown.columns.length, all.columns.length)}
      </output>
      {view.side === 'closed' && (
        <>
          <button type="button" className="plain" onClick={() => look({ side: 'findings' })}>
            {text.findings} {findingCount}
          </button>
          <button type="button" className="plain" onClick={() => look({ side: 'details' })}>
            {text.details}
          </button>
        </>
      )}
    </div>
  );
}
