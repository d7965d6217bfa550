import { useId } from 'react';
import { CheckedField } from './checked-field.tsx';

/** A text under its label. `onCommit` answers the sentence that says why not, or null where the text was taken. */
export type LabelledText = { label: string; value: string; onCommit: (text: string) => string | null };

/** A checked field with its label before it, in a box of a class. */
export function LabelledField({ className, label, value, onCommit }: LabelledText & { className: string }) {
  const id = useId();
  return (
    <div className={className}>
      <label htmlFor={id}>{label}</label>
      <CheckedField id={id} value={value} onCommit={onCommit} />
    </div>
  );
}
