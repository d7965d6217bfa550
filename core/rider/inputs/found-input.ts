import { findHits } from '../language/lexicon.ts';
import { readSourceName } from '../language/source-name.ts';
import { tokenize } from '../language/text.ts';
import { mixWords, nameWords } from '../language/vocabulary.ts';
import { type FoundInput, isFull, mostInputs, note, placeOf } from '../page/draft.ts';
import type { Line } from '../page/lines.ts';
import type { Walk } from '../page/walk-state.ts';
import type { Stem } from '../words/sources.ts';
import { noDetails } from './details.ts';

/** Stems that head a group of lines: "DRUMS", "Vocals". */
export const groupStems: ReadonlySet<Stem> = new Set<Stem>([
  'drums',
  'percussion',
  'bass',
  'guitar',
  'electric guitar',
  'acoustic guitar',
  'keys',
  'vocal',
  'backing vocal',
  'brass',
  'strings',
  'playback',
  'synth',
  'effect return',
  'ambience',
  'electronic drums',
  'choir',
  'talkback',
  'saxophone',
  'spare line',
  'lead vocal',
  'dj',
]);

const ditto = /^(?:idem|ditto|dito|dto\.?|id\.|same|["″„“”]|''|,,)\s*/i;

/** "Keys L" and below it "R", "idem R" or a mark of repetition: the other side of the line above. */
function nameInFull(walk: Walk, name: string): string {
  const above = walk.found.inputs.at(-1);
  if (!above || above.list !== walk.list || walk.headingStem !== null) return name;
  const rest = name.replace(ditto, '');
  const side = readSourceName(rest, walk.tongue);
  const isSide =
    side.stem === null && side.unknown.length === 0 && side.sides.has('right') && side.base === '';
  const before = readSourceName(above.name, walk.tongue);
  if (!isSide || !before.sides.has('left') || before.sides.has('right')) return name;
  const hits = findHits(nameWords, tokenize(above.name), walk.tongue.spoken, walk.tongue.names);
  const left = hits.find((hit) => hit.senses.some((sense) => sense.meaning === 'left'));
  const tokens = tokenize(above.name);
  const [start, end] = [tokens[left?.from ?? -1]?.start, tokens[(left?.to ?? 0) - 1]?.end];
  return start === undefined || end === undefined
    ? name
    : `${above.name.slice(0, start)}${rest.replace(/[()]/g, '')}${above.name.slice(end)}`;
}

/** Adds a line of an input list to what was found. */
export function pushInput(walk: Walk, line: Line, told: Partial<FoundInput> & { name: string }): void {
  if (isFull(walk.found, line.at, walk.found.inputs, mostInputs)) return;
  const input = { ...told, name: nameInFull(walk, told.name) };
  walk.found.inputs.push({
    at: line.at,
    part: line.part,
    list: walk.list,
    numbers: [],
    detail: '',
    group: '',
    headingStem: walk.headingStem,
    performerText: '',
    details: noDetails(),
    matrix: [],
    doubt: '',
    ...input,
  });
  note(walk.found, line.at, 'understood', '');
}

/** More than any row holds in lines of text: parts beyond are of lines that hold several inputs. */
const mostStacked = 10_000;

/** The part of the `index`th input of a line that holds several, so that no two inputs of a row share a key. */
export function partInLine(walk: Walk, line: Line, index: number): number {
  const taken = walk.found.inputs.filter(({ at }) => placeOf(at) === placeOf(line.at)).length;
  return taken === 0 && index === 0 ? line.part : (line.part + 1) * mostStacked + taken;
}

/** Takes a line as the heading of the ones below. */
export function openGroup(walk: Walk, line: Line, text: string, stem: Stem): boolean {
  walk.headingStem = stem;
  walk.heading = text;
  note(walk.found, line.at, 'set aside', 'The heading of a group of lines.');
  return true;
}

/** "One wedge for the guest singer" is no input. */
export function namesDevice(text: string, walk: Walk): boolean {
  return findHits(mixWords, tokenize(text), walk.tongue.spoken, walk.tongue.names).some(
    (hit) => hit.senses[0]?.subject === 'device',
  );
}
