import type { SourceKind } from '../../show/source-kinds.ts';
import { factsOfKind } from '../../show/source-kinds.ts';
import { readSourceName } from '../language/source-name.ts';
import { fold } from '../language/text.ts';
import { shorten, type Work, type WorkInput } from '../page/work.ts';
import { weights } from '../questions.ts';

/** Kinds whose left and right are two of a thing and never a stereo pair. */
const neverPairs: ReadonlySet<SourceKind> = new Set<SourceKind>([
  'kick',
  'kick in',
  'kick out',
  'snare',
  'snare top',
  'snare bottom',
  'hi-hat',
  'rack tom',
  'floor tom',
  'tom',
  'lead vocal',
  'backing vocal',
  'vocal',
  'spare vocal',
  'guest vocal',
  'talkback',
  'presenter',
  'click',
  'timecode',
  'cue',
  'bass di',
  'bass amp',
  'bass',
  'double bass',
  'spare line',
]);
/** Kinds that come in stereo as a rule: two numbers or the numbers 1 and 2 are left and right. */
const oftenPairs: ReadonlySet<SourceKind> = new Set<SourceKind>([
  'overhead',
  'ambience',
  'playback',
  'keys',
  'synth',
  'piano',
  'organ',
  'sampler',
  'dj',
  'electronic drums',
  'effect return',
  'clavinet',
  'accordion',
  'cymbals',
  'drums',
]);

/** Finds the stereo pairs: two lines of one row, two rows that differ by their side, and what only looks like it. */
export function findPairs(work: Work): void {
  pairWithinRows(work);
  pairAcrossRows(work);
  pairByRange(work);
  pairByNumbers(work);
}

function join(left: WorkInput, right: WorkInput): void {
  left.read.pairKey = right.read.key;
  right.read.pairKey = left.read.key;
  left.read.side = 'left';
  right.read.side = 'right';
}

const hands =
  /\b(?:main (?:droite|gauche)|m(?:ain)?\. ?[dg]\.?|mano (?:derecha|izquierda|destra|sinistra|dx|sx)|mao (?:direita|esquerda)|(?:rechte|linke) hand|(?:rechter|linker)hand|rechterhand|linkerhand|(?:right|left)[ -]?hand|[lr]h|rh\/lh|lh\/rh)\b/;
const sideInWords =
  /\b(?:left|right|links|rechts|gauche|droite|izq\w*|dcha|der(?:echa)?|sinistra|destra|sx|dx|esq\w*|dir(?:eita)?)\b/;

const saysHands = ({ read, found }: WorkInput) =>
  hands.test(fold([read.name, found.detail, ...found.details.notes].join(' ')));

/** The two hands of one player are two sounds, no left and right: an accordion has a microphone for each. */
function isHand(input: WorkInput): boolean {
  const { read, found } = input;
  const said = fold(`${read.name} ${found.detail}`);
  return saysHands(input) || (read.kind === 'accordion' && sideInWords.test(said));
}

const free = (input: WorkInput) => input.read.pairKey === null;

function rowsOf(work: Work): WorkInput[][] {
  const rows = new Map<string, WorkInput[]>();
  for (const input of work.inputs) {
    const key = `${input.found.at.sheet}:${input.found.at.row}.${input.found.part}`;
    const row = rows.get(key);
    if (row) row.push(input);
    else rows.set(key, [input]);
  }
  return [...rows.values()];
}

/** Two numbers, one name. Parts ("in/out", "hi/lo"), and microphone with DI, are no pair. */
function pairWithinRows(work: Work): void {
  for (const row of rowsOf(work)) {
    const [left, right] = row;
    if (!left || !right || row.length !== 2) continue;
    if (
      left.read.kind !== right.read.kind ||
      left.name.parts !== right.name.parts ||
      left.read.pickUp !== right.read.pickUp
    )
      continue;
    const { sides, stageSide } = left.name;
    if (saysHands(left)) continue;
    const said = sides.has('both') || sides.has('stereo') || (sides.has('left') && sides.has('right'));
    if (said) {
      if (!neverPairs.has(left.read.kind) || sides.has('stereo')) join(left, right);
      continue;
    }
    if (sides.has('left') || sides.has('right') || neverPairs.has(left.read.kind) || stageSide) continue;
    if (left.name.parts.has('high') || left.name.parts.has('low')) continue;
    const usual = oftenPairs.has(left.read.kind);
    if (!usual && left.name.count > 1) continue;
    if (
      usual &&
      left.name.count > 1 &&
      left.name.ordinal === null &&
      left.read.kind !== 'overhead' &&
      left.found.numbers.length < 2 &&
      left.name.count > 2
    )
      continue;
    if (toldApart.test(fold(`${left.found.name} ${left.read.notes}`))) continue;
    if (usual || left.found.numbers.length === 2) guessPair(work, left, right, usual ? 0.9 : 0.65);
  }
}

