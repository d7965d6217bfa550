import { factsOfKind, type SourceKind } from '../../show/source-kinds.ts';
import type { Amount } from '../../show/words.ts';
import { type ReadAmount, scaledAmount, signAmount } from '../language/amounts.ts';
import { findHits } from '../language/lexicon.ts';
import { groupOfStem, type Tongue } from '../language/source-name.ts';
import { type Token, tokenize } from '../language/text.ts';
import { wishWords } from '../language/vocabulary.ts';
import type { Work } from '../page/work.ts';
import type { Stem } from '../words/sources.ts';
import { type Item, isAmount, isTarget, subjectsOf, type WishHit } from './wish-item.ts';
import { isCalledWhole, singular } from './wish-names.ts';

export function amountAlone(work: Work, text: string): Amount | null {
  const tokens = tokenize(text);
  const hits = findHits(wishWords, tokens, work.tongue.spoken, work.tongue.names);
  const amount = hits.flatMap((hit) => hit.senses).find((sense) => sense.subject === 'amount');
  const other = hits.some((hit) =>
    hit.senses.every((sense) => sense.subject !== 'amount' && sense.subject !== 'hedge'),
  );
  const isWhole = tokens.every(
    (token, at) => token.kind !== 'word' || hits.some((hit) => hit.from <= at && at < hit.to),
  );
  return amount && isWhole && !other ? (amount.meaning as Amount) : null;
}

/**
 * A word that is a source too ("bajo", "piano", "alto") is the amount right behind another source ("voz bajo"), behind
 * itself ("bajo bajo"), and where the list has no such source ("o trompete baixo").
 */
export function settleAmounts(work: Work, tokens: readonly Token[], hits: readonly WishHit[]): WishHit[] {
  const settled: WishHit[] = [];
  for (const hit of hits) settled.push(settleAmount(work, tokens, hits, settled, hit));
  return settled;
}

function settleAmount(
  work: Work,
  tokens: readonly Token[],
  hits: readonly WishHit[],
  settled: readonly WishHit[],
  hit: WishHit,
): WishHit {
  const group = groupOf(hit);
  if (group === null) return hit;
  const senseOf = (subject: string) => hit.senses.filter((sense) => sense.subject === subject);
  // "Met" is short for the metronome, and "with" before anything else.
  const isFollowed = hits.some((other) => other.from >= hit.to && (isTarget(other) || isAmount(other)));
  if (senseOf('hedge').length > 0 && isFollowed) return { ...hit, senses: senseOf('hedge') };
  if (senseOf('amount').length === 0) return hit;
  const before =
    settled.findLast((other) => !isHedge(other) && !isOwner(other)) ?? settled.findLast(isOwnSource);
  const isBehind =
    before !== undefined &&
    !tokens.slice(before.to, hit.from).some(joins) &&
    !prepositions.test(tokens[hit.from - 1]?.text ?? '') &&
    (isApart(before, group) || isSameWord(tokens, before, hit));
  const isListed = work.inputs.some(({ read, name }) =>
    senseOf('source').some(
      ({ meaning }) =>
        read.kind === meaning ||
        name.stem === meaning ||
        (group === 'bass' && groupOfKind(read.kind) === group),
    ),
  );
  const others = hits.some((other) => other !== hit && isTarget(other));
  if (!isBehind && (isListed || !others)) return hit;
  return { ...hit, senses: senseOf('amount') };
}

const groupOfKind = (kind: SourceKind) => factsOfKind(kind).group;
const isHedge = (hit: WishHit) => subjectsOf(hit).every((subject) => subject === 'hedge');
/** "Dela", "own": whose something is, not what. */
const isOwner = (hit: WishHit) => subjectsOf(hit)[0] === 'self';
const isOwnSource = (hit: WishHit) => isOwner(hit) && /^own ./.test(hit.senses[0]?.meaning ?? '');

