import type { z } from 'zod';
import type { Change } from '../../core/show/change.ts';
import { put } from '../../core/show/change.ts';
import { type RowOf, rowSchemas, type TableName } from '../../core/show/show.ts';
import { words } from '../wording/words.ts';
import { parseNumber } from './format.ts';
import type { SheetColumn } from './sheet-table.tsx';

/** How the text of a field becomes its value; a text that is none of it answers undefined. */
export type FieldKind = 'text' | 'number' | 'optional number' | 'optional text';

function fieldValue(kind: FieldKind, text: string): unknown {
  const typed = text.trim();
  if (kind === 'text') return typed;
  if (typed === '' && kind !== 'number') return null;
  if (kind === 'optional text') return typed;
  return parseNumber(typed) ?? undefined;
}

export const textOfValue = (value: unknown): string =>
  value === null || value === undefined ? '' : `${value}`.replace(/^-(?=\d)/, '−');

/** One field of a row set from a text: the row, or the sentence that says why the text cannot stand there. */
export function withField<T extends TableName>(
  table: T,
  row: RowOf<T>,
  field: keyof RowOf<T> & string,
  kind: FieldKind,
  text: string,
): { row: RowOf<T> } | { why: string } {
  return withSchemaField(rowSchemas[table] as unknown as z.ZodType<RowOf<T>>, row, field, kind, text);
}

/** The fields of a type; of a union, also those that only some of its members have. */
type FieldOf<T> = (keyof T & string) | (T extends unknown ? keyof T & string : never);

/** The same for anything that a schema describes. */
export function withSchemaField<T extends object>(
  schema: z.ZodType<T>,
  row: T,
  field: FieldOf<T>,
  kind: FieldKind,
  text: string,
): { row: T } | { why: string } {
  const value = fieldValue(kind, text);
  if (value === undefined) return { why: words.field.noNumber(text) };
  const parsed = schema.safeParse({ ...row, [field]: value });
  if (parsed.success) return { row: parsed.data };
  return { why: sentenceOf(parsed.error.issues[0], text) };
}

function sentenceOf(issue: z.core.$ZodIssue | undefined, text: string): string {
  const say = words.field;
  if (issue?.code === 'too_small') {
    if (issue.origin === 'string') return say.missing;
    return issue.inclusive ? say.tooSmall(text, `${issue.minimum}`) : say.notAbove(text, `${issue.minimum}`);
  }
  if (issue?.code === 'too_big')
    return issue.origin === 'string'
      ? say.tooLong(`${issue.maximum}`)
      : say.tooLarge(text, `${issue.maximum}`);
  if (issue?.code === 'invalid_type' && issue.expected === 'int') return say.notWhole(text);
  if (issue?.code === 'invalid_value') return say.notOneOf(text, issue.values.map(String).join(', '));
  return say.refused(text);
}

type Maker<T extends TableName> = {
  table: T;
  change: (change: Change) => void;
  /** How a row is called in the list of what can be undone. */
  nameOf: (row: RowOf<T>) => string;
};

/** Makes the columns of a table of rows: what each shows and what becomes of what is typed; and adds and removes rows. */
export function columnMaker<T extends TableName>({ table, change, nameOf }: Maker<T>) {
  type Row = RowOf<T>;
  const commit = (row: Row, head: string, next: Row) =>
    change({
      label: words.field.changed(head, nameOf(row)),
      put: [put(table, next)],
      remove: [],
    });
  const add = (row: Row) =>
    change({ label: words.common.addOf(nameOf(row)), put: [put(table, row)], remove: [] });
  const remove = (row: Row) =>
    change({
      label: words.common.removeRow(nameOf(row)),
      put: [],
      remove: [{ table, id: row.id }],
    });
  return {
    add,
    remove,
    field(
      field: keyof Row & string,
      head: string,
      width: number,
      kind: FieldKind = 'text',
      check?: (next: Row) => string | null,
    ): SheetColumn<Row> {
      return {
        key: field,
        head,
        width,
        numeric: kind === 'number' || kind === 'optional number',
        text: (row) => textOfValue(row[field]),
        set: (row, text) => {
          const outcome = withField(table, row, field, kind, text);
          if ('why' in outcome) return outcome.why;
          const why = check?.(outcome.row) ?? null;
          if (why === null) commit(row, head, outcome.row);
          return why;
        },
      };
    },
    /** A field that holds one of some values, each with a name; the empty text is null where that is allowed. */
    choice(
      field: keyof Row & string,
      head: string,
      width: number,
      options: (row: Row) => readonly { value: unknown; label: string }[],
    ): SheetColumn<Row> {
      const labelOf = (row: Row) => options(row).find((it) => it.value === row[field])?.label ?? '';
      return {
        key: field,
        head,
        width,
        text: labelOf,
        options: (row) => options(row).map((it) => it.label),
        set: (row, text) => {
          const wanted = options(row).find((it) => it.label.toLowerCase() === text.trim().toLowerCase());
          if (!wanted)
            return words.field.notOneOf(
              text,
              options(row)
                .map((it) => it.label || words.field.empty)
                .join(', '),
            );
          commit(row, head, { ...row, [field]: wanted.value } as Row);
          return null;
        },
      };
    },
  };
}
