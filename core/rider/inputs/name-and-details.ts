import { channelNumbers } from '../language/numbers.ts';
import { groupOfStem, readSourceName, type SourceName } from '../language/source-name.ts';
import { tidy, tokenize } from '../language/text.ts';
import { mixWords, nameWords, pickUpWords, positionWords, standWords } from '../language/vocabulary.ts';
import type { Walk } from '../page/walk-state.ts';
import { looksLikeName } from '../performers/line-up.ts';
import type { Stem } from '../words/sources.ts';
import { isAllIn, isOptional } from './details.ts';

export type NameAndDetails = {
  name: string;
  details: string[];
  performer: string;
  /** Words that belong to the name but stand apart from it: "(stereo, condensers)". */
  beside: string;
};

/** Takes a line of text apart into the source's name and what is said of it. */
export function splitNameAndDetails(text: string, walk: Walk): NameAndDetails {
  const { tongue } = walk;
  const pieces = tidy(text)
    .split(/\s+[-–—→=>]+\s+|\s*[;|]\s*|\s*,\s+|\s*:\s+|\s*[([]\s*|\s*[)\]]\s*|\s*\.{2,}\s*|\s*…\s*/)
    .map(tidy)
    .filter((piece) => piece !== '');
  const [start = '', ...others] = pieces;
  // "Solène au centre : chant": who, and where.
  const [, player = '', place = ''] = /^(\p{Lu}\p{Ll}+)\s+(.+)$/u.exec(start) ?? [];
  const isPlaced = isAllIn(positionWords, place, tongue) && readSourceName(player, tongue).stem === null;
  const first = isPlaced ? player : start;
  const rest = isPlaced ? [...others, place] : others;
  let name = first;
  let performer = '';
  const details = [...rest];
  const firstName = readSourceName(first, tongue);
  const second = details[0] ? readSourceName(details[0], tongue) : null;
  if (
    firstName.stem === null &&
    firstName.parts.size === 0 &&
    firstName.sides.size === 0 &&
    firstName.pickUps.size === 0 &&
    looksLikeName(first, walk) &&
    second &&
    second.stem !== null &&
    details[0] &&
    !isAllIn(pickUpWords, details[0], tongue)
  ) {
    // "Noor: lead vocal" names the player first.
    performer = first;
    name = details.shift() ?? first;
  } else if (
    details[0] &&
    second &&
    firstName.stem !== null &&
    second.stem !== null &&
    (isGroupBeforeColon(text, first, details[0]) || isOutOfMachine(firstName.stem, details[0], second))
  ) {
    name = `${first}: ${details.shift() ?? ''}`;
  } else if (
    details[0] &&
    second &&
    second.stem === null &&
    (isOnlySideOrPart(second) || endsInSide(details[0], second)) &&
    // "Rechts" is the right side, though "recht" is a straight stand; "Tom (Stand)" stands on the floor.
    (second.sides.size > 0 ||
      !isAllIn(standWords, details[0], tongue) ||
      (firstName.stem === 'tom' && /^stand$/i.test(details[0])))
  ) {
    const tail = details[0];
    const end = text.indexOf(tail, text.indexOf(first) + first.length);
    const close = /^\s*[)\]]/.exec(text.slice(end + tail.length))?.[0] ?? '';
    const opened = /[([]\s*$/.test(text.slice(0, end));
    if ((!opened || close !== '') && !/\d/.test(tail)) {
      details.shift();
      name = end < 0 ? `${first} ${tail}` : tidy(text.slice(text.indexOf(first), end + tail.length) + close);
    }
  }
  if (performer === '') performer = singersOfCount(name, details, walk);
  const isTold = readSourceName(name, tongue).stem !== null;
  const beside = details.filter((piece, at) => tellsStereo(piece, walk) || (!isTold && at === 0)).join(' ');
  return {
    name,
    details,
    performer: performer || performerPiece(details, walk) || singerPiece(name, details, walk),
    beside,
  };
}

