import { z } from 'zod';
import { Id } from './rig.ts';
import { type RowOf, rowSchemas, type TableName, tableNames } from './show.ts';

/**
 * One thing the user did, as rows to put and rows to remove. The page applies it to the show it holds, the
 * service writes it in one transaction; both by this one definition. Removing a row removes what hangs on it.
 */
export type Change = {
  /** What the user did, in words, for undo: "Rename Mix 2". */
  label: string;
  put: Put[];
  remove: { table: TableName; id: Id }[];
};

const longestLabel = 200;

/** What the user did, no longer than a change may say it: names of rows may be as long as a label. */
export const changeLabel = (text: string): string => text.slice(0, longestLabel);

export type Put = { [T in TableName]: { table: T; row: RowOf<T> } }[TableName];

const putVariants = tableNames.map((table) =>
  z.strictObject({ table: z.literal(table), row: rowSchemas[table] }),
);

export const Change = z.strictObject({
  label: z.string().min(1).max(longestLabel),
  put: z
    .array(z.discriminatedUnion('table', putVariants as unknown as [(typeof putVariants)[0]]))
    .max(100_000),
  remove: z
    .array(z.strictObject({ table: z.enum(tableNames as [TableName, ...TableName[]]), id: Id }))
    .max(100_000),
}) as unknown as z.ZodType<Change>;

/** A put of one row, typed by its table. */
export function put<T extends TableName>(table: T, row: RowOf<T>): Put {
  return { table, row } as unknown as Put;
}
