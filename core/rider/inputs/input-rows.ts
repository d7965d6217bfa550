import { channelNumbers, numberedText } from '../language/numbers.ts';
import { readSourceName } from '../language/source-name.ts';
import { hasWordOf, tidy } from '../language/text.ts';
import { pickUpWords, positionWords, standWords } from '../language/vocabulary.ts';
import { type MatrixCell, note } from '../page/draft.ts';
import { type Block, cellsByRole } from '../page/headers.ts';
import type { Line } from '../page/lines.ts';
import { saysEmpty, saysNothing } from '../page/lines.ts';
import type { Walk } from '../page/walk-state.ts';
import type { ColumnRole } from '../words/headers.ts';
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
import { groupStems, namesDevice, openGroup, pushInput } from './found-input.ts';
import { splitNameAndDetails } from './name-and-details.ts';

/** A row of a table of inputs. False where the row is none of its rows. */
export function takeInputRow(walk: Walk, line: Line, block: Block): boolean {
  const { byRole, matrix } = cellsByRole(line, block);
  if (byRole.size === 0 && matrix.length === 0) return false;
  const get = (role: ColumnRole) => byRole.get(role) ?? '';
  const told = numberedName(byRole, [...block.roles.values()].includes('channel'), walk);
  const numbers = told?.numbers ?? channelNumbers(get('channel'));
  const hasChannels = [...block.roles.values()].includes('channel');
  const beside = tidy(byRole.get('detail') ?? '');
  const written = told?.rest ?? tidy(get('source'));
  if (written !== '') walk.lastSource = written;
  const more = written === '' && numbers.length > 0 && beside !== '' ? walk.lastSource : written;
  const name = more !== '' && isMoreOfName(beside, walk) ? `${more} ${beside}` : more;
  const filled = byRole.size - (byRole.has('channel') ? 1 : 0) + matrix.length;

  if (name === '' || saysNothing(name) || (saysEmpty(name) && filled === 1))
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
      [
        widthOf(get('side')),
        widthOf(get('format')),
        stereoRemark(walk, name, [get('notes'), get('pick-up')]),
        sideOfPlug(walk, name, get('pick-up')),
      ].join(' '),
    ),
    group: groupOf(walk, block, get('group')),
    performerText: tidy(get('performer')),
    details: detailsOfRow(byRole, walk),
    matrix: withMonitorColumn(matrix, get('mix')),
    doubt,
  });
  return true;
}

/** "M" and "S", "1" and "2" in a column for mono and stereo. */
function widthOf(text: string): string {
  const cell = tidy(text);
  return /^(?:s|st|2|x2|2x)$/i.test(cell) ? 'stereo' : /^(?:m|1)$/i.test(cell) ? '' : cell;
}

/** "Modeller L", "XLR R" in the column of the microphone, for a line that names no side of its own. */
function sideOfPlug(walk: Walk, name: string, plug: string): string {
  const side = /\s(l|r|left|right|links|rechts|gauche|droite|izq|dcha|sx|dx|esq|dir)\.?$/i.exec(
    tidy(plug),
  )?.[1];
  return side && readSourceName(name, walk.tongue).sides.size === 0 ? side : '';
}

/** "10 Gtr SL" in the column of the numbers or of the names, where a page's columns ran together. */
function numberedName(
  byRole: Map<ColumnRole | 'detail', string>,
  hasChannels: boolean,
  walk: Walk,
): { numbers: number[]; rest: string } | null {
  const channel = tidy(byRole.get('channel') ?? '');
  const source = tidy(byRole.get('source') ?? '');
  if ((channel === '') === (source === '')) return null;
  const text = channel === '' ? source : channel;
  const numbered = numberedText(text);
  // In a table without a column of numbers "1. Flugelhorn" is the first of two.
  if (numbered?.marked && !hasChannels) return null;
  if (!numbered || channelNumbers(text).length > 0 || !/\p{L}{2}/u.test(numbered.rest)) return null;
  const last = walk.found.inputs.at(-1);
  const first = numbered.numbers[0] ?? 0;
  const isFirst = last === undefined || last.list !== walk.list;
  const follows = isFirst
    ? first <= 2
    : first > (last.numbers.at(-1) ?? 0) && first <= (last.numbers.at(-1) ?? 0) + 3;
  return follows && (channel !== '' || walk.runs.has(walk.at) || !isFirst) ? numbered : null;
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
  // A cell of nothing but numbers lists mixes, with whatever stands between them.
  const numbers =
    /^[\d\s,;/+&.-]+$/.test(mixes) && /\d[\s,;/+&]+\d/.test(mixes)
      ? (mixes.match(/\d{1,2}/g) ?? []).map(Number)
      : channelNumbers(mixes);
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
  if (rest.every(saysEmpty)) {
    note(walk.found, line.at, 'set aside', `Number ${numbers[0] ?? ''} is left empty.`);
    return true;
  }
  if (numbers.length === 0 && walk.section !== 'inputs' && !hasDetail(rest, named, walk)) return false;
  const place = Math.max(0, named);
  const name = rest[place] ?? '';
  if (isSentence(name) || (numbers.length === 0 && namesDevice(name, walk))) return false;
  const before = rest.slice(0, place).filter((text) => !saysNothing(text));
  if (place === rest.length - 1 && /\s[-–—]\s|,\s|\(/.test(name)) {
    const split = splitNameAndDetails(name, walk);
    pushInput(walk, line, {
      name: split.name,
      numbers,
      detail: split.beside,
      group: before.join(' '),
      details: readDetails(split.details, tongue),
      performerText: split.performer,
    });
    return true;
  }
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
  const name = details.notes.find((text) => hasWordOf(text, walk.tongue.names));
  if (name === undefined) return '';
  details.notes = details.notes.filter((text) => text !== name);
  return name;
}
