import { z } from 'zod';

/**
 * A rider as a grid of text cells: what every form of file is turned into before anything is understood.
 * Rows and columns count from 0; a short row ends early; an empty cell is the empty string.
 */
export const Sheet = z.strictObject({
  name: z.string().max(200),
  rows: z.array(z.array(z.string())),
});
export type Sheet = z.infer<typeof Sheet>;

export const Grid = z.strictObject({
  /** Name of the file it came from, or what stands for one. */
  name: z.string().max(400),
  form: z.enum(['csv', 'tsv', 'xlsx', 'text', 'pdf', 'docx']),
  sheets: z.array(Sheet),
});
export type Grid = z.infer<typeof Grid>;

/** Where a line of a rider stands: sheet and row in its grid, both from 0. */
export const LineRef = z.strictObject({ sheet: z.number().int().min(0), row: z.number().int().min(0) });
export type LineRef = z.infer<typeof LineRef>;
