/** Marks in front of the items of a list. */
const bullets = '-•*·–▪●';

/** The same and that of quoted lines of a mail. */
const mark = new RegExp(`^\\s*[${bullets}>]\\s*`);

/** A text without the mark in front of it. */
export const withoutBullet = (text: string): string => text.replace(mark, '');

/** In a list of mixes rarer marks too, and the "o" of word processors, which elsewhere is a word. */
const markOfMix = new RegExp(`^\\s*(?:[${bullets}>◦‣○]|o(?=\\s))\\s*`, 'u');

/** A line of a list of mixes without the mark in front of it. */
export const withoutMixBullet = (text: string): string => text.replace(markOfMix, '');

/** What stands behind the mark in front of a text; null where there is no mark, or nothing behind it. */
export function behindBullet(text: string): string | null {
  const rest = withoutBullet(text);
  return rest === text || rest === '' ? null : rest;
}

/** A mark with a space behind it begins an item; without one it may be a minus or a dash. */
export const isBulleted = (text: string): boolean => bulleted.test(text);

const bulleted = new RegExp(`^\\s*[${bullets}]\\s+\\S`);
