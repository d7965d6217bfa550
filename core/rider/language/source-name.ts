import { factsOfKind, type SourceGroup, type SourceKind } from '../../show/source-kinds.ts';
import type { PickUp } from '../../show/words.ts';
import { onlyAlone } from '../words/alone.ts';
import type { Part } from '../words/parts.ts';
import type { SideWord } from '../words/sides.ts';
import { type Stem, stemWeights } from '../words/sources.ts';
import type { Language } from '../words/table.ts';
import type { Legend } from './legend.ts';
import { findHits, type Hit, misspelt } from './lexicon.ts';
import { type Spoken, taughtIn } from './taught-words.ts';
import { hasWordOf, type Token, tokenize } from './text.ts';
import { nameWords } from './vocabulary.ts';

/** What every step of a reading needs to know of the rider as a whole. */
export type Tongue = {
  spoken: Spoken;
  /** Signs of amounts that the rider explains itself. */
  legend: Legend;
  /** Folded words of performers' names: never read as misspelt trade words. */
  names: Set<string>;
  /** Performers' names that are words of the trade too, such as Tom. */
  people: Set<string>;
  /** Names already read: most are looked at several times. Emptied when the names change. */
  read: Map<string, SourceName>;
};

/** Whether a word of a text is a performer's name, though it may be one of the trade too. */
export const namesPerson = (text: string, { names, people }: Pick<Tongue, 'names' | 'people'>): boolean =>
  hasWordOf(text, names) || hasWordOf(text, people);

export type SourceName = {
  text: string;
  tokens: Token[];
  /** What the line is, or null where no word of the name says it. */
  stem: Stem | null;
  /** A second stem, as in "Vox drums": where or whose it is. */
  besides: Stem[];
  parts: ReadonlySet<Part>;
  sides: ReadonlySet<SideWord>;
  /** The side is one of the stage ("SR"), not one of a pair. */
  stageSide: boolean;
  pickUps: ReadonlySet<PickUp>;
  /** A number in the name, as in "Tom 2". */
  ordinal: number | null;
  /** How many lines the name asks for ("2x", "1+2"), or 1. */
  count: number;
  /** Words that mean nothing here: perhaps a performer, a model, a note. */
  unknown: string[];
  certainty: number;
  /** Only everyday words said so (see `onlyAlone`). */
  isEveryday: boolean;
  /** The name without its side words, for finding the other side of a pair. */
  base: string;
};

const stageSides = new Set([
  'sl',
  'sr',
  'stageleft',
  'stageright',
  'jardin',
  'cour',
  'jar',
  'hl',
  'hr',
  'houseleft',
  'houseright',
  'ajardin',
  'acour',
  'dsl',
  'dsr',
  'usl',
  'usr',
  'cotejardin',
  'cotecour',
]);
/** Words too common in names to be a performer or a model. */
const fillers = new Set([
  'mic',
  'and',
  'the',
  'of',
  'for',
  'with',
  'a',
  'no',
  'nr',
  'ch',
  'der',
  'die',
  'und',
  'et',
  'de',
  'la',
  'le',
  'y',
  'e',
  'en',
  'von',
  'del',
  'own',
  'eigen',
  'or',
  'x',
  'on',
  'to',
  'from',
  'is',
  'new',
  'same',
  'input',
  'n',
  's',
]);

/** Reads the name of a line: what it is, which part, which side, and what words are left over. */
export function readSourceName(text: string, tongue: Tongue): SourceName {
  const known = tongue.read.get(text);
  if (known) return known;
  const read = readAnew(text, tongue);
  if (text.length < 200) tongue.read.set(text, read);
  return read;
}

