import { type Language, languages, type WordTable } from '../words/table.ts';
import { once } from './once.ts';
import { spellingsOf } from './spellings.ts';
import { type Spoken, type TaughtWord, taughtAt } from './taught-words.ts';
import { fold, type Token, tokenize } from './text.ts';

/** One meaning of a word: which table it is from, what it means there, in which languages. */
export type Sense<Subject extends string, Meaning extends string> = {
  subject: Subject;
  meaning: Meaning;
  languages: ReadonlySet<Language>;
};

/** A run of tokens that means something. `certainty` is 1 as written, less where a misspelling was bridged. */
export type Hit<Subject extends string, Meaning extends string> = {
  senses: Sense<Subject, Meaning>[];
  from: number;
  to: number;
  certainty: number;
};

/** Words of several tables, ready to be looked up. */
export type Lexicon<Subject extends string, Meaning extends string> = {
  /** Names of the tables. */
  subjects: ReadonlySet<string>;
  tables: readonly WordTable<string>[];
  senses: ReadonlyMap<string, Sense<Subject, Meaning>[]>;
  /** Every single word that occurs in a phrase, for misspellings and compounds. */
  tokens: ReadonlySet<string>;
  /** Words that may stand misspelt, by their first letter. */
  misspellings: ReadonlyMap<string, Spelt[]>;
  /** Words that name a source, by their consonants. */
  skeletons: ReadonlyMap<string, string[]>;
  /** Single words of the names of sources, in English and the trade's. */
  sourceTokens: ReadonlySet<string>;
};

/** Phrases longer than this many tokens are not written in the tables. */
const longestPhrase = 7;
/** What may stand inside a phrase without breaking it: "hi-hat", "d.i.", "l/r", "t'bone". */
const glue = new Set(['-', '.', '/', "'", '+', '&', '_', '*', '"']);

/**
 * Puts tables together. Where a word has several meanings, all are kept, in the order of the tables. Each part is
 * made when it is first asked for: all of them together take longer than a window takes to open.
 */
export function lexicon<Tables extends Record<string, WordTable<string>>>(
  tables: Tables,
): Lexicon<Extract<keyof Tables, string>, Extract<keyof Tables[keyof Tables], string>> {
  const known = once(() => wordsOf(tables));
  const misspellings = once(() => misspellingIndex(known().tokens));
  const skeletons = once(() => skeletonIndex(sourcesOf(known())));
  return {
    subjects: new Set(Object.keys(tables)),
    tables: Object.values(tables),
    get senses() {
      return known().senses;
    },
    get tokens() {
      return known().tokens;
    },
    get sourceTokens() {
      return known().sourceTokens;
    },
    get misspellings() {
      return misspellings();
    },
    get skeletons() {
      return skeletons();
    },
  };
}

function wordsOf<Tables extends Record<string, WordTable<string>>>(tables: Tables) {
  type Subject = Extract<keyof Tables, string>;
  type Meaning = Extract<keyof Tables[keyof Tables], string>;
  const senses = new Map<string, SenseInTheMaking<Subject, Meaning>[]>();
  const tokens = new Set<string>();
  const sourceTokens = new Set<string>();
  for (const [subject, table] of Object.entries(tables) as [Subject, WordTable<string>][])
    for (const [meaning, words] of Object.entries(table) as [Meaning, WordTable<string>[string]][])
      for (const { key, words: parts, language } of spellingsOf(words)) {
        addSense(senses, key, { subject, meaning, languages: new Set([language]) });
        for (const part of parts) tokens.add(part);
        if (subject === 'source' && (language === 'trade' || language === 'en'))
          for (const part of parts) sourceTokens.add(part);
      }
  return { senses, tokens, sourceTokens };
}

type SenseInTheMaking<S, M> = { subject: S; meaning: M; languages: Set<Language> };

/** A meaning of one key in one language; one that the key has already only gets the language. */
function addSense<S, M>(
  senses: Map<string, SenseInTheMaking<S, M>[]>,
  key: string,
  added: SenseInTheMaking<S, M>,
): void {
  const known = senses.get(key);
  const same = known?.find((sense) => sense.subject === added.subject && sense.meaning === added.meaning);
  if (same) for (const language of added.languages) same.languages.add(language);
  else if (known) known.push(added);
  else senses.set(key, [added]);
}

