import { withDigits } from '../language/count-words.ts';
import { findHits } from '../language/lexicon.ts';
import { fold, hasWordOf, tokenize } from '../language/text.ts';
import { titleLexicon } from '../language/vocabulary.ts';
import { note } from '../page/draft.ts';
import type { Line } from '../page/lines.ts';
import type { Walk } from '../page/walk-state.ts';
import { performersInBrackets } from '../performers/line-up.ts';
import { takeForAll } from './counted-devices.ts';
import { counted, namesDevice, sourcesIn } from './device-words.ts';
import { readHead } from './mix-head.ts';
import { leadingLabel } from './mix-pieces.ts';

/** Who writes to whom, or that something follows: no listener's mix is told with these. */
const introduces =
  /\b(?:we|us|our|you|here|below|follow\w*|please|need(?:ed)?|wir|uns|unser\w*|euch|ihr|bitte|hatten|folg\w+|nous|on|nos|notre|vous|voici|merci|faut|nosotros|nos|nuestr\w+|gustaria|queremos|necesitamos|siguiente|aqui|favor|vorremmo|ci|noi|nostr\w+|ecco|questo|seguente|servono|wij|ons|onze|graag|jullie|volgende|hier|nodig|gostariamos|precisamos|noss\w+|segue|seguinte)\b/;

/**
 * "For monitors this is what we would like:": what follows are the mixes, below or in the same line. The line without
 * these words, empty where there is nothing else; null where the line opens nothing.
 */
export function withoutOpening(walk: Walk, line: Line): Line | null {
  const [, opening = '', rest = ''] = /^([^:.!?]{8,110}):(?:\s+(.*))?$/su.exec(line.text) ?? [];
  if (line.cells.length > 1 || performersInBrackets(rest, walk).length > 1) return null;
  if (opening.split(' ').length < 3 || hasWordOf(opening, walk.tongue.names)) return null;
  if (!introduces.test(fold(opening)) || !speaksOfMixes(opening, walk)) return null;
  if (leadingLabel(opening, walk) || sourcesIn(opening, walk) > 0) return null;
  if ((readHead(opening, walk)?.listener ?? '') !== '') return null;
  walk.section = 'mixes';
  walk.blocks = [];
  const isCounted = counted.test(withDigits(fold(opening), walk.tongue));
  note(walk.found, line.at, 'set aside', 'It says that the mixes follow.');
  if (isCounted && namesDevice(opening, walk)) takeForAll(walk, line, opening);
  return { ...line, text: rest, cells: rest === '' ? [] : [{ column: 0, text: rest }] };
}

const speaksOfMixes = (text: string, walk: Walk) =>
  namesDevice(text, walk) ||
  findHits(titleLexicon, tokenize(text), walk.tongue.spoken, walk.tongue.names).some(
    (hit) => hit.certainty === 1 && hit.senses.some(({ meaning }) => meaning === 'mixes'),
  );

/** "For monitors three wedges will do:": what stands below are the mixes. */
export function opensMixes(walk: Walk, text: string): boolean {
  const isCounted = counted.test(withDigits(fold(text), walk.tongue));
  return /:\s*$/.test(text) && isCounted && namesDevice(text, walk) && sourcesIn(text, walk) === 0;
}
