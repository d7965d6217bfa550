import { useRef, useState } from 'react';
import { useMomentKeys } from '../keys/use-moment-keys.ts';
import { EmptyScreen } from '../parts/empty-screen.tsx';
import { useFoundInArchive } from '../state/found-in-archive.ts';
import { useHere } from '../state/here.tsx';
import { words } from '../wording/words.ts';
import { ArchiveSearch } from './archive-search.tsx';
import { PastActView } from './past-act.tsx';
import './recall-screen.css';

const most = 60;

/** The archive of acts that were played: found by a name, read as planned beside as it ran, brought into a day. */
export function RecallScreen() {
  const { view, look } = useHere();
  const text = words.recall;
  const [asked, setAsked] = useState('');
  const [turn, setTurn] = useState(0);
  const onChanged = () => setTurn(turn + 1);
  const found = useFoundInArchive(asked, most, turn);
  const search = useRef<HTMLInputElement>(null);
  const past = useRef<HTMLElement>(null);
  useMomentKeys((key) => {
    if (key !== '/') return false;
    search.current?.focus();
    return true;
  });
  if (found?.actCount === 0 && found.removed.length === 0 && asked === '')
    return <EmptyScreen what={text.empty} todo={text.emptyTodo} />;
  return (
    <div className="recall">
      <ArchiveSearch
        field={search}
        text={asked}
        found={found}
        onChanged={onChanged}
        onText={setAsked}
        onOpen={({ act }) => {
          look({ pastActId: act.actId });
          // What opens takes the focus, so that its keys count at once.
          requestAnimationFrame(() => past.current?.focus());
        }}
      />
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a part that scrolls must be reachable by keyboard. */}
      <section ref={past} className="recall-past" aria-label={text.past} tabIndex={0}>
        {view.pastActId === null ? (
          <p className="recall-choose">{text.choose}</p>
        ) : (
          <PastActView key={`${view.pastActId} ${turn}`} actId={view.pastActId} onChanged={onChanged} />
        )}
      </section>
    </div>
  );
}
