import { useRef, useState } from 'react';
import { cellWidth, rowHeight } from './use-window-of-cells.ts';

type Props = {
  start: string;
  top: number;
  left: number;
  label: string;
  /** Takes the text; answers the sentence that says why not, or null where it was taken. */
  onCommit: (text: string) => string | null;
  onLeave: () => void;
};

/** The text box over a cell while something is typed into it. */
export function CellEditor({ start, top, left, label, onCommit, onLeave }: Props) {
  const [text, setText] = useState(start);
  const [why, setWhy] = useState<string | null>(null);
  // Losing the focus also commits, but not what Enter or Escape have settled.
  const settled = useRef(false);
  const commit = () => {
    if (settled.current) return;
    settled.current = true;
    const refused = onCommit(text);
    settled.current = refused === null;
    setWhy(refused);
  };
  return (
    <div className="cell-editor" style={{ top, left }}>
      <input
        // biome-ignore lint/a11y/noAutofocus: it opens because a key was pressed for it.
        autoFocus
        aria-label={label}
        aria-invalid={why !== null}
        value={text}
        style={{ width: cellWidth, height: rowHeight }}
        onChange={(event) => {
          setText(event.target.value);
          setWhy(null);
        }}
        onKeyDown={(event) => {
          if (event.key === 'Enter' || event.key === 'Tab') commit();
          else if (event.key === 'Escape') {
            settled.current = true;
            onLeave();
          } else return;
          event.preventDefault();
          event.stopPropagation();
        }}
        onBlur={commit}
      />
      {why !== null && (
        <p role="alert" className="cell-editor-why">
          {why}
        </p>
      )}
    </div>
  );
}
