import { z } from 'zod';
import { calendarDay, Id, longText, metres, orderNumber, shortText, smallestFigure } from './rig.ts';
import { SourceGroup, SourceKind } from './source-kinds.ts';
import {
  ActState,
  AlternateKind,
  Amount,
  Audience,
  DeviceKind,
  Format,
  GainOwner,
  MicPattern,
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
  date: calendarDay.default(''),
  /** People on stage who can plug, carry and hand out during a changeover; the desk is not one of them. */
  crewSize: z.number().int().min(0).max(50).default(3),
  /** Minutes of a changeover where the times of the acts do not say it. */
  changeoverMinutes: z.number().min(0).max(240).default(20),
  /**
   * Units of work (see core/plan/day/costs.ts) by which a new plan of the day must be cheaper than the one that is
   * patched or printed; null: plan afresh.
   */
  keepUnlessGain: z.number().min(0).max(1_000_000).nullable().default(null),
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
  /** Who brings the splitter for a desk of the band's own; null: nobody has been named. */
  splitBy: z.enum(['band', 'house']).nullable().default(null),
  /** Which side of the splitter gives 48 V: one side only, ever. null: not settled. */
  splitPhantomBy: z.enum(['band', 'house']).nullable().default(null),
  /** A guest engineer brings a file for the house desk. */
  ownDeskFile: z.boolean().default(false),
  /** The outputs of that file were mapped to the house's wedges and packs, and looked at. */
  deskFileMapped: z.boolean().default(false),
  notes: longText.default(''),
});
export type Act = z.infer<typeof Act>;

export const Performer = z.strictObject({
  id: Id,
  actId: Id,
  order: orderNumber.default(0),
  name: shortText.min(1),
  role: shortText.default(''),
  /** Plays to a click and is lost without it. */
  needsClick: z.boolean().default(false),
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
  /** What may stand in for the model, as the band names it; several with semicolons between. */
  pickUpInstead: shortText.default(''),
  phantom: PhantomNeed.default('not said'),
  /** Microphone: output for 1 Pa (94 dB SPL), in mV. */
  sensitivityMvPerPa: z.number().min(smallestFigure).max(1000).nullable().default(null),
  /** Microphone: level expected at it, in dB SPL. */
  expectedDbSpl: z.number().min(0).max(180).nullable().default(null),
  /** DI, line or wireless receiver: level expected at the socket, in dBu. */
  expectedDbu: z.number().min(-100).max(40).nullable().default(null),
  /** Delay before the socket in milliseconds, as of a digital wireless link; null: none known. */
  pickUpLatencyMs: z.number().min(0).max(500).nullable().default(null),
  frequencyMhz: z.number().positive().max(100_000).nullable().default(null),
  pattern: MicPattern.nullable().default(null),
  /** Where its front points, seen from above: 0 is upstage, 90 is stage left. */
  aimDeg: z.number().min(-360).max(360).nullable().default(null),
  /** How far its front is raised above level. */
  tiltDeg: z.number().min(-90).max(90).nullable().default(null),
  heightM: z.number().min(0).max(30).nullable().default(null),
  /** Preamp gain as it stands, in dB; null: not set yet. */
  gainDb: z.number().min(-60).max(100).nullable().default(null),
  /** Preamp gain at which the copies' trims were set, in dB; null: the gain has not moved since. */
  trimmedAtGainDb: z.number().min(-60).max(100).nullable().default(null),
  /** null: the rig's owner. */
  gainOwner: GainOwner.nullable().default(null),
  /** Not a line from the stage: this mix, or this cue output, comes back to the desk as a source. */
  returnsMixId: Id.nullable().default(null),
  returnsCueOutputId: Id.nullable().default(null),
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
  /** Where the front of its wedge or fill points, seen from above: 0 is upstage, 90 is stage left. */
  aimDeg: z.number().min(-360).max(360).nullable().default(null),
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
  /** Whether the desk sends this channel to the main mix; null: as its purpose says (FOH yes, monitors no). */
  inMainMix: z.boolean().nullable().default(null),
});
export type Copy = z.infer<typeof Copy>;

/** A second feed of a source. While `inUse`, every copy of the source is fed from it. */
export const Alternate = z.strictObject({
  id: Id,
  sourceId: Id,
  order: orderNumber.default(0),
  kind: AlternateKind,
  name: shortText.default(''),
  /** The socket of a spare line; null for what does not come through a socket. */
  socketId: Id.nullable().default(null),
  inUse: z.boolean().default(false),
});
export type Alternate = z.infer<typeof Alternate>;

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
  /** What feeds an effect of the house: a copy of `sourceId` goes to the effect that `returnSourceId` returns. */
  z.strictObject({
    ...decisionBase,
    about: z.literal('effect send'),
    sourceId: Id,
    returnSourceId: Id,
    purpose: Purpose,
  }),
]);
export type Decision = z.infer<typeof Decision>;
