import { z } from 'zod';
import { Grid } from '../rider/grid.ts';
import { calendarDay, Id, shortText } from './rig.ts';

/** A rider as it came, kept whole. What it means is read again from it and the answers, never stored. */
export const RiderRecord = z.strictObject({
  id: Id,
  actId: Id,
  order: z.number().int().min(0).default(0),
  fileName: shortText,
  /** ISO 8601 time of the import. */
  receivedAt: z.string().max(40),
  /** The day the rider says it was written, and the last day it says it holds, as YYYY-MM-DD; empty: not said. */
  writtenOn: calendarDay.default(''),
  validUntil: calendarDay.default(''),
  grid: Grid,
  /** A later version took its place: it is kept to be looked at, and asks nothing more. */
  replaced: z.boolean().default(false),
});
export type RiderRecord = z.infer<typeof RiderRecord>;

/** An engineer's answer to a question of a rider's reading. */
export const Answer = z.strictObject({
  id: Id,
  riderId: Id,
  questionKey: z.string().min(1).max(400),
  value: z.string().max(2000),
});
export type Answer = z.infer<typeof Answer>;
