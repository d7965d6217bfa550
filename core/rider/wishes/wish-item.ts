import type { Hit } from '../language/lexicon.ts';
import type { Token } from '../language/text.ts';
import type { WorkInput } from '../page/work.ts';
import type { ReadWish } from '../reading.ts';

export type WishHit = Hit<string, string>;

/** One thing that is wished, with the words found in it. */
export type Item = {
  tokens: Token[];
  hits: WishHit[];
  text: string;
  /** Told as the others, all but those named before. */
  isOfRest?: boolean;
};

export const subjectsOf = (hit: WishHit) => hit.senses.map((sense) => sense.subject);
export const isTarget = (hit: WishHit) =>
  subjectsOf(hit).some((subject) => subject === 'group' || subject === 'source' || subject === 'self');
/** Names something of the list, or which of several it is: "the electric", "la española". */
export const isNaming = (hit: WishHit) =>
  isTarget(hit) || (subjectsOf(hit).includes('part') && !subjectsOf(hit).includes('amount'));
export const isAmount = (hit: WishHit) =>
  subjectsOf(hit).includes('amount') &&
  !subjectsOf(hit).includes('source') &&
  !subjectsOf(hit).includes('group');

/** "The rest", "other": everything, or of the sources named beside it those that are not the listener's own. */
export const isRest = (hit: WishHit) =>
  hit.senses.some((sense) => sense.subject === 'group' && sense.meaning === 'rest');

export const keysOf = (inputs: readonly WorkInput[]): ReadWish['target'] => ({
  of: 'inputs',
  inputKeys: inputs.map((input) => input.read.key),
});
