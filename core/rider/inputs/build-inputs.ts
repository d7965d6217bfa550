import { type SourceKind, sourceKinds } from '../../show/source-kinds.ts';
import { groupOfStem, kindOf, readSourceName, type SourceName } from '../language/source-name.ts';
import { fold } from '../language/text.ts';
import { type FoundInput, note, placeOf } from '../page/draft.ts';
import { shorten, type Work, type WorkInput } from '../page/work.ts';
import { weights } from '../questions.ts';
import type { Part } from '../words/parts.ts';
import { askDoubtful } from './doubtful-lines.ts';
import { hasKit, nameOf } from './name-in-row.ts';
import { toldDoubt } from './told-lines.ts';

/** Parts that are two microphones of one source where a name holds both. */
const partPairs: [Part, Part][] = [
  ['inside', 'outside'],
  ['top', 'bottom'],
  ['high', 'low'],
];

const notASource = 'not a source';

/** Turns what was found into inputs: one for every line a row asks for. */
export function buildInputs(work: Work): void {
  confirmTold(work);
  askDoubtful(work);
  const written = writtenNumbers(work.found.inputs);
  let list = -1;
  let place = 0;
  for (const found of work.found.inputs) {
    if (found.list !== list) {
      list = found.list;
      place = 0;
    }
    const listIsNumbered = (written.get(found.list)?.size ?? 0) > 0;
    const name = nameOf(found, work);
    const lines = splitLines(found, name, written.get(found.list) ?? new Set(), work);
    if (lines.length === 0) continue;
    const numbers = numbersOf(
      found,
      lines.length,
      place,
      listIsNumbered,
      written.get(found.list) ?? new Set(),
    );
    lines.forEach((line, index) => {
      const channel = numbers[index] ?? numbers[0] ?? place + 1;
      pushLine(work, found, name, line, index, lines.length, channel);
    });
    place = Math.max(place + (found.numbers.length > 0 ? 0 : lines.length), ...numbers);
  }
}

/** What sentences tell is a reading of words, not of a list: each sentence is asked about. */
function confirmTold(work: Work): void {
  const { found } = work;
  const places = new Map<string, FoundInput[]>();
  for (const input of found.inputs) {
    if (input.doubt !== toldDoubt) continue;
    const key = placeOf(input.at);
    places.set(key, [...(places.get(key) ?? []), input]);
  }
  for (const inputs of places.values()) {
    const [first] = inputs;
    if (!first) continue;
    const answer = work.asker.ask({
      matter: 'told',
      at: first.at,
      ask: `Read out of a sentence: ${inputs.map(({ name }) => `"${shorten(name)}"`).join(', ')}. Is each a line?`,
      options: [
        { value: 'yes', label: inputs.length === 1 ? 'Yes, a line' : 'Yes, each is a line' },
        { value: 'no', label: 'No: keep it as a remark' },
      ],
      guessConfidence: 0.7,
      weight: weights.twoLines,
    });
    if (answer !== 'no') continue;
    found.inputs = found.inputs.filter((input) => !inputs.includes(input));
    found.notes.delete(placeOf(first.at));
    note(found, first.at, 'set aside', 'Kept as a remark.');
  }
}

function writtenNumbers(inputs: readonly FoundInput[]): Map<number, Set<number>> {
  const written = new Map<number, Set<number>>();
  for (const { list, numbers } of inputs) {
    const set = written.get(list) ?? new Set<number>();
    for (const number of numbers) set.add(number);
    written.set(list, set);
  }
  return written;
}

type PartOfRow = {
  part: Part | null;
  side: 'left' | 'right' | null;
  pickUp: 'mic' | 'di' | null;
  stereo: boolean;
};
const whole: PartOfRow = { part: null, side: null, pickUp: null, stereo: false };

