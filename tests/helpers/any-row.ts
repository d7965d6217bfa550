import fc from 'fast-check';
import { z } from 'zod';
import { rowSchemas, type TableName } from '../../core/show/show.ts';

type JsonSchema = z.core.JSONSchema.BaseSchema;

/**
 * Any row of a table, made from its schema and accepted by it: a field that is added to the vocabulary is covered
 * at once. Texts are short but hold any character. References hold any text: the test that uses them says what.
 */
export function anyRow(table: TableName): fc.Arbitrary<Record<string, unknown>> {
  const schema = rowSchemas[table];
  return anyOf(z.toJSONSchema(schema))
    .map((row) => JSON.parse(JSON.stringify(row)) as Record<string, unknown>)
    .filter((row) => schema.safeParse(row).success);
}

function anyOf(schema: JsonSchema): fc.Arbitrary<unknown> {
  const choices = schema.anyOf ?? schema.oneOf;
  if (choices) return fc.oneof(...choices.map((it) => anyOf(it as JsonSchema)));
  if (schema.const !== undefined) return fc.constant(schema.const);
  if (schema.enum) return fc.constantFrom(...schema.enum);
  const makers: Record<string, () => fc.Arbitrary<unknown>> = {
    null: () => fc.constant(null),
    boolean: () => fc.boolean(),
    integer: () => fc.integer({ min: schema.minimum ?? 0, max: schema.maximum ?? 1000 }),
    number: () => anyNumber(schema),
    string: () => anyText(schema),
    array: () => fc.array(anyOf(schema.items as JsonSchema), { maxLength: 3 }),
    object: () => anyObject(schema),
  };
  const types = [schema.type ?? 'object'].flat();
  return fc.oneof(...types.map((type) => (makers[type] ?? unknownType(type))()));
}

function anyNumber(schema: JsonSchema): fc.Arbitrary<number> {
  const above = typeof schema.exclusiveMinimum === 'number' ? schema.exclusiveMinimum : null;
  return fc.double({
    min: above ?? schema.minimum ?? -1000,
    max: schema.maximum ?? 1000,
    minExcluded: above !== null,
    noNaN: true,
  });
}

function anyText(schema: JsonSchema): fc.Arbitrary<string> {
  if (schema.pattern) return fc.stringMatching(new RegExp(schema.pattern));
  return fc.string({ unit: 'binary', minLength: schema.minLength ?? 0, maxLength: 8 });
}

function anyObject(schema: JsonSchema): fc.Arbitrary<Record<string, unknown>> {
  const fields = Object.entries(schema.properties ?? {}).map(([name, field]) => [
    name,
    anyOf(field as JsonSchema),
  ]);
  return fc.record(Object.fromEntries(fields));
}

function unknownType(type: string): () => never {
  return () => {
    throw new Error(`No maker of values of type ${type}`);
  };
}
