import { findHits } from '../language/lexicon.ts';
import { groupOfStem } from '../language/source-name.ts';
import { type Token, tokenize } from '../language/text.ts';
import { wishWords } from '../language/vocabulary.ts';
import type { WorkMix } from '../mixes/build-mixes.ts';
import type { Work } from '../page/work.ts';
import { ownInputs, performerNamed } from '../performers/performers.ts';
import { settleAmounts } from './wish-amounts.ts';
import { type Item, isTarget, subjectsOf, type WishHit } from './wish-item.ts';
import { isPlural, keyOf, withNamesWhole } from './wish-names.ts';

/** What a text of a wish says, word by word. */
export function hitsIn(work: Work, tokens: readonly Token[]): WishHit[] {
  const { spoken, names } = work.tongue;
  // "DB" is short for the double bass, and behind a number for decibels.
  const hits = findHits(wishWords, tokens, spoken, names).filter(
    ({ from, to }) => tokens[from - 1]?.kind !== 'number' || keyOf(tokens.slice(from, to)) !== 'db',
  );
  return withNamesWhole(work, tokens, settleAmounts(work, tokens, hits));
}

function itemOf(work: Work, text: string): Item {
  const tokens = tokenize(text);
  return { tokens, hits: hitsIn(work, tokens), text };
}

