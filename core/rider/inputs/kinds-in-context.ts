import type { SourceKind } from '../../show/source-kinds.ts';
import { groupOfStem } from '../language/source-name.ts';
import { fold } from '../language/text.ts';
import { sureEnough } from '../page/line-accounts.ts';
import { shorten, type Work, type WorkInput } from '../page/work.ts';
import { stemsOfPerformer } from '../performers/performers.ts';
import { weights } from '../questions.ts';
import { phantomIn } from './details.ts';

/** Settles kinds that only the other lines of the rider tell. */
export function settleKindsInContext(work: Work): void {
  settleChoir(work);
  settleHalves(work);
  settleSurdos(work);
  settleSmallPercussion(work);
  settleTimbales(work);
  settleTomSizes(work);
  settleToms(work);
  settleDoubleBass(work);
  settleBass(work);
  settleRappers(work);
  settleVocals(work);
  settleGuitars(work);
  settleConductors(work);
  settleTalk(work);
}

/** A conductor who is said to speak does so to the audience. */
function settleConductors(work: Work): void {
  for (const input of ofKind(work, 'talkback'))
    if (input.name.stem === 'conductor' && speaks.test(input.read.name)) lower(input, 'presenter', 0.8);
}

const speaks =
  /\b(?:speaks?|speech|spricht|sprache|ansage\p{L}*|parle|parole|habla|parla|praat|spraak|spreekt|fala)\b/iu;

/** A voice that only the musicians hear talks to them. */
function settleTalk(work: Work): void {
  for (const { read, found } of work.inputs) {
    const said = `${read.name} ${found.details.notes.join(' ')}`;
    if (!['presenter', 'vocal', 'other'].includes(read.kind) || !toMusicians.test(fold(said))) continue;
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

const inChoir = /\s*(?:\([^)]*\b(?:chor|ch[oœ]+e?ur|choir|koor|coro)\b[^)]*\)|(?:chor|choir|koor|coro))$/iu;

/** "Alt 2" and "Basses" beside a line of a choir are voices, no saxophone and no guitar. */
function settleChoir(work: Work): void {
  const voices =
    /^(?:sopran\p{L}*|mezzo\p{L}*|[ck]ontralt\p{L}*|alt\p{L}?s?|t[eé]nor\p{L}*|barit[oó]n\p{L}*|bass(?:es|i|en)?|b[aä]sse|bassen|bajos?|baixos?)\s*\d*$/iu;
  const isChoir = (at: number) => work.inputs[at]?.read.kind === 'choir';
  work.inputs.forEach((input, at) => {
    const name = input.read.name.replace(inChoir, '');
    if (!voices.test(name) || !(isChoir(at - 1) || isChoir(at + 1) || name !== input.read.name)) return;
    input.read.kind = 'choir';
    input.read.kindConfidence = 0.85;
  });
}

/** A guitar that does not say which, of a player whom the line-up gives an acoustic one. */
function settleGuitars(work: Work): void {
  for (const input of work.inputs) {
    if (
      input.name.stem !== 'guitar' ||
      input.read.kindConfidence >= sureEnough ||
      input.read.kind !== 'electric guitar'
    )
      continue;
    // A condenser in front of a guitar hears wood, not a loudspeaker (common practice).
    if (phantomIn(input.read.pickUpModel, work.tongue) === 'needed' && !input.name.parts.has('amp')) {
      lower(input, 'acoustic guitar', 0.72);
      continue;
    }
    const performer = work.performers.find((it) => it.name === input.read.performer);
    const stems = performer ? stemsOfPerformer(work, performer) : [];
    if (stems.includes('acoustic guitar') && !stems.includes('electric guitar'))
      lower(input, 'acoustic guitar', 0.75);
  }
}

const ofKind = (work: Work, kind: SourceKind) => work.inputs.filter((input) => input.read.kind === kind);

