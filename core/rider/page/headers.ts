import { cellAmount } from '../language/amounts.ts';
import { findHits, lookUp } from '../language/lexicon.ts';
import { channelNumbers } from '../language/numbers.ts';
import { readSourceName, type Tongue } from '../language/source-name.ts';
import { tokenize } from '../language/text.ts';
import { headerLexicon, labelWords, pickUpWords } from '../language/vocabulary.ts';
import type { ColumnRole } from '../words/headers.ts';
import type { Section } from '../words/titles.ts';
import type { MatrixCell } from './draft.ts';
import type { Cell, Line } from './lines.ts';

type BlockKind = 'inputs' | 'mixes' | 'line-up';

/** A table: which columns it spans and what each holds. Several can stand side by side. */
export type Block = {
  kind: BlockKind;
  from: number;
  to: number;
  roles: Map<number, ColumnRole | 'detail'>;
  /** Columns headed by a mix (in a list of inputs) or by a source (in a list of mixes), with amounts below. */
  matrix: { column: number; heading: string }[];
};

export type HeadCell = { column: number; text: string; roles: ColumnRole[]; exact: boolean };

/** A header longer than this is a sentence. */
const longestHeading = 48;

/** The roles that a heading can stand for, most likely first; none where it is no heading. */
function rolesOf(text: string, tongue: Tongue): { roles: ColumnRole[]; exact: boolean } {
  if (text.length > longestHeading) return { roles: [], exact: false };
  const exact = lookUp(headerLexicon, text, tongue.spoken);
  if (exact) return { roles: exact.map((sense) => sense.meaning as ColumnRole), exact: true };
  const tokens = tokenize(text);
  const words = tokens.filter((token) => token.kind !== 'mark');
  if (words.length > 6 || words.some((word) => word.kind === 'number' && word.text !== '48'))
    return { roles: [], exact: false };
  const hits = findHits(headerLexicon, tokens, tongue.spoken, tongue.names);
  const covered = hits.reduce((sum, hit) => sum + hit.to - hit.from, 0);
  if (hits.length === 0 || covered * 2 < words.length) return { roles: [], exact: false };
  if (hits[0]?.senses[0]?.meaning !== 'mix' && readSourceName(text, tongue).stem !== null)
    return { roles: [], exact: false };
  const roles = hits.flatMap((hit) => hit.senses.map((sense) => sense.meaning as ColumnRole));
  return { roles: [...new Set(roles)], exact: false };
}

/** The cells of a line with what each stands for as a heading. */
export const headingsOf = (line: Line, tongue: Tongue): HeadCell[] =>
  line.cells.map((cell) => ({ ...cell, ...rolesOf(cell.text, tongue) }));

/** The cells of a line as headings, or null where the line does not look like the head of a table. */
export function headCells(line: Line, tongue: Tongue): HeadCell[] | null {
  if (line.cells.length < 2) return null;
  const cells = headingsOf(line, tongue);
  const withRole = cells.filter((cell) => cell.roles.length > 0);
  if (withRole.length < 2 || withRole.filter((cell) => cell.exact).length < 1) return null;
  const first = cells[0];
  if (first && channelNumbers(first.text).length > 0 && /\d/.test(first.text)) return null;
  const exactCount = withRole.filter((cell) => cell.exact).length;
  if (cells.some((cell) => /^\d{1,3}$/.test(cell.text)) && exactCount < 3) return null;
  const anchors: ColumnRole[] = ['channel', 'source', 'performer', 'mix', 'pick-up', 'role'];
  const anchored = withRole.filter((cell) => cell.roles.some((role) => anchors.includes(role)));
  if (anchored.length === 0) return null;
  const sourceLike = cells.filter(
    (cell) => cell.roles.length === 0 && readSourceName(cell.text, tongue).stem !== null,
  );
  const others = cells.length - withRole.length - sourceLike.length;
  // "Vocals | mic | boom" is a row, "Ch | Source | Mic" a head; a table of mixes may have many free headings.
  if (sourceLike.length > 0 && withRole.length < 3 && !withRole.some((cell) => cell.roles.includes('mix')))
    return null;
  const named = withRole.some(
    (cell) =>
      cell.exact &&
      cell.roles.some(
        (role) =>
          role === 'source' ||
          role === 'channel' ||
          role === 'mix' ||
          role === 'performer' ||
          role === 'pick-up',
      ),
  );
  if (!named) return null;
  return others > withRole.length * 6 ? null : cells;
}

