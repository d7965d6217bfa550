import { factsOfKind, type SourceGroup, type SourceKind } from '../../show/source-kinds.ts';
import { findHits } from '../language/lexicon.ts';
import { squash, type Token, tokenize } from '../language/text.ts';
import { nameWords, wishWords } from '../language/vocabulary.ts';
import type { Work, WorkInput } from '../page/work.ts';
import type { ReadWish } from '../reading.ts';
import { type Item, isAmount, isNaming, isTarget, keysOf, subjectsOf, type WishHit } from './wish-item.ts';

/** Groups whose word means all of them, also where one line bears it: "bass" is the DI and the amplifier. */
export const wholeFamilies: ReadonlySet<SourceGroup> = new Set<SourceGroup>(['bass', 'drums', 'vocals']);

const isSide = (token: Token) =>
  wishWords.senses.get(token.text)?.some((sense) => sense.subject === 'side') ?? false;

const wordsIn = (text: string) => tokenize(text).filter((token) => token.kind !== 'mark');
export const keyOf = (tokens: readonly Token[]) => tokens.map((token) => token.text).join('');
/** "Voz batería" of a line called "Voz batería Marlo". */
function withoutPerson(input: WorkInput, { tongue }: Work): string {
  const words = wordsIn(withoutBrackets(input.read.name));
  const left = words.filter(({ text }) => !tongue.names.has(text) && !tongue.people.has(text));
  return left.length < words.length && left.length > 1 ? keyOf(left) : '';
}

const withoutBrackets = (name: string) => name.replace(/\s*\([^)]*\)/g, '');

/** What a line is called, from its whole name to that of a pair, without what is in brackets and without a side. */
const callings: ((input: WorkInput, work: Work) => string)[] = [
  (input) => squash(input.read.name),
  (input) => squash(withoutBrackets(input.read.name)),
  (input) =>
    input.read.pairKey === null
      ? ''
      : keyOf(wordsIn(withoutBrackets(input.read.name)).filter((token) => !isSide(token))),
  withoutPerson,
];

/** True where a line bears exactly that name: "BV 2". */
export const isCalledWhole = (work: Work, text: string): boolean =>
  callings.some((called) => work.inputs.some((input) => called(input, work) === squash(text)));

/** A wish that gives a line its very name. */
export function byExactName(work: Work, item: Item): ReadWish['target'] | null {
  const told = item.tokens.filter(
    (token, at) =>
      token.kind !== 'mark' &&
      !isShare(item.tokens, at) &&
      !item.hits.some(
        (hit) => at >= hit.from && at < hit.to && (isAmount(hit) || subjectsOf(hit)[0] === 'hedge'),
      ),
  );
  const [words, inputs] = [told, told.slice(0, told.at(-1)?.kind === 'number' ? -1 : 0)]
    .map((it): [Token[], WorkInput[]] => [it, calledBy(work, keyOf(it))])
    .find(([, named]) => named.length > 0) ?? [told, byRun(work, told)];
  const lone = inputs[0];
  if (!lone) return null;
  // "Snare" is the name of one line but means the drum: its other microphones come along.
  const general = item.hits.some(
    (hit) =>
      hit.senses.some(({ subject, meaning }) => subject === 'group' && !ofOneVoice.has(meaning)) &&
      hit.to - hit.from >= words.length &&
      !(isBassGuitar(item) && work.inputs.some(isOtherBass)),
  );
  if (general && wholeFamilies.has(factsOfKind(lone.read.kind).group)) return null;
  const [word, ...more] = words;
  return keysOf(
    withPartners(work, word && more.length === 0 ? alike(work, inputs, word) : longer(work, inputs, words)),
  );
}

/** "80 %", "-6 dB": the number of an amount, and no part of a name. */
const isShare = (tokens: readonly Token[], at: number) =>
  /^(?:%|db|percent|prozent)$/.test(tokens[at]?.text ?? '') ||
  (tokens[at]?.kind === 'number' && /^(?:%|db|percent|prozent)$/.test(tokens[at + 1]?.text ?? '')) ||
  (tokens[at]?.kind === 'number' && /^[-+]$/.test(tokens[at - 1]?.text ?? ''));