/** "Voz y bajo", "voz + bajo", "voz de bajo": the word behind stands for itself. */
const joins = ({ text }: Token) => /^(?:and|und|et|y|e|ed|en|i|[+&/])$/.test(text);
const prepositions = /^(?:de|del|di|do|da|des|du|of|von|van|al|alla|con|com|mit|met|with|avec)$/;

/** "Bajo bajo", "bajo (bajo)": nobody names one thing twice. */
function isSameWord(tokens: readonly Token[], before: WishHit, hit: WishHit): boolean {
  const wordOf = ({ to }: WishHit) => singular(tokens[to - 1]?.text ?? '');
  return groupOf(before) !== null && wordOf(before) === wordOf(hit);
}

/** Not "alto" behind "sax", but behind "piano", behind "her voice" and behind "the rest". */
const isApart = (before: WishHit, group: string) =>
  isOwnSource(before) || (groupOf(before) !== null && groupOf(before) !== group);

/** The group of sources that a word names, by a source or all of them; null where it names none. */
function groupOf(hit: WishHit): string | null {
  const stem = stemOf(hit);
  if (stem !== undefined) return groupOfStem(stem);
  return hit.senses.find((sense) => sense.subject === 'group')?.meaning ?? null;
}

const stemOf = (hit: WishHit) =>
  hit.senses.find((sense) => sense.subject === 'source')?.meaning as Stem | undefined;

/** "Lots of kick and snare": the amount before an item is meant for those that follow; that of "kick loud and snare" is not. */
export function amountBefore(
  items: readonly Item[],
  amounts: readonly (ReadAmount | null)[],
  at: number,
): ReadAmount | null {
  const from = amounts.findLastIndex((amount, it) => it < at && amount !== null);
  const item = items[from];
  const target = item?.hits.find(isTarget);
  const said = item?.hits.find(isAmount);
  const isBehind = item && target && (said ? said.from >= target.to : /[\d+!%)-]$/.test(item.text));
  return isBehind ? null : (amounts[from] ?? null);
}

/** "kick and snare loud": the amount behind the last item is meant for all. */
export const lastIsTrailing = (items: readonly Item[], amounts: readonly (ReadAmount | null)[]) => {
  const last = items.at(-1);
  const amountHit = last?.hits.findIndex(isAmount) ?? -1;
  const targetHit = last?.hits.findIndex((hit) => isTarget(hit)) ?? -1;
  return (
    amounts.filter((amount) => amount !== null).length === 1 &&
    amounts.at(-1) !== null &&
    (targetHit >= 0 || (last?.hits[amountHit]?.from ?? 0) > 0) &&
    (amountHit > targetHit ||
      /(?:%|\+|\ddb|\/10|percent|prozent|[-−+]\d{1,2})\)?$/.test(
        last?.text.toLowerCase().replace(/\s/g, '') ?? '',
      ))
  );
};

/** The amount an item says: in a sign ("+++", "-6 dB", "80 %"), or in a word. No word outweighs "no" and "only". */
export function amountOf(work: Work, item: Item): ReadAmount | null {
  const sign = numberBehind(work, item) ?? signIn(item.text, work.tongue.legend);
  if (sign) return sign;
  const words = amountWordsOf(item);
  if (words.length === 0) return null;
  const strict = words.find((word) => word === 'none') ?? words.find((word) => word === 'only');
  if (strict === 'only' && words.includes('little')) return { amount: 'little', levelDb: null, doubt: '' };
  const little = words.find((word) => word === 'little');
  const lots = words.find((word) => word === 'lots');
  return { amount: strict ?? little ?? lots ?? words[0] ?? 'some', levelDb: null, doubt: '' };
}

/** What "not" makes of the amount right behind it: "not a lot of", "not too quiet". */
const negated: Partial<Record<Amount, Amount>> = { lots: 'little', some: 'little', little: 'some' };

const more =
  /^(?:more|louder|higher|hotter|mehr|lauter|plus|fort|mas|alto|fuerte|piu|meer|harder|luider|mais)$/;

