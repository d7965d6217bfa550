import { words } from '../wording/words.ts';

type Props = {
  newName: string;
  oldName: string;
  onReplace: () => void;
  onAdd: () => void;
  /** Offered only where it may become an act of its own. */
  onOwnAct: (() => void) | undefined;
  onCancel: () => void;
};

/** A rider came to an act that has one: a later version of it, or more of it? */
export function AddOrReplace({ newName, oldName, onReplace, onAdd, onOwnAct, onCancel }: Props) {
  const text = words.advance;
  return (
    <section className="add-or-replace" aria-label={text.addOrReplace}>
      <h2>{text.isItNewer(newName, oldName)}</h2>
      {/* biome-ignore lint/a11y/noAutofocus: the question stands in place of the page that had the focus. */}
      <button type="button" className="main" autoFocus onClick={onReplace}>
        {text.replaceIt}
      </button>
      <button type="button" onClick={onAdd}>
        {text.addIt}
      </button>
      {onOwnAct && (
        <button type="button" onClick={onOwnAct}>
          {text.ownAct}
        </button>
      )}
      <button type="button" className="plain" onClick={onCancel}>
        {text.notNow}
      </button>
    </section>
  );
}