function readAnew(text: string, tongue: Tongue): SourceName {
  const tokens = splitSides(tokenize(text), tongue);
  const found = withoutPeople(findHits(nameWords, tokens, tongue.spoken, tongue.names), tokens, tongue);
  const hits = withoutAsides(found, tokens).filter((hit) => !isGermanVerb(hit, tokens, tongue));
  const read: SourceName = {
    text,
    tokens,
    stem: null,
    besides: [],
    parts: new Set(),
    sides: new Set(),
    stageSide: false,
    pickUps: new Set(),
    ordinal: null,
    count: 1,
    unknown: [],
    certainty: 1,
    isEveryday: false,
    base: '',
  };
  const own = taughtIn(tongue.spoken, text, (of) => of === 'source')[0]?.kind as SourceKind | undefined;
  const meanings = sortHits(hits, tokens, tongue);
  const strong = meanings.stems.filter((stem) => !stem.weak);
  const stems = withoutRemarks(strong.length > 0 ? strong : meanings.stems);
  // "Brass OH" hangs over the brass; a pair over the percussion is called overheads.
  const isPair = meanings.sides.has('left') || meanings.sides.has('right') || meanings.sides.has('both');
  const isUnder = (stem: Stem) =>
    overOthers.has(groupOfStem(stem)) && !(isPair && groupOfStem(stem) === 'percussion');
  const named = stems.some((it) => isUnder(it.stem)) ? stems.filter((it) => it.stem !== 'overhead') : stems;
  const head = named.reduce<StemHit | null>(
    (best, stem) => (best && weight(best.stem) >= weight(stem.stem) ? best : stem),
    null,
  );
  read.stem = own ?? head?.stem ?? null;
  read.isEveryday = own === undefined && strong.length === 0 && stems.length > 0;
  read.besides = stems.filter((stem) => stem !== head).map((stem) => stem.stem);
  read.certainty = own ? 1 : (head?.certainty ?? 0);
  read.parts = meanings.parts;
  read.sides = meanings.sides;
  read.pickUps = meanings.pickUps;
  read.stageSide = meanings.stageSide;
  const covered = coveredTokens(hits);
  const numbers = numbersLeft(tokens, covered);
  read.ordinal = numbers.ordinal;
  read.count = numbers.count;
  read.unknown = unknownWords(tokens, covered, tongue);
  read.base = baseOf(tokens, hits);
  openHalves(read);
  return read;
}

/** "Thees hat ein Cello": has, no hi-hat. */
const isGermanVerb = (hit: Hit<string, string>, tokens: readonly Token[], { spoken }: Tongue) =>
  spoken.has('de') &&
  hit.to - hit.from === 1 &&
  tokens[hit.from]?.raw === 'hat' &&
  tokens[hit.from - 1]?.kind === 'word' &&
  tokens[hit.to]?.kind === 'word';

/** "OHL", "GTRR": a source in capitals with its side at the end. */
function splitSides(tokens: Token[], tongue: Tongue): Token[] {
  return tokens.flatMap((token) => {
    const stem = token.text.slice(0, -1);
    const known = nameWords.tokens.has(token.text) || tongue.names.has(token.text);
    if (known || !/^\p{Lu}{2,6}[LR]$/u.test(token.raw)) return [token];
    if (!nameWords.senses.get(stem)?.some((sense) => sense.subject === 'source')) return [token];
    const cut = token.end - 1;
    return [
      { ...token, text: stem, raw: token.raw.slice(0, -1), end: cut },
      { ...token, text: token.text.slice(-1), raw: token.raw.slice(-1), start: cut },
    ];
  });
}

/** "BV Tom" with a performer called Tom names a voice and a person, no drum. */
function withoutPeople<H extends Hit<string, string>>(
  hits: readonly H[],
  tokens: readonly Token[],
  tongue: Tongue,
): H[] {
  const isPerson = (hit: H) =>
    hit.to - hit.from === 1 &&
    tongue.people.has(tokens[hit.from]?.text ?? '') &&
    /^\p{Lu}/u.test(tokens[hit.from]?.raw ?? '');
  const others = hits.some((hit) => !isPerson(hit) && hit.senses.some((sense) => sense.subject === 'source'));
  return others ? hits.filter((hit) => !isPerson(hit)) : [...hits];
}

const withWords = new Set(['with', 'mit', 'avec', 'con', 'met', 'com']);

