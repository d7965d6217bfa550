import type { Grid, Sheet } from '../../../core/rider/grid.ts';
import { limits } from '../limits.ts';
import { type Archive, damaged } from '../open-archive.ts';
import { Unreadable } from '../unreadable.ts';
import type { CellContext } from './cell-text.ts';
import { looseTextParts, readLooseTexts } from './loose-texts.ts';
import { type RawSheet, readSheet } from './read-sheet.ts';
import { readCellFormats, readSharedStrings, readSheetList } from './workbook-parts.ts';

/**
 * Why an own reading of the workbook's XML and not a package for workbooks: a rider needs merged, hidden and
 * formatted cells as they are shown. The small well-kept packages give values only; the large one that knows more
 * had no release for years and unpacks without a limit. What is hard is left to libraries: zip, XML, number formats.
 */
const mainParts =
  /^xl\/(?:workbook\.xml|sharedStrings\.xml|styles\.xml|_rels\/workbook\.xml\.rels|worksheets\/[^/]+\.xml)$/;

export function isWorkbookPart(name: string): boolean {
  return mainParts.test(name) || looseTextParts.test(name);
}

/** The name of the sheet that lists what a workbook holds but does not show, so that it is not lost. */
const notShownName = 'Not shown in the workbook';

/** The name of the sheet that lists what stands beside the cells. */
const looseTextsName = 'Notes and text boxes';

export function readWorkbook(fileName: string, archive: Archive): Grid {
  try {
    return { name: fileName, form: 'xlsx', sheets: sheetsOfWorkbook(fileName, archive) };
  } catch (error) {
    if (error instanceof Unreadable) throw error;
    throw damaged(fileName);
  }
}

function sheetsOfWorkbook(fileName: string, archive: Archive): Sheet[] {
  const workbook = archive.text('xl/workbook.xml');
  const relations = archive.text('xl/_rels/workbook.xml.rels');
  if (!workbook || !relations) throw damaged(fileName);
  const list = readSheetList(workbook, relations);
  const context: CellContext = {
    strings: readSharedStrings(archive.text('xl/sharedStrings.xml')),
    formats: readCellFormats(archive.text('xl/styles.xml')),
    from1904: list.from1904,
  };
  const notShown: string[] = [];
  const sheets = list.sheets.flatMap(({ name, hidden, part }) => {
    const xml = archive.text(part);
    if (!xml) return [];
    const raw = readSheet(xml, context, fileName, name);
    if (!hidden) return [shownSheet(name, raw, notShown)];
    const filled = raw.rows.filter((row) => row.some((cell) => cell !== '')).length;
    if (filled > 0) notShown.push(`Hidden sheet “${name}” with ${filled} lines, not read`);
    return [];
  });
  const loose = readLooseTexts(archive);
  return [...sheets, ...listSheet(looseTextsName, loose), ...listSheet(notShownName, notShown)];
}

function listSheet(name: string, lines: readonly string[]): Sheet[] {
  return lines.length === 0 ? [] : [{ name, rows: lines.map((line) => [line]) }];
}

/** The sheet as it is seen: merged ranges filled, hidden rows and columns left out and named in `notShown`. */
function shownSheet(name: string, raw: RawSheet, notShown: string[]): Sheet {
  fillMerged(raw);
  const hiddenColumns = new Set(
    raw.hiddenColumns.flatMap(({ from, to }) => range(Math.max(from, 0), Math.min(to, limits.columns))),
  );
  const isHiddenColumn = (column: number) => hiddenColumns.has(column);
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

function range(from: number, to: number): number[] {
  return Array.from({ length: Math.max(to - from + 1, 0) }, (_, place) => from + place);
}
