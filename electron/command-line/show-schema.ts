import { z } from 'zod';
import { ShowDocument } from '../../core/show/show.ts';

/** The JSON Schema of a show as it may be written: whatever has a default can be left out. */
export function showSchemaText(): string {
  const schema = z.toJSONSchema(ShowDocument, { io: 'input' });
  return `${JSON.stringify({ title: 'A Foldbook show', ...schema }, null, 1)}\n`;
}
