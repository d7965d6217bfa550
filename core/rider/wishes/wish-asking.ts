import { factsOfKind } from '../../show/source-kinds.ts';
import type { Amount } from '../../show/words.ts';
import type { ReadAmount } from '../language/amounts.ts';
import { findHits } from '../language/lexicon.ts';
import { fold, squash, tidy, tokenize } from '../language/text.ts';
import { wishWords } from '../language/vocabulary.ts';
import type { WorkMix } from '../mixes/build-mixes.ts';
import { shorten, type Work } from '../page/work.ts';
import { weights } from '../questions.ts';
import type { ReadWish } from '../reading.ts';
import type { WishHit } from './wish-item.ts';
import { targetsOf } from './wish-target.ts';

export function push(
  mix: WorkMix,
  words: string,
  target: ReadWish['target'],
  amount: Amount | null,
  levelDb: number | null,
): void {
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

/** How much words mean that nobody knows, or that measure one source by another. `guess` is some where null. */
export function askAmount(work: Work, mix: WorkMix, words: string, guess: Amount | null): WishAmount {
  const first = guess ?? 'some';
  const others = amountsAsked.filter((amount) => amount !== first);
  const answer = work.asker.ask({
    matter: 'how much',
    at: mix.read.lines[0] ?? null,
    part: `${mix.read.number}.${squash(words).slice(0, 40)}`,
    ask: `${mix.read.label} wishes "${shorten(words)}". How much is that?`,
    options: [
      { value: first, label: first },
      { value: others[0] ?? 'none', label: others[0] ?? 'none' },
      ...others.slice(1).map((value) => ({ value, label: value })),
    ],
    guessConfidence: 0.5,
    weight: weights.wishAmount,
  });
  const amount = amountsAsked.find((it) => it === answer) ?? first;
  return { amount, levelDb: null };
}

type WishAmount = Pick<ReadWish, 'amount' | 'levelDb'>;
const amountsAsked: readonly Amount[] = ['lots', 'some', 'little', 'none', 'only'];

export function askTarget(
  work: Work,
  mix: WorkMix,
  words: string,
  amount: ReadAmount,
  heading: string,
): void {
  const line = mix.read.lines[0] ?? null;
  const unknown = unknownWords(work, words);
  const answer = work.asker.ask({
    matter: 'wish',
    at: line,
    part: `${mix.read.number}.${squash(heading).slice(0, 40)}`,
    ask: `${mix.read.label} wishes "${shorten(words)}", but no line of the list is called so. What is meant?`,
    words: unknown,
    options: [
      { value: 'leave out', label: 'Leave the wish out' },
      { value: 'everything', label: 'Everything' },
      ...groupsOfList(work),
      ...linesAlike(work, unknown),
    ],
    freeText: true,
    guessConfidence: 0.3,
    weight: weights.wishTarget,
  });
  if (answer === null || answer === 'leave out') return;
  const target = answer === 'everything' ? { of: 'everything' as const } : targetOfAnswer(work, mix, answer);
  if (target) push(mix, words, target, amount.amount, amount.levelDb);
}

/** What an answer names: a line by its key, or what it says, piece by piece ("Ana, Bea and Caz"). */
function targetOfAnswer(work: Work, mix: WorkMix, answer: string): ReadWish['target'] | null {
  const chosen = work.inputs.find((input) => input.read.key === answer);
  if (chosen) return { of: 'inputs', inputKeys: [chosen.read.key] };
  const whole = targetsOf(work, mix, answer);
  const pieces = answer.split(/\s*(?:[,;&+]|\band\b)\s*/i).filter((piece) => piece !== '');
  if (pieces.length < 2) return whole;
  const keys = pieces.flatMap((piece) => {
    const target = targetsOf(work, mix, piece);
    return target?.of === 'inputs' ? target.inputKeys : [];
  });
  return keys.length > 0 ? { of: 'inputs', inputKeys: [...new Set(keys)] } : whole;
}

const articles = /^(?:the|all|der|die|das|les?|la|el|los|las|il|lo|gli|i|de|het|os?|as?)\s+(?=\S)/i;

/** The words of a wish that have no meaning: without its amount, and without an article. */
function unknownWords(work: Work, text: string): string {
  const tokens = tokenize(text);
  // A taught word for lines that this list has not is as unknown as any.
  const all: WishHit[] = findHits(wishWords, tokens, work.tongue.spoken, work.tongue.names);
  const hits = all.filter(({ senses }) => senses[0]?.subject !== 'lines');
  const left = tokens.filter(
    (token, at) => token.kind === 'word' && !hits.some((hit) => at >= hit.from && at < hit.to),
  );
  const [from, to] = [left[0]?.start, left.at(-1)?.end];
  return (from === undefined ? tidy(text) : tidy(text.slice(from, to))).replace(articles, '').slice(0, 200);
}

/** Groups that a word may well stand for: those of which the list has several, the largest first. */
function groupsOfList(work: Work): { value: string; label: string }[] {
  const count = (kinds: readonly string[]) =>
    work.inputs.filter(
      ({ read }) => kinds.includes(read.kind) || kinds.includes(factsOfKind(read.kind).group),
    ).length;
  return groupsAsked
    .map((group) => ({ group, lines: count(group === 'backing vocals' ? ['backing vocal'] : [group]) }))
    .filter(({ lines }) => lines > 1)
    .sort((a, b) => b.lines - a.lines)
    .slice(0, 3)
    .map(({ group, lines }) => ({ value: group, label: `${group} (${lines} lines)` }));
}

const groupsAsked = ['backing vocals', 'vocals', 'guitars', 'keys', 'brass', 'strings', 'drums'] as const;

/** Lines of the list, those first that have most pairs of letters in common with a word. */
function linesAlike(work: Work, text: string): { value: string; label: string }[] {
  const wanted = letterPairs(text);
  const likeness = (name: string) => [...letterPairs(name)].filter((pair) => wanted.has(pair)).length;
  return work.inputs
    .map(({ read }) => ({ read, alike: likeness(read.name) }))
    .filter(({ alike }) => alike > 0)
    .sort((a, b) => b.alike - a.alike || a.read.channel - b.read.channel)
    .slice(0, 4)
    .map(({ read }) => ({ value: read.key, label: `${read.channel} ${shorten(read.name)}` }));
}

function letterPairs(text: string): Set<string> {
  const letters = squash(text);
  return new Set(
    Array.from({ length: Math.max(0, letters.length - 1) }, (_, at) => letters.slice(at, at + 2)),
  );
}
