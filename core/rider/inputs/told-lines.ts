import { findHits } from '../language/lexicon.ts';
import { readSourceName } from '../language/source-name.ts';
import { tokenize } from '../language/text.ts';
import { ownershipWords, verbWords } from '../language/vocabulary.ts';
import { pieceFacts, splitAtVerb } from '../mixes/mix-pieces.ts';
import { type Found, placeOf } from '../page/draft.ts';
import type { Line } from '../page/lines.ts';
import type { Walk } from '../page/walk-state.ts';
import { readDetails } from './details.ts';
import { namesDevice, partInLine, pushInput } from './found-input.ts';
import { sourcesToldIn, type Told } from './told-inputs.ts';

/** "Cello (DI), piano in stereo and second voice": a line of a list that holds several sources, or one told in a
 * whole sentence. */
export function takeSeveral(walk: Walk, line: Line, text: string, isSentence: boolean): boolean {
  if (namesDevice(text, walk)) return false;
  const told = sourcesToldIn(text, [], walk);
  // "Ada: lots of piano, a little bass" is a wish.
  const facts = pieceFacts(text, walk);
  if ((facts.self || facts.amounts > 1) && !told.some((it) => it.isPickedUp)) return false;
  // "Keys (Zia): two DIs" is two lines; "Keys (2 DI)" is read as any line of a list.
  const isTwo = (told[0]?.count ?? 1) > 1 && /:\s/.test(text);
  const isOne = isSentence && told.length === 1 && told[0]?.isPickedUp === true;
  if (told.length < 2 && !isTwo && !isOne) return false;
  pushTold(walk, line, told);
  return true;
}

/** A sentence that tells of sources, kept until it is known whether the rider has a list of its own. */
export function keepTold(walk: Walk, line: Line, text: string): void {
  walk.found.told.push({ line, text });
}

/** Fewer lines than these are no list of inputs: what sentences tell are the lines then. */
const leastList = 3;

/** Makes lines of what sentences tell, in a rider without a list of inputs. */
export function settleTold(walk: Walk): void {
  const { found } = walk;
  // Each sheet is settled once: what it told is not told again by the next one.
  const lines = found.told.splice(0);
  if (lines.length === 0 || found.inputs.length >= leastList) return;
  if (found.inputs.some((input) => input.numbers.length > 0)) return;
  const told: { line: Line; sources: Told[] }[] = [];
  for (const { line, text } of lines) {
    const before = told.flatMap((it) => it.sources);
    const waiting = before.filter((it) => !it.isPickedUp).length;
    const sources = sourcesToldIn(text, before, walk);
    const picksUp = waiting > before.filter((it) => !it.isPickedUp).length;
    if (isLikely(text, sources, walk)) told.push({ line, sources });
    if (picksUp || (sources.length > 0 && isLikely(text, sources, walk))) settle(found, line);
  }
  for (const { line, sources } of told) pushTold(walk, line, sources);
  found.inputs.sort((a, b) => a.at.sheet - b.at.sheet || a.at.row - b.at.row || a.part - b.part);
}

/** A sentence with a microphone, with several sources, or that says who plays what; none about what is brought. */
function isLikely(text: string, sources: readonly Told[], walk: Walk): boolean {
  const { tongue } = walk;
  if (sources.length === 0) return false;
  const pickedUp = sources.filter((it) => it.isPickedUp).length;
  if (pickedUp > 0) return tellsPickUps(text, pickedUp, walk);
  // "Dario: lots of piano, Livia's voice" is a wish that nobody understood.
  if (pieceFacts(text, walk).amounts > 0) return false;
  const tokens = tokenize(text);
  if (findHits(ownershipWords, tokens, tongue.spoken, tongue.names).length > 0) return false;
  return (
    sources.length > 1 ||
    findHits(verbWords, tokens, tongue.spoken, tongue.names).some(
      (hit) => hit.certainty === 1 && hit.senses.some((sense) => sense.meaning === 'plays'),
    )
  );
}

/** A text that gives so many microphones or DIs: "a little amp" and "no mic in front" in it are no wishes. */
export function tellsPickUps(text: string, pickedUp: number, walk: Walk): boolean {
  const { amounts, self } = pieceFacts(text, walk);
  return pickedUp > 0 && (amounts <= pickedUp || (!self && splitAtVerb(text, walk) === null));
}

/** The line is no puzzle any more. */
function settle(found: Found, line: Line): void {
  const isHere = (at: Line['at']) => placeOf(at) === placeOf(line.at);
  found.puzzles = found.puzzles.filter((puzzle) => !isHere(puzzle.at));
  found.notes.delete(placeOf(line.at));
}

function pushTold(walk: Walk, line: Line, told: readonly Told[]): void {
  told.forEach((source, index) => {
    const isStereo = source.details.some((detail) => readSourceName(detail, walk.tongue).sides.has('stereo'));
    const { sides } = readSourceName(source.name, walk.tongue);
    const count = isStereo || sides.has('stereo') || sides.has('both') ? 1 : source.count;
    pushInput(
      walk,
      { ...line, part: partInLine(walk, line, index) },
      {
        name: source.name,
        detail: isStereo && sides.size === 0 ? 'stereo' : count > 1 ? `${count}x` : '',
        headingStem: source.stem,
        performerText: source.performer,
        details: readDetails(source.details, walk.tongue),
        doubt: toldDoubt,
      },
    );
  });
}

export const toldDoubt = 'Told in a sentence, not in a list.';
