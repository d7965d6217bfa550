import { isAllIn } from '../inputs/details.ts';
import { withoutMixBullet } from '../language/bullets.ts';
import { withDigits } from '../language/count-words.ts';
import { findHits, lookUp } from '../language/lexicon.ts';
import { letterNumber, numberedText } from '../language/numbers.ts';
import { readSourceName } from '../language/source-name.ts';
import { hasWordOf, tidy, tokenize } from '../language/text.ts';
import {
  countWords,
  headWords,
  mixWords,
  playerWords,
  positionWords,
  wishWords,
} from '../language/vocabulary.ts';
import type { Walk } from '../page/walk-state.ts';
import { looksLikeName } from '../performers/line-up.ts';
import { namesListener, plainHead } from './mix-heads.ts';
import { isDevice, isWhollyDevice, leadingLabel, type MixLabel, pieceFacts } from './mix-pieces.ts';

/**
 * A line of a list of mixes: in any order a number or letter, who listens, where they stand and what they listen
 * through; then what they wish. Each may be missing.
 */
export type MixLine = {
  bulleted: boolean;
  /** "Mix 1" is called so; "1." and "a)" only count. */
  labelled: 'by name' | 'by number' | null;
  label: MixLabel | null;
  listener: string;
  /** "Drums" may be who listens or what is heard; "Anna" and "drummer" are persons. */
  isPerson: boolean;
  /** What the listener plays. */
  role: string;
  device: string;
  place: string;
  /** From the first word of the wishes to the end of the line. */
  wish: string;
  /** It ends with a colon: what is meant stands below. */
  isOpen: boolean;
};

const nothingTold: MixLine = {
  bulleted: false,
  labelled: null,
  label: null,
  listener: '',
  isPerson: false,
  role: '',
  device: '',
  place: '',
  wish: '',
  isOpen: false,
};

/** Takes a line apart, or null where it says something that is no part of a list of mixes. */
export function readMixLine(text: string, walk: Walk): MixLine | null {
  const bare = withoutMixBullet(text);
  const named = leadingLabel(bare, walk);
  const counted = named ? null : countedLabel(bare, walk);
  const line: MixLine = {
    ...nothingTold,
    bulleted: bare !== text,
    labelled: named ? 'by name' : counted ? 'by number' : null,
    label: named ?? counted,
    isOpen: /:\s*$/.test(text),
  };
  return takeFragments(line.label?.rest ?? bare, line, walk) ? line : null;
}

/**
 * The cell of a table that tells whose a mix is: a head without its number. Where its words are no head, what stands
 * before the first mark is who listens.
 */
export function readMixCell(text: string, walk: Walk): MixLine {
  const line: MixLine = { ...nothingTold, labelled: 'by name' };
  const draft = { ...line };
  // "Side fills for the cast"
  const told = plainHead(text, walk);
  if (takeFragments(told.endsWith(')') ? told : text, draft, walk) && draft.wish === '') return draft;
  const [first, ...behind] = fragmentsOf(text);
  const cell = { ...line, listener: first?.text ?? '' };
  for (const { text: more } of behind) {
    if (isWhollyTold(more, walk) || isDevice(more, walk)) cell.device = join(cell.device, more);
    else if (isPlace(more, walk)) cell.place = join(cell.place, more);
    else cell.role = join(cell.role, more);
  }
  return cell;
}

/** "1.", "(2)", "#3", "a)", "B -" */
function countedLabel(text: string, walk: Walk): MixLabel | null {
  const [, small, capital, behind = ''] =
    /^\(?(?:([a-h])[).:]|([A-H])(?:[).:]|\s+[-–—]))\s*(\S.*)$/su.exec(text) ?? [];
  const letter = small ?? capital;
  if (letter !== undefined) {
    const number = letterNumber(letter);
    return { label: `Mix ${number}`, numbers: [number], rest: behind };
  }
  const told = numberedText(text);
  if (!told || !(told.marked || walk.runs.has(walk.at))) return null;
  // "2 wedges Anna" counts wedges.
  if (!told.marked && isDevice(told.rest.split(/[\s,]/)[0] ?? '', walk)) return null;
  return { label: `Mix ${told.numbers.join('/')}`, numbers: told.numbers, rest: told.rest };
}

type Fragment = {
  text: string;
  start: number;
  inBrackets: boolean;
  /** The mark behind it. */
  joint: string;
};

/** Marks between what a head tells. A comma in a number and a stroke between two sides are none. */
const joints =
  /\s*[,;:](?=\s|$)\s*|\s+[-–—]+\s+|\s*[()[\]]\s*|\s*=>?\s*|\s*→\s*|\s*\|\s*|\s+\/\s+|\s+@\s+|\s{2,}|(?<=\p{L}{3})\.(?:\s+|$)/gu;

