import { useSyncExternalStore } from 'react';
import type { Problem } from '../../core/contract/problem.ts';
import type { LayerName } from '../../core/plan/day/day-plan.ts';
import type { DaySoFar, FoundDay } from '../../core/plan/day/found-day.ts';
import type { Id } from '../../core/show/rig.ts';
import type { Show } from '../../core/show/show.ts';
import type { Connection } from '../connection.ts';

/** Where this window's planning of a day stands. `planned` is the show that it was or is planned from. */
export type Planning =
  | { is: 'idle' }
  | { is: 'running'; planned: Show; dayId: Id; soFar: Partial<Record<LayerName, DaySoFar>>; ending: boolean }
  | { is: 'found'; planned: Show; found: FoundDay; stopped: boolean }
  | { is: 'refused'; problem: Problem };

/** The longest that each proof may take; then the plan says how far from its bound it is. */
const timeLimitSeconds = 60;

/** The planning of one window. It goes on while the window looks at something else. */
class DayPlanning {
  readonly #connection: Connection;
  readonly #listeners = new Set<() => void>();
  #state: Planning = { is: 'idle' };

  constructor(connection: Connection) {
    this.#connection = connection;
    connection.onPush((push) => {
      if (push.push !== 'day progress' || this.#state.is !== 'running') return;
      const soFar = { ...this.#state.soFar, [push.soFar.layer]: push.soFar };
      this.#set({ ...this.#state, soFar });
    });
  }

  readonly subscribe = (listener: () => void): (() => void) => {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  };

  readonly state = (): Planning => this.#state;

  readonly plan = async (show: Show, dayId: Id, keepUnlessGain: number | null): Promise<void> => {
    const running: Planning = { is: 'running', planned: show, dayId, soFar: {}, ending: false };
    this.#set(running);
    const answer = await this.#connection.call('day.plan', { dayId, keepUnlessGain, timeLimitSeconds });
    // A second start has taken its place.
    if (this.#state.is !== 'running' || this.#state.planned !== show) return;
    if (!answer.ok) this.#set({ is: 'refused', problem: answer.problem });
    else this.#set({ is: 'found', planned: show, ...answer.value });
  };

  readonly stop = (): void => {
    if (this.#state.is !== 'running' || this.#state.ending) return;
    this.#set({ ...this.#state, ending: true });
    void this.#connection.call('day.stop', {});
  };

  /** Forgets what was found or refused. */
  readonly leave = (): void => {
    if (this.#state.is !== 'running') this.#set({ is: 'idle' });
  };

  #set(state: Planning): void {
    this.#state = state;
    for (const listener of this.#listeners) listener();
  }
}

const planningOf = new WeakMap<Connection, DayPlanning>();

export function useDayPlanning(connection: Connection): {
  planning: Planning;
  plan: DayPlanning['plan'];
  stop: DayPlanning['stop'];
  leave: DayPlanning['leave'];
} {
  const store = planningOf.get(connection) ?? new DayPlanning(connection);
  planningOf.set(connection, store);
  const planning = useSyncExternalStore(store.subscribe, store.state);
  return { planning, plan: store.plan, stop: store.stop, leave: store.leave };
}
