import type { Severity } from '../../show/words.ts';
import type { Subject } from '../derived.ts';
import type { ActFacts } from '../facts.ts';
import type { Occasion } from './occasions.ts';

type Named = { name: string };

/**
 * What stands for a name in braces: words, a figure, or a row or rows, whose names are told. Words that many cases need
 * come as a function, and are made when somebody reads them.
 */
export type Said = string | number | Named | readonly Named[] | (() => string) | undefined;

/** One case of a rule: what fills its sentences, and what it is about. */
export type Case = { say?: Record<string, Said>; about: Subject[] };

/**
 * One kind of fault. `cause` and `remedy` are sentences with names in braces, which every case fills from its
 * `say`. A newcomer adds a rule to the file of its subject; it is then in the table.
 */
export type FindingRule = {
  code: string;
  severity: Severity;
  /** The rule is asked in acts that have one of these, and where none is named, in every act. */
  when?: readonly Occasion[];
  /** What has to be known for the rule to speak; where it is not known, the rule is silent. */
  needs: string;
  cause: string;
  remedy: string;
  find: (facts: ActFacts) => readonly Case[];
};

const noCases: readonly Case[] = [];

/** A case for each row that gives one. Most rules find nothing in most acts, and then nothing is made. */
export function casesOf<T>(rows: readonly T[], caseOf: (row: T, at: number) => Case | null): readonly Case[] {
  let cases: Case[] | null = null;
  const { length } = rows;
  for (let at = 0; at < length; at++) {
    const found = caseOf(rows[at] as T, at);
    if (found === null) continue;
    if (cases === null) cases = [found];
    else cases.push(found);
  }
  return cases ?? noCases;
}

/** All cases of each row. */
export function casesOfEach<T>(rows: readonly T[], casesIn: (row: T) => readonly Case[]): readonly Case[] {
  let cases: Case[] | null = null;
  for (const row of rows) {
    const found = casesIn(row);
    if (found.length === 0) continue;
    cases = cases === null ? [...found] : cases.concat(found);
  }
  return cases ?? noCases;
}