/** "Cello (loops)", "Flute (tenor 2)": what is made of it or whose seat it is stands in brackets. */
function withoutRemarks(stems: readonly StemHit[]): StemHit[] {
  const outside = stems.filter(({ inBrackets }) => !inBrackets).map(({ stem }) => groupOfStem(stem));
  const isPlayed = outside.some((group) => group !== 'playback');
  const isBlown = outside.some((group) => group === 'woodwind' || group === 'brass');
  // "Percussion (bass drum, triangle)" is all of it.
  const isTable = outside.includes('percussion') && stems.filter(({ inBrackets }) => inBrackets).length > 1;
  // "Sax tenori" are no tenors of a choir.
  const isSax = stems.some(({ stem }) => stem === 'saxophone');
  return stems.filter(({ stem, inBrackets }) => {
    if (isSax && stem === 'choir') return false;
    if (!inBrackets) return true;
    if (isTable && ['percussion', 'drums'].includes(groupOfStem(stem))) return false;
    return !(isPlayed && groupOfStem(stem) === 'playback') && !(isBlown && stem === 'choir');
  });
}

/** Groups that a microphone may hang over. */
const overOthers: ReadonlySet<SourceGroup> = new Set<SourceGroup>([
  'percussion',
  'brass',
  'woodwind',
  'strings',
  'vocals',
]);

const isSource = (hit: Hit<string, string>) => hit.senses.some((sense) => sense.subject === 'source');
const meansAny = (hit: Hit<string, string>, stems: ReadonlySet<string>) =>
  hit.senses.some((sense) => sense.subject === 'source' && stems.has(sense.meaning));

/** Says that a player sings besides; the line is still the instrument's. */
const singing = new Set(['sings', 'singing', 'singt', 'chante', 'canta', 'zingt']);
/** Words for the size of a stand that name a source too. */
const tallWords = new Set([
  'grand',
  'grande',
  'gran',
  'base',
  'bas',
  'basso',
  'alto',
  'alta',
  'baixo',
  'bajo',
]);
const isStandAt = (tokens: readonly Token[], at: number) =>
  standNouns.has(tokens[at + 1]?.text ?? '') || standNouns.has(tokens[at - 1]?.text ?? '');
const standNouns = new Set(
  'pied, perche, girafe, asta, giraffa, pie, jirafa, soporte, pedestal, tripe, girafa, suporte, statief, tripode, stand, boom'.split(
    ', ',
  ),
);
/** Where toms stand; other things stand there too. */
const tomPlaces = new Set(['floor', 'rack']);
const ofKit: ReadonlySet<string> = new Set([
  'drums',
  'tom',
  'rack tom',
  'floor tom',
  'kick',
  'snare',
  'overhead',
]);
const padWords = new Set(['pad', 'pads']);
const triggers = new Set(['trigger', 'triggers', 'trig']);
const shells: ReadonlySet<string> = new Set(['kick', 'snare', 'tom', 'rack tom', 'floor tom']);

/** Leaves out words that mean a source by themselves and only tell something of another here. */
function withoutAsides<H extends Hit<string, string>>(hits: readonly H[], tokens: readonly Token[]): H[] {
  const wordOf = (hit: H) => (hit.to - hit.from === 1 ? (tokens[hit.from]?.text ?? '') : '');
  const others = (hit: H) => hits.filter((it) => it !== hit && isSource(it));
  return hits.filter((hit) => {
    const word = wordOf(hit);
    if (singing.has(word)) return others(hit).length === 0;
    // "Grand pied" is a tall stand, no piano.
    if (tallWords.has(word) && isStandAt(tokens, hit.from)) return false;
    // "Clog floor", "Synth stack (summed in rack)", "XLR out of rack".
    if (tomPlaces.has(word)) {
      const before = tokens[hit.from - 1];
      const isPlace = before?.kind === 'word' && !hits.some((it) => it.from < hit.from && it.to >= hit.from);
      return !isPlace && !others(hit).some((it) => !meansAny(it, ofKit));
    }
    // "Keys 2 / pads": sounds of the keyboard.
    if (padWords.has(word))
      return !others(hit).some((it) =>
        it.senses.some(({ meaning }) => meaning === 'keys' || meaning === 'synth'),
      );
    // "Kick (trigger + mic)" is the kick.
    if (triggers.has(word))
      return !(others(hit).some((it) => meansAny(it, shells)) && hits.some((it) => isPickUp(it, 'mic')));
    return true;
  });
}

const isPickUp = (hit: Hit<string, string>, pickUp: PickUp) =>
  hit.senses.some((sense) => sense.subject === 'pickUp' && sense.meaning === pickUp);

