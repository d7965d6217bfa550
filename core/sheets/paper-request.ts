import { z } from 'zod';
import { Id } from '../show/rig.ts';
import { fileForms, SheetId, SheetOptions } from './sheets.ts';

export const papers = ['A4', 'Letter', 'A3'] as const;
export const Paper = z.enum(papers);
export type Paper = z.infer<typeof Paper>;

/** One sheet of one act or day. */
export const PaperJob = z.strictObject({ sheet: SheetId, ofId: Id });
export type PaperJob = z.infer<typeof PaperJob>;

/**
 * The key under which a sheet's prints are remembered. It is not beside the makers of sheets, because the service needs
 * it and would load the derivation and the rider reader with them at every start.
 */
export function sheetKey({ sheet, ofId }: PaperJob): string {
  return `${sheet}:${ofId}`;
}

/** A set of sheets that somebody wants, in one form of file. */
export const PaperRequest = z.strictObject({
  jobs: z.array(PaperJob).min(1).max(2000),
  file: z.enum(fileForms),
  paper: Paper.default('A4'),
  options: SheetOptions.prefault({}),
  /** A cover with the list of all sheets of this day goes before them; null: none. PDF only. */
  coverOfDayId: Id.nullable().default(null),
});
export type PaperRequest = z.infer<typeof PaperRequest>;
