import type { Cell, Column } from './sheet.ts';

/** U+2212: as wide as a plus sign and a digit, so that columns of levels stand in line. */
const minus = '−';

/** A number as it is printed: its decimals always, a true minus, a plus where the column wants one. */
export function numberText(value: number, decimals = 0, signed = false): string {
  const digits = Math.abs(value).toFixed(decimals);
  const isZero = Number(digits) === 0;
  if (value < 0 && !isZero) return minus + digits;
  return signed && !isZero ? `+${digits}` : digits;
}

/** A level in dB as it is printed, for example "−6 dB" or "−4.5 dB". */
export function levelText(levelDb: number): string {
  return `${shortLevel(levelDb)} dB`;
}

/** A level without its unit: a digit behind the point only where it is needed. */
export function shortLevel(levelDb: number): string {
  const rounded = Math.round(levelDb * 10) / 10;
  return numberText(rounded, Number.isInteger(rounded) ? 0 : 1);
}

/** What a cell says in words: on paper, and where two prints are compared. A box to tick says nothing. */
export function cellText(cell: Cell, column: Pick<Column, 'decimals' | 'signed'>): string {
  if (cell === null || cell === false) return '';
  if (cell === true) return 'done';
  if (typeof cell === 'number') return numberText(cell, column.decimals, column.signed);
  return cell;
}

/** Minutes from midnight as a time of day; a set past midnight is told by its "+1". */
export function clockText(minute: number | null): string {
  if (minute === null) return '';
  const two = (value: number) => String(value).padStart(2, '0');
  const time = `${two(Math.floor(minute / 60) % 24)}:${two(minute % 60)}`;
  return minute >= 1440 ? `${time} +1` : time;
}

export function spanText(startMinute: number | null, endMinute: number | null): string {
  if (startMinute === null && endMinute === null) return '';
  return `${clockText(startMinute) || '?'} to ${clockText(endMinute) || '?'}`;
}
