/** Numbers of lines as riders write them. */

/** More lines than this in one cell is no stereo pair but a slip of the pen or a date. */
const widestRange = 24;

const prefix =
  /^\s*(?:ch(?:annel|an|\.)?|kanal|kan\.?|can(?:al|ale)?\.?|kanaal|tranche|voie|input|inp?\.?|line|n[°ºo]\.?|nr\.?|#)?\s*[.:#]?\s*/i;

/**
 * The channel numbers of a cell: "7", "07.", "Ch 7", "13/14", "9+10", "13-14", "1, 2". Empty where the cell is no
 * channel number.
 */
export function channelNumbers(text: string): number[] {
  const body = text
    .replace(prefix, '')
    .trim()
    .replace(/[.):]+$/, '')
    .replace(/^\(|\)$/g, '');
  const range = /^(\d{1,3})\s*(?:[-–—]|to|bis|à|a|al|t\/m|\.\.\.?|…)\s*(\d{1,3})$/i.exec(body);
  if (range) return numbersFromTo(Number(range[1]), Number(range[2]));
  const list = /^\d{1,3}(?:\s*(?:[/+&,\\|]|und|and|et|y|e|en)\s*\d{1,3})*$/i.exec(body);
  if (!list) return [];
  const numbers = (body.match(/\d+/g) ?? []).map(Number);
  return numbers.length <= widestRange ? numbers : [];
}

function numbersFromTo(from: number, to: number): number[] {
  if (to <= from || to - from >= widestRange) return [];
  return Array.from({ length: to - from + 1 }, (_, step) => from + step);
}

export type NumberedText = {
  numbers: number[];
  rest: string;
  /** A mark after the number ("1.", "1)", "Ch 1:") says that it counts lines and not things. */
  marked: boolean;
};

/** A line of text that begins with a channel number: "1. Kick", "Ch 1: Kick", "13/14 Keys L/R". */
export function numberedText(text: string): NumberedText | null {
  const found =
    /^\s*[-•*·>]?\s*((?:ch(?:annel|an)?\.?|kanal|kan\.|canal(?:e)?|kanaal|tranche|voie|input|line|in|#|n°|nr\.?)\s*#?\s*)?\(?(\d{1,3}(?:\s?[/+&]\s?\d{1,3}|,\s?\d{1,3}(?=[.):]?\s)|\s(?:y|e|und|and|et|en)\s\d{1,3}(?=[.):])|\s?[-–]\s?\d{1,3}(?=[\s.):]))*)\)?\s*([.):=–—-]+|\t)?\s*(?=\D)(.*)$/i.exec(
      text,
    );
  if (!found) return null;
  const [, word, digits, mark, rest] = found;
  const numbers = channelNumbers(digits ?? '');
  if (numbers.length === 0 || !rest || rest.trim() === '') return null;
  // "48V", "2x", "15\" wedge", "4 dB" and clock times are amounts, not line numbers.
  if (
    !mark &&
    !word &&
    !/^[^(\d]*\d+\)/.test(text) &&
    /^(?:(?:x|v|db|h|kg|m|cm|mhz|khz|hz|ch|channels?|kanäle|st|th|nd|rd|er|ème|mm|w|a|ohm)(?!\p{L})|°|%|"|''|€|\$|:)/iu.test(
      rest,
    )
  )
    return null;
  // "4) Kick" closes a bracket that nothing opened: a mark too.
  const closed = /^[^(]*\d\s*\)/.test(text) && !/^[^\d]*\(/.test(text);
  return { numbers, rest: rest.trim(), marked: Boolean(mark || word) || closed };
}

/** "a" is the first. */
export const letterNumber = (letter: string): number => letter.toLowerCase().charCodeAt(0) - 96;
