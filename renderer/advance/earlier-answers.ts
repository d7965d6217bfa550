import {
  type AskedBefore,
  answerBefore,
  askedAndAnswered,
} from '../../core/rider/again/remembered-answers.ts';
import { squash } from '../../core/rider/language/text.ts';
import { ownWordsOfAct } from '../../core/rider/own-words.ts';
import type { Answers, Question, Reading } from '../../core/rider/reading.ts';
import type { RiderRecord } from '../../core/show/rider-record.ts';
import type { Id } from '../../core/show/rig.ts';
import type { Show } from '../../core/show/show.ts';
import { answersOfRider, readingOf } from '../state/reading-cache.ts';

/** The reading of a rider under any answers, with the words that hold for its act. */
export function readerOf(show: Show, { grid, actId }: Pick<RiderRecord, 'grid' | 'actId'>) {
  const taught = ownWordsOfAct(show, actId);
  return (answers: Answers): Reading => readingOf(grid, answers, taught);
}

/** What was answered on the other riders of a band, on this act or one of the same name; the latest last. */
export function earlierAnswers(show: Show, actId: Id, except: Id | null): AskedBefore[] {
  const name = squash(show.acts.get(actId)?.name ?? '');
  const isOfBand = (rider: RiderRecord) =>
    rider.actId === actId || (name !== '' && squash(show.acts.get(rider.actId)?.name ?? '') === name);
  return [...show.riders.values()]
    .filter((rider) => rider.id !== except && isOfBand(rider))
    .sort((a, b) => (a.receivedAt < b.receivedAt ? -1 : 1))
    .flatMap((rider) => askedAndAnswered(readerOf(show, rider), answersOfRider(show, rider.id)));
}

export type AnsweredQuestion = { question: Question; value: string; asBefore: boolean };

/** The answered questions of a rider; `asBefore` where an earlier rider of the band was answered the same. */
export function answeredQuestions(show: Show, rider: RiderRecord): AnsweredQuestion[] {
  const answered = askedAndAnswered(readerOf(show, rider), answersOfRider(show, rider.id));
  if (answered.length === 0) return [];
  const earlier = earlierAnswers(show, rider.actId, rider.id);
  return answered.map((it) => ({ ...it, asBefore: answerBefore(it.question, earlier) === it.value }));
}
