import { isAllIn } from '../inputs/details.ts';
import { withDigits } from '../language/count-words.ts';
import { findHits, lookUp } from '../language/lexicon.ts';
import { readSourceName } from '../language/source-name.ts';
import { hasWordOf, tidy, tokenize } from '../language/text.ts';
import { headWords, mixWords, playerWords, positionWords } from '../language/vocabulary.ts';
import type { Walk } from '../page/walk-state.ts';
import { looksLikeName } from '../performers/line-up.ts';
import { isDevice, speaksOfUs } from './mix-pieces.ts';

/** A head longer than this is a sentence. */
const mostWords = 12;

/** The text with what stands before its colon told plainly, see `plainHead`. */
export function withPlainHead(text: string, walk: Walk): string {
  const [, head = '', between = '', tail = ''] =
    /^([^:]{3,90}?)(\s*:\s+|\s+[-–—]\s+)(\S.*)$/su.exec(text) ?? [];
  return head === '' ? text : plainHead(head, walk) + between + tail;
}

/**
 * Who listens through what, told in any order, as "who (device, place)": "two wedges for the horns", "the drummer on
 * the drum fill", "Ada and Bo together". A device for nobody is the device alone. What is told otherwise is left.
 */
export function plainHead(head: string, walk: Walk): string {
  if (head.split(' ').length > mostWords) return head;
  const [, outside = '', inside = '', ...behind] = /^([^()]+)\(([^()]+)\)(.*)$/su.exec(head) ?? [];
  if (inside !== '') {
    // What is in brackets tells the device or the place, or else belongs to the name as it stands.
    if (
      behind.join('').trim() !== '' ||
      !(isDevice(inside, walk) || isAllIn(positionWords, inside, walk.tongue))
    )
      return head;
    const plain = plainHead(outside.trim(), walk);
    return plain.endsWith(')') ? `${plain.slice(0, -1)}, ${inside})` : `${plain} (${inside})`;
  }
  if (/[()[\]]/.test(head)) return head;
  const told = { listener: '', device: '', place: '' };
  const add = (what: keyof typeof told, text: string) => {
    told[what] = told[what] === '' ? text : `${told[what]}, ${text}`;
  };
  const fragments = fragmentsOf(head, walk);
  for (const { text, joint, article } of fragments) {
    if (isOneMix.test(text)) continue;
    const split = splitAtDevice(text, walk);
    if (!split && isDevice(text, walk)) add('device', text);
    else if (isAllIn(positionWords, text, walk.tongue)) add('place', text);
    else if (joint === 'for' && told.device !== '' && !isListenerFor(text, article, walk)) continue;
    else if (told.listener !== '') return head;
    else {
      if (split) add('device', split.device);
      told.listener = split ? split.listener : text;
    }
  }
  const { listener, device, place } = told;
  if (listener === '') return device === '' ? head : [device, place].filter(Boolean).join(' ');
  const how = [device, place].filter(Boolean).join(', ');
  if (how === '') return fragments.length === 1 && listener.length < head.length ? listener : head;
  return `${listener} (${how})`;
}

const isOneMix =
  /^(?:(?:one|a single|the same|an?|ein(?:em|en)?|dem(?:selben)?|un|une|una|uno|een|um|uma|o mesmo|la misma|lo stesso|le même|dezelfde) )?(?:mix|weg|circuit|mezcla|groep|via|aux|send|mandata|mistura|linea)$/i;

/** `article`: "for the energy", not "for Ada". */
type Fragment = { text: string; joint: 'on' | 'for' | null; article: boolean };

/** The head cut at the words between a listener and a device, those left out. */
function fragmentsOf(head: string, walk: Walk): Fragment[] {
  const { spoken, names } = walk.tongue;
  const tokens = tokenize(head);
  const devices = findHits(mixWords, tokens, spoken, names).filter(
    (hit) => hit.certainty === 1 && hit.senses[0]?.subject !== 'owner',
  );
  const cuts = findHits(headWords, tokens, spoken, names).filter(
    (hit) => hit.certainty === 1 && !devices.some((device) => device.from < hit.to && hit.from < device.to),
  );
  const fragments: Fragment[] = [];
  let joint: Fragment['joint'] = null;
  let hasArticle = false;
  let from = 0;
  const push = (to: number) => {
    const piece = tidy(head.slice(from, to));
    const text = bare(piece);
    const article = hasArticle || (text !== piece && piece.endsWith(text));
    if (text !== '') fragments.push({ text, joint, article });
  };
  for (const cut of cuts) {
    push(tokens[cut.from]?.start ?? 0);
    from = tokens[cut.to - 1]?.end ?? 0;
    const meaning = cut.senses[0]?.meaning;
    joint = meaning === 'on' || meaning === 'for' ? meaning : null;
    hasArticle = cut.to - cut.from > 1;
  }
  push(head.length);
  return fragments;
}

const bare = (text: string) =>
  tidy(
    text
      .replace(/^[\s,;&+-]+|[\s,;&+-]+$/g, '')
      .replace(
        /^(?:(?:and|then|also|plus|und|dann|dazu|et|puis|aussi|y|e|poi|en|dan|ook|the|our|der|die|das|dem|den|unsere?|le|la|les|l['’]|nos|notre|el|los|las|nuestr[oa]s?|il|lo|i|gli|de|het|onze|o|a|os|as) +)+/i,
        '',
      ),
  );

/** Behind "for": who listens, and not what it is for ("for the energy"). */
function isListenerFor(text: string, article: boolean, walk: Walk): boolean {
  if (!namesListener(text, walk)) return false;
  const isKnown = hasWordOf(text, walk.tongue.names);
  const plays =
    lookUp(playerWords, text, walk.tongue.spoken) !== null || readSourceName(text, walk.tongue).stem !== null;
  return isKnown || plays || !article;
}

/** "Wedge Ada", "Ada's wedge": a device and whose it is, side by side. */
function splitAtDevice(text: string, walk: Walk): { listener: string; device: string } | null {
  const tokens = tokenize(text);
  const hit = findHits(mixWords, tokens, walk.tongue.spoken, walk.tongue.names).find(
    (it) => it.certainty === 1 && it.senses[0]?.subject === 'device',
  );
  const start = hit ? tokens[hit.from]?.start : undefined;
  const end = hit ? tokens[hit.to - 1]?.end : undefined;
  if (start === undefined || end === undefined) return null;
  const before = bare(text.slice(0, start).replace(/['’]s?\s*$/, ''));
  const behind = bare(text.slice(end));
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
export const listenerOf = (text: string) =>
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
