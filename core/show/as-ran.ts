import { z } from 'zod';
import { Id, longText } from './rig.ts';

/**
 * What happened to an act on its day, apart from its plan: none of these rows changes what was planned. Rows are
 * added in the order in which things happened; of two about the same, the later row holds.
 */

/** ISO 8601 time at which something happened. */
const moment = z.string().min(1).max(40);

/** When an act really played. At most one of an act. */
export const ActRun = z.strictObject({
  id: Id,
  actId: Id,
  /** null: nobody said when the set began. */
  beganAt: moment.nullable().default(null),
  /** null: it has not ended yet. */
  endedAt: moment.nullable().default(null),
});
export type ActRun = z.infer<typeof ActRun>;

/** What a line check can find of a line. `later` is no finding: nobody has listened properly yet. */
export const lineFindings = ['ok', 'silent', 'noisy', 'swapped', 'later'] as const;
export const LineFinding = z.enum(lineFindings);
export type LineFinding = z.infer<typeof LineFinding>;

/** What was heard of one source at its line check. */
export const LineResult = z.strictObject({
  id: Id,
  actId: Id,
  sourceId: Id,
  found: LineFinding,
  /** Only of `swapped`: the source that came in its place; null where it is not one of this act, or not known. */
  cameSourceId: Id.nullable().default(null),
  foundAt: moment,
});
export type LineResult = z.infer<typeof LineResult>;

/** A level of a mix as it was during the show; the planned level stays as it is. */
export const RanLevel = z.strictObject({
  id: Id,
  actId: Id,
  mixId: Id,
  sourceId: Id,
  /** What it was before, in dB; null: off. */
  fromDb: z.number().min(-120).max(20).nullable(),
  /** In dB; null: off. */
  levelDb: z.number().min(-120).max(20).nullable(),
  changedAt: moment,
});
export type RanLevel = z.infer<typeof RanLevel>;

/** A note of the engineer's, written while the act is on. */
export const RunNote = z.strictObject({
  id: Id,
  actId: Id,
  /** What it is about, where it is about one mix or one source. */
  mixId: Id.nullable().default(null),
  sourceId: Id.nullable().default(null),
  text: longText.min(1),
  notedAt: moment,
});
export type RunNote = z.infer<typeof RunNote>;
