import { squash } from '../language/text.ts';
import type { Answers, Question, Reading } from '../reading.ts';

/** A question that was answered on an earlier rider. */
export type AskedBefore = { question: Question; value: string };

const matterOf = (question: Question) => question.key.slice(0, question.key.indexOf('@'));

const isSameWording = (one: Question, other: Question) =>
  matterOf(one) === matterOf(other) && squash(one.ask) === squash(other.ask);

/**
 * The answer that was given to the same question in the same words, as this question would have it; the latest of
 * several. Null where it was never asked, or where what was chosen is not offered here.
 */
export function answerBefore(question: Question, earlier: readonly AskedBefore[]): string | null {
  const found = earlier.findLast((it) => isSameWording(it.question, question));
  if (!found) return null;
  // The values of some options are places of lines, which are others in another rider: the label says what was meant.
  const chosen = found.question.options.find((option) => option.value === found.value);
  if (!chosen) return question.freeText ? found.value : null;
  return question.options.find((option) => option.label === chosen.label)?.value ?? null;
}

/** An answer may bring up a question that was not there before; no rider goes deeper than this. */
const mostRounds = 5;

/**
 * What earlier riders of the band already answered, as answers to this one. `read` is the reading of this rider
 * under given answers; `given` are never changed.
 */
export function answersAsBefore(
  read: (answers: Answers) => Reading,
  earlier: readonly AskedBefore[],
  given: Answers = {},
): Record<string, string> {
  let answers: Record<string, string> = { ...given };
  for (let round = 0; round < mostRounds && earlier.length > 0; round++) {
    const fresh = read(answers).questions.flatMap((question): [string, string][] => {
      const value = question.key in answers ? null : answerBefore(question, earlier);
      return value === null ? [] : [[question.key, value]];
    });
    if (fresh.length === 0) break;
    answers = { ...answers, ...Object.fromEntries(fresh) };
  }
  return answers;
}

/** The questions that were answered, each as it was asked: an answered one is gone from the reading. */
export function askedAndAnswered(read: (answers: Answers) => Reading, answers: Answers): AskedBefore[] {
  return Object.entries(answers).flatMap(([key, value]) => {
    const { [key]: _, ...others } = answers;
    const question = read(others).questions.find((it) => it.key === key);
    return question ? [{ question, value }] : [];
  });
}
