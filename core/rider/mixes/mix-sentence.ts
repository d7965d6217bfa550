import { findHits, lookUp } from '../language/lexicon.ts';
import { listed, tidy, tokenize } from '../language/text.ts';
import { headWords, mixWords, openerWords, verbWords, wishWords } from '../language/vocabulary.ts';
import { titleOf } from '../page/titles.ts';
import type { Walk } from '../page/walk-state.ts';
import { saysOf } from './device-words.ts';
import { type MixHead, readHead } from './mix-head.ts';
import { countedLabel } from './mix-line.ts';
import { isWhollyDevice, negation, pieceFacts } from './mix-pieces.ts';

/** A mix told in a sentence. */
export type MixSentence = MixHead & {
  /** "2)" before it. */
  number: number | null;
  wish: string;
  /** The words that tell where its wishes begin: a mark ("Ada: ..."), a verb, what is had, "for Ada". */
  by: 'mark' | 'verb' | 'device' | 'for';
};

type Told = Omit<MixSentence, 'number'>;

/** The sentences of a text. */
export const sentencesOf = (text: string): string[] => text.split(/(?<=[.!?])\s+(?=\p{Lu}|\p{N})/u).map(tidy);

/**
 * A mix told in a sentence: who listens, through what, then the wishes, or the wishes before them ("lots of keys for
 * Ada"). Null where the sentence is none such.
 */
export function readMixSentence(text: string, walk: Walk): MixSentence | null {
  const counted = countedLabel(text, walk);
  const { rest, asks } = withoutOpeners(counted?.rest ?? text, walk);
  const told =
    atMark(rest, walk) ??
    atVerb(rest, walk) ??
    atDevice(rest, asks, walk) ??
    behindListener(rest, asks || !(counted?.rest ?? text).startsWith(rest), walk) ??
    beforeListener(rest, walk);
  if (!told) return null;
  const wish = withoutLeadIn(told.wish, walk);
  const device = told.device === '' ? deviceBehind(wish, walk) : null;
  const number = counted?.numbers[0] ?? null;
  return device ? { ...told, number, device: device.device, wish: device.wish } : { ...told, number, wish };
}

/** "And then Ada ...", "Please give Ada ...": the sentence from its listener on. */
function withoutOpeners(text: string, walk: Walk): { rest: string; asks: boolean } {
  const [, title = '', behind = ''] = /^([^,:]{3,40})[,:]\s+(.*)$/su.exec(text) ?? [];
  // "For the monitors, Ada ..."
  let rest = behind !== '' && titleOf(title, walk.tongue) === 'mixes' ? behind : text;
  let asks = false;
  for (;;) {
    const tokens = tokenize(rest);
    const hit = findHits(openerWords, tokens, walk.tongue.spoken, walk.tongue.names).find(
      (it) => it.from === 0 && it.certainty === 1,
    );
    const next = hit ? tokens.slice(hit.to).find((token) => token.kind !== 'mark') : undefined;
    if (!hit || !next) return { rest, asks };
    asks ||= hit.senses.some((sense) => sense.meaning === 'please');
    rest = rest.slice(next.start);
  }
}

const nobody = { listener: '', isPerson: false, role: '', device: '', place: '' };

/** "Ada (keys), two wedges: lots of keys", "Ada = keys", "Ada - keys". */
function atMark(text: string, walk: Walk): Told | null {
  for (const mark of [...text.matchAll(/\s*:\s+|\s*(?:=|-|–|=)?>\s*|\s*[=→]\s*|\s+[-–—]\s+/gu)].sort(
    (a, b) => Number(b[0].includes(':')) - Number(a[0].includes(':')) || a.index - b.index,
  )) {
    const before = text.slice(0, mark.index);
    const open = before.lastIndexOf('(') > before.lastIndexOf(')');
    const wish = text.slice(mark.index + mark[0].length);
    if (open || before === '' || wish === '') continue;
    const head = readHead(before, walk);
    if (head) return { ...withDevice(head, wish, walk), by: 'mark' };
  }
  return null;
}

/** "Anna solo necesita", "Anna also needs": of these words only those for an amount belong to the wishes. */
const adverb =
  /[\s,]+(just|only|mainly|mostly|really|also|nur|vor allem|auch|juste|surtout|aussi|solo|s[oó]lo|soltanto|anche|invece|también|alleen|vooral|ook|s[oó]|apenas|também|lui|elle|però|sobretudo|soprattutto|sobre todo)$/iu;

