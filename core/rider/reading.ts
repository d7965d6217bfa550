import type { SourceGroup, SourceKind } from '../show/source-kinds.ts';
import type { Amount, Audience, DeviceKind, Format, PhantomNeed, PickUp } from '../show/words.ts';
import type { LineRef } from './grid.ts';

/**
 * What a rider was taken to mean. It may be incomplete or wrong: everything doubtful is a question, and every
 * line of the rider is accounted for in `lines`.
 */
export type Reading = {
  /** The act's name where the rider says it, or null. */
  actName: string | null;
  inputs: ReadInput[];
  performers: ReadPerformer[];
  mixes: ReadMix[];
  /** What the rider asks for besides sound, in its order. */
  notes: ReadNote[];
  /** One entry for every line of the grid that is not blank, in order. */
  lines: ReadLine[];
  /** Ordered by what they block, the most urgent first. */
  questions: Question[];
};

/** How certain a reading is: 1 is written so, 0 is a blind guess. */
type Confidence = number;

export type ReadInput = {
  /** Stable within one rider and its answers: made from the place of the line, never from its number. */
  key: string;
  lines: LineRef[];
  /** The number written in the rider, or the place in the list where there are none. */
  channel: number;
  /** As written. */
  name: string;
  kind: SourceKind;
  kindConfidence: Confidence;
  /** `key` of the other side of a stereo pair. */
  pairKey: string | null;
  side: 'left' | 'right' | null;
  pickUp: PickUp | null;
  pickUpModel: string;
  /** What may stand in for the pick-up, as written; none where the rider does not say. */
  alternatives: string[];
  phantom: PhantomNeed;
  stand: string;
  position: string;
  /** Name of the performer, as in `performers`, or null. */
  performer: string | null;
  broughtBy: 'band' | 'house' | null;
  optional: boolean;
  audience: Audience;
  notes: string;
};

export type ReadPerformer = { name: string; role: string; place: string; lines: LineRef[] };

export type ReadMix = {
  key: string;
  lines: LineRef[];
  /** The number written in the rider, or the place in the list. */
  number: number;
  label: string;
  /** Names of the performers who listen, as in `performers`; empty where the rider does not say. */
  listeners: string[];
  deviceKind: DeviceKind | null;
  format: Format | null;
  deviceCount: number;
  ownDevice: boolean | null;
  mixedAt: 'house desk' | 'elsewhere';
  place: string;
  wishes: ReadWish[];
  notes: string;
};

export type ReadWish = {
  /** As written. */
  words: string;
  target:
    | { of: 'inputs'; inputKeys: string[] }
    | { of: 'group'; group: SourceGroup }
    | { of: 'everything' }
    | { of: 'mix'; mixKey: string };
  amount: Amount | null;
  levelDb: number | null;
};

/** A line for somebody else than the monitor desk, kept as it is written. */
export type ReadNote = {
  about: 'power' | 'risers' | 'stage' | 'talkback' | 'wireless';
  text: string;
  at: LineRef;
};

/** `understood`: read as written. `guessed`: read with doubt, a look is enough. `question`: open, see `questions`.
 * `set aside`: not part of a monitor plan, with the reason. */
export type LineOutcome = 'understood' | 'guessed' | 'question' | 'set aside';

export type ReadLine = {
  at: LineRef;
  /** The cells of the line joined as a person would read them. */
  text: string;
  outcome: LineOutcome;
  /** One plain sentence: what it was taken for, or why not. */
  why: string;
  inputKeys: string[];
  mixKeys: string[];
  questionKeys: string[];
};

export type Question = {
  /** Stable within one rider: the place of the line and the matter. Answers are kept under it. */
  key: string;
  at: LineRef | null;
  /** The question in one plain sentence. */
  ask: string;
  /** The words of the rider that have no sure meaning, where the question is about words: they can be taught. */
  words?: string;
  /** At least two ways to answer; the first is the guess the reading already uses. */
  options: { value: string; label: string }[];
  /** True where a text of the engineer's own is an answer too. */
  freeText: boolean;
  guessConfidence: Confidence;
  /** What stays undecided without an answer: larger is more urgent. */
  weight: number;
};

/** The engineer's answers: question key to the value of an option, or to the engineer's own text. */
export type Answers = Readonly<Record<string, string>>;
