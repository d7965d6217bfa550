import { type Outcome, refuse } from '../../core/contract/problem.ts';
import { brokenIn, ExchangeDocument } from '../../core/show/exchange.ts';
import { parseJson } from './parse-json.ts';
import { sentenceOfIssue } from './sentence-of-issue.ts';

/** A show or an act from the text of an exported file; a refusal says which row is wrong, and how. */
export function exchangeOfText(name: string, text: string): Outcome<ExchangeDocument> {
  let json: unknown;
  try {
    json = parseJson(text);
  } catch (error) {
    const where = error instanceof Error ? error.message.slice(0, 200) : 'it is damaged';
    return notAShow(
      `${name} is not JSON: ${where}.`,
      'Name a show or an act that Foldbook exported as JSON.',
    );
  }
  const document = ExchangeDocument.safeParse(json);
  if (!document.success) {
    const [issue] = document.error.issues;
    return notAShow(
      `${name} is no show that can be read: ${issue ? sentenceOfIssue(issue, json) : 'it is damaged'}.`,
      'Correct it, or name a file that Foldbook exported as JSON. The shape is in assets/schema.',
    );
  }
  const broken = brokenIn(document.data);
  if (broken) return notAShow(`${name} is not whole: ${broken}.`, 'Export it again, or correct it.');
  return { ok: true, value: document.data };
}

const notAShow = (what: string, todo: string) => refuse('not a show', what, todo);
