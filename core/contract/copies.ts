import { z } from 'zod';
import { Id } from '../show/rig.ts';
import { tableNames } from '../show/show.ts';

/** Why a copy was made: on the schedule, by the engineer, before a restore or an import, before a new file format. */
export const CopyReason = z.enum(['by itself', 'by hand', 'before a step', 'before an upgrade']);
export type CopyReason = z.infer<typeof CopyReason>;

/** Where a copy lies: beside the show, in the folder that the engineer chose, or where a full disk drove it. */
const CopyPlace = z.enum(['beside the show', 'second folder', 'rescued']);
export type CopyPlace = z.infer<typeof CopyPlace>;

/** Names a copy by what `copies.list` told; it is looked up there and never becomes a path. */
export const CopyKey = z.strictObject({ place: CopyPlace, name: z.string().min(1).max(200) });
export type CopyKey = z.infer<typeof CopyKey>;

export const CopyInList = z.strictObject({
  ...CopyKey.shape,
  reason: CopyReason,
  /** ISO 8601. */
  madeAt: z.string(),
  byteCount: z.number().int().min(0),
  /** The machine that made it, as it stands in the name of the file; null in copies of before that was written. */
  machine: z.string().nullable(),
  /** Whether this machine made it. */
  isOwn: z.boolean(),
});
export type CopyInList = z.infer<typeof CopyInList>;

/** A stick, disk or network share of this machine on which copies may also be kept. */
const Drive = z.strictObject({ id: z.string().min(1).max(64), name: z.string(), where: z.string() });

export const CopyList = z.strictObject({
  /** The newest first, of all places. */
  copies: z.array(CopyInList),
  /** The second folder as it is written on this machine, or null where none was chosen. */
  secondFolder: z.string().nullable(),
  /** The second folder was named when the program was started, and no choice in a window changes it. */
  isNamed: z.boolean(),
  /** Why the last copy could not be made in one of the places, as a sentence; null where all is well. */
  trouble: z.string().nullable(),
});
export type CopyList = z.infer<typeof CopyList>;

/** The list, and by what a second folder can be chosen. */
export const CopyPlaces = z.strictObject({
  ...CopyList.shape,
  drives: z.array(Drive),
  /** Whether the system has a dialog to choose a folder in. */
  hasDialog: z.boolean(),
});
export type CopyPlaces = z.infer<typeof CopyPlaces>;

/**
 * How the second folder is chosen: in the dialog of the system, or a drive by its id, which is looked up among the
 * drives that are there. A page has no way to name a path.
 */
export const FolderChoice = z.discriminatedUnion('how', [
  z.strictObject({ how: z.literal('dialog') }),
  z.strictObject({ how: z.literal('drive'), driveId: z.string().min(1).max(64) }),
  z.strictObject({ how: z.literal('none') }),
]);

/** How one row differs, see core/show/difference.ts. */
const RowDifferenceOut = z.strictObject({
  table: z.enum(tableNames as [string, ...string[]]),
  id: Id,
  kind: z.enum(['added', 'removed', 'changed']),
  what: z.string(),
  fields: z.array(z.strictObject({ field: z.string(), before: z.string(), after: z.string() })),
});

/** Differences for a window: at most `mostDifferences` of them, and how many there are. */
export const Differences = z.strictObject({
  rows: z.array(RowDifferenceOut),
  count: z.number().int().min(0),
});
export type Differences = z.infer<typeof Differences>;
export const mostDifferences = 500;

/** What a copy holds, and what restoring it would do to the present show. */
export const CopyPreview = z.strictObject({
  copy: CopyInList,
  days: z.array(z.string()),
  acts: z.array(z.string()),
  sourceCount: z.number().int().min(0),
  mixCount: z.number().int().min(0),
  differences: Differences,
});
export type CopyPreview = z.infer<typeof CopyPreview>;

/** What a file of a show or an act holds, and what bringing it in would do to the present show. */
export const ExchangeLook = z.strictObject({
  holds: z.enum(['show', 'act']),
  days: z.array(z.string()),
  acts: z.array(z.string()),
  sourceCount: z.number().int().min(0),
  mixCount: z.number().int().min(0),
  /** Names of acts that are in this show too: beside, they would be there twice. */
  alreadyThere: z.array(z.string()),
  /** Rows that would come in beside, and rows left out because what they belong to is not here; null: no day for it. */
  beside: z.strictObject({ rowCount: z.number().int().min(0), leftOut: z.number().int().min(0) }).nullable(),
  /** What would differ if the file took the place of the show; null for an act, which never does. */
  replace: z.strictObject({ differences: Differences }).nullable(),
});
export type ExchangeLook = z.infer<typeof ExchangeLook>;

/** What a named state is of. */
export const StateOf = z.strictObject({ table: z.enum(['acts', 'days']), id: Id });

export const KeptState = z.strictObject({
  id: Id,
  name: z.string(),
  keptAt: z.string(),
  device: z.string(),
  /** The write after which it was kept; -1: kept in another file, so who wrote what since is not known. */
  revision: z.number().int(),
});
export type KeptState = z.infer<typeof KeptState>;

/** A durable write that touched what differs: when, on which machine, what. */
export const WritingOut = z.strictObject({
  madeAt: z.string(),
  device: z.string(),
  did: z.enum(['done', 'undone', 'done again']),
  label: z.string(),
});
