import { type KeyboardEvent, type ReactNode, type RefObject, useId, useState } from 'react';
import './find-list.css';

type Props<T> = {
  /** What is typed here, as it is read out; `placeholder` shows it. */
  label: string;
  placeholder: string;
  /** What the list is, as it is read out. */
  listLabel: string;
  text: string;
  onText: (text: string) => void;
  /** More may be found in a moment. */
  isAsking?: boolean;
  items: readonly T[];
  keyOf: (item: T) => string;
  row: (item: T) => ReactNode;
  /** Enter, or a click. */
  onTake: (item: T) => void;
  /** Stands between the field and the list. */
  children?: ReactNode;
  field?: RefObject<HTMLInputElement | null>;
};

/** A field to type in and the list of what was found, the first one chosen: arrows choose, Enter takes. */
export function FindList<T>({ text, items, keyOf, row, onTake, ...rest }: Props<T>) {
  const listId = useId();
  const [wanted, setWanted] = useState(0);
  const chosen = Math.min(wanted, items.length - 1);
  const onKeyDown = (event: KeyboardEvent) => {
    const item = items[chosen];
    if (event.key === 'Enter' && item !== undefined) onTake(item);
    else if (event.key === 'ArrowDown') setWanted(Math.min(chosen + 1, items.length - 1));
    else if (event.key === 'ArrowUp') setWanted(Math.max(chosen - 1, 0));
    else return;
    event.preventDefault();
  };
  return (
    <>
      <input
        ref={rest.field}
        className="find-text"
        data-first-focus
        role="combobox"
        aria-label={rest.label}
        aria-expanded={items.length > 0}
        aria-controls={listId}
        aria-activedescendant={items[chosen] === undefined ? undefined : `${listId}-${chosen}`}
        aria-autocomplete="list"
        placeholder={rest.placeholder}
        maxLength={200}
        value={text}
        onChange={(event) => {
          rest.onText(event.target.value);
          setWanted(0);
        }}
        onKeyDown={onKeyDown}
      />
      {rest.children}
      <div
        id={listId}
        role="listbox"
        aria-label={rest.listLabel}
        aria-busy={rest.isAsking}
        className="find-list"
      >
        {items.map((item, place) => (
          // biome-ignore lint/a11y/useKeyWithClickEvents: the keys of this list are those of its text box.
          // biome-ignore lint/a11y/useFocusableInteractive: the text box keeps the focus and names the chosen row.
          <div
            key={keyOf(item)}
            id={`${listId}-${place}`}
            role="option"
            aria-selected={place === chosen}
            className="find-item"
            ref={place === chosen ? scrollIntoSight : undefined}
            onClick={() => {
              setWanted(place);
              onTake(item);
            }}
          >
            {row(item)}
          </div>
        ))}
      </div>
    </>
  );
}

function scrollIntoSight(element: HTMLElement | null): void {
  element?.scrollIntoView({ block: 'nearest' });
}
