import type { Scale } from '../language/scale.ts';
import type { SourceName, Tongue } from '../language/source-name.ts';
import type { Asker } from '../questions.ts';
import type { ReadInput, ReadMix, ReadPerformer } from '../reading.ts';
import type { Found, FoundInput } from './draft.ts';

/** An input while its kind, side and player are being settled. */
export type WorkInput = {
  read: ReadInput;
  found: FoundInput;
  name: SourceName;
  /** Which of the lines of its row it is, from 0, and how many there are. */
  index: number;
  of: number;
  /** The number was written, not counted. */
  numbered: boolean;
};

/** Everything the later steps of a reading share. */
export type Work = {
  tongue: Tongue;
  found: Found;
  asker: Asker;
  inputs: WorkInput[];
  performers: ReadPerformer[];
  mixes: ReadMix[];
  /** What bare numbers mean as amounts, where the rider or the numbers themselves tell it. */
  scale: Scale | null;
};

export const shorten = (text: string): string => (text.length > 60 ? `${text.slice(0, 59)}…` : text);
