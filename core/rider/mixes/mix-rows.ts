import { isAllIn } from '../inputs/details.ts';
import { findHits } from '../language/lexicon.ts';
import { channelNumbers, numberedText } from '../language/numbers.ts';
import { readSourceName } from '../language/source-name.ts';
import { listed, tidy, tokenize } from '../language/text.ts';
import { mixWords, positionWords } from '../language/vocabulary.ts';
import { type FoundMix, foundMix, isFull, mostMixes, note } from '../page/draft.ts';
import { type Line, saysNothing } from '../page/lines.ts';
import { isAside, type Walk } from '../page/walk-state.ts';
import {
  isDevice,
  isWish,
  leadingLabel,
  type MixLabel,
  type MixPieces,
  noPieces,
  pieceFacts,
  readMixPieces,
} from './mix-pieces.ts';

export function pushMix(walk: Walk, line: Line, told: Partial<FoundMix> & { roleText?: string }): void {
  const { roleText, ...mix } = told;
  if (roleText && mix.listenerText)
    walk.found.performers.push({ at: line.at, name: mix.listenerText, role: roleText, place: '' });
  if (isFull(walk.found, line.at, walk.found.mixes, mostMixes)) return;
  walk.found.mixes.push(foundMix(line.at, { part: line.part, extra: [...(line.more ?? [])], ...mix }));
  note(walk.found, line.at, 'understood', '');
}

/** "Ada | in-ear stereo | click loud, bass" below a list of inputs: the mixes begin without a heading. */
export function isMixRow(walk: Walk, line: Line): boolean {
  const [first, ...others] = line.cells;
  if (!first || others.length < 2 || channelNumbers(first.text).length > 0 || first.text.length > 40)
    return false;
  const texts = others.map((cell) => cell.text);
  const wishes = texts.filter((text) => isWish(pieceFacts(text, walk), text));
  return wishes.length > 0 && texts.some((text) => !wishes.includes(text) && namesDevice(text, walk));
}

const namesDevice = (text: string, walk: Walk) =>
  isDevice(text, walk) &&
  findHits(mixWords, tokenize(text), walk.tongue.spoken).some((hit) => hit.senses[0]?.subject === 'device');

/** A row of several cells outside any table that tells a mix: "Mix 1 | Noor | IEM". */
export function takeLooseMixRow(walk: Walk, line: Line): boolean {
  const [first, ...others] = line.cells;
  if (!first || others.length === 0) return false;
  const label = leadingLabel(first.text, walk);
  const numbers = walk.section === 'mixes' && !label ? channelNumbers(first.text) : [];
  const numbered =
    walk.section === 'mixes' && !label && numbers.length === 0 ? numberedText(first.text) : null;
  if (!label && walk.section !== 'mixes') return false;
  if (
    label &&
    walk.section === 'inputs' &&
    readSourceName(others[0]?.text ?? '', walk.tongue).stem !== null &&
    others.length > 2 &&
    channelNumbers(first.text).length > 0
  )
    return false;
  // A sentence that was cut at its commas is put together again.
  if (label && /[:(–]|\s-\s/.test(label.rest))
    return takeMixText(walk, { ...line, text: line.cells.map((cell) => cell.text).join(', ') });
  const cells = others.map((cell) => cell.text);
  if (label?.rest) cells.unshift(label.rest);
  else if (numbered) cells.unshift(numbered.rest);
  else if (!label && numbers.length === 0) cells.unshift(first.text);
  const pieces = piecesOfCells(cells, walk);
  pushMix(walk, line, { ...pieces, ...labelOf(walk, label, numbered?.numbers ?? numbers, pieces) });
  return true;
}

export function labelOf(
  walk: Walk,
  label: MixLabel | null,
  numbers: readonly number[],
  pieces: MixPieces,
): Pick<FoundMix, 'number' | 'label' | 'deviceText'> {
  const all = label?.numbers ?? numbers;
  const device = tidy(pieces.deviceText.split(',')[0] ?? '');
  return {
    number: all[0] ?? null,
    label:
      label && pieces.listenerText === '' && isSideFill(device, walk)
        ? tidy(`${label.label} ${device}`)
        : (label?.label ?? (all.length > 0 ? `Mix ${all.join('/')}` : pieces.listenerText || device)),
    // What is said of the mix counts before what its label is called.
    deviceText: listed(
      pieces.deviceText,
      label && /iem|ear|wedge|floor|fill|spia|ohr|casque|cuffi|oort|fone/i.test(label.label)
        ? label.label.replace(/[\d/+#]+/g, ' ')
        : '',
      all.length === 2 ? 'stereo' : '',
    ),
  };
}

/** Nobody in particular hears them: the mix is called after them. */
const isSideFill = (device: string, walk: Walk) =>
  findHits(mixWords, tokenize(device), walk.tongue.spoken).some(
    (hit) => hit.senses[0]?.meaning === 'side fill',
  );

const plainPieces = ({ roleText: _, ...pieces }: MixPieces): MixPieces => pieces;

function piecesOfCells(cells: readonly string[], walk: Walk): MixPieces {
  const pieces = noPieces();
  for (const cell of cells) {
    const text = tidy(cell);
    if (text === '' || saysNothing(text)) continue;
    const facts = pieceFacts(text, walk);
    if (cells.length === 1 && /^[^:,;]{2,40}[:,]\s/.test(text)) return plainPieces(readMixPieces(text, walk));
    if (isWish(facts, text) && !facts.device) pieces.wishTexts.push(text);
    else if (facts.device) pieces.deviceText = listed(pieces.deviceText, text);
    else if (isAllIn(positionWords, text, walk.tongue)) pieces.place = text;
    else if (pieces.listenerText === '' && facts.words <= 6) {
      const inner = readMixPieces(text, walk);
      pieces.listenerText = inner.listenerText || text;
      pieces.deviceText = listed(pieces.deviceText, inner.deviceText);
      pieces.notes.push(...inner.notes);
      pieces.wishTexts.push(...inner.wishTexts);
    } else if (facts.targets > 0) pieces.wishTexts.push(text);
    else pieces.notes.push(text);
  }
  return pieces;
}

/** A run of text that tells a mix: "Mix 1 - Noor (IEM stereo, own): lots of snare", "Noor: ..." among mixes. */
export function takeMixText(walk: Walk, line: Line): boolean {
  const label = leadingLabel(line.text, walk);
  if (label && label.rest !== '' && !saysNothing(label.rest)) {
    if (isAside(walk.section) && !/[:–-]/.test(line.text)) return false;
    if (walk.runs.has(walk.at) && walk.section === 'inputs' && numberedText(line.text) !== null) return false;
    const pieces = readMixPieces(label.rest, walk);
    pushMix(walk, line, { ...pieces, ...labelOf(walk, label, [], pieces) });
    return true;
  }
  return false;
}
