import type { Id } from '../../core/show/rig.ts';
import type { SheetChoice } from '../paper/sheet-choice.ts';

/** The moments of the engineer's day, in the order of the day. */
export const moments = [
  'advance',
  'mixes',
  'stage',
  'day',
  'changeover',
  'show',
  'paper',
  'rig',
  'recall',
] as const;
export type Moment = (typeof moments)[number];

/** What this window looks at. Not part of the show: two windows may look at different acts. */
export type View = {
  moment: Moment;
  actId: Id | null;
  mixId: Id | null;
  sourceId: Id | null;
  /** The act of the archive that is open on Recall. */
  pastActId: Id | null;
  /** Beside the mixes: what is wrong with the act, what is known of the chosen source and mix, or nothing. */
  side: 'findings' | 'details' | 'closed';
  /** The output whose path is drawn. */
  outputId: Id | null;
  /** The drawing of the way from performer to device instead of the table, of what is chosen. */
  path: 'source' | 'mix' | 'output' | null;
  /** Letters that narrow the table of the mixes. */
  filter: string;
  /** Sources and mixes of the open act that are hidden from its table. */
  hidden: ReadonlySet<Id>;
  /** The table follows who is chosen: it shows only the sources of the chosen mix. */
  follows: boolean;
  open: 'nothing' | 'find' | 'keys' | 'keep';
  /** A rider is being brought in for an act that is not there yet. */
  newAct: boolean;
  /** Files that were dropped on the window and that nobody has taken yet. */
  dropped: readonly File[] | null;
  /** The sheet that Paper shows; one that there is not at the open act gives way to the input list. */
  sheet: SheetChoice;
  theme: 'night' | 'day';
};

const nothingHidden: ReadonlySet<Id> = new Set();
const themeKey = 'foldbook.theme';

/** The place in the address, so that a reload comes back to it: `#mixes/act-id`. */
function fromAddress(): Pick<View, 'moment' | 'actId'> {
  const [moment, actId] = location.hash.slice(1).split('/').map(decodeURIComponent);
  return { moment: moments.find((it) => it === moment) ?? 'mixes', actId: actId ? actId : null };
}

export class ViewStore {
  readonly #listeners = new Set<() => void>();
  #address = location.hash;
  #view: View = {
    ...fromAddress(),
    mixId: null,
    sourceId: null,
    pastActId: null,
    side: 'findings',
    outputId: null,
    path: null,
    filter: '',
    hidden: nothingHidden,
    follows: false,
    open: 'nothing',
    newAct: false,
    dropped: null,
    sheet: 'input list stage',
    theme: localStorage.getItem(themeKey) === 'day' ? 'day' : 'night',
  };

  readonly subscribe = (listener: () => void): (() => void) => {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  };

  readonly view = (): View => this.#view;

  readonly look = (part: Partial<View>): void => {
    const goes = part.moment !== undefined || part.actId !== undefined;
    const leavesAct = part.actId !== undefined && part.actId !== this.#view.actId;
    const next: View = {
      ...this.#view,
      ...(goes ? { newAct: false } : {}),
      ...(leavesAct ? { mixId: null, sourceId: null, path: null, filter: '', hidden: nothingHidden } : {}),
      ...part,
    };
    const keys = Object.keys(next) as (keyof View)[];
    if (keys.every((key) => next[key] === this.#view[key])) return;
    if (next.theme !== this.#view.theme) localStorage.setItem(themeKey, next.theme);
    const address = `#${next.moment}/${encodeURIComponent(next.actId ?? '')}`;
    // Writing the address is slow, and moving about in a table does not change it.
    if (address !== this.#address) history.replaceState(null, '', address);
    this.#address = address;
    this.#view = next;
    for (const listener of this.#listeners) listener();
  };
}
