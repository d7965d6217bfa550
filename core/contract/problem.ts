import { z } from 'zod';

/** Expected trouble, as data: what, and what to do about it. `id` finds the line in the log where there is one. */
export const Problem = z.strictObject({
  code: z.enum([
    'unreadable file',
    'file too large',
    'not a show',
    'newer show',
    'show in use',
    'damaged show',
    'cannot write',
    'broken reference',
    'nothing to undo',
    'wrong request',
    'cannot plan',
    'not there',
    'no dialog',
    'was repaired',
    'stopped',
    'internal error',
  ]),
  /** A plain sentence: what went wrong, and where. */
  what: z.string(),
  /** A plain sentence: what to do. */
  todo: z.string(),
  id: z.string().optional(),
});
export type Problem = z.infer<typeof Problem>;

export type Outcome<T> = { ok: true; value: T } | { ok: false; problem: Problem };

/** A refusal with its problem. */
export function refuse(code: Problem['code'], what: string, todo: string): { ok: false; problem: Problem } {
  return { ok: false, problem: { code, what, todo } };
}
