import type { z } from 'zod';

/** What is wrong in a file of tables, and where: "sources, row 3 (vocal), gainDb: Too big ...". */
export function sentenceOfIssue({ path, message }: z.core.$ZodIssue, json: unknown): string {
  const [table, at, ...field] = path;
  if (table === undefined) return message;
  if (typeof at !== 'number') return `${path.join('.')}: ${message}`;
  const rows = (json as Record<PropertyKey, unknown>)[table];
  const row: unknown = Array.isArray(rows) ? rows[at] : undefined;
  return [rowName(String(table), row, at), field.join('.')]
    .filter((part) => part !== '')
    .join(', ')
    .concat(`: ${message}`);
}

/** "sources, row 3 (vocal)": people count from 1, `at` counts from 0. */
export function rowName(table: string, row: unknown, at: number): string {
  const id =
    typeof row === 'object' && row !== null && 'id' in row ? ` (${String(row.id).slice(0, 60)})` : '';
  return `${table}, row ${at + 1}${id}`;
}