/** "Ada needs ...", "Ada is on in-ears and needs ...". */
function atVerb(text: string, walk: Walk): Told | null {
  const tokens = tokenize(text);
  const hits = findHits(verbWords, tokens, walk.tongue.spoken, walk.tongue.names).filter(
    (hit) => hit.from > 0 && hit.certainty === 1 && hit.senses.some((sense) => sense.meaning === 'wishes'),
  );
  for (const hit of hits) {
    const said = text.slice(0, tokens[hit.from]?.start).trimEnd();
    const ends = tokens
      .slice(hit.from + 1, hit.to)
      .map((token) => text.slice(token.start, tokens[hit.to - 1]?.end));
    const much = ends.find((end) => isAmountWord(end, walk)) ?? '';
    const plain = said.replace(negation, '');
    const before = adverb.exec(plain)?.[1] ?? '';
    const head = readHead(plain.replace(adverb, ''), walk);
    if (!head || head.listener === '') continue;
    const wish = [
      plain === said ? '' : 'no',
      isAmountWord(before, walk) ? before : '',
      much,
      text.slice(tokens[hit.to - 1]?.end).replace(/^\s*:/, ''),
    ].join(' ');
    return { ...withDevice(head, tidy(wish), walk), by: 'verb' };
  }
  return null;
}

/** "Just" of "wants just", "vor allem" of "braucht vor allem": what is said of the amount. */
const isAmountWord = (word: string, walk: Walk) =>
  lookUp(wishWords, word, walk.tongue.spoken)?.some(({ subject }) => subject === 'amount') === true;

/** "Ada has two wedges, lots of keys", "Ada uses in-ears with lots of click". */
function atDevice(text: string, asks: boolean, walk: Walk): Told | null {
  const tokens = tokenize(text);
  const hits = findHits(verbWords, tokens, walk.tongue.spoken, walk.tongue.names).filter(
    (hit) =>
      hit.from > 0 &&
      hit.certainty === 1 &&
      hit.senses.some((sense) => sense.meaning === 'has' || sense.meaning === 'listens'),
  );
  for (const hit of hits) {
    const head = readHead(text.slice(0, tokens[hit.from]?.start), walk);
    if (!head || head.listener === '') continue;
    // "Haben eigene": whose it is belongs to the device.
    const owners = tokens.slice(hit.from, hit.to).filter((token) => isOwner(token.raw, walk));
    const behind = tidy([...owners.map(({ raw }) => raw), text.slice(tokens[hit.to - 1]?.end)].join(' '));
    const told = withDevice(head, behind, walk);
    if (told.device !== '') return { ...told, by: 'device' };
    // "Heeft alleen bas nodig", "Could Ada have ...": had is wished.
    const wish = behind.replace(/\s+nodig(?=[.,]?$)/, '');
    if (asks || wish !== behind) return { ...told, wish, by: 'verb' };
  }
  return null;
}

/** "For Ada, keys", "Bitte Ada viel Gesang geben": the listener first, then the wishes. */
function behindListener(text: string, isOpened: boolean, walk: Walk): Told | null {
  const tokens = tokenize(text);
  const joint = findHits(headWords, tokens, walk.tongue.spoken, walk.tongue.names).find(
    (hit) =>
      hit.from === 0 && hit.certainty === 1 && hit.senses.some((sense) => sense.meaning !== 'together'),
  );
  const from = joint?.to ?? 0;
  if (!joint && !isOpened) return null;
  const start = tokens[from]?.start ?? 0;
  const mark = tokens.slice(from).findIndex((token) => token.kind === 'mark' && /[,;:]/.test(token.text));
  const most = Math.min(
    tokens.length - 1,
    from + (mark < 0 ? longestListener : Math.min(mark, longestListener)),
  );
  for (let to = most; to > from; to--) {
    const head = readHead(text.slice(start, tokens[to - 1]?.end), walk);
    if (!head || head.listener === '') continue;
    const wish = text
      .slice(tokens[to - 1]?.end)
      .replace(/^\s*[,;:]?\s*(?:(?:é|es|è|est|is|ist|sind|are|son|sono|são)\s+)?/iu, '');
    return { ...withDevice(head, wish.replace(/\s+geben(?=[.!]?$)/, ''), walk), by: 'for' };
  }
  return null;
}

/** Tokens of a listener with their device. */
const longestListener = 8;

