import type { SourceKind } from '../../show/source-kinds.ts';
import { fold } from '../language/text.ts';
import type { Work, WorkInput } from '../page/work.ts';
import { stemsOfPerformer } from '../performers/performers.ts';
import { phantomIn } from './details.ts';
import { lower, ofKind } from './settle-kind.ts';

const saysWhich = ({ name: { parts } }: WorkInput) =>
  parts.has('electric') || parts.has('amp') || parts.has('lead');

const isPlugged = ({ read, found }: WorkInput) =>
  (read.pickUp === 'di' || read.pickUp === 'line' || /\bl[ií]ne?a\b/i.test(read.name)) &&
  !/model+er|profiler|amp|pedal ?board|kemper/i.test(`${read.pickUpModel} ${found.details.notes.join(' ')}`);

export const blown: ReadonlySet<SourceKind> = new Set<SourceKind>([
  'saxophone',
  'trumpet',
  'trombone',
  'brass',
]);

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
export function settleSaxes(work: Work): void {
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
export function settleBasses(work: Work): void {
  if (work.inputs.filter(({ read }) => blown.has(read.kind) || read.kind === 'flugelhorn').length < 3) return;
  for (const input of work.inputs) {
    const { name, pickUp } = input.read;
    if (/^(?:bassen|bässe|basses|bassi|bajos|baixos)(?!\p{L})/iu.test(name) && pickUp !== 'di')
      lower(input, 'tuba', 0.8);
  }
}

export const windWords =
  /fiati|ottoni|bl[aä]ser|holz|blech|winds?\b|horns?\b|brass|sax|vientos?|metales|cuivres|vents|soufflants|blazers|koper|sopros|metais/i;

const electricPiano =
  /\b(?:e-?[ -]?piano|e-?klavier|(?:electric|stage|digital) piano|stagepiano|digitalpiano|piano (?:electrique|numerique|electrico|digital|elettrico|digitale|eletrico)|(?:elektrische|digitale) piano)\b/;

/** An electric piano is a keyboard (common practice). */
export function settlePianos(work: Work): void {
  const pianos = ofKind(work, 'piano');
  const electric = pianos.filter(({ read }) => electricPiano.test(fold(read.name)));
  for (const input of electric) lower(input, 'keys', 0.85);
}

/** "Viola" is a guitar in Portuguese, unless others with bows sit beside it (common practice). */
export function settleViolas(work: Work): void {
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
export function settleGuitars(work: Work): void {
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

/** "Contrabaixo" is either bass in Portuguese; only one with a bow's body has a pick-up or a condenser of its own. */
export function settleDoubleBass(work: Work): void {
  const basses = work.inputs.filter(({ read }) => /^contrabaixo/i.test(read.name));
  const isOrchestra = ofKind(work, 'violin').length + ofKind(work, 'cello').length > 1;
  if (!isOrchestra && !basses.some(({ read }) => /pick-?\s?up|micro|captador/i.test(read.name))) return;
  for (const input of basses)
    if (['bass', 'bass di', 'bass amp'].includes(input.read.kind)) lower(input, 'double bass', 0.8);
}

/** A bass beside a bass DI is its amplifier, and the other way round. */
export function settleBass(work: Work): void {
  const plain = ofKind(work, 'bass');
  const first = plain[0];
  if (plain.length !== 1 || !first) return;
  if (ofKind(work, 'bass di').length > 0) lower(first, 'bass amp', 0.8);
  else if (ofKind(work, 'bass amp').length > 0) lower(first, 'bass di', 0.8);
}
