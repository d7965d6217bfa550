import { cellText } from './cell-text.ts';
import type { Part, Sheet } from './sheet.ts';

/** What a print said, row by row, kept to be compared with the next one. */
export type PrintedRow = { key: string; texts: string[] };

export type Mark = 'new' | 'changed';

export type Differences = {
  /** Rows that were not on the last print, or said something else there, by `rowId`. */
  marks: Map<string, Mark>;
  /** Rows of the last print that are gone, as they read there. */
  gone: PrintedRow[];
};

/** Rows are told apart by their table too: one socket may be named in two of them. */
export function rowId(part: Part, partAt: number, rowKey: string): string {
  return `${part.heading ?? partAt}: ${rowKey}`;
}

/** The words of a sheet, row by row: what a reader of the last print has seen. */
export function printedRows(sheet: Sheet): PrintedRow[] {
  return sheet.parts.flatMap((part, at) =>
    rowsOfPart(part).map(({ key, texts }) => ({ key: rowId(part, at, key), texts })),
  );
}

function rowsOfPart(part: Part): PrintedRow[] {
  switch (part.is) {
    case 'table':
      return part.rows.map(({ key, cells }) => ({
        key,
        texts: cells.map((cell, column) => cellText(cell, part.columns[column] ?? plain)),
      }));
    case 'text':
      return part.paragraphs.map((text, place) => ({ key: `${place}`, texts: [text] }));
    case 'labels':
      return part.labels.map(({ key, number, name, below }) => ({ key, texts: [number, name, below] }));
    case 'drawing':
      return part.drawing.shapes.map((shape, place) => ({ key: `${place}`, texts: [JSON.stringify(shape)] }));
  }
}

const plain = { decimals: 0, signed: false };

/** What is new, changed or gone against the last print; nothing where there was none. */
export function compareWithPrint(
  now: readonly PrintedRow[],
  last: readonly PrintedRow[] | null,
): Differences {
  const marks = new Map<string, Mark>();
  if (last === null) return { marks, gone: [] };
  const before = new Map(last.map((row) => [row.key, row]));
  for (const row of now) {
    const old = before.get(row.key);
    if (!old) marks.set(row.key, 'new');
    else if (!sameTexts(old, row)) marks.set(row.key, 'changed');
    before.delete(row.key);
  }
  return { marks, gone: [...before.values()].filter(({ texts }) => texts.some((it) => it !== '')) };
}

function sameTexts(a: PrintedRow, b: PrintedRow): boolean {
  return a.texts.length === b.texts.length && a.texts.every((text, at) => text === b.texts[at]);
}
