import { factsOfKind, type SourceKind } from '../../show/source-kinds.ts';
import { fold } from '../language/text.ts';
import type { Work, WorkInput } from '../page/work.ts';
import { stemsOfPerformer } from '../performers/performers.ts';
import { phantomIn } from './details.ts';
import { lower, ofKind } from './settle-kind.ts';
import { settleVocals } from './voices.ts';

/** Settles kinds that only the other lines of the rider tell. */
export function settleKindsInContext(work: Work): void {
  settleChoir(work);
  settleHalves(work);
  settleSurdos(work);
  settleSmallPercussion(work);
  settleTimbales(work);
  settleTomRows(work);
  settleTomSizes(work);
  settleToms(work);
  settleDoubleBass(work);
  settleViolas(work);
  settleSaxes(work);
  settleBasses(work);
  settleSoloists(work);
  settlePianos(work);
  settleBass(work);
  settleRappers(work);
  settleSpeech(work);
  settleVocals(work);
  settleGuitars(work);
  settleConductors(work);
  settleTalk(work);
  settlePads(work);
}

/** A conductor who is said to speak does so to the audience. */
function settleConductors(work: Work): void {
  for (const input of ofKind(work, 'talkback'))
    if (
      input.name.stem === 'conductor' &&
      speaks.test(`${input.read.name} ${input.found.details.notes.join(' ')}`)
    )
      lower(input, 'presenter', 0.8);
}

const speaks =
  /\b(?:speaks?|speech|spricht|sprache|ansage\p{L}*|parle|parole|habla|parla|praat|spraak|spreekt|fala)\b/iu;

/** A voice that recites, or that only speaks, does not sing. */
function settleSpeech(work: Work): void {
  const spoken = (['vocal', 'other', 'ambience'] as const).flatMap((kind) => ofKind(work, kind));
  for (const input of spoken) {
    const said = fold([input.read.name, ...input.found.details.notes].join(' '));
    const isTold = input.read.kind === 'vocal' ? recites.test(said) : toAudience.test(said);
    if (isTold || (toAudience.test(said) && !sings.test(said))) lower(input, 'presenter', 0.8);
  }
}

const recites =
  /\b(?:recita\p{L}*|recites?|rezitiert|rezitation|(?:only|just) (?:speaks|talks)|(?:speaks|talks|spoken) only|spricht nur|nur (?:sprech|text|sprache)\p{L}*|parle (?:seulement|uniquement)|ne chante pas|(?:solo|solamente|no canta) habla|solo habla|(?:solo parla|parla solo|soltanto parla)(?:ta|to)?|non canta|(?:spreekt|praat) alleen|alleen (?:spreken|praten|spreekt)|so fala|apenas fala|nao canta|doesn'?t sing|does not sing|singt nicht|zingt niet|no canta)(?!\p{L})/u;
const toAudience =
  /\b(?:sagt (?:die |den |das )?(?:\p{L}+ )?an\b|ansag\p{L}*|moderiert|announces|introduces|hosts|presente les|annonce|anuncia|presenta|annuncia|apresenta|presenteert|kondigt|(?:speaks?|talks?|talking|chats) (?:to|with) (?:the )?(?:audience|crowd|people)|(?:spricht|redet|sprechen|reden) (?:zum|mit dem) publikum|parler? (?:au|avec le) public|hablar? (?:al|con el) publico|parlar?e? (?:al|col|con il) pubblico|(?:praa?t|spreekt|praten|spreken|gesprekken) (?:tegen|met|tot) (?:het )?publiek|falar? (?:ao|com o|para o) publico)/u;
const sings = /\b(?:sings?|singt|chante|canta|zingt)\b/;

/** A voice that only the musicians hear talks to them. */
function settleTalk(work: Work): void {
  for (const { read, found } of work.inputs) {
    const said = `${read.name} ${found.details.notes.join(' ')}`;
    const isSpoken = read.kind === 'presenter' && read.audience === 'monitors only';
    const isToldTo = ['presenter', 'vocal', 'other'].includes(read.kind) && toMusicians.test(fold(said));
    if (!isSpoken && !isToldTo) continue;
    read.kind = 'talkback';
    read.kindConfidence = 0.85;
  }
}

const toMusicians =
  /\b(?:(?:to|only|for|just)\s+(?:the\s+)?(?:band|musicians|ears)(?:\s+only)?\b|band only|(?:zur|an die|nur (?:fur |an )?(?:die )?)\s*(?:band|musiker)|(?:alleen\s+)?(?:naar|voor) de (?:muzikanten|band)|(?:vers|aux|pour les) musiciens|(?:a|para) los musicos|(?:ai|per i|solo) musicisti|(?:para|aos) (?:os )?musicos)/;

/** "MC Flocke" raps where there are beats; an "MC mic" by itself announces. */
function settleRappers(work: Work): void {
  const beats = work.inputs.some(({ read }) => ['dj', 'playback', 'sampler'].includes(read.kind));
  if (!beats) return;
  for (const input of ofKind(work, 'presenter')) {
    const isNamed = input.name.unknown.length > 0 || input.read.performer !== null;
    if (/^mc\s/i.test(input.read.name) && isNamed) lower(input, 'lead vocal', 0.72);
  }
}

const inChoir =
  /^(?:chor|choir|ch[oœ]+e?urs?|koor|coro)\s+|\s*(?:\([^)]*\b(?:chor|ch[oœ]+e?ur|choir|koor|coro)\b[^)]*\)|(?:chor|choir|koor|coro))$/iu;

