import type { Grid } from '../grid.ts';
import { textOfRow } from '../page/lines.ts';
import type { Language } from '../words/table.ts';
import { findHits } from './lexicon.ts';
import { fold, tokenize } from './text.ts';
import { scaleWords } from './vocabulary.ts';

/** What bare numbers stand for where amounts are told: levels in dB, or shares of the most there is. */
export type Scale = 'db' | { most: number };

/** A line that says more than what its numbers mean has more words. */
const mostLetters = 140;

/** "1-10", "0 bis 10", "1 t/m 5", "de 1 à 10", "/10". */
const range =
  /(?<![\d.,])[01]\s*(?:-|–|—|\.\.+|to|through|bis|a|à|t\/m|tot|tot en met|ao?|e|until)\s*(5|10|100)(?![\d.,]|\s*(?:x|khz|hz|m\b|cm|min|:))/;
const outOf =
  /(?:\bout of|\bvon|\bsur|\bde|\bsu|\bvan|\bop|\/)\s*(5|10|100)(?![\d.,]|\s*(?:khz|hz|m\b|cm|min))/;
const perCent = /%|\b(?:per ?cent|prozent|pour ?cents?|por ?cientos?|por ?centos?|procent|pct)\b/;
const decibels = /(?<![\d.,]\s*)\bdb\b(?!\s*\(?a\b)/;

/** The scale that a line or a heading tells, or null. */
export function scaleIn(text: string, spoken: ReadonlySet<Language>): Scale | null {
  if (text.length > mostLetters) return null;
  const folded = fold(text);
  const told = range.exec(folded) ?? outOf.exec(folded);
  const isShare = perCent.test(folded.replace(/\d\s*%/g, ''));
  if (!told && !isShare && !decibels.test(folded)) return null;
  const isNamed = findHits(scaleWords, tokenize(text), spoken).some((hit) => hit.certainty === 1);
  const isLegend = /(?<!\d)\d{1,3}\s*=\s*\p{L}/u.test(text);
  if (!isNamed && !isLegend) return null;
  if (told) return { most: Number(told[1]) };
  return isShare ? { most: 100 } : 'db';
}

/** Rows looked at for what their numbers mean. */
const mostRows = 400;

/** The scale that a rider tells anywhere, the first one; null where it tells none. */
export function scaleOf(grid: Grid, spoken: ReadonlySet<Language>): Scale | null {
  for (const { rows } of grid.sheets)
    for (const row of rows.slice(0, mostRows))
      for (const text of [textOfRow(row), ...row]) {
        const scale = /\d|db|%|[cz]ent/i.test(text) ? scaleIn(text, spoken) : null;
        if (scale) return scale;
      }
  return null;
}

/** The scale that bare numbers tell by themselves: those below zero are levels, those beyond ten per cent. */
export function scaleOfNumbers(numbers: readonly string[]): Scale | null {
  if (numbers.some((text) => /^[-−]\s*\d/.test(text))) return 'db';
  const most = Math.max(0, ...numbers.map(Number).filter(Number.isFinite));
  return most > 10 && most <= 100 ? { most: 100 } : null;
}
