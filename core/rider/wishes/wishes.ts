import type { Amount } from '../../show/words.ts';
import type { ReadAmount } from '../language/amounts.ts';
import { type Scale, scaleOfNumbers } from '../language/scale.ts';
import { type Token, tidy, tokenize } from '../language/text.ts';
import type { WorkMix } from '../mixes/build-mixes.ts';
import { shorten, type Work } from '../page/work.ts';
import { weights } from '../questions.ts';
import type { ReadWish } from '../reading.ts';
import { amountAlone, amountBefore, amountOf, lastIsTrailing, trailingNumber } from './wish-amounts.ts';
import { askAmount, askTarget, push, settleScale } from './wish-asking.ts';
import { readCell } from './wish-cells.ts';
import { type Item, isAmount, isNaming, isTarget, subjectsOf, type WishHit } from './wish-item.ts';
import { itemsOf } from './wish-items.ts';
import { isCalledWhole, singular } from './wish-names.ts';
import { hitsIn, withReferences } from './wish-references.ts';
import { readSameAs } from './wish-same-as.ts';
import { isRemark, segmentsOf } from './wish-segments.ts';
import { targetOfItem } from './wish-target.ts';
import { isOnlySometimes, type Turn, turnOf, unknownBeside } from './wish-turns.ts';

/** Reads everything a mix wishes into its rows. */
export function readWishes(work: Work, mixes: WorkMix[]): void {
  work.scale ??= scaleOfMixes(work, mixes);
  // What a mix takes from another is known when that one was read.
  const refers = (mix: WorkMix) => mix.wishTexts.some((text) => isReference(work, text));
  for (const mix of [...mixes].sort((a, b) => Number(refers(a)) - Number(refers(b)))) {
    for (const cell of mix.cells) readCell(work, mix, cell);
    for (const text of mix.wishTexts) readWishText(work, mixes, mix, text, null);
    for (const text of mix.exclusionTexts) readWishText(work, mixes, mix, text, 'none');
  }
}

/** The scale of the numbers in cells, or of those that most wishes of the texts end with. */
function scaleOfMixes(work: Work, mixes: readonly WorkMix[]): Scale | null {
  const bare = mixes.flatMap((mix) => mix.cells.map(({ text }) => text.trim())).filter(isBareNumber);
  if (bare.length > 0) return scaleOfNumbers(bare);
  const numbers = mixes.flatMap((mix) => numbersOf(work, mix));
  if (numbers.filter((number) => /^[-+−]/.test(number)).length > 1) return 'db';
  return numbers.length < fewestNumbers ? null : (scaleOfNumbers(numbers) ?? { most: 10 });
}

/** The numbers that the wishes of a mix end with, where most of them do. */
function numbersOf(work: Work, mix: WorkMix): string[] {
  const pieces = mix.wishTexts.flatMap((text) => segmentsOf(work, text));
  const numbers = pieces
    .filter((piece) => !isCalledWhole(work, piece))
    .flatMap((piece) => trailingNumber(piece) ?? []);
  return numbers.length * 2 < pieces.length ? [] : numbers;
}

const isBareNumber = (text: string) => /^[+\-−]?\s?\d{1,3}(?:[.,]\d+)?$/.test(text);

/** Fewer numbers behind sources may as well be the numbers of guitars. */
const fewestNumbers = 4;

const isReference = (work: Work, text: string) =>
  hitsIn(work, tokenize(text))
    .slice(0, 2)
    .some((hit) => hit.senses[0]?.meaning === 'same as');

/** Splits a text of wishes at commas, and each piece at its "and". */
function readWishText(
  work: Work,
  mixes: readonly WorkMix[],
  mix: WorkMix,
  text: string,
  fixed: Amount | null,
): void {
  let label: Amount | null = null;
  let only = false;
  for (const [at, segment] of segmentsOf(work, text).entries()) {
    if (at > 0 && isRemark(segment)) continue;
    const colon = /^([^:]{1,30}):\s*(.*)$/.exec(segment);
    // "Bajo: mucho" is a bass that is wanted loud: an amount behind the colon is no amount of an amount.
    const isOfSource = amountAlone(work, colon?.[2] ?? '') !== null;
    const labelled = colon?.[1] && !isOfSource ? amountAlone(work, colon[1]) : null;
    if (labelled) label = labelled;
    const isOwn = colon?.[1] && !isOfSource ? !namesSource(work, colon[1]) : false;
    // "Only needs a mono mix: click, bass": what is before the colon names nothing that is heard.
    const body = colon && (labelled || (isOwn && colon[2] !== '')) ? (colon[2] ?? '') : segment;
    if (body === '') continue;
    const from = mix.read.wishes.length;
    const chain = readChain(work, mixes, mix, body, fixed ?? label ?? (only ? 'only' : null));
    // What this piece wished without an amount may get one from the next.
    const isUnsaid = label === null && (chain === null || chain === 'some');
    if (mix.read.wishes.length > from || chain !== null) {
      mix.lastWishes = isUnsaid ? mix.read.wishes.slice(from) : [];
      mix.unsaidWishes = chain === null && isUnsaid ? [...mix.unsaidWishes, ...mix.lastWishes] : [];
    }
    only = chain === 'only' || (only && chain === null);
  }
}