/** Adds a second head row to the first: a column may be told by either or by both. */
export function mergeHeads(first: readonly HeadCell[], second: readonly HeadCell[]): HeadCell[] {
  const merged = new Map<number, HeadCell>(first.map((cell) => [cell.column, cell]));
  for (const cell of second) {
    const above = merged.get(cell.column);
    if (!above) merged.set(cell.column, cell);
    else
      merged.set(cell.column, {
        column: cell.column,
        text: `${above.text} ${cell.text}`,
        roles: cell.roles.length > 0 && cell.exact ? cell.roles : [...above.roles, ...cell.roles],
        exact: above.exact || cell.exact,
      });
  }
  return [...merged.values()].sort((a, b) => a.column - b.column);
}

/** The tables that a head row opens. `below` are lines under it, to tell columns by what they hold. */
export function blocksOfHead(
  head: readonly HeadCell[],
  below: readonly Line[],
  section: Section | null,
  tongue: Tongue,
): Block[] {
  const segments = splitSideBySide(head);
  return segments.map((segment, index) => {
    const next = segments[index + 1]?.[0];
    const from = index === 0 ? 0 : (segment[0]?.column ?? 0);
    const to = next ? next.column - 1 : Number.MAX_SAFE_INTEGER;
    return blockOf(segment, from, to, below, section, tongue);
  });
}

function splitSideBySide(head: readonly HeadCell[]): HeadCell[][] {
  const segments: HeadCell[][] = [];
  let current: HeadCell[] = [];
  const has = (role: ColumnRole) => current.some((cell) => cell.roles.includes(role));
  head.forEach((cell, at) => {
    const following = head.slice(at + 1, at + 5).filter((other) => other.exact);
    const opensInputs =
      cell.exact &&
      cell.roles.includes('channel') &&
      (has('channel') || has('mix')) &&
      (has('source') || has('performer')) &&
      following.slice(0, 2).some((other) => other.roles[0] === 'source');
    const opensMixes =
      cell.exact &&
      cell.roles.includes('mix') &&
      has('source') &&
      (has('channel') || has('pick-up')) &&
      following.some((other) =>
        other.roles.some((role) => ['device', 'format', 'wishes', 'performer'].includes(role)),
      );
    if (current.length > 1 && (opensInputs || opensMixes)) {
      segments.push(current);
      current = [];
    }
    current.push(cell);
  });
  if (current.length > 0) segments.push(current);
  return segments;
}

const inputOnly: ColumnRole[] = ['pick-up', 'stand', 'phantom', 'insert', 'second choice'];
const mixOnly: ColumnRole[] = ['device', 'wishes', 'exclusions', 'format'];

function kindOfBlock(
  segment: readonly HeadCell[],
  section: Section | null,
  below: readonly Line[],
  tongue: Tongue,
): BlockKind {
  const first = (role: ColumnRole) => segment.some((cell) => cell.roles[0] === role);
  const any = (roles: readonly ColumnRole[]) =>
    segment.filter((cell) => cell.roles.some((role) => roles.includes(role))).length;
  const leads = segment[0]?.roles ?? [];
  const inputSigns = any(inputOnly);
  const mixSigns = any(mixOnly);
  const plainInput = segment.some(
    (cell) => inputOnly.includes(cell.roles[0] ?? 'notes') && !/^t[iy]p/i.test(cell.text),
  );
  if (leads[0] === 'channel' && first('source') && plainInput && mixSigns === 0) return 'inputs';
  if (section === 'line-up' && !first('channel') && !first('mix') && inputSigns === 0) return 'line-up';
  if (section === 'mixes' && inputSigns < 2 && !first('phantom') && !first('stand')) return 'mixes';
  if (leads[0] === 'mix' && (inputSigns <= mixSigns || (first('performer') && !plainInput))) return 'mixes';
  if (first('wishes') || (first('exclusions') && first('wishes')))
    return inputSigns > 1 && first('channel') ? 'inputs' : 'mixes';
  if (mixSigns > inputSigns && !first('channel')) return 'mixes';
  if (first('mix') && mixSigns > 0 && inputSigns === 0 && first('performer') && !first('source'))
    return 'mixes';
  if (first('performer') && !first('channel') && inputSigns === 0 && !first('mix') && section !== 'inputs') {
    // "Musician | Instrument | Mix 1 ..." is rare; "Name | Instrument" tells who plays what.
    return 'line-up';
  }
  const nameFirst = segment.find((cell) => /^(?:name|nom|nombre|nome|naam)$/i.test(cell.text));
  if (
    nameFirst &&
    !first('channel') &&
    inputSigns === 0 &&
    segment.some(
      (cell) => cell !== nameFirst && cell.roles.some((role) => role === 'source' || role === 'role'),
    )
  ) {
    const sources = below.slice(0, 8).filter((line) => {
      const cell = cellAt(line, nameFirst.column);
      return cell !== null && readSourceName(cell.text, tongue).stem !== null;
    });
    if (sources.length * 2 < Math.min(8, below.length)) return 'line-up';
  }
  return 'inputs';
}

