import { withDigits } from '../language/count-words.ts';
import { fold, hasWordOf, tidy } from '../language/text.ts';
import { note } from '../page/draft.ts';
import type { Line } from '../page/lines.ts';
import type { Walk } from '../page/walk-state.ts';
import { counted, everybody, mostWords, namesDevice, refuses, sourcesIn } from './device-words.ts';
import { pieceFacts } from './mix-pieces.ts';

export function takeForAll(walk: Walk, line: Line, text: string): boolean {
  walk.found.devices.push({ at: line.at, text, except: [] });
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
