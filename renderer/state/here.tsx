import { createContext, type ReactNode, useContext, useMemo, useSyncExternalStore } from 'react';
import type { Act, Day } from '../../core/show/act.ts';
import { actsOfDay } from '../../core/show/act-sheet.ts';
import type { Id } from '../../core/show/rig.ts';
import type { Show } from '../../core/show/show.ts';
import type { Connection } from '../connection.ts';
import { type ActOnScreen, actOnScreen } from './derive-cache.ts';
import type { ShowState, ShowStore } from './show-store.ts';
import type { View, ViewStore } from './view-store.ts';

/** How the show stands against the disk, and the last trouble. */
export type Saved = Pick<ShowState, 'saving' | 'standing' | 'problem'>;

/** What every screen knows: the show, what this window looks at, and how to change either. */
export type Here = Omit<ShowState, keyof Saved> & {
  view: View;
  look: ViewStore['look'];
  change: ShowStore['change'];
  undo: ShowStore['undo'];
  redo: ShowStore['redo'];
  take: ShowStore['take'];
  tell: ShowStore['tell'];
  dismiss: ShowStore['dismiss'];
  connection: Connection;
  days: Day[];
  /** The day of the open act, or the first one. */
  day: Day | null;
  /** The acts of that day in running order. */
  acts: Act[];
  /** The open act with all that follows from it; null on an empty day. */
  open: ActOnScreen | null;
};

const HereContext = createContext<Here | null>(null);
const SavedContext = createContext<Saved | null>(null);

export const useHere = (): Here => inFrame(useContext(HereContext));

/** Apart from `useHere`, so that an edit which arrives on the disk draws the line that says so and nothing else. */
export const useSaved = (): Saved => inFrame(useContext(SavedContext));

function inFrame<T>(known: T | null): T {
  if (!known) throw new Error('A screen was drawn outside the frame.');
  return known;
}

type Stores = { connection: Connection; showStore: ShowStore; viewStore: ViewStore };

export function HereProvider({
  connection,
  showStore,
  viewStore,
  children,
}: Stores & { children: ReactNode }) {
  const state = useSyncExternalStore(showStore.subscribe, showStore.state);
  const view = useSyncExternalStore(viewStore.subscribe, viewStore.view);
  const { phase, show, file, saving, standing, problem } = state;
  const here = useMemo((): Here => {
    const { change, undo, redo, take, tell, dismiss } = showStore;
    return {
      phase,
      show,
      file,
      ...placeOf(show, view.actId),
      view,
      look: viewStore.look,
      change,
      undo,
      redo,
      take,
      tell,
      dismiss,
      connection,
    };
  }, [phase, show, file, view, showStore, viewStore, connection]);
  const saved = useMemo((): Saved => ({ saving, standing, problem }), [saving, standing, problem]);
  return (
    <HereContext value={here}>
      <SavedContext value={saved}>{children}</SavedContext>
    </HereContext>
  );
}

function placeOf(show: Show, wanted: Id | null): Pick<Here, 'days' | 'day' | 'acts' | 'open'> {
  const days = [...show.days.values()].sort((a, b) => a.order - b.order);
  const wantedAct = wanted === null ? undefined : show.acts.get(wanted);
  const day = days.find((it) => it.id === wantedAct?.dayId) ?? days[0] ?? null;
  const acts = day ? actsOfDay(show, day.id) : [];
  const act = wantedAct ?? acts[0];
  return { days, day, acts, open: act ? actOnScreen(show, act.id) : null };
}