/** "Alt 2" and "Basses" beside a line of a choir are voices, no saxophone and no guitar. */
function settleChoir(work: Work): void {
  const voices =
    /^(?:sopran\p{L}*|mezzo\p{L}*|[ck]ontralt\p{L}*|alt\p{L}?s?|t[eé]nor\p{L}*|barit[oó]n\p{L}*|bass(?:es|i|en)?|bas|b[aä]sse|bassen|bajos?|baixos?)\s*\d*$/iu;
  const isChoir = (at: number) => work.inputs[at]?.read.kind === 'choir';
  work.inputs.forEach((input, at) => {
    const name = input.read.name.replace(inChoir, '');
    // "Coro bajo" may be the bass player who sings.
    const isTold =
      name !== input.read.name && !/^(?:coro|koor)\s+(?:bajo|baixo|basso|bas)$/i.test(input.read.name);
    if (!voices.test(name) || !(isTold || isChoir(at - 1) || isChoir(at + 1))) return;
    input.read.kind = 'choir';
    input.read.kindConfidence = 0.85;
  });
}

const saysWhich = ({ name: { parts } }: WorkInput) =>
  parts.has('electric') || parts.has('amp') || parts.has('lead');

const isPlugged = ({ read, found }: WorkInput) =>
  (read.pickUp === 'di' || read.pickUp === 'line' || /\bl[ií]ne?a\b/i.test(read.name)) &&
  !/model+er|profiler|amp|pedal ?board|kemper/i.test(`${read.pickUpModel} ${found.details.notes.join(' ')}`);

/** Pads beside a DJ, where nobody plays a kit, set off samples (common practice). */
function settlePads(work: Work): void {
  const isKit = work.inputs.some(({ read }) => ['kick', 'kick in', 'snare', 'snare top'].includes(read.kind));
  if (isKit || ofKind(work, 'dj').length === 0) return;
  for (const input of ofKind(work, 'electronic drums'))
    if (/^pads?\b/i.test(input.read.name)) lower(input, 'sampler', 0.75);
}

const blown: ReadonlySet<SourceKind> = new Set<SourceKind>(['saxophone', 'trumpet', 'trombone', 'brass']);
const mayBeSax: ReadonlySet<string> = new Set([
  'other',
  'viola',
  'choir',
  'vocal',
  'saxophone',
  'flute',
  'clarinet',
]);
const isByVoice = ({ read, name }: WorkInput) => {
  const [word = '', ...others] = name.tokens.filter(({ kind }) => kind === 'word').map(({ text }) => text);
  const isNamed = name.stem === null || read.performer !== null;
  // "Alto 1 / flute" is who sits there, and what is played besides.
  const isSeat = name.ordinal !== null && /\d\s*\//.test(read.name);
  return saxVoice.test(word) && (isNamed || isSeat || others.every((it) => saxVoice.test(it)));
};
const saxVoice =
  /^(?:alt|tenor|bariton|sopran|alto|altos|ténor|tenori?|baryton|bar[ií]tono?|baritone|bari|sopran[oe]|contralto)\s*\d*$/iu;

