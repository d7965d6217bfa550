import { findHits, lookUp } from '../language/lexicon.ts';
import { listed, tidy, tokenize } from '../language/text.ts';
import { headWords, mixWords, sharingWords, titleLexicon, verbWords } from '../language/vocabulary.ts';
import type { Walk } from '../page/walk-state.ts';
import { isListenerFor, isOneMix, splitAtDevice, withoutArticles } from './mix-heads.ts';
import { isPerson, isPlace, isRole, isWhollyTold } from './mix-parts.ts';
import { isDevice } from './mix-pieces.ts';

/** What is told of a mix before its wishes, in whatever order: who listens, what they play, through what, where. */
export type MixHead = { listener: string; isPerson: boolean; role: string; device: string; place: string };

/** Longer text is no head. */
const mostWords = 16;

/** Reads a head told in words ("the drummer, on the drum fill"), or null where a piece of it tells something else. */
export function readHead(text: string, walk: Walk): MixHead | null {
  if (text.split(' ').length > mostWords) return null;
  const head: MixHead = { listener: '', isPerson: false, role: '', device: '', place: '' };
  for (const piece of piecesOf(text, walk)) if (!addPiece(head, piece, walk)) return null;
  if (head.listener === '' && head.device === '') return null;
  const share = findHits(sharingWords, tokenize(text), walk.tongue.spoken, walk.tongue.names);
  // "Tuba and horn together" listen, "tuba and horn" may be what is heard.
  head.isPerson ||= head.listener !== '' && share.some((hit) => hit.certainty === 1);
  return head;
}

type Piece = {
  text: string;
  /** The word before it; "verb" is one between a person and what they play or have. */
  joint: 'on' | 'for' | 'of' | 'verb' | 'wishes' | null;
  /** "For the energy", not "for Ada". */
  article: boolean;
  inBrackets: boolean;
};

const marks = /\s*[,;:](?=\s|$)\s*|\s+[-–—]+\s+|\s*[()[\]]\s*|\s+\/\s+|\s+@\s+|\s*\|\s*/gu;

function piecesOf(text: string, walk: Walk): Piece[] {
  const pieces: Piece[] = [];
  let inBrackets = false;
  let from = 0;
  for (const mark of [...text.matchAll(marks), null]) {
    const end = mark?.index ?? text.length;
    pieces.push(...piecesBetween(text.slice(from, end), inBrackets, walk));
    if (!mark) break;
    from = end + mark[0].length;
    if (/[([]/.test(mark[0])) inBrackets = true;
    else if (/[)\]]/.test(mark[0])) inBrackets = false;
  }
  return pieces;
}

/** Cut at the words between a listener, their device and their place, those left out. */
function piecesBetween(text: string, inBrackets: boolean, walk: Walk): Piece[] {
  const { spoken, names } = walk.tongue;
  const tokens = tokenize(text);
  const devices = findHits(mixWords, tokens, spoken, names).filter(
    // "De chez vous" is whose it is; "own" alone may stand anywhere.
    (hit) => hit.certainty === 1 && (hit.senses[0]?.subject !== 'owner' || hit.to - hit.from > 1),
  );
  const cuts = [...findHits(headWords, tokens, spoken, names), ...findHits(verbWords, tokens, spoken, names)]
    .filter(
      (hit) => hit.certainty === 1 && !devices.some((device) => device.from < hit.to && hit.from < device.to),
    )
    .sort((a, b) => a.from - b.from || b.to - a.to);
  const pieces: Piece[] = [];
  let joint: Piece['joint'] = null;
  let article = false;
  let from = 0;
  let last = 0;
  const push = (end: number) => {
    const written = tidy(text.slice(from, end));
    // "I suoi in-ear" are their own: no article there.
    const bare = isWhollyTold(written, walk) ? written : withoutArticles(written);
    if (bare !== '') pieces.push({ text: bare, joint, article: article || bare !== written, inBrackets });
  };
  for (const cut of cuts) {
    const start = tokens[cut.from]?.start ?? 0;
    if (cut.from < last) continue;
    const meaning = jointOf(cut.senses.map((sense) => sense.meaning));
    // "Voice of Ada" is one thing, "wedge of Ada" a device and whose it is.
    if (meaning === 'of' && !isWhollyTold(tidy(text.slice(from, start)), walk)) continue;
    push(start);
    from = tokens[cut.to - 1]?.end ?? 0;
    last = cut.to;
    joint = meaning;
    article = cut.to - cut.from > 1;
  }
  push(text.length);
  return pieces;
}

function jointOf(meanings: readonly string[]): Piece['joint'] {
  for (const joint of ['on', 'for', 'of'] as const) if (meanings.includes(joint)) return joint;
  if (meanings.includes('together')) return null;
  return meanings.includes('wishes') ? 'wishes' : 'verb';
}

/** Words between the pieces of a head that tell nothing. */
const fillers =
  /^(?:i|ich|je|moi|yo|io|ik|eu|me|who|which|one|another|another one|one more|please|also|just|too|die|der|welche[rs]?|bitte|auch|noch|eine[rs]?|qui|lui|elle|un|une|aussi|que|quien|también|uno|una|che|invece|anche|uno|ook|een|eentje|graag|também|um|uma|er|sie|he|she)$/iu;

function addPiece(head: MixHead, piece: Piece, walk: Walk): boolean {
  const { text, joint, inBrackets } = piece;
  // What is wished is no part of a head, but for a device.
  if (joint === 'wishes' && !isWhollyTold(text, walk)) return false;
  if (fillers.test(text) || isOneMix.test(text)) return true;
  if (isWhollyTold(text, walk) || (inBrackets && isDevice(text, walk)))
    head.device = listed(head.device, text);
  else if (isPlace(text, walk)) head.place = listed(head.place, text);
  else if (head.listener !== '' && (inBrackets || joint === 'on' || joint === 'verb') && isRole(text, walk))
    head.role = listed(head.role, text);
  else if (inBrackets && head.listener !== '' && !isPerson(text, walk, true))
    head.role = listed(head.role, text);
  else if (joint === 'for' && head.device !== '' && !isListenerFor(text, piece.article, walk)) return true;
  else return addListener(head, piece, walk);
  return true;
}

function addListener(head: MixHead, { text, joint, inBrackets }: Piece, walk: Walk): boolean {
  const split = splitAtDevice(text, walk);
  if (split) {
    if (head.listener !== '') return false;
    head.device = listed(head.device, split.device);
    head.listener = split.listener;
    head.isPerson = true;
    return true;
  }
  const who = withoutDative(text, walk);
  const isSomebody = lookUp(titleLexicon, who, walk.tongue.spoken) === null;
  if (isSomebody && isPerson(who, walk, true)) {
    if (head.listener !== '' && head.isPerson && (inBrackets || joint !== null)) return false;
    if (head.listener !== '' && !head.isPerson) head.role = listed(head.role, head.listener);
    head.listener = head.isPerson ? listed(head.listener, who) : who;
    head.isPerson = true;
    return true;
  }
  if (!isRole(who, walk)) return false;
  if (head.listener === '') head.listener = who;
  else if (head.isPerson && head.role === '') head.role = who;
  else return false;
  return true;
}

/** "A Anna le gusta", "à Anna". */
function withoutDative(text: string, walk: Walk): string {
  const [, who = ''] =
    /^(?:to|a|à|al|alla|all['’]|au|aux|ao|aos|às?|aan|o|os|as)\s+(\S.*)$/iu.exec(text) ?? [];
  return who !== '' && (isPerson(who, walk, true) || isRole(who, walk)) ? who : text;
}