const namesSource = (work: Work, text: string) => {
  const tokens = tokenize(text);
  return (
    hitsIn(work, tokens).some((hit) => !isAmount(hit) && subjectsOf(hit)[0] !== 'hedge') ||
    tokens.some((token) => work.tongue.names.has(token.text))
  );
};

/** One piece between commas: items joined by "and" share the amount of the one that says it. */
function readChain(
  work: Work,
  mixes: readonly WorkMix[],
  mix: WorkMix,
  text: string,
  given: Amount | null,
): Amount | null {
  const tokens = tokenize(text);
  const hits = hitsIn(work, tokens);
  const mark = hits.find((hit) => hit.senses[0]?.subject === 'mark');
  if (mark?.senses[0]?.meaning === 'same as' && hits.indexOf(mark) <= 1) {
    const rest = readSameAs(work, mixes, mix, text, tokens, mark);
    if (rest !== null) {
      if (rest !== '') readChain(work, mixes, mix, rest, given);
      return null;
    }
  }
  if (mark?.senses[0]?.meaning === 'open') {
    readOpen(work, mixes, mix, text);
    return null;
  }
  if (mark?.senses[0]?.meaning === 'spacer' && hits.length === 1) return null;
  const except = hits.find((hit) => hit.senses[0]?.subject === 'except');
  const much = except ? amountBehind(work, text, tokens, except) : null;
  if (much && except) {
    const before = text.slice(0, tokens[except.from]?.start);
    if (tidy(before) !== '') {
      const from = mix.read.wishes.length;
      readChain(work, mixes, mix, before, given);
      mix.lastWishes = mix.read.wishes.slice(from);
    }
    return readChain(work, mixes, mix, much, null);
  }
  if (except) {
    const start = tokens[except.from]?.start ?? 0;
    const end = tokens[except.to - 1]?.end ?? 0;
    const before = tidy(text.slice(0, start));
    // "A bit of everything but the click" says how much, too.
    const isAll = except.senses[0]?.meaning === 'all except';
    const all = isAll ? `${amountAlone(work, before) ? before : ''} everything` : before;
    // "Baixo fora": nothing is left out of it, it is left out.
    const isOut = tokens[except.to] === undefined && except.senses[0]?.meaning === 'except';
    const said = all === '' ? null : readChain(work, mixes, mix, all, isOut ? 'none' : given);
    // "No drums but the kick": what is left out of silence is heard.
    const left = said === 'none' ? null : 'none';
    for (const part of segmentsOf(work, text.slice(end))) readChain(work, mixes, mix, part, left);
    return null;
  }
  const turn = turnOf(work, text, tokens, hits);
  if (turn) return readTurn(work, mixes, mix, text, turn, given);
  const all = allBehind(work, mix, text, tokens, hits);
  if (all) {
    const first = all.isOfList ? mix.unsaidWishes[0] : undefined;
    const from = first ? mix.read.wishes.indexOf(first) : mix.read.wishes.length;
    if (all.before !== '') readChain(work, mixes, mix, all.before, given);
    for (const wish of mix.read.wishes.slice(from))
      Object.assign(wish, { amount: all.amount, levelDb: null });
    return all.amount;
  }
  const items = withReferences(work, mix, itemsOf(work, text, tokens, hits));
  const amounts = items.map((item) => amountOf(work, item));
  const said = amounts.find((amount) => amount !== null) ?? null;
  let first: Amount | null = null;
  items.forEach((item, at) => {
    const before = amountBefore(items, amounts, at);
    const own =
      amounts[at] ??
      before ??
      (at < items.length - 1 &&
      amounts.slice(0, at).every((amount) => amount === null) &&
      lastIsTrailing(items, amounts)
        ? said
        : null);
    const amount: ReadAmount = own ?? { amount: given ?? 'some', levelDb: null, doubt: '' };
    const settled: ReadAmount =
      given === 'none' || (given === 'only' && own === null)
        ? { amount: given, levelDb: null, doubt: '' }
        : amount;
    first ??= settled.amount;
    readItem(
      work,
      mix,
      item,
      settled.doubt === ''
        ? settled
        : settleScale(
            work,
            settled.amount === null ? String(settled.levelDb) : item.text.replace(/[^\d.-]/g, ''),
            settled,
          ),
      own !== null || given !== null,
    );
  });
  // A level in dB is an amount that was said, too.
  return said?.amount === 'only' ? 'only' : said === null ? null : (first ?? 'lots');
}

/** "But not too loud" takes nothing out: without "but" it says how loud. Null where something is taken out. */
function amountBehind(work: Work, text: string, tokens: readonly Token[], except: WishHit): string | null {
  if (except.to - except.from < 2) return null;
  const behind = text.slice(tokens[except.from + 1]?.start);
  return amountAlone(work, behind) ? behind : null;
}

