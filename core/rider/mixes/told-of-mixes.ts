import { findHits } from '../language/lexicon.ts';
import { tidy, tokenize } from '../language/text.ts';
import { labelWords, wishWords } from '../language/vocabulary.ts';
import { note } from '../page/draft.ts';
import type { Line } from '../page/lines.ts';
import type { Walk } from '../page/walk-state.ts';
import { pieceFacts } from './mix-pieces.ts';

/** A line with more words says more than where a source goes. */
const mostWords = 16;

const direction =
  /\s+(?:(?:goes|go|only|just|also|geht|nur|auch|va|vont|seulement|van|solo|sólo|anche|soltanto|gaat|alleen|ook|vai|só|apenas|também|aussi|también)\s+)*(?:to|into|in|on|for|an|auf|in|für|vers|dans|pour|sur|à|a|en|para|por|ai|alle|nei|nelle|per|su|naar|voor|op|nas|nos|às|aos)(?:\s+(?:the|die|den|les|las|los|le|i|de|as|os|all))?\s*$/iu;

/**
 * "Talkback of Ada to mixes 1, 2 and 5": a source, and the mixes by their numbers that hear it too. False where the
 * line says anything else.
 */
export function takeSourceForMixes(walk: Walk, line: Line): boolean {
  const { text } = line;
  if (walk.found.mixes.length === 0 || text.split(' ').length > mostWords || /[:;]/.test(text)) return false;
  const tokens = tokenize(text);
  const label = findHits(labelWords, tokens, walk.tongue.spoken).find(
    (hit) => hit.from > 0 && /^\d{1,2}$/.test(tokens[hit.to]?.text ?? ''),
  );
  const start = label ? tokens[label.from]?.start : undefined;
  const end = label ? tokens[label.to - 1]?.end : undefined;
  if (start === undefined || end === undefined) return false;
  const before = text.slice(0, start).trimEnd();
  const source = tidy(before.replace(direction, ''));
  const behind = text.slice(end).replace(/[.!)\s]+$/, '');
  if (source === before || !/^(?:\s*(?:,|&|\+|\/|and|und|et|y|e|en)?\s*\d{1,2})+$/iu.test(behind))
    return false;
  if (!namesSource(source, walk)) return false;
  const numbers = new Set([...behind.matchAll(/\d+/g)].map(([number]) => Number(number)));
  const mixes = walk.found.mixes.filter(({ number }) => number !== null && numbers.has(number));
  if (mixes.length < numbers.size) return false;
  for (const mix of mixes) {
    mix.wishTexts.push(source);
    mix.extra = [...(mix.extra ?? []), line.at];
  }
  note(walk.found, line.at, 'understood', 'Which mixes hear it.');
  return true;
}

const namesSource = (text: string, walk: Walk) =>
  pieceFacts(text, walk).targets > 0 &&
  findHits(wishWords, tokenize(text), walk.tongue.spoken, walk.tongue.names).some(
    (hit) => hit.certainty === 1,
  );
