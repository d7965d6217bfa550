import type { Amount } from '../show/words.ts';
import type { ReadAmount } from './amounts.ts';
import type { WorkMix } from './build-mixes.ts';
import { findHits } from './lexicon.ts';
import { weights } from './questions.ts';
import { fold, type Token, tidy, tokenize } from './text.ts';
import { wishWords } from './vocabulary.ts';
import { amountAlone, amountOf, lastIsTrailing, settleAmounts } from './wish-amounts.ts';
import { askTarget, push, settleScale } from './wish-asking.ts';
import { readCell } from './wish-cells.ts';
import { type Item, isAmount, isTarget, type WishHit } from './wish-item.ts';
import { withNamesWhole } from './wish-names.ts';
import { readSameAs } from './wish-same-as.ts';
import { targetOfItem } from './wish-target.ts';
import { shorten, type Work } from './work.ts';

/** Reads everything a mix wishes into its rows. */
export function readWishes(work: Work, mixes: WorkMix[]): void {
  const areLevels = mixes.some((mix) => mix.cells.some(({ text }) => /^\s*[-−]\s*\d/.test(text)));
  for (const mix of mixes) {
    for (const cell of mix.cells) readCell(work, mix, cell, areLevels);
    for (const text of mix.wishTexts) readWishText(work, mixes, mix, text, null);
    for (const text of mix.exclusionTexts) readWishText(work, mixes, mix, text, 'none');
  }
}

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
  for (const segment of segmentsOf(work, text)) {
    const colon = /^([^:]{1,30}):\s*(.*)$/.exec(segment);
    const labelled = colon?.[1] ? amountAlone(work, colon[1]) : null;
    if (labelled) label = labelled;
    const body = labelled && colon ? (colon[2] ?? '') : segment;
    if (body === '') continue;
    const chain = readChain(work, mixes, mix, body, fixed ?? label ?? (only ? 'only' : null));
    only = chain === 'only' || (only && chain === null);
  }
}

