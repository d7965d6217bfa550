import { isAllIn } from '../inputs/details.ts';
import { signAmount } from '../language/amounts.ts';
import { withoutBullet } from '../language/bullets.ts';
import { withDigits } from '../language/count-words.ts';
import { findHits, type Hit, lookUp } from '../language/lexicon.ts';
import { readSourceName } from '../language/source-name.ts';
import { fold, hasWordOf, listed, type Token, tidy, tokenize } from '../language/text.ts';
import {
  amountWords,
  labelWords,
  mixWords,
  playerWords,
  positionWords,
  sharingWords,
  thingWords,
  titleLexicon,
  verbWords,
  wishWords,
} from '../language/vocabulary.ts';
import type { Walk } from '../page/walk-state.ts';
import { looksLikeName } from '../performers/line-up.ts';

/** What a line of text tells of a mix, piece by piece. */
export type MixPieces = {
  listenerText: string;
  /** What the listener plays, where the line names it before the name: "Singer (Ada)". */
  roleText?: string;
  deviceText: string;
  place: string;
  wishTexts: string[];
  exclusionTexts: string[];
  notes: string[];
};

/** Of a line that tells nothing of a mix. A new one each time: readers add to it. */
export function noPieces(): MixPieces {
  return {
    listenerText: '',
    deviceText: '',
    place: '',
    wishTexts: [],
    exclusionTexts: [],
    notes: [],
  };
}

/** What a piece of a mix's line is by its words alone. */
export type PieceFacts = {
  targets: number;
  amounts: number;
  self: boolean;
  device: boolean;
  sameAs: boolean;
  open: boolean;
  words: number;
};

/** Counts what a piece of text names: sources, amounts, devices. */
export function pieceFacts(text: string, walk: Walk): PieceFacts {
  const tokens = tokenize(text);
  const { spoken, names } = walk.tongue;
  const hits = findHits(wishWords, tokens, spoken, names);
  const facts: PieceFacts = {
    targets: 0,
    amounts: 0,
    self: false,
    device: false,
    sameAs: false,
    open: false,
    words: tokens.filter((token) => token.kind !== 'mark').length,
  };
  let isOwnSource = false;
  for (const hit of hits) {
    const subjects = hit.senses.map((sense) => sense.subject);
    isOwnSource ||= /^own ./.test(hit.senses[0]?.meaning ?? '');
    if (subjects.includes('group') || subjects.includes('source')) facts.targets += 1;
    if (hit.senses[0]?.meaning === 'all except') facts.targets += 1;
    // "Priya" alone is sooner a name than a misspelt amount.
    const isName = facts.words === 1 && hit.certainty < 1 && /^\p{Lu}/u.test(tokens[hit.from]?.raw ?? '');
    if (subjects.includes('amount') && !subjects.includes('source') && !isName) facts.amounts += 1;
    if (subjects[0] === 'self' && hit.senses[0]?.meaning !== 'own') facts.self = true;
    if (subjects[0] === 'mark' && hit.senses[0]?.meaning === 'same as' && hit.from <= 1) facts.sameAs = true;
    if (subjects[0] === 'mark' && hit.senses[0]?.meaning === 'open') facts.open = true;
  }
  for (const token of text.split(/[\s,]+/)) if (signAmount(token, false)) facts.amounts += 1;
  if (/-?\d+(?:[.,]\d+)?\s*db\b/i.test(text)) facts.amounts += 1;
  facts.device = isDevice(text, walk);
  // "Eigenes System" is whose the device is, not a wish for oneself; "la sua voce" is one.
  if (facts.device && !isOwnSource && facts.amounts === 0 && facts.targets === 0) facts.self = false;
  return facts;
}

/** "2 wedges on one mix" says of the device that both hear the same. */
const onOneMix =
  /\b(?:on |auf |sur |en |in |op |em |na |no |nella |sulla |in der |auf dem |sur le |en la |op de )?(?:one|a single|the same|ein(?:em)?|selben|gleichen|un|meme|una|misma|uno|stessa|een|zelfde|uma?|mesma) (?:mix|weg|circuit|mezcla|groep|via|aux|send|mandata|mistura|linea|envio)\b/g;
const forBoth =
  /\b(?:for|fur|pour|para|per|voor) (?:both|beide|(?:les|los|las) (?:deux|dos|tres)|entrambi|tutti|os dois|all|alle|todos|tous)\b/g;

