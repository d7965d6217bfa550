import type { Grid, Sheet } from '../../../core/rider/grid.ts';
import { type Archive, damaged } from '../open-archive.ts';
import { Unreadable } from '../unreadable.ts';
import type { CellContext } from './cell-text.ts';
import { type RawSheet, readSheet } from './read-sheet.ts';
import { readCellFormats, readSharedStrings, readSheetList } from './workbook-parts.ts';

/**
 * Why an own reading of the workbook's XML and not a package for workbooks: a rider needs merged, hidden and
 * formatted cells as they are shown. The small well-kept packages give values only; the large one that knows more
 * had no release for years and unpacks without a limit. What is hard is left to libraries: zip, XML, number formats.
 */
export const workbookParts =
  /^(?:xl\/(?:workbook|sharedStrings|styles)\.xml|xl\/_rels\/workbook\.xml\.rels|xl\/worksheets\/[^/]+\.xml)$/;

/** The name of the sheet that lists what a workbook holds but does not show, so that it is not lost. */
export const notShownName = 'Not shown in the workbook';

export function readWorkbook(fileName: string, archive: Archive): Grid {
  const notShown: string[] = [];
  const sheets: Sheet[] = [];
  try {
    const workbook = archive.text('xl/workbook.xml');
    const relations = archive.text('xl/_rels/workbook.xml.rels');
    if (!workbook || !relations) throw damaged(fileName);
    const list = readSheetList(workbook, relations);
    const context: CellContext = {
      strings: readSharedStrings(archive.text('xl/sharedStrings.xml')),
      formats: readCellFormats(archive.text('xl/styles.xml')),
      from1904: list.from1904,
    };
    for (const { name, hidden, part } of list.sheets) {
      const xml = archive.text(part);
      if (!xml) continue;
      const raw = readSheet(xml, context, fileName, name);
      const filled = raw.rows.filter((row) => row.some((cell) => cell !== '')).length;
      if (hidden && filled > 0) notShown.push(`Hidden sheet “${name}” with ${filled} lines, not read`);
      if (!hidden) sheets.push(shownSheet(name, raw, notShown));
    }
  } catch (error) {
    if (error instanceof Unreadable) throw error;
    throw damaged(fileName);
  }
  if (notShown.length > 0) sheets.push({ name: notShownName, rows: notShown.map((line) => [line]) });
  return { name: fileName, form: 'xlsx', sheets };
}

/** The sheet as it is seen: merged ranges filled, hidden rows and columns left out and named in `notShown`. */
function shownSheet(name: string, raw: RawSheet, notShown: string[]): Sheet {
  fillMerged(raw);
  const isHiddenColumn = (column: number) =>
    raw.hiddenColumns.some(({ from, to }) => column >= from && column <= to);
  const width = Math.max(0, ...raw.rows.map((row) => row.length));
  for (let column = 0; column < width; column += 1) {
    const cells = raw.rows.map((row) => row[column] ?? '').filter((cell) => cell !== '');
    if (isHiddenColumn(column) && cells.length > 0)
      notShown.push(
        `Hidden column “${cells[0]}” of the sheet “${name}” with ${cells.length} cells, not read`,
      );
  }
  const rows = raw.rows.map((row, place) => {
    const cells = row.filter((_, column) => !isHiddenColumn(column));
    if (!raw.hiddenRows.has(place)) return cells;
    const words = cells.filter((cell) => cell !== '').join(', ');
    if (words) notShown.push(`Hidden row ${place + 1} of the sheet “${name}”, not read: ${words}`);
    return [];
  });
  return { name: name.slice(0, 200), rows };
}

/**
 * A cell merged over several rows holds for each of them (one performer beside six lines of drums), so its text is
 * repeated downwards. Across columns it is a heading and stays where it is.
 */
function fillMerged({ rows, merged }: RawSheet): void {
  for (const { top, left, bottom } of merged) {
    const text = rows[top]?.[left] ?? '';
    if (text === '') continue;
    for (const row of rows.slice(top + 1, bottom + 1)) {
      while (row.length <= left) row.push('');
      row[left] = text;
    }
  }
}