/** The single words that are the whole name of a source. */
const sourcesOf = ({ senses, tokens }: Pick<Lexicon<string, string>, 'senses' | 'tokens'>): string[] =>
  [...senses].flatMap(([key, found]) =>
    tokens.has(key) && found.some(({ subject }) => subject === 'source') ? [key] : [],
  );

/** Short words of another language are too easily something else: they count only in that language's riders. */
const shortWord = 3;

const isInSpoken = (sense: { languages: ReadonlySet<Language> }, spoken: Spoken) =>
  [...sense.languages].some((it) => it === 'trade' || it === 'en' || spoken.has(it));

function usable(sense: { languages: ReadonlySet<Language> }, key: string, spoken: Spoken): boolean {
  if (key.length > shortWord || sense.languages.has('trade') || sense.languages.has('en')) return true;
  return [...sense.languages].some((language) => spoken.has(language));
}

/**
 * The meanings of a word that count in a rider. Where the rider's own languages know it, a language that the rider
 * does not speak has no say: "très" is no Cuban guitar in French.
 */
function spokenSenses<S extends string, M extends string>(
  words: Lexicon<S, M>,
  key: string,
  spoken: Spoken,
): Sense<S, M>[] {
  const found = words.senses.get(key)?.filter((sense) => usable(sense, key, spoken)) ?? [];
  if (found.length < 2) return found;
  const own = found.filter((sense) => isInSpoken(sense, spoken));
  return own.length > 0 ? own : found;
}

/** The meanings of one whole text, or null where it has none. */
export function lookUp<S extends string, M extends string>(
  words: Lexicon<S, M>,
  text: string,
  spoken: Spoken,
): Sense<S, M>[] | null {
  const tokens = tokenize(text);
  const own = taughtHit(words, tokens, 0, spoken);
  if (own?.to === tokens.length) return own.senses;
  const key =
    tokens
      .filter((token) => token.kind !== 'mark' || token.text === '#')
      .map((token) => token.text)
      .join('') || fold(text);
  const found = spokenSenses(words, key, spoken);
  return found.length > 0 ? found : null;
}

/** Finds every phrase in the tokens, longest first, left to right. `names` are never taken for misspellings. */
export function findHits<S extends string, M extends string>(
  words: Lexicon<S, M>,
  tokens: readonly Token[],
  spoken: Spoken,
  names: ReadonlySet<string> = new Set(),
): Hit<S, M>[] {
  const hits: Hit<S, M>[] = [];
  const corrected = tokens.map((token, at) =>
    correct(words, token, names, spoken, isCutShort(token, tokens[at + 1])),
  );
  let at = 0;
  while (at < tokens.length) {
    const hit = taughtHit(words, tokens, at, spoken) ?? longestHit(words, tokens, corrected, at, spoken);
    if (hit && !isJoiningDi(hit, tokens, spoken) && !isElided(hit, tokens)) hits.push(hit);
    at = hit ? hit.to : at + 1;
  }
  return hits;
}

/** What the engineer taught goes before what the tables say. */
function taughtHit<S extends string, M extends string>(
  words: Lexicon<S, M>,
  tokens: readonly Token[],
  at: number,
  spoken: Spoken,
): Hit<S, M> | null {
  // Lines by their names are heard where groups are: both are many lines at once.
  const found = taughtAt(spoken, tokens, at, (of) => words.subjects.has(of === 'lines' ? 'group' : of));
  return found && { senses: sensesOf(found.word), from: at, to: found.to, certainty: 1 };
}

function sensesOf<S extends string, M extends string>({ of, kind }: TaughtWord): Sense<S, M>[] {
  const sense = (subject: string, meaning: string) =>
    ({ subject, meaning, languages: everyLanguage }) as unknown as Sense<S, M>;
  return of === 'lines' ? [sense('lines', kind), sense('group', 'lines')] : [sense(of, kind)];
}

const everyLanguage: ReadonlySet<Language> = new Set(languages);

/** "Voce di Livia": between words the Italian "di" is no DI, which is written in capitals. */
const isJoiningDi = (hit: Hit<string, string>, tokens: readonly Token[], spoken: Spoken) =>
  spoken.has('it') &&
  hit.to - hit.from === 1 &&
  tokens[hit.from]?.raw === 'di' &&
  hit.from > 0 &&
  tokens[hit.to]?.kind === 'word';

