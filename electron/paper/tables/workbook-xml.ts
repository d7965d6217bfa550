import type { Paper } from '../../../core/sheets/paper-request.ts';
import { withoutControls } from './safe-text.ts';

/** The parts of a workbook by ECMA-376 (Office Open XML), as far as tables of text and numbers need them. */

export type StyledCell = { value: string | number | null; style: number };

export type Worksheet = {
  name: string;
  /** The first row is the head: it stays in view, carries the filters and is printed on every page. */
  rows: StyledCell[][];
  /** Widths in characters. */
  widths: number[];
  landscape: boolean;
  paper: Paper;
  header: string;
  footer: string;
  filtered: boolean;
};

/** Numbers of paper sizes by ECMA-376, part 1, 18.3.1.63. */
const paperNumbers: Record<Paper, number> = { Letter: 1, A3: 8, A4: 9 };

function escapeXml(text: string): string {
  return withoutControls(text)
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;')
    .replaceAll('"', '&quot;');
}

const declaration = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n';
const mainNames = 'xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"';
const relNames = 'xmlns:r="http://schemas.openxmlformats.org/officeDocument/2006/relationships"';
const relType = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships';
const partType = 'application/vnd.openxmlformats-officedocument.spreadsheetml';

/** "A" for 0, "AB" for 27. */
function columnName(at: number): string {
  const before = Math.floor(at / 26) - 1;
  return (before >= 0 ? columnName(before) : '') + String.fromCharCode(65 + (at % 26));
}

const cellName = (row: number, column: number) => `${columnName(column)}${row + 1}`;

export function worksheetXml(sheet: Worksheet): string {
  const { rows, widths } = sheet;
  const last = cellName(Math.max(0, rows.length - 1), Math.max(0, widths.length - 1));
  const columns = widths
    .map((width, at) => `<col min="${at + 1}" max="${at + 1}" width="${width}" customWidth="1"/>`)
    .join('');
  const filter = sheet.filtered ? `<autoFilter ref="A1:${last}"/>` : '';
  return [
    declaration,
    `<worksheet ${mainNames} ${relNames}>`,
    '<sheetPr><pageSetUpPr fitToPage="1"/></sheetPr>',
    `<dimension ref="A1:${last}"/>`,
    '<sheetViews><sheetView workbookViewId="0">',
    '<pane ySplit="1" topLeftCell="A2" activePane="bottomLeft" state="frozen"/>',
    '</sheetView></sheetViews>',
    `<cols>${columns}</cols>`,
    `<sheetData>${rows.map(rowXml).join('')}</sheetData>`,
    filter,
    '<pageMargins left="0.5" right="0.4" top="0.75" bottom="0.75" header="0.3" footer="0.3"/>',
    `<pageSetup paperSize="${paperNumbers[sheet.paper]}" orientation="${sheet.landscape ? 'landscape' : 'portrait'}" fitToWidth="1" fitToHeight="0"/>`,
    `<headerFooter><oddHeader>${headerText('L', sheet.header)}</oddHeader>`,
    `<oddFooter>${headerText('L', sheet.footer)}&amp;RPage &amp;P of &amp;N</oddFooter></headerFooter>`,
    '</worksheet>',
  ].join('');
}

/** In a header "&" begins a code, so one that is meant is doubled. A digit after a code would be taken for a size. */
function headerText(side: 'L' | 'R', text: string): string {
  return `&amp;${side} ${escapeXml(text.replaceAll('&', '&&')).slice(0, 200)}`;
}

function rowXml(cells: readonly StyledCell[], at: number): string {
  return `<row r="${at + 1}">${cells.map((cell, column) => cellXml(cell, cellName(at, column))).join('')}</row>`;
}

/** Text stands in the cell as text, so that no program can take it for a formula. */
function cellXml({ value, style }: StyledCell, name: string): string {
  if (value === null || value === '') return `<c r="${name}" s="${style}"/>`;
  if (typeof value === 'number') return `<c r="${name}" s="${style}"><v>${value}</v></c>`;
  return `<c r="${name}" s="${style}" t="inlineStr"><is><t xml:space="preserve">${escapeXml(value)}</t></is></c>`;
}

