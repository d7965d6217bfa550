import { withoutMixBullet } from '../language/bullets.ts';
import { findHits, lookUp } from '../language/lexicon.ts';
import { listed, tokenize } from '../language/text.ts';
import { titleLexicon, wishWords } from '../language/vocabulary.ts';
import { asideOf } from '../page/asides.ts';
import { type FoundMix, note } from '../page/draft.ts';
import type { Line } from '../page/lines.ts';
import { titleOf } from '../page/titles.ts';
import type { Walk } from '../page/walk-state.ts';
import { takeCountedDevices } from './counted-devices.ts';
import { saysOf } from './device-words.ts';
import type { MixHead } from './mix-head.ts';
import { namesListener } from './mix-heads.ts';
import { type MixLine, readMixLine } from './mix-line.ts';
import { saysWish } from './mix-parts.ts';
import {
  isConditional,
  pieceFacts,
  readMixPieces,
  speaksOfUs,
  speaksOfWishes,
  wishesThing,
} from './mix-pieces.ts';
import { labelOf, pushMix } from './mix-rows.ts';
import { readMixSentence, sentencesOf } from './mix-sentence.ts';

/** Cells of a line of text that was cut at its gaps; more are a table. */
const mostCells = 5;

/**
 * A line of a list of mixes: the head of a mix with or without its wishes, or what is told below a head. A head names
 * or counts a mix, or a listener with something of theirs; what only names sources and amounts belongs to the mix
 * above. False where the line is told otherwise.
 */
export function takeMixList(walk: Walk, line: Line): boolean {
  if (walk.section !== 'mixes' || walk.blocks.length > 0 || line.cells.length > mostCells) return false;
  const { text } = line;
  const bare = withoutMixBullet(text);
  if (speaksOfUs(bare) || isConditional(bare) || wishesThing(bare, walk)) return false;
  const told = readMixLine(text, walk);
  if (!told || isOfAnotherPart(text, told, walk)) return false;
  // "One for Ada: ...": a listener that only a sentence tells, or one that a further sentence of the line tells.
  const [first = '', ...others] = sentencesOf(told.label?.rest ?? bare);
  const isBare = told.listener === '' && told.device === '' && told.labelled !== 'by name';
  const sentences = isBare ? [first, ...others] : others;
  if (sentences.some((sentence) => readMixSentence(sentence, walk)?.isPerson)) return false;
  const above = headAbove(walk, line);
  if (above && belongsAbove(told, above, walk, line)) return takeBelow(walk, line, told, above.mix);
  if (!isHead(told, walk)) return false;
  pushHead(walk, line, told);
  return true;
}

/** A title, or "Catering: fruit"; "Anna - 2 floor monitors" is none for all its words. */
function isOfAnotherPart(text: string, told: MixLine, walk: Walk): boolean {
  if (asideOf(text)) return true;
  const isFull = told.isPerson && told.device !== '';
  return (
    (!isFull && titleOf(text, walk.tongue) !== null) ||
    (told.labelled === null && lookUp(titleLexicon, told.listener, walk.tongue.spoken) !== null)
  );
}

/** The last mix of the list, with its head where that was read as a line of a list. */
type Head = { mix: FoundMix; told: MixLine | null };

function headAbove(walk: Walk, line: Line): Head | null {
  const mix = walk.found.mixes.at(-1);
  if (!mix || mix.at.sheet !== line.at.sheet || mix.loose || mix.inTable) return null;
  return { mix, told: walk.mixHead?.mix === mix ? walk.mixHead.told : null };
}

