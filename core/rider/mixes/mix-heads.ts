import { isAllIn } from '../inputs/details.ts';
import { withDigits } from '../language/count-words.ts';
import { findHits, lookUp } from '../language/lexicon.ts';
import { readSourceName } from '../language/source-name.ts';
import { hasWordOf, tidy, tokenize } from '../language/text.ts';
import { mixWords, playerWords, positionWords } from '../language/vocabulary.ts';
import type { Walk } from '../page/walk-state.ts';
import { looksLikeName } from '../performers/line-up.ts';
import { isDevice, speaksOfUs } from './mix-pieces.ts';

export const isOneMix =
  /^(?:(?:one|a single|the same|an?|ein(?:em|en)?|dem(?:selben)?|un|une|una|uno|een|um|uma|o mesmo|la misma|lo stesso|le même|dezelfde) )?(?:mix|send|aux|bus|weg|circuit|départ|mezcla|env[ií]o|groep|v[ií]a|mandata|ascolto|mandada|mistura|linea|línea|linha)$/iu;

/** A piece of a head without articles, and without "and then" and "our" before it. */
export const withoutArticles = (text: string) =>
  tidy(
    text
      .replace(/^[\s,;&+-]+|[\s,;&+-]+$/g, '')
      .replace(
        /^(?:(?:and|then|also|plus|und|dann|dazu|et|puis|aussi|y|e|poi|en|dan|ook|the|our|her|his|their|der|die|das|dem|den|unsere?|ihre?[mnrs]?|seine?[mnrs]?|le|la|les|l['’]|nos|notre|son|sa|ses|leurs?|el|los|las|sus?|nuestr[oa]s?|il|lo|i|gli|suo|sua|loro|de|het|onze|zijn|haar|hun|o|a|os|as|seus?|suas?) +)+/i,
        '',
      ),
  );

/** Behind "for": who listens, and not what it is for ("for the energy"). */
export function isListenerFor(text: string, article: boolean, walk: Walk): boolean {
  if (!namesListener(text, walk)) return false;
  const isKnown = hasWordOf(text, walk.tongue.names);
  const plays =
    lookUp(playerWords, text, walk.tongue.spoken) !== null || readSourceName(text, walk.tongue).stem !== null;
  return isKnown || plays || !article;
}

/** "Wedge Ada", "Ada's wedge": a device and whose it is, side by side. */
export function splitAtDevice(text: string, walk: Walk): { listener: string; device: string } | null {
  const tokens = tokenize(text);
  const hit = findHits(mixWords, tokens, walk.tongue.spoken, walk.tongue.names).find(
    (it) => it.certainty === 1 && it.senses[0]?.subject === 'device',
  );
  const start = hit ? tokens[hit.from]?.start : undefined;
  const end = hit ? tokens[hit.to - 1]?.end : undefined;
  if (start === undefined || end === undefined) return null;
  const before = withoutArticles(text.slice(0, start).replace(/['’]s?\s*$/, ''));
  const behind = withoutArticles(text.slice(end));
  const isPlace = (it: string) => isAllIn(positionWords, it, walk.tongue) || isDevice(it, walk);
  if (isPlace(before) || isPlace(behind.split(' ')[0] ?? '')) return null;
  const isCount = /^\d+ x$/.test(withDigits(`${before} x`, walk.tongue));
  if (isCount && !namesListener(behind, walk)) return null;
  if (namesListener(behind, walk) && (before === '' || /^\d+\s*x?$|^\p{L}+$/iu.test(before)))
    return { listener: behind, device: tidy(text.slice(0, end)) };
  if (namesListener(before, walk) && (behind === '' || isDevice(behind, walk)))
    return { listener: before, device: tidy(text.slice(start)) };
  return null;
}

/** A listener's words without what stands in brackets, and without "and" and "our" before them. */
const listenerOf = (text: string) =>
  tidy(
    text
      .replace(/\([^)]*\)/g, ' ')
      .replace(
        /^(?:and|und|et|y|e|en|our|the|unser[e]?|notre|nuestr[oa]|il|la|le|el|de|der|die|das|o|a|also|only|den|het|il nostro|la nostra)\s+/i,
        '',
      ),
  );

const between = /\s*(?:,|&|\+|(?<!\p{L})(?:and|und|et|y|e|en)(?!\p{L}))\s*/iu;

/** Performers' names, players' roles or words for one of the band. */
export function namesListener(text: string, walk: Walk): boolean {
  const plain = listenerOf(text);
  const parts = plain.split(between).filter((part) => part !== '');
  if (parts.length > 1 && parts.length < 6) return parts.every((part) => namesListener(part, walk));
  if (plain === '' || plain.split(' ').length > 4) return false;
  if (speaksOfUs(`${plain} `)) return false;
  if (hasWordOf(plain, walk.tongue.names)) return true;
  const name = readSourceName(plain, walk.tongue);
  if (name.stem !== null && name.unknown.length === 0) return true;
  return (
    lookUp(playerWords, plain, walk.tongue.spoken) !== null ||
    (looksLikeName(plain, walk) &&
      plain.split(' ').length === 1 &&
      !/^(?:we|i|you|please|wir|bitte|nous|je|ich|noi|nos|yo|io|ik|wij|eu|monitors?|monitoring|mixes?|note|notes|info|important|power|strom|stage|pa|foh|light|licht|this|there|it|they|he|she|everyone)$/i.test(
        plain,
      ))
  );
}