/** "Lots of keys for Ada", "keys in Ada's wedge". */
function beforeListener(text: string, walk: Walk): Told | null {
  const plain = text.replace(
    /[,\s]*(?:please|bitte|svp|s['’]il vous plaît|por favor|per favore|graag)?[.!?]*$/iu,
    '',
  );
  const tokens = tokenize(plain);
  const joint = findHits(headWords, tokens, walk.tongue.spoken, walk.tongue.names).findLast(
    (hit) =>
      hit.from > 0 &&
      hit.certainty === 1 &&
      hit.senses.some(({ meaning }) => meaning === 'for' || meaning === 'on'),
  );
  if (!joint) return null;
  const head = readHead(plain.slice(tokens[joint.to]?.start ?? plain.length), walk);
  const wish = tidy(plain.slice(0, tokens[joint.from]?.start));
  const isFor = joint.senses.some(({ meaning }) => meaning === 'for');
  const { targets, amounts } = pieceFacts(wish, walk);
  const isWish = targets > 1 || (targets > 0 && amounts > 0);
  if (!head || head.listener === '' || !isWish || !(isFor || head.device !== '')) return null;
  return { ...nobody, ...head, wish, by: 'for' };
}

/** Takes the device and the place that stand before the wishes. */
function withDevice(head: MixHead, text: string, walk: Walk): Omit<Told, 'by'> {
  const told = { ...head, wish: text };
  for (;;) {
    const before = leadingHow(told.wish, walk);
    if (!before) return told;
    told.device = listed(told.device, before.device);
    told.place = listed(told.place, before.place);
    told.wish = before.rest;
  }
}

/** The longest beginning of a text that tells a device or a place and nobody's name. */
function leadingHow(text: string, walk: Walk): { device: string; place: string; rest: string } | null {
  const tokens = tokenize(text);
  for (let to = Math.min(tokens.length, longestListener); to > 0; to--) {
    const next = tokens[to];
    const end = tokens[to - 1]?.end ?? 0;
    if (tokens[to - 1]?.kind === 'mark' && !/[)"”]/.test(tokens[to - 1]?.text ?? '')) continue;
    if (/\([^)]*$/.test(text.slice(0, end))) continue;
    // "One wedge with just his guitar": the amount belongs to the wishes.
    if (isAmountWord(tokens[to - 1]?.raw ?? '', walk)) continue;
    const head = readHead(text.slice(0, end), walk);
    if (!head || head.device === '' || head.listener !== '' || head.role !== '') continue;
    // In "wedge, own vocal loud" the vocal is their own.
    if (next && next.kind !== 'mark' && isOwner(tokens[to - 1]?.raw ?? '', walk)) continue;
    const rest = text.slice(next?.start ?? text.length).replace(/^[,;:.–-]\s*/, '');
    return { device: head.device, place: head.place, rest };
  }
  return null;
}

const isOwner = (word: string, walk: Walk) =>
  lookUp(mixWords, word, walk.tongue.spoken)?.some(({ subject }) => subject === 'owner') === true;

/** "With lots of keys", "and needs keys": the wishes themselves. */
function withoutLeadIn(text: string, walk: Walk): string {
  const tokens = tokenize(text);
  const { spoken, names } = walk.tongue;
  let at = 0;
  if (/^(?:and|und|et|y|e|en|ed)$/.test(tokens[0]?.text ?? '')) at = 1;
  const verb = findHits(verbWords, tokens, spoken, names).find(
    (hit) => hit.from === at && hit.certainty === 1 && hit.senses.some(({ meaning }) => meaning === 'wishes'),
  );
  const withWord = findHits(headWords, tokens, spoken, names).find(
    (hit) => hit.from === at && /^(?:with|w|mit|avec|con|met|com)$/.test(tokens[hit.from]?.text ?? ''),
  );
  if (verb) return text.slice(tokens[verb.to]?.start ?? text.length);
  if (withWord) return text.slice(tokens[withWord.to]?.start ?? text.length);
  return at > 0 ? text.slice(tokens[at]?.start) : text;
}

/** "Lots of keys in the wedge": the device at the end of the wishes. */
function deviceBehind(text: string, walk: Walk): { wish: string; device: string } | null {
  const plain = text.replace(/[.!?\s]+$/, '');
  const tokens = tokenize(plain);
  const joint = findHits(headWords, tokens, walk.tongue.spoken, walk.tongue.names).findLast(
    (hit) => hit.from > 0 && hit.certainty === 1 && hit.senses.some(({ meaning }) => meaning === 'on'),
  );
  if (!joint) return null;
  const device = plain.slice(tokens[joint.to]?.start ?? plain.length);
  const head = saysOf(device, ['device'], walk) ? readHead(device, walk) : null;
  if (!head || head.device === '' || head.listener !== '' || !isWhollyDevice(head.device, walk)) return null;
  return { wish: tidy(plain.slice(0, tokens[joint.from]?.start)), device: head.device };
}