/** "3x Gesang (Ylva, Runa, Knud)": as many names as lines, one for each. */
function singersOfCount(name: string, details: string[], walk: Walk): string {
  const { count } = readSourceName(name, walk.tongue);
  const names = details.slice(0, count);
  const areNames = names.every(
    (text) => looksLikeName(text, walk) && readSourceName(text, walk.tongue).stem === null,
  );
  if (count < 2 || names.length !== count || !areNames) return '';
  return details.splice(0, count).join(', ');
}

/** "Horns: trumpet", but not "Percussion: 1 overhead condenser". */
function isGroupBeforeColon(text: string, first: string, second: string): boolean {
  if (/^\d+x?\s/.test(second) || /(?:^|\s|\p{L})mi[ck](?:ro|s)?(?!\p{L})/iu.test(second)) return false;
  const start = text.indexOf(first) + first.length;
  return /^\s*:\s*$/.test(text.slice(start, text.indexOf(second, start)));
}

function tellsStereo(piece: string, walk: Walk): boolean {
  const { sides } = readSourceName(piece, walk.tongue);
  return piece.length < 40 && (sides.has('stereo') || sides.has('both'));
}

/** "(stereo, ch 8+9)" behind number 8 gives the second number. */
export function numbersInDetails(numbers: readonly number[], details: readonly string[]): number[] {
  if (numbers.length !== 1) return [...numbers];
  const more = details
    .map((piece) => channelNumbers(/\d{1,3}\s*(?:[+/&-]|und|and|et|y|e|en)\s*\d{1,3}/.exec(piece)?.[0] ?? ''))
    .find((list) => list.length === 2 && list[0] === numbers[0]);
  return more ?? [...numbers];
}

const partsOfName: ReadonlySet<string> = new Set([
  'inside',
  'outside',
  'top',
  'bottom',
  'high',
  'low',
  'middle',
]);

function isOnlySideOrPart(name: SourceName): boolean {
  return (
    (name.sides.size > 0 || [...name.parts].some((part) => partsOfName.has(part))) &&
    name.unknown.length === 0 &&
    name.pickUps.size === 0
  );
}

/** "Drum machine - kick": what comes out of a machine says which of its lines this is. */
const isOutOfMachine = (machine: Stem, piece: string, { stem, certainty, unknown, pickUps }: SourceName) =>
  machines.has(machine) &&
  stem !== machine &&
  certainty === 1 &&
  unknown.length === 0 &&
  pickUps.size === 0 &&
  piece.split(' ').length <= 3;
const machines: ReadonlySet<Stem> = new Set<Stem>(['electronic drums', 'sampler', 'playback', 'dj']);

/** "Drum machine - rest L": the last word of the piece is the side of a pair. */
const endsInSide = (piece: string, { sides, stageSide }: SourceName) =>
  !stageSide &&
  sides.size === 1 &&
  piece.split(' ').length <= 4 &&
  /\s(?:l|r|g|d|i|e|li|re|sx|dx|izq|dcha|der|esq|dir)\.?$/i.test(piece);

/** "Gesang links: Ole": a name nobody knows behind a voice is the singer's. */
function singerPiece(name: string, details: string[], walk: Walk): string {
  const { stem } = readSourceName(name, walk.tongue);
  const [first] = details;
  if (
    stem === null ||
    groupOfStem(stem) !== 'vocals' ||
    !first ||
    !/^\p{Lu}\p{Ll}+(?: \p{Lu}\p{Ll}+)?$/u.test(first)
  )
    return '';
  const known = [nameWords, standWords, mixWords, positionWords].some((words) =>
    isAllIn(words, first, walk.tongue),
  );
  return known || isOptional(first, walk.tongue) ? '' : (details.shift() ?? '');
}

function performerPiece(details: string[], walk: Walk): string {
  const at = details.findIndex((piece) => {
    const words = tokenize(piece).filter((token) => token.kind === 'word');
    return words.length > 0 && words.length <= 3 && words.every((token) => walk.tongue.names.has(token.text));
  });
  return at < 0 ? '' : (details.splice(at, 1)[0] ?? '');
}