/** Words that are a drum or a case by themselves and a wedge where they are counted: "2 caixas", "una cassa". */
const countedBox =
  /\b(\d\s*x?|an?|one|uma|una|eine?|un|een)\s+(?:box(?:es|en)?|cabs?|caixas?|cajas?|casse?|kast(?:en)?|bafles?|parlantes?|altavoces|altavoz|colunas?|enceintes?|speakers?)\b(?!\s*(?:clara|chiara|claire))/gi;

/** Counted boxes as the wedges they are. */
export const withBoxes = (text: string) => text.replace(countedBox, '$1 wedge');

/** The words of a text that tell a device: without counts, without who shares it, counted boxes as wedges. */
function deviceWordsIn(text: string, walk: Walk): { plain: string; tokens: Token[]; hits: MixHit[] } {
  const plain = withoutSharing(
    withBoxes(fold(withDigits(text, walk.tongue)))
      .replace(/\b\d+\s*x\b|\bx\s*\d+\b|\b\d+\b/g, ' ')
      .replace(forBoth, ' ')
      .replace(onOneMix, ' '),
    walk,
  );
  const tokens = tokenize(plain);
  // A word that is only nearly one for whose the device is ("Sable", "salle") may as well be a name.
  const hits = findHits(mixWords, tokens, walk.tongue.spoken, walk.tongue.names).filter(
    (hit) => hit.certainty === 1 || hit.senses[0]?.subject !== 'owner',
  );
  return { plain, tokens, hits };
}

type MixHit = Hit<string, string>;

/** True where most of the words tell a device, its format, whose it is or where it stands, and at least one does. */
export function isDevice(text: string, walk: Walk): boolean {
  const { plain, tokens, hits } = deviceWordsIn(text, walk);
  const words = tokens.filter((token) => token.kind !== 'mark' && !isFiller(token.text));
  const telling = hits.some((hit) => hit.senses.some((sense) => sense.subject !== 'position'));
  const covered = hits.reduce((sum, hit) => sum + hit.to - hit.from, 0);
  const told = words.filter((word) =>
    hits.some((hit) => hit.from <= tokens.indexOf(word) && tokens.indexOf(word) < hit.to),
  );
  // "Band" alone is who listens, not whose the device is.
  const owners = hits.every((hit) => hit.senses[0]?.subject === 'owner');
  if (owners && lookUp(wishWords, plain, walk.tongue.spoken)?.[0]?.subject === 'group') return false;
  const isNamed = hits.some((hit) =>
    hit.senses.some((sense) => sense.subject !== 'position' && sense.subject !== 'owner'),
  );
  return telling && (isNamed ? covered * 2 >= words.length : told.length >= words.length);
}

/** Nothing but words for devices, as "drum fill": no wish for drums. */
export function isWhollyDevice(text: string, walk: Walk): boolean {
  if (!isDevice(text, walk)) return false;
  const { tokens, hits } = deviceWordsIn(text, walk);
  return tokens.every(
    (token, at) =>
      token.kind === 'mark' || isFiller(token.text) || hits.some((hit) => hit.from <= at && at < hit.to),
  );
}

/** "They share a wedge": the words that say that several hear one mix left out. */
function withoutSharing(text: string, walk: Walk): string {
  const tokens = tokenize(text);
  const hits = findHits(sharingWords, tokens, walk.tongue.spoken, walk.tongue.names).filter(
    (hit) => hit.certainty === 1,
  );
  let told = '';
  let from = 0;
  for (const hit of hits) {
    told += text.slice(from, tokens[hit.from]?.start ?? 0);
    from = tokens[hit.to - 1]?.end ?? from;
  }
  return told + text.slice(from);
}

/** Words between the words of a device that say nothing of it. */
const isFiller = (word: string) =>
  /^(?:both|all|each|beiden?|alle|deux|tous|ambos|ambas|todos|entrambi|tutti|allebei|please|pls|thanks|bitte|danke|svp|merci|favor|gracias|prego|grazie|aub|graag|obrigad[oa]|je|jeweils|only|nur|one|an?|the|in|on|of|for|at|and|with|to|each|ein(?:e[nmrs]?)?|der|die|das|dem|den|und|mit|im|auf|fur|je|un|une|de|du|des|la|le|les|l|d|en|et|avec|pour|una|el|los|las|del|y|con|para|uno|il|lo|gli|i|e|di|da|per|su|een|het|op|met|voor|um|uma|o|os|as|do|no|na|com)$/.test(
    word,
  );