const cellAt = (line: Line, column: number): Cell | null =>
  line.cells.find((cell) => cell.column === column) ?? null;

/** Which of a heading's meanings holds in which kind of table. */
const wanted: Record<BlockKind, ColumnRole[]> = {
  inputs: [
    'channel',
    'source',
    'pick-up',
    'second choice',
    'stand',
    'phantom',
    'performer',
    'position',
    'socket',
    'group',
    'side',
    'supplied',
    'insert',
    'connector',
    'notes',
    'count',
    'own',
    'mix',
    'role',
    'format',
  ],
  mixes: [
    'mix',
    'performer',
    'device',
    'format',
    'wishes',
    'exclusions',
    'own',
    'position',
    'supplied',
    'role',
    'notes',
    'count',
    'source',
    'channel',
    'group',
    'connector',
  ],
  'line-up': ['performer', 'role', 'source', 'position', 'notes', 'mix', 'device', 'wishes', 'own'],
};

function blockOf(
  segment: readonly HeadCell[],
  from: number,
  to: number,
  below: readonly Line[],
  section: Section | null,
  tongue: Tongue,
): Block {
  const kind = kindOfBlock(segment, section, below, tongue);
  const lines = below.slice(0, 60);
  const block: Block = { kind, from, to, roles: new Map(), matrix: [] };
  for (const cell of segment) {
    const facts = columnFacts(lines, cell.column, tongue);
    const role = chooseRole(cell, kind, facts, block, tongue);
    if (role) block.roles.set(cell.column, role);
    else if (isMatrixColumn(cell, kind, facts, tongue))
      block.matrix.push({ column: cell.column, heading: cell.text });
    else block.roles.set(cell.column, 'notes');
  }
  settleSources(block, lines, tongue);
  if (kind === 'inputs') settlePickUps(block, lines, tongue);
  if (kind === 'inputs' && ![...block.roles.values()].includes('channel')) findNumberColumn(block, lines);
  return block;
}

type ColumnFacts = {
  filled: number;
  numbers: number;
  sources: number;
  amounts: number;
  /** Amounts that are no bare number: "+", "x", "60 %". */
  signs: number;
  distinct: number;
  /** Cells that list several things. */
  lists: number;
  /** The numbers count up from row to row, as those of lines do. */
  counting: boolean;
};

function columnFacts(lines: readonly Line[], column: number, tongue: Tongue): ColumnFacts {
  const facts: ColumnFacts = {
    filled: 0,
    numbers: 0,
    sources: 0,
    amounts: 0,
    signs: 0,
    distinct: 0,
    lists: 0,
    counting: false,
  };
  const seen = new Set<string>();
  const counted: number[] = [];
  for (const line of lines) {
    const cell = cellAt(line, column);
    if (!cell) continue;
    facts.filled += 1;
    seen.add(cell.text);
    if (/[,;]\s*\S/.test(cell.text) || cell.text.length > 40) facts.lists += 1;
    const numbers = channelNumbers(cell.text);
    counted.push(...numbers);
    if (numbers.length > 0) facts.numbers += 1;
    else if (cell.text.length < 80 && readSourceName(cell.text, tongue).stem !== null) facts.sources += 1;
    if (cellAmount(cell.text, tongue)) {
      facts.amounts += 1;
      if (!/^-?\d+$/.test(cell.text)) facts.signs += 1;
    }
  }
  facts.distinct = seen.size;
  facts.counting = isCounting(counted) && facts.numbers * 5 >= facts.filled * 4;
  return facts;
}

/** At least four numbers, each one more than the one before, but for a few. */
function isCounting(numbers: readonly number[]): boolean {
  const steps = numbers.filter((number, at) => at > 0 && number === (numbers[at - 1] ?? Number.NaN) + 1);
  return numbers.length >= 4 && steps.length * 4 >= (numbers.length - 1) * 3;
}