function belongsAbove(told: MixLine, { mix, told: head }: Head, walk: Walk, line: Line): boolean {
  if (told.labelled === 'by name') return false;
  if (isUnfilled(mix, head)) return told.labelled === null;
  // "Brass: none" below "M1 Ada": the mixes of this list are headed by their names.
  if (head?.labelled === 'by name' && told.labelled === null && saysHowMuch(told.wish, walk)) return true;
  if (told.isPerson || goesOnCounting(told, head)) return false;
  if (told.labelled === 'by number') return mix.listenerText !== '' && told.device === '' && !told.isOpen;
  if (told.listener === '' && told.device !== '') return mix.deviceText === '' && mix.wishTexts.length === 0;
  if (told.listener === '') return told.wish !== '' || !tellsOf(mix, told);
  // "Keys: mittel" says how much, though a word for an amount may be one for a place.
  if (told.place !== '' && pieceFacts(told.place, walk).amounts > 0) return true;
  if (told.device !== '' || told.place !== '' || told.isOpen) return false;
  // "Bass: loud" says how much bass, "Keys: keys, a bit of vocal" who hears them.
  if (told.wish !== '') return pieceFacts(told.wish, walk).targets === 0 || isItem(told, head);
  return isItem(told, head) || !isHeading(told, head, walk, line);
}

/** "Plenty", "none": an amount and nothing that it is of. */
function saysHowMuch(text: string, walk: Walk): boolean {
  const { amounts, targets, device } = pieceFacts(text, walk);
  return amounts > 0 && targets === 0 && !device;
}

/** "B) ..." below "A) ...". */
const goesOnCounting = (told: MixLine, head: MixLine | null) =>
  told.labelled === 'by number' &&
  head?.labelled === 'by number' &&
  told.label?.numbers[0] === (head.label?.numbers.at(-1) ?? 0) + 1;

/** "Mix 1:" alone on its line. */
const isUnfilled = (mix: FoundMix, head: MixLine | null) =>
  head?.labelled === 'by name' && mix.listenerText === '' && mix.wishTexts.length === 0;

/** The mix has already what the line would tell. */
const tellsOf = (mix: FoundMix, told: MixLine) =>
  (told.device !== '' && mix.deviceText !== '') || (told.place !== '' && mix.place !== '');

/** A bullet under a head that has none. */
const isItem = (told: MixLine, head: MixLine | null) => told.bulleted && head !== null && !head.bulleted;

/** "Keys" alone on a line heads a mix where the mixes of the list are headed so. */
const isHeading = (told: MixLine, head: MixLine | null, walk: Walk, line: Line) =>
  head !== null &&
  !head.isPerson &&
  head.labelled === null &&
  head.device === '' &&
  told.bulleted === head.bulleted &&
  line.text.split(' ').length <= 3 &&
  goesOnBelow(walk);

function takeBelow(walk: Walk, line: Line, told: MixLine, mix: FoundMix): boolean {
  const bare = withoutMixBullet(line.text);
  // "2 wedges" right under a name is theirs; elsewhere a number of devices may be meant for all.
  const isTheirs = mix.deviceText === '' && mix.wishTexts.length === 0 && bare.split(' ').length <= 3;
  if (told.listener === '' && told.wish === '' && !isTheirs && takeCountedDevices(walk, line, bare))
    return true;
  if (told.listener !== '' && isUnfilled(mix, walk.mixHead?.told ?? null) && !isOnlyWishes(told, walk)) {
    const filled = {
      ...told,
      ...(told.isPerson || told.device !== '' || goesOnBelow(walk) ? {} : { listener: '' }),
    };
    fill(mix, filled, walk);
  } else if (told.listener === '' && (told.device !== '' || told.place !== '')) fill(mix, told, walk);
  else {
    const rest = told.label?.rest ?? bare;
    if (namesOther(rest, walk) || !isSurelyWish(rest, walk) || !speaksOfWishes(rest, walk)) return false;
    fill(mix, { wish: rest }, walk);
  }
  mix.extra = [...(mix.extra ?? []), line.at, ...(line.more ?? [])];
  note(walk.found, line.at, 'understood', '');
  return true;
}

/** "Guest MC: ...", "And two side fills: ...": another mix that is told in more words than a head has. */
function namesOther(text: string, walk: Walk): boolean {
  const [, head = '', behind = ''] = /^([^:,;]{2,48}?)\s*:(?:\s+(.*))?$/u.exec(text) ?? [];
  return (
    head !== '' &&
    !(saysHowMuch(behind, walk) && pieceFacts(head, walk).targets > 0) &&
    readMixLine(head, walk)?.listener !== head &&
    (namesListener(head, walk) || saysOf(head, ['device'], walk))
  );
}

