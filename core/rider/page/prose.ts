import { sourcesToldIn } from '../inputs/told-inputs.ts';
import { keepTold, tellsPickUps } from '../inputs/told-lines.ts';
import { withoutBullet } from '../language/bullets.ts';
import { findHits } from '../language/lexicon.ts';
import { readSourceName } from '../language/source-name.ts';
import { hasWordOf, tidy, tokenize } from '../language/text.ts';
import { doubtWords, mixWords, positionWords, verbWords } from '../language/vocabulary.ts';
import { takeCountedDevices } from '../mixes/counted-devices.ts';
import { namesDevice } from '../mixes/device-words.ts';
import { takeGeneralDevice } from '../mixes/general-devices.ts';
import { takeContinued } from '../mixes/mix-continued.ts';
import { namesListener } from '../mixes/mix-heads.ts';
import { foundOf } from '../mixes/mix-lists.ts';
import { saysWish } from '../mixes/mix-parts.ts';
import { isConditional, isWish, pieceFacts, speaksOfWishes, wishesThing } from '../mixes/mix-pieces.ts';
import { type MixSentence, readMixSentence, sentencesOf } from '../mixes/mix-sentence.ts';
import { looksLikeName, performersInBrackets } from '../performers/line-up.ts';
import { foundMix, isFull, mostMixes, mostPerformers, note } from './draft.ts';
import type { Line } from './lines.ts';
import { titleOf } from './titles.ts';
import type { Walk } from './walk-state.ts';

/** Sentences of a mail: who plays, who wishes what, what all listen through. What says none of it is set aside,
 * what speaks of sources or mixes and stays unread is a question. */
export function takeProse(walk: Walk, line: Line): void {
  // "Retornos: são 5 vias, todas caixas de chão.": what stands below tells the mixes.
  const [title = ''] = /^[^:]{3,24}(?=:\s)/.exec(line.text) ?? [];
  if (walk.section === 'inputs' && title !== '' && titleOf(title, walk.tongue) === 'mixes')
    walk.section = 'mixes';
  const sentences = sentencesOf(line.text);
  let open = '';
  let taken = false;
  for (const sentence of sentences) {
    if (isCourtesy(sentence)) continue;
    const { mixes, devices } = walk.found;
    const known = mixes.length + devices.length;
    if (takeSentence(walk, line, sentence) || (taken && goesOn(walk, line, sentence))) taken = true;
    else if (speaksOfSound(sentence, walk)) open = open === '' ? sentence : `${open} ${sentence}`;
    if (mixes.length + devices.length === known && walk.section !== 'mixes') keepTold(walk, line, sentence);
  }
  if (open !== '' && isFirstTitle(walk, line)) {
    note(walk.found, line.at, 'set aside', 'A title.');
  } else if (open !== '') {
    walk.found.puzzles.push({
      at: line.at,
      text: open,
      why: 'It speaks of sources or monitors, but is no line of a list.',
    });
    note(walk.found, line.at, 'question', 'It speaks of sources or monitors, but is no line of a list.');
  } else if (!taken) note(walk.found, line.at, 'set aside', 'It names no source, no mix and no wish.');
}

/** A few words at the very top are what the sheet is called. */
function isFirstTitle(walk: Walk, line: Line): boolean {
  const words = line.text.split(' ').length;
  if (walk.at !== 0 || walk.section !== null || words > 12) return false;
  // "The Band (rap, 2 MCs + DJ)" tells what it is, and names nobody.
  return /^[^()]+\([^()]+\)$/.test(line.text) || (words <= 8 && !/[:.!?]|\d/.test(line.text));
}

/** "Here is our rider for ...": it brings something and asks for nothing. */
const isCourtesy = (sentence: string) =>
  /^(?:voici|ci[- ]joint|anbei|hier ist|attached|here is|here are|please find|adjunto|aqu[ií]|ecco|in allegato|hierbij|segue|thanks|thank you|danke|merci|gracias|grazie|bedankt|obrigad[oa])\b[^:,]*$/i.test(
    sentence,
  );

/** "Mika: wedge. Vox up, some keys.": a sentence of wishes behind one that told the mix. */
function goesOn(walk: Walk, line: Line, sentence: string): boolean {
  const mix = walk.found.mixes.at(-1);
  if (
    !mix ||
    mix.at.sheet !== line.at.sheet ||
    mix.at.row !== line.at.row ||
    !isWish(pieceFacts(sentence, walk), sentence)
  )
    return false;
  mix.wishTexts.push(sentence);
  return true;
}

