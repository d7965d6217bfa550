import type { LineRef } from '../grid.ts';
import { squash, type Token, tidy, tokenize } from '../language/text.ts';
import { shorten, type Work } from '../page/work.ts';
import { weights } from '../questions.ts';
import type { ReadPerformer } from '../reading.ts';

/** Two of a band may have one first name: their other names tell them apart, or the letters these begin with. */

const wordsOf = (name: string): Token[] => tokenize(name).filter(({ kind }) => kind === 'word');

/** Whether one text says this word of a name, or the letter it begins with. */
const says = (words: readonly Token[], name: Token): boolean =>
  words.some(({ text, raw }) => text === name.text || (/^\p{Lu}$/u.test(raw) && name.text.startsWith(text)));

/** Whether two names of several words can be of one person: no word of the shorter one is of somebody else. */
function canBeOne(one: string, other: string): boolean {
  const [few = [], many = []] = [wordsOf(one), wordsOf(other)].sort((a, b) => a.length - b.length);
  if (few.length < 2) return true;
  return few.every((word) => says(many, word) || says([word], many.at(-1) ?? word));
}

/** "Lea (vocals)" and "Lea M. (keys)" in a line-up are two, also where one of them has no other name. */
export function areTwo(
  one: Pick<ReadPerformer, 'name' | 'role'>,
  other: Pick<ReadPerformer, 'name' | 'role'>,
): boolean {
  const haveRoles = one.role !== '' && other.role !== '' && squash(one.role) !== squash(other.role);
  return !canBeOne(one.name, other.name) || (haveRoles && squash(one.name) !== squash(other.name));
}

/** Those of several namesakes whom a text may mean: whose other names it says, else who has no other, else all. */
export function narrowNamesakes(text: string, namesakes: readonly ReadPerformer[]): ReadPerformer[] {
  const words = wordsOf(text);
  const shared = namesakes.flatMap(({ name }) => wordsOf(name).map((word) => word.text));
  const isOwn = (word: Token) => shared.filter((it) => it === word.text).length === 1;
  const named = namesakes.filter(({ name }) =>
    wordsOf(name).some((word) => isOwn(word) && says(words, word)),
  );
  if (named.length > 0) return named;
  const whole = namesakes.filter(({ name }) => wordsOf(name).every((word) => says(words, word)));
  return whole.length > 0 ? whole : [...namesakes];
}

/** Of several whom a first name may mean, the one that the engineer says, or the first as a guess that is asked. */
export function askNamesake(
  work: Work,
  text: string,
  at: LineRef | null,
  namesakes: readonly ReadPerformer[],
): ReadPerformer | null {
  const [first, second, ...others] = namesakes;
  if (!first || !second) return first ?? null;
  const option = ({ name }: ReadPerformer) => ({ value: name, label: name });
  const answer = work.asker.ask({
    matter: 'namesake',
    at,
    part: squash(text).slice(0, 40),
    ask: `Several performers are called so. Who is "${shorten(tidy(text))}"?`,
    options: [option(first), option(second), ...others.map(option)],
    guessConfidence: 1 / namesakes.length,
    weight: weights.performerGuess,
  });
  return namesakes.find(({ name }) => name === answer) ?? first;
}