/** "Because the amp is loud enough": why something is wished wishes nothing. */
const reasons =
  /(?<![\p{L}])(?:because|cause|cos|since (?:he|she|they|i|we|it)|as (?:he|she|they|i|we) (?:is|are|am|has|have|can|hears?)|so (?:that )?(?:he|she|they|i|we) (?:can|could|hears?)|weil|denn|damit|da (?:er|sie|ich|wir)|sonst|parce qu['’]?(?:e|il|elle)?|car il|car elle|pour qu['’]|puisqu['’]?|porque|ya que|pues|perch[eé]|poich[eé]|siccome|omdat|want|zodat|anders|pois|j[aá] que|para que)(?![\p{L}])[^,;.\n]*/giu;

/** A word with a full stop behind it and another word. */
const stopped = /(?<!\p{L})(\p{L}+)\.\s+(?=\p{L})/gu;
/** Known as they are, and no words by themselves. */
const shortened =
  /^(?:ges|git|guit|gtr|voc|akk|ak|el|kl|gr|perc|trp|tpt|trb|pos|chit|batt|tast|acust|elettr|bat|cl|ch|izq|der|dcha|princ|ppal|lead|st|ac|elec|acou|contrabb?|cb|sass|tamb|fisarm|tromb?|clar|clarin|keyb|acord|acc|trpt|tpa|tbn|perk|schlagz|bck|back|coro?|orq|orch)$/;

/** No word by itself but the beginning of a source's: "contrabb". */
const isCutFromSource = (key: string) =>
  key.length >= 4 &&
  !wishWords.tokens.has(key) &&
  [...wishWords.senses].some(
    ([word, senses]) => word.startsWith(key) && senses.some(({ subject }) => subject === 'source'),
  );

/**
 * "Ges. Merle", "contrabb. pick-up": the full stop of a shortened word ends no wish (common practice). A shortened
 * word is none that is known, but the beginning of one that is.
 */
function withoutShortStops(text: string, { tongue }: Work): string {
  return text.replace(stopped, (whole, word: string) => {
    const key = fold(word);
    if (tongue.names.has(key) || tongue.people.has(key)) return whole;
    return shortened.test(key) || isCutFromSource(key) ? `${word} ` : whole;
  });
}

function segmentsOf(work: Work, text: string): string[] {
  return withoutShortStops(text.replace(/(\d),(\d)/g, '$1.$2').replace(reasons, ''), work)
    .split(/\s*[,;•·\n]\s*|\.\s+(?=\p{L})|\s+\/\s+|(?<=\p{L}{3})\/(?=\p{L}{3})|\s+[-–—]\s+(?=\p{L})/u)
    .map((segment) => tidy(segment.replace(/^[-–*\s]+(?=\p{L})|[.!\s]+$/gu, '')))
    .filter((segment) => segment !== '');
}

/** Words that join items which share an amount. */
const joiners = /^(?:and|und|et|y|e|en|ed|u|ni|nor|or|oder|ou|o|of|plus|&|\+|sowie)$/;

/** One piece between commas: items joined by "and" share the amount of the one that says it. */
function readChain(
  work: Work,
  mixes: readonly WorkMix[],
  mix: WorkMix,
  text: string,
  given: Amount | null,
): Amount | null {
  const { spoken, names } = work.tongue;
  const tokens = tokenize(text);
  const hits = withNamesWhole(work, tokens, settleAmounts(work, findHits(wishWords, tokens, spoken, names)));
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
  if (except) {
    const start = tokens[except.from]?.start ?? 0;
    const end = tokens[except.to - 1]?.end ?? 0;
    const all = except.senses[0]?.meaning === 'all except' ? 'everything' : tidy(text.slice(0, start));
    if (all !== '') readChain(work, mixes, mix, all, given);
    for (const part of segmentsOf(work, text.slice(end))) readChain(work, mixes, mix, part, 'none');
    return null;
  }
  const all = splitAtWith(text, tokens, hits);
  if (all) {
    readChain(work, mixes, mix, all.before, given);
    return readChain(work, mixes, mix, all.behind, null);
  }
  const items = itemsOf(text, tokens, hits, spoken.has('nl'));
  const amounts = items.map((item) => amountOf(item, work.tongue.legend));
  const said = amounts.find((amount) => amount !== null) ?? null;
  let first: Amount | null = null;
  items.forEach((item, at) => {
    const before = amounts.slice(0, at).findLast((amount) => amount !== null) ?? null;
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
    );
  });
  return said?.amount === 'only' ? 'only' : said === null ? null : first;
}

const withWord = /^(?:with|w|mit|avec|con|met|com|but|aber|mais|pero|ma|maar|mas|plus)$/;

/** "A bit of everything with the guitar on top": what is behind "with" has an amount of its own. */
function splitAtWith(
  text: string,
  tokens: readonly Token[],
  hits: readonly WishHit[],
): { before: string; behind: string } | null {
  const all = hits.find((hit) =>
    hit.senses.some(
      ({ subject, meaning }) => subject === 'group' && (meaning === 'everything' || meaning === 'rest'),
    ),
  );
  if (!all) return null;
  const at = tokens.findIndex((token, place) => place >= all.to && withWord.test(token.text));
  const isInside = hits.some((hit) => hit.from < at && at < hit.to);
  const cut = tokens[at];
  if (!cut || isInside || !hits.some((hit) => hit.from > at && isTarget(hit))) return null;
  return { before: text.slice(0, cut.start), behind: text.slice(cut.end) };
}

function itemsOf(text: string, tokens: readonly Token[], hits: readonly WishHit[], dutch: boolean): Item[] {
  const inside = (at: number) => hits.some((hit) => hit.from < at && at < hit.to);
  const cuts: number[] = [];
  tokens.forEach((token, at) => {
    // "of" joins in Dutch only.
    if (!joiners.test(token.text) || inside(at) || (token.text === 'of' && !dutch)) return;
    if (
      token.text === '+' &&
      (tokens[at - 1]?.text === '+' || tokens[at + 1]?.text === '+' || at === tokens.length - 1)
    )
      return;
    if (
      !hits.some((hit) => hit.to <= at && (isTarget(hit) || isAmount(hit))) &&
      !tokens.slice(0, at).some((it) => it.kind === 'word')
    )
      return;
    cuts.push(at);
  });
  const bounds = [-1, ...cuts, tokens.length];
  const items: Item[] = [];
  for (let index = 0; index + 1 < bounds.length; index++) {
    const from = (bounds[index] ?? -1) + 1;
    const to = bounds[index + 1] ?? tokens.length;
    const first = tokens[from];
    const last = tokens[to - 1];
    if (!first || !last || to <= from) continue;
    const own = hits
      .filter((hit) => hit.from >= from && hit.to <= to)
      .map((hit) => ({ ...hit, from: hit.from - from, to: hit.to - from }));
    items.push({ tokens: tokens.slice(from, to), hits: own, text: text.slice(first.start, last.end) });
  }
  return items;
}

function readItem(work: Work, mix: WorkMix, item: Item, amount: ReadAmount): void {
  const target = targetOfItem(work, mix, item);
  if (target) {
    push(mix, item.text, target, amount.amount, amount.levelDb);
    return;
  }
  const says = item.hits.filter((hit) => isTarget(hit));
  const words = item.tokens.filter(
    (token, at) =>
      token.kind === 'word' && !item.hits.some((hit) => at >= hit.from && at < hit.to && !isTarget(hit)),
  );
  if (says.length === 0 && words.length === 0) return;
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
