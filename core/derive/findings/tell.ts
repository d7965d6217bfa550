import type { Finding } from '../derived.ts';
import type { Case, FindingRule, Said } from './rule.ts';
import { listed, quoted } from './say.ts';

/** A case that a rule found. Its sentences are told when somebody reads them: finding is cheap, words are many. */
export type Found = { rule: Omit<FindingRule, 'find'>; found: Case };

/** A found case as a row with its sentences. */
export function findingOf({ rule, found: { say, about } }: Found): Finding {
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
    const said = say && name in say ? told(say[name]) : name;
    filled += (filled === '' ? capitalised(said) : said) + (parts[at + 1] ?? '');
  }
  return filled;
}

function told(said: Said): string {
  if (typeof said === 'string') return said;
  if (typeof said === 'number') return String(said);
  if (typeof said === 'function') return said();
  return said !== undefined && isList(said) ? listed(said) : quoted(said);
}

/** The language's own test does not know lists that may not be changed. */
const isList = (said: NonNullable<Said>): said is Extract<Said, readonly unknown[]> => Array.isArray(said);

function capitalised(words: string): string {
  const first = words.charAt(0);
  // Most begin with a quotation mark, which has no capital.
  return first === '"' ? words : first.toUpperCase() + words.slice(1);
}
