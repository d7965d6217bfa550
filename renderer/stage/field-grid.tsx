import { useId } from 'react';
import { CheckedField } from '../parts/checked-field.tsx';
import type { RowField } from './use-fields.ts';

/** Labelled fields, two beside each other. */
export function FieldGrid({ fields }: { fields: readonly RowField[] }) {
  return (
    <div className="stage-fields">
      {fields.map((field) => (
        <Field key={field.label} {...field} />
      ))}
    </div>
  );
}

function Field({ label, value, onCommit }: RowField) {
  const id = useId();
  return (
    <div className="stage-field">
      <label htmlFor={id}>{label}</label>
      <CheckedField id={id} value={value} onCommit={onCommit} />
    </div>
  );
}