/** The lines a row asks for. Two numbers, "L/R", "2x", "in/out" or "mic + DI" make two of one row. */
function splitLines(
  found: FoundInput,
  name: SourceName,
  taken: ReadonlySet<number>,
  work: Work,
): PartOfRow[] {
  const written = found.numbers.length;
  const parts = partPairs.find(
    ([a, b]) =>
      name.parts.has(a) && name.parts.has(b) && bothNamed(found) && (a !== 'high' || hasRange(name)),
  );
  const isOneSide = name.sides.has('left') !== name.sides.has('right');
  const isOne = /\b(?:one|single|1) (?:line|channel)\b/i.test(
    `${found.name} ${found.details.notes.join(' ')}`,
  );
  const stereo =
    !isOne &&
    (name.sides.has('both') ||
      (name.sides.has('stereo') && !isOneSide) ||
      (name.sides.has('left') && name.sides.has('right')));
  const pickUps =
    /\b(?:mi[ck]\w*|amp)\s*(?:[+&/,]|and|und|et|y|e|en)\s*d\.?i\b|\bd\.?i\.?\s*(?:[+&/,]|and|und|et|y|e|en)\s*(?:mi[ck]|amp)/i.test(
      fold(found.name),
    );
  const shape: PartOfRow[] = parts
    ? orderedParts(parts, found.name).map((part) => ({ ...whole, part }))
    : pickUps && !stereo
      ? orderedPickUps(found.name).map((pickUp) => ({ ...whole, pickUp }))
      : stereo
        ? [
            { ...whole, side: 'left', stereo: true },
            { ...whole, side: 'right', stereo: true },
          ]
        : [];
  if (written > 1) {
    if (written === 2 && shape.length === 2) return shape;
    return Array.from({ length: written }, () => whole);
  }
  // "8 Piano high | stereo", "9 Piano low": the remark is on both, and the next number is another line's.
  const [number = 0] = found.numbers;
  const isRemark = stereo && readSourceName(found.name, work.tongue).sides.size === 0;
  if (written === 1 && isRemark && taken.has(number + 1)) return [whole];
  if (shape.length === 2)
    return shape.length === 2 && written === 1 ? askForTwo(found, shape, stereo, work) : shape;
  // "Horn 1+2" with one number share a microphone.
  if (written === 1 && name.ordinal !== null && name.count === 2) return [whole];
  if (name.count > 1) return Array.from({ length: name.count }, () => whole);
  return [whole];
}

/** "Whistles (low + high)" share a microphone; a high and a low conga have one each. */
const hasRange = ({ stem }: SourceName) =>
  stem !== null && ['drums', 'percussion', 'keys', 'playback'].includes(groupOfStem(stem));

const bothNamed = (found: FoundInput) => /[/+&,]|\b(?:and|und|et|y|e|en)\b|\s/i.test(found.name);

function orderedParts([a, b]: [Part, Part], text: string): Part[] {
  const folded = fold(text);
  const second = {
    outside: /\b(?:out|outside|aussen|ext|fuera|fuori|buiten|fora)/,
    bottom: /\b(?:bot|btm|bottom|under|unten|dessous|abajo|sotto|onder|esteira)/,
    low: /\b(?:lo|low|tief|grave|basso|laag)/,
  }[b as 'outside' | 'bottom' | 'low'];
  const first = {
    inside: /\b(?:in|inside|innen|int|dentro|binnen)/,
    top: /\b(?:top|up|oben|dessus|arriba|sopra|boven|cima)/,
    high: /\b(?:hi|high|hoch|aigu|agudo|acuto|hoog)/,
  }[a as 'inside' | 'top' | 'high'];
  return folded.search(second) < folded.search(first) ? [b, a] : [a, b];
}

function orderedPickUps(text: string): ('mic' | 'di')[] {
  const folded = fold(text);
  return folded.search(/\bd\.?i\b/) < folded.search(/\bmi[ck]/) ? ['di', 'mic'] : ['mic', 'di'];
}

/** One number, two lines: the guess is two, and the engineer is asked. */
function askForTwo(found: FoundInput, shape: PartOfRow[], stereo: boolean, work: Work): PartOfRow[] {
  const answer = work.asker.ask({
    matter: 'lines',
    at: found.at,
    part: partKey(found),
    ask: `"${shorten(found.name)}" has one number. Is it two lines or one?`,
    options: [
      { value: 'two', label: stereo ? 'Two lines, a stereo pair' : 'Two lines' },
      { value: 'one', label: 'One line' },
    ],
    guessConfidence: 0.75,
    weight: weights.twoLines,
  });
  return answer === 'one' ? [whole] : shape;
}

const partKey = (found: FoundInput) => (found.part > 0 ? String(found.part) : '');

/** The numbers of a row's lines: as written; a second line takes the next number where nothing else has it. */
function numbersOf(
  found: FoundInput,
  count: number,
  place: number,
  listIsNumbered: boolean,
  written: ReadonlySet<number>,
): number[] {
  const { numbers } = found;
  if (numbers.length >= count) return numbers;
  const first = numbers[0] ?? place + 1;
  return Array.from({ length: count }, (_, step) => {
    const number = first + step;
    return step === 0 || !listIsNumbered || !written.has(number) ? number : first;
  });
}