function takeSentence(walk: Walk, line: Line, sentence: string): boolean {
  const text = withoutBullet(sentence);
  if (isConditional(text)) return false;
  if (takeGeneralDevice(walk, line, text)) return true;
  if (!asksForPickUps(text, walk) && takeWishSentence(walk, line, text)) return true;
  const players = isFirstTitle(walk, line) ? [] : performersInBrackets(text, walk);
  if (players.length > 0) {
    if (isFull(walk.found, line.at, walk.found.performers, mostPerformers)) return true;
    for (const { name, role } of players) walk.found.performers.push({ at: line.at, name, role, place: '' });
    note(walk.found, line.at, 'understood', `Who plays: ${players.map(({ name }) => name).join(', ')}.`);
    return true;
  }
  return takePlayer(walk, line, text);
}

/** "Pia plays the harp: a clip and a DI", "Vocals: Pia, Bo": it asks for lines and for nothing that is heard. */
function asksForPickUps(text: string, walk: Walk): boolean {
  const told = sourcesToldIn(text, [], walk);
  const singers = told.filter((it) => it.performer !== '' && it.stem === told[0]?.stem).length;
  const pickedUp = told.filter((it) => it.isPickedUp).length;
  if (singers > 1 && singers === told.length && pieceFacts(text, walk).amounts === 0) return true;
  return walk.section !== 'mixes' && tellsPickUps(text, pickedUp, walk);
}

/** "Anna (vox) needs lots of herself", "Drummer: click loud". */
function takeWishSentence(walk: Walk, line: Line, text: string): boolean {
  if (wishesThing(text, walk)) {
    note(walk.found, line.at, 'set aside', 'It asks for things that are not part of a monitor plan.');
    return true;
  }
  const told = readMixSentence(text, walk);
  if (!told || !tellsMix(told, walk)) return false;
  pushSentence(walk, line, told);
  return true;
}

/** The sentence wishes something that is heard, or tells what somebody listens through. */
function tellsMix(told: MixSentence, walk: Walk): boolean {
  const { device, wish, by } = told;
  const facts = pieceFacts(wish, walk);
  if (tellsPlaces(wish, walk)) return false;
  if (namesDevice(device, walk)) return by !== 'mark' || wish === '' || saysWish(wish, walk);
  if (by === 'verb') return facts.targets > 0 || facts.self || facts.sameAs || facts.open;
  // "Vocals: Pia, Bo" names who sings.
  const isBare = facts.amounts === 0 && !facts.self && !facts.sameAs;
  if (!speaksOfWishes(wish, walk) && !hasWordOf(told.listener, walk.tongue.names)) return false;
  if (walk.section === 'mixes') return facts.targets > 0 || isWish(facts, wish);
  return isWish(facts, wish) && facts.targets > 0 && !isBare;
}

/** "Drums behind, keys on the left": who stands where. */
const tellsPlaces = (text: string, walk: Walk) =>
  findHits(positionWords, tokenize(text), walk.tongue.spoken, walk.tongue.names).length > 1 &&
  pieceFacts(text, walk).amounts === 0;

function pushSentence(walk: Walk, line: Line, told: MixSentence): void {
  const pieces = foundOf(saysWish(told.wish, walk) ? told : { ...told, wish: '' }, walk);
  if (told.role !== '')
    walk.found.performers.push({ at: line.at, name: told.listener, role: told.role, place: '' });
  for (const listenerText of eachOf(pieces, walk)) {
    if (isFull(walk.found, line.at, walk.found.mixes, mostMixes)) return;
    const extra = [...(line.more ?? [])];
    const loose = walk.section !== 'mixes';
    const mix = foundMix(line.at, { part: line.part, ...pieces, listenerText, loose, extra });
    mix.number = told.number;
    mix.label =
      told.number === null ? listenerText || pieces.deviceText.split(',')[0] || '' : `Mix ${told.number}`;
    walk.found.mixes.push(mix);
  }
  note(walk.found, line.at, 'understood', '');
}

/** In a part on mixes: sentences of which at least one tells a mix, and the first no line of a list. */
export function takeMixSentences(walk: Walk, line: Line): boolean {
  if (walk.section !== 'mixes' || walk.blocks.length > 0 || line.cells.length > 1) return false;
  const bare = withoutBullet(line.text);
  if (takeCountedDevices(walk, line, bare) || takeContinued(walk, line, bare)) return true;
  const told = sentencesOf(line.text).filter((sentence) => {
    const text = withoutBullet(sentence);
    const mix = isConditional(text) ? null : readMixSentence(text, walk);
    return mix !== null && tellsMix(mix, walk);
  });
  if (told.length === 0) return false;
  takeProse(walk, line);
  return true;
}

