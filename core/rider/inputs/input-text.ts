import { behindBullet, isBulleted, withoutBullet } from '../language/bullets.ts';
import { numberedText } from '../language/numbers.ts';
import { groupOfStem, readSourceName, type SourceName } from '../language/source-name.ts';
import { tidy } from '../language/text.ts';
import { mixWords, nameWords } from '../language/vocabulary.ts';
import { leadingLabel, pieceFacts, splitAtVerb } from '../mixes/mix-pieces.ts';
import { note } from '../page/draft.ts';
import { headCells } from '../page/headers.ts';
import type { Line } from '../page/lines.ts';
import { saysEmpty } from '../page/lines.ts';
import { isAside, type Walk } from '../page/walk-state.ts';
import type { Stem } from '../words/sources.ts';
import { isAllIn, readDetails } from './details.ts';
import { groupStems, namesDevice, openGroup, pushInput } from './found-input.ts';
import { type NameAndDetails, numbersInDetails, splitNameAndDetails } from './name-and-details.ts';
import { takeSeveral } from './told-lines.ts';

/** "Own vocal 100%": a wish. */
function tellsAmount(text: string, walk: Walk): boolean {
  const facts = pieceFacts(text, walk);
  return facts.self && facts.amounts > 0;
}

/** A list of inputs may begin without a title. */
export function opensUntitledList(walk: Walk): void {
  if (walk.section !== null || !isUntitledList(walk)) return;
  walk.section = 'inputs';
  walk.list += 1;
}

/** A run of text that is a line of an input list: "1. Kick - dynamic mic, short boom", "- OH L/R". */
export function takeInputText(walk: Walk, line: Line): boolean {
  const { tongue } = walk;
  const { section } = walk;
  if (section === 'mixes' || section === 'line-up') return false;
  const numbered = numberedText(line.text);
  const inRun = walk.runs.has(walk.at);
  const counts = numbered !== null && countsThings(numbered, inRun, walk);
  if (numbered && !counts)
    return takeNumberedText(walk, line, numbered.numbers, numbered.rest, numbered.marked, inRun);
  if (isAside(section)) return false;
  const bullet = behindBullet(line.text);
  const text = bullet ?? line.text;
  const mayHoldSeveral = bullet !== null || /^[^:]{2,40}:\s/.test(text);
  if (bullet === null && standsOverHead(walk)) return false;
  const split = splitNameAndDetails(text, walk);
  const isLong = bullet !== null && !isShortName(split.name);
  // Below a table with numbers, "FX on lead vox: your plate is fine" is a remark.
  const isRemark = bullet === null && hasNumberedTable(walk);
  if (isRemark && /^\p{Ll}/u.test(text)) return false;
  if (mayHoldSeveral && !isRemark && section === 'inputs' && takeSeveral(walk, line, text, isLong))
    return true;
  if (takeInlineList(walk, line)) return true;
  const name = readSourceName(split.name, tongue);
  if (opensGroup(walk, text, name)) return openGroup(walk, line, text, name.stem ?? 'other');
  if (section !== 'inputs' && walk.blocks[0]?.kind !== 'inputs') return false;
  if (!isShortName(split.name) || isNoInput(split, walk)) return false;
  // "Ada vocal - a plain dynamic is fine": what stands behind the dash may be a sentence.
  const told = /\s[-–—]\s/.test(text) && section === 'inputs' ? split.name : text;
  if (!bullet && (/(?:\p{L}{3}|\))[.!?]$/u.test(told) || splitAtVerb(told, walk) !== null)) return false;
  if (!bullet && (namesDevice(split.name, walk) || sharesLine.test(split.details[0] ?? ''))) return false;
  if (/\?$/.test(text) || (!bullet && tellsAmount(text, walk))) return false;
  if (!bullet && name.certainty < 1 && !followsLine(walk)) return false;
  const goesOn = bullet !== null && section === 'inputs' && standsInBullets(walk);
  if (name.stem === null && !(walk.headingStem && isPartOfHeading(name, walk)) && !goesOn) return false;
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
  if (saysEmpty(rest)) {
    note(walk.found, line.at, 'set aside', `Number ${numbers[0]} is left empty.`);
    return true;
  }
  const follows = inRun && followsInput(walk, numbers);
  if (!isShortName(split.name) && !follows) return false;
  const likely =
    follows || inList || (inRun && (marked || name.stem !== null)) || (marked && name.stem !== null);
  if (!likely || countsBack(walk, numbers, marked || follows)) return false;
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

