import type { DigitColour } from './sheet.ts';

/**
 * Colours of the digits 0 to 9 by IEC 60062, with the letters of IEC 60757 so that a print without colour says the
 * same. Used for numbered lines: common practice. The shades are ours: the standard names colours, not screen values.
 */
const colourOfDigit: readonly DigitColour[] = [
  { name: 'black', letters: 'BK', hex: '#000000' },
  { name: 'brown', letters: 'BN', hex: '#7a4a1e' },
  { name: 'red', letters: 'RD', hex: '#d01818' },
  { name: 'orange', letters: 'OG', hex: '#f08a00' },
  { name: 'yellow', letters: 'YE', hex: '#f5dc1e' },
  { name: 'green', letters: 'GN', hex: '#128a3c' },
  { name: 'blue', letters: 'BU', hex: '#1d4fc4' },
  { name: 'violet', letters: 'VT', hex: '#7b3fa8' },
  { name: 'grey', letters: 'GY', hex: '#8a8a8a' },
  { name: 'white', letters: 'WH', hex: '#ffffff' },
];

/** The colours of a line's number, the first digit first. */
export function digitColours(line: number): DigitColour[] {
  return [...String(line)].flatMap((digit) => colourOfDigit[Number(digit)] ?? []);
}
