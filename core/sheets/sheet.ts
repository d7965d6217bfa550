import type { Drawing } from './drawing.ts';
import type { LabelForm } from './label-form.ts';

/**
 * A sheet of paper as data: what stands on it, in which order, and how wide a column may be. How it is set in
 * type, cut into pages or written into a workbook is the business of `electron/paper`.
 */
export type Sheet = {
  /** Names the sheet among all sheets of a show: what it is and of whom. An old print is found by it. */
  key: string;
  /** What kind of sheet it is: "Input list for the stage". */
  title: string;
  /** Whose sheet it is: the act or the day. */
  subject: string;
  /** Short facts under the title, for example the time of the set. */
  facts: Fact[];
  /** What must be read before somebody acts on the sheet. */
  cautions: string[];
  page: PageWish;
  parts: Part[];
};

export type Fact = { label: string; value: string };

/** `as fits`: upright where that takes no more pages than lying. A paper of its own goes before the chosen one. */
export type PageWish = { orientation: 'as fits' | 'portrait' | 'landscape'; paper: 'A3' | null };

export type Part = TablePart | TextPart | DrawingPart | LabelsPart;

export type TablePart = {
  is: 'table';
  heading: string | null;
  columns: Column[];
  rows: Row[];
  /** What stands there instead of a table without rows. */
  empty: string;
  /** This many columns at the left stand again wherever the columns do not fit beside each other. */
  repeatedColumns: number;
};

export type TextPart = { is: 'text'; heading: string | null; paragraphs: string[] };

export type DrawingPart = { is: 'drawing'; heading: string | null; drawing: Drawing };

export type LabelsPart = { is: 'labels'; heading: string | null; form: LabelForm; labels: Label[] };

/** One label: a number and a name that fits the width, and below it what else there is room for. */
export type Label = {
  key: string;
  number: string;
  name: string;
  below: string;
  /** Colours of the digits of a line number, or none. */
  digitColours: DigitColour[];
};

export type DigitColour = { name: string; letters: string; hex: string };

/** `tick`: a box to be ticked by hand. `write`: room to write by hand. */
export type ColumnKind = 'text' | 'number' | 'tick' | 'write';

export type Column = {
  title: string;
  kind: ColumnKind;
  align: 'left' | 'right' | 'centre';
  /** Digits behind the point of a number. */
  decimals: number;
  /** A number above zero gets its plus sign. */
  signed: boolean;
  /** Share of the width that is left over; 0: no wider than what stands in it. */
  grow: number;
  /** Stands on paper even where nothing is in it: an act that plugs nothing is still an act. */
  always: boolean;
};

/** null: nothing to say. In a `tick` column true is a box ticked already. */
export type Cell = string | number | boolean | null;

export type Row = {
  /** Stays the same from print to print, so that a change is told from a new row. */
  key: string;
  cells: Cell[];
  /** `group`: a heading over the rows below it, in the first cell. `quiet`: there is nothing to do, nor to tick. */
  look: 'plain' | 'strong' | 'quiet' | 'group';
};
