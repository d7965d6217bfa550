import type { Plan } from '../plan/plan.ts';
import type { Id } from '../show/rig.ts';
import type { Amount, Format, Purpose, Severity, Tap } from '../show/words.ts';

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

/** Everything that follows from one act's decisions. Never stored. */
export type Derived = {
  plan: Plan;
  /** One row for each source in sheet order, one feed for each mix in sheet order. */
  feeds: Feed[][];
  /** Second copies that the engineer put into a mix; each is a finding too. */
  secondFeeds: Feed[];
  levels: MixLevel[];
  cues: Cue[];
  /** The most serious first. */
  findings: Finding[];
};
