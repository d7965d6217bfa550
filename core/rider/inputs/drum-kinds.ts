import { factsOfKind, type SourceKind } from '../../show/source-kinds.ts';
import { fold } from '../language/text.ts';
import type { Work, WorkInput } from '../page/work.ts';
import { lower, ofKind } from './settle-kind.ts';

/** Pads beside a DJ, where nobody plays a kit, set off samples (common practice). */
export function settlePads(work: Work): void {
  const isKit = work.inputs.some(({ read }) => ['kick', 'kick in', 'snare', 'snare top'].includes(read.kind));
  if (isKit || ofKind(work, 'dj').length === 0) return;
  for (const input of ofKind(work, 'electronic drums'))
    if (/^pads?\b/i.test(input.read.name)) lower(input, 'sampler', 0.75);
}

/** A kick beside a kick in is the one outside; a snare beside a snare bottom is the one on top (common practice). */
export function settleHalves(work: Work): void {
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
export function settleSurdos(work: Work): void {
  const inKit = work.inputs.some(({ read }) =>
    ['kick', 'kick in', 'rack tom', 'tom', 'hi-hat'].includes(read.kind),
  );
  if (inKit && work.tongue.spoken.has('pt')) return;
  for (const input of ofKind(work, 'floor tom'))
    if (/surd[oã]/i.test(input.read.name)) lower(input, 'percussion', 0.9);
}

const smallThings: ReadonlySet<string> = new Set(['shaker', 'bells', 'tambourine', 'percussion', 'cymbals']);

/** "Güiro and maracas" share a microphone: a table of small things, not one of them (common practice). */
export function settleSmallPercussion(work: Work): void {
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
export function settleTimbales(work: Work): void {
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
export function settleTomRows(work: Work): void {
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

export function settleTomSizes(work: Work): void {
  for (const tom of ofKind(work, 'tom')) {
    const inches = tom.name.ordinal ?? 0;
    if (inches >= smallestTomInch && inches <= largestTomInch)
      lower(tom, inches >= floorTomInch ? 'floor tom' : 'rack tom', 0.85);
  }
}

/** Numbered toms: the third and later ones stand on the floor, unless others are called floor toms. */
export function settleToms(work: Work): void {
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
