import { z } from 'zod';
import { archivedKinds } from '../archive/archived-act.ts';
import { Id } from '../show/rig.ts';

/** An act that was played, as a list shows it. An act is archived once, by its id. */
export const ArchivedAct = z.strictObject({
  actId: Id,
  actName: z.string(),
  dayName: z.string(),
  /** YYYY-MM-DD, or empty where the day had no date. */
  date: z.string(),
  rigName: z.string(),
  /** The machine that archived it. */
  device: z.string(),
  /** ISO 8601: when its plan, and when its run, was taken into the archive. */
  plannedAt: z.string(),
  ranAt: z.string(),
});
export type ArchivedAct = z.infer<typeof ArchivedAct>;

/** A name in the archive, and the act it was found in. */
export const FoundInArchive = z.strictObject({
  kind: z.enum(archivedKinds),
  name: z.string(),
  act: ArchivedAct,
});
export type FoundInArchive = z.infer<typeof FoundInArchive>;
