import type { LatencyStage } from '../acoustics/latency.ts';
import type { LatencyGuidance } from '../acoustics/latency-tolerance.ts';
import type { Plan } from '../plan/plan.ts';
import type { Id } from '../show/rig.ts';
import type { AlternateKind, Amount, Format, GainOwner, Purpose, Severity, Tap } from '../show/words.ts';

/** The step of the rule that settled a feed; see `feeds.ts`. */
export type FeedStep =
  | 'no wish'
  | 'chosen by the engineer'
  | 'copy for this kind of device'
  | 'monitor copy'
  | 'foh channel'
  | 'not through this desk'
  /** The mix is mixed elsewhere: the house desk sends nothing. */
  | 'mixed elsewhere';

/** What a mix takes of a source. There is one for every mix and source of an act, also where nothing flows. */
export type Feed = {
  mixId: Id;
  sourceId: Id;
  /** null: no feed. */
  purpose: Purpose | null;
  channel: number | null;
  /** Start level of the send in dB, never above 0; null: off. */
  levelDb: number | null;
  tap: Tap;
  step: FeedStep;
  /** The step as a sentence for the screen. */
  why: string;
  /** The amount asked for, where a wish led here. */
  amount: Amount | null;
  /** The wish that held, or null. */
  wishId: Id | null;
  /** True where the engineer decided the copy, the level or the tap of this feed. */
  decided: boolean;
};

/** Where the engineer hears a mix. */
export type Cue = {
  mixId: Id;
  cueOutputId: Id | null;
  /** How it is heard: stereo only where mix and cue output both are. */
  format: Format;
  /** Level of the cue against the mix so that both are equally loud, in dB; null where the rig lacks a figure. */
  offsetDb: number | null;
  /** Delay that lines a cue wedge up with the stage, in milliseconds; null for in-ears or an unknown distance. */
  delayMs: number | null;
  decided: boolean;
  why: string;
};

/** What a finding is about, so that a screen can mark it and lead there. */
export type Subject =
  | {
      of: 'act' | 'source' | 'mix' | 'performer' | 'device' | 'socket' | 'bus' | 'output' | 'cueOutput';
      id: Id;
    }
  | { of: 'feed'; mixId: Id; sourceId: Id }
  | { of: 'channel'; channel: number };

/** Something wrong or doubtful in a plan. Codes, severities and texts are in the table of `findings`. */
export type Finding = {
  code: string;
  severity: Severity;
  /** What is wrong and why, one sentence with the names filled in. */
  cause: string;
  /** What to do, one sentence. */
  remedy: string;
  subjects: Subject[];
};

/** The expected level of one mix at its start, relative to one source at unity. */
export type MixLevel = {
  mixId: Id;
  /** Incoherent sum of all its feeds, in dB; null for an empty mix. */
  sumDb: number | null;
  /** What the whole mix is lowered by at the start to keep the rig's headroom: 0 or negative. */
  loweredByDb: number;
};

/** The trim of one copy after its source's gain moved. */
export type CopyTrim = {
  purpose: Purpose;
  /** As decided, in dB. */
  trimDb: number;
  /** What keeps the copy as loud as it was, in dB. */
  neededDb: number;
  /** That, within the desk's range. */
  setDb: number;
  /** What the range could not give: above 0 the copy ends up too quiet, below 0 too loud. */
  shortDb: number;
};

/** The one preamp of a source, which all its copies share. */
export type SourceGain = {
  sourceId: Id;
  /** null: nobody is named. */
  owner: GainOwner | null;
  /** Level expected at the socket, in dBu; null: not known. */
  inputDbu: number | null;
  /** Gain that brings it to the rig's target, in dB; null: not known. An estimate from data sheets. */
  neededDb: number | null;
  /** As it stands; null: not set yet. */
  gainDb: number | null;
  /** How far it moved since the trims were set, in dB. */
  movedDb: number;
  /** One for each copy that has a channel. */
  trims: CopyTrim[];
};

/** What a source is fed from at this moment. */
export type SourceInput = {
  sourceId: Id;
  from: 'own line' | AlternateKind;
  alternateId: Id | null;
  /** Where it is plugged; null: nowhere, or not through a socket. */
  socketId: Id | null;
  why: string;
};

/** How a mix is talked to. */
export type TalkToMix = {
  mixId: Id;
  /** Whether the engineer's talk microphone reaches it while it is being checked. */
  engineerReaches: boolean;
  why: string;
  /** Talk microphones of the act that are in the mix. */
  talkSourceIds: Id[];
};

/** A line that a band's own desk needs a split of, and for which of its mixes. */
export type OwedSplit = { sourceId: Id; mixIds: Id[] };

/** How late a performer hears their own source, from microphone to ear. */
export type OwnLatency = {
  performerId: Id;
  sourceId: Id;
  mixId: Id;
  /** The stages that are known and take time, in order. */
  stages: LatencyStage[];
  /** Their sum, in milliseconds. */
  latencyMs: number;
  /** Where it lies in published ratings; null where nothing like this source was tested. Never a limit. */
  rated: LatencyGuidance['rated'];
  /** What to show beside the figure, the caution last. */
  sentences: string[];
};

/** Everything that follows from one act's decisions. Never stored. */
export type Derived = {
  plan: Plan;
  /** One row for each source in sheet order, one feed for each mix in sheet order. */
  feeds: Feed[][];
  /** One row of `feeds`: who shows a few sources need not have the rest told. Empty for a place outside the sheet. */
  feedsOfSource: (sourceAt: number) => Feed[];
  /** Second copies that the engineer put into a mix; each is a finding too. */
  secondFeeds: Feed[];
  levels: MixLevel[];
  cues: Cue[];
  /** One for each source, in sheet order. */
  inputs: SourceInput[];
  gains: SourceGain[];
  /** One for each mix, in sheet order. */
  talk: TalkToMix[];
  splits: OwedSplit[];
  /** Empty where the latency of the desk is not known. */
  ownLatencies: OwnLatency[];
  /** The most serious first. */
  findings: Finding[];
};
