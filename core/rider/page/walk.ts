import type { Grid } from '../grid.ts';
import { countsWritten } from '../inputs/counted-lines.ts';
import { takeInputRow, takeLooseInputRow } from '../inputs/input-rows.ts';
import { opensUntitledList, takeInputText } from '../inputs/input-text.ts';
import { sideBySide, takeManyNumbered } from '../inputs/many-in-line.ts';
import { numbersInFront } from '../inputs/numbers-behind.ts';
import { settleTold } from '../inputs/told-lines.ts';
import { cellAmount } from '../language/amounts.ts';
import { legendIn } from '../language/legend.ts';
import { lookUp } from '../language/lexicon.ts';
import { channelNumbers, numberedText } from '../language/numbers.ts';
import type { Tongue } from '../language/source-name.ts';
import { fold } from '../language/text.ts';
import { titleLexicon } from '../language/vocabulary.ts';
import { namesSpecialDevice } from '../mixes/device-words.ts';
import { takeGeneralLine } from '../mixes/general-devices.ts';
import { blockByCells, headByCells, settleMixColumns } from '../mixes/mix-columns.ts';
import { takeMixList } from '../mixes/mix-lists.ts';
import { withoutOpening } from '../mixes/mix-openings.ts';
import { leadingLabel } from '../mixes/mix-pieces.ts';
import { isMixRow, takeLooseMixRow, takeMixText } from '../mixes/mix-rows.ts';
import { takeMixRow } from '../mixes/mix-table-rows.ts';
import { takeSendsTable } from '../mixes/sends-table.ts';
import { takeSourceForMixes } from '../mixes/told-of-mixes.ts';
import { takePerformerRow, takePerformerText } from '../performers/line-up.ts';
import { type Aside, asideReasons, type Section } from '../words/titles.ts';
import { actNameIn, isRiderTitle } from './act-name.ts';
import { asideOf, asideSigns } from './asides.ts';
import { type Found, note, placeOf } from './draft.ts';
import { blocksOfHead, headCells, mergeHeads, startsLikeMix } from './headers.ts';
import { isBlankRow, type Line, linesOfSheet, saysNothing } from './lines.ts';
import { takeMixSentences, takeProse } from './prose.ts';
import { takeSideMatter } from './side-matters.ts';
import { titleOf } from './titles.ts';
import { isAside, type Walk } from './walk-state.ts';
import { joinWrapped } from './wrapped-lines.ts';

/** Walks over all lines of a rider and finds inputs, mixes, performers and what is none of them. */
export function walkRider(grid: Grid, tongue: Tongue): Found {
  const found: Found = {
    actName: null,
    inputs: [],
    mixes: [],
    performers: [],
    devices: [],
    notes: new Map(),
    puzzles: [],
    told: [],
  };
  grid.sheets.forEach((sheet, index) => {
    const { lines: broken, nextRow } = linesOfSheet(grid, index, mostLines);
    const lines = countsWritten(numbersInFront(joinWrapped(broken, tongue)), tongue);
    const walk: Walk = {
      tongue,
      found,
      section: titleOf(sheet.name, tongue),
      sideTitles: [],
      blocks: [],
      list: found.inputs.length === 0 ? 0 : (found.inputs.at(-1)?.list ?? 0) + 1,
      headingStem: null,
      heading: '',
      lastSource: '',
      lines,
      at: 0,
      quoted: false,
      runs: numberedRuns(lines),
      mixHead: null,
    };
    while (walk.at < lines.length) {
      const from = walk.at;
      walk.at += takeLine(walk);
      for (const line of lines.slice(from, walk.at)) noteJoined(found, line);
    }
    setAsideRest(found, index, nextRow, sheet.rows);
    settleTold(walk);
  });
  return found;
}

/** A longer sheet is no rider. */
const mostLines = 3000;

function setAsideRest(
  found: Found,
  sheet: number,
  nextRow: number,
  rows: readonly (readonly string[])[],
): void {
  const why = `Beyond the first ${mostLines} lines: no rider is so long.`;
  const rest = rows.flatMap((row, at) => (at >= nextRow && !isBlankRow(row) ? [at] : []));
  const [first] = rest;
  if (first !== undefined)
    found.puzzles.push({ at: { sheet, row: first }, text: `${rest.length} more lines`, why });
  for (const row of rest) note(found, { sheet, row }, 'set aside', why);
}

