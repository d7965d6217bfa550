import { format, getFormatFromId, isDateFormat } from 'numfmt';
import { cleanText } from '../decode-text.ts';

/** A cell as its XML gives it, before it is text. */
export type RawCell = { type: string; style: number; value: string; inline: string; formula: string | null };

export type CellContext = { strings: string[]; formats: (string | number)[]; from1904: boolean };

/** Days between the two dates that a workbook may count from (ECMA-376 part 1, 18.17.4.1). */
const daysTo1904 = 1462;

/**
 * What a person sees in the cell. A formula is shown as its last value, as the program that saved the file left
 * it; where it has none, as its own text. It is never run.
 */
export function textOfCell(cell: RawCell, context: CellContext): string {
  if (cell.type === 'inlineStr') return cleanText(cell.inline);
  if (cell.value === '') return cell.formula === null ? '' : cleanText(`=${cell.formula}`);
  if (cell.type === 's') return cleanText(context.strings[Number(cell.value)] ?? '');
  if (cell.type === 'b') return cell.value === '1' ? 'TRUE' : 'FALSE';
  if (cell.type === 'str' || cell.type === 'e' || cell.type === 'd') return cleanText(cell.value);
  return textOfNumber(cell.value, context.formats[cell.style] ?? 0, context.from1904);
}

function textOfNumber(written: string, formatOfCell: string | number, from1904: boolean): string {
  const number = Number(written);
  if (!Number.isFinite(number)) return cleanText(written);
  const code = typeof formatOfCell === 'number' ? (getFormatFromId(formatOfCell) ?? 'General') : formatOfCell;
  try {
    const shift = from1904 && isDateFormat(code) ? daysTo1904 : 0;
    return format(code, number + shift).trim();
  } catch {
    // A format that is broken hides no number.
    return written;
  }
}