/** "Alt 1", "Tenor 2" and "Bariton" beside trumpets and trombones are saxophones (common practice). */
function settleSaxes(work: Work): void {
  for (const input of work.inputs)
    if (isByVoice(input) && /sax/i.test(input.found.details.notes.join(' '))) lower(input, 'saxophone', 0.9);
  const winds = work.inputs.filter(({ read }) => blown.has(read.kind));
  if (winds.length < 2) return;
  const lists = new Set(winds.map(({ found }) => found.list));
  // Where tenor horns and no saxophones play, a baritone is a horn too.
  const isBand =
    ofKind(work, 'saxophone').every(isByVoice) &&
    !work.inputs.some(({ read }) => /^alto?s?\b/i.test(read.name)) &&
    work.inputs.some(({ read }) => /tenorhorn|fl[uü]gelhorn|euphoni|bombardin|flicorn/i.test(read.name));
  for (const input of work.inputs) {
    if (!mayBeSax.has(input.read.kind) || !lists.has(input.found.list) || !isByVoice(input)) continue;
    input.read.kind = isBand ? 'brass' : 'saxophone';
    input.read.kindConfidence = 0.85;
  }
}

/** "Basses" with a microphone, among cornets and horns, are blown. */
function settleBasses(work: Work): void {
  if (work.inputs.filter(({ read }) => blown.has(read.kind) || read.kind === 'flugelhorn').length < 3) return;
  for (const { read } of work.inputs)
    if (/^(?:bassen|bässe|basses|bassi|bajos|baixos)(?!\p{L})/iu.test(read.name) && read.pickUp !== 'di') {
      read.kind = 'tuba';
      read.kindConfidence = Math.min(read.kindConfidence, 0.8);
    }
}

const windWords =
  /fiati|ottoni|bl[aä]ser|holz|blech|winds?\b|horns?\b|brass|sax|vientos?|metales|cuivres|vents|soufflants|blazers|koper|sopros|metais/i;

/** "Solo mic" in front of a section is whoever steps forward: no voice, and no one instrument. */
function settleSoloists(work: Work): void {
  const winds = work.inputs.filter(({ read }) => blown.has(read.kind)).length;
  for (const input of work.inputs) {
    const { read, name, found } = input;
    if (read.pickUp === 'wireless') continue;
    const isSolo =
      name.stem === 'soloist' || /^(?:mi[ck]\p{L}*\s+)?(?:solo|soli|assoli|solos)\b/iu.test(read.name);
    const said = [read.name, ...found.details.notes].join(' ');
    if (isSolo && ['lead vocal', 'brass', 'other'].includes(read.kind) && (windWords.test(said) || winds > 2))
      lower(input, 'other', 0.65);
  }
}

const electricPiano =
  /\b(?:e-?[ -]?piano|e-?klavier|(?:electric|stage|digital) piano|stagepiano|digitalpiano|piano (?:electrique|numerique|electrico|digital|elettrico|digitale|eletrico)|(?:elektrische|digitale) piano)\b/;

/** An electric piano is a keyboard (common practice). */
function settlePianos(work: Work): void {
  const pianos = ofKind(work, 'piano');
  const electric = pianos.filter(({ read }) => electricPiano.test(fold(read.name)));
  for (const input of electric) lower(input, 'keys', 0.85);
}

/** "Viola" is a guitar in Portuguese, unless others with bows sit beside it (common practice). */
function settleViolas(work: Work): void {
  if (!work.tongue.spoken.has('pt')) return;
  const isBowed = work.inputs.some(({ read }) => ['violin', 'cello', 'strings'].includes(read.kind));
  for (const input of ofKind(work, 'viola'))
    if (/^violas?\b/i.test(input.read.name) && (!isBowed || input.name.parts.has('acoustic')))
      lower(input, 'acoustic guitar', 0.8);
}

