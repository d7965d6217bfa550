import type { Severity } from '../../show/words.ts';
import type { Finding, Subject } from '../derived.ts';
import type { ActFacts } from '../facts.ts';

/** One case of a rule: the words that fill its sentences, and what it is about. */
export type Case = { say?: Record<string, string | number>; about: Subject[] };

/**
 * One kind of fault. `cause` and `remedy` are sentences with names in braces, which every case fills from its
 * `say`. A newcomer adds a rule to the file of its subject; it is then in the table.
 */
export type FindingRule = {
  code: string;
  severity: Severity;
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

export function findingOf(rule: Omit<FindingRule, 'find'>, { say, about }: Case): Finding {
  return {
    code: rule.code,
    severity: rule.severity,
    cause: fill(rule.cause, say),
    remedy: fill(rule.remedy, say),
    subjects: about,
  };
}

/** Sentences cut at their braces, each once: even places are plain text, odd places are names to fill in. */
const cutSentences = new Map<string, readonly string[]>();

function fill(sentence: string, say: Case['say']): string {
  let parts = cutSentences.get(sentence);
  if (!parts) {
    parts = capitalised(sentence).split(/\{(\w+)\}/);
    cutSentences.set(sentence, parts);
  }
  let filled = parts[0] ?? '';
  for (let at = 1; at < parts.length; at += 2) {
    const name = parts[at] ?? '';
    const said = say?.[name] ?? name;
    filled += (filled === '' ? capitalised(String(said)) : said) + (parts[at + 1] ?? '');
  }
  return filled;
}

function capitalised(words: string): string {
  const first = words.charAt(0);
  // Most begin with a quotation mark, which has no capital.
  return first === '"' ? words : first.toUpperCase() + words.slice(1);
}