/** Lines of a sheet of inputs above the head of their table are its titles. */
const standsOverHead = (walk: Walk) =>
  walk.blocks.length === 0 &&
  walk.section === 'inputs' &&
  !walk.found.inputs.some(({ list }) => list === walk.list) &&
  walk.lines
    .slice(walk.at + 1, walk.at + 5)
    .some((below) => below.cells.length > 2 && headCells(below, walk.tongue) !== null);

/** The number goes on from the input right above: a line of the same list, whatever its words are. */
function followsInput(walk: Walk, numbers: readonly number[]): boolean {
  const above = walk.found.inputs.at(-1);
  const line = walk.lines[walk.at];
  const last = above?.numbers.at(-1);
  const first = numbers[0];
  if (!above || !line || last === undefined || first === undefined || above.list !== walk.list) return false;
  return above.at.sheet === line.at.sheet && line.at.row - above.at.row <= 2 && first === last + 1;
}

const hasNumberedTable = ({ blocks }: Walk) =>
  blocks.some(({ kind, roles }) => kind === 'inputs' && [...roles.values()].includes('channel'));

/** "Megaphone - share with 10" is heard by another line. */
const sharesLine = /^(?:shares?|shared|teilt|geteilt|partag|compart|condivi|deelt|divid)/i;

/** "20 music stands with lamps" below number 40 counts things. */
function countsBack(walk: Walk, numbers: readonly number[], isSure: boolean): boolean {
  const written = walk.found.inputs.filter((input) => input.list === walk.list).flatMap((it) => it.numbers);
  return !isSure && walk.blocks.length > 0 && numbers.some((number) => written.includes(number));
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
  // "Güira (one mic)" is a line itself.
  if (/\(.+\)/.test(text) && readDetails([text.slice(text.indexOf('('))], walk.tongue).pickUp !== null)
    return false;
  if (walk.section === 'mixes') return false;
  const colon = /[:：]\s*$/.test(text);
  const loud = text === text.toUpperCase() && /\p{Lu}{3,}/u.test(text);
  const hasChannels = hasNumberedTable(walk);
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
  if (line?.cells.length !== 1 || line.text.length > 120) return null;
  const bullet = behindBullet(line.text);
  const hasDetails = bullet !== null || /:\s|\s[-–—]\s/.test(line.text);
  const pieces = hasDetails ? splitNameAndDetails(bullet ?? line.text, walk) : null;
  const isMiked = pieces !== null && readDetails(pieces.details, walk.tongue).pickUp !== null;
  const split = bullet || isMiked ? (pieces?.name ?? '') : line.text;
  if (split.split(' ').length > 5) return null;
  const name = readSourceName(split, walk.tongue);
  if (name.unknown.length > (bullet || isMiked ? 1 : 0)) return null;
  if (name.stem !== null) return name.certainty === 1 ? 'source' : null;
  return name.sides.size + name.parts.size + name.pickUps.size > 0 ? 'part' : null;
}

/** The line right above was an input. */
function followsLine(walk: Walk): boolean {
  const above = walk.found.inputs.at(-1);
  const line = walk.lines[walk.at];
  return (
    above !== undefined &&
    line !== undefined &&
    above.at.sheet === line.at.sheet &&
    line.at.row - above.at.row <= 1
  );
}

/** Right below an input of the same list of bullets: a line of it too, whatever its words are. */
function standsInBullets(walk: Walk): boolean {
  const above = walk.found.inputs.at(-1);
  const line = walk.lines[walk.at];
  const before = walk.lines[walk.at - 1];
  if (!above || !line || before?.at.row !== above.at.row || above.list !== walk.list) return false;
  return isBulleted(before.text) && above.at.sheet === line.at.sheet;
}

/** A run of bullets of which most begin with a source. */
function opensBullets(walk: Walk): boolean {
  const run: Line[] = [];
  for (let at = walk.at; at < walk.lines.length && run.length < 40; at++) {
    const line = walk.lines[at];
    if (line?.cells.length !== 1 || !isBulleted(line.text)) break;
    run.push(line);
  }
  const named = run.filter((line) => {
    const bare = withoutBullet(line.text);
    const split = splitNameAndDetails(bare, walk);
    const isMix =
      leadingLabel(bare, walk) !== null || isNoInput(split, walk) || splitAtVerb(bare, walk) !== null;
    return !isMix && isShortName(split.name) && readSourceName(split.name, walk.tongue).stem !== null;
  });
  return run.length >= 3 && named.length * 3 >= run.length * 2;
}

/** Several lines of nothing but sources are a list of inputs, also without a title. */
function isUntitledList(walk: Walk): boolean {
  if (walk.found.inputs.length === 0 && opensBullets(walk)) return true;
  if (looksListed(walk.lines[walk.at], walk) !== 'source') return false;
  const bulleted = isBulleted(walk.lines[walk.at]?.text ?? '');
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
