import { useTypedText } from '../parts/use-typed-text.ts';
import { cellWidth, rowHeight } from './use-window-of-cells.ts';

type Props = {
  start: string;
  top: number;
  left: number;
  label: string;
  onCommit: (text: string) => string | null;
  onLeave: () => void;
};

/** The text box over a cell while something is typed into it. */
export function CellEditor({ start, top, left, label, onCommit, onLeave }: Props) {
  const { text, why, type, commit, onKeyDown } = useTypedText({ start, onCommit, onLeave });
  return (
    <div className="cell-editor" style={{ top, left }}>
      <input
        // biome-ignore lint/a11y/noAutofocus: it opens because a key was pressed for it.
        autoFocus
        aria-label={label}
        aria-invalid={why !== null}
        value={text}
        style={{ width: cellWidth, height: rowHeight }}
        onChange={(event) => type(event.target.value)}
        onKeyDown={onKeyDown}
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