function chooseRole(
  cell: HeadCell,
  kind: BlockKind,
  facts: ColumnFacts,
  block: Block,
  tongue: Tongue,
): ColumnRole | null {
  const taken = new Set(block.roles.values());
  const mostly = (count: number) => facts.filled > 0 && count * 2 > facts.filled;
  const possible = wanted[kind].filter((role) => cell.roles.includes(role));
  if (kind === 'inputs') {
    if (facts.counting && !taken.has('channel') && possible.length === 0) return 'channel';
    // "Ada's mix" over amounts is that mix; "Send to mixes" over numbers of mixes is none.
    if (possible[0] === 'mix' && mostly(facts.amounts) && (facts.signs > 0 || facts.numbers === 0))
      return facts.counting ? 'notes' : null;
    if (
      cell.roles.includes('source') &&
      cell.roles.includes('channel') &&
      facts.filled > 0 &&
      !(taken.has('source') && facts.sources === 0)
    )
      return mostly(facts.numbers) ? (taken.has('channel') ? 'notes' : 'channel') : 'source';
    if (cell.roles[0] === 'source' && mostly(facts.numbers))
      return taken.has('channel') ? 'notes' : 'channel';
    if (possible[0] === 'channel' && facts.filled > 0 && !mostly(facts.numbers) && mostly(facts.sources))
      return 'source';
    if (possible[0] === 'channel' && taken.has('channel')) return 'socket';
    if (cell.roles[0] === 'group' && !taken.has('source') && mostly(facts.sources) && facts.distinct > 6)
      return 'group';
    // "Mon", "Mix" over amounts is one mix of a table of mixes.
    if (cell.roles[0] === 'mix' && startsLikeMix(cell.text, tongue)) return null;
  }
  if (kind === 'mixes') {
    if (cell.roles[0] === 'channel' || (cell.roles.includes('mix') && mostly(facts.numbers)))
      return taken.has('mix') ? 'notes' : 'mix';
    // "Aux | Who | System | Mix": the second column of that name holds what is heard there.
    if (cell.roles[0] === 'mix' && taken.has('mix') && !taken.has('wishes')) return 'wishes';
    if (
      cell.roles[0] === 'source' &&
      facts.lists * 2 >= facts.filled &&
      facts.lists > 0 &&
      !taken.has('wishes')
    )
      return 'wishes';
    if (cell.roles[0] === 'source') return taken.has('performer') ? 'role' : 'performer';
  }
  if (kind === 'line-up') {
    if (/^(?:name|nom|nombre|nome|naam)$/i.test(cell.text))
      return taken.has('performer') ? 'notes' : 'performer';
    if (cell.roles[0] === 'source') return taken.has('role') ? 'notes' : 'role';
  }
  // "Input | Patch": of two columns so called, one that holds no sources is where the lines are plugged in.
  if (kind === 'inputs' && taken.has('source') && possible[0] === 'source' && facts.sources === 0)
    return taken.has('socket') ? 'notes' : 'socket';
  const role = possible.find((it) => !taken.has(it) || it === 'notes') ?? null;
  return role ?? (possible.length > 0 ? 'notes' : null);
}

function isMatrixColumn(cell: HeadCell, kind: BlockKind, facts: ColumnFacts, tongue: Tongue): boolean {
  if (kind === 'line-up' || facts.filled === 0)
    return kind === 'inputs' && facts.filled === 0 && startsLikeMix(cell.text, tongue);
  return !facts.counting && facts.amounts * 10 >= facts.filled * 6;
}

/** "Mix 1", "IEM 3 Anna", "Aux 2". */
export function startsLikeMix(text: string, tongue: Tongue): boolean {
  const tokens = tokenize(text);
  const hit = findHits(labelWords, tokens, tongue.spoken, tongue.names)[0];
  const next = hit ? tokens[hit.to] : undefined;
  return hit !== undefined && hit.from === 0 && (next?.kind === 'number' || /^[A-H]$/.test(next?.raw ?? ''));
}

