import { findHits } from '../language/lexicon.ts';
import type { Token } from '../language/text.ts';
import { turnWords } from '../language/vocabulary.ts';
import type { Work } from '../page/work.ts';
import { type Item, isAmount, isTarget, subjectsOf, type WishHit } from './wish-item.ts';
import { singular } from './wish-names.ts';

/** Words that join items which share an amount. */
const joiners = /^(?:and|und|et|y|e|en|ed|u|ni|ne|nem|nor|or|oder|ou|o|of|plus|&|\+|sowie)$/;

type Span = { from: number; to: number };

/** The items of a piece of text: what stands between "and", between "with", and between sources without either. */
export function itemsOf(
  work: Work,
  text: string,
  tokens: readonly Token[],
  hits: readonly WishHit[],
): Item[] {
  const cuts = [...cutsAtJoiners(work, tokens, hits), ...cutsAtWith(work, tokens, hits)].sort(
    (a, b) => a.from - b.from,
  );
  const items: Item[] = [];
  let from = 0;
  for (const cut of [...cuts, { from: tokens.length, to: tokens.length }]) {
    const item = itemBetween(text, tokens, hits, { from, to: cut.from });
    if (item) items.push(...apart(work, item));
    from = Math.max(from, cut.to);
  }
  return items;
}

function itemBetween(
  text: string,
  tokens: readonly Token[],
  hits: readonly WishHit[],
  { from, to }: Span,
): Item | null {
  const first = tokens[from];
  const last = tokens[to - 1];
  if (!first || !last || to <= from) return null;
  const own = hits
    .filter((hit) => hit.from >= from && hit.to <= to)
    .map((hit) => ({ ...hit, from: hit.from - from, to: hit.to - from }));
  const start = first.start;
  const moved = tokens
    .slice(from, to)
    .map((token) => ({ ...token, start: token.start - start, end: token.end - start }));
  return { tokens: moved, hits: own, text: text.slice(start, last.end) };
}

function cutsAtJoiners(work: Work, tokens: readonly Token[], hits: readonly WishHit[]): Span[] {
  const isDutch = work.tongue.spoken.has('nl');
  // "Of" and "en" join in Dutch only.
  const joins = (word: string) => joiners.test(word) && (isDutch || (word !== 'of' && word !== 'en'));
  return tokens.flatMap((token, at): Span[] => {
    if (!joins(token.text) || isInside(hits, at)) return [];
    const isSign =
      token.text === '+' &&
      (isLevel(tokens, at) ||
        tokens[at - 1]?.text === '+' ||
        tokens[at + 1]?.text === '+' ||
        at === tokens.length - 1);
    if (isSign || betweenSides(hits, at)) return [];
    const isFirst =
      !hits.some((hit) => hit.to <= at && (isTarget(hit) || isAmount(hit))) &&
      !tokens.slice(0, at).some((it) => it.kind === 'word');
    return isFirst ? [] : [{ from: at, to: at + 1 }];
  });
}

/** "Bass +3" is louder, "toms 1 + 2" are two. */
const isLevel = (tokens: readonly Token[], at: number) =>
  tokens[at + 1]?.kind === 'number' && tokens[at - 1]?.kind !== 'number';

const isInside = (hits: readonly WishHit[], at: number) =>
  hits.some((hit) => hit.to - hit.from > 1 && hit.from <= at && at < hit.to);

/** "Tracks left and right" are two sides of one thing. */
function betweenSides(hits: readonly WishHit[], at: number): boolean {
  const isSide = (hit: WishHit | undefined) => hit !== undefined && subjectsOf(hit)[0] === 'side';
  return isSide(hits.find((hit) => hit.to === at)) && isSide(hits.find((hit) => hit.from === at + 1));
}

/** "Vocals with a bit of keys": sources on both sides of "with". */
function cutsAtWith(work: Work, tokens: readonly Token[], hits: readonly WishHit[]): Span[] {
  return findHits(turnWords, tokens, work.tongue.spoken)
    .filter((turn) => turn.senses.some((sense) => sense.meaning === 'with') && turn.certainty === 1)
    .filter(
      ({ from, to }) =>
        !isInside(hits, from) &&
        hits.some((hit) => hit.to <= from && isTarget(hit)) &&
        hits.some((hit) => hit.from >= to && isTarget(hit)),
    );
}

/**
 * "Kick snare vocals": sources side by side with nothing between them are items of their own, where no line is called
 * by both words and neither tells more of the other ("keys vocal" is the voice of who plays the keys).
 */
function apart(work: Work, item: Item): Item[] {
  const targets = item.hits.filter(
    (hit) => subjectsOf(hit).some((it) => it === 'source' || it === 'group') && subjectsOf(hit)[0] !== 'self',
  );
  for (let at = 1; at < targets.length; at++) {
    const [one, two] = [targets[at - 1], targets[at]];
    if (!one || !two || belongTogether(work, item, one, two)) continue;
    const amount = item.hits.find((hit) => hit.from >= one.to && hit.to <= two.from && isAmount(hit));
    const cut = amount && isBehind(item, one, amount) ? amount.to : (amount?.from ?? two.from);
    const before = itemBetween(item.text, item.tokens, item.hits, { from: 0, to: cut });
    const behind = itemBetween(item.text, item.tokens, item.hits, { from: cut, to: item.tokens.length });
    return before && behind ? [before, ...apart(work, behind)] : [item];
  }
  return [item];
}

/** An amount between two sources belongs to the one before where that one has none yet. */
const isBehind = (item: Item, one: WishHit, amount: WishHit) =>
  !item.hits.some((hit) => hit.to <= one.from && isAmount(hit)) && amount.from - one.to <= 1;

const article = /^(?:the|der|die|das|den|la|le|les|el|los|las|il|lo|gli|i|de|het|os?|as?)$/;

function belongTogether(work: Work, { tokens }: Item, one: WishHit, two: WishHit): boolean {
  const wordsOf = (hit: WishHit) =>
    tokens
      .slice(hit.from, hit.to)
      .filter((token) => token.kind !== 'mark')
      .map((token) => singular(token.text));
  const words = [...wordsOf(one), ...wordsOf(two)].filter((word) => !article.test(word));
  const meanings = [one, two].flatMap((hit) => hit.senses.map((sense) => sense.meaning));
  // The rest of a group, everything of somebody's: one tells more of the other.
  if (meanings.some((meaning) => meaning === 'rest' || meaning === 'everything')) return true;
  if (meanings.some((meaning) => /vocal|voice/.test(meaning))) return true;
  return work.inputs.some(({ name }) => {
    const called = name.tokens.map((token) => singular(token.text));
    return words.every((word) => called.includes(word));
  });
}
