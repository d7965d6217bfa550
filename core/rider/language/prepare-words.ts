import type { WordTable } from '../words/table.ts';
import { spellingsOf } from './spellings.ts';
import * as vocabulary from './vocabulary.ts';

/**
 * Makes the tables of words step by step, so that who reads a rider first need not wait for all of them. Each step is
 * short; nothing is lost where it is not carried to its end, for what is missing is made when it is asked for.
 */
export function* prepareWords(): Generator<void> {
  const lexicons = Object.values(vocabulary).filter((it) => typeof it === 'object');
  const tables = new Set<WordTable<string>>(lexicons.flatMap((it) => it.tables));
  for (const table of tables)
    for (const meaning of Object.values(table)) {
      spellingsOf(meaning);
      yield;
    }
  for (const it of lexicons)
    for (const part of ['senses', 'misspellings', 'skeletons'] as const) {
      it[part].size;
      yield;
    }
}
