import type { Purpose } from '../../core/show/words.ts';

/** What a copy is called in a report. */
export function copyWord(purpose: Purpose): string {
  return purpose === 'foh' ? 'FOH' : purpose;
}

/** A level as an engineer writes it: with its sign, without needless decimals; nothing at all is "off". */
export function levelWord(levelDb: number | null): string {
  if (levelDb === null) return 'off';
  const rounded = Math.round(levelDb * 10) / 10;
  return `${rounded > 0 ? '+' : ''}${rounded} dB`;
}