/** "L'accordéon", "d'accordéon": an article that lost its vowel is no left and no right. */
function isElided(hit: Hit<string, string>, tokens: readonly Token[]): boolean {
  const [letter, mark, word] = [tokens[hit.from], tokens[hit.to], tokens[hit.to + 1]];
  return (
    hit.to - hit.from === 1 &&
    letter?.text.length === 1 &&
    mark?.text === "'" &&
    mark.start === letter.end &&
    word?.kind === 'word' &&
    word.start === mark.end
  );
}

function longestHit<S extends string, M extends string>(
  words: Lexicon<S, M>,
  tokens: readonly Token[],
  corrected: readonly Corrected[],
  at: number,
  spoken: Spoken,
): Hit<S, M> | null {
  let best: Hit<S, M> | null = null;
  let key = '';
  let certainty = 1;
  let counted = 0;
  for (let to = at; to < tokens.length && counted < longestPhrase; to++) {
    const token = tokens[to];
    const word = corrected[to];
    if (!token || !word) break;
    if (token.kind === 'mark' && token.text !== '#') {
      if (to === at || !glue.has(token.text)) break;
      continue;
    }
    key += word.text;
    certainty = Math.min(certainty, word.certainty);
    counted += 1;
    const known = spokenSenses(words, key, spoken);
    // "Bass on top" holds no French bassoon: words that were written apart are one only in the rider's languages.
    const found =
      counted > 1 && words.tokens.has(key) ? known.filter((sense) => isInSpoken(sense, spoken)) : known;
    if (found.length > 0) best = { senses: found, from: at, to: to + 1, certainty };
  }
  return (
    best ?? singularHit(words, corrected, at, spoken) ?? compoundHit(words, tokens, corrected, at, spoken)
  );
}

/** "Annonces" stands in phrases only; by itself it is the plural of a word that means something. */
function singularHit<S extends string, M extends string>(
  words: Lexicon<S, M>,
  corrected: readonly Corrected[],
  at: number,
  spoken: Spoken,
): Hit<S, M> | null {
  const word = corrected[at];
  if (!word || !words.tokens.has(word.text)) return null;
  for (const ending of endings) {
    const stem = word.text.slice(0, -ending.length);
    if (!word.text.endsWith(ending) || stem.length < 4) continue;
    const senses = words.senses.get(stem)?.filter((sense) => usable(sense, stem, spoken));
    if (senses && senses.length > 0) return { senses, from: at, to: at + 1, certainty: word.certainty };
  }
  return null;
}

/** "Leadgesang", "Snarebottom": one word made of two or three known ones. Only its last known part is given. */
function compoundHit<S extends string, M extends string>(
  words: Lexicon<S, M>,
  tokens: readonly Token[],
  corrected: readonly Corrected[],
  at: number,
  spoken: Spoken,
): Hit<S, M> | null {
  const word = corrected[at];
  if (tokens[at]?.kind !== 'word' || !word || word.text.length < 7 || word.text.length > 40) return null;
  if (words.tokens.has(word.text)) return null;
  for (let cut = word.text.length - 3; cut >= 3; cut--) {
    const head = words.senses.get(word.text.slice(cut))?.filter((sense) => usable(sense, 'long', spoken));
    const start = word.text.slice(0, cut).replace(/(s|n|en)$/, '');
    const known = words.senses.get(word.text.slice(0, cut)) ?? words.senses.get(start);
    if (head && known && word.text.length - cut > 3 && start.length > 2)
      return { senses: [...known, ...head], from: at, to: at + 1, certainty: 0.85 };
  }
  return cornerHit(words, word.text, at, spoken) ?? unknownCompound(words, word.text, at, spoken);
}

/** "Slagwerkhoek", "Percussionecke": where it stands says nothing more. */
function cornerHit<S extends string, M extends string>(
  words: Lexicon<S, M>,
  text: string,
  at: number,
  spoken: Spoken,
): Hit<S, M> | null {
  const [start = ''] = text.split(corner);
  if (start.length < 4 || start === text) return null;
  const senses = words.senses.get(start)?.filter((sense) => usable(sense, start, spoken));
  return senses && senses.length > 0 ? { senses, from: at, to: at + 1, certainty: 0.85 } : null;
}
const corner = /(?:s?(?:hoek|tafel|opstelling|ecke|tisch|aufbau|platz|plek|insel))$/;

/** "Landsknechtstrommel": in German and Dutch the end of a word says what it is. What stands before it may change
 * that ("Mundharmonika"), so it is asked about. */
