import { useDeferredValue, useSyncExternalStore } from 'react';
import type { Grid } from '../../core/rider/grid.ts';
import { ownWordsOfAct } from '../../core/rider/own-words.ts';
import type { readRider } from '../../core/rider/read-rider.ts';
import type { Answers, Reading } from '../../core/rider/reading.ts';
import type { OwnWord } from '../../core/show/own-word.ts';
import type { RiderRecord } from '../../core/show/rider-record.ts';
import type { Id } from '../../core/show/rig.ts';
import type { Show } from '../../core/show/show.ts';

/**
 * The reader of riders with its tables of words is a third of the whole program and not needed for the first
 * sight of a plan: it comes in a file of its own, asked for as soon as the window is drawn.
 */
let read: typeof readRider | null = null;
const waiting = new Set<() => void>();

export async function loadReader(): Promise<void> {
  if (read) return;
  ({ readRider: read } = await import('../../core/rider/read-rider.ts'));
  for (const tell of waiting) tell();
}

/**
 * Whether riders can be read yet; who asks is drawn again when they can. To read those of a day takes long: each who
 * asks has a turn of its own, and what the user does comes before them.
 */
export function useReader(): boolean {
  const canRead = useSyncExternalStore(
    (tell) => {
      waiting.add(tell);
      return () => waiting.delete(tell);
    },
    () => read !== null,
  );
  return useDeferredValue(canRead);
}

const mostKept = 64;
const known = new WeakMap<Grid, Map<string, Reading>>();

/**
 * What a grid means under the given answers and taught words; read once for each set of them. Only after
 * `loadReader`.
 */
export function readingOf(grid: Grid, answers: Answers, taught: readonly OwnWord[]): Reading {
  if (!read) throw new Error('A rider was read before the reader was there.');
  const ownWords = taught.map(({ words, of, kind }) => ({ words, of, kind }));
  const key = JSON.stringify([Object.entries(answers).sort(), ownWords]);
  const ofGrid = known.get(grid) ?? new Map<string, Reading>();
  known.set(grid, ofGrid);
  const found = ofGrid.get(key);
  if (found) return found;
  const reading = read(grid, answers, ownWords);
  if (ofGrid.size >= mostKept) ofGrid.clear();
  ofGrid.set(key, reading);
  return reading;
}

/** The riders of an act in the order they came. */
export function ridersOfAct(show: Show, actId: Id): RiderRecord[] {
  return [...show.riders.values()]
    .filter((rider) => rider.actId === actId)
    .sort((a, b) => a.order - b.order || (a.receivedAt < b.receivedAt ? -1 : 1));
}

/** The engineer's answers to the questions of one rider. */
export function answersOfRider(show: Show, riderId: Id): Record<string, string> {
  const rows = [...show.answers.values()].filter((answer) => answer.riderId === riderId);
  return Object.fromEntries(rows.map((answer) => [answer.questionKey, answer.value]));
}

/** What a rider of the show is taken to mean. Only after `loadReader`. */
export function readingOfRider(show: Show, rider: RiderRecord): Reading {
  return readingOf(rider.grid, answersOfRider(show, rider.id), ownWordsOfAct(show, rider.actId));
}

/** How many questions the riders of an act still leave open. Only after `loadReader`. */
export function openQuestionCount(show: Show, actId: Id): number {
  return ridersOfAct(show, actId)
    .filter((rider) => !rider.replaced)
    .map((rider) => readingOfRider(show, rider).questions.length)
    .reduce((sum, count) => sum + count, 0);
}
