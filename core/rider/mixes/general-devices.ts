import { withDigits } from '../language/count-words.ts';
import { findHits } from '../language/lexicon.ts';
import { fold, hasWordOf, tidy, tokenize } from '../language/text.ts';
import { mixWords, wishWords } from '../language/vocabulary.ts';
import { note } from '../page/draft.ts';
import type { Line } from '../page/lines.ts';
import type { Walk } from '../page/walk-state.ts';
import { pieceFacts } from './mix-pieces.ts';

const everybody =
  /\b(?:all(?:e|es)?|everyone|everybody|our|unser[en]?|notre|nuestr[oa]s?|nostr[oa]|onze|noss[oa]|we(?: all)?|wir(?: alle)?|the (?:whole )?band|jeder|alle musiker|tous|toutes|tout le monde|nous|todos|todas|tutti|tutte|iedereen|wij|the rest|others|the others|rest|all others|everyone else|everybody else|alle anderen|les autres|los demas|gli altri|de rest|os outros)\b/;

/** "Four small wedges, one each": a number of devices or of mixes, and nobody in particular. */
const counted =
  /(?:^|\s)\d{1,2}\s+\p{L}|\b(?:each|apiece|per (?:mix|person|send|player)|je(?:weils)?|pro (?:weg|person)|chacune?|par (?:circuit|personne)|cada un[oa]|por (?:v[ií]a|envio|mezcla)|ciascun[oa]|per (?:ogni|mandata)|ieder|elk|per (?:groep|persoon)|cada uma?|um(?:a)? por via)\b/u;

/** More words are no plain sentence on devices. */
const mostWords = 26;

/** "All on own stereo in-ears", "we use 4 wedges": what everybody listens through. False where it is not told. */
export function takeGeneralDevice(walk: Walk, line: Line, text: string): boolean {
  const folded = fold(text);
  const titled =
    /^(?:monitors?|monitoring|monitor world|retours?|monitore|monitores|monitorwege|spie|monitoren|ears?|in[- ]?ears?|iems?)\s*:/.test(
      folded,
    );
  const told = /^\W*(?:ears?|in|iem)/.test(folded) ? text : text.replace(/^[^:]{1,20}:\s*(?=\S)/, '');
  if (titled && /^\d+ \p{L}+$/u.test(told)) {
    note(walk.found, line.at, 'set aside', 'It says how many mixes there are.');
    return true;
  }
  if (text.split(' ').length > mostWords) return false;
  if (opensMixes(walk, text)) {
    walk.section = 'mixes';
    return takeForAll(walk, line, text);
  }
  if (!everybody.test(folded) && !titled) return false;
  return namesDevice(told, walk) && !refuses(told, walk) && takeForAll(walk, line, text);
}

/** "For monitors three wedges will do:": what stands below are the mixes. */
function opensMixes(walk: Walk, text: string): boolean {
  const isCounted = counted.test(withDigits(fold(text), walk.tongue));
  return /:\s*$/.test(text) && isCounted && namesDevice(text, walk) && sourcesIn(text, walk) === 0;
}

function takeForAll(walk: Walk, line: Line, text: string): boolean {
  walk.found.devices.push({ at: line.at, text });
  note(walk.found, line.at, 'understood', 'What everybody listens through.');
  return true;
}

/**
 * Among the mixes: a line of short sentences that count devices ("four wedges, one each") or refuse them ("no wedges
 * needed"), and that name neither a listener nor a source.
 */
export function takeCountedDevices(walk: Walk, line: Line, text: string): boolean {
  if (text.split(' ').length > mostWords) return false;
  const sentences = text
    .split(/[.;!]\s+/)
    .map(tidy)
    .filter((sentence) => sentence !== '');
  const kinds = sentences.map((sentence) => kindOfSentence(sentence, walk));
  if (kinds.includes('other') || kinds.every((kind) => kind === 'nothing')) return false;
  note(walk.found, line.at, 'set aside', 'It says what nobody needs to listen through.');
  const told = sentences.filter((_, at) => kinds[at] === 'counted').join('. ');
  return told === '' || takeForAll(walk, line, told);
}

function kindOfSentence(sentence: string, walk: Walk): 'counted' | 'refused' | 'nothing' | 'other' {
  const { self, sameAs } = pieceFacts(sentence, walk);
  const targets = sourcesIn(sentence, walk);
  const namesPerson = hasWordOf(sentence, walk.tongue.names);
  if (self || sameAs || namesPerson) return 'other';
  if (!namesDevice(sentence, walk)) return targets > 0 ? 'other' : 'nothing';
  if (/:|\s[-–—]\s/.test(sentence) || targets > 0) return 'other';
  if (refuses(sentence, walk)) return 'refused';
  const folded = fold(sentence);
  return everybody.test(folded) || counted.test(withDigits(folded, walk.tongue)) ? 'counted' : 'other';
}

/** How many words of a text name sources, those for devices and for everybody left out. */
function sourcesIn(text: string, walk: Walk): number {
  const tokens = tokenize(text);
  const { spoken, names } = walk.tongue;
  const devices = findHits(mixWords, tokens, spoken, names).filter((hit) => hit.certainty === 1);
  return findHits(wishWords, tokens, spoken, names).filter(
    (hit) =>
      hit.senses.some(
        ({ subject, meaning }) =>
          subject === 'source' || (subject === 'group' && meaning !== 'everything' && meaning !== 'rest'),
      ) && !devices.some((device) => device.from <= hit.from && hit.to <= device.to),
  ).length;
}

const namesDevice = (text: string, walk: Walk) =>
  findHits(mixWords, tokenize(text), walk.tongue.spoken, walk.tongue.names).some(
    (hit) =>
      hit.certainty === 1 && (hit.senses[0]?.subject === 'device' || hit.senses[0]?.subject === 'elsewhere'),
  );

/** "No wedges please", "wedges are not needed"; "no wedges, all on in-ears" refuses one and asks for the other. */
function refuses(text: string, walk: Walk): boolean {
  const tokens = tokenize(text);
  const isNone = findHits(wishWords, tokens, walk.tongue.spoken, walk.tongue.names).some((hit) =>
    hit.senses.some(({ subject, meaning }) => subject === 'amount' && meaning === 'none'),
  );
  const kinds = findHits(mixWords, tokens, walk.tongue.spoken, walk.tongue.names).flatMap((hit) =>
    hit.senses[0]?.subject === 'device' ? [hit.senses[0].meaning] : [],
  );
  return isNone && new Set(kinds).size < 2;
}
