import { findHits } from '../language/lexicon.ts';
import { readSourceName } from '../language/source-name.ts';
import { listed, tidy, tokenize } from '../language/text.ts';
import { wishWords } from '../language/vocabulary.ts';
import { type FoundMix, foundMix, isFull, type MatrixCell, mostMixes, note } from '../page/draft.ts';
import type { Line } from '../page/lines.ts';
import type { Walk } from '../page/walk-state.ts';
import { readMixCell } from './mix-line.ts';
import { leadingLabel } from './mix-pieces.ts';
import { type SendsHead, type SendsRow, type SendsTable, sendsTableAt } from './sends-grid.ts';

/** Takes a table of amounts that opens at the line of the walk; the number of lines taken, 0 where there is none. */
export function takeSendsTable(walk: Walk, line: Line): number {
  if (walk.section !== 'mixes' && walk.found.inputs.length === 0) return 0;
  const table = sendsTableAt(walk, line);
  if (!table) return 0;
  const named = (texts: readonly string[]) =>
    texts.filter((text) => namesSource(text, walk)).length / texts.length;
  const down = named(table.rows.filter((row) => row.holds === 'amounts').map((row) => row.label));
  const along = named(table.heads.filter((head) => head.holds === 'amounts').map((head) => head.text));
  if (Math.max(down, along) < 0.5) return 0;
  const isDown = down >= along;
  // What stands in a column of words beside sources is told of the sources, not of who listens.
  if (isDown && table.heads.some((head) => head.holds !== 'amounts')) return 0;
  for (const at of table.headLines) note(walk.found, at, 'set aside', 'The headings of a table.');
  if (isDown) pushColumns(walk, line, table);
  else for (const row of table.rows) pushRow(walk, table.heads, row);
  for (const row of table.rows) note(walk.found, row.line.at, 'understood', 'How much each listener wants.');
  walk.section = 'mixes';
  walk.blocks = [];
  return table.taken;
}

/** A source, a group of them, or a player whose sources are meant. */
function namesSource(text: string, walk: Walk): boolean {
  if (readSourceName(text, walk.tongue).stem !== null) return true;
  return findHits(wishWords, tokenize(text), walk.tongue.spoken, walk.tongue.names).some((hit) =>
    hit.senses.some((sense) => sense.subject === 'group' || sense.subject === 'source'),
  );
}

function pushColumns(walk: Walk, line: Line, { heads, rows }: SendsTable): void {
  for (const head of heads) {
    const cells = rows.flatMap((row) => {
      const cell = row.cells.find((it) => it.column === head.column);
      return cell ? [{ row, text: cell.text }] : [];
    });
    const told = (holds: SendsRow['holds']) => cells.filter(({ row }) => row.holds === holds);
    push(walk, line, {
      part: head.column,
      text: head.text,
      devices: told('device').map(({ text }) => text),
      place: told('place')
        .map(({ text }) => text)
        .join(', '),
      matrix: told('amounts').map(({ row, text }) => ({
        column: row.line.at.row,
        heading: row.label,
        text,
        numbers: row.numbers,
      })),
      extra: cells.map(({ row }) => row.line.at),
    });
  }
}

function pushRow(walk: Walk, heads: readonly SendsHead[], row: SendsRow): void {
  const cells = row.cells.flatMap((cell) => {
    const head = heads.find((it) => it.column === cell.column);
    return head ? [{ ...cell, head }] : [];
  });
  const told = (holds: SendsHead['holds']) => cells.filter(({ head }) => head.holds === holds);
  push(walk, row.line, {
    part: row.line.part,
    text: row.numbers.length > 0 ? `Mix ${row.numbers[0]}: ${row.label}` : row.label,
    devices: told('device').map(({ text }) => text),
    place: told('place')
      .map(({ text }) => text)
      .join(', '),
    matrix: told('amounts').map(({ column, text, head }) => ({
      column,
      heading: head.text,
      text,
      numbers: [],
    })),
    extra: [],
  });
}

type Told = {
  part: number;
  /** Who listens, with a number or a device where the heading tells them. */
  text: string;
  devices: readonly string[];
  place: string;
  matrix: MatrixCell[];
  extra: NonNullable<FoundMix['extra']>;
};

function push(walk: Walk, line: Line, { part, text, devices, place, matrix, extra }: Told): void {
  if (isFull(walk.found, line.at, walk.found.mixes, mostMixes)) return;
  const label = leadingLabel(text, walk);
  const told = readMixCell(label?.rest ?? text, walk);
  walk.found.mixes.push(
    foundMix(line.at, {
      part,
      number: label?.numbers[0] ?? null,
      label: label?.label ?? tidy(text),
      listenerText: told.listener || (label ? '' : told.device === '' ? tidy(text) : ''),
      deviceText: listed(...devices, told.device),
      place: place || told.place,
      notes: told.role === '' ? [] : [told.role],
      matrix,
      extra,
      inTable: true,
    }),
  );
}
