import type { Meaning, MeaningOf } from '../../show/own-word.ts';
import type { Language } from '../words/table.ts';
import { type Token, tokenize } from './text.ts';

/** What the engineer taught: these words mean this. */
export type TaughtWord = { words: string } & Meaning;

type Phrase = TaughtWord & { key: readonly string[] };

/** What a rider is written in: its languages, and the words that the engineer taught for it. */
export type Spoken = ReadonlySet<Language> & { readonly taught?: readonly Phrase[] };

/** Languages with the words that hold besides. Of two of the same words the first holds; longer ones go before. */
export function spokenWith(languages: ReadonlySet<Language>, taught: readonly TaughtWord[]): Spoken {
  const phrases = taught
    .map((word) => ({ ...word, key: wordsOf(tokenize(word.words)) }))
    .filter(({ key }) => key.length > 0)
    .sort((a, b) => b.key.length - a.key.length);
  return phrases.length === 0 ? languages : Object.assign(new Set(languages), { taught: phrases });
}

const wordsOf = (tokens: readonly Token[]): string[] =>
  tokens.filter(({ kind }) => kind !== 'mark').map(({ text }) => text);

/** The taught word that begins at a place and the place behind it, or null. Marks inside it are no difference. */
export function taughtAt(
  spoken: Spoken,
  tokens: readonly Token[],
  from: number,
  isHeard: (of: MeaningOf) => boolean,
): { word: TaughtWord; to: number } | null {
  if (!spoken.taught || tokens[from]?.kind === 'mark') return null;
  for (const word of spoken.taught) {
    const to = isHeard(word.of) ? endOf(word.key, tokens, from) : null;
    if (to !== null) return { word, to };
  }
  return null;
}

function endOf(key: readonly string[], tokens: readonly Token[], from: number): number | null {
  let at = from;
  for (const text of key) {
    while (at > from && tokens[at]?.kind === 'mark') at++;
    if (tokens[at]?.text !== text) return null;
    at++;
  }
  return at;
}

/** Every taught word of a text. */
export function taughtIn(
  spoken: Spoken,
  text: string,
  isHeard: (of: MeaningOf) => boolean = () => true,
): TaughtWord[] {
  if (!spoken.taught) return [];
  const tokens = tokenize(text);
  return tokens.flatMap((_, at) => taughtAt(spoken, tokens, at, isHeard)?.word ?? []);
}

/** Names of lines as one meaning, and back. */
export const joinLines = (names: readonly string[]): string => names.join('; ');
export const linesIn = (kind: string): string[] => kind.split(/\s*;\s*/).filter((name) => name !== '');