function fragmentsOf(text: string): Fragment[] {
  const fragments: Fragment[] = [];
  let start = 0;
  let inBrackets = false;
  const push = (end: number, joint: string) => {
    const piece = text.slice(start, end);
    if (tidy(piece) === '') return;
    fragments.push({
      text: piece.trim(),
      start: start + piece.length - piece.trimStart().length,
      inBrackets,
      joint,
    });
  };
  for (const joint of text.matchAll(joints)) {
    push(joint.index, joint[0].trim());
    start = joint.index + joint[0].length;
    if (/[([]/.test(joint[0])) inBrackets = true;
    else if (/[)\]]/.test(joint[0])) inBrackets = false;
  }
  push(text.length, '');
  return fragments;
}

function takeFragments(text: string, line: MixLine, walk: Walk): boolean {
  const fragments = fragmentsOf(text);
  for (const [at, fragment] of fragments.entries()) {
    const taken = takeFragment(fragment, fragments.slice(at + 1), line, walk);
    if (taken === fragment.text.length) continue;
    if (fragment.inBrackets) return false;
    line.wish = text.slice(fragment.start + taken);
    return saysWish(line.wish, walk);
  }
  return true;
}

export function saysWish(text: string, walk: Walk): boolean {
  const { targets, amounts, self, sameAs, open } = pieceFacts(text, walk);
  return targets > 0 || amounts > 0 || self || sameAs || open;
}

/** Takes what a fragment tells of the mix, piece by piece, and says how many letters of it that was. */
function takeFragment(fragment: Fragment, behind: readonly Fragment[], line: MixLine, walk: Walk): number {
  let taken = 0;
  for (;;) {
    const rest = fragment.text.slice(taken);
    if (takeWhole({ ...fragment, text: rest }, behind, line, walk)) return fragment.text.length;
    const part = leadingDevice(rest, walk) ?? (line.listener === '' ? leadingPerson(rest, walk) : null);
    if (!part || !takeWhole({ ...fragment, text: part.text, joint: 'device' }, behind, line, walk)) break;
    taken += part.end;
  }
  if (line.listener !== '' || taken > 0) return taken;
  // "Two wedges for the horns": told in a sentence's order.
  const plain = plainHead(fragment.text, walk);
  if (plain === fragment.text) return 0;
  const inner = fragmentsOf(plain);
  const draft = { ...line };
  const isTold = inner.length > 1 && inner.every((it, at) => takeWhole(it, inner.slice(at + 1), draft, walk));
  if (isTold) Object.assign(line, draft);
  return isTold ? fragment.text.length : 0;
}

function takeWhole(fragment: Fragment, behind: readonly Fragment[], line: MixLine, walk: Walk): boolean {
  const { text, inBrackets } = fragment;
  if (isWhollyTold(text, walk)) line.device = join(line.device, text);
  else if (isPlace(text, walk)) line.place = join(line.place, text);
  else if (line.listener === '') return takeListener(fragment, behind, line, walk);
  else if (inBrackets && namesPlayer(text, line, walk)) {
    // "Singer (Anna)": the name in brackets is who listens, the word before it what they play.
    Object.assign(line, { role: line.listener, listener: text, isPerson: true });
  } else if (line.device === '' && isOneMore(text, line, behind, walk)) line.listener += `, ${text}`;
  else if (inBrackets && !saysWish(text, walk)) line.role = join(line.role, text);
  else if (isRole(text, walk) && (inBrackets || (line.device === '' && tellsDevice(behind, walk))))
    takeRole(text, inBrackets, line);
  else return false;
  return true;
}

