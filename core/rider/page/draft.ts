import type { LineRef } from '../grid.ts';
import type { Details } from '../inputs/details.ts';
import type { LineOutcome } from '../reading.ts';
import type { Stem } from '../words/sources.ts';
import type { Line } from './lines.ts';

/** A cell under a heading that names a mix or a source, and the place of its column among the others. */
export type MatrixCell = {
  column: number;
  heading: string;
  text: string;
  /** Numbers of lines that the heading gives besides its words. */
  numbers?: number[];
};

/** A line of an input list as it was found, before anything is known of its neighbours. */
export type FoundInput = {
  at: LineRef;
  part: number;
  /** Which table or list it stands in: numbers count up within one. */
  list: number;
  /** Numbers written for it; empty where there is none. */
  numbers: number[];
  name: string;
  /** Words of other columns that tell more of the name: "in", "L", the group. */
  detail: string;
  group: string;
  /** The stem of the heading it stands under, or null. */
  headingStem: Stem | null;
  performerText: string;
  details: Details;
  matrix: MatrixCell[];
  /** The name was taken from the line above, or the line is no sure input. */
  doubt: string;
};

/** A mix as it was found: the words for who listens, through what, and what they wish. */
export type FoundMix = {
  at: LineRef;
  part: number;
  number: number | null;
  label: string;
  listenerText: string;
  deviceText: string;
  place: string;
  wishTexts: string[];
  exclusionTexts: string[];
  /** Columns of a table of mixes headed by a source, with the amount in the cell. */
  matrix: MatrixCell[];
  /** The other words of the line. */
  notes: string[];
  /** Found in prose: it adds to a mix, or makes one where the performer has none. */
  loose: boolean;
  /** A row or a column of a table: lines below it do not go on with it. */
  inTable?: boolean;
  /** Lines below that go on with it. */
  extra?: LineRef[];
};

/** A mix of which nothing is told but what is given. */
export function foundMix(at: LineRef, told: Partial<FoundMix>): FoundMix {
  return {
    at,
    part: 0,
    number: null,
    label: '',
    listenerText: '',
    deviceText: '',
    place: '',
    wishTexts: [],
    exclusionTexts: [],
    matrix: [],
    notes: [],
    loose: false,
    ...told,
  };
}

type FoundPerformer = { at: LineRef; name: string; role: string; place: string };

/** A sentence on what everybody listens through, but for those that it names. */
type FoundDevices = {
  at: LineRef;
  text: string;
  except: string[];
  /** It is a title: it holds for the mixes below, up to the next such title. */
  isTitle?: boolean;
  /** It holds for devices of its kind and says not who has them. */
  isOfKind?: boolean;
};

type LineNote = { outcome: LineOutcome; why: string };

/** Everything found on the way over the lines of a rider. */
export type Found = {
  actName: string | null;
  inputs: FoundInput[];
  mixes: FoundMix[];
  performers: FoundPerformer[];
  devices: FoundDevices[];
  /** What each line was taken for; lines of one place share a note, the least certain one wins. */
  notes: Map<string, LineNote>;
  /** Lines that nothing was made of and that speak of sources or mixes: each becomes a question. */
  puzzles: { at: LineRef; text: string; why: string }[];
  /** Sentences that may tell of sources, for a rider without a list of inputs. */
  told: { line: Line; text: string }[];
};

export const placeOf = (at: LineRef): string => `${at.sheet}:${at.row}`;

const rank: Record<LineOutcome, number> = { 'set aside': 0, understood: 1, guessed: 2, question: 3 };

/** Notes what a line was taken for; of several notes the one with most doubt stays. */
export function note(found: Found, at: LineRef, outcome: LineOutcome, why: string): void {
  const before = found.notes.get(placeOf(at));
  if (!before || rank[outcome] > rank[before.outcome]) found.notes.set(placeOf(at), { outcome, why });
}

/** No stage has more; a longer list is no rider, and its lines are set aside with that reason. */
export const mostInputs = 2000;
export const mostMixes = 500;
export const mostPerformers = 500;

/** True where a list is full: the line is set aside, and the first such line is asked about. */
export function isFull(found: Found, at: LineRef, list: readonly unknown[], most: number): boolean {
  if (list.length < most) return false;
  const why = `Beyond the first ${most} of its kind: no stage has more.`;
  if (!found.puzzles.some((puzzle) => puzzle.why === why))
    found.puzzles.push({ at, text: `More than ${most} lines of one kind`, why });
  note(found, at, 'set aside', why);
  return true;
}
