import { findHits } from '../language/lexicon.ts';
import { hasWordOf, tidy, tokenize } from '../language/text.ts';
import { mixWords, playerWords, wishWords } from '../language/vocabulary.ts';
import type { Walk } from '../page/walk-state.ts';
import { sourcesIn } from './device-words.ts';

/** Somebody for whom what all listen through does not hold, and what they have instead; empty where it is not told. */
export type Exception = { who: string; how: string };
export function splitAtExcept(sentence: string, walk: Walk): { before: string; behind: string } {
  const tokens = tokenize(sentence);
  const { spoken, names } = walk.tongue;
  const told = findHits(mixWords, tokens, spoken, names).filter((it) => it.certainty === 1);
  const hit = findHits(wishWords, tokens, spoken, names).find(
    (it) =>
      it.senses[0]?.subject === 'except' &&
      it.certainty === 1 &&
      // "Todos in-ears" has the letters of "todo sin".
      !told.some((device) => device.from < it.to && it.from < device.to),
  );
  if (!hit) return { before: sentence, behind: '' };
  const isOnly = hit.senses[0]?.meaning === 'all except';
  const start = isOnly ? tokens[hit.to - 1]?.start : tokens[hit.from]?.start;
  return {
    before: tidy(sentence.slice(0, start)).replace(/[,;]$/, ''),
    behind: tidy(sentence.slice(tokens[hit.to - 1]?.end)),
  };
}

const article =
  /^(?:for |für |pour |para |per |voor |the |our |der |die |das |den |dem |le |la |les |el |los |las |il |lo |gli |i |de |het |o |a |os |as |l['’])+/i;
const linking =
  /[\s,:(–-]+(?:(?:who|which|the drummer|he|she|they|der|die|das|er|sie|qui|il|elle|que|él|ella|che|lui|lei|quien|die|hij|zij|ele|ela)\s+)?(?:has|have|uses?|gets?|is on|are on|on|with|hat|haben|nutzt|bekommt|auf|mit|a|ont|utilise|sur|avec|tiene|usa|lleva|va con|con|ha|hanno|heeft|gebruikt|op|met|tem|com|em)?\s*$/iu;

/** "The drummer: wired in-ears", "la batteria che ha cuffie sue", "Uwe (Wedge)", "the choir": who, and how. */
export function exceptionOf(text: string, walk: Walk): Exception | null {
  const tokens = tokenize(text);
  const hits = findHits(mixWords, tokens, walk.tongue.spoken, walk.tongue.names).filter(
    (hit) => hit.certainty === 1,
  );
  const device = hits.find((hit) => hit.senses[0]?.subject === 'device');
  const opening = hits.find((hit) => hit.from > 0 && device && hit.from <= device.from) ?? device;
  const start = opening ? (tokens[opening.from]?.start ?? 0) : text.length;
  const who = tidy(
    text
      .slice(0, start)
      .replace(/\b\d+\s*$/, '')
      .replace(linking, '')
      .replace(article, ''),
  );
  if (who === '' || who.split(' ').length > 4) return null;
  // "Side fills: everything but the click" leaves out a source, not a listener.
  if (!namesSomebody(who, walk) && (device === undefined || sourcesIn(who, walk) === 0)) return null;
  return { who, how: device ? tidy(text.slice(start).replace(/[()]/g, ' ')) : '' };
}

const players =
  /\b(?:players?|musicians?|members|performers?|people|musiker(?:innen)?|leute|musiciens?|musiciennes?|m[uú]sicos?|musicist[ie]|muzikanten|spelers|mensen|elementos|componentes)\b/giu;

export const namesSomebody = (text: string, walk: Walk) => {
  const plain = text.replace(players, ' ');
  return (
    hasWordOf(plain, walk.tongue.names) ||
    findHits(playerWords, tokenize(plain), walk.tongue.spoken, walk.tongue.names).some(
      (hit) => hit.certainty === 1,
    )
  );
};