const isFlamenco = (work: Work) =>
  work.inputs.some(({ read }) => /palmas|tablao|zapateado|bailaor|\bcante\b/i.test(read.name)) &&
  !work.inputs.some(({ read }) => ['kick', 'kick in', 'snare', 'snare top', 'hi-hat'].includes(read.kind));

/** A guitar that does not say which, of a player whom the line-up gives an acoustic one. */
function settleGuitars(work: Work): void {
  for (const input of work.inputs) {
    if (input.name.stem !== 'guitar' || input.read.kind !== 'electric guitar' || saysWhich(input)) continue;
    // Where people clap and dance to it, it has no amplifier.
    const isQuiet = isFlamenco(work) && !input.name.parts.has('amp');
    // A condenser in front of a guitar hears wood, not a loudspeaker (common practice).
    const isCondenser = [input.read.pickUpModel, input.read.name].some(
      (text) => phantomIn(text, work.tongue) === 'needed',
    );
    if (isQuiet || (isCondenser && !input.name.parts.has('amp'))) {
      lower(input, 'acoustic guitar', 0.72);
      continue;
    }
    const performer = work.performers.find((it) => it.name === input.read.performer);
    const stems = performer ? stemsOfPerformer(work, performer) : [];
    const others = work.inputs.filter((it) => performer && it.read.performer === performer.name);
    const has = (kind: 'acoustic guitar' | 'electric guitar') =>
      stems.includes(kind) || (isPlugged(input) && others.some((it) => it.name.stem === kind));
    if (has('acoustic guitar') && !has('electric guitar')) lower(input, 'acoustic guitar', 0.75);
  }
}

/** A kick beside a kick in is the one outside; a snare beside a snare bottom is the one on top (common practice). */
function settleHalves(work: Work): void {
  const halves: [SourceKind, SourceKind, SourceKind][] = [
    ['kick', 'kick in', 'kick out'],
    ['kick', 'kick out', 'kick in'],
    ['snare', 'snare bottom', 'snare top'],
    ['snare', 'snare top', 'snare bottom'],
  ];
  for (const [whole, present, other] of halves) {
    const wholes = ofKind(work, whole);
    const first = wholes[0];
    if (
      wholes.length === 1 &&
      first &&
      ofKind(work, present).length > 0 &&
      ofKind(work, other).length === 0 &&
      first.name.ordinal === null &&
      first.name.unknown.length === 0 &&
      other !== 'snare bottom'
    )
      lower(first, other, 0.85);
  }
}

/** "Surdo" is the floor tom of a drum kit in Portuguese; elsewhere, and without a kit, it is the drum of a samba
 * band (common practice). */
function settleSurdos(work: Work): void {
  const inKit = work.inputs.some(({ read }) =>
    ['kick', 'kick in', 'rack tom', 'tom', 'hi-hat'].includes(read.kind),
  );
  if (inKit && work.tongue.spoken.has('pt')) return;
  for (const input of ofKind(work, 'floor tom'))
    if (/surd[oã]/i.test(input.read.name)) lower(input, 'percussion', 0.9);
}

const smallThings: ReadonlySet<string> = new Set(['shaker', 'bells', 'tambourine', 'percussion', 'cymbals']);

/** "Güiro and maracas" share a microphone: a table of small things, not one of them (common practice). */
function settleSmallPercussion(work: Work): void {
  for (const { read, name } of work.inputs) {
    const isMixed = name.besides.some((stem) => stem !== name.stem && smallThings.has(stem));
    if (!smallThings.has(read.kind) || !isMixed || !listed.test(read.name)) continue;
    read.kind = 'percussion';
  }
}

const listed = /[,+&]|\s(?:and|und|et|y|e|ed|en)\s/i;

const latinDrums: ReadonlySet<string> = new Set(['congas', 'bongos', 'timbales']);
// A player of timbales may have a kick and cymbals too, but no snare and no hi-hat.
const onlyInKits: ReadonlySet<string> = new Set(['snare', 'snare top', 'snare bottom', 'hi-hat']);

