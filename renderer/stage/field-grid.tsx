import { LabelledField, type LabelledText } from '../parts/labelled-field.tsx';

/** Labelled fields, two beside each other. */
export function FieldGrid({ fields }: { fields: readonly LabelledText[] }) {
  return (
    <div className="stage-fields">
      {fields.map((field) => (
        <LabelledField key={field.label} className="stage-field" {...field} />
      ))}
    </div>
  );
}
