import type { Amount } from '../show/words.ts';
import { cellAmount, type ReadAmount, signAmount } from './amounts.ts';
import type { WorkMix } from './build-mixes.ts';
import { findHits } from './lexicon.ts';
import { performerNamed } from './performers.ts';
import { weights } from './questions.ts';
import type { ReadWish } from './reading.ts';
import { fold, squash, type Token, tidy, tokenize } from './text.ts';
import { wishWords } from './vocabulary.ts';
import { type Item, isAmount, isTarget, targetOfItem, targetsOf, type WishHit } from './wish-target.ts';
import { shorten, type Work, type WorkInput } from './work.ts';

/** Reads everything a mix wishes into its rows. */
export function readWishes(work: Work, mixes: WorkMix[]): void {
  const areLevels = mixes.some((mix) => mix.cells.some(({ text }) => /^\s*[-−]\s*\d/.test(text)));
  for (const mix of mixes) {
    for (const cell of mix.cells) readCell(work, mix, cell, areLevels);
    for (const text of mix.wishTexts) readWishText(work, mixes, mix, text, null);
    for (const text of mix.exclusionTexts) readWishText(work, mixes, mix, text, 'none');
  }
}

function push(
  mix: WorkMix,
  words: string,
  target: ReadWish['target'],
  amount: Amount | null,
  levelDb: number | null,
): void {
  if (target.of === 'inputs' && target.inputKeys.length === 0) return;
  mix.read.wishes.push({ words: tidy(words), target, amount: levelDb === null ? amount : null, levelDb });
}

/** A cell where an input's row meets a mix's column. A bare number has no scale: that is asked once. */
function readCell(work: Work, mix: WorkMix, cell: WorkMix['cells'][number], areLevels: boolean): void {
  const read = (areLevels ? bareLevel(cell.text) : null) ?? cellAmount(cell.text, work.tongue);
  const words = `${cell.heading} ${cell.text}`;
  if (!read) {
    if (cell.input) note(work, mix, cell.input.found.at, words);
    return;
  }
  const settled = read.doubt === '' ? read : settleScale(work, cell.text, read);
  if (cell.input)
    push(mix, words, { of: 'inputs', inputKeys: [cell.input.read.key] }, settled.amount, settled.levelDb);
  else {
    const inputs = targetsOf(work, mix, cell.heading) ?? targetsByNumber(work, cell.numbers ?? []);
    if (inputs) push(mix, words, inputs, settled.amount, settled.levelDb);
    else askTarget(work, mix, words, settled, cell.heading);
  }
}

function targetsByNumber(work: Work, numbers: readonly number[]): ReadWish['target'] | null {
  const inputs = work.inputs.filter((input) => numbers.includes(input.read.channel));
  return inputs.length === 0 ? null : { of: 'inputs', inputKeys: inputs.map((input) => input.read.key) };
}

/** Where other cells stand below zero, "0" is full level and no wish for silence. */
function bareLevel(text: string): ReadAmount | null {
  const number = /^[+-]?\d{1,3}(?:[.,]\d+)?$/.exec(text.trim().replace('−', '-'));
  if (!number) return null;
  return {
    amount: null,
    levelDb: Number(number[0].replace(',', '.')),
    doubt: 'A bare number is read as dB.',
  };
}

function note(work: Work, mix: WorkMix, at: WorkInput['found']['at'], words: string): void {
  work.found.puzzles.push({
    at,
    text: words,
    why: `"${shorten(words)}" for ${mix.read.label} is no amount that is known.`,
  });
}

/** Levels of bare numbers by the scale the engineer chose. */
function settleScale(work: Work, text: string, guess: ReadAmount): ReadAmount {
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
  for (const segment of segmentsOf(text)) {
    const colon = /^([^:]{1,30}):\s*(.*)$/.exec(segment);
    const labelled = colon?.[1] ? amountAlone(work, colon[1]) : null;
    if (labelled) label = labelled;
    const body = labelled && colon ? (colon[2] ?? '') : segment;
    if (body === '') continue;
    const chain = readChain(work, mixes, mix, body, fixed ?? label ?? (only ? 'only' : null));
    only = chain === 'only' || (only && chain === null);
  }
}

