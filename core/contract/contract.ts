import { z } from 'zod';
import { DaySoFar, FoundDay } from '../plan/day/found-day.ts';
import { Grid } from '../rider/grid.ts';
import { PaperRequest } from '../sheets/paper-request.ts';
import { Change } from '../show/change.ts';
import { Id } from '../show/rig.ts';
import { ShowDocument } from '../show/show.ts';
import { ArchivedAct, FoundInArchive } from './archive.ts';
import {
  CopyKey,
  CopyPlaces,
  CopyPreview,
  Differences,
  ExchangeLook,
  FolderChoice,
  KeptState,
  StateOf,
  WritingOut,
} from './copies.ts';
import { Problem } from './problem.ts';

/** What the undo and redo keys would do next, in words, or null; and the number of the last durable change. */
export const Standing = z.strictObject({
  revision: z.number().int().min(0),
  undo: z.string().nullable(),
  redo: z.string().nullable(),
  /** Only while the file cannot be written and the work goes on in memory: why, where it is kept, what to do. */
  unsaved: z.strictObject({ what: z.string(), todo: z.string() }).optional(),
});
export type Standing = z.infer<typeof Standing>;

/** A durable change and where the show stands after it. */
export const Changed = z.strictObject({ change: Change, standing: Standing });
export type Changed = z.infer<typeof Changed>;

/** At most this many bytes of a rider cross the boundary; a rider is far smaller. */
export const largestRiderBytes = 24 * 1024 * 1024;

/** At most this many characters of a show or an act come in; a festival of three days has a tenth of it. */
export const largestExchangeCharacters = 24 * 1024 * 1024;

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
      /** What happened when the show was opened and should be known: it was repaired, or came from a copy. */
      notice: Problem.optional(),
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
      /** The longest that all of it may take; then the best so far is the answer. */
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
  /** The back-up copies there are, in both folders. */
  'copies.list': { in: z.strictObject({}), out: CopyPlaces },
  /** Makes a copy now, in both folders. */
  'copies.make': { in: z.strictObject({}), out: CopyPlaces },
  /** What a copy holds and how the show would differ. Changes nothing. */
  'copies.preview': { in: CopyKey, out: CopyPreview },
  /** Makes the show what the copy holds, as one step that undo takes back, after a copy of the present show. */
  'copies.restore': { in: CopyKey, out: Changed },
  /** Chooses the second folder; a dialog that is closed again changes nothing. */
  'copies.choose': { in: z.strictObject({ choice: FolderChoice }), out: CopyPlaces },
  /** Keeps how an act or a day is now, under a name. */
  'states.keep': {
    in: z.strictObject({ of: StateOf, name: z.string().trim().min(1).max(120) }),
    out: z.strictObject({ state: KeptState }),
  },
  /** The states of an act or a day, the newest first. */
  'states.list': {
    in: z.strictObject({ of: StateOf }),
    out: z.strictObject({ states: z.array(KeptState) }),
  },
  /** What differs between a state and another one of the same act or day, or how it is now (null), and who wrote it. */
  'states.compare': {
    in: z.strictObject({ of: StateOf, fromId: Id, toId: Id.nullable() }),
    out: z.strictObject({ differences: Differences, writings: z.array(WritingOut) }),
  },
  /** Makes an act or a day what it was in a state, as one step that undo takes back, after a copy of the show. */
  'states.restore': {
    in: z.strictObject({ of: StateOf, stateId: Id }),
    out: z.strictObject({ changed: Changed, leftOut: z.number().int().min(0) }),
  },
  /** The whole show, or one act, as the text of a documented file (assets/schema). */
  'exchange.export': {
    in: z.strictObject({ actId: Id.nullable() }),
    out: z.strictObject({ name: z.string(), text: z.string() }),
  },
  /** What such a file holds, and what bringing it in would do; an act to this day. Changes nothing. */
  'exchange.look': {
    in: z.strictObject({ text: z.string().max(largestExchangeCharacters), dayId: Id.nullable() }),
    out: ExchangeLook,
  },
  /**
   * Brings such a file in. Nothing is overwritten unless `replace` is said, and then after a copy. `leftOut`: rows
   * that belong to what this show has not, as a socket of another house.
   */
  'exchange.import': {
    in: z.strictObject({
      text: z.string().max(largestExchangeCharacters),
      way: z.discriminatedUnion('how', [
        z.strictObject({ how: z.literal('beside'), dayId: Id.nullable() }),
        z.strictObject({ how: z.literal('replace') }),
      ]),
    }),
    out: z.strictObject({ changed: Changed, leftOut: z.number().int().min(0) }),
  },
  /**
   * What the archive of past acts has by the beginnings of words, at most so many: acts before performers before
   * sources, the newest first; then what has the letters inside. Nothing asked for: the acts that ran last. `removed`
   * are the acts that were taken out and can be put back.
   */
  'archive.find': {
    in: z.strictObject({ text: z.string().max(200), most: z.number().int().min(1).max(200) }),
    out: z.strictObject({
      found: z.array(FoundInArchive),
      actCount: z.number().int().min(0),
      removed: z.array(ArchivedAct),
    }),
  },
  /** An act of the archive as planned and as it ran, each with the rig it was on. */
  'archive.read': {
    in: z.strictObject({ actId: Id }),
    out: z.strictObject({ act: ArchivedAct, planned: ShowDocument, ran: ShowDocument }),
  },
  /** Archives an act of this show as it ran until now. By itself that happens when its run ends. */
  'archive.keep': { in: z.strictObject({ actId: Id }), out: z.strictObject({}) },
  /** Takes an act out of the archive; for a month it can be put back. No step of undo. */
  'archive.remove': { in: z.strictObject({ actId: Id }), out: z.strictObject({}) },
  'archive.putBack': { in: z.strictObject({ actId: Id }), out: z.strictObject({}) },
} as const;

export type CallName = keyof typeof contract;
export type CallInput<C extends CallName> = z.input<(typeof contract)[C]['in']>;
export type CallOutput<C extends CallName> = z.output<(typeof contract)[C]['out']>;

/** What the shell tells every window and stage page without being asked. */
export const Push = z.discriminatedUnion('push', [
  z.strictObject({ push: z.literal('changed'), changed: Changed }),
  /** The same show stands otherwise: its file cannot be written any more, or can again. */
  z.strictObject({ push: z.literal('standing'), standing: Standing }),
  /** Somebody started the program once more and looks for its window: this one. */
  z.strictObject({ push: z.literal('come forward') }),
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
