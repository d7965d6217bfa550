import type { Feed } from '../../core/derive/derived.ts';
import { type Amount, amounts } from '../../core/show/words.ts';
import { parseNumber } from '../parts/format.ts';
import { words } from '../wording/words.ts';

/** What was typed into a cell of the mixes, understood; or the sentence that says why it was not. */
export type TypedCell =
  | { of: 'amount'; amount: Amount }
  | { of: 'level'; levelDb: number }
  | { of: 'nothing' }
  | { of: 'refused'; why: string };

export const lowestDb = -120;
const say = words.mixes.typed;

/** Reads an amount word or its beginning ("lo", "lots"), a number of dB ("-6", "−6 dB"), "off", or an empty text. */
export function readTypedCell(text: string): TypedCell {
  const typed = text.trim().toLowerCase().replace('−', '-');
  if (typed === '') return { of: 'nothing' };
  if (typed === 'off') return { of: 'amount', amount: 'none' };
  const word = amounts.filter((amount) => amount.startsWith(typed));
  if (word.length === 1 && word[0]) return { of: 'amount', amount: word[0] };
  if (word.length > 1) return { of: 'refused', why: say.manyWords(text.trim(), word) };
  const levelDb = parseNumber(typed.replace(/\s*db$/, ''));
  if (levelDb === null)
    return {
      of: 'refused',
      why: say.noLevel(text.trim()),
    };
  if (levelDb > 0)
    return {
      of: 'refused',
      why: say.aboveUnity(text.trim()),
    };
  if (levelDb < lowestDb) return { of: 'refused', why: say.tooLow(text.trim(), lowestDb) };
  return { of: 'level', levelDb };
}

/** A cell as a spreadsheet takes it and as `readTypedCell` reads it back: a word, a plain number, or nothing. */
export function cellForSpreadsheet(feed: Feed | undefined): string {
  if (!feed) return '';
  if (feed.amount !== null && !feed.decided) return feed.amount;
  return feed.levelDb === null ? '' : `${Math.round(feed.levelDb * 10) / 10}`;
}

/** Rows of cells as tab-separated text. Cells of this table hold no tabs or line ends. */
export const toTabbedText = (rows: readonly (readonly string[])[]): string =>
  rows.map((row) => row.join('\t')).join('\n');

/**
 * The cells of tab-separated text from a spreadsheet. A cell in quotes may hold tabs, line ends and doubled quotes;
 * the last line end that spreadsheets add is no row.
 */
export function fromTabbedText(text: string): string[][] {
  const rows: string[][] = [[]];
  // A cell in quotes, or one without; then what ends it.
  for (const [, quoted, plain = '', end] of text.matchAll(
    /(?:"((?:[^"]|"")*)"(?=[\t\r\n]|$)|([^\t\r\n]*))(\t|\r\n?|\n|$)/g,
  )) {
    rows.at(-1)?.push(quoted === undefined ? plain : quoted.replaceAll('""', '"'));
    if (end === '') break;
    if (end !== '\t') rows.push([]);
  }
  const last = rows.at(-1);
  if (rows.length > 1 && last?.length === 1 && last[0] === '') rows.pop();
  return rows;
}
