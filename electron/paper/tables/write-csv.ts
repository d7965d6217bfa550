import type { Cell, Sheet, TablePart } from '../../../core/sheets/sheet.ts';
import { looksLikeFormula, withPlainSpaces } from './safe-text.ts';

export type CsvFile = { name: string; text: string };

/** Without it a spreadsheet takes UTF-8 for the code page of the machine. */
const byteOrderMark = '\ufeff';
const lineEnd = '\r\n';

/**
 * The tables of a sheet by RFC 4180, with a head line. Tables of the same columns share one file, which then says in
 * its first column which table a row is of; `name` is the heading of a file, empty for the only one.
 */
export function writeCsv(sheet: Sheet): CsvFile[] {
  const tables = sheet.parts.filter((part) => part.is === 'table').filter((part) => part.columns.length > 0);
  const groups = [
    ...Map.groupBy(tables, ({ columns }) => columns.map(({ title }) => title).join('\n')).values(),
  ];
  return groups.map((group) => ({
    name: groups.length === 1 ? '' : group.length > 1 ? 'all' : (group[0]?.heading ?? ''),
    text: byteOrderMark + linesOf(group).join(lineEnd) + lineEnd,
  }));
}

function linesOf(group: readonly TablePart[]): string[] {
  const several = group.length > 1;
  const titles = (group[0]?.columns ?? []).map(({ title }) => quoted(safe(title)));
  const head = several ? [quoted('Table'), ...titles] : titles;
  const rows = group.flatMap((part) =>
    part.rows.map((row) => {
      const cells = row.cells.map(fieldOf);
      return several ? [quoted(safe(part.heading ?? '')), ...cells] : cells;
    }),
  );
  return [head, ...rows].map((fields) => fields.join(','));
}

function fieldOf(cell: Cell): string {
  if (cell === null || cell === false) return '';
  if (cell === true) return 'yes';
  if (typeof cell === 'number') return String(cell);
  return quoted(safe(cell));
}

/** An apostrophe before what would be a formula: a spreadsheet then shows it as the text it is. */
function safe(text: string): string {
  const plain = withPlainSpaces(text);
  return looksLikeFormula(plain) ? `'${plain}` : plain;
}

function quoted(text: string): string {
  return /[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}