/** The amounts of an item in their order, two that belong together as one: "not a lot", "a tad louder". */
function amountWordsOf(item: Item): Amount[] {
  const hits = item.hits.filter(isAmount);
  const amounts: Amount[] = [];
  for (let at = 0; at < hits.length; at++) {
    const [hit, next] = [hits[at], hits[at + 1]];
    if (!hit) break;
    const amount = amountOfHit(hit);
    const joined = next && isRightBehind(item, hit, next) ? together(item, amount, next) : null;
    amounts.push(joined ?? amount);
    if (joined) at += 1;
  }
  return amounts;
}

const amountOfHit = (hit: WishHit) =>
  hit.senses.find((sense) => sense.subject === 'amount')?.meaning as Amount;

/** Only words that say nothing by themselves stand between. */
const isRightBehind = (item: Item, hit: WishHit, next: WishHit) =>
  item.hits.every((it) => it.to <= hit.to || it.from >= next.from || subjectsOf(it)[0] === 'hedge') &&
  item.tokens
    .slice(hit.to, next.from)
    .every(
      ({ kind }, at) =>
        kind === 'mark' || item.hits.some((it) => it.from <= hit.to + at && hit.to + at < it.to),
    );

function together(item: Item, amount: Amount, next: WishHit): Amount | null {
  const behind = amountOfHit(next);
  if (amount === 'none') return negated[behind] ?? null;
  const isMore = item.tokens.slice(next.from, next.to).some((token) => more.test(token.text));
  return amount === 'little' && behind === 'lots' && isMore ? 'some' : null;
}

/** "Keys 8", "bass +3": a bare number behind a source, where numbers have a scale and no line is called so. */
function numberBehind(work: Work, item: Item): ReadAmount | null {
  const number = trailingNumber(item.text);
  if (!number || isCalledWhole(work, item.text)) return null;
  if (work.scale !== null) return scaledAmount(number, work.scale);
  return number === '0' ? { amount: 'none', levelDb: null, doubt: '' } : null;
}

/** The number that a wish ends with, or null. */
export const trailingNumber = (text: string): string | null =>
  /\p{L}.*?[\s(=:@]([+\-−]?\s?\d{1,3}(?:[.,]\d)?)\)?$/u.exec(text.trim())?.[1] ?? null;

function signIn(text: string, legend: Tongue['legend']): ReadAmount | null {
  const db = /([+-]?\s?\d+(?:[.,]\d+)?)\s*db\b/i.exec(text);
  if (db?.[1]) return signAmount(`${db[1].replace(/\s/g, '')}dB`, false);
  const share = /(\d{1,3})\s*(?:%|percent|prozent|\/\s*(?:10|5|100)\b)/i.exec(text);
  if (share) return signAmount(share[0], false);
  // "Bass!!"
  if (/!{2,}\)?$/.test(text)) return { amount: 'lots', levelDb: null, doubt: '' };
  const plus = /(?:^|\s|\()(\+{1,4})(?:\)|\s|$)|(?<=\p{L})(\+{1,4})(?=\s|$)/u.exec(text);
  const signs = plus?.[1] ?? plus?.[2];
  const told = signs ? legend.get(signs) : undefined;
  if (told) return { amount: told, levelDb: null, doubt: '' };
  if (signs) return signAmount(signs, false);
  if (/\s-?\s?(?:inf|∞)(?:\s?db)?$/i.test(text)) return { amount: 'none', levelDb: null, doubt: '' };
  const minus = /(?:\s|\()(-{1,3})\)?$/.exec(text);
  if (minus) return { amount: 'none', levelDb: null, doubt: '' };
  const number = /(?:\s|[(=:@])(-?\d{1,3})\)?$/.exec(text);
  if (number?.[1] && (/[(=:@]\s*-?\d+\)?$/.test(text) || Number(number[1]) < 0 || Number(number[1]) > 9))
    return signAmount(number[1], true);
  return null;
}
