import { type ReactNode, useId } from 'react';

export type Choice = { key: string; lines: ReactNode };

/** A list of which one is chosen: the browser's own radio buttons, so that the arrow keys move as everywhere. */
export function ChoiceList({
  label,
  choices,
  chosen,
  onChoose,
}: {
  label: string;
  choices: readonly Choice[];
  chosen: string | null;
  onChoose: (key: string) => void;
}) {
  const name = useId();
  return (
    <fieldset className="keep-list">
      <legend className="unseen">{label}</legend>
      {choices.map(({ key, lines }) => (
        <label key={key}>
          <input type="radio" name={name} checked={key === chosen} onChange={() => onChoose(key)} />
          <span>{lines}</span>
        </label>
      ))}
    </fieldset>
  );
}
