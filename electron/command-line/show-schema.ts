import { z } from 'zod';
import { ActDocument } from '../../core/show/exchange.ts';
import { ShowDocument } from '../../core/show/show.ts';

/** The JSON Schema of a show as it may be written: whatever has a default can be left out. */
export const showSchemaText = (): string => textOf('A Foldbook show', ShowDocument);

/** The same of a single act, as it is sent to a colleague. */
export const actSchemaText = (): string => textOf('An act of a Foldbook show', ActDocument);

function textOf(title: string, schema: z.ZodType): string {
  return `${JSON.stringify({ title, ...z.toJSONSchema(schema, { io: 'input' }) }, null, 1)}\n`;
}
