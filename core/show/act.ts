import { z } from 'zod';
import { Id, longText, metres, orderNumber, shortText } from './rig.ts';
import { SourceGroup, SourceKind } from './source-kinds.ts';
import {
  ActState,
  Amount,
  Audience,
  DeviceKind,
  Format,
  PhantomNeed,
  PickUp,
  Purpose,
  Tap,
} from './words.ts';

export const Day = z.strictObject({
  id: Id,
  rigId: Id,
  order: orderNumber.default(0),
  name: shortText.min(1),
  /** Calendar day as YYYY-MM-DD, or empty where it is not fixed. */
  date: z
    .string()
    .regex(/^(\d{4}-\d{2}-\d{2})?$/)
    .default(''),
  /** People on stage who can plug, carry and hand out during a changeover; the desk is not one of them. */
  crewSize: z.number().int().min(0).max(50).default(3),
  /** Minutes of a changeover where the times of the acts do not say it. */
  changeoverMinutes: z.number().min(0).max(240).default(20),
});
export type Day = z.infer<typeof Day>;

/** Minutes from midnight of the day; a set past midnight goes on counting beyond 1440. */
const minuteOfDay = z.number().int().min(0).max(2880);

export const Act = z.strictObject({
  id: Id,
  dayId: Id,
  order: orderNumber,
  name: shortText.min(1),
  state: ActState.default('advancing'),
  startMinute: minuteOfDay.nullable().default(null),
  endMinute: minuteOfDay.nullable().default(null),
  soundCheckStartMinute: minuteOfDay.nullable().default(null),
  soundCheckEndMinute: minuteOfDay.nullable().default(null),
  /** Its risers are miked and patched while the act before plays: none of their lines may wait for the changeover. */
  prePatch: z.boolean().default(false),
  /** What is patched early is also line-checked early, on headphones, while the act before plays. */
  lineCheckAhead: z.boolean().default(false),
  notes: longText.default(''),
});
export type Act = z.infer<typeof Act>;

export const Performer = z.strictObject({
  id: Id,
  actId: Id,
  order: orderNumber.default(0),
  name: shortText.min(1),
  role: shortText.default(''),
  place: shortText.default(''),
  xM: metres.nullable().default(null),
  yM: metres.nullable().default(null),
});
export type Performer = z.infer<typeof Performer>;

/** One physical line of an act. Copies are channels of it and never count as lines. */
export const Source = z.strictObject({
  id: Id,
  actId: Id,
  order: orderNumber,
  /** The number the rider gives the line, or null. */
  riderLine: z.number().int().min(0).max(10_000).nullable().default(null),
  name: shortText.min(1),
  kind: SourceKind.default('other'),
  /** The other side of a pair; the row named here names this one. */
  pairSourceId: Id.nullable().default(null),
  pickUp: PickUp.nullable().default(null),
  pickUpModel: shortText.default(''),
  phantom: PhantomNeed.default('not said'),
  stand: shortText.default(''),
  /** Name of the riser it stands on and rolls with; empty: the stage floor. */
  riser: shortText.default(''),
  /** Name of a line that stays on stage over several acts, as of a shared kit; empty: this act's own line. */
  sharedLine: shortText.default(''),
  place: shortText.default(''),
  xM: metres.nullable().default(null),
  yM: metres.nullable().default(null),
  performerId: Id.nullable().default(null),
  broughtBy: z.enum(['band', 'house']).nullable().default(null),
  optional: z.boolean().default(false),
  audience: Audience.default('front of house and monitors'),
  notes: longText.default(''),
});
export type Source = z.infer<typeof Source>;

/** What one performer (or several who share a device) hears. */
export const Mix = z.strictObject({
  id: Id,
  actId: Id,
  order: orderNumber,
  name: shortText.min(1),
  /** null where nobody has said yet what they listen through. */
  deviceKind: DeviceKind.nullable().default(null),
  format: Format.nullable().default(null),
  /** How many devices carry this mix, for example a pair of wedges. */
  deviceCount: z.number().int().min(1).max(16).default(1),
  /** The band brings the device. */
  ownDevice: z.boolean().nullable().default(null),
  /** `elsewhere`: mixed on the band's own desk; the house desk's sends do not reach it. */
  mixedAt: z.enum(['house desk', 'elsewhere']).default('house desk'),
  place: shortText.default(''),
  xM: metres.nullable().default(null),
  yM: metres.nullable().default(null),
  notes: longText.default(''),
});
export type Mix = z.infer<typeof Mix>;

