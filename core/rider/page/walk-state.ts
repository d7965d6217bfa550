import type { Tongue } from '../language/source-name.ts';
import type { MixLine } from '../mixes/mix-line.ts';
import type { Stem } from '../words/sources.ts';
import { type Aside, asideReasons, type Section } from '../words/titles.ts';
import type { Found, FoundMix } from './draft.ts';
import type { Block } from './headers.ts';
import type { Line } from './lines.ts';

/** Where the reader stands in a rider. */
export type Walk = {
  tongue: Tongue;
  found: Found;
  section: Section | null;
  /** Titles that stand side by side, for the tables under them. */
  sideTitles: { column: number; section: Section }[];
  blocks: Block[];
  /** Counts the lists of inputs: numbers start anew with each. */
  list: number;
  headingStem: Stem | null;
  heading: string;
  /** The last name in a source column: cells below it may be left empty for more of it. */
  lastSource: string;
  lines: readonly Line[];
  at: number;
  /** The lines from here on are quoted from an earlier mail. */
  quoted: boolean;
  /** Lines whose leading numbers follow on from one another. */
  runs: ReadonlySet<number>;
  /** The last head in a list of mixes: lines below it tell more of its mix. */
  mixHead: { mix: FoundMix; told: MixLine } | null;
};

/** True in a part of the rider that is none of a monitor plan's business. */
export function isAside(section: Section | null): section is Aside {
  return section !== null && section in asideReasons;
}
