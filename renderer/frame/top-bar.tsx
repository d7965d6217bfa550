import { useHere } from '../state/here.tsx';
import { type Moment, moments } from '../state/view-store.ts';
import { words } from '../wording/words.ts';
import './top-bar.css';

const keyOf = (moment: Moment) => `Alt+${moments.indexOf(moment) + 1}`;

export function TopBar() {
  const { open, view, look } = useHere();
  return (
    <header className="top-bar" data-region="top">
      <h1 className="cut">{open?.sheet.act.name ?? words.frame.noAct}</h1>
      <nav aria-label={words.frame.moments}>
        {moments.map((moment) => (
          <button
            key={moment}
            type="button"
            className="top-bar-moment"
            aria-current={moment === view.moment ? 'page' : undefined}
            aria-keyshortcuts={keyOf(moment)}
            title={keyOf(moment)}
            onClick={() => look({ moment })}
          >
            {words.moments[moment]}
          </button>
        ))}
      </nav>
      <button type="button" className="top-bar-find" onClick={() => look({ open: 'find' })}>
        {words.frame.find} <kbd>Ctrl K</kbd>
      </button>
    </header>
  );
}
