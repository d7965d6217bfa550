import { limits } from '../limits.ts';
import { tooMuch } from '../unreadable.ts';
import { walkXml } from '../walk-xml.ts';
import { type CellContext, type RawCell, textOfCell } from './cell-text.ts';
import { isTrue } from './workbook-parts.ts';

type Range = { top: number; left: number; bottom: number; right: number };

/** A sheet as it stands in the file: rows and columns from 0, hidden ones named, merged ranges not yet filled. */
export type RawSheet = {
  rows: string[][];
  hiddenRows: Set<number>;
  hiddenColumns: { from: number; to: number }[];
  merged: Range[];
};

/** Reads the cells of one sheet. `sheetName` and `fileName` are for the sentence where it holds too much. */
export function readSheet(xml: string, context: CellContext, fileName: string, sheetName: string): RawSheet {
  const reader = new SheetReader(context, `the sheet “${sheetName}” of “${fileName}”`);
  walkXml(xml, reader);
  for (let at = 0; at < reader.sheet.rows.length; at += 1) reader.sheet.rows[at] ??= [];
  return reader.sheet;
}

type Attribute = (name: string) => string | undefined;

/** The parts of a cell by the element that holds them. */
const cellParts: Record<string, 'value' | 'inline' | 'formula'> = { v: 'value', t: 'inline', f: 'formula' };

class SheetReader {
  readonly sheet: RawSheet = { rows: [], hiddenRows: new Set(), hiddenColumns: [], merged: [] };
  readonly #context: CellContext;
  readonly #where: string;
  #row = -1;
  #column = -1;
  #cell: RawCell | null = null;
  #into: 'value' | 'inline' | 'formula' | null = null;
  #filled = 0;

  readonly #opens: Record<string, (attribute: Attribute) => void> = {
    row: (attribute) => {
      this.#row = Number(attribute('r') ?? this.#row + 2) - 1;
      this.#column = -1;
      if (isTrue(attribute('hidden'))) this.sheet.hiddenRows.add(this.#row);
    },
    c: (attribute) => {
      this.#column = columnOf(attribute('r')) ?? this.#column + 1;
      const style = Number(attribute('s') ?? 0);
      this.#cell = { type: attribute('t') ?? 'n', style, value: '', inline: '', formula: null };
    },
    col: (attribute) => {
      if (!isTrue(attribute('hidden'))) return;
      const [from, to] = [Number(attribute('min')) - 1, Number(attribute('max')) - 1];
      // A sheet names each of its columns once at most; more than there can be are no columns.
      if (this.sheet.hiddenColumns.length < limits.columns) this.sheet.hiddenColumns.push({ from, to });
    },
    mergeCell: (attribute) => {
      const range = rangeOf(attribute('ref') ?? '');
      if (!range) return;
      this.sheet.merged.push(range);
      if (this.sheet.merged.length > limits.rows)
        throw tooMuch(`There are more than ${limits.rows} merged ranges in ${this.#where}.`);
    },
  };

  constructor(context: CellContext, where: string) {
    this.#context = context;
    this.#where = where;
  }

  open(name: string, attribute: Attribute): void {
    this.#opens[name]?.(attribute);
    this.#into = cellParts[name] ?? this.#into;
    if (name === 'f' && this.#cell) this.#cell.formula = '';
  }

  text(text: string): void {
    if (this.#cell && this.#into) this.#cell[this.#into] = (this.#cell[this.#into] ?? '') + text;
  }

  close(name: string): void {
    if (cellParts[name]) this.#into = null;
    if (name !== 'c' || !this.#cell) return;
    this.#put(textOfCell(this.#cell, this.#context));
    this.#cell = null;
  }

  #put(text: string): void {
    if (text.trim() === '') return;
    this.#filled += 1;
    const { rows, columns, cells } = limits;
    if (this.#row >= rows || this.#column >= columns || this.#filled > cells)
      throw tooMuch(
        `There is a cell in row ${this.#row + 1}, column ${this.#column + 1} of ${this.#where}; up to ${rows} rows, ${columns} columns and ${cells} filled cells are read.`,
      );
    const row = this.sheet.rows[this.#row] ?? [];
    this.sheet.rows[this.#row] = row;
    while (row.length < this.#column) row.push('');
    row[this.#column] = text;
  }
}

/** "C7" to 2; null where the reference is missing. */
function columnOf(reference: string | undefined): number | null {
  const letters = /^[A-Z]{1,3}/.exec(reference ?? '')?.[0];
  if (!letters) return null;
  return [...letters].reduce((sum, letter) => sum * 26 + letter.charCodeAt(0) - 64, 0) - 1;
}

function rangeOf(reference: string): Range | null {
  const match = /^([A-Z]{1,3})(\d+):([A-Z]{1,3})(\d+)$/.exec(reference);
  if (!match) return null;
  const [, left, top, right, bottom] = match;
  return {
    left: columnOf(left) ?? 0,
    top: Number(top) - 1,
    right: columnOf(right) ?? 0,
    bottom: Number(bottom) - 1,
  };
}
