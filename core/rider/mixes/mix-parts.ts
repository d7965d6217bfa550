import { isAllIn } from '../inputs/details.ts';
import { withDigits } from '../language/count-words.ts';
import { findHits, lookUp } from '../language/lexicon.ts';
import { readSourceName } from '../language/source-name.ts';
import { hasWordOf, tidy, tokenize } from '../language/text.ts';
import {
  countWords,
  headWords,
  mixWords,
  openerWords,
  playerWords,
  positionWords,
  verbWords,
  wishWords,
} from '../language/vocabulary.ts';
import type { Walk } from '../page/walk-state.ts';
import { looksLikeName } from '../performers/line-up.ts';
import { namesListener } from './mix-heads.ts';
import { isDevice, isWhollyDevice, pieceFacts } from './mix-pieces.ts';

export function saysWish(text: string, walk: Walk): boolean {
  const { targets, amounts, self, sameAs, open } = pieceFacts(text, walk);
  return targets > 0 || amounts > 0 || self || sameAs || open;
}

const apiece =
  /(?<!\p{L})(?:each|apiece|one each|je|jeweils|pro person|chacune?|cada un[oa]|ciascun[oa]|ieder|elk|cada uma?)(?!\p{L})/giu;

/** A device and whose it is, in what format, how many, and nobody's name. */
export function isWhollyTold(text: string, walk: Walk): boolean {
  const plain = tidy(text.replace(apiece, ' ').replace(/^(?:on|auf|sur|en|su|op|em|in|via)\s+/i, ''));
  if (isWhollyDevice(plain, walk)) return true;
  const { targets, amounts, self } = pieceFacts(plain, walk);
  if (targets > 0 || amounts > 0 || self || saysMore(plain, walk)) return false;
  return isDevice(plain, walk) || saysFormat(plain, walk);
}

/** "A mono line is fine": few words around the format. */
const saysFormat = (text: string, walk: Walk) =>
  text.split(' ').length <= 5 &&
  findHits(mixWords, tokenize(text), walk.tongue.spoken, walk.tongue.names).some(
    ({ senses, certainty }) =>
      certainty === 1 && senses[0]?.subject === 'format' && /^(?:mono|stereo)$/.test(senses[0].meaning),
  ) &&
  /mono|st[eé]r[eé]o/i.test(text);

/** A word beside those for a device that may be a name. */
function saysMore(text: string, walk: Walk): boolean {
  const tokens = tokenize(text);
  const { spoken, names } = walk.tongue;
  const hits = findHits(mixWords, tokens, spoken, names);
  return tokens.some(
    (token, at) =>
      !hits.some((hit) => hit.from <= at && at < hit.to) &&
      (/^\p{Lu}/u.test(token.raw) || names.has(token.text)),
  );
}

/** "The singer's wedge" names the singer; a source may be heard and so is no place. */
export function isPlace(text: string, walk: Walk): boolean {
  const plain = text.replace(
    /^(?:(?:at|on|in|an|am|auf|im|à|au|a|en|al|op|no|na|the|der|dem|le|la|el|il|het|de|o)\s+)+/iu,
    '',
  );
  return isAllIn(positionWords, plain, walk.tongue) && pieceFacts(plain, walk).targets === 0;
}

/** "In-ears stereo Dora": the words for a device at the beginning of a text. */
export function leadingDevice(text: string, walk: Walk): { text: string; end: number } | null {
  const tokens = tokenize(text);
  const hits = findHits(mixWords, tokens, walk.tongue.spoken, walk.tongue.names);
  let at = 0;
  let end = 0;
  let isNamed = false;
  for (;;) {
    while (/^(?:\d+|x|×)$/.test(tokens[at]?.text ?? '')) at += 1;
    const hit = hits.find((it) => it.from === at && it.certainty === 1);
    const subject = hit?.senses[0]?.subject;
    // "2 wedges own vocal": whose, and where, may belong to what follows.
    if (!hit || (isNamed && (subject === 'owner' || subject === 'position'))) break;
    isNamed ||= subject === 'device' || subject === 'elsewhere';
    at = hit.to;
    end = tokens[at]?.start ?? text.length;
  }
  return isNamed && end < text.length ? { text: tidy(text.slice(0, end)), end } : null;
}

/** "ANNA 2 wedges", "Anna centre": a name before the words for a device or a place. */
export function leadingPerson(
  text: string,
  walk: Walk,
  isLabelled: boolean,
): { text: string; end: number } | null {
  const tokens = tokenize(text);
  const hit = findHits(mixWords, tokens, walk.tongue.spoken, walk.tongue.names).find(
    (it) => it.from > 0 && it.certainty === 1,
  );
  if (!hit) return null;
  let from = hit.from;
  while (from > 0 && /^(?:\d+|x|×)$/.test(tokens[from - 1]?.text ?? '')) from -= 1;
  const end = tokens[from]?.start ?? 0;
  const name = tidy(text.slice(0, end));
  // "Quatro monitores" are counted.
  if (lookUp(countWords, name, walk.tongue.spoken) !== null) return null;
  const behind = text.slice(end);
  const isTold = isWhollyTold(behind, walk) || isPlace(behind, walk) || leadingDevice(behind, walk) !== null;
  // "B) the reeds, left": behind a number or letter any word is who listens.
  const isAny = isLabelled && name.split(' ').length <= 2 && !saysWish(name, walk) && !isDevice(name, walk);
  return isTold && (isAny || isPerson(name, walk, true) || isRole(name, walk)) ? { text: name, end } : null;
}