/** "One in front, one behind": two places of one thing, no left and right. */
const toldApart =
  /\b(?:one (?:in|at|on|each|per)\b.*\b(?:other|one)\b|ein(?:e|er|es|s)\b.*\b(?:ein|ander|zweit)|l?'?une?\b.*\bl'autre|uno\b.*\b(?:otro|uno|altro)|una\b.*\b(?:otra|altra)|een\b.*\b(?:ander|een)|um[a]?\b.*\boutr[oa])/;

/** Joins two lines; below certainty the engineer is asked. */
function guessPair(work: Work, left: WorkInput, right: WorkInput, certainty: number): void {
  if (certainty >= 0.8) {
    join(left, right);
    return;
  }
  const answer = work.asker.ask({
    matter: 'pair',
    at: left.read.lines[0] ?? null,
    part: left.index > 0 ? String(left.index) : '',
    ask: `Are ${left.read.channel} and ${right.read.channel} ("${shorten(left.read.name)}") a stereo pair?`,
    options: [
      { value: 'pair', label: 'A stereo pair' },
      { value: 'two', label: 'Two separate lines' },
    ],
    guessConfidence: certainty,
    weight: weights.pairGuess,
  });
  if (answer !== 'two') join(left, right);
}

/** "Keys L" and "Keys R". Sides of the stage ("Gtr SR") pair only where the kind comes in stereo as a rule. */
function pairAcrossRows(work: Work): void {
  const lefts = work.inputs.filter((input) => free(input) && input.read.side === 'left' && input.of === 1);
  for (const left of lefts) {
    const right = work.inputs
      .filter(
        (input) =>
          free(input) && input.read.side === 'right' && input.of === 1 && isOtherSide(work, left, input),
      )
      .sort((a, b) => distance(work, left, a) - distance(work, left, b))[0];
    if (!right || isHand(left) || isHand(right)) continue;
    if (isChoirOverhead(left) && isChoirOverhead(right))
      for (const input of [left, right]) input.read.kind = 'choir';
    if (neverPairs.has(left.read.kind) && !(isSubmix(left) && isSubmix(right))) continue;
    const stage = left.name.stageSide || right.name.stageSide;
    if (stage && !oftenPairs.has(left.read.kind)) continue;
    if (
      left.read.performer !== null &&
      right.read.performer !== null &&
      left.read.performer !== right.read.performer
    )
      continue;
    if (isNamedApart(left, right)) continue;
    const apart = distance(work, left, right);
    const spelled =
      /\b(?:left|right|links|rechts|gauche|droite|izquierda|derecha|sinistra|destra|esquerda|direita)\b/i.test(
        left.read.name,
      ) && factsOfKind(left.read.kind).group === 'guitars';
    guessPair(work, left, right, spelled || apart > 6 ? 0.7 : 0.95);
  }
}

/** Instruments so wide that one microphone hears the low end and one the high end. */
const wide: ReadonlySet<SourceKind> = new Set<SourceKind>([
  'piano',
  'harpsichord',
  'marimba',
  'vibraphone',
  'xylophone',
  'harp',
]);
const range =
  /\b(?:low|lo|high|hi|bass|treble|tief|hoch|diskant|graves?|aigus?|agudos?|bassi|bass[oa]?|gravi|acuti|alti|basse|hohen|tiefen|laag|hoog)\b/g;

/** "Piano low" and "piano high" are the two sides of a wide instrument (common practice). */
function pairByRange(work: Work): void {
  work.inputs.forEach((low, at) => {
    const high = work.inputs[at + 1];
    if (!high || !free(low) || !free(high) || low.of !== 1 || high.of !== 1) return;
    if (low.read.kind !== high.read.kind || !wide.has(low.read.kind)) return;
    const bare = (input: WorkInput) => fold(input.read.name).replace(range, '').trim();
    const isTold = (input: WorkInput) => fold(input.read.name).search(range) >= 0;
    if (!isTold(low) || !isTold(high) || bare(low) !== bare(high)) return;
    const isTurned = low.name.parts.has('high');
    guessPair(work, isTurned ? high : low, isTurned ? low : high, 0.85);
  });
}