const apiece =
  /(?<!\p{L})(?:each|apiece|both have|je|jeweils|jede[rs]?|chacune?|cada un[oa]|ciascun[oa]|ieder|elk|cada uma?|per person|pro person)(?!\p{L})/iu;

/** "Ada and Bo have in-ears", "a wedge each": a device of their own for each, where nothing is said of wishes. */
function eachOf({ listenerText, deviceText, wishTexts }: ReturnType<typeof foundOf>, walk: Walk): string[] {
  const names = listenerText
    .split(/\s*(?:,|;|&|\+|(?<!\p{L})(?:and|und|et|y|e|en)(?!\p{L}))\s*/iu)
    .filter(Boolean);
  const kinds = findHits(mixWords, tokenize(deviceText), walk.tongue.spoken).map(
    (hit) => hit.senses[0]?.meaning,
  );
  const isApiece = apiece.test(deviceText) || kinds.some((kind) => kind === 'in-ear');
  const isWished = wishTexts.some((text) => pieceFacts(text, walk).targets > 0);
  if (names.length < 2 || isWished || !isApiece) return [listenerText];
  return names.every((name) => namesListener(name, walk)) ? names : [listenerText];
}

/** "Noor sings and plays guitar." */
function takePlayer(walk: Walk, line: Line, sentence: string): boolean {
  const text = tidy(sentence.replace(/\s*\([^)]*\)/g, ''));
  const tokens = tokenize(text);
  const hit = findHits(verbWords, tokens, walk.tongue.spoken, walk.tongue.names).find(
    (it) => it.from > 0 && it.senses.some((sense) => sense.meaning === 'plays'),
  );
  const start = hit ? tokens[hit.from]?.start : undefined;
  if (hit === undefined || start === undefined) return false;
  const head = tidy(text.slice(0, start));
  const tail = text.slice(start);
  const sings = /\b(?:sing\w*|chante\w*|canta\w*|zing\w*)\b/i.test(tail);
  const role = readSourceName(tail, walk.tongue);
  if (!looksLikeName(head, walk) || head.split(' ').length > 3 || (role.stem === null && !sings))
    return false;
  if (
    readSourceName(head, walk.tongue).stem !== null ||
    /^(?:we|he|she|it|they|this|there|wir|er|sie|es|nous|il|elle|we|hij|zij|the|our|i)$/i.test(head)
  )
    return false;
  if (isFull(walk.found, line.at, walk.found.performers, mostPerformers)) return true;
  walk.found.performers.push({
    at: line.at,
    name: head,
    role: sings && !/vo[xc]|vocal|gesang|chant|voz|voce|zang/i.test(tail) ? `vocals, ${tail}` : tail,
    place: '',
  });
  note(walk.found, line.at, 'understood', `Who plays: ${head}.`);
  return true;
}

/** Stems whose words are everyday words too: "free", "host", "room". */
const vague: ReadonlySet<string> = new Set([
  'other',
  'spare line',
  'presenter',
  'ambience',
  'cue',
  'guest vocal',
]);

/** "A hand-held radio mic from you": somebody will speak or sing into it. */
const microphone =
  /(?<!\p{L})(?:mics?|mikes?)(?!\p{L})|mi[ck]ro(?:s|fon\p{L}*|phon\p{L}*|fono\p{L}*)?(?!\p{L})/iu;

/** True where a sentence names a source or a device and so may not be put aside unseen. */
function speaksOfSound(text: string, walk: Walk): boolean {
  const name = readSourceName(text, walk.tongue);
  if (name.stem !== null && !vague.has(name.stem)) return true;
  if (microphone.test(text)) return true;
  // "Perhaps a guest will come": a line may be wanted.
  const { spoken, names } = walk.tongue;
  const isOpen = name.parts.has('guest') || name.stem === 'spare line' || name.stem === 'guest vocal';
  if (isOpen && findHits(doubtWords, tokenize(text), spoken, names).some((hit) => hit.certainty === 1))
    return true;
  return findHits(mixWords, tokenize(text), walk.tongue.spoken, walk.tongue.names).some(
    (hit) => hit.senses[0]?.subject === 'device' || hit.senses[0]?.subject === 'elsewhere',
  );
}
