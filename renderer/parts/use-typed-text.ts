import { type KeyboardEvent, useRef, useState } from 'react';

type Typed = {
  start: string;
  /** Takes the text; answers the sentence that says why not, or null where it was taken. */
  onCommit: (text: string) => string | null;
  onLeave: () => void;
};

/**
 * A text that is typed in place: Enter, Tab and losing the focus commit it, Escape leaves it. What Enter or Escape
 * have settled is not committed again when the field goes and loses the focus.
 */
export function useTypedText({ start, onCommit, onLeave }: Typed) {
  const [text, setText] = useState(start);
  const [why, setWhy] = useState<string | null>(null);
  const settled = useRef(false);
  /** True where the text was taken. */
  const commit = (): boolean => {
    if (settled.current) return false;
    settled.current = true;
    const refused = onCommit(text);
    settled.current = refused === null;
    setWhy(refused);
    return refused === null;
  };
  const type = (next: string) => {
    setText(next);
    setWhy(null);
  };
  const onKeyDown = (event: KeyboardEvent) => {
    event.stopPropagation();
    if (event.key === 'Enter' || event.key === 'Tab') commit();
    else if (event.key === 'Escape') {
      settled.current = true;
      onLeave();
    } else return;
    event.preventDefault();
  };
  return { text, why, type, commit, onKeyDown };
}
