import { withDigits } from '../language/count-words.ts';
import { findHits } from '../language/lexicon.ts';
import { groupOfStem, readSourceName } from '../language/source-name.ts';
import { tidy, tokenize } from '../language/text.ts';
import { nameWords, pickUpWords, standWords, verbWords } from '../language/vocabulary.ts';
import type { Walk } from '../page/walk-state.ts';
import { looksLikeName } from '../performers/line-up.ts';
import type { Stem } from '../words/sources.ts';
import { type Piece, piecesOf } from './told-pieces.ts';

/** A source that a sentence tells, and what it tells of it. */
export type Told = {
  /** The words that name it. */
  name: string;
  stem: Stem;
  count: number;
  performer: string;
  details: string[];
  /** A microphone or DI was told for it. */
  isPickedUp: boolean;
  /** The microphone was told in one breath with it: "a condenser for shakers". */
  hangs: boolean;
  isDi: boolean;
  /** Told in brackets behind a word for all of them, as the drums of "Drums (kick, snare)". */
  depth: number;
};

/** Words for a whole group: where its parts are told beside it, they are the lines. */
const groups: ReadonlySet<Stem> = new Set<Stem>([
  'drums',
  'percussion',
  'vocal',
  'guitar',
  'keys',
  'brass',
  'strings',
  'electronic drums',
]);

/** Stems whose words are everyday words too. */
const vague: ReadonlySet<Stem> = new Set<Stem>(['other', 'cue', 'presenter', 'ambience', 'conductor', 'mc']);

/** What a sentence takes back, or only compares with. */
const denied =
  /^(?:no|not|without|kein\p{L}*|ohne|nicht|pas d|pas de|sans|aucun\p{L}*|sin|ning[uú]n\p{L}*|senza|niente|nessun\p{L}*|geen|zonder|sem|nenhum\p{L}*)(?![\p{L}])/iu;
const beside =
  /^(?:next to|near|beside|behind|between|from|with|in front of|same|shares?|shared|like|as|doubles|doubling|plays also|neben|bei|zwischen|hinter|mit|wie|vom|von|à côté|près|derrière|avec|entre|comme|junto|al lado|detrás|con|como|accanto|vicino|dietro|come|naast|achter|tussen|met|zoals|ao lado|perto|atrás|com)(?![\p{L}])/iu;
const inFront =
  /\s(?:in front of|behind|under|underneath|inside|near|close to|at|vor|hinter|unter|in|am|beim?|devant|derrière|sous|dans|près d[eu]|delante de|detrás de|debajo de|dentro de|junto a|davanti a\p{L}*|dietro|sotto|dentro|vicino|voor|achter|onder|bij|à frente d[eoa]|atrás d[eoa]|debaixo d[eoa]|em frente)\s/iu;
/** "With a tray of small percussion": something more that is played. */
const withOneMore = /^(?:with|mit|avec|con|met|com) (?:an?|eine[mrn]?|une?|una?|uno|een|uma?|his|her|own) /iu;
/** One microphone for the two that were just told. */
const forBoth =
  /\b(?:for both|both share|für beide|für alle beide|pour les deux|para (?:ambos|ambas|los dos|las dos)|per (?:entrambi|entrambe|tutti e due)|voor beide|voor allebei|para (?:os dois|as duas))\b/iu;
