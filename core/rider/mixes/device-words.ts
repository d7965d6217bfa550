import { withDigits } from '../language/count-words.ts';
import { findHits, lookUp } from '../language/lexicon.ts';
import { tokenize } from '../language/text.ts';
import { labelWords, mixWords, titleLexicon, wishWords } from '../language/vocabulary.ts';
import type { Walk } from '../page/walk-state.ts';

export const everybody =
  /\b(?:all(?:e[snr]?)?|everyone|everybody|every (?:mix|send)|our|unser(?:e[nsmr]?)?|notre|nos|nuestr[oa]s?|nostr[oaie]|onze|noss[oa]s?|ours|we(?: all)?|wir(?: alle)?|the (?:whole )?band|jede[rs]?|alle musiker|tous|toutes|tout le monde|nous|todos|todas|tutti|tutte|iedereen|allemaal|wij|ieder|the rest|others|the others|rest|all others|everyone else|everybody else|alle anderen|les autres|los demas|gli altri|de rest|os outros|ausschliesslich|que des|uniquement|solo|somente|uitsluitend|alles|throughout|everywhere|durchweg|durchgehend|partout|ovunque|overal|em todas|en todas)\b/;

/** "Four small wedges, one each": a number of devices or of mixes, and nobody in particular. */
export const counted =
  /(?:^|\s)\d{1,2}\s+\p{L}|\b(?:each|apiece|per (?:mix|person|send|player)|je(?:weils)?|pro (?:weg|person)|chacune?|par (?:circuit|personne)|cada un[oa]|por (?:v[ií]a|envio|mezcla)|ciascun[oa]|per (?:ogni|mandata)|ieder|elk|per (?:groep|persoon)|cada uma?|um(?:a)? por via)\b/u;

/** More words are no plain sentence on devices. */
export const mostWords = 26;

/** "Floor monitors" over the mixes tells what they are; "Monitors" may be anything. */
export function namesSpecialDevice(text: string, { tongue }: Walk): boolean {
  const tokens = tokenize(text);
  return findHits(mixWords, tokens, tongue.spoken).some((hit) => {
    const words = tokens
      .slice(hit.from, hit.to)
      .map((token) => token.text)
      .join(' ');
    return hit.senses[0]?.subject === 'device' && !anyDevice.test(words);
  });
}

const anyDevice =
  /^(?:(?:stage |mon(?:itor)? )?(?:monitors?|monitores?|monitore|monitoren|mons?|monis?|foldback|retours?|retornos?|box(?:en)?)|retours? de scene|side|sides|st|ears?|municao|monicao|monicoes)$/;

type Subject = 'device' | 'elsewhere' | 'format' | 'owner' | 'link';

/** True where a text has a word for one of these, and no misspelt one. */
export const saysOf = (text: string, subjects: readonly Subject[], walk: Walk) =>
  findHits(mixWords, tokenize(text), walk.tongue.spoken, walk.tongue.names).some(
    ({ certainty, senses }) => certainty === 1 && subjects.some((it) => it === senses[0]?.subject),
  );

/** A device by its name, or that somebody is heard through another desk. */
export const namesDevice = (text: string, walk: Walk) => saysOf(text, ['device', 'elsewhere'], walk);

/** "Transmitters are ours", "stereo", "all mono": no device by name, but something of it. */
export const tellsOfDevice = (text: string, walk: Walk) => saysOf(text, ['format', 'owner', 'link'], walk);

/** The clauses of a text, where several of them name a device of a kind of its own. */
export function kindsByClause(text: string, walk: Walk): string[] {
  const kindOf = (clause: string) =>
    findHits(mixWords, tokenize(clause), walk.tongue.spoken, walk.tongue.names).find(
      (hit) => hit.certainty === 1 && hit.senses[0]?.subject === 'device',
    )?.senses[0]?.meaning;
  const clauses = text
    .split(/[,;]\s*|\.\s+/)
    .filter((clause) => kindOf(clause) && tellsOfDevice(clause, walk));
  return new Set(clauses.map(kindOf)).size > 1 ? clauses : [];
}

/** "Four mixes", "São quatro vias": how many mixes there are, and not how many wedges. */
export function countsMixes(text: string, walk: Walk): boolean {
  const tokens = tokenize(withDigits(text, walk.tongue));
  const titles = findHits(titleLexicon, tokens, walk.tongue.spoken);
  const called = titles.filter((hit) => hit.senses[0]?.meaning === 'mixes');
  return [...findHits(labelWords, tokens, walk.tongue.spoken), ...called].some(
    (hit) =>
      hit.certainty === 1 &&
      [1, 2].some((back) => /^\d{1,2}$/.test(tokens[hit.from - back]?.text ?? '')) &&
      lookUp(mixWords, tokens[hit.from]?.text ?? '', walk.tongue.spoken)?.[0]?.subject !== 'device',
  );
}

/** How many words of a text name sources, those for devices and for everybody left out. */
export function sourcesIn(text: string, walk: Walk): number {
  // Four in Spanish is a small guitar too.
  const tokens = tokenize(withDigits(text, walk.tongue));
  const { spoken, names } = walk.tongue;
  const devices = findHits(mixWords, tokens, spoken, names).filter((hit) => hit.certainty === 1);
  return findHits(wishWords, tokens, spoken, names).filter(
    (hit) =>
      // Dutch "met" is "with" before it is the metronome.
      hit.certainty === 1 &&
      !hit.senses.some(({ subject }) => subject === 'hedge') &&
      hit.senses.some(
        ({ subject, meaning }) =>
          subject === 'source' || (subject === 'group' && meaning !== 'everything' && meaning !== 'rest'),
      ) &&
      !devices.some((device) => device.from <= hit.from && hit.to <= device.to),
  ).length;
}

/** "No wedges please", "wedges are not needed"; "no wedges, all on in-ears" refuses one and asks for the other. */
export function refuses(sentence: string, walk: Walk): boolean {
  // "All wedges from you, please not too loud" refuses none.
  const clauses = sentence.split(/[,;]/).filter((clause) => namesDevice(clause, walk));
  return isRefusal(clauses.join(','), walk);
}

export function isRefusal(text: string, walk: Walk): boolean {
  const tokens = tokenize(text);
  const isNone = findHits(wishWords, tokens, walk.tongue.spoken, walk.tongue.names).some(
    (hit) =>
      hit.certainty === 1 &&
      hit.senses.some(({ subject, meaning }) => subject === 'amount' && meaning === 'none'),
  );
  const kinds = findHits(mixWords, tokens, walk.tongue.spoken, walk.tongue.names).flatMap((hit) =>
    hit.senses[0]?.subject === 'device' ? [hit.senses[0].meaning] : [],
  );
  return isNone && new Set(kinds).size < 2;
}