/** "Kick in/out" is read as a kick in and the word out: it is both halves of a kick. */
function openHalves(read: SourceName): void {
  const half = halves.find(({ stem, other }) => read.stem === stem && read.parts.has(other));
  if (!half) return;
  read.stem = half.whole;
  read.parts = new Set([...read.parts, half.part, half.other]);
}

const halves: { stem: Stem; part: Part; other: Part; whole: Stem }[] = [
  { stem: 'kick in', part: 'inside', other: 'outside', whole: 'kick' },
  { stem: 'kick out', part: 'outside', other: 'inside', whole: 'kick' },
  { stem: 'snare top', part: 'top', other: 'bottom', whole: 'snare' },
  { stem: 'snare bottom', part: 'bottom', other: 'top', whole: 'snare' },
];

const weight = (stem: Stem) => stemWeights[stem] ?? 3;

/** `weak`: the word may as well be a part of another source, as "lead" in "Guitar (lead)". */
type StemHit = { stem: Stem; certainty: number; weak: boolean; inBrackets: boolean };

type Meanings = {
  stems: StemHit[];
  parts: Set<Part>;
  sides: Set<SideWord>;
  pickUps: Set<PickUp>;
  stageSide: boolean;
};

const everywhere: ReadonlySet<Language> = new Set<Language>(['trade', 'en']);

/** Of two sources of one spelling, the one of the rider's own language. */
function sourceSense(
  hit: Hit<string, string>,
  tongue: Tongue,
): Hit<string, string>['senses'][number] | undefined {
  const senses = hit.senses.filter((sense) => sense.subject === 'source');
  if (senses.length < 2) return senses[0];
  const isIn = (known: ReadonlySet<Language>) =>
    senses.find((sense) => [...sense.languages].some((language) => known.has(language)));
  return isIn(tongue.spoken) ?? isIn(everywhere) ?? senses[0];
}

function sortHits(hits: readonly Hit<string, string>[], tokens: readonly Token[], tongue: Tongue): Meanings {
  const found: Meanings = {
    stems: [],
    parts: new Set(),
    sides: new Set(),
    pickUps: new Set(),
    stageSide: false,
  };
  for (const hit of hits) {
    const key = tokens
      .slice(hit.from, hit.to)
      .filter((token) => token.kind !== 'mark')
      .map((token) => token.text)
      .join('');
    // "The 1st" is no stereo.
    if (key === 'st' && tokens[hit.from - 1]?.end === tokens[hit.from]?.start) continue;
    const stem = sourceSense(hit, tongue);
    const side = hit.senses.find((sense) => sense.subject === 'side');
    const lone = hits.length === 1;
    // "Orchestra SX": a side where a word stands before it.
    const isBySelf = lone && hit.from === 0;
    // "Rack", "Main", "Out" beside another source say which part; alone they are the source.
    for (const sense of hit.senses) {
      if (sense.subject === 'source') continue;
      if (sense.subject === 'part' && !(stem && lone)) found.parts.add(sense.meaning as Part);
      if (sense.subject === 'pickUp') found.pickUps.add(sense.meaning as PickUp);
    }
    if (side && !(stem && isBySelf)) {
      found.sides.add(side.meaning as SideWord);
      if (stageSides.has(key)) found.stageSide = true;
    }
    if (stem && !(side && !isBySelf)) {
      const weak = onlyAlone.has(key) || hit.senses.some((sense) => sense.subject === 'part');
      const inBrackets = tokens.slice(0, hit.from).some(({ text }) => text === '(' || withWords.has(text));
      found.stems.push({ stem: stem.meaning as Stem, certainty: hit.certainty, weak, inBrackets });
      // A compound such as "Leadgitarre" brings several stems in one word.
      for (const more of hit.senses) {
        if (more !== stem && more.subject === 'source' && hit.certainty === 0.85)
          found.stems.push({ stem: more.meaning as Stem, certainty: hit.certainty, weak, inBrackets });
      }
    }
  }
  const isOpen = found.stems.every(({ stem }) => stem === 'electronic drums');
  if (isOpen) found.stems.push(...firstOfPhrases(hits, tokens, tongue));
  // A word that is only nearly another's spelling says nothing beside one that is written right.
  if (found.stems.some((it) => it.certainty === 1))
    found.stems = found.stems.filter((it) => it.certainty === 1 || it.certainty > misspelt);
  return found;
}

