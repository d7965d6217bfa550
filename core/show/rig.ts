import { z } from 'zod';
import { DeviceKind, Format, GainOwner, LimiterPlace, OutputPlace } from './words.ts';

/** Ids are opaque; whoever creates a row brings one, for core has no randomness. */
export const Id = z.string().min(1).max(100);
export type Id = z.infer<typeof Id>;

export const shortText = z.string().max(200);
export const longText = z.string().max(20_000);
/** YYYY-MM-DD, or empty where it is not known. */
export const calendarDay = z.string().regex(/^(\d{4}-\d{2}-\d{2})?$/);
export const orderNumber = z.number().int().min(0).max(100_000);
/** Metres on the stage plot: x grows to stage left (house right), y grows upstage from the front edge. */
export const metres = z.number().min(-500).max(500);

/** Of figures that go into acoustics: above 0, and not so near it that a logarithm overflows. */
export const smallestFigure = 1e-9;

/** The house desk and the rules of level that every act on it shares. */
export const Rig = z.strictObject({
  id: Id,
  name: shortText.min(1),
  deskName: shortText.default('House desk'),
  channelCount: z.number().int().min(0).max(1024),
  /** Level in dBFS that a line check aims at for every channel. */
  targetLevelDbfs: z.number().min(-60).max(0).default(-18),
  /** Room in dB that the expected sum of a mix must leave below full scale. */
  headroomDb: z.number().min(0).max(60).default(9),
  trimMinDb: z.number().min(-60).max(0).default(-18),
  trimMaxDb: z.number().min(0).max(60).default(18),
  gainMinDb: z.number().min(-30).max(100).default(0),
  gainMaxDb: z.number().min(-30).max(100).default(60),
  /** Input level in dBu that reads 0 dBFS at 0 dB gain; 18 is the alignment of EBU R68. */
  fullScaleDbu: z.number().min(-20).max(40).default(18),
  /** Who sets the shared gains where a source does not say it; null: nobody has been named. */
  gainOwner: GainOwner.nullable().default(null),
  /** From socket to output through the desk, in milliseconds; null: not known. */
  deskLatencyMs: z.number().min(0).max(500).nullable().default(null),
  /** The engineer's talk microphone goes to the mix that is being checked. */
  talkToCheckedMix: z.boolean().default(true),
  /** Start levels of the words of a wish; nothing may start above unity. */
  lotsDb: z.number().min(-60).max(0).default(0),
  someDb: z.number().min(-60).max(0).default(-6),
  littleDb: z.number().min(-60).max(0).default(-12),
  /** Stage and air, for delays and distances. */
  stageWidthM: z.number().positive().max(200).default(12),
  stageDepthM: z.number().positive().max(200).default(8),
  /** Where the engineer listens to the cue, on the plot; null: nobody has said. */
  cueXM: metres.nullable().default(null),
  cueYM: metres.nullable().default(null),
  airTemperatureC: z.number().min(-40).max(60).default(20),
  /** Sockets in reach of the lead vocal that no playing act may fill, so that a spare can go in at any time. */
  spareVocalLines: z.number().int().min(0).max(8).default(1),
  /** The day plan lays channels out in the usual order of a channel list wherever that costs no move. */
  channelsInUsualOrder: z.boolean().default(true),
});
export type Rig = z.infer<typeof Rig>;

export const Box = z.strictObject({
  id: Id,
  rigId: Id,
  order: orderNumber.default(0),
  /** Name as written on the box, for example "A". Sockets are called by it: A1, A2 ... */
  name: shortText.min(1),
  xM: metres.nullable().default(null),
  yM: metres.nullable().default(null),
  /** How far a cable of the house reaches from this box, in metres. */
  reachM: z.number().positive().max(200).nullable().default(null),
  /** Sockets that share one phantom switch; 1 is a switch for each socket. */
  phantomBankSize: z.number().int().min(1).max(64).default(1),
});
export type Box = z.infer<typeof Box>;

export const Socket = z.strictObject({
  id: Id,
  boxId: Id,
  number: z.number().int().min(1).max(1024),
  /** Why nothing may be patched here (reserved, broken), or null. */
  reservedFor: shortText.nullable().default(null),
});
export type Socket = z.infer<typeof Socket>;