/** "In-ears for Maya": the word between them left out. */
export function withoutFor(text: string, walk: Walk): string {
  const tokens = tokenize(text);
  const hit = findHits(headWords, tokens, walk.tongue.spoken, walk.tongue.names).find(
    (it) => it.from === 0 && it.certainty === 1 && it.senses[0]?.meaning === 'for',
  );
  return hit ? text.slice(tokens[hit.to]?.start ?? 0) : text;
}

const nobody =
  /^(?:please|bitte|svp|merci|thanks|danke|gracias|grazie|obrigad[oa]|note|notes|nb|info|important|the|and|all|alle|no|kein|nur|only|plus)$/i;

const listed = /\s*(?:&|\+|\/|,|(?<!\p{L})(?:and|und|et|y|e|en)(?!\p{L}))\s*/iu;
const article = /^(?:the|our|der|die|das|le|la|les|el|los|las|il|lo|gli|i|de|het|o|a|os|as)\s+/i;

/** Names or words for players, at least one of them. Where a name is due, "Saar" is a person and no misspelt source. */
export function isPerson(text: string, walk: Walk, isDue = false): boolean {
  const each = text.split(listed);
  return (
    each.every((name) => isOnePerson(name, walk, isDue) || isOneRole(name, walk)) &&
    each.some((name) => isOnePerson(name, walk, isDue))
  );
}

function isOnePerson(name: string, walk: Walk, isDue: boolean): boolean {
  const plain = name.replace(article, '');
  if (plain.length < 2 || plain.split(' ').length > 3 || nobody.test(plain)) return false;
  const { spoken, names } = walk.tongue;
  if (lookUp(playerWords, plain, spoken) !== null) return true;
  const { targets, amounts, self, device, sameAs, open, words } = pieceFacts(plain, walk);
  if (amounts > 0 || self || device || sameAs || open || isPartOfSentence(plain, walk)) return false;
  // "Chant de Lise" is heard.
  if (hasWordOf(plain, names) && (targets === 0 || words < 3)) return true;
  const tokens = tokenize(plain);
  const hits = findHits(wishWords, tokens, spoken, names);
  // "MC Tano": what they do, and a name.
  const isNamed = tokens.some(
    (token, at) => /^\p{Lu}\p{L}/u.test(token.raw) && !hits.some((hit) => hit.from <= at && at < hit.to),
  );
  return (
    hits.every((hit) => isDue && (isNamed || hit.certainty < 1 || isMine(hit))) &&
    withDigits(plain, walk.tongue) === plain &&
    looksLikeName(plain, walk) &&
    namesListener(plain.split(' ')[0] ?? '', walk)
  );
}

/** "Mia" is mine in Italian, and a name where one is due. */
const isMine = ({ senses }: { senses: { subject: string; meaning: string }[] }) =>
  senses[0]?.subject === 'self' && senses[0].meaning === 'own';

/** "Ada uses", "for Ada", "and Ada": a name and more, though not "Ada de Sousa". */
function isPartOfSentence(text: string, walk: Walk): boolean {
  const tokens = tokenize(text);
  const { spoken, names } = walk.tongue;
  const isSmall = (at: number) => at === 0 || /^\p{Ll}/u.test(tokens[at]?.raw ?? '');
  const joins = [headWords, verbWords].flatMap((table) =>
    findHits<string, string>(table, tokens, spoken, names),
  );
  return (
    tokens.length > 1 &&
    (joins.some(
      (hit) =>
        hit.certainty === 1 && isSmall(hit.from) && hit.senses.every(({ meaning }) => meaning !== 'of'),
    ) ||
      findHits(openerWords, tokens, spoken, names).some((hit) => hit.from === 0 && hit.certainty === 1))
  );
}

/** Sources or groups of them, and no amount. */
export const isRole = (text: string, walk: Walk) => text.split(listed).every((name) => isOneRole(name, walk));

function isOneRole(text: string, walk: Walk): boolean {
  const plain = text.replace(article, '');
  const { targets, amounts, self, device, sameAs, open, words } = pieceFacts(plain, walk);
  if (targets !== 1 || amounts > 0 || self || device || sameAs || open || words > 3) return false;
  const { stem, unknown } = readSourceName(plain, walk.tongue);
  const sense = lookUp(wishWords, plain, walk.tongue.spoken)?.[0];
  // "All" and "the others" are nobody in particular.
  if (sense?.meaning === 'everything' || sense?.meaning === 'rest') return false;
  return (stem !== null && unknown.length === 0) || sense?.subject === 'group';
}
