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

export function findingOf(rule: FindingRule, { say, about }: Case): Finding {
  return {
    code: rule.code,
    severity: rule.severity,
    cause: fill(rule.cause, say),
    remedy: fill(rule.remedy, say),
    subjects: about,
  };
}

function fill(sentence: string, say: Case['say']): string {
  const filled = sentence.replaceAll(/\{(\w+)\}/g, (braces, name: string) => String(say?.[name] ?? braces));
  return filled.charAt(0).toUpperCase() + filled.slice(1);
}
