import type { Amount } from '../show/words.ts';
import type { ReadAmount } from './amounts.ts';
import type { WorkMix } from './build-mixes.ts';
import { weights } from './questions.ts';
import type { ReadWish } from './reading.ts';
import { fold, squash, tidy } from './text.ts';
import { targetsOf } from './wish-target.ts';
import { shorten, type Work } from './work.ts';

export function push(
  mix: WorkMix,
  words: string,
  target: ReadWish['target'],
  amount: Amount | null,
  levelDb: number | null,
): void {
  if (target.of === 'inputs' && target.inputKeys.length === 0) return;
  mix.read.wishes.push({ words: tidy(words), target, amount: levelDb === null ? amount : null, levelDb });
}

/** Levels of bare numbers by the scale the engineer chose. */
export function settleScale(work: Work, text: string, guess: ReadAmount): ReadAmount {
  const answer = work.asker.ask({
    matter: 'scale',
    at: null,
    ask: 'Numbers stand for the amounts, but not their scale. How are they meant?',
    options: [
      { value: 'guess', label: guess.levelDb !== null ? 'Levels in dB' : 'Ten (or a hundred) is the most' },
      { value: 'db', label: 'Levels in dB' },
      { value: 'order', label: 'An order: 1 is the most important' },
    ],
    guessConfidence: 0.6,
    weight: weights.scale,
  });
  const value = Number(fold(text).replace(',', '.'));
  if (answer === 'db' && value <= 20) return { amount: null, levelDb: value, doubt: '' };
  if (answer === 'order')
    return { amount: value <= 3 ? 'lots' : value <= 6 ? 'some' : 'little', levelDb: null, doubt: '' };
  return guess;
}

export function askTarget(
  work: Work,
  mix: WorkMix,
  words: string,
  amount: ReadAmount,
  heading: string,
): void {
  const line = mix.read.lines[0] ?? null;
  const nearest = work.inputs
    .slice(0, 8)
    .map((input) => ({ value: input.read.key, label: `${input.read.channel} ${shorten(input.read.name)}` }));
  const answer = work.asker.ask({
    matter: 'wish',
    at: line,
    part: `${mix.read.number}.${squash(heading).slice(0, 40)}`,
    ask: `${mix.read.label} wishes "${shorten(words)}", but no line of the list is called so. What is meant?`,
    options: [
      { value: 'leave out', label: 'Leave the wish out' },
      { value: 'everything', label: 'Everything' },
      ...nearest,
    ],
    freeText: true,
    guessConfidence: 0.3,
    weight: weights.wishTarget,
  });
  if (answer === null || answer === 'leave out') return;
  const chosen = work.inputs.find((input) => input.read.key === answer);
  const target: ReadWish['target'] | null =
    answer === 'everything'
      ? { of: 'everything' }
      : chosen
        ? { of: 'inputs', inputKeys: [chosen.read.key] }
        : targetsOf(work, mix, answer);
  if (target) push(mix, words, target, amount.amount, amount.levelDb);
}
