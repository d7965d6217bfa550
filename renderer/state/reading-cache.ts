import type { Grid } from '../../core/rider/grid.ts';
import { readRider } from '../../core/rider/read-rider.ts';
import type { Answers, Reading } from '../../core/rider/reading.ts';
import type { RiderRecord } from '../../core/show/rider-record.ts';
import type { Id } from '../../core/show/rig.ts';
import type { Show } from '../../core/show/show.ts';

const known = new WeakMap<Grid, { answers: string; reading: Reading }>();

/** What a grid means under the given answers; read once for each set of answers. */
export function readingOf(grid: Grid, answers: Answers): Reading {
  const key = JSON.stringify(Object.entries(answers).sort());
  const found = known.get(grid);
  if (found?.answers === key) return found.reading;
  const reading = readRider(grid, answers);
  known.set(grid, { answers: key, reading });
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

/** How many questions the riders of an act still leave open. */
export function openQuestionCount(show: Show, actId: Id): number {
  return ridersOfAct(show, actId)
    .map((rider) => {
      const answers = answersOfRider(show, rider.id);
      return readingOf(rider.grid, answers).questions.filter((question) => !(question.key in answers)).length;
    })
    .reduce((sum, count) => sum + count, 0);
}