export function workbookXml(sheets: readonly Worksheet[]): string {
  const list = sheets.map(
    ({ name }, at) => `<sheet name="${escapeXml(name)}" sheetId="${at + 1}" r:id="rId${at + 1}"/>`,
  );
  const names = sheets.flatMap(({ name, rows, widths, filtered }, at) => {
    const quotedName = escapeXml(`'${name.replaceAll("'", "''")}'`);
    const last = `$${columnName(Math.max(0, widths.length - 1))}$${Math.max(1, rows.length)}`;
    const defined = (what: string, area: string, more = '') =>
      `<definedName name="_xlnm.${what}" localSheetId="${at}"${more}>${quotedName}!${area}</definedName>`;
    return [
      filtered ? defined('_FilterDatabase', `$A$1:${last}`, ' hidden="1"') : '',
      defined('Print_Area', `$A$1:${last}`),
      defined('Print_Titles', '$1:$1'),
    ];
  });
  return [
    declaration,
    `<workbook ${mainNames} ${relNames}>`,
    `<sheets>${list.join('')}</sheets><definedNames>${names.join('')}</definedNames></workbook>`,
  ].join('');
}

export function relationsXml(entries: readonly { type: string; target: string }[]): string {
  const list = entries.map(
    ({ type, target }, at) =>
      `<Relationship Id="rId${at + 1}" Type="${relType}/${type}" Target="${target}"/>`,
  );
  return `${declaration}<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships">${list.join('')}</Relationships>`;
}

export function contentTypesXml(sheetCount: number): string {
  const parts = [
    `<Override PartName="/xl/workbook.xml" ContentType="${partType}.sheet.main+xml"/>`,
    `<Override PartName="/xl/styles.xml" ContentType="${partType}.styles+xml"/>`,
    ...Array.from(
      { length: sheetCount },
      (_, at) =>
        `<Override PartName="/xl/worksheets/sheet${at + 1}.xml" ContentType="${partType}.worksheet+xml"/>`,
    ),
  ];
  return [
    declaration,
    '<Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types">',
    '<Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/>',
    '<Default Extension="xml" ContentType="application/xml"/>',
    `${parts.join('')}</Types>`,
  ].join('');
}

/** How a cell looks: its number in the list is its style in `StyledCell`. */
export type CellLook = {
  bold: boolean;
  filled: boolean;
  format: string | null;
  align: string;
  quotePrefix: boolean;
};

export function stylesXml(looks: readonly CellLook[]): string {
  const formats = [...new Set(looks.flatMap(({ format }) => format ?? []))];
  const formatId = (format: string | null) => (format === null ? 0 : 164 + formats.indexOf(format));
  const list = looks.map(
    ({ bold, filled, format, align, quotePrefix }) =>
      `<xf numFmtId="${formatId(format)}" fontId="${bold ? 1 : 0}" fillId="${filled ? 2 : 0}" borderId="1" xfId="0" ` +
      `applyNumberFormat="1" applyFont="1" applyFill="1" applyBorder="1" applyAlignment="1"${quotePrefix ? ' quotePrefix="1"' : ''}>` +
      `<alignment horizontal="${align}" vertical="top" wrapText="1"/></xf>`,
  );
  const side = (name: string) => `<${name} style="thin"><color rgb="FF9A9A9A"/></${name}>`;
  return [
    declaration,
    `<styleSheet ${mainNames}>`,
    `<numFmts count="${formats.length}">${formats.map((format, at) => `<numFmt numFmtId="${164 + at}" formatCode="${escapeXml(format)}"/>`).join('')}</numFmts>`,
    '<fonts count="2"><font><sz val="10"/><name val="Arial"/></font><font><b/><sz val="10"/><name val="Arial"/></font></fonts>',
    '<fills count="3"><fill><patternFill patternType="none"/></fill><fill><patternFill patternType="gray125"/></fill>',
    '<fill><patternFill patternType="solid"><fgColor rgb="FFE4E4E4"/><bgColor indexed="64"/></patternFill></fill></fills>',
    `<borders count="2"><border><left/><right/><top/><bottom/><diagonal/></border><border>${['left', 'right', 'top', 'bottom'].map(side).join('')}<diagonal/></border></borders>`,
    '<cellStyleXfs count="1"><xf numFmtId="0" fontId="0" fillId="0" borderId="0"/></cellStyleXfs>',
    `<cellXfs count="${list.length}">${list.join('')}</cellXfs>`,
    '<cellStyles count="1"><cellStyle name="Normal" xfId="0" builtinId="0"/></cellStyles></styleSheet>',
  ].join('');
}
