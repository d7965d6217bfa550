import type { Grid } from '../grid.ts';
import { amounts, hedges } from '../words/amounts.ts';
import { counts } from '../words/counts.ts';
import {
  deviceWords,
  elsewhereWords,
  formatWords,
  linkWords,
  mixLabels,
  sameDeviceWords,
} from '../words/devices.ts';
import { doubts } from '../words/doubts.ts';
import { headerWords } from '../words/headers.ts';
import { joints, openers, sharing } from '../words/mix-heads.ts';
import { alternatives, ownership } from '../words/ownership.ts';
import { parts } from '../words/parts.ts';
import { phantomWords, pickUps } from '../words/pick-ups.ts';
import { players } from '../words/players.ts';
import { positions } from '../words/positions.ts';
import { scales } from '../words/scales.ts';
import { sides } from '../words/sides.ts';
import { sources } from '../words/sources.ts';
import { stands } from '../words/stands.ts';
import { type Language, languages } from '../words/table.ts';
import { things } from '../words/things.ts';
import { titles } from '../words/titles.ts';
import { verbs } from '../words/verbs.ts';
import { exceptions, groupWords, selfWords, wishMarks } from '../words/wish-targets.ts';
import { wishTurns } from '../words/wish-turns.ts';
import { type Lexicon, lexicon } from './lexicon.ts';
import { once } from './once.ts';
import { fold, tokenize } from './text.ts';

/** The words of each place in a rider. A word means one thing in a source's name and another in a wish. */
export const nameWords = lexicon({ source: sources, part: parts, side: sides, pickUp: pickUps });
export const pickUpWords = lexicon({ pickUp: pickUps });
export const phantomLexicon = lexicon({ phantom: phantomWords });
export const standWords = lexicon({ stand: stands });
export const positionWords = lexicon({ position: positions });
export const ownershipWords = lexicon({ owner: ownership });
export const alternativeWords = lexicon({ alternative: alternatives });
export const headerLexicon = lexicon({ column: headerWords });
export const titleLexicon = lexicon({ title: titles });
export const mixWords = lexicon({
  elsewhere: elsewhereWords,
  same: sameDeviceWords,
  device: deviceWords,
  format: formatWords,
  link: linkWords,
  owner: ownership,
  position: positions,
});
export const headWords = lexicon({ sharing, joint: joints });
export const openerWords = lexicon({ opener: openers });
export const sharingWords = lexicon({ sharing });
export const labelWords = lexicon({ label: mixLabels });
/** An empty line of a list is called "nothing" and "nada" too; nobody wishes to hear it. */
const { 'spare line': _, ...heardSources } = sources;
export const wishWords = lexicon({
  mark: wishMarks,
  except: exceptions,
  self: selfWords,
  group: groupWords,
  source: heardSources,
  amount: amounts,
  hedge: hedges,
  side: sides,
  part: parts,
});
export const turnWords = lexicon({ turn: wishTurns });
export const doubtWords = lexicon({ doubt: doubts });
export const amountWords = lexicon({ amount: amounts });
export const scaleWords = lexicon({ scale: scales });
export const countWords = lexicon({ count: counts });
export const thingWords = lexicon({ thing: things });
export const playerWords = lexicon({ player: players });
export const verbWords = lexicon({ verb: verbs });

const everyLexicon: Lexicon<string, string>[] = [
  nameWords,
  standWords,
  headerLexicon,
  titleLexicon,
  mixWords,
  wishWords,
];

/** Single words that belong to one language and not to English or the trade at large. */
const telltales = once(() => {
  const found = new Map<string, Set<Language>>();
  for (const words of everyLexicon) {
    for (const [key, senses] of words.senses) {
      if (key.length < 4) continue;
      const known = found.get(key) ?? new Set<Language>();
      for (const sense of senses) for (const language of sense.languages) known.add(language);
      found.set(key, known);
    }
  }
  return found;
});

/** Words looked at to tell the languages of a rider; more would not change the answer. */
const enoughWords = 4000;

/** The languages a rider is written in, besides English and the words of the trade. */
export function spokenLanguages(grid: Grid): ReadonlySet<Language> {
  const counts = new Map<Language, number>();
  for (const word of distinctWords(grid)) {
    const spoken = telltales().get(word);
    if (!spoken || spoken.has('en') || spoken.has('trade')) continue;
    for (const language of spoken) counts.set(language, (counts.get(language) ?? 0) + 1 / spoken.size);
  }
  const most = Math.max(0, ...counts.values());
  return new Set(languages.filter((language) => (counts.get(language) ?? 0) >= Math.max(0.9, most * 0.4)));
}

function distinctWords(grid: Grid): Set<string> {
  const words = new Set<string>();
  for (const sheet of grid.sheets) {
    for (const row of sheet.rows) {
      for (const cell of row.slice(0, 60)) {
        if (words.size > enoughWords) return words;
        if (cell === '') continue;
        for (const token of tokenize(cell)) if (token.kind === 'word') words.add(token.text);
        if (cell.length < 40) words.add(fold(cell).replace(/[^\p{L}]/gu, ''));
      }
    }
  }
  return words;
}