/** "Celle d'Achille", "die van Fenne", "la de Quim": somebody else's of what was named before. */
const ofAnother =
  /(?<!\p{L})(?:th(?:at|ose) of|the ones? of|celles? d['’]|(?:celles?|celui|ceux) d(?:e|u|es)(?!\p{L})|celui d['’]|quell[aoei] d(?:i|el|ella|ello|ei|egli|elle)(?!\p{L})|quell[aoei] dell['’]|(?:die|dat) van|(?:die|der|das|den) (?:von|vom)|(?:la|el|las|los) del?|(?<!\p{L}\s)[ao]s? d[aoe]s?)\s*(?=\p{Lu})/iu;

/** "La suya", "un peu de la sienne", "a dele", "eigener leise": one's own of what was named before. */
const ofOneself =
  /(?<!\p{L})(?:(?:the |)(?:his|her|their|my) own(?: one)?|hers|mine|theirs|(?:la|le|les) (?:siennes?|siens?|miennes?|miens?|leurs?)|(?:la|el|las|los) (?:suy[ao]s?|mí[ao]s?|propi[ao]s?)|(?:d?e?l?l?a|il|del|le|delle|i|dei) (?:su[ao]|mi[ao]|sue|suoi|miei|mie|propri[ao]|propri|proprie)|(?:d?[ao]s?) (?:sua|seu|suas|seus|dele|dela|deles|delas|minha|meu|própri[ao])|(?:de|het|die) (?:zijne|hare|hunne|mijne|eigen)|die van (?:haar|hem|hun|mij|zichzelf)(?:zelf)?|(?:(?:die|der|das|den|dem|von) )?(?:eigene[nrsm]?|seine[nrsm]?|ihre[nrsm]?|meine[nrsm]?))(?=$|\s*[,;()]|\s+(?:\p{Ll}+)$|\s+\+)/iu;

/**
 * Items that only say whose of what was named before: "his voice and that of Ana", "the voices of Bo and Cy". The
 * source is put where they leave it out. Remembers the last source of the mix for the items to come.
 */
export function withReferences(work: Work, mix: WorkMix, items: readonly Item[]): Item[] {
  const told: Item[] = [];
  for (const [at, item] of items.entries()) {
    const before = told.at(-1);
    const text =
      referenceIn(work, item, mix.lastSource) ??
      (before && sharesSource(work, before, item) ? `${sourceIn(before)} ${item.text}` : null) ??
      (before && isVoiceOfSame(work, before, item) ? `own ${item.text}` : null) ??
      (before ? ofSamePerson(work, before, item) : null) ??
      sourceBehind(work, item, items[at + 1]);
    const full = text === null ? item : itemOf(work, text);
    told.push(full);
    mix.lastSource = sourceIn(full) ?? mix.lastSource;
  }
  return told;
}

function referenceIn(work: Work, item: Item, source: string | null): string | null {
  if (source === null) return null;
  const another = ofAnother.exec(item.text);
  // "Celle" is no misspelt cello.
  if (another && namesPerson(work, item) && sourceIn(item, another) === null)
    return `${item.text.slice(0, another.index)}${source} ${item.text.slice(another.index + another[0].length)}`;
  const own = ofOneself.exec(item.text);
  if (!own || sourceIn(item) !== null) return null;
  return `${item.text.slice(0, own.index)}own ${source}${item.text.slice(own.index + own[0].length)}`;
}

const namesPerson = ({ tongue }: Work, item: Item) =>
  item.tokens.some(({ text }) => tongue.names.has(text) || tongue.people.has(text));

const isSource = (hit: WishHit) =>
  subjectsOf(hit).some((subject) => subject === 'source' || subject === 'group') ||
  (subjectsOf(hit)[0] === 'self' && hit.senses[0]?.meaning === 'own voice');

/** The words of the source that an item names, without whose it is and outside of a match; null where there is none. */
function sourceIn(item: Item, besides?: RegExpExecArray): string | null {
  const [from, to] = besides ? [besides.index, besides.index + besides[0].length] : [0, 0];
  const hit = item.hits.find(
    (it) =>
      isSource(it) &&
      !it.senses.some(({ meaning }) => meaning === 'everything' || meaning === 'rest') &&
      !((item.tokens[it.from]?.start ?? 0) < to && from < (item.tokens[it.to - 1]?.end ?? 0)),
  );
  if (!hit) return null;
  if (subjectsOf(hit)[0] === 'self') return 'vocal';
  return item.text.slice(item.tokens[hit.from]?.start, item.tokens[hit.to - 1]?.end);
}

/** "The voices of Bo and Cy": a person alone behind a source of somebody else's. */
const sharesSource = (work: Work, before: Item, item: Item) =>
  sourceIn(before) !== null &&
  namesPerson(work, before) &&
  namesPerson(work, item) &&
  !item.hits.some(isTarget);

/** "Her keys and voice": the voice is hers too. */
const isVoiceOfSame = (work: Work, before: Item, item: Item) =>
  before.hits.some((hit) => subjectsOf(hit)[0] === 'self') &&
  item.hits.some((hit) => hit.senses.some(({ meaning }) => meaning === 'one voice')) &&
  !item.hits.some((hit) => subjectsOf(hit)[0] === 'self') &&
  !namesPerson(work, item);

/** "Bo's vocal and guitar": the guitar is Bo's, where there is one. */
function ofSamePerson(work: Work, before: Item, item: Item): string | null {
  if (
    sourceIn(before) === null ||
    namesPerson(work, item) ||
    item.hits.some((hit) => subjectsOf(hit)[0] === 'self')
  )
    return null;
  const source = item.hits.find(isSource);
  const person = before.tokens.find(({ text }) => work.tongue.names.has(text));
  const performer = person ? performerNamed(work, person.raw) : null;
  const word = source ? item.tokens[source.to - 1]?.text : undefined;
  if (!source || !performer || word === undefined || isPlural(word) || source.from > 0) return null;
  const stems = new Set(source.senses.map(({ meaning }) => meaning));
  const owns = ownInputs(work, performer.name).some(
    ({ read, name }) =>
      stems.has(read.kind) ||
      (name.stem !== null && (stems.has(name.stem) || stems.has(groupOfStem(name.stem)))),
  );
  return owns ? `${performer.name} ${item.text}` : null;
}

/** "Bo's and Cy's voices", "Bo und Cy Gesang": the source stands behind the last of them. */
function sourceBehind(work: Work, item: Item, next: Item | undefined): string | null {
  if (!next || item.hits.some(isTarget) || !namesPerson(work, item)) return null;
  const first = next.hits.find(isSource);
  const source = sourceIn(next);
  const person = next.tokens.findIndex(({ text }) => work.tongue.names.has(text));
  return first && source !== null && person >= 0 && person < first.from ? `${item.text} ${source}` : null;
}