/** The lines of a name, as it stands or without what callings leave out. */
function calledBy(work: Work, key: string): WorkInput[] {
  if (key.length < 2 || !/\p{L}/u.test(key)) return [];
  return (
    callings
      .map((called) => work.inputs.filter((input) => called(input, work) === key))
      .find((named) => named.length > 0) ?? []
  );
}

/** "Solo mic" of a line "Solo mic, front": several words in a row that stand in its name. */
function byRun(work: Work, words: readonly Token[]): WorkInput[] {
  if (words.length < 2) return [];
  return work.inputs.filter((input) => {
    const name = wordsIn(input.read.name);
    return name.some((_, at) => words.every((word, it) => name[at + it]?.text === word.text));
  });
}

/** "Voz 2" and "coro" are the line of that name, "vocals" are all of them. */
const ofOneVoice: ReadonlySet<string> = new Set(['lead vocals', 'backing vocals', 'one voice']);

/** "Cajón" is the name of one line and a word of the next one's: the other microphone of it is meant too. */
function alike(work: Work, named: readonly WorkInput[], word: Token): WorkInput[] {
  const kinds = new Set(named.map((input) => input.read.kind));
  const players = new Set([null, ...named.map((input) => input.read.performer)]);
  return work.inputs.filter(
    (input) =>
      named.includes(input) ||
      (kinds.has(input.read.kind) &&
        factsOfKind(input.read.kind).group !== 'vocals' &&
        input.name.ordinal === null &&
        players.has(input.read.performer) &&
        isCalled(input, word)),
  );
}

/**
 * Of lines that a general word may mean those that bear no other name: "guitar" is "Gtr L" and not "Acoustic", "keys"
 * are no "Synth". All of them where none is called so.
 */
export function plainlyCalled(work: Work, hit: WishHit, lines: readonly WorkInput[]): WorkInput[] {
  const meanings = new Set(hit.senses.map(({ meaning }) => meaning));
  const plain = lines.filter((input) => {
    const { hits, words } = ownWords(input, work);
    const [word, ...more] = words;
    return (
      word !== undefined &&
      more.length === 0 &&
      hits.some(({ senses }) => senses.some(({ meaning }) => meanings.has(meaning)))
    );
  });
  return plain.length > 0 ? plain : [...lines];
}

/** "Bas" of a line called "Bas" or "Bas DI". */
export function isCalledOnly(input: WorkInput, work: Work, word: Token | undefined): boolean {
  const [first, ...more] = ownWords(input, work).words;
  return more.length === 0 && first?.text === word?.text;
}

/** The words of a line's name that say what it is: without person, side, number and pick-up. */
function ownWords(input: WorkInput, { tongue }: Work): { hits: WishHit[]; words: Token[] } {
  const tokens = wordsIn(withoutBrackets(input.read.name));
  const asides = findHits(nameWords, tokens, tongue.spoken, tongue.names).filter(({ senses }) =>
    senses.some(({ subject }) => subject === 'side' || subject === 'pickUp'),
  );
  const words = tokens.filter(
    (token, at) =>
      token.kind === 'word' &&
      !tongue.names.has(token.text) &&
      !tongue.people.has(token.text) &&
      !isSide(token) &&
      !asides.some((aside) => aside.from <= at && at < aside.to),
  );
  return { hits: findHits(wishWords, words, tongue.spoken, tongue.names), words };
}

/** "Guitar 1" is also "Guitar 1 pick-up": the other line of the same thing, which is called so and more. */
function longer(work: Work, named: readonly WorkInput[], words: readonly Token[]): WorkInput[] {
  const kinds = new Set(named.map((input) => input.read.kind));
  return work.inputs.filter((input) => {
    const name = wordsIn(input.read.name);
    const isSame = words.every((word, at) => name[at]?.text === word.text);
    return (
      named.includes(input) || (isSame && kinds.has(input.read.kind) && !kindsOfVoices.has(input.read.kind))
    );
  });
}

const kindsOfVoices: ReadonlySet<SourceKind> = new Set<SourceKind>([
  'lead vocal',
  'vocal',
  'backing vocal',
  'choir',
]);

/** "Bass guitar" is not the double bass and not the one on the keys. */
export const isBassGuitar = (item: Item) =>
  item.tokens.some((token) =>
    /^(?:bass|bas)?(?:gui|git|gtr|chit)|^(?:e|el|electric|elettrico|electrico)$/.test(token.text),
  );