/** Both sides of where a wish turns. What is measured by another source is asked about. */
function readTurn(
  work: Work,
  mixes: readonly WorkMix[],
  mix: WorkMix,
  text: string,
  { kind, before, behind }: Turn,
  given: Amount | null,
): Amount | null {
  const from = mix.read.wishes.length;
  const said = readChain(work, mixes, mix, before, given);
  if (kind === 'manner') return said;
  if (kind === 'level') {
    const asked = askAmount(work, mix, text, null);
    for (const wish of mix.read.wishes.slice(from)) Object.assign(wish, asked);
    return said;
  }
  const amount = { but: null, without: 'none', than: 'some' } as const;
  readChain(work, mixes, mix, behind, amount[kind]);
  return said;
}

/** `isTold` is false where the wish says no amount: words that nobody knows may then be one. */
function readItem(work: Work, mix: WorkMix, item: Item, amount: ReadAmount, isTold: boolean): void {
  const target = targetOfItem(work, mix, item);
  if (target) {
    const isDoubtful = isOnlySometimes(work, item) || (!isTold && maySayAmount(work, item, target));
    const { amount: much, levelDb } = isDoubtful
      ? askAmount(work, mix, item.text, isTold ? null : amount.amount)
      : amount;
    push(mix, item.text, target, much, levelDb);
    return;
  }
  const says = item.hits.filter((hit) => isTarget(hit));
  const words = item.tokens.filter(
    (token, at) =>
      token.kind === 'word' && !item.hits.some((hit) => at >= hit.from && at < hit.to && !isNaming(hit)),
  );
  if (says.length === 0 && words.length === 0) {
    amendLast(mix, amount);
    return;
  }
  const effects = says.some((hit) =>
    hit.senses.some((sense) => sense.meaning === 'effects' || sense.meaning === 'effect return'),
  );
  if (effects) {
    mix.read.notes = mix.read.notes === '' ? item.text : `${mix.read.notes}; ${item.text}`;
    return;
  }
  // What the list does not hold cannot be heard anyway.
  if (amount.amount === 'none' && says.length > 0) return;
  askTarget(work, mix, item.text, amount, item.text);
}

/**
 * "Keys, bass and vocals, all medium", "keys, bass and vocals all medium": an amount for all that were just named, and
 * what is named right before it. Null where no such amount stands at the end.
 */
function allBehind(
  work: Work,
  mix: WorkMix,
  text: string,
  tokens: readonly Token[],
  hits: readonly WishHit[],
): { before: string; amount: Amount; isOfList: boolean } | null {
  const all = hits.find((hit) =>
    hit.senses.some(({ subject, meaning }) => subject === 'group' && meaning === 'everything'),
  );
  const [start, end] = all ? [tokens[all.from]?.start, tokens[all.to]?.start] : [];
  if (!all || start === undefined || end === undefined) return null;
  const isNamed = hits.some((hit) => hit.to <= all.from && isTarget(hit));
  if (!isNamed && (all.from > 0 || mix.unsaidWishes.length < 2)) return null;
  const before = isNamed ? text.slice(0, start) : '';
  const amount = amountAlone(work, text.slice(end));
  return amount && { before, amount, isOfList: !isNamed || hasJoiner.test(before) };
}

const hasJoiner = /\s(?:and|und|et|y|e|en|&|\+)\s/i;

/** "Bass, but not too much": an amount behind a wish that said none belongs to it. */
function amendLast(mix: WorkMix, amount: ReadAmount): void {
  for (const wish of mix.lastWishes) Object.assign(wish, { amount: amount.amount, levelDb: amount.levelDb });
}

/** Words beside a source that are neither an amount nor part of what the lines are called. */
function maySayAmount(work: Work, item: Item, target: ReadWish['target']): boolean {
  const words = unknownBeside(work, item);
  if (words.length === 0) return false;
  const inputs = work.inputs.filter(
    (input) => target.of !== 'inputs' || target.inputKeys.includes(input.read.key),
  );
  return words.some(
    (word) =>
      !inputs.some((input) => input.name.tokens.some((token) => singular(token.text) === singular(word))),
  );
}

/** "tbd", "standard": nothing to go by; the engineer may say it. */
function readOpen(work: Work, mixes: readonly WorkMix[], mix: WorkMix, text: string): void {
  const answer = work.asker.ask({
    matter: 'open mix',
    at: mix.read.lines[0] ?? null,
    part: String(mix.read.number),
    ask: `${mix.read.label} is left open ("${shorten(text)}"). What shall it hold?`,
    options: [
      { value: 'on the day', label: 'Settled on the day' },
      { value: 'everything', label: 'Everything' },
    ],
    freeText: true,
    guessConfidence: 0.5,
    weight: weights.openMix,
  });
  if (answer === 'everything') push(mix, text, { of: 'everything' }, 'some', null);
  else if (answer !== null && answer !== 'on the day') readWishText(work, mixes, mix, answer, null);
}