export const Listener = z.strictObject({ id: Id, mixId: Id, performerId: Id });
export type Listener = z.infer<typeof Listener>;

/**
 * What a mix is asked to hold. Exactly one of `sourceId`, `group` and `sameAsMixId` says of what; group
 * `everything` is every source. A wish on a source goes before one on its group, a group before everything,
 * and everything before another mix; of two equals the later one holds.
 */
export const Wish = z
  .strictObject({
    id: Id,
    mixId: Id,
    order: orderNumber.default(0),
    /** The rider's own words, or empty where the engineer set it. */
    words: shortText.default(''),
    sourceId: Id.nullable().default(null),
    group: z
      .union([SourceGroup, z.literal('everything')])
      .nullable()
      .default(null),
    sameAsMixId: Id.nullable().default(null),
    /** null where `levelDb` says it; with `sameAsMixId`, null takes the other mix as it is. */
    amount: Amount.nullable().default(null),
    levelDb: z.number().min(-120).max(20).nullable().default(null),
    /** A wish on paper is a draft until somebody has confirmed it with the performer. */
    confirmed: z.boolean().default(false),
  })
  .refine((wish) => [wish.sourceId, wish.group, wish.sameAsMixId].filter((it) => it !== null).length === 1, {
    message: 'A wish names exactly one of a source, a group or another mix.',
  })
  .refine((wish) => wish.sameAsMixId !== null || (wish.amount === null) !== (wish.levelDb === null), {
    message: 'A wish gives either an amount or a level in dB.',
  });
export type Wish = z.infer<typeof Wish>;

/** What somebody decided about one copy of a source; where there is no row, the plan's rule decides. */
export const Copy = z.strictObject({
  id: Id,
  sourceId: Id,
  purpose: Purpose,
  /** False: this copy is not to be made, whatever the rule says. */
  wanted: z.boolean().default(true),
  /** An unlocked channel was proposed by a planner and taken; a locked one is the engineer's. */
  locked: z.boolean().default(true),
  channel: z.number().int().min(1).max(1024).nullable().default(null),
  trimDb: z.number().min(-60).max(60).default(0),
  polarityInverted: z.boolean().default(false),
  /** Delay of this channel's processing in milliseconds. */
  latencyMs: z.number().min(0).max(2000).default(0),
});
export type Copy = z.infer<typeof Copy>;

const decisionBase = {
  id: Id,
  actId: Id,
  /** A locked decision is the engineer's and no planner moves it; an unlocked one was proposed and taken. */
  locked: z.boolean().default(true),
};

/** Everything else that somebody decided for an act. At most one decision for each subject and matter. */
export const Decision = z.discriminatedUnion('about', [
  z.strictObject({ ...decisionBase, about: z.literal('socket'), sourceId: Id, socketId: Id }),
  z.strictObject({ ...decisionBase, about: z.literal('phantom'), sourceId: Id, on: z.boolean() }),
  z.strictObject({ ...decisionBase, about: z.literal('bus'), mixId: Id, busId: Id }),
  z.strictObject({ ...decisionBase, about: z.literal('output'), mixId: Id, outputId: Id }),
  z.strictObject({ ...decisionBase, about: z.literal('device'), mixId: Id, deviceId: Id }),
  z.strictObject({ ...decisionBase, about: z.literal('cue'), mixId: Id, cueOutputId: Id }),
  z.strictObject({ ...decisionBase, about: z.literal('feed'), mixId: Id, sourceId: Id, purpose: Purpose }),
  /** A second copy of a source in the same mix: only ever an engineer's wish, and always a finding. */
  z.strictObject({
    ...decisionBase,
    about: z.literal('second feed'),
    mixId: Id,
    sourceId: Id,
    purpose: Purpose,
  }),
  z.strictObject({ ...decisionBase, about: z.literal('tap'), mixId: Id, sourceId: Id, tap: Tap }),
  z.strictObject({
    ...decisionBase,
    about: z.literal('level'),
    mixId: Id,
    sourceId: Id,
    levelDb: z.number().min(-120).max(20),
  }),
]);
export type Decision = z.infer<typeof Decision>;
