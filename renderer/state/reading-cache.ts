import { useEffect, useSyncExternalStore } from 'react';
import type { Grid } from '../../core/rider/grid.ts';
import { ownWordsOfAct } from '../../core/rider/own-words.ts';
import type { readRider } from '../../core/rider/read-rider.ts';
import type { Answers, Reading } from '../../core/rider/reading.ts';
import type { OwnWord } from '../../core/show/own-word.ts';
import type { RiderRecord } from '../../core/show/rider-record.ts';
import type { Id } from '../../core/show/rig.ts';
import type { Show } from '../../core/show/show.ts';
import { ReadingThread } from './reading-thread.ts';

/**
 * The reader of riders with its tables of words is a third of the whole program and not needed for the first
 * sight of a plan: it comes in a file of its own, asked for as soon as the window is drawn.
 */
let read: typeof readRider | null = null;

export async function loadReader(): Promise<void> {
  if (read) return;
  ({ readRider: read } = await import('../../core/rider/read-rider.ts'));
  const { prepareWords } = await import('../../core/rider/language/prepare-words.ts');
  inIdleTime(prepareWords());
}

/** Goes on whenever the page has nothing else to do, so that its own first reading is as quick as the later ones. */
function inIdleTime(steps: Iterator<void>): void {
  requestIdleCallback((idle) => {
    while (idle.timeRemaining() > 0) if (steps.next().done) return;
    inIdleTime(steps);
  });
}

const mostKept = 64;
const known = new WeakMap<Grid, Map<string, Reading>>();
const thread = new ReadingThread();
const asked = new WeakMap<Grid, Set<string>>();
const listeners = new Set<() => void>();
let arrivedCount = 0;

/** A rider, the answers to its questions and the taught words it is read with; `key` tells the last two. */
type Wanted = {
  grid: Grid;
  answers: Answers;
  ownWords: Pick<OwnWord, 'words' | 'of' | 'kind'>[];
  key: string;
};

function wanted(grid: Grid, answers: Answers, taught: readonly OwnWord[]): Wanted {
  const ownWords = taught.map(({ words, of, kind }) => ({ words, of, kind }));
  return { grid, answers, ownWords, key: JSON.stringify([Object.entries(answers).sort(), ownWords]) };
}

function keep({ grid, key }: Wanted, reading: Reading): Reading {
  const ofGrid = known.get(grid) ?? new Map<string, Reading>();
  known.set(grid, ofGrid);
  if (ofGrid.size >= mostKept) ofGrid.clear();
  ofGrid.set(key, reading);
  return reading;
}

const knownReading = ({ grid, key }: Wanted): Reading | undefined => known.get(grid)?.get(key);

/**
 * What a grid means under the given answers and taught words; read once for each set of them. Only after
 * `loadReader`.
 */
export function readingOf(grid: Grid, answers: Answers, taught: readonly OwnWord[]): Reading {
  const it = wanted(grid, answers, taught);
  const found = knownReading(it);
  if (found) return found;
  if (!read) throw new Error('A rider was read before the reader was there.');
  return keep(it, read(grid, answers, it.ownWords));
}

/** Has a rider read beside the page, and who shows it told when that is done. */
function readBeside(it: Wanted): void {
  const keys = asked.get(it.grid) ?? new Set();
  asked.set(it.grid, keys);
  if (keys.has(it.key)) return;
  keys.add(it.key);
  thread.read(it.grid, it.answers, it.ownWords, (reading) => {
    keys.delete(it.key);
    if (!knownReading(it)) keep(it, reading);
    arrivedCount += 1;
    for (const tell of listeners) tell();
  });
}

const subscribe = (listener: () => void) => {
  listeners.add(listener);
  return () => listeners.delete(listener);
};

/** How many questions the riders of an act leave open, 0 until they are read: not by the page, which would stand still. */
export function useOpenQuestionCount(show: Show, actId: Id): number {
  useSyncExternalStore(subscribe, () => arrivedCount);
  const riders = openRidersOfAct(show, actId).map((rider) =>
    wanted(rider.grid, answersOfRider(show, rider.id), ownWordsOfAct(show, actId)),
  );
  useEffect(() => {
    for (const it of riders) if (!knownReading(it)) readBeside(it);
  });
  return riders.reduce((sum, it) => sum + (knownReading(it)?.questions.length ?? 0), 0);
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
  return openRidersOfAct(show, actId)
    .map((rider) => readingOfRider(show, rider).questions.length)
    .reduce((sum, count) => sum + count, 0);
}

const openRidersOfAct = (show: Show, actId: Id): RiderRecord[] =>
  ridersOfAct(show, actId).filter((rider) => !rider.replaced);
