import { mergeReading } from '../../core/rider/again/merge-reading.ts';
import { answersAsBefore } from '../../core/rider/again/remembered-answers.ts';
import type { Grid } from '../../core/rider/grid.ts';
import { squash } from '../../core/rider/language/text.ts';
import { ownWordsOfAct } from '../../core/rider/own-words.ts';
import type { Answers, Question } from '../../core/rider/reading.ts';
import { Act } from '../../core/show/act.ts';
import { actSheet, actsOfDay } from '../../core/show/act-sheet.ts';
import { applyChange } from '../../core/show/apply-change.ts';
import { type Change, type Put, put } from '../../core/show/change.ts';
import type { RiderRecord } from '../../core/show/rider-record.ts';
import type { Id } from '../../core/show/rig.ts';
import type { Show } from '../../core/show/show.ts';
import { newId } from '../state/new-id.ts';
import { answersOfRider, readingOf, ridersOfAct } from '../state/reading-cache.ts';
import { words } from '../wording/words.ts';
import { earlierAnswers, readerOf } from './earlier-answers.ts';

const longestName = 200;

/** A new act at the end of a day. */
function newAct(show: Show, dayId: Id, name: string): Act {
  const order = (actsOfDay(show, dayId).at(-1)?.order ?? -1) + 1;
  return Act.parse({ id: newId(), dayId, order, name: name.slice(0, longestName) });
}

export function emptyActChange(show: Show, dayId: Id): { change: Change; actId: Id } {
  const act = newAct(show, dayId, words.advance.newActName);
  return {
    change: { label: words.common.addOf(act.name), put: [put('acts', act)], remove: [] },
    actId: act.id,
  };
}

const nameIn = (grid: Grid): string | null => readingOf(grid, {}, []).actName;

/** Whether a rider says what the band is called. */
export const tellsName = (grid: Grid): boolean => nameIn(grid) !== null;

/** The newest rider that a band of a day has, of the band that a rider names; null where it names none of them. */
export function riderOfBand(show: Show, dayId: Id, grid: Grid): RiderRecord | null {
  const name = squash(nameIn(grid) ?? '');
  const acts = name === '' ? [] : actsOfDay(show, dayId).filter((act) => squash(act.name) === name);
  return acts.flatMap(({ id }) => ridersOfAct(show, id)).findLast((rider) => !rider.replaced) ?? null;
}

/**
 * A rider brought in, into an act or a new one on a day: the rider as it came, and everything it was taken to mean,
 * as one change. A new act is called `name`, or what the rider or its file is called. `receivedAt` is the time as
 * ISO 8601.
 */
export function riderChange(
  show: Show,
  into: { actId: Id } | { dayId: Id; name?: string | undefined },
  grid: Grid,
  receivedAt: string,
): { change: Change; actId: Id; riderId: Id } {
  const added =
    'dayId' in into ? newAct(show, into.dayId, into.name ?? nameIn(grid) ?? withoutEnding(grid.name)) : null;
  const actId = 'dayId' in into ? (added?.id ?? '') : into.actId;
  const withAct = added ? applyChange(show, { label: 'x', put: [put('acts', added)], remove: [] }) : show;
  const read = readerOf(withAct, { grid, actId });
  const answers = answersAsBefore(read, earlierAnswers(withAct, actId, null));
  const reading = read(answers);
  const sheet = actSheet(withAct, actId);
  const rows = sheet ? mergeReading(sheet, null, reading, newId) : { put: [], remove: [] };
  const rider = newRider(show, actId, grid, receivedAt);
  const acts = added ? [put('acts', added)] : [];
  return {
    change: {
      label: words.advance.imported(rider.fileName),
      put: [...acts, put('riders', rider), ...answerRows(rider.id, answers), ...rows.put],
      remove: rows.remove,
    },
    actId,
    riderId: rider.id,
  };
}

/** A rider as it came, the last of its act. */
export function newRider(show: Show, actId: Id, grid: Grid, receivedAt: string): RiderRecord {
  return {
    id: newId(),
    actId,
    order: (ridersOfAct(show, actId).at(-1)?.order ?? -1) + 1,
    fileName: grid.name.slice(-longestName),
    receivedAt,
    writtenOn: '',
    validUntil: '',
    grid,
    replaced: false,
  };
}

export function answerRows(riderId: Id, answers: Answers): Put[] {
  return Object.entries(answers).map(([questionKey, value]) =>
    put('answers', { id: newId(), riderId, questionKey, value }),
  );
}

const withoutEnding = (name: string) => name.replace(/\.[a-z0-9]{1,5}$/i, '') || name;

/** An answer to a question of a rider (null opens it again), and what it changes in the act, as one change. */
export function answerChange(
  show: Show,
  rider: RiderRecord,
  question: Question,
  value: string | null,
): Change {
  const before = answersOfRider(show, rider.id);
  const { [question.key]: _, ...others } = before;
  const after = value === null ? others : { ...others, [question.key]: value };
  const sheet = actSheet(show, rider.actId);
  const taught = ownWordsOfAct(show, rider.actId);
  const rows = sheet
    ? mergeReading(sheet, readingOf(rider.grid, before, taught), readingOf(rider.grid, after, taught), newId)
    : { put: [], remove: [] };
  const kept = [...show.answers.values()].find(
    (answer) => answer.riderId === rider.id && answer.questionKey === question.key,
  );
  const label =
    value === null ? words.advance.askAgainLabel(question.ask) : words.advance.answerLabel(question.ask);
  if (value === null)
    return {
      label,
      put: rows.put,
      remove: [...rows.remove, ...(kept ? [{ table: 'answers' as const, id: kept.id }] : [])],
    };
  const answer = { id: kept?.id ?? newId(), riderId: rider.id, questionKey: question.key, value };
  return { label, put: [put('answers', answer), ...rows.put], remove: rows.remove };
}
