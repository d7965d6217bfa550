import type { Id } from '../show/rig.ts';
import type { Format, Purpose } from '../show/words.ts';

/** Who a part of a plan comes from: the engineer decided it, or the program proposes it. */
export type DecidedBy = 'engineer' | 'proposal';

/** One channel of a source on the desk. */
export type PlannedCopy = {
  sourceId: Id;
  purpose: Purpose;
  /** null where the desk has no channel left; that is a finding, never silence. */
  channel: number | null;
  by: DecidedBy;
  /** One sentence: why this copy is there, or why it has this channel. */
  why: string;
};

/** Where one source is plugged. */
export type PlannedPatch = {
  sourceId: Id;
  socketId: Id | null;
  by: DecidedBy;
  /** State of the 48 V switch this plan sets for the source's socket. */
  phantomOn: boolean;
  phantomBy: DecidedBy;
  why: string;
};

/** The way of one mix to its devices. Stereo mixes have two buses and two outputs, left first. */
export type PlannedMix = {
  mixId: Id;
  /** As the mix says, or as planned where it does not say. */
  format: Format;
  busIds: Id[];
  busBy: DecidedBy;
  outputIds: Id[];
  outputBy: DecidedBy;
  deviceIds: Id[];
  deviceBy: DecidedBy;
  why: string;
};

/** A source that the doubling order names, and that got no copy for monitors because the desk is full. */
export type PassedOver = { sourceId: Id; why: string };

/** Copies, channels, sockets, buses, outputs and devices of one act, complete: what was decided, and what the
 * program proposes for the rest. Each list is in the order of the sheet it was made from. */
export type Plan = {
  copies: PlannedCopy[];
  patches: PlannedPatch[];
  mixes: PlannedMix[];
  passedOver: PassedOver[];
};