/** "In-ears stereo Dora": the words for a device at the beginning of a text. */
function leadingDevice(text: string, walk: Walk): { text: string; end: number } | null {
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
function leadingPerson(text: string, walk: Walk): { text: string; end: number } | null {
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
  return isTold && (isPerson(name, walk, true) || isRole(name, walk)) ? { text: name, end } : null;
}

const join = (before: string, more: string) => (before === '' ? more : `${before}, ${more}`);

const apiece =
  /(?<!\p{L})(?:each|apiece|one each|je|jeweils|pro person|chacune?|cada un[oa]|ciascun[oa]|ieder|elk|cada uma?)(?!\p{L})/giu;

/** A device and whose it is, in what format, how many, and nobody's name. */
function isWhollyTold(text: string, walk: Walk): boolean {
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
function isPlace(text: string, walk: Walk): boolean {
  const plain = text.replace(
    /^(?:(?:at|on|in|an|am|auf|im|à|au|a|en|al|op|no|na|the|der|dem|le|la|el|il|het|de|o)\s+)+/iu,
    '',
  );
  return isAllIn(positionWords, plain, walk.tongue) && pieceFacts(plain, walk).targets === 0;
}

/** "Anna", "drummer", "Anna & Ben"; "Drums" where no list of sources goes on behind it. */
function takeListener(fragment: Fragment, behind: readonly Fragment[], line: MixLine, walk: Walk): boolean {
  const { joint } = fragment;
  const text = line.device === '' ? fragment.text : withoutFor(fragment.text, walk);
  const isDue =
    line.labelled !== null ||
    line.device !== '' ||
    /^[:([=|]|device/.test(joint) ||
    tellsDevice(behind, walk);
  // Behind a number or letter, and before a device or a colon, any word is who listens: "d) trumpeters (2 of them): ...".
  const isAny =
    line.labelled !== null &&
    !saysWish(text, walk) &&
    text.split(' ').length <= 3 &&
    (/^[:(]/.test(joint) || tellsDevice(behind, walk));
  const person = isAny || isPerson(text, walk, isDue);
  if (!person) {
    if (!isRole(text, walk) || (line.device !== '' && line.labelled === null && joint === '')) return false;
    const standsThere = line.labelled !== null && behind[0] !== undefined && isPlace(behind[0].text, walk);
    if (/^[,;.]$/.test(joint) && !standsThere && !tellsDevice(behind, walk)) return false;
  }
  Object.assign(line, { listener: text, isPerson: person });
  return true;
}

/** "In-ears for Maya": the word between them left out. */
function withoutFor(text: string, walk: Walk): string {
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
function isPerson(text: string, walk: Walk, isDue = false): boolean {
  const each = text.split(listed);
  return (
    each.every((name) => isOnePerson(name, walk, isDue) || isOneRole(name, walk)) &&
    each.some((name) => isOnePerson(name, walk, isDue))
  );
}

function isOnePerson(name: string, walk: Walk, isDue: boolean): boolean {
  const plain = name.replace(article, '');
  if (plain === '' || plain.split(' ').length > 3 || nobody.test(plain)) return false;
  const { spoken, names } = walk.tongue;
  if (lookUp(playerWords, plain, spoken) !== null) return true;
  const { amounts, self, device, sameAs, open } = pieceFacts(plain, walk);
  if (amounts > 0 || self || device || sameAs || open) return false;
  if (hasWordOf(plain, names)) return true;
  const tokens = tokenize(plain);
  const hits = findHits(wishWords, tokens, spoken, names);
  // "MC Tano": what they do, and a name.
  const isNamed = tokens.some(
    (token, at) => /^\p{Lu}\p{L}/u.test(token.raw) && !hits.some((hit) => hit.from <= at && at < hit.to),
  );
  return (
    hits.every((hit) => isDue && (isNamed || hit.certainty < 1)) &&
    withDigits(plain, walk.tongue) === plain &&
    looksLikeName(plain, walk) &&
    namesListener(plain.split(' ')[0] ?? '', walk)
  );
}

/** Sources or groups of them, and no amount. */
const isRole = (text: string, walk: Walk) => text.split(listed).every((name) => isOneRole(name, walk));

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

/** "Anna, Ben - one wedge each" */
const isOneMore = (text: string, line: MixLine, behind: readonly Fragment[], walk: Walk) =>
  line.isPerson &&
  line.place === '' &&
  line.role === '' &&
  isPerson(text, walk, true) &&
  tellsDevice(behind, walk);

const namesPlayer = (text: string, line: MixLine, walk: Walk) =>
  (!line.isPerson || lookUp(playerWords, line.listener, walk.tongue.spoken) !== null) &&
  isPerson(text, walk) &&
  lookUp(playerWords, text, walk.tongue.spoken) === null;

/** A device follows, with no more before it than a place, more names and one word for what they play. */
function tellsDevice(behind: readonly Fragment[], walk: Walk): boolean {
  const others = behind.filter(({ text }) => !isPlace(text, walk) && !isPerson(text, walk));
  const [first, second] = others;
  if (!first) return false;
  return tells(first, walk) || (second !== undefined && isRole(first.text, walk) && tells(second, walk));
}

const tells = ({ text }: Fragment, walk: Walk) =>
  isWhollyTold(text, walk) || leadingDevice(text, walk) !== null;

/** "Anna (drums)" plays them, "Dora, Drums, in-ears" stands there. */
function takeRole(text: string, inBrackets: boolean, line: MixLine): void {
  if (!inBrackets && line.place === '' && line.isPerson) line.place = text;
  else line.role = join(line.role, text);
}
