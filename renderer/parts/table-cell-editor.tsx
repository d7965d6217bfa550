import { useId } from 'react';
import { useTypedText } from './use-typed-text.ts';

type Props = {
  label: string;
  start: string;
  options: readonly string[] | undefined;
  onCommit: (text: string) => string | null;
  onLeave: () => void;
};

/** The field inside a table cell while it is edited. With options, the beginning of one that is meant is enough. */
export function TableCellEditor({ label, start, options, onCommit, onLeave }: Props) {
  const { text, why, type, commit, onKeyDown } = useTypedText({
    start,
    onCommit: (typed) => onCommit(options ? completed(typed, options) : typed),
    onLeave,
  });
  const listId = useId();
  return (
    <span className="table-cell-editor">
      <input
        // biome-ignore lint/a11y/noAutofocus: it opens because a key was pressed for it.
        autoFocus
        aria-label={label}
        aria-invalid={why !== null}
        list={options ? listId : undefined}
        value={text}
        onFocus={(event) => {
          if (start.length > 1) event.target.select();
        }}
        onChange={(event) => type(event.target.value)}
        onKeyDown={onKeyDown}
        onBlur={commit}
      />
      {options && (
        <datalist id={listId}>
          {options.map((option) => (
            <option key={option} value={option} />
          ))}
        </datalist>
      )}
      {why !== null && (
        <span role="alert" className="table-cell-why">
          {why}
        </span>
      )}
    </span>
  );
}

/** The option that was typed, or the only one that begins so; else what was typed. */
function completed(text: string, options: readonly string[]): string {
  const typed = text.trim().toLowerCase();
  const exact = options.find((option) => option.toLowerCase() === typed);
  if (exact !== undefined || typed === '') return exact ?? text;
  const begins = options.filter((option) => option.toLowerCase().startsWith(typed));
  return begins.length === 1 && begins[0] !== undefined ? begins[0] : text;
}