function unknownCompound<S extends string, M extends string>(
  words: Lexicon<S, M>,
  text: string,
  at: number,
  spoken: Spoken,
): Hit<S, M> | null {
  if (!spoken.has('de') && !spoken.has('nl')) return null;
  for (let cut = 3; text.length - cut >= 5; cut++) {
    const senses = words.senses
      .get(text.slice(cut))
      ?.filter(
        ({ subject, languages: known }) =>
          subject === 'source' && (known.has('de') || known.has('nl') || known.has('trade')),
      );
    if (senses && senses.length > 0) return { senses, from: at, to: at + 1, certainty: doubtful };
  }
  return null;
}

/** How certain a word is where a letter was bridged. */
export const misspelt = 0.75;
/** How certain a word is that may as well be another: low enough to be asked about. */
const doubtful = 0.65;

type Corrected = { text: string; certainty: number };

/** Endings of the plural, which the tables leave out. */
const endings = ['s', 'en', 'n', 'e'] as const;

/** The word as it was probably meant. Only words of some length are bridged: short ones mean too many things. */
function correct<S extends string, M extends string>(
  words: Lexicon<S, M>,
  token: Token,
  names: ReadonlySet<string>,
  spoken: Spoken,
  cutShort: boolean,
): Corrected {
  const { text } = token;
  if (token.kind !== 'word' || words.tokens.has(text) || names.has(text)) return { text, certainty: 1 };
  const whole = cutShort ? wholeWord(words, text, spoken) : null;
  if (whole) return whole;
  for (const ending of endings) {
    const stem = text.slice(0, -ending.length);
    if (text.endsWith(ending) && stem.length > 3 && words.tokens.has(stem))
      return { text: stem, certainty: 1 };
  }
  if (text.length < 4 || text.length > 24 || !/^[a-z]+$/.test(text)) return { text, certainty: 1 };
  const nearest = nearestWord(words, text, spoken);
  // "Tano" is sooner a name than a misspelt "tanto"; "Flor" may be a floor tom.
  const isName = text.length === 4 && /^\p{Lu}\p{Ll}+$/u.test(token.raw);
  if (nearest && isName && !words.sourceTokens.has(nearest.word)) return { text, certainty: 1 };
  if (!nearest) return { text, certainty: 1 };
  return { text: nearest.word, certainty: nearest.doubt ? doubtful : misspelt };
}

/** "Contrabb." with the point right behind it. */
const isCutShort = (token: Token, next: Token | undefined) =>
  token.kind === 'word' && token.text.length >= 4 && next?.text === '.' && next.start === token.end;

/** The source that a word with a point behind it was cut from, or null. Two of them leave a doubt. */
function wholeWord(words: Lexicon<string, string>, text: string, spoken: Spoken): Corrected | null {
  const fits = [...words.senses.keys()].filter(
    (key) =>
      key.startsWith(text) &&
      words.tokens.has(key) &&
      words.senses
        .get(key)
        ?.some(
          ({ subject, languages: known }) =>
            subject === 'source' && [...known].some((it) => it === 'trade' || it === 'en' || spoken.has(it)),
        ),
  );
  const best = fits.sort((a, b) => a.length - b.length || (a < b ? -1 : 1))[0];
  if (best === undefined) return null;
  const alike = fits.every((key) => shareMeaning(words, best, key));
  return { text: best, certainty: alike ? misspelt : doubtful };
}

/** Edit distance that a word of this length may be off. */
function tolerance(length: number): number {
  return length >= 9 ? 2 : 1;
}

/** A word of the tables, and which letters are in it: a bit for each. */
type Spelt = { word: string; letters: number };

/**
 * A wrong first letter is rare, and names differ from words there first: only words of the same one are near. An
 * index of every word with letters left out would be larger and take longer to make than all lookups of a rider.
 */
function misspellingIndex(tokens: ReadonlySet<string>): Map<string, Spelt[]> {
  const index = new Map<string, Spelt[]>();
  for (const word of tokens) {
    if (word.length < 5 || !/^[a-z]+$/.test(word)) continue;
    const first = word[0] ?? '';
    const spelt = { word, letters: lettersIn(word) };
    const known = index.get(first);
    if (known) known.push(spelt);
    else index.set(first, [spelt]);
  }
  return index;
}

function lettersIn(word: string): number {
  let letters = 0;
  for (let at = 0; at < word.length; at++) letters |= 1 << (word.charCodeAt(at) - firstLetter);
  return letters;
}
const firstLetter = 'a'.charCodeAt(0);

