import { strToU8, zipSync } from 'fflate';
import { cellText } from '../../../core/sheets/cell-text.ts';
import type { Paper } from '../../../core/sheets/paper-request.ts';
import type { Cell, Column, Row, Sheet, TablePart } from '../../../core/sheets/sheet.ts';
import { looksLikeFormula, withPlainSpaces } from './safe-text.ts';
import {
  type CellLook,
  contentTypesXml,
  relationsXml,
  type StyledCell,
  stylesXml,
  type Worksheet,
  workbookXml,
  worksheetXml,
} from './workbook-xml.ts';

/** A sheet with the words that say which version it is. */
export type VersionedSheet = { sheet: Sheet; version: string };

/** A workbook with a worksheet for every table, and one at the end with all that is no table. */
export function writeXlsx(sheets: readonly VersionedSheet[], paper: Paper): Uint8Array {
  const styles = new Styles();
  const names = new SheetNames(new Set(sheets.map(({ sheet }) => sheet.subject)).size > 1);
  const worksheets = sheets.flatMap((versioned) => [
    ...tablesOf(versioned.sheet).map((part) => worksheetOf(versioned, part, paper, styles, names)),
  ]);
  worksheets.push(aboutSheet(sheets, paper, styles, names));
  return zipSync(partsOf(worksheets, styles), { level: 6, mtime: zipTime });
}

/** The same sheets give the same bytes: a zip file would otherwise hold the time it was made. */
const zipTime = new Date(2000, 0, 1);

function tablesOf({ parts }: Sheet): TablePart[] {
  return parts.filter((part) => part.is === 'table').filter(({ columns }) => columns.length > 0);
}

function partsOf(worksheets: readonly Worksheet[], styles: Styles): Record<string, Uint8Array> {
  const text: Record<string, string> = {
    '[Content_Types].xml': contentTypesXml(worksheets.length),
    '_rels/.rels': relationsXml([{ type: 'officeDocument', target: 'xl/workbook.xml' }]),
    'xl/workbook.xml': workbookXml(worksheets),
    'xl/_rels/workbook.xml.rels': relationsXml([
      ...worksheets.map((_, at) => ({ type: 'worksheet', target: `worksheets/sheet${at + 1}.xml` })),
      { type: 'styles', target: 'styles.xml' },
    ]),
    'xl/styles.xml': stylesXml(styles.looks),
  };
  worksheets.forEach((sheet, at) => {
    text[`xl/worksheets/sheet${at + 1}.xml`] = worksheetXml(sheet);
  });
  return Object.fromEntries(Object.entries(text).map(([name, xml]) => [name, strToU8(xml)]));
}

function worksheetOf(
  { sheet, version }: VersionedSheet,
  part: TablePart,
  paper: Paper,
  styles: Styles,
  names: SheetNames,
): Worksheet {
  const head = part.columns.map(({ title }) => ({
    value: withPlainSpaces(title),
    style: styles.of({ bold: true, filled: true }),
  }));
  const body = part.rows.map((row) =>
    part.columns.map((column, at) => styledCell(row, column, row.cells[at] ?? null, styles)),
  );
  const widths = part.columns.map((column, at) => widthOf(column, part.rows, at));
  const heading = part.heading === null ? '' : `, ${part.heading}`;
  return {
    name: names.take(part.heading ?? sheet.title, sheet.subject),
    rows: [head, ...body],
    widths,
    landscape: widths.reduce((sum, it) => sum + it, 0) > uprightCharacters,
    paper: sheet.page.paper ?? paper,
    header: `${sheet.subject}: ${sheet.title}${heading}`,
    footer: version,
    filtered: part.rows.length > 0,
  };
}

function styledCell({ look }: Row, column: Column, cell: Cell, styles: Styles): StyledCell {
  const value = spoken(cell);
  return {
    value,
    style: styles.of({
      bold: look === 'strong' || look === 'group',
      filled: look === 'group',
      format: typeof value === 'number' ? numberFormat(column) : typeof value === 'string' ? '@' : null,
      align: column.align === 'centre' ? 'center' : column.align,
      quotePrefix: typeof value === 'string' && looksLikeFormula(value),
    }),
  };
}