/** True where most words are such as wishes and devices are told with: no sentence about something else. */
export function speaksOfWishes(text: string, walk: Walk): boolean {
  const { spoken, names } = walk.tongue;
  const tokens = tokenize(text);
  const words = tokens.filter((token) => token.kind !== 'mark');
  const hits = [wishWords, mixWords, verbWords].flatMap((table) => findHits(table, tokens, spoken, names));
  const covered = words.filter((token) => {
    const at = tokens.indexOf(token);
    const isKnown = hits.some((hit) => hit.certainty === 1 && hit.from <= at && at < hit.to);
    return isKnown || token.kind === 'number' || names.has(token.text) || isFiller(token.text);
  });
  return words.length <= 3 || covered.length * 5 >= words.length * 3;
}

/** A list of sources, an amount with a source, the listener themself, or another mix. */
export function isWish(facts: PieceFacts, text: string): boolean {
  if (facts.sameAs || facts.self || facts.open) return true;
  if (facts.amounts > 0 && facts.targets > 0) return true;
  if (facts.amounts > 0 && facts.words > 1 && !facts.device) return true;
  return facts.targets > 1 && /[,;+&/]|\b(?:and|und|et|y|e|en)\b/i.test(text);
}

/** "We also need ...": the band speaks, no listener is named. */
export const speaksOfUs = (text: string) =>
  /^(?:we|i|you|they|our|please|also|wir|unser[en]?|notre|nuestr[oa]s?|nostr[oa]|il nostro|onze|noss[oa]|ihr|bitte|nous|vous|nosotros|noi|wij|n[oó]s)\s/i.test(
    text,
  );

