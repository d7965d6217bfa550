import { findHits } from './lexicon.ts';
import type { Tongue } from './source-name.ts';
import { tokenize } from './text.ts';
import { countWords } from './vocabulary.ts';

/** "Two wedges" as "2 wedges", in all languages of the rider: numbers in words are written as digits. */
export function withDigits(text: string, { spoken, names }: Pick<Tongue, 'spoken' | 'names'>): string {
  const tokens = tokenize(text);
  let written = '';
  let from = 0;
  for (const hit of findHits(countWords, tokens, spoken, names)) {
    const first = tokens[hit.from];
    const last = tokens[hit.to - 1];
    const next = tokens[hit.to];
    const isSpoken = hit.senses.some((sense) =>
      [...sense.languages].some((it) => it === 'trade' || it === 'en' || spoken.has(it)),
    );
    // "Otto" is eight in Italian only, and there too somebody may be called so.
    const isName = first !== undefined && names.has(first.text);
    if (!first || !last || next?.kind !== 'word' || hit.certainty < 1 || !isSpoken || isName) continue;
    written += `${text.slice(from, first.start)}${hit.senses[0]?.meaning ?? ''}`;
    from = last.end;
  }
  return written + text.slice(from);
}
