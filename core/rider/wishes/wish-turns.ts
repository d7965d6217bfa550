import { findHits } from '../language/lexicon.ts';
import type { Token } from '../language/text.ts';
import { turnWords } from '../language/vocabulary.ts';
import type { Work } from '../page/work.ts';
import { type Item, isAmount, isTarget, subjectsOf, type WishHit } from './wish-item.ts';

/** Where a wish turns, and what stands on either side. */
export type Turn = {
  /** `but`: what is behind has its own amount. `without`: it is not heard. `manner`: it wishes nothing.
   * `than`: less or more of the one than of the other. `level`: the one is measured by the other. */
  kind: 'but' | 'without' | 'manner' | 'than' | 'level';
  before: string;
  behind: string;
};

const turnsIn = (work: Work, tokens: readonly Token[]) =>
  findHits(turnWords, tokens, work.tongue.spoken).filter((turn) => turn.certainty === 1);

/** "Half as much", "twice as loud": the other source that it is measured by follows somewhere behind. */
const ratio =
  /\b(?:half|twice|double|halb|doppelt|moitie|deux fois|mitad|doble|meta|doppio|half zo|dubbel|metade|dobro)\b/;

/** Where a piece of a wish turns first, or null where it is plain. */
export function turnOf(
  work: Work,
  text: string,
  tokens: readonly Token[],
  hits: readonly WishHit[],
): Turn | null {
  const targetBefore = (at: number) => hits.some((hit) => hit.to <= at && isTarget(hit));
  const targetBehind = (at: number) =>
    hits.some((hit) => hit.to > at && isTarget(hit)) ||
    tokens.some((token, it) => it >= at && work.tongue.names.has(token.text));
  const measure = hits.filter(isTarget).slice(1).at(-1);
  if (measure && ratio.test(tokens.map((token) => token.text).join(' '))) {
    const start = tokens[measure.from]?.start ?? 0;
    return { kind: 'level', before: text.slice(0, start), behind: text.slice(start) };
  }
  for (const turn of turnsIn(work, tokens)) {
    const { from, to } = turn;
    const isInside = hits.some(
      (hit) =>
        !isNone(hit) &&
        subjectsOf(hit)[0] !== 'hedge' &&
        hit.from <= from &&
        to <= hit.to &&
        hit.to - hit.from > to - from,
    );
    if (isInside || !targetBefore(from)) continue;
    const cut = (kind: Turn['kind']): Turn => ({
      kind,
      before: text.slice(0, tokens[from]?.start),
      behind: text.slice(tokens[to - 1]?.end),
    });
    const meanings = new Set(turn.senses.map((sense) => sense.meaning));
    if (meanings.has('without')) return cut(targetBehind(to) ? 'without' : 'manner');
    if (!targetBehind(to)) continue;
    if (meanings.has('level')) return cut('level');
    if (meanings.has('than') && comparesBefore(hits, from)) return cut('than');
    // "Everything, but with", "no drums but the kick".
    if (meanings.has('with') && (holdsAll(hits, from) || hits.some((hit) => hit.to <= from && isNone(hit))))
      return cut('but');
  }
  return null;
}

const isNone = (hit: WishHit) => hit.senses.some((sense) => sense.meaning === 'none');

const comparesBefore = (hits: readonly WishHit[], at: number) =>
  hits.some(
    (hit) =>
      hit.to <= at &&
      isAmount(hit) &&
      hit.senses.some((sense) => sense.meaning === 'lots' || sense.meaning === 'little'),
  );

const holdsAll = (hits: readonly WishHit[], at: number) =>
  hits.some(
    (hit) =>
      hit.to <= at &&
      hit.senses.some(
        ({ subject, meaning }) => subject === 'group' && (meaning === 'everything' || meaning === 'rest'),
      ),
  );

/** "Guitar only in the choruses": not only the guitar, but the guitar only then. */
export function isOnlySometimes(work: Work, item: Item): boolean {
  const only = item.hits.find((hit) => hit.senses.some((sense) => sense.meaning === 'only'));
  if (!only || !item.hits.some((hit) => hit.to <= only.from && isTarget(hit))) return false;
  return turnsIn(work, item.tokens).some(
    (turn) => turn.from === only.to && turn.senses.some((sense) => sense.meaning === 'when'),
  );
}

/** Words of an item that nothing is known of, beside what is: they may say how much. */
export function unknownBeside(work: Work, item: Item): string[] {
  const { names, people } = work.tongue;
  const turns = turnsIn(work, item.tokens);
  return item.tokens
    .filter(
      (token, at) =>
        token.kind === 'word' &&
        token.text.length > 2 &&
        ![...item.hits, ...turns].some((hit) => at >= hit.from && at < hit.to) &&
        !names.has(token.text) &&
        !people.has(token.text),
    )
    .map((token) => token.text);
}
