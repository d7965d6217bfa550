import type { z } from 'zod';
import {
  type Rows,
  rowSchemas,
  type ShowDocument,
  type TableName,
  tableNames,
} from '../../core/show/show.ts';
import { rowName } from '../exchange/sentence-of-issue.ts';

/** Something in a file that the program would not have written, and what to do about it. */
export type FileProblem = { what: string; todo: string };

/** A show that was edited by hand: what can be used of it, and what is wrong with the rest, each row on its own. */
export type MendedShow = { document: ShowDocument; problems: FileProblem[] };

type Fields = Record<PropertyKey, unknown>;

/**
 * Reads whatever can be read. A value that may not be there is passed over, as if nothing had been entered; where a
 * row cannot do without it, a number is held at the end of its range, and otherwise the row is left out. Each is named.
 * null: this is no document of tables at all.
 */
export function mendShow(json: unknown): MendedShow | null {
  if (!isFields(json) || json.format !== 'foldbook-show' || json.version !== 1) return null;
  const problems: FileProblem[] = [];
  const rows: Partial<Record<TableName, unknown[]>> = {};
  for (const table of tableNames) {
    const given = json[table] ?? [];
    if (Array.isArray(given)) rows[table] = mendTable(table, given, problems);
    else problems.push({ what: `${table} is no list of rows; it was passed over.`, todo: correctIt });
  }
  const known = new Set<string>(['format', 'version', ...tableNames]);
  for (const name of Object.keys(json))
    if (!known.has(name))
      problems.push({ what: `A show has no “${name}”; it was passed over.`, todo: 'Remove it.' });
  const empty = Object.fromEntries(tableNames.map((table) => [table, []]));
  const whole = { ...empty, ...rows } as unknown as Rows;
  return { document: { format: 'foldbook-show', version: 1, ...whole } as ShowDocument, problems };
}

const correctIt = 'Correct it in the file; the shape is in assets/schema/show.schema.json.';

function mendTable(table: TableName, given: readonly unknown[], problems: FileProblem[]): unknown[] {
  return given.flatMap((row, at) => {
    const mended = mendRow(rowSchemas[table], row);
    for (const { said, done } of mended.mends)
      problems.push({ what: `${rowName(table, row, at)}, ${said} ${done}`, todo: correctIt });
    return mended.row === null ? [] : [mended.row];
  });
}

type Mend = { said: string; done: string };

const passedOver = 'It was passed over, as if nothing had been entered.';
const leftOut = 'The row was left out.';

function mendRow(schema: z.ZodType, given: unknown): { row: unknown; mends: Mend[] } {
  const first = schema.safeParse(given);
  if (first.success) return { row: first.data, mends: [] };
  const said = ({ path, message }: z.core.$ZodIssue) =>
    `${path.join('.') || 'the whole row'}: ${message.replace(/\.$/, '')}.`;
  const all = (done: string) => first.error.issues.map((issue) => ({ said: said(issue), done }));
  if (!isFields(given)) return { row: null, mends: all(leftOut) };
  const without = { ...given };
  const held: Fields = {};
  for (const issue of first.error.issues) {
    const [field] = issue.path;
    if (field !== undefined) delete without[field];
    if (issue.code === 'unrecognized_keys' && field === undefined)
      for (const key of issue.keys) delete without[key];
    if (issue.code === 'too_small' && field !== undefined) held[field] = Number(issue.minimum);
    if (issue.code === 'too_big' && field !== undefined) held[field] = Number(issue.maximum);
  }
  const passed = schema.safeParse(without);
  if (passed.success) return { row: passed.data, mends: all(passedOver) };
  const atTheEnd = schema.safeParse({ ...without, ...held });
  if (atTheEnd.success) return { row: atTheEnd.data, mends: all('It was held at the end of the range.') };
  return { row: null, mends: all(leftOut) };
}

function isFields(value: unknown): value is Fields {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
