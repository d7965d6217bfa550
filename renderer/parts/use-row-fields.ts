import { put } from '../../core/show/change.ts';
import type { RowOf, TableName } from '../../core/show/show.ts';
import { useHere } from '../state/here.tsx';
import { words } from '../wording/words.ts';
import type { LabelledText } from './labelled-field.tsx';
import { type FieldKind, textOfValue, withField } from './row-fields.ts';

/** Makes fields of a row that check what is typed by its schema and keep it as a change. */
export function useRowFields() {
  const { change } = useHere();
  return <T extends TableName>(
    table: T,
    row: RowOf<T>,
    called: string,
    field: keyof RowOf<T> & string,
    head: string,
    kind: FieldKind = 'optional number',
  ): LabelledText => ({
    label: head,
    value: textOfValue(rounded(row[field])),
    onCommit: (text) => {
      const outcome = withField(table, row, field, kind, text);
      if ('why' in outcome) return outcome.why;
      const label = words.field.changed(head, called);
      change({ label, put: [put(table, outcome.row)], remove: [] });
      return null;
    },
  });
}

/** Sums of steps are not round in the machine: nobody wants to read that. */
const rounded = (value: unknown) => (typeof value === 'number' ? Math.round(value * 1000) / 1000 : value);
