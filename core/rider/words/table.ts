/** Languages a word list is kept in; `trade` holds what every country writes. */
export const languages = ['en', 'de', 'fr', 'es', 'it', 'nl', 'pt', 'trade'] as const;
export type Language = (typeof languages)[number];

/**
 * The words for one meaning: by language, with commas between. Write them as riders do, with their accents;
 * case, spaces, hyphens, dots and slashes inside a word do not matter, and small misspellings are found anyway.
 */
type Words = Partial<Record<Language, string>>;

/** A table from meanings to their words. Where two meanings share a word, the one written first has it. */
export type WordTable<Meaning extends string> = Readonly<Record<Meaning, Words>>;