/** More than this many letters stand in one of two words and not in the other. */
function differInMore(one: number, other: number, most: number): boolean {
  let left = one ^ other;
  for (let count = 0; left !== 0; left &= left - 1) if (++count > most) return true;
  return false;
}

const skeletonOf = (word: string) => `${word[0] ?? ''}${word.slice(1).replace(/[aeiouy]/g, '')}`;

/** The word's consonants in their order: what is left of a word written by ear. */
function skeletonIndex(words: readonly string[]): Map<string, string[]> {
  const index = new Map<string, string[]>();
  for (const word of words) {
    const skeleton = skeletonOf(word);
    if (word.length < 5 || word.length > 9 || skeleton.length < 3 || !/^[a-z]+$/.test(word)) continue;
    const known = index.get(skeleton);
    if (known) known.push(word);
    else index.set(skeleton, [word]);
  }
  return index;
}

/** The source that a word written by ear may mean ("Snair"), or null. A doubt to ask about, never a reading. */
export function heardWord(words: Lexicon<string, string>, text: string): string | null {
  return words.skeletons.get(skeletonOf(text))?.find((word) => soundsAlike(word, text)) ?? null;
}

const soundsAlike = (word: string, text: string) =>
  text.length >= 5 && Math.abs(word.length - text.length) <= 1 && editDistance(word, text) <= 2;

/** The word of the tables nearest to a misspelt one; of equally near ones, one of the rider's languages that means
 * something by itself. Two letters off, or two words as near that mean different things, leave a doubt to ask about. */
function nearestWord(
  words: Lexicon<string, string>,
  text: string,
  spoken: Spoken,
): { word: string; doubt: boolean } | null {
  const isSpoken = (language: Language) => language === 'trade' || language === 'en' || spoken.has(language);
  const rankOf = (word: string) => {
    const senses = words.senses.get(word);
    if (!senses) return 2;
    return senses.some((sense) => [...sense.languages].some(isSpoken)) ? 0 : 1;
  };
  const near = wordsNear(words, text)
    .map(({ word, distance }) => ({ word, distance, rank: rankOf(word) }))
    .sort(
      (a, b) =>
        a.distance - b.distance ||
        a.rank - b.rank ||
        // A letter is sooner left out than put in.
        b.word.length - a.word.length ||
        (a.word < b.word ? -1 : 1),
    );
  const [best] = near;
  if (!best) return null;
  const rivals = near.filter((it) => it.distance === best.distance && it.rank === 0 && best.rank === 0);
  const doubt = best.distance > 1 || rivals.some((it) => !shareMeaning(words, best.word, it.word));
  return { word: best.word, doubt };
}

function shareMeaning(words: Lexicon<string, string>, a: string, b: string): boolean {
  const others = words.senses.get(b) ?? [];
  return (words.senses.get(a) ?? []).some((one) =>
    others.some((other) => other.subject === one.subject && other.meaning === one.meaning),
  );
}

function wordsNear(words: Lexicon<string, string>, text: string): { word: string; distance: number }[] {
  const letters = lettersIn(text);
  return (words.misspellings.get(text[0] ?? '') ?? []).flatMap((spelt) => {
    const { word } = spelt;
    const most = tolerance(Math.min(text.length, word.length));
    if (Math.abs(word.length - text.length) > most) return [];
    // In a word of four letters only a letter that was left out is bridged.
    if (text.length < 5 && (word.length !== 5 || word.at(-1) !== text.at(-1))) return [];
    // One letter replaced by another differs in two.
    if (differInMore(letters, spelt.letters, 2 * most)) return [];
    const distance = editDistance(text, word);
    return distance <= most ? [{ word, distance }] : [];
  });
}

/** Letters inserted, left out, replaced or swapped with a neighbour (optimal string alignment). */
function editDistance(a: string, b: string): number {
  let before: number[] = [];
  let row = Array.from({ length: b.length + 1 }, (_, column) => column);
  for (let i = 1; i <= a.length; i++) {
    const next = [i];
    for (let j = 1; j <= b.length; j++) {
      const cost = a[i - 1] === b[j - 1] ? 0 : 1;
      let least = Math.min((row[j] ?? 0) + 1, (next[j - 1] ?? 0) + 1, (row[j - 1] ?? 0) + cost);
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1])
        least = Math.min(least, (before[j - 2] ?? 0) + 1);
      next.push(least);
    }
    before = row;
    row = next;
  }
  return row[b.length] ?? 0;
}