export const isOtherBass = (input: WorkInput) =>
  input.read.kind === 'synth bass' || input.read.kind === 'double bass';

function withPartners(work: Work, inputs: readonly WorkInput[]): WorkInput[] {
  const keys = new Set(inputs.map((input) => input.read.key));
  return work.inputs.filter(
    (input) =>
      keys.has(input.read.key) ||
      (input.read.pairKey !== null &&
        keys.has(input.read.pairKey) &&
        input.found === work.inputs.find((it) => it.read.key === input.read.pairKey)?.found),
  );
}

/** Endings of the plural in the seven languages, and what stands for them in the singular. */
const plurals: readonly [RegExp, string][] = [
  [/s$/, ''],
  [/es$/, ''],
  [/n$/, ''],
  [/en$/, ''],
  [/e$/, 'a'],
  [/i$/, 'o'],
  [/i$/, 'e'],
  [/[oõ]es$/, 'ao'],
  [/([aeou])([bdfgklmnprst])en$/, '$1$1$2'],
];

/** "Guitars" and "chitarre", and not "guitare": a word that is another's plural by its spelling. */
export const isPlural = (word: string) =>
  // The Dutch "zangeres" is one.
  !/[^aeiou]eres$/.test(word) &&
  plurals.some(([ending, one]) => {
    const stem = word.replace(ending, one);
    return stem !== word && stem.length > 2 && wishWords.senses.has(stem) && wishWords.tokens.has(stem);
  });

export const singular = (word: string) => (word.length > 2 ? word.replace(/s$/, '') : word);

/** One word in whatever number: "solo" and "soli", "chitarra" and "chitarre". */
const isSameWord = (a: string, b: string) =>
  singular(a) === singular(b) || isPluralOf(a, b) || isPluralOf(b, a);

const isPluralOf = (many: string, one: string) =>
  one.length > 3 && plurals.some(([ending, back]) => ending.test(many) && many.replace(ending, back) === one);

/** True where a line's name has the word, in whatever number; `outside`: not only in brackets. */
export const isCalled = (input: WorkInput, word: Token, outside = false) =>
  (outside ? wordsIn(withoutBrackets(input.read.name)) : input.name.tokens).some((token) =>
    isSameWord(token.text, word.text),
  );

/** Words that stand in the name of a line, as a model or a nickname does. */
export function byLooseName(work: Work, item: Item): ReadWish['target'] | null {
  const words = item.tokens.filter(
    (token, at) =>
      token.kind === 'word' &&
      token.text.length > 1 &&
      !item.hits.some((hit) => at >= hit.from && at < hit.to && !isNaming(hit)),
  );
  if (words.every((word) => word.text.length < 3)) return null;
  const inputs = work.inputs.filter((input) => words.every((word) => isCalled(input, word)));
  return inputs.length > 0 ? keysOf(inputs) : null;
}

/**
 * "Kick out", "contrabass pick-up": where a wish gives a line its whole name, no word of it is an amount or anything
 * else than the name.
 */
export function withNamesWhole(work: Work, tokens: readonly Token[], hits: readonly WishHit[]): WishHit[] {
  const spans = namedSpans(work, tokens);
  if (spans.length === 0) return [...hits];
  return hits.filter(
    (hit) =>
      isTarget(hit) ||
      subjectsOf(hit)[0] === 'side' ||
      subjectsOf(hit)[0] === 'part' ||
      !spans.some((span) => span.from <= hit.from && hit.to <= span.to),
  );
}

/** Where the whole name of a line stands in a text, names of several words only. */
function namedSpans(work: Work, tokens: readonly Token[]): { from: number; to: number }[] {
  const spans: { from: number; to: number }[] = [];
  for (const input of work.inputs) {
    const name = wordsIn(withoutBrackets(input.read.name));
    if (name.length < 2) continue;
    tokens.forEach((_, from) => {
      const to = endOfName(name, tokens, from);
      if (to !== null) spans.push({ from, to });
    });
  }
  return spans;
}

function endOfName(name: readonly Token[], tokens: readonly Token[], from: number): number | null {
  let at = from;
  for (const word of name) {
    while (at > from && tokens[at]?.kind === 'mark') at += 1;
    if (tokens[at]?.text !== word.text) return null;
    at += 1;
  }
  return at;
}