/** "Ges. Merle": the full stop of a shortened word ends no wish (common practice). */
const shortened =
  /\b(ges|git|guit|gtr|voc|akk|ak|el|kl|gr|perc|trp|tpt|trb|pos|chit|batt|tast|acust|elettr|bat|cl|ch|izq|der|dcha)\.\s+(?=\p{L})/giu;

function segmentsOf(text: string): string[] {
  return text
    .replace(/(\d),(\d)/g, '$1.$2')
    .replace(shortened, '$1 ')
    .split(/\s*[,;•·\n]\s*|\.\s+(?=\p{L})|\s+\/\s+|(?<=\p{L}{3})\/(?=\p{L}{3})|\s+[-–—]\s+(?=\p{L})/u)
    .map((segment) => tidy(segment.replace(/^[-–*\s]+(?=\p{L})|[.!\s]+$/gu, '')))
    .filter((segment) => segment !== '');
}

function amountAlone(work: Work, text: string): Amount | null {
  const tokens = tokenize(text);
  const hits = findHits(wishWords, tokens, work.tongue.spoken, work.tongue.names);
  const amount = hits.flatMap((hit) => hit.senses).find((sense) => sense.subject === 'amount');
  const other = hits.some((hit) =>
    hit.senses.every((sense) => sense.subject !== 'amount' && sense.subject !== 'hedge'),
  );
  return amount && !other ? (amount.meaning as Amount) : null;
}

/** Words that join items which share an amount. */
const joiners = /^(?:and|und|et|y|e|en|ed|u|ni|nor|or|oder|ou|o|of|plus|&|\+|sowie)$/;

/** "Baixo alto": where the list has no such source, a word that is an amount too is the amount. */
function settleAmounts(work: Work, hits: readonly WishHit[]): WishHit[] {
  return hits.map((hit) => {
    const stem = hit.senses.find((sense) => sense.subject === 'source')?.meaning;
    const isBoth = stem !== undefined && hit.senses.some((sense) => sense.subject === 'amount');
    const isListed = work.inputs.some((input) => input.read.kind === stem || input.name.stem === stem);
    const others = hits.some((other) => other !== hit && isTarget(other));
    if (!isBoth || isListed || !others) return hit;
    return { ...hit, senses: hit.senses.filter((sense) => sense.subject === 'amount') };
  });
}

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
  const hits = settleAmounts(work, findHits(wishWords, tokens, spoken, names));
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
    for (const part of segmentsOf(text.slice(end))) readChain(work, mixes, mix, part, 'none');
    return null;
  }
  const items = itemsOf(text, tokens, hits, spoken.has('nl'));
  const amounts = items.map(amountOf);
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

/** "kick and snare loud": the amount behind the last item is meant for all. */
const lastIsTrailing = (items: readonly Item[], amounts: readonly (ReadAmount | null)[]) => {
  const last = items.at(-1);
  const amountHit = last?.hits.findIndex(isAmount) ?? -1;
  const targetHit = last?.hits.findIndex((hit) => isTarget(hit)) ?? -1;
  return (
    amounts.filter((amount) => amount !== null).length === 1 &&
    amounts.at(-1) !== null &&
    amountHit > targetHit &&
    targetHit >= 0
  );
};

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

/** The amount an item says: in a sign ("+++", "-6 dB", "80 %"), or in a word. A later word is the stronger one
 * ("a bit louder"), but no word outweighs "no" and "only". */
function amountOf(item: Item): ReadAmount | null {
  const sign = signIn(item.text);
  if (sign) return sign;
  const words = item.hits
    .filter((hit) => isAmount(hit))
    .map((hit) => hit.senses.find((sense) => sense.subject === 'amount')?.meaning as Amount);
  if (words.length === 0) return null;
  const strict = words.find((word) => word === 'none') ?? words.find((word) => word === 'only');
  if (strict === 'only' && words.includes('little')) return { amount: 'little', levelDb: null, doubt: '' };
  const little = words.find((word) => word === 'little');
  return { amount: strict ?? little ?? words[0] ?? 'some', levelDb: null, doubt: '' };
}

