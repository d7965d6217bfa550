import { z } from 'zod';
import { type RowOf, rowSchemas, type TableName, tableNames } from '../../core/show/show.ts';

/**
 * How a row of the show lies in a table: one column for each field, by the same name. A union of rows (decisions)
 * is flattened: a column that is not of the row's variant is NULL. What there is follows from the zod shapes; the
 * tables themselves are made by the migrations, and a test holds the two equal.
 */
export type ColumnKind = 'text' | 'integer' | 'real' | 'boolean' | 'json';
export type Column = { name: string; kind: ColumnKind };
export type ColumnValue = string | number | null;

type Shape = Readonly<Record<string, z.core.$ZodType>>;

const kindOfJsonType: Record<string, ColumnKind> = {
  string: 'text',
  integer: 'integer',
  number: 'real',
  boolean: 'boolean',
  array: 'json',
  object: 'json',
};

export const columnsOf = Object.fromEntries(
  tableNames.map((table) => [table, columnsOfShapes(shapesOf(table))]),
) as unknown as { readonly [T in TableName]: readonly Column[] };

/** The values of a row in the order of its table's columns. */
export function valuesFromRow<T extends TableName>(table: T, row: RowOf<T>): ColumnValue[] {
  const fields: Readonly<Record<string, unknown>> = row;
  return columnsOf[table].map(({ name, kind }) => valueFromField(kind, fields[name]));
}

/** A row from its columns, parsed. Throws a `ZodError` where the stored values are no row of the table. */
export function rowFromValues<T extends TableName>(
  table: T,
  values: Readonly<Record<string, unknown>>,
): RowOf<T> {
  const shape = shapesOf(table).find((it) => isShapeOf(it, values));
  const fields = columnsOf[table]
    .filter(({ name }) => !shape || name in shape)
    .map(({ name, kind }) => [name, fieldFromValue(kind, values[name])]);
  return rowSchemas[table].parse(Object.fromEntries(fields)) as RowOf<T>;
}

function shapesOf(table: TableName): Shape[] {
  const schema = rowSchemas[table];
  return schema instanceof z.ZodDiscriminatedUnion
    ? schema.options.map((option) => option.shape)
    : [schema.shape];
}

/** Whether the literals of a variant (its `about`) are those of the values. */
function isShapeOf(shape: Shape, values: Readonly<Record<string, unknown>>): boolean {
  return Object.entries(shape).every(
    ([name, field]) =>
      !(field instanceof z.ZodLiteral) || field.values.has(values[name] as z.core.util.Literal),
  );
}

function columnsOfShapes(shapes: readonly Shape[]): Column[] {
  const columns = new Map<string, Column>();
  for (const shape of shapes)
    for (const [name, field] of Object.entries(shape)) columns.set(name, { name, kind: kindOf(name, field) });
  return [...columns.values()];
}

function kindOf(name: string, field: z.core.$ZodType): ColumnKind {
  const types = jsonTypesOf(z.toJSONSchema(field));
  const [type, ...others] = [...types];
  const kind = type && kindOfJsonType[type];
  if (!kind || others.length > 0)
    throw new Error(`No kind of column holds ${name}: ${[...types].join(', ')}`);
  return kind;
}

/** The JSON types that a schema allows, without null: a column is nullable or not by its migration. */
function jsonTypesOf(schema: z.core.JSONSchema.BaseSchema): Set<string> {
  const choices = schema.anyOf ?? schema.oneOf;
  const types = choices
    ? choices.flatMap((it) => (typeof it === 'boolean' ? [] : [...jsonTypesOf(it)]))
    : [schema.type ?? 'object'].flat();
  return new Set(types.filter((it) => it !== 'null'));
}

function valueFromField(kind: ColumnKind, field: unknown): ColumnValue {
  if (field === null || field === undefined) return null;
  if (kind === 'json') return JSON.stringify(field);
  if (kind === 'boolean') return field ? 1 : 0;
  return field as string | number;
}

function fieldFromValue(kind: ColumnKind, value: unknown): unknown {
  if (value === null) return null;
  if (kind === 'json') return JSON.parse(String(value));
  if (kind === 'boolean') return value === 1;
  return value;
}