/** Lines that were read as one are accounted for alike. */
function noteJoined(found: Found, line: Line): void {
  for (const at of line.more ?? []) {
    const first = found.notes.get(placeOf(line.at));
    note(
      found,
      at,
      first?.outcome === 'question' ? 'guessed' : (first?.outcome ?? 'set aside'),
      first?.why || 'Read with the line above.',
    );
  }
}

/** Takes the line the walk stands on, and says how many lines were taken. */
function takeLine(walk: Walk): number {
  const line = walk.lines[walk.at];
  if (!line) return 1;
  if (saysNothing(line.text)) {
    note(walk.found, line.at, 'set aside', 'A ruled line.');
    return 1;
  }
  if (takeQuoted(walk, line)) return 1;
  if (takeSideMatter(walk.found, line)) return 1;
  const tableLines = goesOnNumbers(walk, line) ? 0 : takeSendsTable(walk, line);
  if (tableLines > 0) return tableLines;
  if (takeGeneralLine(walk, line) || takeSourceForMixes(walk, line)) return 1;
  if (legendIn(line.text, walk.tongue.spoken)) {
    note(walk.found, line.at, 'understood', 'What the signs of the amounts mean.');
    return 1;
  }
  const headLines = takeHead(walk, line);
  if (headLines > 0) return headLines;
  const opened = withoutOpening(walk, line);
  if (opened?.text === '') return 1;
  takeSaid(walk, opened ?? line);
  return 1;
}

/** Takes a line that is neither of a table nor set aside at a glance. */
function takeSaid(walk: Walk, line: Line): void {
  if (takeMixList(walk, line)) return;
  if (!goesOnNumbers(walk, line) && takeTitle(walk, line)) return;
  if (takeMixSentences(walk, line)) return;
  if (standsOverTable(walk, line)) {
    note(walk.found, line.at, 'set aside', 'It stands over a table and has no number: taken for a title.');
    return;
  }
  if (line.cells.length > 1 && takeRow(walk, line)) return;
  if (takeText(walk, line)) return;
  takeProse(walk, line);
}

/** The number of the line follows on from the input right above it: nothing else opens there. */
function goesOnNumbers(walk: Walk, line: Line): boolean {
  const above = walk.found.inputs.at(-1);
  const last = above?.numbers.at(-1);
  if (!above || last === undefined || above.list !== walk.list || above.at.sheet !== line.at.sheet)
    return false;
  const first = line.cells[0]?.text ?? '';
  const numbers = line.cells.length === 1 ? numberedText(first)?.numbers : channelNumbers(first);
  return line.at.row - above.at.row <= 2 && numbers?.[0] === last + 1;
}

/** Lines between the title of a sheet and the head of its table. */
const mostOverTable = 8;

/** "The Band | rap and live machines" above the head of a table tells what it is, not a line. */
const standsOverTable = (walk: Walk, line: Line) =>
  line.cells.length > 1 &&
  line.cells.length <= 3 &&
  !line.loose &&
  walk.blocks.length === 0 &&
  walk.section !== 'mixes' &&
  !line.cells.some(
    (cell) => channelNumbers(cell.text).length > 0 || leadingLabel(cell.text, walk) !== null,
  ) &&
  walk.lines
    .slice(walk.at + 1, walk.at + mostOverTable)
    .some((below) => below.cells.length > 2 && headCells(below, walk.tongue) !== null);

/** "Giulia ha scritto:" and the lines marked with ">" below it: an older mail, once the newer one told its lines. */
function takeQuoted(walk: Walk, line: Line): boolean {
  const { found } = walk;
  const isMarked = /^\s*>/.test(line.text);
  if (opensQuote.test(fold(line.text))) {
    walk.quoted = true;
    note(found, line.at, 'set aside', 'The head of a mail that is answered.');
    return true;
  }
  if (!walk.quoted || !isMarked || found.inputs.length === 0) return false;
  note(found, line.at, 'set aside', 'Quoted from the mail that is answered.');
  return true;
}