/** Of two columns that may name the source, the one with more different sources does; the other is its detail. */
function settleSources(block: Block, lines: readonly Line[], tongue: Tongue): void {
  if (block.kind !== 'inputs') return;
  const candidates = [...block.roles].filter(([, role]) => role === 'source').map(([column]) => column);
  if (candidates.length === 1) return;
  if (candidates.length === 0) {
    const best = [...block.roles]
      .filter(([, role]) => ['notes', 'performer', 'role', 'group', 'position'].includes(role))
      .map(([column]) => ({ column, facts: columnFacts(lines, column, tongue) }))
      .filter(({ facts }) => facts.sources * 2 > facts.filled && facts.sources > 0)
      .sort((a, b) => b.facts.sources - a.facts.sources)[0];
    if (best) block.roles.set(best.column, 'source');
  }
}

/** "How we like it", "Como": a column of microphones and DIs under any heading, where no other is one. */
function settlePickUps(block: Block, lines: readonly Line[], tongue: Tongue): void {
  if ([...block.roles.values()].includes('pick-up')) return;
  const best = [...block.roles]
    .filter(([, role]) => role === 'notes')
    .map(([column]) => {
      const cells = lines.flatMap((line) => cellAt(line, column) ?? []);
      const told = cells.filter((cell) => beginsWithPickUp(cell.text, tongue)).length;
      return { column, told, filled: cells.length };
    })
    .filter(({ told, filled }) => told >= 3 && told * 3 >= filled * 2)
    .sort((a, b) => b.told - a.told)[0];
  if (best) block.roles.set(best.column, 'pick-up');
}

const beginsWithPickUp = (text: string, tongue: Tongue) =>
  findHits(pickUpWords, tokenize(text), tongue.spoken, tongue.names).some((hit) => hit.from <= 1);

/** A table whose numbers stand in a column without a heading. */
function findNumberColumn(block: Block, lines: readonly Line[]): void {
  const columns = new Map<number, number>();
  for (const line of lines) {
    const cell = line.cells.find((it) => it.column >= block.from && it.column <= block.to);
    if (cell && !block.roles.has(cell.column) && channelNumbers(cell.text).length > 0)
      columns.set(cell.column, (columns.get(cell.column) ?? 0) + 1);
  }
  const best = [...columns].sort((a, b) => b[1] - a[1])[0];
  if (best && best[1] * 2 > lines.length * 0.6) block.roles.set(best[0], 'channel');
}

/** The cells of a line by what their columns hold. */
export function cellsByRole(
  line: Line,
  block: Block,
): { byRole: Map<ColumnRole | 'detail', string>; matrix: MatrixCell[] } {
  const byRole = new Map<ColumnRole | 'detail', string>();
  const matrix: MatrixCell[] = [];
  for (const cell of line.cells) {
    if (cell.column < block.from || cell.column > block.to) continue;
    const column = columnUnder(block, line, cell);
    const role = block.roles.get(column);
    const heading = block.matrix.find((it) => it.column === column)?.heading;
    if (heading !== undefined) matrix.push({ column, heading, text: cell.text });
    else {
      const key =
        role ??
        (isBesideSource(block, column) ? 'detail' : isBeyondWishes(block, column) ? 'wishes' : 'notes');
      const before = byRole.get(key);
      const isWish = key === 'wishes' || key === 'exclusions' || (key === 'notes' && block.kind === 'mixes');
      const text = isWish ? (cell.stacked ?? cell.text) : cell.text;
      byRole.set(key, before ? `${before}${key === 'wishes' ? ', ' : ' '}${text}` : text);
    }
  }
  return { byRole, matrix };
}

/** Wishes whose commas were taken for the ends of cells run on beyond the last heading. */
function isBeyondWishes(block: Block, column: number): boolean {
  const last = Math.max(...block.roles.keys());
  return block.kind === 'mixes' && column > last && block.roles.get(last) === 'wishes';
}

/** A column without a heading right of the source holds what the source's cell leaves out: "in", "L", "2". */
function isBesideSource(block: Block, column: number): boolean {
  return block.kind === 'inputs' && block.roles.get(column - 1) === 'source' && !block.roles.has(column);
}

/** The column of a table that a cell stands in. Columns of plain text are matched by their nearest heading. */
export function columnUnder(block: Block, line: Line, cell: Cell): number {
  if (!line.loose) return cell.column;
  const columns = [...block.roles.keys(), ...block.matrix.map((it) => it.column)].sort((a, b) => a - b);
  return nearestColumn(columns, cell.column);
}

function nearestColumn(columns: readonly number[], place: number): number {
  let nearest = columns[0] ?? 0;
  for (const column of columns) if (Math.abs(column - place) < Math.abs(nearest - place)) nearest = column;
  return nearest;
}
