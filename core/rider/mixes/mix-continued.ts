import { signAmount } from '../language/amounts.ts';
import { isBulleted } from '../language/bullets.ts';
import { findHits } from '../language/lexicon.ts';
import { tokenize } from '../language/text.ts';
import { wishWords } from '../language/vocabulary.ts';
import { type FoundMix, note } from '../page/draft.ts';
import type { Line } from '../page/lines.ts';
import type { Walk } from '../page/walk-state.ts';

/**
 * A line that goes on with the mix right above it though it could stand for a mix itself: "keys: medium",
 * "lots of: vocals, keys", "keys" in a list of wishes. False where the line is none of these.
 */
export function takeContinued(walk: Walk, line: Line, text: string): boolean {
  const above = walk.found.mixes.at(-1);
  if (!above || above.inTable || !isRightBelow(above, line)) return false;
  const [, head = '', tail = ''] = /^([^:]{2,40}?)\s*:\s+(\S.*)$/su.exec(text) ?? [];
  const isTold =
    head !== '' && (saysAmount(head, walk) || (namesSource(head, walk) && saysAmount(tail, walk)));
  if (!isTold && !(namesSource(text, walk) && isListed(above, line))) return false;
  above.wishTexts.push(text);
  addLine(walk, above, line);
  return true;
}

/** Notes a line as one that goes on with a mix. */
function addLine(walk: Walk, mix: FoundMix, line: Line): void {
  mix.extra = [...(mix.extra ?? []), line.at];
  note(walk.found, line.at, 'understood', '');
}

function isRightBelow(above: FoundMix, line: Line): boolean {
  const last = above.extra?.at(-1) ?? above.at;
  return last.sheet === line.at.sheet && line.at.row - last.row <= 1;
}

/** The mix was named on a line of its own, and its wishes stand below it one by one. */
const isListed = (above: FoundMix, line: Line) =>
  above.wishTexts.length === 0 || (above.extra?.length ?? 0) > 0 || isBulleted(line.text);

/** Nothing but an amount: "loud", "++", "a bit of". */
function saysAmount(text: string, walk: Walk): boolean {
  if (signAmount(text, true)) return true;
  return isAllOf(text, walk, 'amount');
}

/** Nothing but words for what can be heard. */
const namesSource = (text: string, walk: Walk) =>
  isAllOf(text, walk, 'source') || isAllOf(text, walk, 'group') || isAllOf(text, walk, 'self');

function isAllOf(text: string, walk: Walk, subject: string): boolean {
  const tokens = tokenize(text);
  const hits = findHits(wishWords, tokens, walk.tongue.spoken, walk.tongue.names);
  const telling = hits.filter((hit) =>
    // "Mia" is "mine" in Italian, and a name everywhere.
    hit.senses.some((sense) => sense.subject === subject && sense.meaning !== 'own'),
  );
  const known = hits.filter(
    (hit) =>
      telling.includes(hit) || ['hedge', 'side', 'part', 'self'].includes(hit.senses[0]?.subject ?? ''),
  );
  return (
    telling.length > 0 &&
    tokens.every((token, at) => token.kind !== 'word' || known.some((hit) => hit.from <= at && at < hit.to))
  );
}