const opensQuote =
  /^[>\s]*(?:(?:on|am|le|el|il|op|em|a|den)\b.{3,90}\b(?:wrote|schrieb(?: .{2,40})?|a ecrit|escribio|ha scritto|schreef(?: .{2,40})?|escreveu)\s*:\s*|-{3,}\s*(?:original(?: message)?|ursprungliche nachricht|message d'origine|mensaje original|messaggio originale|oorspronkelijk bericht|mensagem original)\s*-{2,})$/;

/** The head of a table, with a second head row above or below where there is one. */
function takeHead(walk: Walk, line: Line): number {
  const { tongue, lines, at } = walk;
  const next = lines[at + 1];
  let head = headCells(line, tongue);
  let taken = 1;
  const nextHead = next ? headCells(next, tongue) : null;
  if (!head && next && nextHead && isUpperHead(line, next, tongue)) {
    head = mergeHeads(
      line.cells.map((cell) => ({ ...cell, roles: [], exact: false })),
      nextHead,
    );
    taken = 2;
  } else if (head && nextHead) {
    head = mergeHeads(head, nextHead);
    taken = 2;
  }
  const lower = lines[at + taken];
  if (head && lower && isLowerHead(head, lower, tongue)) {
    head = mergeHeads(
      head,
      lower.cells.map((cell) => ({ ...cell, roles: [], exact: false })),
    );
    taken += 1;
  }
  const byCells = head ? null : headByCells(walk, line);
  head ??= byCells;
  if (!head && walk.section === 'mixes' && walk.blocks.length === 0) walk.blocks = blockByCells(walk, line);
  if (!head) return 0;
  const below = lines.slice(at + taken, at + taken + 80);
  const previous = walk.blocks;
  walk.blocks = blocksOfHead(head, below, byCells ? 'mixes' : walk.section, tongue);
  for (const block of walk.blocks) settleMixColumns(block, below, walk);
  const repeated =
    previous.length === walk.blocks.length &&
    previous.every((block, index) => block.kind === walk.blocks[index]?.kind);
  if (!repeated) walk.list += 1;
  const first = walk.blocks[0];
  if (first && walk.section === null) walk.section = first.kind;
  if (first && walk.blocks.length === 1 && walk.section !== null && walk.section !== first.kind)
    walk.section = first.kind;
  for (let step = 0; step < taken; step++) {
    const heading = lines[at + step];
    if (heading) note(walk.found, heading.at, 'set aside', 'The headings of a table.');
  }
  walk.headingStem = null;
  return taken;
}

/** Names under the headings of mixes, and nothing under the others. */
function isLowerHead(head: readonly { column: number; text: string }[], line: Line, tongue: Tongue): boolean {
  const mixes = new Set(head.filter((cell) => startsLikeMix(cell.text, tongue)).map((cell) => cell.column));
  return (
    mixes.size > 0 &&
    line.cells.every(
      (cell) =>
        mixes.has(cell.column) &&
        /\p{L}{2}/u.test(cell.text) &&
        cell.text.length < 40 &&
        cellAmount(cell.text, tongue) === null,
    )
  );
}

/** A row of mixes' or performers' names over the head proper. */
function isUpperHead(line: Line, next: Line, tongue: Tongue): boolean {
  if (line.cells.length < 2) return false;
  const first = next.cells[0];
  return (
    line.cells.every((cell) => cell.text.length < 40 && first !== undefined && cell.column > first.column) &&
    line.cells.filter((cell) => startsLikeMix(cell.text, tongue) || tongue.names.has(cell.text.toLowerCase()))
      .length *
      2 >=
      line.cells.length
  );
}

/** A title opens a section; titles side by side open tables side by side. */
function takeTitle(walk: Walk, line: Line): boolean {
  const { tongue, found } = walk;
  if (line.cells.length > 4) return false;
  const titles = line.cells.map((cell) => ({ column: cell.column, section: titleOf(cell.text, tongue) }));
  const first = titles[0]?.section;
  if (
    line.cells.length > 1 &&
    (!first || titles.filter((title) => title.section).length < line.cells.length - 1)
  )
    return false;
  if (!first) {
    if (line.cells.length === 1 && isRiderTitle(line.text)) {
      note(found, line.at, 'set aside', 'A title.');
      return true;
    }
    const name = line.cells.length === 1 ? actNameIn(line.text) : null;
    if (!name || found.inputs.length > 0) return false;
    found.actName ??= name;
    note(found, line.at, 'set aside', 'The name of the act.');
    return true;
  }
  found.actName ??= actNameIn(line.text);
  // "IN-EARS (all mono, house packs)": the title says what everybody listens through.
  const told = /\((.{4,})\)/.exec(line.text)?.[1];
  if (first === 'mixes' && (told || namesSpecialDevice(line.text, walk)))
    found.devices.push({
      at: line.at,
      except: [],
      isTitle: true,
      text:
        told && !/\b(?:ears?|iems?)\b/i.test(line.text) && !namesSpecialDevice(line.text, walk)
          ? told
          : line.text,
    });
  walk.section = first;
  walk.sideTitles = titles.flatMap((title) =>
    title.section ? [{ column: title.column, section: title.section }] : [],
  );
  walk.blocks = [];
  walk.headingStem = null;
  walk.heading = '';
  walk.list += 1;
  note(found, line.at, 'set aside', 'A title.');
  return true;
}

/** More rows than these are not stacked in one cell. */
const rowsOfOneCell = 1000;

/** A row of several cells: of the tables that are open, or by what its cells hold. */
function takeRow(walk: Walk, line: Line): boolean {
  const label = leadingLabel(line.cells[0]?.text ?? '', walk);
  // "Monitor Mix 1" below a list of inputs opens the mixes without a heading of their own.
  if (
    label &&
    label.rest === '' &&
    /\p{L}{3}/u.test(label.label) &&
    walk.blocks.every((block) => block.kind === 'inputs')
  ) {
    if (takeLooseMixRow(walk, line)) return true;
  }
  if (
    walk.section !== 'mixes' &&
    walk.blocks.every((block) => block.kind === 'inputs') &&
    isMixRow(walk, line)
  ) {
    walk.section = 'mixes';
    walk.blocks = [];
  }
  let taken = false;
  for (const block of walk.blocks) {
    // Rows side by side are told apart by their table, so that no two lines share a key.
    const part = line.part + walk.blocks.indexOf(block) * rowsOfOneCell;
    if (block.kind === 'inputs') taken = takeInputRow(walk, { ...line, part }, block) || taken;
    else if (block.kind === 'mixes') taken = takeMixRow(walk, line, block) || taken;
    else taken = takePerformerRow(walk, line, block) || taken;
  }
  if (taken) return true;
  const aside = isAside(walk.section);
  if (!aside && takeLooseMixRow(walk, line)) return true;
  if (
    walk.section === 'line-up' &&
    takePerformerText(walk, line, line.cells.map((cell) => cell.text).join(' - '))
  )
    return true;
  const rows = sideBySide(walk, line).map((row) => takeLooseInputRow(walk, row, aside));
  return rows.includes(true);
}

/** One run of text. */
function takeText(walk: Walk, line: Line): boolean {
  const { found, section } = walk;
  const sign = asideOf(line.text);
  if (sign && !goesOnNumbers(walk, line)) {
    note(found, line.at, 'set aside', asideSigns[sign]);
    return true;
  }
  const about = /^\s*[-•*]?\s*([^:]{2,30}):\s+\S/.exec(line.text)?.[1];
  const told = about ? lookUp(titleLexicon, about, walk.tongue.spoken)?.[0]?.meaning : undefined;
  if (told && isAside(told as Section)) {
    note(found, line.at, 'set aside', asideReasons[told as Aside]);
    return true;
  }
  if (section !== 'mixes' && takeManyNumbered(walk, line)) return true;
  opensUntitledList(walk);
  if (takeMixText(walk, line)) return true;
  if (takeInputText(walk, line)) return true;
  if (section === 'line-up' && takePerformerText(walk, line, line.text)) return true;
  if (isAside(section)) {
    note(found, line.at, 'set aside', asideReasons[section]);
    return true;
  }
  return false;
}

/** Lines that begin with a number which follows on from the numbered line before, or is followed on. */
function numberedRuns(lines: readonly Line[]): Set<number> {
  const runs = new Set<number>();
  let before: { at: number; last: number } | null = null;
  lines.forEach((line, at) => {
    const numbers = leadingNumbers(line);
    const first = numbers[0];
    const last = numbers.at(-1);
    if (first === undefined || last === undefined) return;
    if (before && at - before.at <= 6 && first > before.last && first <= before.last + 3) {
      runs.add(before.at);
      runs.add(at);
    }
    before = { at, last };
  });
  return runs;
}

function leadingNumbers(line: Line): number[] {
  const first = line.cells[0]?.text ?? '';
  const whole = line.cells.length === 1 ? first : `${first} ${line.cells[1]?.text ?? ''}`;
  return numberedText(whole)?.numbers ?? [];
}