function lower(input: WorkInput, kind: SourceKind, certainty: number): void {
  input.read.kind = kind;
  input.read.kindConfidence = Math.min(input.read.kindConfidence, certainty);
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
  if (!has(latinDrums) || has(onlyInKits)) return;
  for (const input of work.inputs)
    if (
      /^timbal(?:es)?\b/i.test(input.read.name) &&
      ['tom', 'rack tom', 'floor tom'].includes(input.read.kind)
    )
      lower(input, 'timbales', 0.85);
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
  if (!basses.some(({ read }) => /pick-?\s?up|micro|captador/i.test(read.name))) return;
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

/** A voice that does not say which: the lead where there is none yet, else a backing vocal. */
function settleVocals(work: Work): void {
  // A microphone for the hand that nobody is said to sing into may be anybody's.
  for (const input of ofKind(work, 'vocal')) if (isForAnyone(input)) lower(input, 'vocal', 0.75);
  const open = openVoices(work);
  if (open.length === 0) return;
  const leadsFor = (input: WorkInput) =>
    input.read.kind === 'lead vocal' &&
    (input.name.stem !== 'soloist' || input.read.kindConfidence >= sureEnough);
  const hasLead = work.inputs.some(leadsFor);
  const byRole = open.filter((input) => roleOf(work, input) !== null);
  for (const input of byRole) lower(input, roleOf(work, input) ?? 'vocal', 0.85);
  const left = open.filter((input) => input.read.kind === 'vocal');
  const leads = work.inputs.filter(leadsFor);
  if (hasLead || leads.length > 0) {
    for (const input of left) lower(input, 'backing vocal', 0.8);
    return;
  }
  if (left.length === 1) {
    const only = left[0];
    if (only) lower(only, 'lead vocal', byRole.length > 0 ? 0.8 : 0.9);
    return;
  }
  chooseLead(work, left);
}

/** What the line-up says of the singer: a lead, or one of the backing voices; null where it says nothing. */
function roleOf(work: Work, input: WorkInput): SourceKind | null {
  const performer = work.performers.find((it) => it.name === input.read.performer);
  if (!performer) return null;
  if (
    /\b(?:lead|main|haupt|principal|leader|hoofd)/i.test(performer.role) &&
    !/lead[\s-]*(?:guit|git|gtr)/i.test(performer.role)
  )
    return 'lead vocal';
  if (/\b(?:back|bv|bgv|bg|chor|choeur|ch[oœ]|coro|harmon|koor|achtergrond)/i.test(performer.role))
    return 'backing vocal';
  const others = work.performers.filter(
    (it) => it !== performer && /\b(?:lead|main|haupt)\w*\s*(?:vo|gesang|ges\b)/i.test(it.role),
  );
  if (
    /\b(?:vo[xc]|vocals?|gesang|chant|voix|voz|voce|zang|sing\w*)\b/i.test(performer.role) &&
    others.length === 0
  )
    return null;
  return null;
}

const isWorn = (input: WorkInput) =>
  /head ?-?set|lava?l|kopfb[uü]gel|serre-t[eê]te|diadema|archetto/i.test(
    `${input.read.name} ${input.read.pickUpModel}`,
  );

/** A part in a play that is named with a microphone to wear and no word of singing: no backing vocal. */
const isPart = (input: WorkInput) =>
  isWorn(input) &&
  input.name.besides.length === 0 &&
  !/vo[xc]|ges(?:ang)?\b|chant|vo[zc]e?\b|voix|zang|sing|stem|stimm/i.test(input.read.name);

/** The voices that may be the lead: no cast, none that is said to stand behind, no microphone for anybody. */
function openVoices(work: Work): WorkInput[] {
  const cast = ofKind(work, 'vocal').filter(isPart);
  const parts = cast.length >= leastCast ? cast : [];
  for (const input of parts) lower(input, 'vocal', 0.75);
  for (const input of ofKind(work, 'vocal')) if (isBehind(input)) lower(input, 'backing vocal', 0.8);
  return ofKind(work, 'vocal').filter((input) => !isForAnyone(input) && !parts.includes(input));
}

/** What is said of a voice that is not the lead. */
const isBehind = ({ read, found }: WorkInput) =>
  /\b(?:growls?|shouts|screams|(?:2nd|second|zweite|2\.|deuxième|segunda|seconda|tweede) (?:voice|vocal|stimme|voix|voz|voce|stem)|vocoder|trio|harmon\p{L}*)(?!\p{L})/iu.test(
    `${read.name} ${found.details.notes.join(' ')}`,
  );

const isForAnyone = (input: WorkInput) =>
  input.read.performer === null &&
  /\bhand|bast[aã]o|micro (?:à )?main|de mano|a mano/i.test(input.read.name) &&
  !/vo[xc]|ges(?:ang)?\b|chant|vo[zc]e?\b|voix|zang|sing|stem|stimm/i.test(input.read.name);

/** A cast or a choir of so many has no one lead. */
const mostSingers = 6;
/** So many who all wear their microphones play parts. */
const leastCast = 2;

function chooseLead(work: Work, vocals: readonly WorkInput[]): void {
  const isCast = vocals.every((input) => input.name.stem === null || isWorn(input));
  if (isCast && vocals.length >= (vocals.every(isWorn) ? leastCast : mostSingers)) return;
  const centre = vocals.find((input) => input.name.sides.has('centre') && input.name.besides.length === 0);
  const numbered = vocals.find((input) => input.name.ordinal === 1);
  const free = vocals.find(
    (input) =>
      input.name.besides.every((stem) => stem === 'other' || groupOfStem(stem) === 'vocals') &&
      !input.name.stageSide &&
      input.name.sides.size === 0,
  );
  const guess = centre ?? numbered ?? free ?? vocals[0];
  if (!guess) return;
  const answer = work.asker.ask({
    matter: 'lead vocal',
    at: guess.read.lines[0] ?? null,
    ask: 'Which voice is the lead?',
    options: [
      { value: guess.read.key, label: `${guess.read.channel} ${shorten(guess.read.name)}` },
      ...vocals
        .filter((input) => input !== guess)
        .map((input) => ({
          value: input.read.key,
          label: `${input.read.channel} ${shorten(input.read.name)}`,
        })),
      { value: 'all', label: 'All of them are leads' },
    ] as [{ value: string; label: string }, { value: string; label: string }],
    guessConfidence: centre ? 0.8 : 0.6,
    weight: weights.leadVocal,
  });
  for (const input of vocals) {
    const lead = answer === 'all' || (answer ?? guess.read.key) === input.read.key;
    lower(input, lead ? 'lead vocal' : 'backing vocal', answer ? 1 : 0.72);
  }
}
