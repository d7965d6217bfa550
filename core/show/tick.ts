import { z } from 'zod';
import { Id } from './rig.ts';

/** Something of the changeover to an act that was done, or that has begun. Untick: the row goes. */
export const Tick = z.strictObject({
  id: Id,
  /** The act that comes on. */
  actId: Id,
  /** Which task: the key that `keyOfTask` in core/changeover gives it, or `changeoverBegan`. */
  taskKey: z.string().min(1).max(2000),
  /** ISO 8601 time of the tick. */
  doneAt: z.string().max(40),
});
export type Tick = z.infer<typeof Tick>;

/** The tick with which the clock of a changeover starts to run. */
export const changeoverBegan = 'changeover began';
