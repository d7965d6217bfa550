import { useState } from 'react';

/**
 * A button for a step that replaces much: it asks before, and only the answer does it. The safe answer is under the
 * Enter key.
 */
export function AskFirst({
  label,
  question,
  yes,
  no,
  onYes,
}: {
  label: string;
  question: string;
  yes: string;
  no: string;
  onYes: () => void;
}) {
  const [isAsked, setIsAsked] = useState(false);
  if (!isAsked)
    return (
      <p>
        <button type="button" onClick={() => setIsAsked(true)}>
          {label}
        </button>
      </p>
    );
  return (
    <div className="keep-sure">
      <p role="alert">{question}</p>
      <p className="keep-row">
        <button
          type="button"
          onClick={() => {
            setIsAsked(false);
            onYes();
          }}
        >
          {yes}
        </button>
        {/* biome-ignore lint/a11y/noAutofocus: the safe answer is the one under the Enter key. */}
        <button type="button" className="main" autoFocus onClick={() => setIsAsked(false)}>
          {no}
        </button>
      </p>
    </div>
  );
}
