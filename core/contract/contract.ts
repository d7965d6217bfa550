import { z } from 'zod';
import { DaySoFar, FoundDay } from '../plan/day/found-day.ts';
import { Grid } from '../rider/grid.ts';
import { PaperRequest } from '../sheets/paper-request.ts';
import { Change } from '../show/change.ts';
import { Id } from '../show/rig.ts';
import { ShowDocument } from '../show/show.ts';
import { Problem } from './problem.ts';

/** What the undo and redo keys would do next, in words, or null; and the number of the last durable change. */
export const Standing = z.strictObject({
  revision: z.number().int().min(0),
  undo: z.string().nullable(),
  redo: z.string().nullable(),
});
export type Standing = z.infer<typeof Standing>;

/** A durable change and where the show stands after it. */
export const Changed = z.strictObject({ change: Change, standing: Standing });
export type Changed = z.infer<typeof Changed>;

/** At most this many bytes of a rider cross the boundary; a rider is far smaller. */
export const largestRiderBytes = 24 * 1024 * 1024;

/**
 * The calls that cross from the page to the shell: one schema in, one out. Both hosts answer exactly these, and
 * both sides check both ways. Whoever adds a call adds its line here and its function in `electron/service`.
 */
export const contract = {
  /** The whole show, for a window that opens. */
  'show.open': {
    in: z.strictObject({}),
    out: z.strictObject({
      show: ShowDocument,
      standing: Standing,
      file: z.string(),
      host: z.enum(['electron', 'browser']),
    }),
  },
  /** Writes one change durably; answers when it is on the disk. */
  'show.change': { in: z.strictObject({ change: Change }), out: z.strictObject({ standing: Standing }) },
  'show.undo': { in: z.strictObject({}), out: Changed },
  'show.redo': { in: z.strictObject({}), out: Changed },
  /** Turns the bytes of a rider into a grid of text. Changes nothing. */
  'rider.grid': {
    in: z.strictObject({
      fileName: z.string().min(1).max(400),
      base64: z.base64().max(Math.ceil(largestRiderBytes / 3) * 4),
    }),
    out: z.strictObject({ grid: Grid }),
  },
  /**
   * Makes sheets as files; the page knows from `core/sheets` which there are. A PDF is the true preview and what is
   * printed. `keep`: these files go out, so the next version is compared with them; false for a look.
   */
  'paper.make': {
    in: z.strictObject({ request: PaperRequest, keep: z.boolean() }),
    out: z.strictObject({
      files: z.array(z.strictObject({ name: z.string(), base64: z.base64() })),
      pageCount: z.number().int().min(0),
      /** Version of each sheet; `isNew` where it says other things than the last print. */
      versions: z.array(z.strictObject({ key: z.string(), number: z.number().int(), isNew: z.boolean() })),
      /** Sheets asked for of what is no longer in the show. */
      missing: z.number().int().min(0),
    }),
  },
  /** Stops what `paper.make` is making for this window, if anything: that call then answers `stopped`. */
  'paper.stop': { in: z.strictObject({}), out: z.strictObject({}) },
  /**
   * Plans a day of the saved show: sockets, channels, buses and outputs with the least work in the changeovers.
   * Changes nothing. There is one planner: a second call, from whatever window, ends the first one.
   */
  'day.plan': {
    in: z.strictObject({
      dayId: Id,
      /** Units by which a new plan must be cheaper than the one there is; null: the one there is counts nothing. */
      keepUnlessGain: z.number().min(0).max(1e6).nullable(),
      /** The longest that each proof may take. */
      timeLimitSeconds: z.number().min(1).max(3600),
    }),
    out: z.strictObject({
      found: FoundDay,
      /** It was ended before everything was proven or tried; `found` is the best until then. */
      stopped: z.boolean(),
    }),
  },
  /** Ends `day.plan`, whoever called it: that call then answers with the best so far. */
  'day.stop': { in: z.strictObject({}), out: z.strictObject({}) },
} as const;

export type CallName = keyof typeof contract;
export type CallInput<C extends CallName> = z.input<(typeof contract)[C]['in']>;
export type CallOutput<C extends CallName> = z.output<(typeof contract)[C]['out']>;

/** What the shell tells every window and stage page without being asked. */
export const Push = z.discriminatedUnion('push', [
  z.strictObject({ push: z.literal('changed'), changed: Changed }),
  /** How far this window's `paper.make` is: a share from 0 to 1, and what is being made. */
  z.strictObject({ push: z.literal('paper progress'), share: z.number().min(0).max(1), what: z.string() }),
  /** How far this window's `day.plan` is; only plans that keep every rule are told. */
  z.strictObject({ push: z.literal('day progress'), soFar: DaySoFar }),
]);
export type Push = z.infer<typeof Push>;

/** The frames on the wire, the same on both transports. */
export const Request = z.strictObject({
  id: z.number().int().min(0),
  call: z.string().max(60),
  input: z.unknown(),
});
export type Request = z.infer<typeof Request>;

export const Reply = z.union([
  z.strictObject({ id: z.number().int().min(0), ok: z.literal(true), value: z.unknown() }),
  z.strictObject({ id: z.number().int().min(0), ok: z.literal(false), problem: Problem }),
]);
export type Reply = z.infer<typeof Reply>;
