import {
  audienceIn,
  broughtByIn,
  type Details,
  isAllIn,
  isOptional,
  noDetails,
  phantomIn,
  readDetails,
  readPhantomCell,
  readPickUpCell,
} from './details.ts';
import { type FoundInput, isFull, type MatrixCell, mostInputs, note } from './draft.ts';
import { type Block, cellsByRole } from './headers.ts';
import { findHits } from './lexicon.ts';
import { looksLikeName } from './line-up.ts';
import type { Line } from './lines.ts';
import { saysNothing } from './lines.ts';
import { pieceFacts, splitAtVerb } from './mix-pieces.ts';
import { channelNumbers, numberedText } from './numbers.ts';
import { groupOfStem, readSourceName, type SourceName } from './source-name.ts';
import { tidy, tokenize } from './text.ts';
import { mixWords, nameWords, pickUpWords, positionWords, standWords } from './vocabulary.ts';
import { isAside, type Walk } from './walk-state.ts';
import type { ColumnRole } from './words/headers.ts';
import type { Stem } from './words/sources.ts';

/** Stems that head a group of lines: "DRUMS", "Vocals". */
const groupStems: ReadonlySet<Stem> = new Set<Stem>([
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

function pushInput(walk: Walk, line: Line, input: Partial<FoundInput> & { name: string }): void {
  if (isFull(walk.found, line.at, walk.found.inputs, mostInputs)) return;
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

/** A row of a table of inputs. False where the row is none of its rows. */
export function takeInputRow(walk: Walk, line: Line, block: Block): boolean {
  const { byRole, matrix } = cellsByRole(line, block);
  if (byRole.size === 0 && matrix.length === 0) return false;
  const get = (role: ColumnRole) => byRole.get(role) ?? '';
  const numbers = channelNumbers(get('channel'));
  const hasChannels = [...block.roles.values()].includes('channel');
  const beside = tidy(byRole.get('detail') ?? '');
  const written = tidy(get('source'));
  if (written !== '') walk.lastSource = written;
  const more = written === '' && numbers.length > 0 && beside !== '' ? walk.lastSource : written;
  const name = more !== '' && isMoreOfName(beside, walk) ? `${more} ${beside}` : more;
  const filled = byRole.size - (byRole.has('channel') ? 1 : 0) + matrix.length;

  if (name === '' || saysNothing(name))
    return takeNamelessRow(walk, line, block, numbers, filled, byRole, matrix);
  if (line.cells.length === 1 && numbers.length === 0) return false;
  if (numbers.length === 0 && filled === 1) {
    const stem = readSourceName(name, walk.tongue).stem;
    if (hasChannels && stem !== null && groupStems.has(stem)) return openGroup(walk, line, name, stem);
    if (hasChannels && stem === null) return false;
  }
  if (numbers.length === 0 && isSentence(name)) return false;
  const doubt = numbers.length === 0 && hasChannels ? 'The line has no number.' : '';
  pushInput(walk, line, {
    name,
    numbers,
    detail: tidy(
      `${get('side')} ${get('format')} ${stereoRemark(walk, name, [get('notes'), get('pick-up')])}`,
    ),
    group: groupOf(walk, block, get('group')),
    performerText: tidy(get('performer')),
    details: detailsOfRow(byRole, walk),
    matrix: withMonitorColumn(matrix, get('mix')),
    doubt,
  });
  return true;
}

/** "Stereo" among the remarks or "stereo DI" for a line that names no side of its own. */
function stereoRemark(walk: Walk, name: string, remarks: readonly string[]): string {
  if (readSourceName(name, walk.tongue).sides.size > 0) return '';
  const told = remarks.find((text) =>
    /^(?:in )?(?:st[eé]r[eé]o|st\.?)(?: di)?$|^(?:2x?|2 x) di$|^di (?:stereo|st[eé]r[eé]o)$/i.test(
      tidy(text),
    ),
  );
  return told ? 'stereo' : '';
}

/** A side, a part, a number or another source: what a second cell of the name holds. */
function isMoreOfName(text: string, walk: Walk): boolean {
  if (text === '' || text.split(' ').length > 4) return false;
  const name = readSourceName(text, walk.tongue);
  return (
    /^\d{1,2}$/.test(text) || name.stem !== null || name.sides.size + name.parts.size + name.pickUps.size > 0
  );
}

/** A column "Monitor: 1, 3" says which mixes want the line. */
function withMonitorColumn(matrix: MatrixCell[], mixes: string): MatrixCell[] {
  const numbers = channelNumbers(mixes);
  return [...matrix, ...numbers.map((number) => ({ column: number, heading: `Mix ${number}`, text: 'x' }))];
}

/** A group is written once and holds for the rows below it, as a merged cell does. */
function groupOf(walk: Walk, block: Block, text: string): string {
  const group = tidy(text);
  const lead = [...block.roles].find(([, role]) => role === 'group');
  if (!lead) return '';
  if (group !== '') walk.heading = group;
  return walk.heading;
}

const isSentence = (text: string) => text.split(' ').length > 9;

function detailsOfRow(byRole: Map<string, string>, walk: Walk): Details {
  const { tongue } = walk;
  const get = (role: ColumnRole) => byRole.get(role) ?? '';
  const details = { ...noDetails(), ...readPickUpCell(get('pick-up'), tongue) };
  if (get('second choice')) details.alternatives = [...details.alternatives, tidy(get('second choice'))];
  const connector = get('connector');
  if (details.pickUp === null && connector) details.pickUp = readPickUpCell(connector, tongue).pickUp;
  const phantom = readPhantomCell(get('phantom'), tongue);
  if (phantom !== 'not said') details.phantom = phantom;
  const stand = tidy(get('stand'));
  details.stand =
    /^[-–—/.]*$/.test(stand) ||
    (isAllIn(standWords, stand, tongue) && /^(?:no|none|ohne|sans|sin|senza|geen|sem|kein\w*)\b/i.test(stand))
      ? ''
      : stand;
  details.position = tidy(get('position'));
  const supplied = tidy(`${get('supplied')} ${get('own')}`);
  details.broughtBy = supplied
    ? broughtByIn(supplied, tongue)
    : broughtByIn(get('pick-up'), tongue) === 'band'
      ? 'band'
      : null;
  const remarks = ['notes', 'insert', 'count', 'role']
    .map((role) => tidy(byRole.get(role) ?? ''))
    .filter((text) => text !== '');
  const spoken = remarks.join(' ');
  if (details.phantom === 'not said') details.phantom = phantomIn(spoken, tongue);
  if (details.broughtBy === null) details.broughtBy = broughtByIn(tidy(byRole.get('notes') ?? ''), tongue);
  details.optional = isOptional(`${get('source')} ${spoken}`, tongue);
  details.audience = audienceIn(`${get('source')} ${spoken}`);
  details.notes = remarks;
  return details;
}

/** A row without a name: left empty on purpose, the second half of a merged cell, or a remark of the row above. */
function takeNamelessRow(
  walk: Walk,
  line: Line,
  block: Block,
  numbers: number[],
  filled: number,
  byRole: Map<string, string>,
  matrix: MatrixCell[],
): boolean {
  const { found } = walk;
  const hasName = tidy(byRole.get('source') ?? '') !== '';
  const others = ['pick-up', 'stand', 'phantom', 'performer', 'side'].filter(
    (role) => !saysNothing(byRole.get(role) ?? ''),
  );
  if (numbers.length > 0 && (others.length === 0 || hasName)) {
    note(
      found,
      line.at,
      'set aside',
      numbers.length === 1 ? `Number ${numbers[0]} is left empty.` : 'These numbers are left empty.',
    );
    return true;
  }
  const above = found.inputs.at(-1);
  if (numbers.length > 0 && above && above.list === walk.list) {
    pushInput(walk, line, {
      name: tidy(byRole.get('performer') ?? '') || above.name,
      numbers,
      detail: tidy(byRole.get('side') ?? ''),
      headingStem: above.headingStem,
      performerText: byRole.get('performer') ? tidy(byRole.get('performer') ?? '') : above.performerText,
      details: detailsOfRow(byRole, walk),
      matrix,
      doubt: 'The line has no name: it is taken for more of the line above.',
    });
    return true;
  }
  const group = tidy(byRole.get('group') ?? '');
  if (numbers.length === 0 && filled === 1 && group !== '' && line.cells.length === 1) {
    const stem = readSourceName(group, walk.tongue).stem;
    return stem ? openGroup(walk, line, group, stem) : false;
  }
  if (line.cells.length < 2 || !above || block.kind !== 'inputs') return false;
  above.details.notes.push(line.text);
  note(found, line.at, 'guessed', `Taken for a remark on "${above.name}".`);
  return true;
}

function openGroup(walk: Walk, line: Line, text: string, stem: Stem): boolean {
  walk.headingStem = stem;
  walk.heading = text;
  note(walk.found, line.at, 'set aside', 'The heading of a group of lines.');
  return true;
}

/** "1: Kick | 2: Snare | 3: HH": several numbered lines side by side. */
function takeManyInputs(walk: Walk, line: Line): boolean {
  const items = line.cells.map((cell) => numberedText(cell.text));
  if (items.length < 2 || items.some((item) => item === null || !item.marked)) return false;
  items.forEach((item, part) => {
    if (!item || saysNothing(item.rest)) return;
    const split = splitNameAndDetails(item.rest, walk);
    pushInput(
      walk,
      { ...line, part: line.part + part },
      {
        name: split.name,
        numbers: item.numbers,
        detail: split.beside,
        details: readDetails(split.details, walk.tongue),
        performerText: split.performer,
      },
    );
  });
  return true;
}

/** A row of several cells outside any table: told by what its cells hold. */
export function takeLooseInputRow(walk: Walk, line: Line, aside: boolean): boolean {
  if (!aside && takeManyInputs(walk, line)) return true;
  const { tongue } = walk;
  const [first, ...others] = line.cells;
  if (!first) return false;
  const leading = channelNumbers(first.text);
  const joined = leading.length === 0 ? numberedText(first.text) : null;
  const numbers = leading.length > 0 ? leading : (joined?.numbers ?? []);
  const rest =
    leading.length > 0
      ? others.map((cell) => cell.text)
      : [joined?.rest ?? first.text, ...others.map((cell) => cell.text)];
  if (rest.length === 0) {
    note(walk.found, line.at, 'set aside', 'A number alone.');
    return true;
  }
  if (aside && (numbers.length === 0 || !walk.runs.has(walk.at))) return false;
  const named = rest.findIndex(
    (text) => readSourceName(text, tongue).stem !== null && !isAllIn(pickUpWords, text, tongue),
  );
  const inList = walk.section === 'inputs' || walk.runs.has(walk.at) || leading.length > 0;
  if (named < 0 && !(inList && numbers.length > 0)) return false;
  if (named < 0 && rest.every(saysNothing)) {
    note(walk.found, line.at, 'set aside', `Number ${numbers[0] ?? ''} is left empty.`);
    return true;
  }
  if (numbers.length === 0 && walk.section !== 'inputs' && !hasDetail(rest, named, walk)) return false;
  const place = Math.max(0, named);
  const name = rest[place] ?? '';
  if (isSentence(name) || (numbers.length === 0 && namesDevice(name, walk))) return false;
  const before = rest.slice(0, place).filter((text) => !saysNothing(text));
  const details = readDetails(
    rest.slice(place + 1).filter((text) => !saysNothing(text)),
    tongue,
  );
  modelFromNotes(details, rest[place + 1], tongue);
  pushInput(walk, line, {
    name,
    numbers,
    detail: stereoRemark(walk, name, rest.slice(place + 1)),
    group: before.join(' '),
    details,
    performerText: performerAmong(details, walk),
  });
  return true;
}

/** "Own vocal 100%": a wish. */
function tellsAmount(text: string, walk: Walk): boolean {
  const facts = pieceFacts(text, walk);
  return facts.self && facts.amounts > 0;
}

/** "One wedge for the guest singer" is no input. */
function namesDevice(text: string, walk: Walk): boolean {
  return findHits(mixWords, tokenize(text), walk.tongue.spoken, walk.tongue.names).some(
    (hit) => hit.senses[0]?.subject === 'device',
  );
}

/** An unnumbered row counts as an input where another cell tells a microphone, a stand or a place. */
function hasDetail(rest: readonly string[], named: number, walk: Walk): boolean {
  return rest.some(
    (text, at) =>
      at > named && (isAllIn(pickUpWords, text, walk.tongue) || isAllIn(standWords, text, walk.tongue)),
  );
}

/** The cell right after the name is most often the microphone, also where its model says nothing to us. */
function modelFromNotes(details: Details, text: string | undefined, tongue: Walk['tongue']): void {
  if (details.pickUp !== null || !text || !/\d/.test(text) || text.length > 40) return;
  if (isAllIn(positionWords, text, tongue)) return;
  details.pickUp = 'mic';
  details.pickUpModel = text;
  details.notes = details.notes.filter((it) => it !== text);
}

function performerAmong(details: Details, walk: Walk): string {
  const name = details.notes.find((text) =>
    tokenize(text).some((token) => walk.tongue.names.has(token.text)),
  );
  if (name === undefined) return '';
  details.notes = details.notes.filter((text) => text !== name);
  return name;
}

/** A run of text that is a line of an input list: "1. Kick - dynamic mic, short boom", "- OH L/R". */
export function takeInputText(walk: Walk, line: Line): boolean {
  const { tongue } = walk;
  if (walk.section === null && isUntitledList(walk)) {
    walk.section = 'inputs';
    walk.list += 1;
  }
  const { section } = walk;
  if (section === 'mixes' || section === 'line-up') return false;
  const numbered = numberedText(line.text);
  const inRun = walk.runs.has(walk.at);
  const counts = numbered !== null && countsThings(numbered, inRun, walk);
  if (numbered && !counts)
    return takeNumberedText(walk, line, numbered.numbers, numbered.rest, numbered.marked, inRun);
  if (isAside(section)) return false;
  if (takeInlineList(walk, line)) return true;
  const bullet = /^\s*[-•*·–>▪●]\s*(.+)$/.exec(line.text);
  const text = bullet?.[1] ?? line.text;
  const split = splitNameAndDetails(text, walk);
  const name = readSourceName(split.name, tongue);
  if (opensGroup(walk, text, name)) return openGroup(walk, line, text, name.stem ?? 'other');
  if (section !== 'inputs' && walk.blocks[0]?.kind !== 'inputs') return false;
  if (!isShortName(split.name) || isNoInput(split, walk)) return false;
  if (!bullet && (/(?:\p{L}{3}|\))[.!?]$/u.test(text) || splitAtVerb(text, walk) !== null)) return false;
  if (!bullet && namesDevice(split.name, walk)) return false;
  if (/\?$/.test(text) || (!bullet && tellsAmount(text, walk))) return false;
  if (name.stem === null && !(walk.headingStem && isPartOfHeading(name, walk))) return false;
  pushInput(walk, line, {
    name: split.name,
    detail: split.beside,
    details: readDetails(split.details, tongue),
    performerText: split.performer,
  });
  return true;
}

function takeNumberedText(
  walk: Walk,
  line: Line,
  numbers: number[],
  rest: string,
  marked: boolean,
  inRun: boolean,
): boolean {
  const { tongue, section } = walk;
  const split = splitNameAndDetails(rest, walk);
  const name = readSourceName(split.name, tongue);
  const inList = section === 'inputs' || walk.blocks[0]?.kind === 'inputs';
  if (isAside(section) && !(inRun && marked && name.stem !== null && !isAllIn(mixWords, rest, tongue)))
    return false;
  if (saysNothing(rest)) {
    note(walk.found, line.at, 'set aside', `Number ${numbers[0]} is left empty.`);
    return true;
  }
  const follows = inRun && followsInput(walk, numbers);
  if (!isShortName(split.name) && !follows) return false;
  const likely =
    follows || inList || (inRun && (marked || name.stem !== null)) || (marked && name.stem !== null);
  if (!likely) return false;
  if (!follows && !marked && !inRun && name.stem === null) return false;
  if (!inList && name.stem === null && !walk.found.inputs.some((input) => input.list === walk.list))
    return false;
  pushInput(walk, line, {
    name: split.name,
    numbers: numbersInDetails(numbers, split.details),
    detail: split.beside,
    details: readDetails(split.details, tongue),
    performerText: split.performer,
  });
  return true;
}

/** The number goes on from the input right above: a line of the same list, whatever its words are. */
function followsInput(walk: Walk, numbers: readonly number[]): boolean {
  const above = walk.found.inputs.at(-1);
  const line = walk.lines[walk.at];
  const last = above?.numbers.at(-1);
  const first = numbers[0];
  if (!above || !line || last === undefined || first === undefined || above.list !== walk.list) return false;
  return above.at.sheet === line.at.sheet && line.at.row - above.at.row <= 2 && first === last + 1;
}

const isShortName = (text: string) =>
  (text.split(' ').length <= 8 && text.length <= 90) || text.length > 1500;

/** "4 wedges" and "PA system" stand in lists of inputs too, but are none. */
function isNoInput(split: NameAndDetails, walk: Walk): boolean {
  return isAllIn(mixWords, split.name, walk.tongue) && !isAllIn(nameWords, split.name, walk.tongue);
}

/** "Left", "Noor" or "SR" under a heading. */
function isPartOfHeading(name: SourceName, walk: Walk): boolean {
  return (
    name.sides.size > 0 ||
    name.parts.size > 0 ||
    name.pickUps.size > 0 ||
    name.tokens.some((token) => walk.tongue.names.has(token.text))
  );
}

/** A word for a group alone on its line heads what follows, unless it is itself the only line of its kind. */
function opensGroup(walk: Walk, text: string, name: SourceName): boolean {
  if (name.stem === null || !groupStems.has(name.stem) || name.unknown.length > 0 || name.besides.length > 0)
    return false;
  if (name.sides.size > 0 || name.ordinal !== null || name.parts.size > 0 || name.pickUps.size > 0)
    return false;
  if (walk.section === 'mixes') return false;
  const colon = /[:：]\s*$/.test(text);
  const loud = text === text.toUpperCase() && /\p{Lu}{3,}/u.test(text);
  const hasChannels = walk.blocks.some(
    (block) => block.kind === 'inputs' && [...block.roles.values()].includes('channel'),
  );
  if (headsNext(walk, name)) return true;
  if (!colon && !loud && !hasChannels && !nextIsNumbered(walk)) return false;
  const next = walk.lines[walk.at + 1];
  if (!next) return false;
  return (
    colon ||
    hasChannels ||
    next.cells.length > 1 ||
    numberedText(next.text) !== null ||
    readSourceName(next.text, walk.tongue).stem !== null ||
    walk.section === 'inputs'
  );
}

/** "3 toms" in a list without numbers says how many, not which. */
function countsThings(numbered: { numbers: number[]; marked: boolean }, inRun: boolean, walk: Walk): boolean {
  if (numbered.marked || inRun || numbered.numbers.length !== 1) return false;
  const above = walk.found.inputs.at(-1);
  return (
    walk.section === 'inputs' && above !== undefined && above.list === walk.list && above.numbers.length === 0
  );
}

/** A short line that is nothing but a source, or a side or part of one. */
function looksListed(line: Line | undefined, walk: Walk): 'source' | 'part' | null {
  if (!line || line.cells.length !== 1 || line.text.length > 120) return null;
  const bullet = /^\s*[-•*·–>▪●]\s*(.+)$/.exec(line.text)?.[1];
  const pieces = bullet || /:\s/.test(line.text) ? splitNameAndDetails(bullet ?? line.text, walk) : null;
  const isMiked = pieces !== null && readDetails(pieces.details, walk.tongue).pickUp !== null;
  const split = bullet || isMiked ? (pieces?.name ?? '') : line.text;
  if (split.split(' ').length > 5) return null;
  const name = readSourceName(split, walk.tongue);
  if (name.unknown.length > (bullet ? 1 : 0)) return null;
  if (name.stem !== null) return name.certainty === 1 ? 'source' : null;
  return name.sides.size + name.parts.size + name.pickUps.size > 0 ? 'part' : null;
}

/** Several lines of nothing but sources are a list of inputs, also without a title. */
function isUntitledList(walk: Walk): boolean {
  if (looksListed(walk.lines[walk.at], walk) !== 'source') return false;
  const bulleted = /^\s*[-•*·▪●]/.test(walk.lines[walk.at]?.text ?? '');
  const enough = bulleted ? 2 : 3;
  return (
    [1, 2, 3, 4, 5].filter((step) => looksListed(walk.lines[walk.at + step], walk) !== null).length >= enough
  );
}

/** "Drums" over "Kick", "Bass" over "DI": a word for the group, then what is in it. */
function headsNext(walk: Walk, name: SourceName): boolean {
  const next = walk.lines[walk.at + 1];
  const kind = looksListed(next, walk);
  if (!next || kind === null || name.stem === null || walk.section !== 'inputs') return false;
  if (kind === 'part') return true;
  const below = readSourceName(next.text, walk.tongue);
  return (
    below.stem !== null &&
    below.stem !== name.stem &&
    groupOfStem(below.stem) === groupOfStem(name.stem) &&
    generalStems.has(name.stem)
  );
}

const generalStems: ReadonlySet<Stem> = new Set<Stem>([
  'drums',
  'percussion',
  'guitar',
  'keys',
  'vocal',
  'brass',
  'strings',
  'bass',
]);

function nextIsNumbered(walk: Walk): boolean {
  return walk.runs.has(walk.at + 1);
}

type NameAndDetails = {
  name: string;
  details: string[];
  performer: string;
  /** Words that belong to the name but stand apart from it: "(stereo, condensers)". */
  beside: string;
};

/** Takes a line of text apart into the source's name and what is said of it. */
function splitNameAndDetails(text: string, walk: Walk): NameAndDetails {
  const { tongue } = walk;
  const pieces = tidy(text)
    .split(/\s+[-–—→=>]+\s+|\s*[;|]\s*|\s*,\s+|\s*:\s+|\s*[([]\s*|\s*[)\]]\s*|\s*\.{2,}\s*|\s*…\s*/)
    .map(tidy)
    .filter((piece) => piece !== '');
  const [first = '', ...rest] = pieces;
  let name = first;
  let performer = '';
  const details = [...rest];
  const firstName = readSourceName(first, tongue);
  const second = details[0] ? readSourceName(details[0], tongue) : null;
  if (
    firstName.stem === null &&
    firstName.parts.size === 0 &&
    firstName.sides.size === 0 &&
    firstName.pickUps.size === 0 &&
    looksLikeName(first, walk) &&
    second &&
    second.stem !== null &&
    details[0] &&
    !isAllIn(pickUpWords, details[0], tongue)
  ) {
    // "Noor: lead vocal" names the player first.
    performer = first;
    name = details.shift() ?? first;
  } else if (
    details[0] &&
    second &&
    firstName.stem !== null &&
    second.stem !== null &&
    isGroupBeforeColon(text, first, details[0])
  ) {
    name = `${first}: ${details.shift() ?? ''}`;
  } else if (
    details[0] &&
    second &&
    second.stem === null &&
    isOnlySideOrPart(second) &&
    !isAllIn(standWords, details[0], tongue)
  ) {
    const tail = details[0];
    const end = text.indexOf(tail, text.indexOf(first) + first.length);
    const close = /^\s*[)\]]/.exec(text.slice(end + tail.length))?.[0] ?? '';
    const opened = /[([]\s*$/.test(text.slice(0, end));
    if ((!opened || close !== '') && !/\d/.test(tail)) {
      details.shift();
      name = end < 0 ? `${first} ${tail}` : tidy(text.slice(text.indexOf(first), end + tail.length) + close);
    }
  }
  if (performer === '') performer = singersOfCount(name, details, walk);
  const isTold = readSourceName(name, tongue).stem !== null;
  const beside = details.filter((piece, at) => tellsStereo(piece, walk) || (!isTold && at === 0)).join(' ');
  return {
    name,
    details,
    performer: performer || performerPiece(details, walk) || singerPiece(name, details, walk),
    beside,
  };
}

/** "3x Gesang (Ylva, Runa, Knud)": as many names as lines, one for each. */
function singersOfCount(name: string, details: string[], walk: Walk): string {
  const { count } = readSourceName(name, walk.tongue);
  const names = details.slice(0, count);
  const areNames = names.every(
    (text) => looksLikeName(text, walk) && readSourceName(text, walk.tongue).stem === null,
  );
  if (count < 2 || names.length !== count || !areNames) return '';
  return details.splice(0, count).join(', ');
}

/** "Horns: trumpet", but not "Percussion: 1 overhead condenser". */
function isGroupBeforeColon(text: string, first: string, second: string): boolean {
  if (/^\d+x?\s/.test(second)) return false;
  const start = text.indexOf(first) + first.length;
  return /^\s*:\s*$/.test(text.slice(start, text.indexOf(second, start)));
}

function tellsStereo(piece: string, walk: Walk): boolean {
  const { sides } = readSourceName(piece, walk.tongue);
  return piece.length < 40 && (sides.has('stereo') || sides.has('both'));
}

/** "(stereo, ch 8+9)" behind number 8 gives the second number. */
function numbersInDetails(numbers: readonly number[], details: readonly string[]): number[] {
  if (numbers.length !== 1) return [...numbers];
  const more = details
    .map((piece) => channelNumbers(/\d{1,3}\s*(?:[+/&-]|und|and|et|y|e|en)\s*\d{1,3}/.exec(piece)?.[0] ?? ''))
    .find((list) => list.length === 2 && list[0] === numbers[0]);
  return more ?? [...numbers];
}

const partsOfName: ReadonlySet<string> = new Set([
  'inside',
  'outside',
  'top',
  'bottom',
  'high',
  'low',
  'middle',
]);

function isOnlySideOrPart(name: SourceName): boolean {
  return (
    (name.sides.size > 0 || [...name.parts].some((part) => partsOfName.has(part))) &&
    name.unknown.length === 0 &&
    name.pickUps.size === 0
  );
}

/** "Gesang links: Ole": a name nobody knows behind a voice is the singer's. */
function singerPiece(name: string, details: string[], walk: Walk): string {
  const { stem } = readSourceName(name, walk.tongue);
  const [first] = details;
  if (
    stem === null ||
    groupOfStem(stem) !== 'vocals' ||
    !first ||
    !/^\p{Lu}\p{Ll}+(?: \p{Lu}\p{Ll}+)?$/u.test(first)
  )
    return '';
  const known = [nameWords, standWords, mixWords, positionWords].some((words) =>
    isAllIn(words, first, walk.tongue),
  );
  return known || isOptional(first, walk.tongue) ? '' : (details.shift() ?? '');
}

function performerPiece(details: string[], walk: Walk): string {
  const at = details.findIndex((piece) => {
    const words = tokenize(piece).filter((token) => token.kind === 'word');
    return words.length > 0 && words.length <= 3 && words.every((token) => walk.tongue.names.has(token.text));
  });
  return at < 0 ? '' : (details.splice(at, 1)[0] ?? '');
}

const inlineTitles =
  /^\s*(?:our\s+|unsere\s+|nos\s+|nuestr[oa]s\s+)?(?:inputs?|input list|channels?|channel list|lines|sources|kan[aä]le|eing[aä]nge|entr[eé]es|canales|entradas|canali|ingressi|kanalen|canais|patch)\s*(?:\([^)]*\)|are|is|sind|sont|son|sono|zijn|são)?\s*[:=]\s*(.+)$/i;

/** "Inputs: kick, snare, hat, 2 x tom, OH L/R": one line that lists many. */
function takeInlineList(walk: Walk, line: Line): boolean {
  const listed =
    inlineTitles.exec(line.text)?.[1] ?? (walk.section === 'inputs' ? groupList(line.text, walk) : null);
  if (!listed) return false;
  const items = listed
    .split(/\s*[,;]\s*|\s+(?:and|und|et|y|e|en)\s+(?=\S+(?:\s\S+)?$)/)
    .map((item) => tidy(item.replace(/\.$/, '')))
    .filter((item) => item !== '');
  const named = items.filter(
    (item) => readSourceName(numberedText(item)?.rest ?? item, walk.tongue).stem !== null,
  );
  if (items.length < 2 || named.length * 3 < items.length * 2) return false;
  items.forEach((item, part) => {
    const numbered = numberedText(item);
    const counts = numbered && !numbered.marked ? /^\d+\s/.test(item) && !isRising(items) : false;
    const name = numbered && !counts ? numbered.rest : item;
    pushInput(
      walk,
      { ...line, part: line.part + part },
      {
        name: counts ? `${numbered?.numbers[0]}x ${numbered?.rest}` : name,
        numbers: numbered && !counts ? numbered.numbers : [],
      },
    );
  });
  return true;
}

/** Numbers that rise by one from item to item count lines; others say how many of a thing. */
function isRising(items: readonly string[]): boolean {
  const numbers = items.flatMap((item) => numberedText(item)?.numbers[0] ?? []);
  return (
    numbers.length > 2 &&
    numbers.length === items.length &&
    numbers.every((number, at) => at === 0 || number > (numbers[at - 1] ?? 0))
  );
}

function groupList(text: string, walk: Walk): string | null {
  const found = /^([^:(]{2,30}?)\s*(?:\([^)]*\))?\s*:\s*(.+,.+)$/.exec(text);
  if (!found?.[1] || !found[2]) return null;
  const stem = readSourceName(found[1], walk.tongue).stem;
  return stem !== null && groupStems.has(stem) ? found[2] : null;
}