/** "Kick Mikro", "kick trigger": a word for a microphone or a trigger that says what it is on. */
const firstOfPhrases = (
  hits: readonly Hit<string, string>[],
  tokens: readonly Token[],
  tongue: Tongue,
): StemHit[] =>
  hits
    .filter((hit) => hit.to - hit.from > 1 && (isPickUp(hit, 'mic') || meansAny(hit, electronic)))
    .flatMap((hit) => {
      const [first] = findHits(nameWords, tokens.slice(hit.from, hit.from + 1), tongue.spoken);
      const stem = first && sourceSense(first, tongue)?.meaning;
      return stem ? [{ stem: stem as Stem, certainty: 1, weak: false, inBrackets: false }] : [];
    });
const electronic: ReadonlySet<string> = new Set(['electronic drums']);

function coveredTokens(hits: readonly Hit<string, string>[]): Set<number> {
  const covered = new Set<number>();
  for (const hit of hits) for (let at = hit.from; at < hit.to; at++) covered.add(at);
  return covered;
}

function numbersLeft(
  tokens: readonly Token[],
  covered: ReadonlySet<number>,
): { ordinal: number | null; count: number } {
  let ordinal: number | null = null;
  let count = 1;
  tokens.forEach((token, at) => {
    if (token.kind !== 'number' || covered.has(at)) return;
    const value = Number(token.text);
    if (!Number.isSafeInteger(value) || value > 64) return;
    const before = tokens[at - 1];
    const after = tokens[at + 1];
    const afterNext = tokens[at + 2];
    if (after?.text === 'x' || after?.text === '×' || before?.text === 'x' || before?.text === '×') {
      if (value >= 2 && value <= 16) count = value;
    } else if (
      after &&
      ['+', '/', '&', '-'].includes(after.text) &&
      afterNext?.kind === 'number' &&
      Number(afterNext.text) === value + 1
    ) {
      ordinal ??= value;
      count = Math.max(count, 2);
    } else if (at === 0 && value >= 2 && value <= 8 && after?.kind === 'word' && after.text.endsWith('s'))
      count = value;
    else ordinal ??= value;
  });
  return { ordinal, count };
}

function unknownWords(tokens: readonly Token[], covered: ReadonlySet<number>, tongue: Tongue): string[] {
  const words: string[] = [];
  tokens.forEach((token, at) => {
    if (token.kind !== 'word' || covered.has(at) || fillers.has(token.text)) return;
    if (token.text.length < 2 && !tongue.names.has(token.text)) return;
    words.push(token.raw);
  });
  return words;
}

const ranges = new Set(['high', 'low', 'middle']);

function baseOf(tokens: readonly Token[], hits: readonly Hit<string, string>[]): string {
  const dropped = new Set<number>();
  for (const hit of hits) {
    const isSide = hit.senses.some((sense) => sense.subject === 'side');
    const isPart = hit.senses.some((sense) => sense.subject === 'source');
    // "Piano, low (L)": the side says it once more.
    const isRange =
      hits.length > 2 &&
      hits.some((it) => it !== hit && it.senses.some((sense) => sense.subject === 'side')) &&
      hit.senses.every((sense) => sense.subject === 'part' && ranges.has(sense.meaning));
    if ((isSide && !(isPart && hits.length === 1)) || isRange)
      for (let at = hit.from; at < hit.to; at++) dropped.add(at);
  }
  return tokens
    .filter((token, at) => token.kind !== 'mark' && !dropped.has(at))
    .map((token) => token.text)
    .join(' ');
}

/** The kind that a stem is together with its parts and its pick-up, and how certain that is. */
export function kindOf(name: SourceName, pickUp: PickUp | null): { kind: SourceKind; certainty: number } {
  const { stem, parts } = name;
  if (stem === null) return { kind: 'other', certainty: 0 };
  const exact = refinements.find(
    (row) =>
      row.stem === stem &&
      (row.part === undefined || parts.has(row.part)) &&
      (row.pickUp === undefined || pickUp === row.pickUp || name.pickUps.has(row.pickUp)),
  );
  if (exact) return { kind: exact.kind, certainty: Math.min(name.certainty, exact.certainty ?? 1) };
  return { kind: kindOfStem(stem), certainty: name.certainty };
}