/** The pick-up of the instrument: its DI is no second line. */
const ownPickUp = /pastilla|pick-?\s?up|cellule|tonabnehmer|captador|element|piezo|cápsula|capteur/iu;
/** One more of what was just told. */
const another =
  /(?:^|\s)(?:another|additional|a second|second|extra|also|one more|noch|zusätzlich|weiteres?|weitere[nr]?|zweites?|un autre|une autre|en plus|encore|otro|otra|además|adicional|un altro|un'altra|in più|anche|nog|extra|tweede|outro|outra|mais|também)(?=\s|$)/iu;

/**
 * The sources that a sentence or a line tells, with the microphones and DIs it gives them. Empty where it tells
 * none. `before` are sources of earlier sentences: a microphone told for one of them makes no new line.
 */
export function sourcesToldIn(text: string, before: readonly Told[], walk: Walk): Told[] {
  const pieces = piecesOf(withDigits(text, walk.tongue), walk.tongue);
  const read = pieces.map((piece): Read => ({ piece, facts: factsOf(piece, walk) }));
  const telling: Telling = { told: [], before, performer: '', list: null, walk };
  read.forEach((it, at) => {
    const { piece, facts } = it;
    if (piece.joint === ':' && piece.depth === 0) openList(telling);
    if (facts === 'denied' || inAll.test(withoutLead(piece.text))) return;
    if (facts.name !== '') telling.performer = facts.name;
    if (facts.stem === null) tellMore(telling, piece, facts);
    else if (orElse.test(piece.text) && telling.told.length > 0) tellMore(telling, piece, facts);
    else tellSource(telling, piece, { ...facts, stem: facts.stem }, read.slice(at));
  });
  return telling.told;
}

/** "Either a small condenser or in front of a vocal mic": ways to pick up what was just told. */
const orElse = /^(?:either|or|soit|ou|entweder|oder|o|oppure|of|ofwel|o bien)\s/iu;

/** "So that is two vocal microphones in all": a sum of what was told. */
const inAll =
  /^(?:in all|all in all|altogether|in total|insgesamt|zusammen|en tout|au total|en total|in tutto|in totale|in totaal|no total|ao todo)(?!\p{L})/iu;

type Read = { piece: Piece; facts: Facts | 'denied' };

/** What was told so far. `list` is the source before a colon: what stands behind it is a list of that source. */
type Telling = {
  told: Told[];
  before: readonly Told[];
  performer: string;
  list: { source: Told; name: string; isUsed: boolean } | null;
  walk: Walk;
};

function openList(telling: Telling): void {
  const source = telling.told.at(-1);
  telling.list = source && telling.told.length === 1 ? { source, name: source.name, isUsed: false } : null;
}

const isVoice = ({ stem }: Told) => groupOfStem(stem) === 'vocals';

/** A piece without a source: a microphone, one more of a list ("Vocals: Ada, Bo"), or a word on the last one. */
function tellMore(telling: Telling, piece: Piece, facts: Facts): void {
  const { told, list } = telling;
  if (facts.picksUp) pickUp(telling, piece, facts);
  else if (list && facts.name !== '' && piece.depth === 0) {
    const name = `${list.name} ${facts.name}`;
    if (!list.isUsed) Object.assign(list.source, { name, performer: facts.name });
    else told.push({ ...list.source, name, performer: facts.name, count: 1, details: [], isPickedUp: false });
    list.isUsed = true;
  } else told.at(-1)?.details.push(piece.text);
}

function tellSource(
  telling: Telling,
  piece: Piece,
  facts: Facts & { stem: Stem },
  rest: readonly Read[],
): void {
  const { told, before, performer, list } = telling;
  const last = told.at(-1);
  const opens = piece.joint === '(' || piece.joint === ':';
  const parts = opens ? rest.filter((it) => isPart(it, piece, last)).length : 0;
  const open = facts.picksUp ? waiting(facts.stem, [...before, ...told]) : [];
  const [known] = open;
  if (known) {
    // "Two vocal mics" are one for each who sings.
    const each = facts.count > 1 && open.length >= facts.count ? open.slice(0, facts.count) : [known];
    for (const source of each)
      giveMicrophone(source, piece, each.length > 1 ? { ...facts, count: 1 } : facts);
    // "She sings": the microphone for the voice names the line better.
    if (each.length === 1 && sings.test(known.name)) known.name = facts.phrase;
    return;
  }
  // "Gesang (Hauptstimme)" is told twice, "Shaker, triangle and toys" hang over one microphone.
  // "Percussion: one overhead" hangs over it.
  // "Harmonium, one condenser in front of the reeds": where the microphone of what was just told stands.
  if (last && !last.isPickedUp && facts.picksUp && inFront.test(piece.text)) {
    giveMicrophone(last, piece, facts);
    return;
  }
  // "Achille's voice, it is he who sings nearly everything": of the voice just told.
  if (last && facts.stem === 'vocal' && sings.test(facts.phrase) && isVoice(last) && facts.name === '') {
    last.details.push(piece.text);
    return;
  }
  const hangsOver = facts.stem === 'overhead' && list !== null && groupOfStem(list.source.stem) !== 'drums';
  const isSame =
    hangsOver ||
    (piece.joint === '(' && parts < 2) ||
    (piece.joint === ':' && facts.stem === list?.source.stem);
  if (last && (isSame || isMoreSmallThings(last, facts))) {
    last.details.push(piece.text);
    last.isPickedUp ||= facts.picksUp;
    return;
  }
  // "Drums (kick, ...": the word before the bracket was for all of them.
  if (last && parts > 0 && groups.has(last.stem)) told.pop();
  told.push({
    name: facts.phrase,
    stem: facts.stem,
    count: facts.count,
    performer,
    details: facts.rest === '' ? [] : [facts.rest],
    isPickedUp: facts.picksUp,
    hangs: facts.picksUp,
    isDi: facts.picksUp && facts.isDi,
    depth: piece.depth,
  });
}

function giveMicrophone(source: Told, piece: Piece, facts: Facts): void {
  source.isPickedUp = true;
  source.isDi = facts.isDi;
  source.details.push(piece.text);
  source.count = Math.max(source.count, facts.count);
}

/** True for a part of the group that was told before this piece: in the same bracket, behind the same colon. */
const isPart = ({ piece, facts }: Read, first: Piece, heading: Told | undefined) =>
  facts !== 'denied' &&
  facts.stem !== null &&
  heading !== undefined &&
  piece.depth >= first.depth &&
  facts.stem !== heading.stem &&
  groupOfStem(facts.stem) === groupOfStem(heading.stem);

/** "A condenser for shakers, triangle and toys" is one microphone. */
const isMoreSmallThings = (last: Told, facts: Facts) =>
  last.isPickedUp &&
  last.hangs &&
  !facts.picksUp &&
  !facts.hasArticle &&
  facts.stem !== null &&
  groupOfStem(last.stem) === 'percussion' &&
  groupOfStem(facts.stem) === 'percussion';

/** The sources that still wait for this microphone: of the same kind, or a guitar for any guitar, a voice for any. */
function waiting(stem: Stem, told: readonly Told[]): Told[] {
  const group = groupOfStem(stem);
  const isAlike = (it: Told) =>
    it.stem === stem || (groupOfStem(it.stem) === group && (group === 'vocals' || group === 'guitars'));
  return told.filter((it) => !it.isPickedUp && isAlike(it));
}

/** "A DI and also a clip", "DI and microphone": two lines of one source. */
const isOneMore = (last: Told, piece: Piece, facts: Facts) =>
  (piece.depth === 0 && (piece.joint === 'more' || another.test(piece.text))) ||
  (piece.joint === 'and' && last.isDi !== facts.isDi && !ownPickUp.test(last.details.at(-1) ?? ''));

/** A microphone or DI that names no source: for the one that waits, or one more for the last. */
function pickUp({ told, list }: Telling, piece: Piece, facts: Facts): void {
  const last = told.at(-1);
  if (!last) return;
  const other = told.at(-2);
  if (forBoth.test(piece.text) && other && !other.isPickedUp && facts.count === 1) {
    other.name = `${other.name} + ${last.name}`;
    told.pop();
    giveMicrophone(other, piece, facts);
    return;
  }
  const open = told.filter((it) => !it.isPickedUp);
  // "A cajon, a djembe and toys: three microphones": one for each.
  if (facts.count > 1 && open.length >= facts.count && piece.depth === 0) {
    for (const source of open.slice(-facts.count)) giveMicrophone(source, piece, { ...facts, count: 1 });
    return;
  }
  const first = open.find((it) => (groupOfStem(it.stem) === 'vocals') !== facts.isDi) ?? open[0];
  const wanted = piece.depth > last.depth ? (last.isPickedUp ? null : last) : first;
  if (wanted) giveMicrophone(wanted, piece, facts);
  else if (isOneMore(last, piece, facts))
    told.push({
      ...last,
      name: `${last.name}, ${withoutLead(piece.text)}`,
      count: facts.count,
      details: [piece.text],
      isDi: facts.isDi,
    });
  else if (piece.depth === 0 && list && facts.hasArticle)
    told.push({
      ...list.source,
      name: `${list.name}, ${withoutLead(piece.text)}`,
      count: facts.count,
      details: [piece.text],
    });
  else last.details.push(piece.text);
}

type Facts = {
  /** The words of the piece that name a source. */
  phrase: string;
  stem: Stem | null;
  /** A performer's name, where the piece is one. */
  name: string;
  rest: string;
  count: number;
  picksUp: boolean;
  isDi: boolean;
  hasArticle: boolean;
};

function factsOf(piece: Piece, walk: Walk): Facts | 'denied' {
  const { tongue } = walk;
  const text = withoutLead(piece.text);
  if (denied.test(text) || notNeeded.test(text)) return 'denied';
  const hits = findHits(nameWords, tokenize(text), tongue.spoken, tongue.names);
  // "Sie hat ein eigenes Mikro": has, no hi-hat.
  const isHat = tongue.spoken.has('de') && /^\p{Lu}?\p{Ll}+ hat\s/u.test(text);
  const picksUp =
    microphone.test(text) ||
    (!/^digital\p{L}*$|^digitaal$/iu.test(text) &&
      hits.some((hit) => hit.senses.some((sense) => sense.subject === 'pickUp')));
  const isStand = stand.test(text) && text.split(' ').length <= longestStand;
  const isAside = !picksUp && ((beside.test(text) && !withOneMore.test(text)) || isStand);
  const stem = isAside ? null : stemIn(isHat ? text.replace(/ hat\s/, ' ') : text, picksUp, walk);
  const phrase = stem === null ? text : phraseOf(text, stem, walk);
  return {
    phrase,
    stem,
    name: picksUp ? '' : leadingName(text, stem, walk),
    rest: tidy(text.replace(phrase, ' ')),
    count: countIn(text, walk),
    picksUp,
    isDi: readSourceName(text, tongue).pickUps.has('di'),
    hasArticle: text !== piece.text || /^\d/.test(text),
  };
}

const notNeeded =
  /not needed|no need|not necessary|nicht nötig|nicht gebraucht|brauchen wir nicht|brauchts? nicht|pas besoin|pas nécessaire|no hace falta|no es necesario|non serve|non servono|non occorre|niet nodig|não precisa|não é preciso|não é necessári/iu;
/** Clips are microphones here, no films. */
const onlyClips = /^\d?\s?(?:\p{L}+ )?clips?$/iu;
const microphone = /(?:^|\s|\p{L})(?:mi[ck]s?|mi[ck]ro\p{L}*|clips?|dis|di[ -]?box\p{L}*)(?=$|[^\p{L}])/iu;
/** "A short stand with a boom"; longer pieces speak of more than the stand. */
const longestStand = 6;
const stand = /stativ\p{L}*|statie[fv]\p{L}*|\bstands?\b|\bpieds?\b|\baste\b|\btrip[oó]?des?\b|pedesta/iu;
const voice = /vo[cz]al|gesang|stimme|chant|voix|\bvo[zc]e?s?\b|\bvoci\b|zang|vocais/iu;
const sings =
  /(?:^|\s)(?:sings?|singing|singe?n?|singt|gesungen|chante(?:nt|s)?|cant[ao]n?o?|cantam|zing(?:t|en|e)?)(?=\s|$)/iu;

/** The source that a piece is about, where its words say so clearly, or null. */
function stemIn(text: string, picksUp: boolean, walk: Walk): Stem | null {
  const { stem, certainty, isEveryday } = readSourceName(text, walk.tongue);
  // "We tape it to the inside" plays nothing back.
  const isVague = stem !== null && groupOfStem(stem) === 'playback';
  if (isEveryday && isVague && !picksUp && text.includes(' ')) return sings.test(text) ? 'vocal' : null;
  if (stem === 'playback' && onlyClips.test(text)) return null;
  // A misspelt word counts where it is long enough to be no other.
  const isClear = certainty >= 0.8 || (certainty > 0.7 && phraseOf(text, stem, walk).length >= 7);
  if (stem !== null && isClear && (!vague.has(stem) || picksUp)) return stem;
  if (picksUp && voice.test(text)) return 'vocal';
  return sings.test(text) ? 'vocal' : null;
}

const servesAs =
  /\p{L}+ (?:(?:that|which) (?:serves|is used|works|doubles) as|used as|(?:die|der|das) als|qui (?:sert|fait office|tient lieu) de|que (?:sirve|hace|funciona) (?:de|como)|che fa da|che funge da|(?:die|dat) (?:dient|dienst doet) als|que (?:serve|faz) de)(?: an?| une?| una?| eine?| een)? $/iu;

/** The words of the text that name the source, with the parts and sides right beside them. */
function phraseOf(text: string, stem: Stem | null, { tongue }: Walk): string {
  const tokens = tokenize(text);
  const hits = findHits(nameWords, tokens, tongue.spoken, tongue.names);
  const named = hits.filter((hit) => hit.senses.some((sense) => sense.meaning === stem));
  const first = named.find((hit) => hit.certainty === 1) ?? named[0];
  const at = first ? hits.indexOf(first) : -1;
  if (!first) return text;
  let { from, to } = first;
  // "A suitcase that serves as a kick": the thing is what everybody calls it by.
  const thing = servesAs.exec(text.slice(0, tokens[from]?.start));
  if (thing) return tidy(text.slice(thing.index, tokens[to - 1]?.end));
  for (let next = at + 1; hits[next]?.from === to; next++) to = hits[next]?.to ?? to;
  for (let next = at - 1; hits[next]?.to === from; next--) from = hits[next]?.from ?? from;
  return tidy(text.slice(tokens[from]?.start, tokens[to - 1]?.end));
}

/** "Livia (davanti)", "Jost:", "Livia canta": the name that a piece begins with, or nothing. */
function leadingName(text: string, stem: Stem | null, walk: Walk): string {
  const words = text.split(' ');
  const [first = ''] = words;
  const isName = (word: string) =>
    /^\p{Lu}\p{Ll}[\p{L}'’.-]*$/u.test(word) && readSourceName(word, walk.tongue).stem === null;
  if (/^(?:me|myself|ich|moi|yo|io|ik|eu)$/i.test(text)) return text;
  if (stem === null && words.length <= 2 && words.every(isName) && looksLikeName(text, walk)) return text;
  const tokens = tokenize(text);
  const plays = findHits(verbWords, tokens.slice(1), walk.tongue.spoken, walk.tongue.names).some(
    (hit) => hit.from === 0 && hit.senses.some((sense) => sense.meaning === 'plays'),
  );
  return plays && isName(first) ? first : '';
}

/** Joining words and articles that a piece may begin with. */
const lead =
  /^(?:(?:and|or|also|then|so|plus|there(?:'s| is| are)|a|an|the|one|my|his|her|our|some|und|dann|noch|auch|dazu|sowie|also|ein(?:e|en|em|er)?|der|die|das|den|dem|mein(?:e|en)?|et|puis|aussi|donc|un|une|le|la|les|l'|son|sa|ses|notre|y|luego|también|una?|el|los|las|su|sus|e|ed|anche|poi|quindi|uno?|il|lo|gli|i|suo|sua|en|ook|dan|nog|een|het|de|zijn|haar|mais|também|então|uma?|o|os|as|seu)(?:\s+|(?<='))){1,4}/iu;

function withoutLead(text: string): string {
  const plain = text.replace(lead, '');
  return plain === '' ? text : plain;
}

/** "2 vocal mics", "3x Gesang": how many lines a piece asks for. */
function countIn(text: string, { tongue }: Walk): number {
  const tokens = tokenize(text);
  const at = tokens.findIndex((token) => token.kind === 'number');
  const value = Number(tokens[at]?.text);
  if (!(value >= 2 && value <= 8)) return 1;
  const isKnown = (from: number) =>
    microphone.test(tokens[from]?.text ?? '') ||
    [nameWords, pickUpWords, standWords].some((words) =>
      findHits(words, tokens.slice(from, from + 3), tongue.spoken, tongue.names).some(
        (hit) => hit.from === 0,
      ),
    );
  const next = /^[x×]$/.test(tokens[at + 1]?.text ?? '') ? at + 2 : at + 1;
  return isKnown(next) || (at === 0 && isKnown(next + 1)) ? value : 1;
}
