import type { KeyboardEvent } from 'react';
import { useTypedText } from '../parts/use-typed-text.ts';
import { cellWidth, rowHeight } from './use-window-of-cells.ts';

export type Step = { rows: number; columns: number };

/** Where the cursor goes with the key that ends the typing, as in a spreadsheet. */
const steps: Record<string, Step> = {
  Enter: { rows: 1, columns: 0 },
  Tab: { rows: 0, columns: 1 },
  'Shift+Enter': { rows: -1, columns: 0 },
  'Shift+Tab': { rows: 0, columns: -1 },
  ArrowDown: { rows: 1, columns: 0 },
  ArrowUp: { rows: -1, columns: 0 },
};

type Props = {
  start: string;
  top: number;
  left: number;
  label: string;
  onCommit: (text: string) => string | null;
  onStep: (step: Step) => void;
  onLeave: () => void;
};

/** The text box over a cell while something is typed into it. */
export function CellEditor({ start, top, left, label, onCommit, onStep, onLeave }: Props) {
  const { text, why, type, commit, onKeyDown } = useTypedText({ start, onCommit, onLeave });
  const stepOn = (event: KeyboardEvent) => {
    const step = steps[`${event.shiftKey ? 'Shift+' : ''}${event.key}`];
    if (!step) return onKeyDown(event);
    event.preventDefault();
    event.stopPropagation();
    if (commit()) onStep(step);
  };
  return (
    <div className="cell-editor" style={{ top, left }}>
      <input
        ref={focusInPlace}
        aria-label={label}
        aria-invalid={why !== null}
        value={text}
        style={{ width: cellWidth, height: rowHeight }}
        onChange={(event) => type(event.target.value)}
        onKeyDown={stepOn}
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

/** The cell is in sight already: looking for where to scroll would make the browser lay out everything at once. */
function focusInPlace(input: HTMLInputElement | null): void {
  input?.focus({ preventScroll: true });
}