/** A word that is only nearly one for a source ("Bises") makes no wish. */
const isSurelyWish = (text: string, walk: Walk) =>
  saysWish(text, walk) &&
  (/[+\d-]/.test(text) ||
    findHits(wishWords, tokenize(text), walk.tongue.spoken, walk.tongue.names).some(
      (hit) => hit.certainty === 1 && hit.senses[0]?.subject !== 'side' && hit.senses[0]?.subject !== 'part',
    ));

const isOnlyWishes = (told: MixLine, walk: Walk) =>
  !told.isPerson &&
  told.device === '' &&
  told.wish !== '' &&
  pieceFacts(told.wish, walk).targets + pieceFacts(told.wish, walk).amounts > 0;

function isHead(told: MixLine, walk: Walk): boolean {
  const tells = told.device !== '' || told.place !== '' || told.wish !== '';
  if (told.labelled === 'by name') return tells || told.listener !== '' || fillsBelow(walk);
  if (told.listener === '') return told.labelled !== null && told.device !== '';
  if (told.isPerson && (tells || told.labelled)) return true;
  return told.device !== '' || told.wish !== '' || goesOnBelow(walk);
}

/** "Mix 1:" alone: the line below tells the listener, the device or the wishes. */
function fillsBelow(walk: Walk): boolean {
  const next = walk.lines[walk.at + 1];
  const told = next ? readMixLine(next.text, walk) : null;
  return told !== null && told.labelled === null && (told.isPerson || goesOnBelow(walk));
}

/** The line below tells of a mix that this line named. */
function goesOnBelow(walk: Walk): boolean {
  const next = walk.lines[walk.at + 1];
  const told = next ? readMixLine(next.text, walk) : null;
  if (!told || !next || told.labelled === 'by name' || told.isPerson) return false;
  return told.bulleted || told.wish !== '' || told.device !== '' || told.place !== '';
}

function pushHead(walk: Walk, line: Line, told: MixLine): void {
  const pieces = foundOf(told, walk);
  pushMix(walk, line, { ...pieces, ...labelOf(walk, told.label, [], pieces) });
  const mix = walk.found.mixes.at(-1);
  if (mix) walk.mixHead = { mix, told };
}

/** What a line or a sentence told, as a mix is found. */
export function foundOf(told: Omit<MixHead, 'isPerson'> & { wish: string }, walk: Walk) {
  const wish = wishPieces(told.wish, walk);
  return {
    listenerText: told.listener,
    deviceText: listed(told.device, wish.deviceText),
    place: told.place || wish.place,
    wishTexts: wish.wishTexts,
    exclusionTexts: wish.exclusionTexts,
    notes: [told.role, ...wish.notes].filter((text) => text !== ''),
  };
}

/** Wishes may tell a device among them ("kick, snare, stereo in-ears") or say more in brackets. */
function wishPieces(wish: string, walk: Walk): ReturnType<typeof readMixPieces> {
  const isPlain = wish !== '' && !/[([]/.test(wish) && !pieceFacts(wish, walk).device;
  const pieces = readMixPieces(wish === '' || isPlain ? '' : `: ${wish}`, walk, true);
  return isPlain ? { ...pieces, wishTexts: [wish] } : pieces;
}

function fill(mix: FoundMix, told: Partial<MixLine>, walk: Walk): void {
  const { listener = '', role = '', device = '', place = '', wish = '' } = told;
  const pieces = wishPieces(wish, walk);
  mix.listenerText ||= listener;
  mix.deviceText = listed(mix.deviceText, device, pieces.deviceText);
  mix.place ||= place || pieces.place;
  mix.wishTexts.push(...pieces.wishTexts);
  mix.notes.push(...[role, ...pieces.notes].filter((text) => text !== ''));
}
