/** Asks before a step that replaces much; the safe answer is under the Enter key. */
export function AreYouSure({
  question,
  yes,
  no,
  onYes,
  onNo,
}: {
  question: string;
  yes: string;
  no: string;
  onYes: () => void;
  onNo: () => void;
}) {
  return (
    <div className="keep-sure">
      <p role="alert">{question}</p>
      <p className="keep-row">
        <button type="button" onClick={onYes}>
          {yes}
        </button>
        {/* biome-ignore lint/a11y/noAutofocus: the safe answer is the one under the Enter key. */}
        <button type="button" className="main" autoFocus onClick={onNo}>
          {no}
        </button>
      </p>
    </div>
  );
}