function pushLine(
  work: Work,
  found: FoundInput,
  name: SourceName,
  line: PartOfRow,
  index: number,
  of: number,
  channel: number,
): void {
  const { details } = found;
  const pickUp = line.pickUp ?? details.pickUp ?? pickUpInName(name);
  const ownParts = line.part
    ? new Set([...[...name.parts].filter((part) => !partPairs.flat().includes(part)), line.part])
    : name.parts;
  const own: SourceName = {
    ...name,
    parts: line.part ? ownParts : name.parts,
    pickUps: line.pickUp ? new Set([line.pickUp]) : name.pickUps,
  };
  const { kind, certainty } = settleKind(work, found, own, pickUp);
  if (kind === null) {
    work.found.notes.delete(placeOf(found.at));
    note(work.found, found.at, 'set aside', 'The engineer said that it is no source.');
    return;
  }
  const side = line.side ?? (name.sides.has('left') ? 'left' : name.sides.has('right') ? 'right' : null);
  const key = `${found.at.sheet}:${found.at.row}${found.part > 0 ? `.${found.part}` : ''}${index > 0 ? `+${index}` : ''}`;
  work.inputs.push({
    found,
    name: own,
    index,
    of,
    numbered: found.numbers.length > 0,
    read: {
      key,
      lines: [found.at],
      channel,
      name: found.name,
      kind,
      kindConfidence: found.doubt && certainty > 0.7 ? 0.7 : certainty,
      pairKey: null,
      side,
      pickUp,
      pickUpModel: details.pickUpModel,
      alternatives: details.alternatives,
      phantom: details.phantom,
      stand: details.stand,
      position: details.position,
      performer: null,
      broughtBy: details.broughtBy,
      optional: details.optional || name.parts.has('optional'),
      audience: details.audience,
      notes: details.notes.join('; '),
    },
  });
}

function pickUpInName(name: SourceName): WorkInput['read']['pickUp'] {
  for (const pickUp of ['wireless', 'di', 'mic'] as const) if (name.pickUps.has(pickUp)) return pickUp;
  if (name.stem === 'bass di' || name.tokens.some((token) => token.text === 'di')) return 'di';
  if (
    name.tokens.some((token) =>
      /^(?:mic|mics|micro|mikro|microfono|microfoon|mikrofon|microfone)$/.test(token.text),
    )
  )
    return 'mic';
  return null;
}

/** Microphones that are made for a voice. */
const worn = /\b(?:head ?-?sets?|lava?l?(?:ier)?s?|kopfb[uü]gel|serre-t[eê]te|diadema|archetto)\b/i;
const held =
  /\b(?:hand ?-?held|hh|handsender|handmi[ck]\p{L}*|hf main|micro (?:à )?main|(?:in[aá]l[aá]mbrico )?de mano|a mano|gelato|palmare|handzender|bast[aã]o|de m[aã]o)\b/iu;

/** The kind by the name, or by the engineer's answer; null where the engineer said it is no source. */
function settleKind(
  work: Work,
  found: FoundInput,
  name: SourceName,
  pickUp: WorkInput['read']['pickUp'],
): { kind: SourceKind | null; certainty: number } {
  const isWorn =
    worn.test(found.details.notes.join(' ')) ||
    [worn, held].some((words) => words.test(`${found.name} ${found.details.pickUpModel}`));
  const byName =
    name.stem === null && isWorn ? { kind: 'vocal' as const, certainty: 0.7 } : kindOf(name, pickUp);
  // A guitar on a DI in a band without a kit has no amplifier, as a rule.
  const isQuiet = name.stem === 'guitar' && byName.certainty < 0.7 && pickUp === 'di' && !hasKit(work);
  const guess = isQuiet ? { ...byName, kind: 'acoustic guitar' as const } : byName;
  if (guess.certainty >= 0.7 || (name.stem === null && isPerformerName(name, work))) return guess;
  const suggestions: SourceKind[] =
    pickUp === 'di'
      ? ['keys', 'acoustic guitar', 'playback']
      : ['lead vocal', 'electric guitar', 'percussion'];
  const answer = work.asker.ask({
    matter: 'kind',
    at: found.at,
    words: found.name,
    part: partKey(found),
    ask:
      name.stem === null
        ? `What is "${shorten(found.name)}"?`
        : `Is "${shorten(found.name)}" rightly taken for ${guess.kind}?`,
    options: [
      { value: guess.kind, label: guess.kind === 'other' ? 'A source of another kind' : guess.kind },
      ...[...suggestions, ...(name.stem === 'guitar' ? (['acoustic guitar'] as const) : [])]
        .filter((kind) => kind !== guess.kind)
        .map((kind) => ({ value: kind, label: kind })),
      { value: notASource, label: 'No source: set the line aside' },
    ] as [{ value: string; label: string }, { value: string; label: string }],
    freeText: true,
    guessConfidence: guess.certainty,
    weight: name.stem === null ? weights.unknownSource : weights.kindGuess,
  });
  if (answer === null) return guess;
  if (answer === notASource) return { kind: null, certainty: 1 };
  const named = sourceKinds.find((kind) => kind === answer);
  if (named) return { kind: named, certainty: 1 };
  const told = readSourceName(answer, work.tongue);
  return { kind: told.stem === null ? 'other' : kindOf(told, pickUp).kind, certainty: 1 };
}

/** Nothing but a known performer's name: settled with the performers. */
function isPerformerName(name: SourceName, work: Work): boolean {
  const words = name.tokens.filter((token) => token.kind === 'word');
  return words.length > 0 && words.some((token) => work.tongue.names.has(token.text));
}
