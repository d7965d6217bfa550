import { type Language, languages, type WordTable } from '../words/table.ts';
import { fold, tokenize } from './text.ts';

/** One spelling of a meaning: what it is looked up by, and its single words. */
export type Spelling = { key: string; words: readonly string[]; language: Language };

const known = new WeakMap<WordTable<string>[string], Spelling[]>();

/** The spellings of a meaning in all languages. A table stands in several lexicons: each is taken apart once. */
export function spellingsOf(meaning: WordTable<string>[string]): Spelling[] {
  const before = known.get(meaning);
  if (before) return before;
  const spellings = languages.flatMap((language) =>
    written(meaning[language] ?? '').flatMap((text) => spelling(text, language)),
  );
  known.set(meaning, spellings);
  return spellings;
}

const plainWords = /^[a-z]+(?: [a-z]+)*$/;

function spelling(text: string, language: Language): Spelling[] {
  // Most spellings are a few plain words: they need none of what odd letters need.
  if (plainWords.test(text)) return [{ key: text.replaceAll(' ', ''), words: text.split(' '), language }];
  const parts = tokenize(text).filter((token) => token.kind !== 'mark' || token.text === '#');
  const key = parts.map((token) => token.text).join('') || fold(text);
  const words = parts.filter((token) => token.kind === 'word').map((token) => token.text);
  return key === '' ? [] : [{ key, words, language }];
}

/** A list of words, one by one; German umlauts may also be written with an e. */
function written(list: string): string[] {
  return list
    .split(/,\s*/)
    .filter((text) => text !== '')
    .flatMap((text) =>
      /[äöü]/i.test(text) ? [text, text.replace(/ä/g, 'ae').replace(/ö/g, 'oe').replace(/ü/g, 'ue')] : [text],
    );
}
