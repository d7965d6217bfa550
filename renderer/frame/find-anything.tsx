import { type KeyboardEvent, useId, useMemo, useState } from 'react';
import type { BindingId } from '../keys/bindings.ts';
import { Modal } from '../parts/modal.tsx';
import { useHere } from '../state/here.tsx';
import { words } from '../wording/words.ts';
import { type Findable, findables, findByText } from './find-index.ts';
import '../parts/find-list.css';

const most = 40;

/** One box for everything that has a name. */
export function FindAnything({ run }: { run: (id: BindingId) => void }) {
  const { show, acts, open, look } = useHere();
  const listId = useId();
  const [text, setText] = useState('');
  const [chosen, setChosen] = useState(0);
  const openId = open?.sheet.act.id;
  const all = useMemo(() => {
    const others = acts.map((act) => act.id).filter((id) => id !== openId);
    return findables(show, openId ? [openId, ...others] : others);
  }, [show, acts, openId]);
  const found = useMemo(() => findByText(all, text, most), [all, text]);

  const take = (item: Findable | undefined) => {
    if (!item) return;
    look({ open: 'nothing' });
    if ('look' in item.leads) look(item.leads.look);
    else run(item.leads.run);
  };
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.key === 'Enter') take(found[chosen]);
    else if (event.key === 'ArrowDown') setChosen(Math.min(chosen + 1, found.length - 1));
    else if (event.key === 'ArrowUp') setChosen(Math.max(chosen - 1, 0));
    else return;
    event.preventDefault();
  };

  return (
    <Modal title={words.frame.find} onClose={() => look({ open: 'nothing' })}>
      <input
        className="find-text"
        role="combobox"
        aria-label={words.find.label}
        aria-expanded={found.length > 0}
        aria-controls={listId}
        aria-activedescendant={found[chosen] ? `${listId}-${chosen}` : undefined}
        aria-autocomplete="list"
        placeholder={words.find.placeholder}
        value={text}
        onChange={(event) => {
          setText(event.target.value);
          setChosen(0);
        }}
        onKeyDown={onKeyDown}
      />
      {found.length === 0 && (
        <p className="modal-body" role="status">
          {words.find.nothing}
        </p>
      )}
      <div id={listId} role="listbox" aria-label={words.find.results} className="find-list">
        {found.map((item, index) => (
          // biome-ignore lint/a11y/useKeyWithClickEvents: the keys of this list are those of its text box.
          // biome-ignore lint/a11y/useFocusableInteractive: the text box keeps the focus and names the chosen row.
          <div
            key={item.key}
            id={`${listId}-${index}`}
            role="option"
            aria-selected={index === chosen}
            className="find-item"
            ref={index === chosen ? scrollIntoSight : undefined}
            onClick={() => take(item)}
          >
            <span className="quiet">{words.find.kinds[item.kind]}</span>
            <strong className="cut">{item.name}</strong>
            <span className="quiet cut">{item.place}</span>
          </div>
        ))}
      </div>
    </Modal>
  );
}

function scrollIntoSight(element: HTMLElement | null): void {
  element?.scrollIntoView({ block: 'nearest' });
}