/** "Coro L" and "Coro R" on condensers hang over a choir. */
const isChoirOverhead = ({ read, name }: WorkInput) =>
  read.kind === 'backing vocal' &&
  !name.stageSide &&
  /^(?:chor|ch[oœ]+e?ur|coro|koor|choir)(?!\p{L})/iu.test(read.name) &&
  /kond|cond|stat|grenz|bound|superf|plaque|membr|vlak/i.test(`${read.pickUpModel} ${read.name}`);

/** "Toms L" and "Toms R", "BVs L (submix)": several microphones mixed to two lines are a pair whatever they hear. */
function isSubmix(input: WorkInput): boolean {
  if (input.name.stageSide) return false;
  const said = `${input.read.name} ${input.read.notes} ${input.found.detail}`;
  return submix.test(said) || /^toms\b/i.test(input.read.name);
}

const submix =
  /\b(?:sub ?-?mix\p{L}*|sub ?-?group\p{L}*|sub|stems?|premix\p{L}*|summe|summed|summiert|gemischt|mixed|pr[eé]mix\p{L}*|submezcla|sottogruppo|subgroep|submistura|stereo|st[eé]r[eé]o|est[eé]reo)\b/iu;

/** "Gtr L (Mox)" and "Gtr R (Fenna)": two players, no pair. */
function isNamedApart(left: WorkInput, right: WorkInput): boolean {
  const nameOf = (input: WorkInput) =>
    input.found.details.notes.find((text) => /^\p{Lu}\p{Ll}+$/u.test(text)) ?? '';
  return nameOf(left) !== '' && nameOf(right) !== '' && nameOf(left) !== nameOf(right);
}

/** The same words but for the side; a remark in brackets may stand at one of the two. */
function isSameBase(work: Work, left: WorkInput, right: WorkInput): boolean {
  if (left.name.base === right.name.base) return true;
  // "Keys 1 (L)" and "Keys 2 (R)" count the two sides.
  const bare = (input: WorkInput) =>
    input.name.base
      .replace(/\b\d+\b/g, '')
      .replace(/\s+/g, ' ')
      .trim();
  const [one, two] = [left.name.ordinal ?? 0, right.name.ordinal ?? 0];
  if (one % 2 === 1 && two === one + 1 && oftenPairs.has(left.read.kind) && bare(left) === bare(right))
    return true;
  const brackets = /\s*\([^)]*\)/g;
  const noted = [left, right].filter((input) => brackets.test(input.read.name));
  if (noted.length !== 1) return false;
  const base = (input: WorkInput) => readSourceName(input.read.name.replace(brackets, ''), work.tongue).base;
  return base(left) === base(right);
}

function isOtherSide(work: Work, left: WorkInput, right: WorkInput): boolean {
  return (
    left.read.kind === right.read.kind &&
    isSameBase(work, left, right) &&
    left.found.headingStem === right.found.headingStem
  );
}

const distance = (work: Work, a: WorkInput, b: WorkInput) =>
  Math.abs(work.inputs.indexOf(a) - work.inputs.indexOf(b));

/** "OH 1" and "OH 2", or the same stereo name twice in a row. */
function pairByNumbers(work: Work): void {
  work.inputs.forEach((left, at) => {
    const right = work.inputs[at + 1];
    if (!right || !free(left) || !free(right) || left.of !== 1 || right.of !== 1) return;
    if (left.read.kind !== right.read.kind || !oftenPairs.has(left.read.kind)) return;
    if (left.read.side !== null || right.read.side !== null) return;
    const bare = (input: WorkInput) => input.name.base.replace(/\b\d+\b/g, '').trim();
    if (bare(left) !== bare(right)) return;
    const counted =
      left.name.ordinal !== null &&
      right.name.ordinal === left.name.ordinal + 1 &&
      left.name.ordinal % 2 === 1;
    const same = left.name.base === right.name.base;
    const alone =
      work.inputs.filter((input) => input.read.kind === left.read.kind && bare(input) === bare(left))
        .length === 2;
    if (!alone || !(counted || same)) return;
    const sure = left.read.kind === 'overhead' || left.read.kind === 'ambience';
    if (counted && !sure && left.read.kind !== 'playback') return;
    guessPair(work, left, right, sure ? 0.85 : 0.65);
  });
}