/** "If there is a wedge to spare, ...": a wish under a condition is no mix yet. */
export const isConditional = (text: string) =>
  /^(?:if|in case|should there be|falls|wenn|sofern|solange|si|s['’]il|au cas où|en caso|siempre que|se|qualora|als er|indien|mocht(?:en)?|caso)\s+(?!possible|möglich|possibile|possível|posible|mogelijk)/i.test(
    text,
  );

/** Takes the text behind a mix's label apart. The first piece that is neither device nor wish is who listens. */
export function readMixPieces(text: string, walk: Walk, knowsListener = false): MixPieces {
  const pieces = noPieces();
  const verb = splitAtVerb(text, walk);
  const head = verb ? verb.head : text;
  const split = splitPieces(head, walk);
  let hasListener = knowsListener;
  split.forEach(({ text: piece, bracketed, afterColon }) => {
    const facts = pieceFacts(piece, walk);
    if (!hasListener && !afterColon && isListener(piece, facts, walk)) {
      pieces.listenerText = piece;
      hasListener = true;
      return;
    }
    const named = !hasListener && !afterColon ? leadingListener(piece, walk) : null;
    if (named) {
      pieces.listenerText = named.name;
      hasListener = true;
      takePiece(named.rest, pieces, walk, false);
      return;
    }
    if (bracketed && isPlayerInBrackets(piece, pieces.listenerText, facts, walk)) {
      pieces.roleText = pieces.listenerText;
      pieces.listenerText = piece;
      return;
    }
    if (
      bracketed &&
      hasListener &&
      pieces.wishTexts.length === 0 &&
      facts.amounts === 0 &&
      !facts.device &&
      facts.targets > 0 &&
      !facts.self &&
      !facts.sameAs
    ) {
      pieces.notes.push(piece);
      return;
    }
    const above = pieces.wishTexts.at(-1);
    const isAmount = facts.amounts > 0 && facts.targets === 0;
    if (bracketed && above !== undefined && (isAmount || lookUp(amountWords, piece, walk.tongue.spoken))) {
      pieces.wishTexts[pieces.wishTexts.length - 1] = `${above} ${piece}`;
      return;
    }
    takePiece(piece, pieces, walk, afterColon);
  });
  if (verb) takeTail(verb.tail, pieces, walk);
  return pieces;
}

/** "IEM with click" */
const withWishes = /^(.{2,40}?)\s+(?:with|w\/|mit|avec|con|met|com)\s*(?<=[\s/])(.+)$/i;

/** What is behind "needs": wishes, a device, or a device "with" wishes. */
function takeTail(tail: string, pieces: MixPieces, walk: Walk): void {
  const on = withWishes.exec(tail);
  const article = /^(?:an?|eine?n?|une?|una?|uno|een|uma?)\s+/i;
  if (on?.[1] && on[2] && isDevice(on[1].replace(article, ''), walk)) {
    pieces.deviceText = listed(pieces.deviceText, on[1]);
    pieces.wishTexts.push(on[2]);
  } else if (isWhollyDevice(tail, walk)) pieces.deviceText = listed(pieces.deviceText, tail);
  else pieces.wishTexts.push(tail);
}

/** "Singer (Ada)": the name in brackets is who listens, the word before it what they play. */
function isPlayerInBrackets(piece: string, before: string, facts: PieceFacts, walk: Walk): boolean {
  if (before === '' || facts.targets + facts.amounts > 0 || facts.device || !looksLikeName(piece, walk))
    return false;
  const role =
    lookUp(playerWords, before, walk.tongue.spoken) !== null ||
    readSourceName(before, walk.tongue).stem !== null;
  return role && !isAllIn(positionWords, piece, walk.tongue);
}

function takePiece(piece: string, pieces: MixPieces, walk: Walk, afterColon: boolean): void {
  const facts = pieceFacts(piece, walk);
  const on = withWishes.exec(piece);
  if (on?.[1] && on[2] && isWhollyDevice(on[1], walk) && pieceFacts(on[2], walk).targets > 0) {
    pieces.deviceText = listed(pieces.deviceText, on[1]);
    pieces.wishTexts.push(on[2]);
    return;
  }
  if (isWhollyDevice(piece, walk)) {
    pieces.deviceText = listed(pieces.deviceText, piece);
    return;
  }
  if (isWish(facts, piece) && !(facts.device && facts.targets === 0 && facts.amounts === 0 && !facts.self)) {
    takeWishPiece(piece, pieces, walk);
    return;
  }
  const [first = '', ...others] = piece.split(/\s*[,;]\s*/);
  const behind = others.join(', ');
  if (facts.device && isDevice(first, walk) && pieceFacts(behind, walk).targets > 0) {
    pieces.deviceText = listed(pieces.deviceText, first);
    takePiece(behind, pieces, walk, true);
  } else if (facts.device) pieces.deviceText = listed(pieces.deviceText, piece);
  else if (isAllIn(positionWords, piece, walk.tongue)) pieces.place = listed(pieces.place, piece);
  else if (facts.targets > 0 || afterColon) takeWishPiece(piece, pieces, walk);
  else if (/,/.test(piece)) for (const part of piece.split(',')) takePiece(tidy(part), pieces, walk, false);
  else if (piece !== '') pieces.notes.push(piece);
}

/** "IEM stereo, lots of snare", "centre, 2 wedges. Lots of snare": what tells a device or a place before the first
 * wish belongs to the device. */
function takeWishPiece(piece: string, pieces: MixPieces, walk: Walk): void {
  let rest = piece;
  for (;;) {
    const [, part = '', behind = ''] = /^(.+?)(?:\s*[,;]\s*|\.\s+)(.+)$/su.exec(rest) ?? [];
    if (part === '') break;
    if (
      pieces.place === '' &&
      isAllIn(positionWords, part, walk.tongue) &&
      pieceFacts(part, walk).targets === 0
    ) {
      pieces.place = part;
      rest = behind;
      continue;
    }
    const facts = pieceFacts(part, walk);
    const isDevicePart =
      isWhollyDevice(part, walk) ||
      (facts.device && facts.targets === 0 && facts.amounts === 0 && !facts.self);
    if (!isDevicePart) break;
    pieces.deviceText = listed(pieces.deviceText, part);
    rest = behind;
  }
  if (isWhollyDevice(rest, walk)) pieces.deviceText = listed(pieces.deviceText, rest);
  else pieces.wishTexts.push(rest);
}

type Piece = { text: string; bracketed: boolean; afterColon: boolean };

/** "Ada / wedge / own voice loud": slashes between all pieces, where there is no colon. */
const withSlashes = (text: string) =>
  !text.includes(':') && (text.match(/\s\/\s/g)?.length ?? 0) > 1 ? text.replace(/\s\/\s/g, ' | ') : text;

/** "Ada: horns: loud; keys: quiet": behind the listener's colon the others stand between a source and its amount. */
function keepLaterColons(text: string, walk: Walk): string {
  let seen = 0;
  return text.replace(/\s*[:：](?=\s|$)/g, (colon, at: number) => {
    seen += 1;
    const before =
      text
        .slice(0, at)
        .split(/[,;:：.]/)
        .at(-1) ?? '';
    if (seen === 1 || isDevice(before, walk)) return colon;
    const { targets, amounts } = pieceFacts(before, walk);
    return targets + amounts > 0 ? lateColon : colon;
  });
}

const lateColon = '\u2236';

function splitPieces(text: string, walk: Walk): Piece[] {
  const pieces: Piece[] = [];
  let afterColon = false;
  for (const part of keepLaterColons(withSlashes(text), walk).split(
    /(\([^)]*\)|\[[^\]]*\])|(\s*[:：]\s+|\s*[:：]$|\s+[-–—→]+\s+|\s*=>?\s*|\s*\|\s*|\s+\/\/\s+)/,
  )) {
    if (part === undefined || part === '') continue;
    if (/^\s*(?:[:：]|[-–—→=|]|\/\/)/.test(part) && tidy(part).length <= 2) {
      if (/[:：]/.test(part)) afterColon = true;
      continue;
    }
    const bracketed = /^[([]/.test(part);
    const plain = tidy(bracketed ? part.slice(1, -1) : part)
      .replace(/^[,;.\s]+|[,;\s]+$/g, '')
      .replaceAll(lateColon, ':');
    if (plain !== '') pieces.push({ text: plain, bracketed, afterColon });
  }
  return pieces;
}

function isListener(piece: string, facts: PieceFacts, walk: Walk): boolean {
  if (facts.words === 0 || facts.words > 6 || facts.amounts > 0 || facts.self || facts.sameAs || facts.open)
    return false;
  if (isAllIn(positionWords, piece, walk.tongue) && facts.targets === 0) return false;
  if (facts.device) return false;
  if (/,/.test(piece)) return isListOfNames(piece, walk);
  if (facts.targets > 1 && /[+&/]/.test(piece)) return hasWordOf(piece, walk.tongue.names);
  return true;
}

/** "Bea, Caz, Dov y Eli" share a mix. */
function isListOfNames(piece: string, walk: Walk): boolean {
  const names = piece.split(/\s*(?:,|&|\+|\band\b|\bund\b|\bet\b|\by\b|\be\b|\ben\b)\s*/).filter(Boolean);
  return names.every((name) => {
    const facts = pieceFacts(name, walk);
    return facts.words <= 2 && facts.targets === 0 && !facts.device && looksLikeName(name, walk);
  });
}

/** "Noor listens through": the name before its verb. */
function beforeVerb(text: string, walk: Walk): string {
  const tokens = tokenize(text);
  const verb = findHits(verbWords, tokens, walk.tongue.spoken, walk.tongue.names).find(
    (hit) => hit.from > 0 && hit.certainty === 1 && hit.senses.every((sense) => sense.meaning === 'listens'),
  );
  return verb ? text.slice(0, tokens[verb.from]?.start) : text;
}

const trailingVerb =
  /\s+(?:has|have|uses?|is|are|on|with|brings|hat|nutzt|benutzt|mit|auf|a|utilise|avec|tiene|usa|con|ha|heeft|gebruikt|met|tem|com|an?|his|her|their)(?:\s+(?:on|an?|his|her|their|eine?n?|une?|una|een|uma?|os|seus?|suas?))*\s*$/i;

/** "Noor, IEM stereo" or "Noor IEM stereo": a name, then the device. */
function leadingListener(piece: string, walk: Walk): { name: string; rest: string } | null {
  const comma = /^([^,]{1,40}),\s*(.+)$/.exec(piece);
  if (comma?.[1] && comma[2]) {
    const facts = pieceFacts(comma[1], walk);
    const tellsHow = comma[2]
      .split(',')
      .some((part) => isDevice(part, walk) || isAllIn(positionWords, part, walk.tongue));
    const named = looksLikeName(comma[1], walk) && facts.targets === 0;
    if (isListener(comma[1], facts, walk) && (named || tellsHow)) return { name: comma[1], rest: comma[2] };
  }
  const tokens = tokenize(piece);
  const hits = findHits(mixWords, tokens, walk.tongue.spoken, walk.tongue.names);
  const first = hits.find((hit) => hit.senses.some((sense) => sense.subject !== 'position'));
  const start = first ? tokens[first.from]?.start : undefined;
  if (first && start !== undefined && first.from > 0) {
    const name = tidy(
      beforeVerb(piece.slice(0, start), walk)
        .replace(trailingVerb, '')
        .replace(/[-,:–\s]+$/, ''),
    );
    if (name !== '' && isListener(name, pieceFacts(name, walk), walk))
      return { name, rest: tidy(piece.slice(start)) };
  }
  return null;
}

/** "Anna doesn't want any keys", "Anna ne veut pas de claviers". */
export const negation =
  /[\s,:]+(?:(?:does|do|would|will|did)(?:n['’]?t| not)|never|nicht|ne|n['’]|pas|plus|non|no|niet|geen|sin|n[aã]o|nunca)$/iu;

/** "Anna (vox) needs lots of herself": the words before and behind the verb. */
export function splitAtVerb(text: string, walk: Walk): { head: string; tail: string } | null {
  const tokens = tokenize(text);
  const hit = findHits(verbWords, tokens, walk.tongue.spoken, walk.tongue.names).find(
    (it) => it.from > 0 && it.certainty === 1 && it.senses.some((sense) => sense.meaning === 'wishes'),
  );
  const start = hit ? tokens[hit.from]?.start : undefined;
  const end = hit ? tokens[hit.to - 1]?.end : undefined;
  if (!hit || start === undefined || end === undefined) return null;
  const said = tidy(text.slice(0, start).replace(/[,\s]+$/, ''));
  const head = tidy(said.replace(negation, ''));
  const much = tokens.slice(hit.from, hit.to).filter((token) => isAmountWord(token.text, walk));
  const tail = tidy(
    [negation.test(said) ? 'no' : '', ...much.map((token) => token.raw), text.slice(end)].join(' '),
  );
  if (head === '' || tail === '' || head.split(' ').length > 9) return null;
  return { head, tail };
}

/** "The DJ needs a firm table": a wish, but for nothing that is heard. */
export function wishesThing(text: string, walk: Walk): boolean {
  const tail = splitAtVerb(text, walk)?.tail ?? '';
  const { targets, self, device } = pieceFacts(tail, walk);
  const things = findHits(thingWords, tokenize(tail), walk.tongue.spoken).filter(
    (hit) => hit.certainty === 1,
  );
  return targets === 0 && !self && !device && things.length > 0;
}

/** "Wants just", "braucht vor allem": what the verb says of the amount belongs to the wishes. */
const isAmountWord = (word: string, walk: Walk) =>
  /^(?:only|just|mainly|mostly|nur|vooral|alleen|vor|allem|surtout|juste|solo|s[oó]lo|soltanto|s[oó]|apenas|enkel)$/.test(
    word,
  ) &&
  lookUp(wishWords, word === 'vor' || word === 'allem' ? 'vor allem' : word, walk.tongue.spoken) !== null;

export type MixLabel = { label: string; numbers: number[]; rest: string };

const countsMixes = (token: Token | undefined, walk: Walk) =>
  token !== undefined && lookUp(titleLexicon, token.text, walk.tongue.spoken)?.[0]?.meaning === 'mixes';

/** "Mix 1", "Aux 5/6", "IEM #2" at the beginning of a text, or null. */
export function leadingLabel(text: string, walk: Walk): MixLabel | null {
  const plain = withoutBullet(text);
  const tokens = tokenize(plain);
  const hit = findHits(labelWords, tokens, walk.tongue.spoken, walk.tongue.names)[0];
  if (!hit || hit.from !== 0) return null;
  let at = hit.to;
  while (['#', '.', '°', '-'].includes(tokens[at]?.text ?? '') && at - hit.to < 2) at += 1;
  const number = tokens[at];
  // "Monitors - 4 mixes" counts them.
  if (tokens[at - 1]?.text === '-' && countsMixes(tokens[at + 1], walk)) return null;
  const letter = /^[A-H]$/.test(number?.raw ?? '') ? (number?.text.charCodeAt(0) ?? 0) - 96 : null;
  if (!number || (letter === null && (number.kind !== 'number' || number.text.length > 2))) return null;
  const numbers = [letter ?? Number(number.text)];
  let end = at + 1;
  const glue = tokens[end];
  const second = tokens[end + 1];
  if (
    glue &&
    ['/', '+', '&', '-'].includes(glue.text) &&
    second?.kind === 'number' &&
    Number(second.text) === (numbers[0] ?? 0) + 1
  ) {
    numbers.push(Number(second.text));
    end += 2;
  }
  const after = tokens[end];
  if (after && (after.text === 'x' || after.text === '%' || after.text === '"')) return null;
  const stop = tokens[end - 1]?.end ?? 0;
  return {
    label: tidy(plain.slice(0, stop)),
    numbers,
    rest: plain.slice(stop).replace(/^\s*[-–—:.,)=/|]*\s*/, ''),
  };
}