function spoken(cell: Cell): string | number | null {
  if (typeof cell === 'boolean') return cell ? 'yes' : null;
  return typeof cell === 'string' ? withPlainSpaces(cell) : cell;
}

function numberFormat({ decimals, signed }: Column): string {
  const digits = decimals > 0 ? `0.${'0'.repeat(decimals)}` : '0';
  return signed ? `+${digits};-${digits};${digits}` : digits;
}

const widestColumn = 60;
/** More do not fit across an upright page in a legible size. */
const uprightCharacters = 95;

function widthOf(column: Column, rows: readonly Row[], at: number): number {
  const lengths = rows.map((row) => cellText(row.cells[at] ?? null, column).length);
  return Math.min(widestColumn, Math.max(6, column.title.length + 4, ...lengths.map((it) => it + 2)));
}

/** What is no table: facts, cautions and texts of all sheets, so that a workbook holds what the paper holds. */
function aboutSheet(
  sheets: readonly VersionedSheet[],
  paper: Paper,
  styles: Styles,
  names: SheetNames,
): Worksheet {
  const told = sheets.flatMap(({ sheet, version }) => {
    const name = `${sheet.subject}: ${sheet.title}`;
    const texts = sheet.parts.flatMap((part) => (part.is === 'text' ? part.paragraphs : []));
    return [
      [name, 'Version', version],
      ...sheet.facts.map(({ label, value }) => [name, label, value]),
      ...sheet.cautions.map((caution) => [name, 'Caution', caution]),
      ...texts.map((text) => [name, 'Text', text]),
    ];
  });
  const plain = (value: string) => ({
    value,
    style: styles.of({ format: '@', quotePrefix: looksLikeFormula(value) }),
  });
  const heads = ['Sheet', 'What', 'Says'].map((value) => ({
    value,
    style: styles.of({ bold: true, filled: true }),
  }));
  return {
    name: names.take('About these sheets', null),
    rows: [heads, ...told.map((row) => row.map(plain))],
    widths: [36, 14, 90],
    landscape: true,
    paper,
    header: 'About these sheets',
    footer: '',
    filtered: true,
  };
}

class Styles {
  readonly looks: CellLook[] = [];
  readonly #known = new Map<string, number>();

  constructor() {
    // The first style is that of every cell without one.
    this.of({});
  }

  of({
    bold = false,
    filled = false,
    format = null,
    align = 'left',
    quotePrefix = false,
  }: Partial<CellLook>): number {
    const look = { bold, filled, format, align, quotePrefix };
    const key = JSON.stringify(look);
    const known = this.#known.get(key);
    if (known !== undefined) return known;
    this.#known.set(key, this.looks.length);
    return this.looks.push(look) - 1;
  }
}

/** Names of worksheets: at most 31 characters, some signs not allowed, no two alike. */
class SheetNames {
  readonly #withSubjects: boolean;
  readonly #taken = new Set<string>();

  /** `withSubjects`: the sheets tell of several acts, so each name says of which. */
  constructor(withSubjects: boolean) {
    this.#withSubjects = withSubjects;
  }

  take(title: string, subject: string | null): string {
    const wanted = this.#withSubjects && subject !== null ? `${subject} ${title}` : title;
    const clean = wanted
      .replace(/[[\]:*?/\\\p{Cc}]/gu, ' ')
      .replace(/\s+/g, ' ')
      .trim()
      .replace(/^'+|'+$/g, '');
    const base = clean === '' ? 'Sheet' : clean;
    for (let number = 1; ; number++) {
      const tail = number === 1 ? '' : ` ${number}`;
      const name =
        base
          .slice(0, 31 - tail.length)
          .trimEnd()
          .toWellFormed() + tail;
      const key = name.toLowerCase();
      if (this.#taken.has(key)) continue;
      this.#taken.add(key);
      return name;
    }
  }
}
