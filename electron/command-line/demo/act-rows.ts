import { rowsOfReading } from '../../../core/rider/again/rows-of-reading.ts';
import type { Grid } from '../../../core/rider/grid.ts';
import { readRider } from '../../../core/rider/read-rider.ts';
import type { Reading } from '../../../core/rider/reading.ts';
import { Act, Wish } from '../../../core/show/act.ts';
import { type Put, put } from '../../../core/show/change.ts';
import { Answer, RiderRecord } from '../../../core/show/rider-record.ts';
import { decisionRows } from './decision-rows.ts';
import type { DemoAct } from './demo-day.ts';
import { placed } from './placed-rows.ts';

/** All rows of one act of the demo: the rider as it came, the answers to it, what it then means, what was decided. */
export function rowsOfAct(demo: DemoAct, order: number, dayId: string, grid: Grid): Put[] {
  const count = new Map<string, number>();
  const idOf = (what: string): string => {
    const number = (count.get(what) ?? 0) + 1;
    count.set(what, number);
    return `${demo.id}-${what}-${number}`;
  };
  const riderId = `${demo.id}-rider`;
  const answers = answersOf(demo, grid);
  const reading = readRider(grid, answers);
  const { id, name, state, notes } = demo;
  const times = { startMinute: minuteOf(demo.start), endMinute: minuteOf(demo.end) };
  const read = rowsOfReading(reading, id, () => idOf('row'));
  const rows = confirmed(demo, placed(demo, read));
  return [
    put('acts', Act.parse({ id, dayId, order, name, state, notes, ...times })),
    ...rows,
    ...decisionRows(demo, rows, () => idOf('decision')),
    put(
      'riders',
      RiderRecord.parse({
        id: riderId,
        actId: id,
        fileName: demo.riderFile,
        receivedAt: demo.receivedAt,
        grid,
      }),
    ),
    ...Object.entries(answers).map(([questionKey, value]) =>
      put('answers', Answer.parse({ id: idOf('answer'), riderId, questionKey, value })),
    ),
  ];
}

/**
 * Answers to the questions of a rider. An answer may bring up a question that was not there before, so it is read
 * again until nothing is left that the demo's engineer has an answer to.
 */
function answersOf(demo: DemoAct, grid: Grid): Record<string, string> {
  const answers: Record<string, string> = {};
  for (let round = 0; round < 5; round += 1) {
    const fresh = freshAnswers(demo, readRider(grid, answers), answers);
    if (fresh.length === 0) break;
    for (const [key, value] of fresh) answers[key] = value;
  }
  return answers;
}

function freshAnswers(
  demo: DemoAct,
  reading: Reading,
  answers: Readonly<Record<string, string>>,
): [string, string][] {
  return reading.questions.flatMap((question): [string, string][] => {
    const answer = demo.answers.find(({ ask }) => ask.test(question.ask));
    const value = answer?.value === 'guess' ? question.options[0]?.value : answer?.value;
    return value === undefined || question.key in answers ? [] : [[question.key, value]];
  });
}

/** Wishes of a mix that somebody has asked the performer about. */
function confirmed(demo: DemoAct, rows: readonly Put[]): Put[] {
  const patterns = demo.decisions.flatMap((it) => (it.own === 'confirmed' ? [it.mix] : []));
  const mixIds = new Set(
    rows.flatMap((it) =>
      it.table === 'mixes' && patterns.some((mix) => mix.test(it.row.name)) ? [it.row.id] : [],
    ),
  );
  return rows.map((it) =>
    it.table === 'wishes' && mixIds.has(it.row.mixId)
      ? put('wishes', Wish.parse({ ...it.row, confirmed: true }))
      : it,
  );
}

function minuteOf(clock: string): number {
  const [hours = 0, minutes = 0] = clock.split(':').map(Number);
  return hours * 60 + minutes;
}
