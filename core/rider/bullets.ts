/** Marks in front of the items of a list, and of quoted lines of a mail. */
const mark = /^\s*[-•*·–>▪●]\s*/;

/** A text without the mark in front of it. */
export const withoutBullet = (text: string): string => text.replace(mark, '');

/** What stands behind the mark in front of a text; null where there is no mark, or nothing behind it. */
export function behindBullet(text: string): string | null {
  const rest = withoutBullet(text);
  return rest === text || rest === '' ? null : rest;
}

/** A mark with a space behind it begins an item; without one it may be a minus or a dash. */
export const isBulleted = (text: string): boolean => /^\s*[-•*·–▪●]\s+\S/.test(text);