/** "Timbal" is a tom of a drum kit; beside congas, where nobody plays a kit, it is one of the timbales (common practice). */
function settleTimbales(work: Work): void {
  const has = (kinds: ReadonlySet<string>) => work.inputs.some(({ read }) => kinds.has(read.kind));
  if (!has(latinDrums)) return;
  const isKit = has(onlyInKits);
  work.inputs.forEach((input, at) => {
    const isTimbal = /^timbal(?:es)?(?!\p{L})/iu.test(input.read.name);
    if (!isTimbal || !['tom', 'rack tom', 'floor tom'].includes(input.read.kind)) return;
    const beside = [work.inputs[at - 1], work.inputs[at + 1]];
    const isAmongThem =
      input.name.ordinal === null &&
      beside.some((it) => it && factsOfKind(it.read.kind).group === 'percussion');
    if (!isKit || isAmongThem) lower(input, 'timbales', 0.85);
  });
}

/** "Alto, médium, basse" right below the hi-hat, and "Base" below a tom, are toms (common practice). */
function settleTomRows(work: Work): void {
  const ofKit = new Set<SourceKind>([
    'hi-hat',
    'snare',
    'snare top',
    'snare bottom',
    'rack tom',
    'tom',
    'floor tom',
  ]);
  work.inputs.forEach((input, at) => {
    const above = work.inputs[at - 1];
    const word = fold(input.read.name);
    if (!above || !ofKit.has(above.read.kind) || input.read.pickUp === 'di') return;
    const isTom = ['rack tom', 'tom'].includes(above.read.kind);
    if (/^(?:alto|aigu|medium)$/.test(word)) lower(input, 'rack tom', 0.8);
    else if (isTom && /^(?:basse|bas|grave|base)$/.test(word)) lower(input, 'floor tom', 0.8);
  });
}

/** Sizes of toms: nobody numbers that many, and from 14 inches on they stand (common practice). */
const smallestTomInch = 8;
const floorTomInch = 14;
const largestTomInch = 20;

function settleTomSizes(work: Work): void {
  for (const tom of ofKind(work, 'tom')) {
    const inches = tom.name.ordinal ?? 0;
    if (inches >= smallestTomInch && inches <= largestTomInch)
      lower(tom, inches >= floorTomInch ? 'floor tom' : 'rack tom', 0.85);
  }
}

/** Numbered toms: the third and later ones stand on the floor, unless others are called floor toms. */
function settleToms(work: Work): void {
  const toms = ofKind(work, 'tom');
  const floors = ofKind(work, 'floor tom').length;
  const highest = Math.max(0, ...toms.map((tom) => ordinalOf(tom)));
  for (const tom of toms) {
    const ordinal = ordinalOf(tom);
    const count = Math.max(highest, toms.length);
    const floor = floors === 0 && (ordinal >= 3 || (ordinal === count && count >= 3));
    if (ordinal > 0)
      lower(
        tom,
        floor ? 'floor tom' : 'rack tom',
        ordinal === 2 && floors === 0 && count === 2 ? 0.75 : 0.85,
      );
    else if (toms.length === 1 || floors > 0) lower(tom, 'rack tom', 0.75);
    else
      lower(tom, toms.indexOf(tom) === toms.length - 1 && toms.length >= 3 ? 'floor tom' : 'rack tom', 0.7);
  }
}

const ordinalOf = (input: WorkInput): number =>
  input.name.ordinal === null ? 0 : input.name.ordinal + input.index;

/** "Contrabaixo" is either bass in Portuguese; only one with a bow's body has a pick-up or a condenser of its own. */
function settleDoubleBass(work: Work): void {
  const basses = work.inputs.filter(({ read }) => /^contrabaixo/i.test(read.name));
  const isOrchestra = ofKind(work, 'violin').length + ofKind(work, 'cello').length > 1;
  if (!isOrchestra && !basses.some(({ read }) => /pick-?\s?up|micro|captador/i.test(read.name))) return;
  for (const input of basses)
    if (['bass', 'bass di', 'bass amp'].includes(input.read.kind)) lower(input, 'double bass', 0.8);
}

/** A bass beside a bass DI is its amplifier, and the other way round. */
function settleBass(work: Work): void {
  const plain = ofKind(work, 'bass');
  const first = plain[0];
  if (plain.length !== 1 || !first) return;
  if (ofKind(work, 'bass di').length > 0) lower(first, 'bass amp', 0.8);
  else if (ofKind(work, 'bass amp').length > 0) lower(first, 'bass di', 0.8);
}