/** A mono mix bus. A stereo mix takes two with adjacent numbers, the odd one first. */
export const Bus = z.strictObject({
  id: Id,
  rigId: Id,
  number: z.number().int().min(1).max(512),
  reservedFor: shortText.nullable().default(null),
});
export type Bus = z.infer<typeof Bus>;

export const Output = z.strictObject({
  id: Id,
  rigId: Id,
  boxId: Id.nullable().default(null),
  place: OutputPlace,
  number: z.number().int().min(1).max(1024),
  name: shortText.min(1),
  xM: metres.nullable().default(null),
  yM: metres.nullable().default(null),
  reservedFor: shortText.nullable().default(null),
});
export type Output = z.infer<typeof Output>;

/** Something a performer, or the engineer's cue, listens through. One row is one physical device. */
export const Device = z.strictObject({
  id: Id,
  rigId: Id,
  order: orderNumber.default(0),
  name: shortText.min(1),
  kind: DeviceKind,
  format: Format,
  model: shortText.default(''),
  /** Wedge or fill: dB SPL at 1 W and 1 m. In-ears: dB SPL at the ear with the pack at its reference setting. */
  sensitivityDbSpl: z.number().min(40).max(160).nullable().default(null),
  /** Power that drives it at the reference setting, in watts; null for in-ears. */
  powerW: z.number().min(smallestFigure).max(100_000).nullable().default(null),
  /** From the device to the ear, in metres; null for in-ears. */
  listeningDistanceM: z.number().min(smallestFigure).max(200).nullable().default(null),
  frequencyMhz: z.number().positive().max(100_000).nullable().default(null),
  /** Its own delay in milliseconds, as of a digital wireless link; null: not known. */
  latencyMs: z.number().min(0).max(500).nullable().default(null),
  /** In-ears: where the limiter sits; null: nobody has looked. */
  limiter: LimiterPlace.nullable().default(null),
  /** The output it is wired to, so that it keeps it from act to act; a stereo device has a second one. */
  outputId: Id.nullable().default(null),
  secondOutputId: Id.nullable().default(null),
  /** A device of the engineer, never handed to a performer. */
  forCue: z.boolean().default(false),
  reservedFor: shortText.nullable().default(null),
});
export type Device = z.infer<typeof Device>;

/** Where the engineer listens. `kind` wedge is the cue wedge, in-ear the cue pack. */
export const CueOutput = z.strictObject({
  id: Id,
  rigId: Id,
  name: shortText.min(1),
  kind: z.enum(['wedge', 'in-ear']),
  format: Format,
  outputId: Id.nullable().default(null),
  /** The second output of a stereo cue. */
  secondOutputId: Id.nullable().default(null),
  /** The bus the cue takes, where the desk has no cue bus of its own. */
  busId: Id.nullable().default(null),
  deviceId: Id.nullable().default(null),
  /** Before the processing of the mix bus the engineer does not hear what the performer gets. */
  takenFrom: z.enum(['after bus processing', 'before bus processing']).default('after bus processing'),
  /**
   * From the stage's middle to the engineer as measured, in metres; gives the delay that aligns a cue wedge. null:
   * not measured, so the rig's place of the cue gives it.
   */
  distanceFromStageM: z.number().min(0).max(200).nullable().default(null),
});
export type CueOutput = z.infer<typeof CueOutput>;

/** What the house has a number of, and what it takes to give one out and have it ready again. */
const stockKinds = ['in-ear pack', 'wedge', 'fill', 'mic', 'di', 'stand'] as const;
export const StockItem = z.strictObject({
  id: Id,
  rigId: Id,
  order: orderNumber.default(0),
  kind: z.enum(stockKinds),
  /** The words by which sources ask for it (their pick-up or stand); empty: any of its kind. */
  name: shortText.default(''),
  count: z.number().int().min(0).max(10_000),
  /** Minutes before the set in which it is handed out or put up. */
  handOutMinutes: z.number().min(0).max(600).default(5),
  /** Minutes after the set until it is back and checked. */
  returnMinutes: z.number().min(0).max(600).default(5),
  /** Minutes it then needs for batteries or charging, wiping and labelling. */
  chargeMinutes: z.number().min(0).max(600).default(0),
});
export type StockItem = z.infer<typeof StockItem>;
