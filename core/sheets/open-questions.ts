import { ownWordsOfAct } from '../rider/own-words.ts';
import { readRider } from '../rider/read-rider.ts';
import type { Question } from '../rider/reading.ts';
import type { ActSheet } from '../show/act-sheet.ts';
import type { Show } from '../show/show.ts';

/** What the newest rider of an act leaves open and nobody has answered; nothing where no rider came. */
export function openQuestions(show: Show, { riders }: ActSheet): Question[] {
  const rider = riders.findLast((it) => !it.replaced);
  if (!rider) return [];
  const answers = [...show.answers.values()].filter((it) => it.riderId === rider.id);
  const given = Object.fromEntries(answers.map((it) => [it.questionKey, it.value]));
  return readRider(rider.grid, given, ownWordsOfAct(show, rider.actId)).questions;
}
