import type { LineRef } from './grid.ts';
import { placeOf } from './page/draft.ts';
import type { Answers, Question } from './reading.ts';

/** How urgent a matter is: what blocks most comes first. */
export const weights = {
  unknownSource: 90,
  unreadLine: 80,
  twoLines: 75,
  kindGuess: 70,
  leadVocal: 65,
  doubleNumber: 60,
  wishTarget: 55,
  wishAmount: 44,
  openMix: 50,
  ownSources: 50,
  pairGuess: 45,
  performerGuess: 40,
  noMixes: 35,
  missingNumber: 30,
  scale: 60,
  sameAs: 48,
} as const;

export type Ask = {
  /** What is asked, as part of the key: "kind", "pair". */
  matter: string;
  at: LineRef | null;
  /** Tells several questions of one matter on one line apart. */
  part?: string;
  ask: string;
  options: [
    { value: string; label: string },
    { value: string; label: string },
    ...{ value: string; label: string }[],
  ];
  /** See `Question.words`. */
  words?: string;
  freeText?: boolean;
  guessConfidence: number;
  weight: number;
};

/** Collects what is doubtful. A question that has an answer is not asked again: the answer is handed back. */
export class Asker {
  readonly questions: Question[] = [];
  readonly #answers: Answers;
  readonly #keys = new Set<string>();

  constructor(answers: Answers) {
    this.#answers = answers;
  }

  /** The engineer's answer, or null where there is none and the first option is used. */
  ask(it: Ask): string | null {
    const key = `${it.matter}@${it.at ? placeOf(it.at) : 'rider'}${it.part ? `.${it.part}` : ''}`;
    const answer = Object.hasOwn(this.#answers, key) ? this.#answers[key] : undefined;
    const offered = it.options.some((option) => option.value === answer);
    if (answer !== undefined && (offered || (it.freeText === true && answer.trim() !== ''))) return answer;
    if (this.#keys.has(key)) return null;
    this.#keys.add(key);
    const options = it.options.filter(
      (option, at) => it.options.findIndex((other) => other.value === option.value) === at,
    );
    this.questions.push({
      key,
      at: it.at,
      ask: it.ask,
      ...(it.words === undefined ? {} : { words: it.words }),
      options,
      freeText: it.freeText ?? false,
      guessConfidence: it.guessConfidence,
      weight: it.weight,
    });
    return null;
  }

  /** All open questions, the most urgent first, those of one weight in the rider's order. */
  ranked(): Question[] {
    return this.questions
      .map((question, order) => ({ question, order }))
      .sort((a, b) => b.question.weight - a.question.weight || a.order - b.order)
      .map(({ question }) => question);
  }
}