function signIn(text: string): ReadAmount | null {
  const db = /([+-]?\s?\d+(?:[.,]\d+)?)\s*db\b/i.exec(text);
  if (db?.[1]) return signAmount(`${db[1].replace(/\s/g, '')}dB`, false);
  const share = /(\d{1,3})\s*(?:%|percent|prozent|\/\s*(?:10|5|100)\b)/i.exec(text);
  if (share) return signAmount(share[0], false);
  const plus = /(?:^|\s|\()(\+{1,4})(?:\)|\s|$)|(?<=\p{L})(\+{1,4})(?=\s|$)/u.exec(text);
  if (plus) return signAmount(plus[1] ?? plus[2] ?? '', false);
  const minus = /(?:\s|\()(-{1,3})\)?$/.exec(text);
  if (minus) return { amount: 'none', levelDb: null, doubt: '' };
  const number = /(?:\s|[(=:@])(-?\d{1,3})\)?$/.exec(text);
  if (number?.[1] && (/[(=:@]\s*-?\d+\)?$/.test(text) || Number(number[1]) < 0 || Number(number[1]) > 9))
    return signAmount(number[1], true);
  return null;
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

function askTarget(work: Work, mix: WorkMix, words: string, amount: ReadAmount, heading: string): void {
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

/** "same as mix 2 but more keys": the other mix, then what is left of the text. Null where no mix is meant. */
function readSameAs(
  work: Work,
  mixes: readonly WorkMix[],
  mix: WorkMix,
  text: string,
  tokens: readonly Token[],
  mark: WishHit,
): string | null {
  const end = tokens[mark.to - 1]?.end ?? 0;
  const tail = text.slice(end);
  const number =
    /^\W*(?:the\s+)?(?:(?:mix|mon(?:itor)?|aux|weg|iem|retour|circuit|mezcla|mandata|groep|via|ear|wedge|nr\.?|no\.?)\s*#?\s*)?(\d{1,2})\b/i.exec(
      fold(tail),
    );
  let other = number ? mixes.find((it) => it.read.number === Number(number[1]) && it !== mix) : undefined;
  let used = number ? number[0].length : 0;
  if (!other) {
    const cut =
      /(?<!\p{L})(?:but|aber|mais|pero|ma|maar|mas|with|mit|avec|con|met|com|plus|pi[uù]|m[aá]s|mehr|meer|more|und|and|et|y|e|en|without|ohne|sans)(?!\p{L})|[(+]/iu.exec(
        tail,
      );
    const named = tidy(cut ? tail.slice(0, cut.index) : tail)
      .replace(/^(?:the|der|die|le|la|el|il|de|o|a|bei)\s+/i, '')
      .replace(/['’]s?(?:\s+mix)?$|\s+mix$/i, '');
    const performer = performerNamed(work, named) ?? listenerByRole(mixes, named, work);
    other = performer
      ? mixes.find((it) => it !== mix && it.read.listeners.includes(performer.name))
      : mixes.find((it) => it !== mix && squash(it.read.label) === squash(named) && named !== '');
    used = cut ? cut.index : tail.length;
  }
  if (!other && /^(?:as above|ditto|dito|idem|wie oben|[ií]dem)$/i.test(text.trim()))
    other = mixes[mixes.indexOf(mix) - 1];
  if (!other) return null;
  push(mix, text.slice(0, end + used), { of: 'mix', mixKey: other.read.key }, null, null);
  return tidy(
    tail
      .slice(used)
      .replace(/^\W+/, '')
      .replace(
        /^(?:but|aber|mais|pero|ma|maar|mas|with|mit|avec|con|met|com|plus|pi[uù]|m[aá]s|mehr|meer|more|und|and|et|y|e|en)(?!\p{L})\s*/iu,
        '',
      ),
  );
}

function listenerByRole(mixes: readonly WorkMix[], text: string, work: Work): { name: string } | null {
  const stems = (name: string) => {
    const performer = work.performers.find((it) => it.name === name);
    return performer ? `${performer.role} ${performer.name}` : name;
  };
  const key = squash(text).replace(/(?:mer|er|ist|s|in)$/, '');
  if (key.length < 3) return null;
  const found = mixes.flatMap((mix) => mix.read.listeners).find((name) => squash(stems(name)).includes(key));
  return found ? { name: found } : null;
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