/** The kind that a stem is by itself. */
export function kindOfStem(stem: Stem): SourceKind {
  return stem in likelyKinds ? likelyKinds[stem as UnsettledStem] : (stem as SourceKind);
}

type UnsettledStem = Exclude<Stem, SourceKind>;
const likelyKinds: Record<UnsettledStem, SourceKind> = {
  guitar: 'electric guitar',
  conductor: 'talkback',
  soloist: 'lead vocal',
  mc: 'presenter',
};

/** Stem and the words beside it to the exact kind; the first row that fits holds. */
const refinements: { stem: Stem; part?: Part; pickUp?: PickUp; kind: SourceKind; certainty?: number }[] = [
  { stem: 'kick', part: 'inside', kind: 'kick in' },
  { stem: 'kick', part: 'outside', kind: 'kick out' },
  { stem: 'snare', part: 'bottom', kind: 'snare bottom' },
  { stem: 'snare', part: 'top', kind: 'snare top' },
  { stem: 'tom', part: 'low', kind: 'floor tom' },
  { stem: 'tom', part: 'bottom', kind: 'floor tom', certainty: 0.8 },
  { stem: 'tom', part: 'high', kind: 'rack tom' },
  { stem: 'tom', part: 'top', kind: 'rack tom', certainty: 0.8 },
  { stem: 'tom', part: 'middle', kind: 'rack tom' },
  { stem: 'snare', part: 'low', kind: 'snare bottom', certainty: 0.85 },
  { stem: 'drums', part: 'synthetic', kind: 'electronic drums' },
  { stem: 'tom', part: 'synthetic', kind: 'electronic drums' },
  { stem: 'drums', part: 'electric', kind: 'electronic drums' },
  { stem: 'bass', part: 'synthetic', kind: 'synth bass' },
  { stem: 'bass', pickUp: 'di', kind: 'bass di' },
  { stem: 'bass', pickUp: 'line', kind: 'bass di', certainty: 0.9 },
  { stem: 'bass', part: 'amp', kind: 'bass amp' },
  // Taken off the amplifier by a DI.
  { stem: 'bass amp', pickUp: 'di', kind: 'bass di', certainty: 0.75 },
  { stem: 'bass', pickUp: 'mic', kind: 'bass amp' },
  { stem: 'guitar', part: 'acoustic', kind: 'acoustic guitar' },
  { stem: 'guitar', part: 'electric', kind: 'electric guitar' },
  { stem: 'guitar', part: 'amp', kind: 'electric guitar' },
  { stem: 'guitar', part: 'lead', kind: 'electric guitar', certainty: 0.9 },
  { stem: 'guitar', pickUp: 'mic', kind: 'electric guitar', certainty: 0.9 },
  { stem: 'guitar', pickUp: 'di', kind: 'electric guitar', certainty: 0.6 },
  { stem: 'guitar', kind: 'electric guitar', certainty: 0.75 },
  { stem: 'vocal', part: 'spare', kind: 'spare vocal' },
  { stem: 'vocal', part: 'guest', kind: 'guest vocal' },
  { stem: 'vocal', part: 'backing', kind: 'backing vocal' },
  { stem: 'vocal', part: 'lead', kind: 'lead vocal' },
  { stem: 'lead vocal', part: 'spare', kind: 'spare vocal' },
  { stem: 'lead vocal', part: 'backing', kind: 'backing vocal' },
  { stem: 'conductor', kind: 'talkback', certainty: 0.75 },
  // A soloist may play: only a microphone in the hand or on the head says that the soloist sings.
  { stem: 'soloist', pickUp: 'wireless', kind: 'lead vocal', certainty: 0.85 },
  { stem: 'soloist', kind: 'lead vocal', certainty: 0.65 },
  { stem: 'mc', kind: 'presenter', certainty: 0.85 },
  // A thing without a kind: how it is picked up is anybody's guess.
  { stem: 'other', kind: 'other', certainty: 0.6 },
  { stem: 'spare line', pickUp: 'mic', kind: 'spare vocal', certainty: 0.7 },
  { stem: 'spare line', pickUp: 'wireless', kind: 'spare vocal', certainty: 0.7 },
];

export function groupOfStem(stem: Stem): SourceGroup {
  return factsOfKind(kindOfStem(stem)).group;
}
