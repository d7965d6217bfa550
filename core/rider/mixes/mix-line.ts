import { withoutMixBullet } from '../language/bullets.ts';
import { findHits, lookUp } from '../language/lexicon.ts';
import { letterNumber, numberedText } from '../language/numbers.ts';
import { listed, tidy, tokenize } from '../language/text.ts';
import {
  mixWords,
  playerWords,
  positionWords,
  titleLexicon,
  verbWords,
  wishWords,
} from '../language/vocabulary.ts';
import type { Walk } from '../page/walk-state.ts';
import { readHead } from './mix-head.ts';
import {
  isPerson,
  isPlace,
  isRole,
  isWhollyTold,
  leadingDevice,
  leadingPerson,
  saysWish,
  withoutFor,
} from './mix-parts.ts';
import { isDevice, leadingLabel, type MixLabel } from './mix-pieces.ts';

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
  const head = readHead(text, walk);
  if (head && head.listener !== '' && head.device !== '') return { ...line, ...head };
  if (takeFragments(text, draft, walk) && draft.wish === '') return draft;
  const [first, ...behind] = fragmentsOf(text);
  const cell = { ...line, listener: first?.text ?? '' };
  for (const { text: more } of behind) {
    if (isWhollyTold(more, walk) || isDevice(more, walk)) cell.device = listed(cell.device, more);
    else if (isPlace(more, walk)) cell.place = listed(cell.place, more);
    else cell.role = listed(cell.role, more);
  }
  return cell;
}

/** "1.", "(2)", "#3", "a)", "B -" */
export function countedLabel(text: string, walk: Walk): MixLabel | null {
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

/** Takes what a fragment tells of the mix, piece by piece, and says how many letters of it that was. */
function takeFragment(fragment: Fragment, behind: readonly Fragment[], line: MixLine, walk: Walk): number {
  let taken = 0;
  for (;;) {
    const rest = fragment.text.slice(taken);
    if (takeWhole({ ...fragment, text: rest }, behind, line, walk)) return fragment.text.length;
    const part =
      leadingDevice(rest, walk) ??
      (line.listener === '' ? leadingPerson(rest, walk, line.labelled !== null) : null);
    if (!part || !takeWhole({ ...fragment, text: part.text, joint: 'device' }, behind, line, walk)) break;
    taken += part.end;
  }
  if (line.listener !== '' || taken > 0) return taken;
  // "Two wedges for the horns": told in a sentence's order.
  const head = readHead(fragment.text, walk);
  if (!head || head.listener === '' || (head.device + head.place === '' && !head.isPerson)) return 0;
  Object.assign(line, head, {
    device: listed(line.device, head.device),
    place: listed(line.place, head.place),
  });
  return fragment.text.length;
}

function takeWhole(fragment: Fragment, behind: readonly Fragment[], line: MixLine, walk: Walk): boolean {
  const { text, inBrackets } = fragment;
  // "(Own radio system)": in brackets an unknown word is no name.
  if (isWhollyTold(text, walk) || (inBrackets && line.listener !== '' && isDevice(text, walk)))
    line.device = listed(line.device, text);
  else if (isPlace(text, walk)) line.place = listed(line.place, text);
  else if (line.listener === '') return takeListener(fragment, behind, line, walk);
  else if (inBrackets && namesPlayer(text, line, walk)) {
    // "Singer (Anna)": the name in brackets is who listens, the word before it what they play.
    Object.assign(line, { role: line.listener, listener: text, isPerson: true });
  } else if (!line.isPerson && line.role === '' && isPerson(text, walk, true) && tellsDevice(behind, walk)) {
    // "Drums - Dora - in-ears"
    Object.assign(line, { role: line.listener, listener: text, isPerson: true });
  } else if (line.device === '' && isOneMore(text, line, behind, walk)) line.listener += `, ${text}`;
  else if (inBrackets && !saysWish(text, walk)) line.role = listed(line.role, text);
  else if (isRole(text, walk) && (inBrackets || (line.device === '' && tellsDevice(behind, walk))))
    takeRole(text, inBrackets, line);
  else return false;
  return true;
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
  const person = isAny || isPerson(text, walk, isDue) || isUnknownName(text, joint, walk);
  if (!person) {
    if (!isRole(text, walk) || (line.device !== '' && line.labelled === null && joint === '')) return false;
    const standsThere = line.labelled !== null && behind[0] !== undefined && isPlace(behind[0].text, walk);
    if (/^[,;.]$/.test(joint) && !standsThere && !tellsDevice(behind, walk)) return false;
  }
  Object.assign(line, { listener: text, isPerson: person });
  return true;
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
  else line.role = listed(line.role, text);
}

/**
 * "spud - loads of vocals" among lines of the same shape: a word nobody knows, before the mark that stands in the
 * lines around it too, is who listens.
 */
function isUnknownName(text: string, joint: string, walk: Walk): boolean {
  if (walk.section !== 'mixes' || !/^[:=–-]$/.test(joint) || text.split(' ').length > 2) return false;
  if (!writer.test(text) && isKnownWord(text, walk)) return false;
  const shape = new RegExp(`^\\W*\\p{L}[\\p{L}'’. ]{1,24}?\\s*${joint}\\s`, 'u');
  const around = walk.lines.slice(Math.max(0, walk.at - 2), walk.at + 3);
  return around.filter((line) => shape.test(line.text)).length > 1;
}

/** Who writes the rider. */
const writer = /^(?:me|myself|ich|moi|yo|io|ik|eu)$/i;

const isKnownWord = (text: string, walk: Walk) =>
  [wishWords, mixWords, verbWords, titleLexicon, positionWords].some(
    (table) => findHits<string, string>(table, tokenize(text), walk.tongue.spoken).length > 0,
  );
